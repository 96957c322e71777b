import { inflateRawSync } from "node:zlib";

/** The entries of a zip file by their names, read by its list at the end (APPNOTE.TXT 4.3.12). */
export function unzipped(zip: Uint8Array): ReadonlyMap<string, Uint8Array> {
  const bytes = Buffer.from(zip.buffer, zip.byteOffset, zip.byteLength);
  const end = bytes.lastIndexOf("PK\u0005\u0006", undefined, "latin1");
  const entries = new Map<string, Uint8Array>();
  let at = bytes.readUInt32LE(end + 16);
  for (let left = bytes.readUInt16LE(end + 10); left > 0; left--) {
    const [method, size] = [bytes.readUInt16LE(at + 10), bytes.readUInt32LE(at + 20)];
    const [name, extra, comment] = [28, 30, 32].map((place) => bytes.readUInt16LE(at + place)) as [
      number,
      number,
      number,
    ];
    const own = bytes.readUInt32LE(at + 42);
    const start = own + 30 + bytes.readUInt16LE(own + 26) + bytes.readUInt16LE(own + 28);
    const packed = bytes.subarray(start, start + size);
    entries.set(
      bytes.toString("utf8", at + 46, at + 46 + name),
      method === 0 ? packed : inflateRawSync(packed),
    );
    at += 46 + name + extra + comment;
  }
  return entries;
}

/** One entry as text; throws where there is none of that name. */
export function textIn(zip: Uint8Array, name: string): string {
  const entry = unzipped(zip).get(name);
  if (!entry) throw new Error(`no ${name} in the zip file`);
  return new TextDecoder().decode(entry);
}
