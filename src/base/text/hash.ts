import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";

/** SHA-256 of a text's UTF-8 bytes, in lower-case hexadecimal. */
export function hashOf(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)));
}
