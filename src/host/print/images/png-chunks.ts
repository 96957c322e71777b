const signature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/** The chunks that make the picture: its pixels, their colours, their shape and size; no words, times or places. */
const kept = new Set(
  "IHDR PLTE IDAT IEND tRNS gAMA cHRM sRGB iCCP cICP sBIT bKGD pHYs acTL fcTL fdAT".split(" "),
);

/** A PNG without what was written about it. */
export interface CleanPng {
  readonly bytes: Uint8Array;
  readonly width: number;
  readonly height: number;
}

/** Takes out of a PNG all that does not make the picture, and what lies behind its end; null where it is none. */
export function cleanPng(bytes: Uint8Array): CleanPng | null {
  if (signature.some((one, n) => bytes[n] !== one)) return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const parts: Uint8Array[] = [bytes.subarray(0, 8)];
  // A header comes first, or there is no picture.
  if (bytes.length < 33 || String.fromCharCode(...bytes.subarray(12, 16)) !== "IHDR") return null;
  let ended = false;
  for (let at = 8; !ended;) {
    if (at + 12 > bytes.length) return null;
    const end = at + 12 + view.getUint32(at);
    if (end > bytes.length) return null;
    const name = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    if (kept.has(name)) parts.push(bytes.subarray(at, end));
    ended = name === "IEND";
    at = end;
  }
  if (view.getUint32(16) === 0 || view.getUint32(20) === 0) return null;
  return {
    bytes: new Uint8Array(Buffer.concat(parts)),
    width: view.getUint32(16),
    height: view.getUint32(20),
  };
}
