import { brokenAt } from "../hand/block-scalar.ts";
import { lineEndAt, lineStart } from "../hand/lines.ts";
import type { Site } from "../site/site.ts";

/** One replacement within a text over several lines. */
export interface Splice {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Lines of prose are broken anew only where a change makes one longer than this, or than the longest there. */
const width = 100;

/**
 * The smallest replacement that makes a text over several lines say another: only the lines of the words that change
 * are touched. Null where the text stands in one line, or its lines cannot be kept.
 */
export function spliced(text: string, site: Site, value: string): Splice | null {
  const isBlock = site.style === "literal" || site.style === "folded";
  const from = isBlock ? text.indexOf("\n", site.headEnd) + 1 : site.start;
  const source = text.slice(from, site.end);
  if (!["plain", "single", "double", "literal", "folded"].includes(site.style)) return null;
  if (!isBlock && !source.includes("\n")) return null;
  const indent =
    /^ */u.exec(
      isBlock ? source.replace(/^(?:[ \t]*\r?\n)+/u, "") : source.slice(source.indexOf("\n") + 1),
    )?.[0] ?? "";
  const places = placesIn(source, site, isBlock ? indent.length : null);
  if (!places) return null;
  const { head, tail } = common(site.text, value);
  const start = places[head];
  const end = places[site.text.length - tail];
  if (start === undefined || end === undefined) return null;
  const words = value.slice(head, value.length - tail);
  const mark = lineEndAt(text, from);
  const put = encoded(words, site, `${mark}${indent}`);
  if (put === null) return null;
  const splice = { start: from + start, end: from + end, text: put };
  return site.style === "literal" ? splice : broken(text, site, splice, mark + indent);
}

/** How many letters two texts have in common at their beginnings and at their ends. */
function common(a: string, b: string): { readonly head: number; readonly tail: number } {
  const most = Math.min(a.length, b.length);
  let head = 0;
  while (head < most && a[head] === b[head]) head++;
  let tail = 0;
  while (tail < most - head && a[a.length - 1 - tail] === b[b.length - 1 - tail]) tail++;
  return { head, tail };
}

/** Where each letter of a text stands in its source, and where the last one ends; null where the two cannot be followed. */
function placesIn(source: string, { text, style }: Site, indent: number | null): readonly number[] | null {
  const places: number[] = [];
  let at = indent ?? (style === "plain" ? 0 : 1);
  if (indent !== null && !/^ *$/u.test(source.slice(0, indent))) return null;
  for (let letter = 0; letter < text.length;) {
    const run = breakAt(source, at, indent);
    if (run) {
      const count = marksAt(text, letter, run.breaks, style);
      if (count === 0) return null;
      for (let one = 0; one < count; one++) places[letter++] = at;
      at += run.length;
      continue;
    }
    if (source[at] !== text[letter] || (style === "double" && source[at] === "\\")) return null;
    places[letter++] = at;
    at += style === "single" && source.startsWith("''", at) ? 2 : 1;
  }
  places[text.length] = at;
  return places;
}

/** A run of line ends with the spaces round them; of a block only the indentation behind them. */
function breakAt(
  source: string,
  at: number,
  indent: number | null,
): { readonly length: number; readonly breaks: number } | null {
  const run =
    indent === null
      ? /[ \t]*(?:\r?\n[ \t]*)+/uy
      : new RegExp(`(?:\\r?\\n {0,${indent}}(?=\\r?\\n))*\\r?\\n {0,${indent}}`, "uy");
  run.lastIndex = at;
  const found = run.exec(source)?.[0];
  return found === undefined ? null : { length: found.length, breaks: found.split("\n").length - 1 };
}

/** How many letters of a text a run of line ends stands for: a space, or line ends. */
function marksAt(text: string, letter: number, breaks: number, style: Site["style"]): number {
  if (style !== "literal" && breaks === 1 && text[letter] === " ") return 1;
  let count = 0;
  while (text[letter + count] === "\n" && count < breaks) count++;
  return count === breaks || (style !== "literal" && count === breaks - 1) ? count : 0;
}

/** Words as they stand in a source of a style; null where they hold what its lines cannot. */
function encoded(words: string, { style }: Site, lineBreak: string): string | null {
  if (/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u2028\u2029\ufeff\ud800-\udfff]/.test(words)) return null;
  if (style === "literal") return words.replaceAll("\n", lineBreak);
  if (words.includes("\n")) return null;
  if (style === "single") return words.replaceAll("'", "''");
  return style === "double" ? words.replace(/[\\"]/gu, "\\$&") : words;
}

/** A splice with its line broken where it has become longer than the lines of the text are. */
function broken(text: string, site: Site, splice: Splice, lineBreak: string): Splice {
  const { start, end, text: put } = splice;
  const from = Math.max(lineStart(text, start), site.style === "folded" ? 0 : site.start);
  const behind = /^[^\r\n]*/u.exec(text.slice(end, site.end))?.[0] ?? "";
  const lines = text.slice(site.start, site.end).split(/\r?\n/u);
  const most = Math.max(width, ...lines.map((line) => line.length));
  const lead = text.slice(from, start);
  const pad = /^ */u.exec(lead)?.[0] ?? "";
  const line = lead.slice(pad.length) + put + behind;
  const room = most - (from - lineStart(text, from)) - pad.length;
  if (line.length <= room) return splice;
  const anew = brokenAt(line, Math.max(20, room)).join(lineBreak);
  return { start: from + pad.length, end: end + behind.length, text: anew };
}
