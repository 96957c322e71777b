import { isDeepStrictEqual } from "node:util";
import { edited } from "../../../src/base/text/edit.ts";
import { unitTable } from "../../../src/base/unit/unit-table.ts";
import { textEdits } from "../../../src/read/edit/text-edits.ts";
import { readInFull, readInPieces, readWhole } from "../../../src/read/records.ts";
import type { SourceFile } from "../../../src/read/source-file.ts";
import { compared } from "../../laws/reading/scanner-texts.ts";
import type { Faults } from "./corpus.ts";

const context = () => ({ units: unitTable([]), approximate: 0.025, plusMinus: "standard" as const });

/** Longest text that is read in every way. */
const short = 200_000;

/** What people type into a field, as hard to write down as may be. */
const typed = [
  "# one",
  "two: of them",
  "- 5",
  "",
  "'",
  '"',
  "two\nlines",
  "ends in a space ",
  "@x",
  "\u2028",
  "7",
  "[a, b]",
  "😀",
];

/**
 * Reads a file of records by the scanner and by the reader of all of YAML, whole and item by item, which come to the same;
 * a field of one of its records gets a value, and the file then has as many records, that one with the value.
 */
export function recordsFaults(file: SourceFile, place: number): Faults {
  if (file.problem !== undefined || file.text.length > short) return [];
  const faults: string[] = [];
  if (compared([file.text]).unlike.length > 0)
    faults.push("the two readers of YAML come to different values or places");
  const now = context();
  const read = readWhole(file, now);
  if (!isDeepStrictEqual(read, readInFull(file, now)))
    faults.push("the two readers of records come to different records");
  const pieces = readInPieces(file, now);
  if (pieces && !isDeepStrictEqual(pieces, read))
    faults.push("read item by item it comes to different records");
  const record = read.records[place % Math.max(1, read.records.length)];
  if (!record || place % 3 > 0) return faults;
  const value = typed[place % typed.length] ?? "";
  const change = { is: "field", record: record.node.start, path: ["note"], value } as const;
  const edits = textEdits(file, change);
  if ("problem" in edits) return faults;
  const after = readWhole({ ...file, text: edited(file.text, edits) }, now);
  const noted: { readonly note?: string } | undefined = after.records[read.records.indexOf(record)]?.values;
  if (after.records.length !== read.records.length)
    faults.push("a note that was typed costs or makes a record");
  else if (value !== "" && noted?.note !== value)
    faults.push("a note that was typed reads as something else");
  return faults;
}
