import { columnOf, hasBlankBetween, leadsLine, lineAfter, lineEnd, lineStart } from "../hand/lines.ts";
import { endOf } from "../site/site.ts";
import type { Part } from "../site/site.ts";

/** The lines of a record: from the beginning of its first to the end of its last, without that line's end. */
export interface OwnLines {
  readonly start: number;
  readonly end: number;
}

/** The lines of an item of a list over lines: comments that stand further in than its dash, directly below, are its own. */
export function ownLines(text: string, part: Part): OwnLines {
  const column = columnOf(text, part.from);
  return {
    start: lineStart(text, part.from),
    end: pastComments(text, lineEnd(text, endOf(part)), column + 1),
  };
}

/** The end of the last of the comment lines directly below a line end, at a column or further in; else that line end. */
export function pastComments(text: string, from: number, column: number): number {
  let end = from;
  for (;;) {
    const next = lineAfter(text, end);
    const comment = /^[ \t]*(?=#)/u.exec(text.slice(next, lineEnd(text, next)));
    if (next === end || next >= text.length || !comment || comment[0].length < column) return end;
    end = lineEnd(text, next);
  }
}

/** Where the comment lines directly above a line begin, at its own indentation; else where the line begins. */
export function commentsAbove(text: string, start: number, column: number): number {
  let at = start;
  while (at > 0) {
    const above = lineStart(text, at - 1);
    const line = text.slice(above, lineEnd(text, above));
    const comment = /^[ \t]*(?=#)/u.exec(line);
    if (!comment || comment[0].length !== column || above === at) return at;
    at = above;
  }
  return at;
}

/** Whether the parts that stand in a list or map are parted by blank lines more often than not; `unsaid` where there are too few. */
export function isParted(text: string, parts: readonly Part[], unsaid: boolean): boolean {
  const pairs = parts.slice(1).filter(({ from }) => leadsLine(text, from));
  const parted = pairs.filter(({ from }) => {
    const before = parts[parts.findIndex((one) => one.from === from) - 1];
    return before !== undefined && hasBlankBetween(text, endOf(before), from);
  });
  return pairs.length === 0 ? unsaid : parted.length * 2 > pairs.length;
}
