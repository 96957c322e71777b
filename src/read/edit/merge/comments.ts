import { edited } from "../../../base/text/edit.ts";
import { lineEndAt, lineStart } from "../hand/lines.ts";
import { saysSame } from "../written.ts";
import { ownLinesOf } from "./lines.ts";
import { recordsIn } from "./reading.ts";
import type { RecordRead, ThreeTexts } from "./reading.ts";

/** As many lines that only look like comments are told from such as are, one by one. */
const most = 20;

/**
 * A merged text with the comment lines that the other side alone put in and the text does not have yet: each above the
 * record that it stood above or in, else at the end.
 */
export function withComments({ path, base, mine, theirs }: ThreeTexts, text: string): string {
  if (path.endsWith(".csv")) return text;
  const read = recordsIn(path, theirs);
  const known = new Set([base ?? "", mine, text].flatMap(commentsOf));
  const met = linesOf(theirs).filter(({ line }) => isComment(line) && !known.has(line.trim()));
  if (!read || met.length === 0) return text;
  const all = saysWithout(path, theirs, read, met);
  const own = all ? met : met.slice(0, most).filter((one) => saysWithout(path, theirs, read, [one]));
  const records = [...read.values()];
  return own.reduce((merged, { line, at }) => put(path, merged, line.trim(), above(records, at)), text);
}

interface Line {
  readonly line: string;
  readonly at: number;
}

function isComment(line: string): boolean {
  return /^\ufeff?[ \t]*#/u.test(line);
}

function commentsOf(text: string): readonly string[] {
  return linesOf(text).flatMap(({ line }) => (isComment(line) ? [line.trim()] : []));
}

function linesOf(text: string): readonly Line[] {
  let at = 0;
  return text.split("\n").map((line) => {
    const start = at;
    at += line.length + 1;
    return { line: line.replace(/\r$/u, ""), at: start };
  });
}

/** Whether lines that look like comments are: without them the file says the same. */
function saysWithout(
  path: string,
  text: string,
  read: ReadonlyMap<string, RecordRead>,
  lines: readonly Line[],
): boolean {
  const edits = lines.map(({ line, at }) => ({ file: path, start: at, end: at + line.length, text: "" }));
  const without = recordsIn(path, edited(text, edits));
  if (without?.size !== read.size) return false;
  return [...read.values()].every((one) => saysSame(one.fields, without.get(one.key)?.fields ?? null));
}

/** The record in which a line stands, or the next one below it. */
function above(records: readonly RecordRead[], at: number): RecordRead | null {
  return records.find((one) => one.list !== null && one.end > at) ?? null;
}

function put(path: string, text: string, comment: string, record: RecordRead | null): string {
  const now = record ? recordsIn(path, text)?.get(record.key) : undefined;
  const lines = now ? ownLinesOf(text, now) : null;
  if (!now || !lines) {
    const mark = lineEndAt(text, 0);
    return `${text}${text === "" || text.endsWith("\n") ? "" : mark}${comment}${mark}`;
  }
  const start = lineStart(text, now.start);
  return `${text.slice(0, start)}${" ".repeat(lines.column)}${comment}${lineEndAt(text, start)}${text.slice(start)}`;
}
