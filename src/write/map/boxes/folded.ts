import { isRightToLeft } from "../../../show/map/letters/letters.ts";
import type { Pen } from "../../pen/pen.ts";
import { fitted, widthOf } from "../measure.ts";
import { inward, letterSize, lineWidth, markScale } from "../sight.ts";
import type { Frame, Sight } from "../sight.ts";

const sans = { face: "sans", weight: 400 } as const;

/** What is folded up in a box: its words, where they stand, and how much room they have, in px of the scene. */
export interface Folded {
  readonly words: string;
  /** Baseline. */
  readonly y: number;
  /** From the box's outer edge to where the words end. */
  readonly inset: number;
  readonly room: number;
  readonly lit: boolean;
  /** Height of the crease, where it is not under the words. */
  readonly crease?: number;
}

/** Writes what is folded up in a box at its outer edge, over a line with a crease; gives the width taken, in px of the scene. */
export function drawFolded(pen: Pen, sight: Sight, box: Frame, folded: Folded): number {
  const outer = inward(sight, box, box.width - folded.inset);
  const way = sight.mirrored ? 1 : -1;
  if (sight.distance !== "near") {
    const length = 26 * markScale(sight);
    drawCrease(
      pen,
      sight,
      { x: outer, y: box.y + box.height + 2 / sight.scale, length: way * length },
      folded.lit,
    );
    return 0;
  }
  const size = letterSize(sight, 13);
  const line = fitted(folded.words, sans, size * sight.scale, folded.room * sight.scale);
  if (line === "") {
    const { y, height } = box;
    drawCrease(pen, sight, { x: outer, y: folded.crease ?? y + height + 3, length: way * 26 }, folded.lit);
    return 0;
  }
  const width = widthOf(line, sans, size);
  const colour = "soft";
  const rtl = isRightToLeft(line);
  const anchor = rtl === sight.mirrored ? "end" : "start";
  pen.text(line, { x: outer, y: folded.y }, { ...sans, size, colour, anchor, rtl, lang: null });
  drawCrease(pen, sight, { x: outer, y: folded.crease ?? folded.y + 5, length: way * width }, folded.lit);
  return width;
}

/** The crease of what is folded: a level line that dips once at its middle; its length may go to the left. */
export function drawCrease(
  pen: Pen,
  sight: Sight,
  { x, y, length }: { readonly x: number; readonly y: number; readonly length: number },
  lit: boolean,
): void {
  const middle = x + length / 2;
  const unit = (length < 0 ? -1 : 1) * markScale(sight);
  pen.line(
    [
      { x, y },
      { x: middle - 5 * unit, y },
      { x: middle, y: y + 4 * Math.abs(unit) },
      { x: middle + 5 * unit, y },
      { x: x + length, y },
    ],
    { colour: lit ? "soft" : "line", width: lineWidth(sight, 1.2) },
  );
}
