/** What the file of a picture says of itself. */
export interface PictureFile {
  /** Pixels to the inch as it was scanned or drawn; null where it does not say, or says what programs write unasked. */
  readonly perInch: number | null;
  /** It has the place in it where the camera stood (Exif's GPS data). */
  readonly hasPlace: boolean;
}

/** What programs write where nobody knows (common practice). */
const unasked: readonly number[] = [72, 96];

/** Reads what a PNG (pHYs), a JPEG (JFIF, Exif) or an SVG says of its density and its place; of other files nothing. */
export function pictureFile(bytes: Uint8Array): PictureFile {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes[0] === 0xff && bytes[1] === 0xd8) return jpegFile(view);
  const isPng = bytes.length > 33 && view.getUint32(0) === 0x89504e47;
  if (isPng) return { perInch: known(pngDensity(view)), hasPlace: placeInPng(view) };
  const head = [...bytes.subarray(0, 1000)].map((one) => String.fromCharCode(one)).join("");
  // 96 user units are an inch wherever an SVG stands at its own size (1in = 96px: CSS Values and Units 3).
  return { perInch: /<svg[\s>]/u.test(head) ? 96 : null, hasPlace: false };
}

function known(perInch: number | null): number | null {
  return perInch === null || perInch <= 1 || unasked.includes(Math.round(perInch)) ? null : perInch;
}

function chunksOf(view: DataView): readonly { readonly name: string; readonly start: number }[] {
  const chunks: { name: string; start: number }[] = [];
  for (let at = 8; at + 12 <= view.byteLength;) {
    const name = [4, 5, 6, 7].map((place) => String.fromCharCode(view.getUint8(at + place))).join("");
    chunks.push({ name, start: at + 8 });
    at += 12 + view.getUint32(at);
  }
  return chunks;
}

/** Whether the chunk eXIf, which is a TIFF without a head of its own, has a place. */
function placeInPng(view: DataView): boolean {
  const chunk = chunksOf(view).find((one) => one.name === "eXIf");
  return chunk !== undefined && placeInTiff(view, chunk.start, view.byteLength);
}

/** Pixels to the inch by the chunk pHYs, where its unit is the metre (PNG specification; from memory). */
function pngDensity(view: DataView): number | null {
  const chunk = chunksOf(view).find((one) => one.name === "pHYs");
  if (!chunk || chunk.start + 9 > view.byteLength || view.getUint8(chunk.start + 8) !== 1) return null;
  return view.getUint32(chunk.start) * 0.0254;
}

/** Segments of a JPEG up to the picture itself: APP0 has the density (JFIF 1.02, from memory), APP1 what Exif says. */
function jpegFile(view: DataView): PictureFile {
  let perInch: number | null = null;
  let hasPlace = false;
  for (let at = 2; at + 4 <= view.byteLength && view.getUint8(at) === 0xff;) {
    const marker = view.getUint8(at + 1);
    if (marker === 0xda) break;
    const length = view.getUint16(at + 2);
    const inside = at + 4;
    if (marker === 0xe0 && length >= 16 && inside + 10 <= view.byteLength)
      perInch ??= jfifDensity(view.getUint8(inside + 7), view.getUint16(inside + 8));
    if (marker === 0xe1 && placeInExif(view, inside, at + 2 + length)) hasPlace = true;
    at += 2 + length;
  }
  return { perInch: known(perInch), hasPlace };
}

function jfifDensity(unit: number, density: number): number | null {
  return unit === 1 ? density : unit === 2 ? density * 2.54 : null;
}

/** Whether a segment of a JPEG is Exif that has a place. */
function placeInExif(view: DataView, start: number, end: number): boolean {
  const isExif = end <= view.byteLength && start + 14 <= end && view.getUint32(start) === 0x45786966;
  return isExif && placeInTiff(view, start + 6, end);
}

/** Whether the first directory of a TIFF points to one of GPS data (Exif's tag 0x8825, from memory). */
function placeInTiff(view: DataView, tiff: number, end: number): boolean {
  if (tiff + 8 > end) return false;
  const little = view.getUint16(tiff) === 0x4949;
  const first = tiff + view.getUint32(tiff + 4, little);
  if (first + 2 > end) return false;
  const entries = view.getUint16(first, little);
  for (let place = 0; place < entries; place++) {
    const at = first + 2 + place * 12;
    if (at + 12 > end) return false;
    if (view.getUint16(at, little) === 0x8825) return true;
  }
  return false;
}
