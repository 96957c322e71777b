import type { Id, Span } from "../../../base/finding.ts";
import { coded, say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { collector, lineSpan, quoted } from "../../decode/collector.ts";
import type { Collector } from "../../decode/collector.ts";
import type { SourceFile } from "../../source-file.ts";
import { define, fail, group, here, skipSpace, value } from "./value.ts";
import type { Reader } from "./value.ts";
import { lineFinder, mostEntries, tooMany } from "../places.ts";

/** One field of a BibTeX entry: its text with abbreviations put in, and the place of its value. */
export interface BibField {
  readonly name: string;
  readonly text: string;
  readonly span: Span;
}

/** One `@type{key, …}` of a BibTeX file. */
export interface BibEntry {
  readonly type: string;
  readonly key: Id;
  readonly keySpan: Span;
  readonly span: Span;
  readonly fields: readonly BibField[];
}

const lineHead = /^[ \t]{0,200}@[ \t]{0,20}[A-Za-z]{1,60}\s{0,200}[{(]/gm;

/**
 * The entries of a BibTeX file in their order; a mistake costs the entry it is in. Reading goes on at the next line that
 * opens an entry, and once an entry has run over such lines, none may again: so the time stays in proportion to the file.
 */
export function lexBibtex(file: SourceFile): {
  readonly entries: readonly BibEntry[];
  readonly found: Collector;
} {
  const { text } = file;
  const found = collector();
  const reader: Reader = {
    file,
    found,
    strings: monthNames(),
    at: 0,
    end: text.length,
    expanded: 0,
    trouble: null,
  };
  const nextHead = lineFinder(text, lineHead);
  const entries: BibEntry[] = [];
  let wary = false;
  let blocks = 0;
  for (let start = text.indexOf("@"); start >= 0; start = text.indexOf("@", reader.at)) {
    const opening = /@[ \t]{0,20}([A-Za-z]{1,60})\s{0,200}([{(])/y;
    opening.lastIndex = start;
    const [whole, type = "", bracket] = opening.exec(text) ?? [];
    if (whole === undefined) {
      strayAt(reader, start);
      reader.at = start + 1;
      continue;
    }
    blocks++;
    reader.end = wary ? nextHead(start) : text.length;
    reader.trouble = null;
    reader.at = start + whole.length;
    const entry = block(reader, start, type.toLowerCase(), bracket === "(" ? ")" : "}");
    if (entry !== null) entries.push(entry);
    if (reader.trouble !== null) {
      const { message, at }: { message: Text; at: number } = reader.trouble;
      const head = nextHead(start);
      // An entry that is left open fails only where the next one is: the place to mend is its own.
      if (at < head) found.bad(message, lineSpan(file, at));
      else {
        const said = quoted(text.slice(start, lineSpan(file, start).end));
        found.bad(
          say`Unexpected \`${said}\` that is never closed, expected its end before the next entry`,
          lineSpan(file, start),
        );
      }
      if (head < reader.at) {
        wary = true;
        reader.at = head;
      }
    }
    if (entries.length > mostEntries) {
      tooMany(found, file, start);
      break;
    }
  }
  if (blocks === 0 && /[^\s\uFEFF]/.test(text) && found.all().length === 0)
    found.bad(
      say`Missing bibliography entries, expected ${coded("@book{key, …}")} or the like`,
      lineSpan(file, 0),
      {
        rule: "unreadable-file",
      },
    );
  return { entries, found };
}

function block(reader: Reader, start: number, type: string, close: string): BibEntry | null {
  if (type === "comment" || type === "preamble") {
    if (close === ")") return null;
    reader.at--;
    group(reader);
    return null;
  }
  if (type === "string") return abbreviation(reader, close);
  const key = keyOf(reader, close);
  if (key === null) return null;
  const fields = fieldsOf(reader, close, start, key.text);
  if (fields === null) return null;
  const place = (from: number, end: number): Span => ({ file: reader.file.path, start: from, end });
  lostFields(reader, key.text);
  const keySpan = place(key.start, key.start + key.text.length);
  return { type, key: key.text, keySpan, span: place(start, reader.at), fields };
}

function abbreviation(reader: Reader, close: string): null {
  const name = word(reader, /[^\s=,{}()"#%@]{1,200}/y);
  skipSpace(reader);
  if (name === null || reader.file.text[reader.at] !== "=")
    return fail(reader, say`Unexpected ${here(reader)}, expected ${coded("@string{name = {text}}")}`);
  reader.at++;
  const meaning = value(reader);
  if (meaning === null) return null;
  define(reader, name, meaning);
  skipSpace(reader);
  if (reader.file.text[reader.at] === ",") reader.at++;
  skipSpace(reader);
  if (reader.file.text[reader.at] !== close)
    return fail(reader, say`Unexpected ${here(reader)}, expected \`${close}\``);
  reader.at++;
  return null;
}

function keyOf(reader: Reader, close: string): { readonly text: string; readonly start: number } | null {
  const { text, path } = reader.file;
  skipSpace(reader);
  const start = reader.at;
  const key = word(reader, close === ")" ? /[^\s,{}()=]{1,1000}/y : /[^\s,{}=]{1,1000}/y);
  skipSpace(reader);
  const mark = reader.at < reader.end ? text[reader.at] : "";
  if (key !== null && (mark === "," || mark === close)) return { text: key, start };
  if (key === null || mark === "=")
    return fail(reader, say`Missing key of the entry, expected ${coded("@book{key, …}")}`, start);
  const spaced = /[^\s,{}=][^,{}=\r\n"]{0,80}(?=,)/y;
  spaced.lastIndex = start;
  const written = spaced.exec(text)?.[0].trimEnd();
  if (written === undefined)
    return fail(reader, say`Unexpected ${here(reader)}, expected \`,\` after the key \`${quoted(key)}\``);
  const at = { file: path, start, end: start + written.length };
  const mended = written.replace(/\s+/g, "-");
  const fix = { label: say`Write ${coded(mended)}`, edits: [{ ...at, text: mended }] };
  reader.found.bad(say`Unexpected space in the key \`${written}\`, expected a key without spaces`, at, {
    fix,
  });
  reader.at = at.end;
  return { text: mended, start };
}

function fieldsOf(reader: Reader, close: string, start: number, key: Id): readonly BibField[] | null {
  const { text, path } = reader.file;
  const fields: BibField[] = [];
  const separator = (): boolean => text[reader.at] === "," && reader.at < reader.end;
  for (;;) {
    skipSpace(reader);
    while (separator()) {
      reader.at++;
      skipSpace(reader);
    }
    if (reader.at >= reader.end)
      return fail(
        reader,
        say`Unexpected end of the file in entry \`${quoted(key)}\`, expected \`${close}\``,
        start,
      );
    if (text[reader.at] === close) {
      reader.at++;
      return fields;
    }
    const name = word(reader, /[^\s=,{}()"#%@]{1,200}/y);
    if (name === null)
      return fail(reader, say`Unexpected ${here(reader)}, expected a field such as ${coded("title = {…}")}`);
    skipSpace(reader);
    if (text[reader.at] !== "=")
      return fail(reader, say`Unexpected ${here(reader)}, expected \`=\` after \`${quoted(name)}\``);
    reader.at++;
    const read = value(reader);
    if (read === null) return null;
    fields.push({
      name: name.toLowerCase(),
      text: read.text,
      span: { file: path, start: read.start, end: read.end },
    });
    if (separator() || text[reader.at] === close) continue;
    const next = /[A-Za-z][\w:+.-]{0,60}\s{0,20}=/y;
    next.lastIndex = reader.at;
    if (!next.test(text)) continue;
    const at = { file: path, start: read.end, end: read.end };
    const fix = { label: say`Put a comma`, edits: [{ ...at, text: "," }] };
    reader.found.bad(say`Missing \`,\` after \`${quoted(name)}\`, expected one between fields`, at, {
      about: [key],
      fix,
    });
  }
}

function word(reader: Reader, pattern: RegExp): string | null {
  skipSpace(reader);
  pattern.lastIndex = reader.at;
  const found = reader.at < reader.end ? pattern.exec(reader.file.text)?.[0] : undefined;
  if (found === undefined) return null;
  reader.at += found.length;
  return found;
}

/** A brace too many ends an entry early: then fields follow it that nothing would read. */
function lostFields(reader: Reader, key: Id): void {
  const after = /[ \t]{0,200}[,}]{1,3}\s{0,200}[A-Za-z][\w:+.-]{0,60}\s{0,20}=/y;
  after.lastIndex = reader.at;
  if (!after.test(reader.file.text)) return;
  const at = { file: reader.file.path, start: reader.at - 1, end: reader.at };
  reader.found.bad(
    say`Unexpected end of entry \`${quoted(key)}\` before its last field, expected one \`}\` less`,
    at,
    {
      about: [key],
    },
  );
}

function strayAt(reader: Reader, start: number): void {
  const { text } = reader.file;
  const line = text.slice(Math.max(0, start - 200), start);
  if (!/(?:^|[\r\n])[ \t]*$/.test(line) || !/@[ \t]*[A-Za-z]/y.test(text.slice(start, start + 22))) return;
  if (line.length === 200 && !/[\r\n]/.test(line)) return;
  const at = lineSpan(reader.file, start);
  reader.found.bad(
    say`Unexpected \`${quoted(text.slice(start, at.end))}\`, expected \`{\` after the kind of entry`,
    at,
  );
}

function monthNames(): Map<string, string> {
  const names = "jan feb mar apr may jun jul aug sep oct nov dec".split(" ");
  return new Map(names.map((name, place) => [name, `${place + 1}`.padStart(2, "0")]));
}
