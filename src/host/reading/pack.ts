import { createHash } from "node:crypto";
import type { Stats } from "node:fs";
import { packedRead, unpackedRead } from "../../read/decode/kept/kept.ts";
import type { FileSources } from "../../read/decode/kept/kept.ts";
import { packing } from "../../read/decode/kept/packing.ts";
import type { Tables } from "../../read/decode/kept/tables.ts";
import { unpacking } from "../../read/decode/kept/unpacking.ts";
import type { FileRecords } from "../../read/record.ts";
import type { SourceFile } from "../../read/source-file.ts";
import { textOf } from "../corpus-folder.ts";

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

/** What stands before all else: by whom the files were packed, the SHA-256 of what follows, and how long its parts are. */
interface Head {
  readonly edition: string;
  readonly sha256: string;
  /** Bytes of the numbers, of the nodes and of the table; the texts follow. */
  readonly parts: readonly [numbers: number, nodes: number, table: number];
}

/** Path, stamp, bytes of the text, and the manner and the place of what it says; one place is below 0 where it is not kept. */
type Row = readonly [path: string, stamp: Stamp | null, text: number, manner: number, place: number];

/** The rows of the files, with the tables that are no numbers. */
type Table = readonly [readonly string[], readonly Row[], Tables["strings"], Tables["shapes"]];

/** Files as bytes; `edition` names the program, since another may read the same text otherwise. */
export function packed(edition: string, files: readonly PackedFile[]): Uint8Array {
  const manners: string[] = [];
  const places = new Map<string, number>();
  const mannerAt = (manner: string): number => {
    const place = places.get(manner) ?? manners.push(manner) - 1;
    places.set(manner, place);
    return place;
  };
  const tables = packing();
  const texts: Buffer[] = [];
  const rows = files.map(({ file, stamp, said }): Row => {
    const bytes = Buffer.from(file.text, "utf8");
    texts.push(bytes);
    const place = said ? packedRead(said.read, tables) : -1;
    return [file.path, stamp, bytes.length, said ? mannerAt(said.manner) : -1, place];
  });
  const { strings, shapes, numbers, nodes } = tables.tables();
  const table: Table = [manners, rows, strings, shapes];
  const parts = [bytesOf(numbers), bytesOf(nodes), Buffer.from(JSON.stringify(table), "utf8")] as const;
  const rest = Buffer.concat([...parts, ...texts]);
  const head: Head = {
    edition,
    sha256: sha256Of(rest),
    parts: [parts[0].length, parts[1].length, parts[2].length],
  };
  return Buffer.concat([Buffer.from(`${JSON.stringify(head)}\n`, "utf8"), rest]);
}

const bytesOf = ({ buffer, byteOffset, byteLength }: ArrayBufferView): Buffer =>
  Buffer.from(buffer as ArrayBuffer, byteOffset, byteLength);

/** The files in what was packed; none where another edition of the program did it, null where it is spoilt. */
export function unpacked(edition: string, bytes: Uint8Array): readonly PackedFile[] | null {
  const all = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  try {
    const end = all.indexOf(10);
    const head = JSON.parse(all.toString("utf8", 0, end)) as Partial<Head>;
    if (typeof head.edition !== "string") return null;
    if (head.edition !== edition) return [];
    if (!head.parts) return null;
    const rest = all.subarray(end + 1);
    if (sha256Of(rest) !== head.sha256) return null;
    return filesIn(rest, head.parts);
  } catch {
    return null;
  }
}

function filesIn(rest: Buffer, [ofNumbers, ofNodes, ofTable]: Head["parts"]): readonly PackedFile[] {
  // Numbers lie on multiples of their length alone; a copy does.
  const numbers = new Float64Array(Uint8Array.from(rest.subarray(0, ofNumbers)).buffer);
  const nodes = new Uint32Array(Uint8Array.from(rest.subarray(ofNumbers, ofNumbers + ofNodes)).buffer);
  let at = ofNumbers + ofNodes;
  const table = rest.toString("utf8", at, (at += ofTable));
  const [manners, rows, strings, shapes] = JSON.parse(table) as Table;
  const tables = unpacking({ strings, shapes, numbers, nodes });
  // Apart from the tables, which are done with sooner than the texts.
  const texts = Buffer.from(rest.subarray(at));
  at = 0;
  return rows.map(([path, stamp, length, manner, place]) => {
    const file = textOf(path, texts.subarray(at, (at += length)));
    const said =
      place < 0 ? null : { manner: manners[manner] ?? "", read: unpackedRead(place, tables, file) };
    return { file, stamp, said };
  });
}

function sha256Of(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}
