import type { Remark, Statement } from "../slides.ts";
import type { Box } from "./leaf.ts";
import { heightOf } from "./measured.ts";
import type { Setup } from "./measured.ts";
import { smallest } from "./room.ts";
import { remarkLines, statementLines } from "./words.ts";

/** What can stand in a column of words. */
export type Told = Statement | Remark;

/** A part of a slide where words run from top to bottom, in points. */
export interface Room {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** How wide the line of a standing is, and what is free behind it. */
const mark = { width: 44, gap: 16 } as const;
const between = 16;
/** Sizes of what a record says, in points, the largest first. */
const sizes = [28, 24, 21, 18] as const;

/**
 * Words one below the other, as large as they all fit; where they do not even at the smallest size, as many as fit at a
 * middle one, and what is left for another slide.
 */
export function columnIn(
  setup: Setup,
  parts: readonly Told[],
  room: Room,
  largest = 28,
): { readonly boxes: readonly Box[]; readonly rest: readonly Told[]; readonly height: number } {
  const wanted = sizes.filter((size) => size <= largest);
  for (const size of wanted) {
    const whole = stacked(setup, parts, room, size);
    if (whole.rest.length === 0) return whole;
  }
  const some = stacked(setup, parts, room, Math.min(21, largest));
  if (some.boxes.length > 0) return some;
  return stacked(setup, parts, room, smallest, true);
}

function stacked(setup: Setup, parts: readonly Told[], room: Room, size: number, atLeastOne = false) {
  const hasMarks = parts.some((one) => one.is === "statement" && one.standing !== null);
  const inset = hasMarks ? mark.width + mark.gap : 0;
  const boxes: Box[] = [];
  let y = room.y;
  for (const [place, part] of parts.entries()) {
    const small = Math.max(smallest, size - 5);
    const lines =
      part.is === "statement" ? statementLines(setup, part, size) : remarkLines(setup, part, small);
    const width = room.width - inset;
    const height = heightOf(setup, lines, width);
    const isOver = y + height > room.y + room.height;
    if (isOver && !(atLeastOne && place === 0))
      return { boxes, rest: parts.slice(place), height: y - room.y };
    if (part.is === "statement" && part.standing !== null)
      boxes.push({
        is: "standing",
        standing: part.standing,
        of: part.of,
        x: room.x,
        y: y + Math.round(size * 0.64) - 6,
        width: mark.width,
        height: 12,
      });
    boxes.push({ is: "text", role: "body", lines, x: room.x + inset, y, width, height });
    y += height + between;
  }
  return { boxes, rest: [], height: y - between - room.y };
}
