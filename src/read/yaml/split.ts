import { say } from "../../base/text/said/said.ts";
import type { Said, Text } from "../../base/text/said/said.ts";

/** A value that YAML takes apart, as it was typed: its place, its field, and what is wrong with it in words. */
export interface Split {
  readonly key: string;
  readonly start: number;
  readonly end: number;
  readonly message: Text;
}

/** The value round a place at which YAML stopped, where it is an ordinary text that only lacks quotes; null otherwise. */
export function splitRound(text: string, offset: number): Split | null {
  const here = lineStart(text, offset);
  if (here === null) return null;
  for (const start of [here, here === 0 ? 0 : (lineStart(text, here - 1) ?? here)]) {
    for (const value of typedIn(text, start)) {
      if (start === here && value.start > offset) continue;
      const message = troubleIn(text.slice(value.start, value.end), start < here);
      if (message !== null) return { ...value, message };
    }
  }
  return null;
}

/** The text with what was taken apart made harmless: every offset, line and indentation stays. */
export function masked(text: string, splits: readonly Pick<Split, "start" | "end">[]): string {
  const parts: string[] = [];
  let at = 0;
  for (const { start, end } of splits.toSorted((a, b) => a.start - b.start)) {
    const inner = text.slice(start + 1, end - 1).replace(/\S/gu, (sign) => "x".repeat(sign.length));
    parts.push(text.slice(at, start), `"${inner}"`);
    at = end;
  }
  return [...parts, text.slice(at)].join("");
}

/** A text as a double-quoted YAML scalar. */
export function quoted(text: string): string {
  return `"${text.replace(/\\/g, "\\\\").replace(/"/g, '\\"')}"`;
}

/** A value as it was typed, without the comment behind it: a `#` with space on both sides begins one, outside quotes. */
export function withoutComment(typed: string): string {
  const quotes = /^(?:"(?:[^"\\]|\\.)*"|'(?:[^']|'')*')/u.exec(typed)?.[0].length ?? 0;
  const comment = typed.slice(quotes).search(/[ \t]#(?=\s|$)/u);
  return comment < 0 ? typed : typed.slice(0, quotes + comment).trimEnd();
}

/** What is wrong with a value as it was typed; with `hashOnly`, only what ends a value early without a word. */
function troubleIn(value: string, hashOnly: boolean): Said | null {
  if (value.length < 3 || /^[[{&*!|%@`]/u.test(value)) return null;
  const shown = `\`${value.length > 60 ? `${value.slice(0, 59)}…` : value}\``.replace(/\s+/gu, " ");
  const around = say`expected quotes round the whole value`;
  if (hash.test(value) && !/^["']/u.test(value)) return say`Unexpected # inside ${shown}, ${around}`;
  if (hashOnly) return null;
  if (/^(?:"(?:[^"\\]|\\.)*"|'(?:[^']|'')*')[ \t]*[^\s#]/u.test(value))
    return say`Unexpected text after a closing quote in ${shown}, ${around}`;
  if (/^["']/u.test(value)) return null;
  if (/^>(?![-+0-9]*(?:\s*$|\s+#|\r?\n))/u.test(value) || /^-\s/u.test(value))
    return say`Unexpected \`${value[0] ?? ""}\` at the beginning of ${shown}, ${around}`;
  return /:(?:\s|$)/u.test(value) ? say`Unexpected colon inside ${shown}, ${around}` : null;
}

/** A number sign that YAML takes for a comment, where a writer numbers something: `Post #4`. */
const hash = /[ \t]#[\p{L}\p{N}]/u;

/** Nobody types longer lines by hand. */
const longestLine = 20_000;

type Typed = Pick<Split, "key" | "start" | "end">;

/** The values of the entries that begin in a line, the last first. */
function typedIn(text: string, start: number): readonly Typed[] {
  const line = text.slice(start, lineEnd(text, start));
  if (line.length > longestLine) return [];
  const lead = /^(\ufeff?[ \t]*(?:-[ \t]+)*)([A-Za-z][\w-]*):[ \t]+(?=\S)/u.exec(line);
  const inBraces = /^\ufeff?[ \t]*(?:-[ \t]+)*\{/u.test(line) || closesMore(line);
  if (lead && !inBraces && line[lead[0].length] !== "{") {
    const from = start + lead[0].length;
    const typed = withoutComment(text.slice(from, blockEnd(text, start, (lead[1] ?? "").length)).trimEnd());
    return [{ key: lead[2] ?? "", start: from, end: from + typed.length }];
  }
  const entries = [...line.matchAll(/(?:^|[{,])[ \t]*(?:-[ \t]+)?([a-z][a-z-]*):[ \t]+/gu)];
  return entries
    .map((entry, place) => {
      const from = entry.index + entry[0].length;
      const written = withoutComment(line.slice(from, entries[place + 1]?.index ?? line.length));
      const typed = written.replace(/[\s,[\]{}]+$/u, "");
      return { key: entry[1] ?? "", start: start + from, end: start + from + typed.length };
    })
    .reverse();
}

function closesMore(line: string): boolean {
  return line.split("}").length > line.split("{").length;
}

/** Where a value ends that may run on over lines which are indented further than its key. */
function blockEnd(text: string, start: number, column: number): number {
  let end = lineEnd(text, start);
  for (;;) {
    const next = /^\r?\n([ \t]+)\S/u.exec(text.slice(end, end + 300));
    if (!next || (next[1] ?? "").length <= column) return end;
    end = lineEnd(text, end + next[0].length);
  }
}

/** Where a line begins; null in one that nobody typed by hand. */
function lineStart(text: string, offset: number): number | null {
  const from = Math.max(0, offset - longestLine);
  const mark = text.slice(from, offset).lastIndexOf("\n");
  return mark >= 0 ? from + mark + 1 : from === 0 ? 0 : null;
}

function lineEnd(text: string, offset: number): number {
  const slice = text.slice(offset, offset + longestLine + 1);
  const end = slice.search(/\r?\n/u);
  return offset + (end < 0 ? slice.length : end);
}
