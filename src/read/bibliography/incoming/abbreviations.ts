import type { SourceFile } from "../../source-file.ts";
import { collector } from "../../decode/collector.ts";
import { define, skipSpace, value } from "../bibtex/value.ts";
import type { Reader } from "../bibtex/value.ts";

/** A `@string` of a BibTeX file: what it stands for, and its whole text. */
export interface Abbreviation {
  readonly name: string;
  readonly meaning: string;
  /** Names of abbreviations that it is itself made of. */
  readonly uses: readonly string[];
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** What months stand for before a file says anything else. */
export const monthsInForce: ReadonlyMap<string, string> = new Map(
  "jan feb mar apr may jun jul aug sep oct nov dec"
    .split(" ")
    .map((name, place): [string, string] => [name, `${place + 1}`.padStart(2, "0")]),
);

/** The abbreviations that a file defines, in their order; `entries` are stretches in which none is looked for. */
export function abbreviationsIn(file: SourceFile, entries: readonly Stretch[]): readonly Abbreviation[] {
  const { text } = file;
  const reader: Reader = {
    file,
    found: collector(),
    strings: new Map(monthsInForce),
    at: 0,
    end: text.length,
    expanded: 0,
    trouble: null,
  };
  const found: Abbreviation[] = [];
  let next = 0;
  for (const { 0: head, index } of text.matchAll(/@[ \t]{0,20}string\s{0,200}[{(]/gi)) {
    while ((entries[next]?.end ?? Infinity) <= index) next++;
    if ((entries[next]?.start ?? Infinity) <= index) continue;
    reader.at = index + head.length;
    reader.trouble = null;
    const one = abbreviationAt(reader, index, head.endsWith("(") ? ")" : "}");
    if (one) found.push(one);
  }
  return found;
}

function abbreviationAt(reader: Reader, start: number, close: string): Abbreviation | null {
  const { text } = reader.file;
  skipSpace(reader);
  const word = /([^\s=,{}()"#%@]{1,200})\s{0,200}=/y;
  word.lastIndex = reader.at;
  const name = word.exec(text)?.[1];
  if (name === undefined) return null;
  reader.at = word.lastIndex;
  const meaning = value(reader);
  if (meaning === null) return null;
  define(reader, name, meaning);
  skipSpace(reader);
  if (text[reader.at] === ",") reader.at++;
  skipSpace(reader);
  if (text[reader.at] !== close) return null;
  const end = reader.at + 1;
  const uses = namesUsed(text.slice(meaning.start, meaning.end));
  return { name: name.toLowerCase(), meaning: meaning.text, uses, text: text.slice(start, end), start, end };
}

/** The abbreviations that a value as written is made of, in small letters: its words outside of braces and quotes. */
export function namesUsed(raw: string): readonly string[] {
  const names: string[] = [];
  let depth = 0;
  let quoted = false;
  for (const [mark] of raw.matchAll(/[{}"]|[^\s,{}()"#%=@]+/g)) {
    if (mark === "{") depth++;
    else if (mark === "}") depth--;
    else if (mark === '"') quoted = depth === 0 ? !quoted : quoted;
    else if (depth === 0 && !quoted && !/^\d+$/.test(mark)) names.push(mark.toLowerCase());
  }
  return names;
}
