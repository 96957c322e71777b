import type { PlacedBox } from "../../../show/map/scene.ts";
import type { Pen } from "../../pen/pen.ts";
import { inward, lineWidth, markScale } from "../sight.ts";
import type { Sight } from "../sight.ts";

/** Draws the mark of what changed since the step before: a short double notch in the margin, beside the box's inner edge. */
export function drawNotch(pen: Pen, sight: Sight, box: PlacedBox): void {
  const unit = markScale(sight);
  const y = box.y + box.height / 2;
  const [from, to] = [inward(sight, box, -13 * unit), inward(sight, box, -4 * unit)];
  const notch = (at: number) => [
    { x: from, y: at },
    { x: to, y: at },
  ];
  pen.lines([notch(y - 2.5 * unit), notch(y + 2.5 * unit)], {
    colour: "ink",
    width: lineWidth(sight, 2 * unit),
  });
}
