import type { PlacedBox, Point } from "../../../show/map/scene.ts";

/** Height of the line of words in which a box tells what is folded up in it, in px at 100 %. */
const line = 26;

/** Whether a place within a box, from its top left corner, is on the words that unfold it: the outer half of its last line. */
export function inFoldWords({ folded, look, width, height }: PlacedBox, at: Point): boolean {
  const told = look.as === "claim" || look.as === "answer" || look.as === "number";
  return told && folded !== null && at.y >= height - line && at.x >= width / 2;
}
