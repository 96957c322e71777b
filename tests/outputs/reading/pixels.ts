import { inflateSync } from "node:zlib";

/** The pixels of a PNG of 8 bits a channel, as how dark each is, 0 to 255; rows from the top. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly dark: Uint8Array;
}

/** Reads a PNG (ISO/IEC 15948) without a library, so that what is read is what was written. */
export function pixelsOf(png: Uint8Array): Pixels {
  const view = new DataView(png.buffer, png.byteOffset, png.byteLength);
  const [width, height, kind] = [view.getUint32(16), view.getUint32(20), png[25] ?? 0];
  const channels = { 0: 1, 2: 3, 4: 2, 6: 4 }[kind];
  if (channels === undefined || png[24] !== 8) throw new Error("pixelsOf: another kind of PNG");
  const parts: Uint8Array[] = [];
  for (let at = 8; at + 12 <= png.length;) {
    const length = view.getUint32(at);
    if (String.fromCharCode(...png.subarray(at + 4, at + 8)) === "IDAT")
      parts.push(png.subarray(at + 8, at + 8 + length));
    at += 12 + length;
  }
  const raw = new Uint8Array(inflateSync(Buffer.concat(parts)));
  const stride = width * channels;
  const rows = new Uint8Array(height * stride);
  for (let y = 0; y < height; y++) {
    const filter = raw[y * (stride + 1)] ?? 0;
    for (let x = 0; x < stride; x++) {
      const value = raw[y * (stride + 1) + 1 + x] ?? 0;
      const left = x >= channels ? (rows[y * stride + x - channels] ?? 0) : 0;
      const up = y > 0 ? (rows[(y - 1) * stride + x] ?? 0) : 0;
      const corner = x >= channels && y > 0 ? (rows[(y - 1) * stride + x - channels] ?? 0) : 0;
      rows[y * stride + x] = value + predicted(filter, left, up, corner);
    }
  }
  const dark = new Uint8Array(width * height);
  const colours = channels >= 3 ? 3 : 1;
  for (let n = 0; n < dark.length; n++) {
    let sum = 0;
    for (let c = 0; c < colours; c++) sum += rows[n * channels + c] ?? 0;
    dark[n] = 255 - sum / colours;
  }
  return { width, height, dark };
}

function predicted(filter: number, left: number, up: number, corner: number): number {
  if (filter === 1) return left;
  if (filter === 2) return up;
  if (filter === 3) return (left + up) >> 1;
  if (filter !== 4) return 0;
  const guess = left + up - corner;
  const [a, b, c] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - corner)];
  return a <= b && a <= c ? left : b <= c ? up : corner;
}

/** How much ink a picture has, in whole pixels. */
export function inkOf({ dark }: Pixels): number {
  return dark.reduce((sum, one) => sum + one, 0) / 255;
}

/** How far two pictures of one size differ, in whole pixels. */
export function difference(one: Pixels, other: Pixels): number {
  return one.dark.reduce((sum, dark, n) => sum + Math.abs(dark - (other.dark[n] ?? 0)), 0) / 255;
}
