import { commentsAbove, pastComments } from "../records/own-lines.ts";
import { columnOf, lineEnd, lineEndAt, lineStart } from "../hand/lines.ts";
import { saysSame } from "../written.ts";
import { recordsIn } from "./reading.ts";
import type { RecordRead, ThreeTexts } from "./reading.ts";

/**
 * A text with a record of the other side in it, in the very lines in which that side wrote it, its comments among them:
 * behind the first of some records that the text has, else before the first of its list. Null where that cannot be.
 */
export function withLines(
  { path, theirs }: Pick<ThreeTexts, "path" | "theirs">,
  text: string,
  record: RecordRead,
  behind: readonly string[],
): string | null {
  const lines = ownLinesOf(theirs, record);
  const now = recordsIn(path, text);
  if (!lines || !now || path.endsWith(".csv")) return null;
  const known = behind.flatMap((key) => now.get(key) ?? [])[0];
  const first = [...now.values()].find(({ list }) => list === record.list);
  const place = known ?? first;
  const beside = place ? ownLinesOf(text, place) : null;
  if (!place || !beside || beside.column !== lines.column) return null;
  const mark = lineEndAt(text, beside.start);
  const own = theirs.slice(lines.start, lines.end).replace(/\r?\n/gu, mark);
  const apart = lines.parted ? mark : "";
  const made = known
    ? `${text.slice(0, beside.end)}${mark}${apart}${own}${text.slice(beside.end)}`
    : `${text.slice(0, beside.start)}${own}${mark}${apart}${text.slice(beside.start)}`;
  const after = recordsIn(path, made);
  const there = [...(after?.values() ?? [])].some(
    (one) => one.list === record.list && saysSame(one.fields, record.fields),
  );
  return after?.size === now.size + 1 && there ? made : null;
}

interface Lines {
  /** From the first comment line above it, to the end of its last line without that line's end. */
  readonly start: number;
  readonly end: number;
  /** Of its dash. */
  readonly column: number;
  /** Whether a blank line stands before it. */
  readonly parted: boolean;
}

/** The lines of a record that begins a line of its own behind a dash; null of any other. */
export function ownLinesOf(text: string, { start, end }: Pick<RecordRead, "start" | "end">): Lines | null {
  const line = lineStart(text, start);
  if (!/^\ufeff?[ \t]*-[ \t]+$/u.test(text.slice(line, start))) return null;
  const column = columnOf(text, line + text.slice(line).indexOf("-"));
  const last = start + text.slice(start, end).trimEnd().length;
  const top = commentsAbove(text, line, column);
  const above = top === 0 ? "" : text.slice(lineStart(text, top - 1), top);
  return {
    start: top,
    end: pastComments(text, lineEnd(text, last), column + 1),
    column,
    parted: top > 0 && above.trim() === "",
  };
}
