/** A JPEG without what was written about it, and how it is to be turned (Exif: 1 is upright). */
export interface CleanJpeg {
  readonly bytes: Uint8Array;
  readonly orientation: number;
  /** As its pixels lie. */
  readonly width: number;
  readonly height: number;
}

/** Takes out of a JPEG all that does not make the picture: Exif with its places, captions, previews, comments and what lies behind its end; null where it is none. */
export function cleanJpeg(bytes: Uint8Array): CleanJpeg | null {
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const kept: Uint8Array[] = [bytes.subarray(0, 2)];
  let [orientation, width, height] = [1, 0, 0];
  let at = 2;
  while (at + 4 <= bytes.length) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff) {
      at++;
      continue;
    }
    if (marker === 0xd9) break;
    const end = at + 2 + view.getUint16(at + 2);
    if (end > bytes.length) return null;
    const segment = bytes.subarray(at, end);
    if (marker === 0xe1) orientation = orientationIn(segment) ?? orientation;
    if (isFrame(marker) && segment.length >= 9) {
      height = view.getUint16(at + 5);
      width = view.getUint16(at + 7);
    }
    if (isPicture(marker, segment)) kept.push(segment);
    at = end;
    if (marker === 0xda) {
      const after = endOfScan(bytes, at);
      kept.push(bytes.subarray(at, after));
      at = after;
    }
  }
  if (width === 0 || height === 0) return null;
  kept.push(new Uint8Array([0xff, 0xd9]));
  return { bytes: joined(kept), orientation, width, height };
}

/** Start of a frame, of any of the ways of coding. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
}

/** Of what is written beside the picture only JFIF, a colour profile and Adobe's word about colours are needed to show it. */
function isPicture(marker: number, segment: Uint8Array): boolean {
  if (marker === 0xfe) return false;
  if (marker < 0xe0 || marker > 0xef) return true;
  const begins = (text: string): boolean => ascii(segment, 4, text.length) === text;
  if (marker === 0xe0) return begins("JFIF\0") && segment.length === 18;
  return (marker === 0xe2 && begins("ICC_PROFILE\0")) || (marker === 0xee && begins("Adobe"));
}

function endOfScan(bytes: Uint8Array, from: number): number {
  for (let at = from; at + 1 < bytes.length; at++) {
    if (bytes[at] !== 0xff) continue;
    const next = bytes[at + 1] ?? 0;
    if (next !== 0 && next !== 0xff && (next < 0xd0 || next > 0xd7)) return at;
  }
  return bytes.length;
}

/** The orientation (tag 0x0112) in the first directory of an Exif segment. */
function orientationIn(segment: Uint8Array): number | null {
  if (ascii(segment, 4, 6) !== "Exif\0\0" || segment.length < 20) return null;
  const tiff = segment.subarray(10);
  const view = new DataView(tiff.buffer, tiff.byteOffset, tiff.byteLength);
  const little = ascii(tiff, 0, 2) === "II";
  const directory = view.getUint32(4, little);
  if (directory + 2 > tiff.length) return null;
  const count = view.getUint16(directory, little);
  for (let n = 0; n < count; n++) {
    const entry = directory + 2 + 12 * n;
    if (entry + 12 > tiff.length) return null;
    if (view.getUint16(entry, little) !== 0x0112) continue;
    const value = view.getUint16(entry + 8, little);
    return value >= 1 && value <= 8 ? value : null;
  }
  return null;
}

function ascii(bytes: Uint8Array, from: number, length: number): string {
  return String.fromCharCode(...bytes.subarray(from, from + length));
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, one) => sum + one.length, 0));
  let at = 0;
  for (const one of parts) {
    whole.set(one, at);
    at += one.length;
  }
  return whole;
}
