import { crc32, deflateRawSync, inflateRawSync } from "node:zlib";
import type { Made } from "../../../write/telling/made.ts";

/** 1 January 1980, 00:00, the first day that a zip knows: what is packed has no other date, so that the same files give the same bytes. */
const day = 0x0021;
/** Names are UTF-8 (bit 11 of APPNOTE 4.4.4). */
const utf8 = 0x0800;

const [local, central, end] = [0x04034b50, 0x02014b50, 0x06054b50] as const;

/** Files packed into one, in their order (PKWARE APPNOTE 6.3: deflated, no extra fields). */
export function zipOf(files: readonly Made[]): Uint8Array {
  const parts: Buffer[] = [];
  const directory: Buffer[] = [];
  let at = 0;
  for (const { path, content } of files) {
    const name = Buffer.from(path, "utf8");
    const bytes = Buffer.from(content);
    const packed = deflateRawSync(bytes, { level: 9 });
    const smaller = packed.length < bytes.length;
    const data = smaller ? packed : bytes;
    const about = Buffer.alloc(26);
    about.writeUInt16LE(20, 0);
    about.writeUInt16LE(utf8, 2);
    about.writeUInt16LE(smaller ? 8 : 0, 4);
    about.writeUInt16LE(0, 6);
    about.writeUInt16LE(day, 8);
    about.writeUInt32LE(crc32(bytes), 10);
    about.writeUInt32LE(data.length, 14);
    about.writeUInt32LE(bytes.length, 18);
    about.writeUInt16LE(name.length, 22);
    const head = Buffer.alloc(4);
    head.writeUInt32LE(local);
    parts.push(head, about, name, data);
    directory.push(entryOf(about, at), name);
    at += 30 + name.length + data.length;
  }
  const listed = Buffer.concat(directory);
  const last = Buffer.alloc(22);
  last.writeUInt32LE(end);
  last.writeUInt16LE(files.length, 8);
  last.writeUInt16LE(files.length, 10);
  last.writeUInt32LE(listed.length, 12);
  last.writeUInt32LE(at, 16);
  return Buffer.concat([...parts, listed, last]);
}

/** The entry of the directory for a file whose own head says `about` and stands at `at`. */
function entryOf(about: Buffer, at: number): Buffer {
  const entry = Buffer.alloc(46);
  entry.writeUInt32LE(central);
  entry.writeUInt16LE(20, 4);
  about.copy(entry, 6);
  entry.writeUInt32LE(at, 42);
  return entry;
}

/** What a zip holds, in the order of its directory; folders are left out. Throws on what is no zip of ours or a library's. */
export function unzipped(zip: Uint8Array): readonly Made[] {
  const bytes = Buffer.from(zip.buffer, zip.byteOffset, zip.byteLength);
  const last = bytes.lastIndexOf(Buffer.from([0x50, 0x4b, 0x05, 0x06]));
  if (last < 0) throw new RangeError("Unexpected bytes, expected a zip");
  const count = bytes.readUInt16LE(last + 10);
  const files: Made[] = [];
  let at = bytes.readUInt32LE(last + 16);
  for (let place = 0; place < count; place++) {
    if (bytes.readUInt32LE(at) !== central)
      throw new RangeError("Unexpected bytes, expected a zip's directory");
    const [method, size] = [bytes.readUInt16LE(at + 10), bytes.readUInt32LE(at + 20)];
    const lengths = [28, 30, 32].map((offset) => bytes.readUInt16LE(at + offset));
    const [name = 0, extra = 0, note = 0] = lengths;
    const path = bytes.toString("utf8", at + 46, at + 46 + name);
    const from = bytes.readUInt32LE(at + 42);
    const start = from + 30 + bytes.readUInt16LE(from + 26) + bytes.readUInt16LE(from + 28);
    const data = bytes.subarray(start, start + size);
    if (!path.endsWith("/")) files.push({ path, content: method === 0 ? data : inflateRawSync(data) });
    at += 46 + name + extra + note;
  }
  return files;
}
