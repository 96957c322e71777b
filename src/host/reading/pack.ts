import type { Stats } from "node:fs";
import { packedRead, unpackedRead } from "../../read/decode/kept/kept.ts";
import type { FileSources } from "../../read/decode/kept/kept.ts";
import { packing } from "../../read/decode/kept/packing.ts";
import type { Tables } from "../../read/decode/kept/tables.ts";
import { unpacking } from "../../read/decode/kept/unpacking.ts";
import type { FileRecords } from "../../read/record.ts";
import type { SourceFile } from "../../read/source-file.ts";
import { fileOfUtf8 } from "../corpus-folder.ts";
import { lettersOf, textsIn } from "./letters.ts";
import { joined, numbersIn, parted, wholesIn } from "./parts.ts";

/** By what a file is known again without being read: its size, when it was written and changed, and its place on the disk. */
export type Stamp = readonly [size: number, written: number, changed: number, place: number];

/** A file of a corpus as it was read, and what it says in the manner in which it was read last. */
export interface PackedFile {
  readonly file: SourceFile;
  /** Null where the file was too fresh to be known again: it might be written once more at the same time. */
  readonly stamp: Stamp | null;
  /** Null where nothing is kept but the text. */
  readonly said: { readonly manner: string; readonly read: FileRecords | FileSources } | null;
}

/** Two times that are nearer than this, in ms, may be told as one: a disk may count by two seconds. */
const grain = 3000;

/** The stamp of a file that is about to be read at a time, in ms since 1970. */
export function stampOf(about: Stats, now: number): Stamp | null {
  const latest = Math.max(about.mtimeMs, about.ctimeMs);
  return now - latest > grain ? [about.size, about.mtimeMs, about.ctimeMs, about.ino] : null;
}

/** Whether a file is the one that was read. */
export function isAsItWas([size, written, changed, place]: Stamp, about: Stats): boolean {
  return size === about.size && written === about.mtimeMs && changed === about.ctimeMs && place === about.ino;
}

/** Numbers for each file: those of its stamp, and path, bytes of the text, manner and place of what it says. */
const [perStamp, perRow] = [4, 4] as const;

/** In the place of a stamp that is null, and of a manner where nothing is kept. */
const nothing = { stamp: [-1, 0, 0, 0], manner: 0 } as const;

/** What of the tables is no number and no text; the manners are counted from one. */
type Names = readonly [manners: readonly string[], shapes: Tables["shapes"]];

/** Files as bytes; `edition` names the program, since another may read the same text otherwise. */
export function packed(edition: string, files: readonly PackedFile[]): Uint8Array {
  const tables = packing();
  const manners = [...new Set(files.flatMap(({ said }) => said?.manner ?? []))];
  const mannerAt = new Map(manners.map((manner, at) => [manner, at + 1]));
  const texts = files.map(({ file }) => Buffer.from(file.text, "utf8"));
  const rows = files.flatMap(({ file, said }, at) => [
    tables.put(file.path),
    texts[at]?.length ?? 0,
    mannerAt.get(said?.manner ?? "") ?? nothing.manner,
    said ? packedRead(said.read, tables) : 0,
  ]);
  const { strings, shapes, numbers, nodes } = tables.tables();
  const { sizes, narrow, wide } = lettersOf(strings);
  const names: Names = [manners, shapes];
  return joined(edition, [
    numbers,
    Float64Array.from(files.flatMap(({ stamp }) => stamp ?? nothing.stamp)),
    nodes,
    Uint32Array.from(rows),
    sizes,
    narrow,
    wide,
    Buffer.from(JSON.stringify(names), "utf8"),
    Buffer.concat(texts),
  ]);
}

/** The files in what was packed; none where another edition of the program did it, null where it is spoilt. */
export function unpacked(edition: string, bytes: Uint8Array): readonly PackedFile[] | null {
  try {
    const parts = parted(edition, bytes);
    return parts && filesIn(parts);
  } catch {
    return null;
  }
}

function filesIn(parts: readonly Buffer[]): readonly PackedFile[] {
  const [numbers, stamps, nodes, rows, sizes, narrow, wide, named, texts] = parts;
  if (!numbers || !stamps || !nodes || !rows || !sizes || !narrow || !wide || !named || !texts) return [];
  const [manners, shapes] = JSON.parse(named.toString("utf8")) as Names;
  const strings = textsIn({ sizes: wholesIn(sizes), narrow, wide });
  const tables = unpacking({ strings, shapes, numbers: numbersIn(numbers), nodes: wholesIn(nodes) });
  const [stampAt, rowAt] = [numbersIn(stamps), wholesIn(rows)];
  // Apart from the tables, which are done with sooner.
  const own = new Uint8Array(texts);
  const files: PackedFile[] = [];
  for (let row = 0, text = 0; row < rowAt.length; row += perRow) {
    const stamp = perStamp * files.length;
    const size = stampAt[stamp] ?? 0;
    const path = tables.valueAt(rowAt[row] ?? 0) as string;
    const file = fileOfUtf8(path, own.subarray(text, (text += rowAt[row + 1] ?? 0)));
    const manner = manners[(rowAt[row + 2] ?? 0) - 1];
    const read = manner === undefined ? null : unpackedRead(rowAt[row + 3] ?? 0, tables, file);
    files.push({
      file,
      stamp:
        size < 0 ? null : [size, stampAt[stamp + 1] ?? 0, stampAt[stamp + 2] ?? 0, stampAt[stamp + 3] ?? 0],
      said: read && { manner: manner ?? "", read },
    });
  }
  return files;
}
