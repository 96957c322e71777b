import type { Finding } from "../../../base/finding.ts";
import type { Source } from "../../bibliography/read.ts";
import type { FileRead } from "../../read.ts";
import { placed } from "../../record.ts";
import type { AnyRecord, FileRecords, Saying } from "../../record.ts";
import type { SourceFile } from "../../source-file.ts";
import { treesIn } from "../../yaml/trees.ts";
import type { Packing } from "./packing.ts";
import type { Unpacked } from "./unpacking.ts";

/** What a bibliography says. */
export interface FileSources {
  readonly sources: readonly Source[];
  readonly findings: readonly Finding[];
}

/**
 * Whether what a file says can be kept beside its text: of records that stand in YAML and of which there is nothing to
 * tell, only what they say is kept, and their places are found in the text again.
 */
export function canBeKept(path: string, read: FileRead): read is FileRecords | FileSources {
  if ("prose" in read) return false;
  return (
    "sources" in read || (read.spoilt.length === 0 && read.findings.length === 0 && /\.ya?ml$/u.test(path))
  );
}

/** Puts what a file says into tables: its place there. */
export function packedRead(read: FileRecords | FileSources, { put, putApart, putRow }: Packing): number {
  if ("sources" in read) return putRow([putApart({ sources: read.sources, findings: read.findings })]);
  // What a record says is its own, though another says the same.
  return putRow(read.records.flatMap(({ list, values }) => [put(list), putApart(values)]));
}

/** What was put there, of a file with the same text. */
export function unpackedRead(
  row: number,
  { valueAt, lengthOf, placeIn }: Unpacked,
  file: SourceFile,
): FileRecords | FileSources {
  const length = lengthOf(row);
  if (length === 1) return valueAt(placeIn(row, 0)) as FileSources;
  const trees = treesIn(file);
  const records: AnyRecord[] = [];
  for (let at = 0; at < length; at += 2) {
    const list = valueAt(placeIn(row, at));
    const values = valueAt(placeIn(row, at + 1)) as { readonly id?: string };
    const id = values.id ?? null;
    records.push(placed({ list, id, named: id !== null, values, file: file.path } as Saying, trees, at / 2));
  }
  return { records: records.slice(), spoilt: [], findings: [] };
}
