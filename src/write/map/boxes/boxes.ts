import type { BoxState, PlacedBox } from "../../../show/map/scene.ts";
import type { Pen } from "../../pen/pen.ts";
import type { Gaps } from "../lines/traced.ts";
import type { BoxAs, Sight } from "../sight.ts";
import { drawBeam } from "./beams.ts";
import { drawSentence } from "./claims.ts";
import { drawPile } from "./labels.ts";
import { drawFold, drawMark } from "./links.ts";
import { drawNumber } from "./numbers.ts";
import { drawThing } from "./things.ts";

/** Draws a box after its kind; names far off may reach into the gaps beside it. */
export function drawBox(pen: Pen, sight: Sight, box: PlacedBox, state: BoxState, gaps: Gaps): void {
  if (isAs(box, "claim") || isAs(box, "answer")) drawSentence(pen, sight, box, state, gaps);
  else if (isAs(box, "beam")) drawBeam(pen, sight, box, state);
  else if (isAs(box, "pile")) drawPile(pen, sight, box, state);
  else if (isAs(box, "number")) drawNumber(pen, sight, box, state);
  else if (isAs(box, "thing")) drawThing(pen, sight, box, state, gaps);
  else if (isAs(box, "fold")) drawFold(pen, sight, box, state);
  else if (isAs(box, "mark")) drawMark(pen, sight, box, state);
}

/** Whether a box's look is of a kind. */
export function isAs<Kind extends PlacedBox["look"]["as"]>(box: PlacedBox, kind: Kind): box is BoxAs<Kind> {
  return box.look.as === kind;
}
