import { deflateSync } from "node:zlib";

/** Tables of a font that are not needed to draw its letters. */
const needless = new Set(["BASE", "DSIG", "STAT", "gasp", "MATH"]);

/**
 * A TrueType font with the shapes of some glyphs alone, as WOFF (W3C, WOFF File Format 1.0). Every glyph keeps its number, so
 * that joining, kerning and ligatures go on as in the whole font; those left out are empty.
 */
export function woffOf(font: Uint8Array, glyphs: Iterable<number>): Uint8Array {
  const tables = tablesOf(font);
  const get = (name: string): Buffer => {
    const table = tables.get(name);
    if (table === undefined) throw new Error(`woffOf: no table ${name}`);
    return table;
  };
  const head = Buffer.from(get("head"));
  const offsets = offsetsIn(get("loca"), head.readInt16BE(50));
  const kept = withParts(get("glyf"), offsets, glyphs);
  const parts: Buffer[] = [];
  const places = Buffer.alloc(4 * offsets.length);
  let at = 0;
  for (let glyph = 0; glyph + 1 < offsets.length; glyph++) {
    places.writeUInt32BE(at, 4 * glyph);
    if (!kept.has(glyph)) continue;
    const shape = padded(get("glyf").subarray(offsets[glyph], offsets[glyph + 1]));
    parts.push(shape);
    at += shape.length;
  }
  places.writeUInt32BE(at, 4 * (offsets.length - 1));
  head.writeInt16BE(1, 50);
  tables.set("head", head);
  tables.set("loca", places);
  tables.set("glyf", Buffer.concat(parts));
  tables.set("post", withoutNames(get("post")));
  for (const name of needless) tables.delete(name);
  return written(tables, font);
}

function tablesOf(bytes: Uint8Array): Map<string, Buffer> {
  const font = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  return new Map(
    Array.from({ length: font.readUInt16BE(4) }, (_, n) => {
      const entry = 12 + 16 * n;
      const start = font.readUInt32BE(entry + 8);
      const name = font.toString("latin1", entry, entry + 4);
      return [name, font.subarray(start, start + font.readUInt32BE(entry + 12))] as const;
    }),
  );
}

function offsetsIn(loca: Buffer, format: number): readonly number[] {
  return format === 0
    ? Array.from({ length: loca.length / 2 }, (_, n) => 2 * loca.readUInt16BE(2 * n))
    : Array.from({ length: loca.length / 4 }, (_, n) => loca.readUInt32BE(4 * n));
}

/** Glyphs with those that they are put together from (OpenType, `glyf`, composite glyphs). */
function withParts(glyf: Buffer, offsets: readonly number[], glyphs: Iterable<number>): ReadonlySet<number> {
  const kept = new Set([0, ...glyphs]);
  for (const glyph of kept) {
    const [start = 0, end = 0] = [offsets[glyph], offsets[glyph + 1]];
    if (end - start < 10 || glyf.readInt16BE(start) >= 0) continue;
    for (let at = start + 10, flags = 0x20; (flags & 0x20) !== 0 && at + 4 <= end;) {
      flags = glyf.readUInt16BE(at);
      kept.add(glyf.readUInt16BE(at + 2));
      const scale = (flags & 0x08) !== 0 ? 2 : (flags & 0x40) !== 0 ? 4 : (flags & 0x80) !== 0 ? 8 : 0;
      at += 4 + ((flags & 0x01) !== 0 ? 4 : 2) + scale;
    }
  }
  return kept;
}

/** The `post` table in its third version, without names of glyphs. */
function withoutNames(post: Buffer): Buffer {
  const short = Buffer.from(post.subarray(0, 32));
  short.writeUInt32BE(0x00030000, 0);
  return short;
}

function padded(part: Buffer): Buffer {
  return part.length % 4 === 0 ? part : Buffer.concat([part, Buffer.alloc(4 - (part.length % 4))]);
}

function checksum(table: Buffer): number {
  const whole = padded(table);
  let sum = 0;
  for (let at = 0; at < whole.length; at += 4) sum = (sum + whole.readUInt32BE(at)) >>> 0;
  return sum;
}

/** Packed tables that are the same in every part of a font. */
const packs = new WeakMap<Uint8Array, Map<string, Buffer>>();
const changing = new Set(["glyf", "loca", "head"]);

function packed(font: Uint8Array, name: string, table: Buffer): Buffer {
  const known = packs.get(font) ?? new Map<string, Buffer>();
  packs.set(font, known);
  const before = changing.has(name) ? undefined : known.get(name);
  if (before !== undefined) return before;
  const small = deflateSync(table, { level: 9 });
  const body = small.length < table.length ? small : table;
  known.set(name, body);
  return body;
}

function written(tables: ReadonlyMap<string, Buffer>, font: Uint8Array): Buffer {
  const names = [...tables.keys()].sort();
  const directory = Buffer.alloc(20 * names.length);
  const bodies: Buffer[] = [];
  let at = 44 + directory.length;
  let plain = 12 + 16 * names.length;
  names.forEach((name, n) => {
    const table = tables.get(name) ?? Buffer.alloc(0);
    const body = packed(font, name, table);
    directory.write(name, 20 * n, "latin1");
    directory.writeUInt32BE(at, 20 * n + 4);
    directory.writeUInt32BE(body.length, 20 * n + 8);
    directory.writeUInt32BE(table.length, 20 * n + 12);
    directory.writeUInt32BE(checksum(table), 20 * n + 16);
    bodies.push(padded(body));
    at += padded(body).length;
    plain += padded(table).length;
  });
  const header = Buffer.alloc(44);
  header.write("wOFF", 0, "latin1");
  header.set(font.subarray(0, 4), 4);
  header.writeUInt32BE(at, 8);
  header.writeUInt16BE(names.length, 12);
  header.writeUInt32BE(plain, 16);
  header.writeUInt16BE(1, 20);
  return Buffer.concat([header, directory, ...bodies]);
}
