import type { Random } from "../../../../src/base/outcome/random.ts";
import { few, oneOf } from "../input.ts";

/** What no text in UTF-8 has: lone and overlong bytes, halves of pairs, and the marks of other encodings. */
const odd: readonly (readonly number[])[] = [
  [0xff],
  [0x80],
  [0xc0, 0x80],
  [0xe0, 0x80, 0xaf],
  [0xed, 0xa0, 0x80],
  [0xf4, 0x90, 0x80, 0x80],
  [0xc3],
  [0x00],
  [0xff, 0xfe],
  [0xfe, 0xff],
  [0xef, 0xbb, 0xbf],
];

/** Bytes with some of them changed, lost or put in. */
export function bytesChanged(bytes: Uint8Array, random: Random): Uint8Array {
  const at = random.below(bytes.length + 1);
  const [before, after] = [bytes.subarray(0, at), bytes.subarray(at)];
  switch (random.below(7)) {
    case 0:
      return Buffer.concat([before, Uint8Array.from(oneOf(random, odd)), after]);
    case 1:
      return Buffer.concat([Uint8Array.from(oneOf(random, odd)), bytes]);
    case 2:
      return before;
    case 3:
      return Buffer.concat([before, after.subarray(few(random, 40))]);
    case 4:
      return Buffer.from(Buffer.from(bytes).toString("utf8"), oneOf(random, ["utf16le", "latin1"] as const));
    case 5:
      return bytes.map((byte) => (random.below(200) === 0 ? byte ^ (1 << random.below(8)) : byte));
    default:
      return bytes.map((byte, place) => (place === at ? random.below(256) : byte));
  }
}
