import type { Json } from "../../../base/json.ts";
import type { Finding } from "../../../base/finding.ts";
import type { Source } from "../../bibliography/read.ts";
import { listNames } from "../../grammar/kinds.ts";
import { placed } from "../../record.ts";
import type { FileRecords, Saying } from "../../record.ts";
import { fieldsOf } from "../../records.ts";
import type { SourceFile } from "../../source-file.ts";
import { treesIn } from "../../yaml/trees.ts";
import { isExact, packedValues, unpackedValues } from "./values.ts";

/** What a bibliography says. */
export interface FileSources {
  readonly sources: readonly Source[];
  readonly findings: readonly Finding[];
}

/**
 * What a file says, as JSON that gives the same again beside the file's text; null where it cannot: of records that stand
 * in YAML and of which there is nothing to tell, only what they say is kept, and their places are found in the text again.
 */
export function packedRead(path: string, read: FileRecords | FileSources): Json | null {
  if ("sources" in read) return isExact(read) ? read : null;
  if (read.spoilt.length > 0 || read.findings.length > 0 || !/\.ya?ml$/u.test(path)) return null;
  const packed = read.records.map(({ list, values }) => [
    listNames.indexOf(list),
    packedValues(fieldsOf(list), values),
  ]);
  return isExact(packed) ? packed : null;
}

/** What was packed, of a file with the same text. */
export function unpackedRead(packed: Json, { path, text }: SourceFile): FileRecords | FileSources {
  if (!Array.isArray(packed)) return packed as unknown as FileSources;
  const trees = treesIn(path, text);
  const items = packed as unknown as readonly (readonly [number, Record<string, unknown>])[];
  const records = items.map(([at, said], place) => {
    const list = listNames[at];
    if (!list) throw new Error(`Unknown list ${at}, expected the place of one`);
    const values = unpackedValues(fieldsOf(list), said);
    const id = values["id"] ?? null;
    return placed({ list, id, named: id !== null, values, file: path } as Saying, trees, place);
  });
  return { records, spoilt: [], findings: [] };
}
