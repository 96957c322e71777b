import { sha256 } from "@noble/hashes/sha2.js";
import { utf8ToBytes } from "@noble/hashes/utils.js";

const digits = Array.from({ length: 256 }, (_, byte) => byte.toString(16).padStart(2, "0"));

/** SHA-256 of a text's UTF-8 bytes, in lower-case hexadecimal. */
export function hashOf(text: string): string {
  // Joined and not added up, it is one string and not a chain of thirty-two.
  return Array.from(sha256(utf8ToBytes(text)), (byte) => digits[byte]).join("");
}
