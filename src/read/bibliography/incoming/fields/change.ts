import type { Id } from "../../../../base/finding.ts";
import { edited } from "../../../../base/text/edit.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { lexBibtex } from "../../bibtex/lexer.ts";
import { abbreviationsIn } from "../abbreviations.ts";
import { saidBy } from "../alike/alike.ts";
import { extentIn } from "../arrived.ts";
import type { Format } from "../formats.ts";
import { readAs } from "../formats.ts";
import { naming } from "../relatives.ts";
import type { Source } from "../../source.ts";
import type { Splice } from "./apply.ts";
import type { Field, Fresh } from "./field.ts";
import { hands } from "./hands.ts";

/** A field of an entry as a form has it. */
export interface Row {
  readonly name: string;
  /** Empty where the field is to be taken out. */
  readonly text: string;
  readonly is: Field["is"];
}

/** The fields of an entry, as they are written in its file. */
export function rowsOf(format: Format, text: string, source: Source): readonly Row[] {
  const { start, end } = extentIn(text, format, source.span);
  return hands[format].fields(text, start, end).map(({ name, text: said, is }) => ({ name, text: said, is }));
}

/** The edits of a file that have an entry say something else, or what stands against them, and in which field. */
export type RowEdits = { readonly edits: readonly Splice[] } | Trouble;

/** What stands against a change of an entry; the field is null where it is the whole. */
export interface Trouble {
  readonly problem: Text;
  readonly field: string | null;
}

/**
 * Has an entry say what the rows of a form say: the first of them stand for its fields, in their order, those beyond are
 * new. What is as it was stays to the byte.
 */
export function rowEdits(format: Format, text: string, source: Source, rows: readonly Row[]): RowEdits {
  const hand = hands[format];
  const extent = extentIn(text, format, source.span);
  const there = hand.fields(text, extent.start, extent.end);
  const edits: Splice[] = [];
  for (const [place, field] of there.entries()) {
    const said = rows[place]?.text ?? "";
    if (said === field.text) continue;
    if (said.trim() === "") {
      edits.push({ ...field.whole, text: "" });
      continue;
    }
    const put = hand.set(field, said);
    if (typeof put !== "string") return { problem: put.problem, field: field.name };
    edits.push({ start: field.start, end: field.end, text: put });
  }
  const fresh = rows.slice(there.length).filter((one) => one.name.trim() !== "" && one.text.trim() !== "");
  const taken = fresh.find(
    (one) => format !== "ris" && there.some((other) => other.name === one.name.trim()),
  );
  if (taken)
    return { problem: say`Duplicate field \`${taken.name.trim()}\`, expected it once`, field: taken.name };
  const odd = fresh.find((one) => !names[format].test(one.name.trim()));
  if (odd)
    return { problem: say`Unexpected name \`${odd.name}\`, expected that of a field`, field: odd.name };
  if (fresh.length === 0) return { edits };
  const put = fresh.map((one): Fresh => ({
    name: one.name.trim(),
    text: one.text,
    bare: isBare(format, one),
  }));
  const added = hand.add(text, extent, put);
  if ("problem" in added) return { problem: added.problem, field: fresh[0]?.name ?? null };
  return { edits: [...edits, added] };
}

const names: Readonly<Record<Format, RegExp>> = {
  bib: /^[A-Za-z][\w:+.-]{0,60}$/,
  ris: /^(?!TY|ER)[A-Z][A-Z0-9]$/,
  json: /^.{1,100}$/u,
};

/** New keys of JSON whose value is a list or a map are written as such. */
function isBare(format: Format, { text }: Row): boolean {
  return format === "json" && /^\s*[[{]/.test(text);
}

/** An entry as it would be read after edits: with the abbreviations of its file and the entries that lend it fields, and nothing else of it. */
export function entryAlone(
  format: Format,
  text: string,
  source: Source,
  edits: readonly Splice[],
): Source | undefined {
  const { start, end } = extentIn(text, format, source.span);
  const after = edited(
    text,
    edits.map((one) => ({ file: "", ...one })),
  );
  const own = after.slice(start, end + after.length - text.length);
  const around = format === "bib" ? lent(text, source.key, own) : [];
  const path = source.span.file;
  const whole = format === "json" ? `[${own}]` : [...around, own].join("\n");
  const { sources } = readAs(format, { path, text: whole });
  return sources.find((one) => one.key === source.key) ?? sources.at(-1);
}

/** What an entry of BibTeX is read with: abbreviations, and those that it names and they in turn. */
function lent(text: string, key: Id, own: string): readonly string[] {
  const file = { path: "", text };
  const { entries } = lexBibtex(file);
  const spans = entries.map((one) => one.span);
  const byKey = new Map(entries.map((one) => [one.key, one]));
  const met = new Set<Id>([key]);
  const open = lexBibtex({ path: "", text: own }).entries.slice(0, 1);
  const found: string[] = [];
  for (let one = open.pop(); one; one = open.pop()) {
    for (const field of one.fields) {
      if (!naming.has(field.name)) continue;
      for (const name of field.text.split(",").map((said) => said.trim())) {
        const other = byKey.get(name);
        if (!other || met.has(name)) continue;
        met.add(name);
        open.push(other);
        found.push(text.slice(other.span.start, other.span.end));
      }
    }
  }
  return [...abbreviationsIn(file, spans).map((one) => one.text), ...found];
}

/** What stands against edits of an entry in the file as a whole: another entry that would be read otherwise. */
export function troubleInFile(
  format: Format,
  file: { readonly path: string; readonly text: string },
  source: Source,
  edits: readonly Splice[],
): Trouble | null {
  const { path, text } = file;
  const { sources } = readAs(format, file);
  const after = readAs(format, {
    path,
    text: edited(
      text,
      edits.map((one) => ({ file: path, ...one })),
    ),
  });
  const place = sources.findIndex((one) => one.span.start === source.span.start);
  const whole =
    after.sources.length === sources.length &&
    after.sources[place]?.key === source.key &&
    sources.every((one, at) => at === place || same(one, after.sources[at], source));
  if (whole) return null;
  return {
    problem: say`Unexpected text, expected one that leaves the other entries of the file as they are`,
    field: null,
  };
}

/** Whether an entry is read as before; what has fields from the one that is changed keeps its key and its kind. */
function same(before: Source, after: Source | undefined, changed: Source): boolean {
  if (!after || after.key !== before.key) return false;
  if (saidBy(after) === saidBy(before) || before.members.includes(changed.key)) return true;
  return before.csl.type === after.csl.type && before.csl.title === after.csl.title;
}
