import { inEnglish } from "../../../base/text/said/english.ts";
import { row, say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Graph } from "../../../link/graph.ts";
import { saysSame } from "../../../read/edit/written.ts";
import type { Written } from "../../../read/edit/written.ts";
import { fieldLines } from "../../pages/fields.ts";
import { words } from "../../pages/pieces.ts";
import type { FieldRow } from "../../pages/pieces.ts";
import type { Hidden } from "./hidden.ts";
import { withTexts } from "./written.ts";
import type { RecordWritten } from "./written.ts";

/** A field of a record in words, as it was and as it is; empty where it was or is not there. */
export interface FieldChange {
  readonly name: string;
  readonly before: readonly FieldRow[];
  readonly after: readonly FieldRow[];
}

/** One reading of a record, with what is needed to put it into words. */
export interface Reading {
  readonly graph: Graph;
  readonly record: RecordWritten;
  readonly hidden: Hidden;
}

/** The fields in which two readings of one record differ; one of them may be missing. */
export function fieldChanges(
  old: Reading | null,
  now: Reading | null,
  renamed: (text: string) => string = (text) => text,
): readonly FieldChange[] {
  const names = new Set([old, now].flatMap((one) => Object.keys(one?.record.fields ?? {})));
  return [...names].flatMap((name) => {
    const was = old?.record.fields[name] ?? null;
    const is = now?.record.fields[name] ?? null;
    if (saysSame(was === null || name === "id" ? was : withTexts(was, renamed), is)) return [];
    if ([old, now].some((one) => one && keptOut(one, name))) return [];
    const [before, after] = differing(rowsIn(old, name, was), rowsIn(now, name, is));
    const same = JSON.stringify(before) === JSON.stringify(after);
    return [
      {
        name: name.replace(/-/g, " "),
        before: same && was !== null && old ? plainRows(was, old.hidden.names) : before,
        after: same && is !== null && now ? plainRows(is, now.hidden.names) : after,
      },
    ];
  });
}

/** Of entries under names of their own only those that differ: the others say nothing of the change. */
function differing(
  before: readonly FieldRow[],
  after: readonly FieldRow[],
): readonly [readonly FieldRow[], readonly FieldRow[]] {
  if ([...before, ...after].some(({ label }) => label === null)) return [before, after];
  const without = (rows: readonly FieldRow[], others: readonly FieldRow[]): readonly FieldRow[] => {
    const same = new Set(others.map((row) => JSON.stringify(row)));
    return rows.filter((row) => !same.has(JSON.stringify(row)));
  };
  const left = [without(before, after), without(after, before)] as const;
  return left.every((rows) => rows.length === 0) ? [before, after] : left;
}

/** Whether a field stays out of every output; of a record that could not be read, every place does. */
function keptOut({ record, hidden }: Reading, name: string): boolean {
  if (name === "coordinates") return true;
  return name === "found-at" && (record.known === null || hidden.place(record.id));
}

/** A field as its record's sheet tells it; what the sheet leaves to other places is told as it is written. */
function rowsIn(reading: Reading | null, name: string, value: Written | null): readonly FieldRow[] {
  if (!reading || value === null) return [];
  const { graph, record, hidden } = reading;
  const line = record.known
    ? fieldLines(graph, record.known, "").find((one) => one.name === name.replace(/-/g, " "))
    : undefined;
  return line?.lines ?? plainRows(value, hidden.names);
}

/** A text under its name. */
function under(name: Text, text: Text): Text {
  return typeof name === "string" && typeof text === "string" ? `${name}: ${text}` : say`${name}: ${text}`;
}

/** Texts in a row; a text of the corpus where all are. */
function inARow(texts: readonly Text[]): Text {
  const all = texts.flatMap((text) => (typeof text === "string" ? [text] : []));
  return all.length === texts.length ? all.join(", ") : say`${row(texts, "comma")}`;
}

/** A value as it is typed, line by line. */
export function plainRows(value: Written, hidden: (text: string) => boolean): readonly FieldRow[] {
  const shown = (text: string): Text => (hidden(text) ? say`something withheld` : text);
  const inline = (one: Written): Text => {
    if (typeof one === "string") return shown(one);
    if (Array.isArray(one)) return inARow(one.map(inline));
    return inARow(Object.entries(one).map(([key, inner]) => under(shown(key), inline(inner))));
  };
  const line = (text: Text, label: Text | null = null): FieldRow => ({
    label: label === null ? null : inEnglish(label),
    ...(label === null || typeof label === "string" ? {} : { labelSaid: label }),
    pieces: [words(text)],
  });
  if (typeof value === "string") return [line(shown(value))];
  if (Array.isArray(value)) return value.map((one) => line(inline(one)));
  return Object.entries(value).map(([key, one]) => line(inline(one), shown(key)));
}
