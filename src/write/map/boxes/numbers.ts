import { isRightToLeft } from "../../../show/map/letters/letters.ts";
import type { BoxState, Point } from "../../../show/map/scene.ts";
import type { Pen } from "../../pen/pen.ts";
import { figureIn } from "../measure.ts";
import type { Cut } from "../measure.ts";
import { atInnerEdge, inward, letterSize, lineWidth, outlineStroke, toneOf } from "../sight.ts";
import type { BoxAs, Sight, Tone } from "../sight.ts";
import { drawStanding } from "../standing-line.ts";
import { changeWords } from "../words.ts";
import { drawFolded } from "./folded.ts";
import { rectangle } from "./shapes.ts";

type Computed = BoxAs<"number">;

const serif = { face: "serif", weight: 400 } as const;
const sans = { face: "sans", weight: 400 } as const;

/** Draws a computed number: its value on white, over a lower edge that is graduated like a scale. */
export function drawNumber(pen: Pen, sight: Sight, box: Computed, state: BoxState): void {
  const tone = toneOf(state);
  const edge = box.y + box.height - 7;
  pen.outline(rectangle({ ...box, height: box.height - 7 }), "paper", null);
  drawScale(pen, sight, box, edge, tone);
  if (tone === "later") {
    return pen.outline(rectangle({ ...box, height: box.height - 7 }), null, {
      colour: "hair",
      width: lineWidth(sight, 1),
    });
  }
  if (state.standing !== null && state.standing !== "stands") drawOdd(pen, sight, box, state, tone);
  if (sight.distance !== "far") drawWords(pen, sight, box, state);
}

/** The graduated edge: a tick for each 10 px, a longer one for each fifth. */
function drawScale(pen: Pen, sight: Sight, box: Computed, y: number, tone: Tone): void {
  const ticks: (readonly Point[])[] = [];
  const every = sight.distance === "near" ? 10 : 50;
  for (let n = 0; n * every <= box.width; n++) {
    const x = inward(sight, box, Math.min(box.width, n * every));
    const long = sight.distance === "near" ? n % 5 === 0 : n % 2 === 0;
    ticks.push([
      { x, y },
      { x, y: y + (long ? 7 : 4) },
    ]);
  }
  pen.line(
    [
      { x: box.x, y },
      { x: box.x + box.width, y },
    ],
    outlineStroke(sight, tone, 2),
  );
  pen.lines(ticks, outlineStroke(sight, tone, 1.2));
}

/** What is computed stands unless what it rests on does not; only then does it tell its standing, at the inner edge. */
function drawOdd(pen: Pen, sight: Sight, box: Computed, { standing }: BoxState, tone: Tone): void {
  if (standing === null) return;
  const x = inward(sight, box, 3.5);
  const [from, to] = [
    { x, y: box.y },
    { x, y: box.y + box.height - 10 },
  ];
  drawStanding(pen, sight, { standing, from, to, heavy: 4, tone, turned: sight.mirrored });
}

function drawWords(pen: Pen, sight: Sight, box: Computed, state: BoxState): void {
  const near = sight.distance === "near";
  const odd = state.standing !== null && state.standing !== "stands";
  const inset = odd ? 13 : 7;
  const room = (box.width - inset - 6) * sight.scale;
  const x = inward(sight, box, inset);
  const middle = box.y + (box.height - 7) / 2;
  const set = (words: string, natural: number, y: number, cut: Cut, less = 0): void => {
    const largest = Math.round(letterSize(sight, natural) * sight.scale);
    const figure = figureIn(words, cut, largest, room - less * sight.scale);
    if (figure === null) return;
    const size = figure.size / sight.scale;
    const colour = natural === 16 && state.lit ? "ink" : "soft";
    const letters = atInnerEdge(sight, isRightToLeft(words), { ...cut, size, colour, lang: null });
    pen.text(figure.words, { x, y }, letters);
  };
  const taken = drawBelow(pen, sight, box, state, middle + 14);
  const value = near && state.said !== "" ? state.said : box.look.value;
  set(value, 16, near ? middle - 3 : middle + 4.5 / sight.scale, near ? serif : sans);
  if (near)
    set(
      state.was === null ? box.look.under : sight.told(changeWords(state.standing, state.was)),
      13,
      middle + 14,
      sans,
      taken,
    );
}

/** What is folded up under a number, beside what computed it; gives the width taken, in px. */
function drawBelow(pen: Pen, sight: Sight, box: Computed, { lit }: BoxState, y: number): number {
  if (box.folded === null) return 0;
  const folded = { words: box.folded, y, inset: 6, room: box.width / 2, lit };
  // The scale is the line under the words: the crease goes below it.
  const width = drawFolded(pen, sight, box, { ...folded, crease: box.y + box.height + 4 });
  return width === 0 ? 0 : width + 10;
}
