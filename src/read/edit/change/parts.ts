import { isBlankAt, leadsLine, lineAfter, lineEnd, lineEndAt, lineStart } from "../hand/lines.ts";
import { endOf } from "../site/site.ts";
import type { Part, Site } from "../site/site.ts";
import type { Desk } from "./desk.ts";

/** Puts lines into a map or list over lines, behind one of its parts, or before the first. */
export function addLines(desk: Desk, site: Site, after: Part | null, lines: readonly string[]): void {
  const { text } = desk;
  if (after) {
    const at = lineEnd(text, endOf(after));
    const mark = lineEndAt(text, endOf(after));
    return desk.put(at, at, mark + lines.join(mark));
  }
  const from = site.parts[0]?.from ?? site.start;
  const pad = " ".repeat(from - lineStart(text, from));
  const mark = lineEndAt(text, from);
  desk.put(from, from, lines.join(mark).slice(pad.length) + mark + pad);
}

/**
 * Takes parts that stand side by side out of a map or list over lines, with the comments at the ends of their lines;
 * comments on lines of their own before and behind them stay. Other parts must remain.
 */
export function takeLines(desk: Desk, run: readonly Part[]): void {
  const { text } = desk;
  const [first] = run;
  const last = run.at(-1);
  if (!first || !last) return;
  const end = lineAfter(text, endOf(last));
  if (!leadsLine(text, first.from)) {
    const next = /[^\s]/u.exec(text.slice(end));
    return desk.put(first.from, next ? end + next.index : end, "");
  }
  const start = lineStart(text, first.from);
  const closed = text[end - 1] === "\n" || start === 0 || !desk.manner.piecewise;
  if (closed) for (const part of run) takeOne(desk, part);
  else desk.put(lineEnd(text, Math.max(0, start - 2)), text.length, "");
}

function takeOne(desk: Desk, part: Part): void {
  const { text } = desk;
  removeLines(desk, lineStart(text, part.from), lineEnd(text, endOf(part)), "above");
}

/**
 * Takes whole lines out, from the beginning of one to the end of another. Where blank lines stand on both sides, those
 * on one go too. Where that reads otherwise, since a text above keeps blank lines as its own, those below go.
 */
export function removeLines(desk: Desk, start: number, end: number, blank: "above" | "below"): void {
  const { text, put, manner } = desk;
  let from = start;
  let upTo = lineAfter(text, end);
  const above = (): number => lineStart(text, Math.max(0, from - 1));
  const isLast = upTo === text.length || text.slice(upTo).trim() === "";
  const both = from > 1 && isBlankAt(text, above()) && (upTo === text.length || isBlankAt(text, upTo));
  if (both && manner.piecewise && (blank === "above" || isLast))
    while (from > 1 && isBlankAt(text, above())) from = above();
  else if (both || start === 0 || !manner.piecewise)
    while (upTo < text.length && isBlankAt(text, upTo)) upTo = lineAfter(text, upTo);
  const open = upTo === text.length && !text.endsWith("\n");
  if (open && manner.piecewise && from > 1) from = lineEnd(text, above());
  put(from, upTo, "");
}
