const signs = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

/** Bytes in base 64 (RFC 4648, section 4). */
export function base64(bytes: Uint8Array): string {
  let out = "";
  for (let at = 0; at < bytes.length; at += 3) {
    const [a = 0, b = 0, c = 0] = bytes.subarray(at, at + 3);
    const left = bytes.length - at;
    const group = (a << 16) | (b << 8) | c;
    out += signs.charAt(group >> 18) + signs.charAt((group >> 12) & 63);
    out += left > 1 ? signs.charAt((group >> 6) & 63) : "=";
    out += left > 2 ? signs.charAt(group & 63) : "=";
  }
  return out;
}
