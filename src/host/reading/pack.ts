import { createHash } from "node:crypto";
import type { Stats } from "node:fs";

/** By what a file is known again without being read: its size, when it was written and changed, and its place on the disk. */
export type Stamp = readonly [size: number, written: number, changed: number, place: number];

/** What a file says in one manner of reading, as JSON. */
export interface PackedRead {
  readonly manner: string;
  readonly json: () => string;
}

/** A file of a corpus as it was read: its text, and as JSON what it says in one manner of reading or several. */
export interface PackedFile {
  readonly path: string;
  readonly text: string;
  /** Null where the file was too fresh to be known again: it might be written once more at the same time. */
  readonly stamp: Stamp | null;
  readonly reads: readonly PackedRead[];
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

/** What stands before the files: by whom they were packed, the SHA-256 of all that follows, and how long the table is. */
interface Head {
  readonly edition: string;
  readonly sha256: string;
  readonly table: number;
}

/** Path, stamp, bytes of the text, and for each manner its place and the bytes of what the file says in it. */
type Row = readonly [
  path: string,
  stamp: Stamp | null,
  text: number,
  reads: readonly (readonly [number, number])[],
];

/** Files as bytes; `edition` names the program, since another may read the same text otherwise. */
export function packed(edition: string, files: readonly PackedFile[]): Uint8Array {
  const manners: string[] = [];
  const places = new Map<string, number>();
  const placeOf = (manner: string): number => {
    const place = places.get(manner) ?? manners.push(manner) - 1;
    places.set(manner, place);
    return place;
  };
  const parts: Buffer[] = [];
  const put = (text: string): number => {
    const bytes = Buffer.from(text, "utf8");
    parts.push(bytes);
    return bytes.length;
  };
  const rows = files.map(({ path, stamp, text, reads }): Row => [
    path,
    stamp,
    put(text),
    reads.map(({ manner, json }) => [placeOf(manner), put(json())]),
  ]);
  const table = Buffer.from(JSON.stringify([manners, rows]), "utf8");
  const rest = Buffer.concat([table, ...parts]);
  const head: Head = { edition, sha256: sha256Of(rest), table: table.length };
  return Buffer.concat([Buffer.from(`${JSON.stringify(head)}\n`, "utf8"), rest]);
}

/**
 * The files in what was packed; none where another edition of the program did it, null where it is spoilt. What a file says
 * is taken out of the bytes when it is asked for.
 */
export function unpacked(edition: string, bytes: Uint8Array): readonly PackedFile[] | null {
  const all = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  try {
    const end = all.indexOf(10);
    const head = JSON.parse(all.toString("utf8", 0, end)) as Partial<Head>;
    if (typeof head.edition !== "string" || typeof head.table !== "number") return null;
    if (head.edition !== edition) return [];
    const rest = all.subarray(end + 1);
    if (sha256Of(rest) !== head.sha256) return null;
    return filesIn(rest, head.table);
  } catch {
    return null;
  }
}

function filesIn(rest: Buffer, from: number): readonly PackedFile[] {
  const [manners, rows] = JSON.parse(rest.toString("utf8", 0, from)) as [readonly string[], readonly Row[]];
  let at = from;
  const take = (length: number): string => rest.toString("utf8", at, (at += length));
  return rows.map(([path, stamp, length, lengths]) => ({
    path,
    stamp,
    text: take(length),
    reads: lengths.map(([manner, bytes]) => {
      const start = at;
      at += bytes;
      return { manner: manners[manner] ?? "", json: () => rest.toString("utf8", start, start + bytes) };
    }),
  }));
}

function sha256Of(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}
