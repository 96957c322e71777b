import { coded, count, say } from "../../../base/text/said/said.ts";
import type { Said, Text } from "../../../base/text/said/said.ts";
import type { Collector } from "../../decode/collector.ts";
import { quoted } from "../../decode/collector.ts";
import type { SourceFile } from "../../source-file.ts";

/** Where the reading of a BibTeX file stands; `trouble` is what ended the entry that is being read. */
export interface Reader {
  readonly file: SourceFile;
  readonly found: Collector;
  readonly strings: Map<string, string>;
  at: number;
  /** Where the entry must end at the latest. */
  end: number;
  /** How many characters abbreviations have put in so far. */
  expanded: number;
  trouble: { readonly message: Text; readonly at: number } | null;
}

/** A value as written between two places, abbreviations put in. */
export interface BibValue {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

const deepest = 64;
const longestString = 10_000;
const mostExpanded = 64 * 1024 * 1024;

/** Ends the entry that is being read; the first trouble is the one told. */
export function fail(reader: Reader, message: Text, at: number = reader.at): null {
  reader.trouble ??= { message, at };
  return null;
}

/** What stands at the reader's place, for a message. */
export function here(reader: Reader): Said {
  const text = reader.file.text.slice(reader.at, Math.min(reader.end, reader.at + 60));
  return text === "" ? say`end` : coded(quoted(text.split(/[\r\n]/)[0] ?? ""));
}

/** Goes past white space and comments (`%` to the end of the line). */
export function skipSpace(reader: Reader): void {
  const { text } = reader.file;
  while (reader.at < reader.end) {
    const unit = text.charCodeAt(reader.at);
    if (unit === 37) {
      const line = text.indexOf("\n", reader.at);
      reader.at = line < 0 ? reader.end : Math.min(line + 1, reader.end);
    } else if (unit <= 32 || unit === 0xa0 || unit === 0xfeff) reader.at++;
    else return;
  }
}

/** The text inside the braces that open at the reader's place; null when they do not close. */
export function group(reader: Reader): string | null {
  return delimited(reader, /[{}]/g, "}", 1);
}

/** The text inside the quotes that open at the reader's place; null when they do not close. */
function quotes(reader: Reader): string | null {
  return delimited(reader, /["{}]/g, '"', 0);
}

function delimited(reader: Reader, marks: RegExp, close: string, depthInside: number): string | null {
  const { text } = reader.file;
  const open = reader.at;
  let depth = depthInside;
  marks.lastIndex = open + 1;
  for (let mark = marks.exec(text); mark !== null && mark.index < reader.end; mark = marks.exec(text)) {
    if (mark[0] === "{") depth++;
    else if (mark[0] === "}") depth--;
    reader.at = mark.index + 1;
    if (mark[0] === close && depth === 0) return text.slice(open + 1, mark.index);
    if (depth < 0)
      return fail(reader, say`Unexpected \`}\` inside quotes, expected balanced braces`, mark.index);
    if (depth > deepest)
      return fail(reader, say`Unexpected nesting of more than ${count(deepest)} braces`, open);
  }
  reader.at = reader.end;
  return fail(
    reader,
    say`Unexpected \`${text[open] ?? ""}\` that is never closed, expected a closing \`${close}\``,
    open,
  );
}

/** The value at the reader's place: braces, quotes, numbers and abbreviations joined by `#`; null on trouble. */
export function value(reader: Reader): BibValue | null {
  const { text } = reader.file;
  skipSpace(reader);
  const start = reader.at;
  const parts: string[] = [];
  for (;;) {
    const part = valuePart(reader);
    if (part === null) return null;
    parts.push(part);
    const end = reader.at;
    skipSpace(reader);
    if (text[reader.at] !== "#" || reader.at >= reader.end) return { text: parts.join(""), start, end };
    reader.at++;
    skipSpace(reader);
  }
}

function valuePart(reader: Reader): string | null {
  const { text, path } = reader.file;
  if (reader.at < reader.end && text[reader.at] === "{") return group(reader);
  if (reader.at < reader.end && text[reader.at] === '"') return quotes(reader);
  const bare = /[^\s,{}()"#%=@]{1,200}/y;
  bare.lastIndex = reader.at;
  const word = reader.at < reader.end ? bare.exec(text)?.[0] : undefined;
  if (word === undefined)
    return fail(reader, say`Unexpected ${here(reader)}, expected a value in braces or quotes`);
  const start = reader.at;
  reader.at += word.length;
  if (/^\d+$/.test(word)) return word;
  const full = reader.strings.get(word.toLowerCase());
  if (full === undefined) {
    const at = { file: path, start, end: reader.at };
    const message = say`Unknown abbreviation \`${word}\`, expected a value in braces or one that ${coded("@string")} defines`;
    reader.found.bad(message, at);
    return word;
  }
  reader.expanded += full.length;
  if (reader.expanded > mostExpanded)
    return fail(reader, say`Unexpected growth of the file by its abbreviations`, start);
  return full;
}

/** Keeps an abbreviation, which may be of ten thousand characters at most. */
export function define(reader: Reader, name: string, meaning: BibValue): null {
  if (meaning.text.length > longestString)
    return fail(
      reader,
      say`Unexpected length of abbreviation \`${quoted(name)}\`, expected at most ${count(longestString)} characters`,
    );
  reader.strings.set(name.toLowerCase(), meaning.text);
  return null;
}
