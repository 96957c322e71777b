import * as fc from "fast-check";
import { everywhere, kindOf } from "../../../src/read/grammar/kinds.ts";
import { handWritten, keepings, recordsIn, saidIn } from "./edits-files.ts";
import type { Found } from "./edits-files.ts";

const files = handWritten.filter(([name]) => name.endsWith(".yaml") && !name.startsWith("corpus"));
/** The files of records, in every way in which they may be kept. */
export const texts = files.flatMap(([name, text]) =>
  keepings.map(([how, kept]) => ({ name: `${name} ${how}`, text: kept(text) })),
);
/** Those that hold any, with their records. */
export const withRecords = texts
  .map((one) => ({ ...one, records: recordsIn(one.text) }))
  .filter(({ records }) => records.length > 0);

/** Any record of any file. */
export const anyRecord = fc
  .constantFrom(...withRecords)
  .chain((file) => fc.record({ text: fc.constant(file.text), record: fc.constantFrom(...file.records) }));

/** Every field that a record of a list may have. */
export const fieldsOf = (list: Found["list"]) => [
  ...Object.keys(kindOf(list).fields),
  ...Object.keys(everywhere),
  "x-own",
];
const standing = ({ node }: Found) => node.entries.map(({ key }) => key);

/** A file's text, a record in it, and one of its fields, whether it is there or not. */
export const anyField = anyRecord.chain(({ text, record }) =>
  fc.record({
    text: fc.constant(text),
    record: fc.constant(record),
    field: fc.constantFrom(...standing(record), ...standing(record), ...fieldsOf(record.list)),
  }),
);

/** Where a record's own lines begin and end: comments that stand further in than its dash, right below, are its own. */
export function ownLines(text: string, { node }: Found): { readonly start: number; readonly end: number } {
  const line = text.lastIndexOf("\n", node.start - 1) + 1;
  const dashLine = /^\s*-?\s*(?:&\S+\s*)?$/u.test(text.slice(line, node.start)) ? line : node.start;
  const start =
    text.lastIndexOf("-", node.start) >= dashLine
      ? line
      : text.lastIndexOf("\n", text.lastIndexOf("-", node.start)) + 1;
  const end = Math.max(node.end, ...node.entries.map(({ keyEnd }) => keyEnd));
  const closing = /[^\n]*(?:\n[ \t]*#[^\n]*)*\n?/uy;
  closing.lastIndex = text[end - 1] === "\n" ? end - 1 : end;
  return { start, end: closing.lastIndex + (closing.exec(text)?.[0].length ?? 0) };
}

/** What is said in a file, with the record at a place left to a function. */
export function others(text: string, { list, place }: Found): ReadonlyMap<string, unknown> {
  const all = new Map(saidIn(text));
  const items = all.get(list);
  all.set(list, Array.isArray(items) ? items.filter((_, index) => index !== place) : []);
  return all;
}

/** What the fields of a record say. */
export function fieldsSaid(text: string, { list, place }: Found): Readonly<Record<string, unknown>> {
  const items = saidIn(text).get(list);
  const record = Array.isArray(items) ? (items as readonly unknown[])[place] : items;
  return Object.fromEntries(record as ReadonlyMap<string, unknown>);
}
