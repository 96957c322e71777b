import { afterSpace } from "../../json.ts";
import { monthsInForce, namesUsed } from "../abbreviations.ts";
import type { Abbreviation } from "../abbreviations.ts";
import { indentAt, lineEndIn } from "../fields/field.ts";
import type { Splice } from "../fields/apply.ts";
import type { Format } from "../formats.ts";
import { itemsIn } from "../keyless.ts";
import { ownText } from "./own-text.ts";
import type { Put } from "./own-text.ts";

/** An entry to be put in, with the abbreviations of the file that it comes from. */
export interface Placed {
  readonly put: Put;
  readonly abbreviations: readonly Abbreviation[];
}

/** What comes behind the last entry of a bibliography; `text` null where the file is new. Null where its text has no place for more. */
export function appended(
  format: Format,
  text: string | null,
  inForce: readonly Abbreviation[],
  all: readonly Placed[],
): { readonly splice: Splice; readonly abbreviations: readonly string[] } | null {
  const nl = lineEndIn(text ?? all[0]?.put.text ?? "");
  if (format === "json") {
    const splice = inList(
      text,
      nl,
      all.map(({ put }) => ownText(format, put)),
    );
    return splice && { splice, abbreviations: [] };
  }
  const force = new Map([...monthsInForce, ...inForce.map((one) => [one.name, one.meaning] as const)]);
  const names: string[] = [];
  const blocks = all.flatMap(({ put, abbreviations }): readonly string[] => {
    const needed = format === "bib" ? neededBy(put, abbreviations, force) : [];
    names.push(...needed.map((one) => one.name));
    const definitions = needed.map((one) => one.text).join(nl);
    return definitions === "" ? [ownText(format, put)] : [definitions, ownText(format, put)];
  });
  const body = blocks.map((one) => likeLines(one, nl)).join(`${nl}${nl}`);
  const end = text?.length ?? 0;
  const before = text === null || /^\uFEFF?$/.test(text) ? "" : gapBehind(text, nl);
  return { splice: { start: end, end, text: `${before}${body}${nl}` }, abbreviations: [...new Set(names)] };
}

/** Line ends as the file has them that a text comes into. */
function likeLines(text: string, nl: string): string {
  return text.replace(/\r?\n/g, nl);
}

/** A blank line behind what stands there. */
function gapBehind(text: string, nl: string): string {
  if (/\n[ \t]*\r?\n$/.test(text)) return "";
  return text.endsWith("\n") ? nl : `${nl}${nl}`;
}

/** The abbreviations that an entry needs and that stand for something else, or nothing, so far; they are in force from then on. */
function neededBy(
  { text, start, bib }: Put,
  abbreviations: readonly Abbreviation[],
  force: Map<string, string>,
): readonly Abbreviation[] {
  const needed: Abbreviation[] = [];
  const ask = (name: string, before: number): void => {
    const own = abbreviations.findLast((one) => one.name === name && one.end <= before);
    if (!own || needed.includes(own) || force.get(name) === own.meaning) return;
    for (const other of own.uses) ask(other, own.start);
    force.set(name, own.meaning);
    needed.push(own);
  };
  for (const { span } of bib?.fields ?? [])
    for (const name of namesUsed(text.slice(span.start - start, span.end - start))) ask(name, start);
  return needed;
}

function inList(text: string | null, nl: string, items: readonly string[]): Splice | null {
  if (text === null || text.trim() === "" || text === "\uFEFF") {
    const at = text?.length ?? 0;
    const body = items.map((one) => `  ${likeLines(indented(one, "  "), nl)}`).join(`,${nl}`);
    return { start: at, end: at, text: `[${nl}${body}${nl}]${nl}` };
  }
  const there = itemsIn(text);
  const last = there.at(-1);
  if (!last) {
    const open = /^\uFEFF?\s*(?:\{\s*"items"\s*:\s*)?\[/.exec(text)?.[0];
    if (open === undefined || text[afterSpace(text, open.length)] !== "]") return null;
    const body = items.map((one) => `${nl}  ${likeLines(indented(one, "  "), nl)}`).join(",");
    return { start: open.length, end: afterSpace(text, open.length), text: `${body}${nl}` };
  }
  if (text[afterSpace(text, last.end)] !== "]") return null;
  const indent = indentAt(text, last.start);
  const lead =
    indent === null ? (there.length > 1 && /,\s/.test(between(text, there)) ? ", " : ",") : `,${nl}${indent}`;
  const body = items.map((one) => `${lead}${likeLines(indented(one, indent ?? ""), nl)}`).join("");
  return { start: last.end, end: last.end, text: body };
}

function between(text: string, there: ReturnType<typeof itemsIn>): string {
  return text.slice(there.at(-2)?.end ?? 0, there.at(-1)?.start ?? 0);
}

/** An item whose lines behind the first stand where they would under another indentation; no text of JSON runs over a line. */
function indented(item: string, indent: string): string {
  const lines = item.split("\n");
  const close = /^[ \t]*/.exec(lines.at(-1) ?? "")?.[0] ?? "";
  if (lines.length === 1 || close === indent) return item;
  return lines
    .map((line, place) =>
      place > 0 && line.startsWith(close) ? `${indent}${line.slice(close.length)}` : line,
    )
    .join("\n");
}
