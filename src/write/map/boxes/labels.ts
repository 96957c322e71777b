import { isRightToLeft } from "../../../show/map/letters/letters.ts";
import type { BoxState, FindsLabel } from "../../../show/map/scene.ts";
import type { Pen } from "../../pen/pen.ts";
import { figureIn } from "../measure.ts";
import type { Cut, Figure } from "../measure.ts";
import { atInnerEdge, inward, letterSize, lineWidth, outlineStroke, toneOf } from "../sight.ts";
import type { BoxAs, Frame, Sight, Tone } from "../sight.ts";
import { drawStanding } from "../standing-line.ts";
import { changeWords } from "../words.ts";
import { drawCrease } from "./folded.ts";
import { tag } from "./shapes.ts";

type Pile = BoxAs<"pile">;

const serif = { face: "serif", weight: 400 } as const;
const sans = { face: "sans", weight: 400 } as const;

/** How far one label of a pile shows behind the other, in px. */
const step = 4;

/** Draws finds labels that lie over each other, the first on top, with the hole for their string. */
export function drawPile(pen: Pen, sight: Sight, box: Pile, state: BoxState): void {
  const tone = toneOf(state);
  const sheets = Math.max(1, Math.min(3, box.look.labels.length));
  const outline = outlineStroke(sight, tone);
  // Far off the gaps close up: the one on top tells of all.
  const drawn = sight.distance === "far" ? 1 : sheets;
  for (let behind = drawn - 1; behind >= 0; behind--) {
    const soft = behind > 0 && sight.distance === "middle" && tone === "ink";
    const stroke = soft ? { ...outline, colour: "line" as const } : outline;
    pen.outline(tag(labelFrame(sight, box, sheets, behind), sight.mirrored), "paper", stroke);
  }
  const front = labelFrame(sight, box, sheets, 0);
  if (box.look.conflict && tone !== "later") drawConflict(pen, sight, front, tone);
  drawOddStanding(pen, sight, front, state, tone);
  if (tone === "later") return;
  if (sight.distance === "near") drawHole(pen, sight, front, tone);
  const [top] = box.look.labels;
  if (box.folded !== null && sight.distance !== "far") drawCreaseBelow(pen, sight, front, state.lit);
  if (top !== undefined) drawWords(pen, sight, front, top, state);
}

function labelFrame({ mirrored }: Sight, box: Pile, sheets: number, behind: number): Frame {
  const spread = step * (sheets - 1);
  return {
    x: box.x + (mirrored ? spread - step * behind : step * behind),
    y: box.y + spread - step * behind,
    width: box.width - spread,
    height: box.height - spread,
  };
}

/** The label of many opens: a crease under it, where no line stands. */
function drawCreaseBelow(pen: Pen, sight: Sight, front: Frame, lit: boolean): void {
  const x = inward(sight, front, 6);
  const length = (sight.mirrored ? -1 : 1) * Math.min(36, front.width / 3);
  drawCrease(pen, sight, { x, y: front.y + front.height + lineWidth(sight, 4, 3), length }, lit);
}

function drawHole(pen: Pen, sight: Sight, front: Frame, tone: Tone): void {
  const at = { x: inward(sight, front, front.width - 14), y: front.y + front.height / 2 };
  pen.disc(at, 3.4, "sheet", outlineStroke(sight, tone, 1.2));
}

/** Red dots along the upper edge, between the label and the one behind it. */
function drawConflict(pen: Pen, sight: Sight, front: Frame, tone: Tone): void {
  const y = front.y - step / 2;
  const width = lineWidth(sight, 3, 2);
  const stroke = {
    colour: tone === "ink" ? "red" : "line",
    width,
    dash: [0.1, 2 * width],
    round: true,
  } as const;
  const [from, to] = [inward(sight, front, 4), inward(sight, front, front.width - 14)];
  pen.line(
    [
      { x: from, y },
      { x: to, y },
    ],
    stroke,
  );
}

/** What was seen stands unless something attacks it; only then does it tell its standing, at the inner edge. */
function drawOddStanding(pen: Pen, sight: Sight, front: Frame, { standing }: BoxState, tone: Tone): void {
  if (standing === null || standing === "stands" || tone === "later") return;
  const x = inward(sight, front, 5);
  const [from, to] = [
    { x, y: front.y + 3 },
    { x, y: front.y + front.height - 3 },
  ];
  drawStanding(pen, sight, { standing, from, to, heavy: 3, tone, turned: sight.mirrored });
}

function drawWords(pen: Pen, sight: Sight, front: Frame, label: FindsLabel, state: BoxState): void {
  if (sight.distance === "far") return;
  const near = sight.distance === "near";
  const odd = state.standing !== null && state.standing !== "stands";
  const inset = near ? (odd ? 12 : 8) : (odd ? 8 : 4) / sight.scale;
  const x = inward(sight, front, inset);
  const room = (front.width - inset) * sight.scale - (near ? 26 * sight.scale : 6);
  const set = (figure: Figure | null, y: number, cut: Cut): void => {
    if (figure === null) return;
    const size = figure.size / sight.scale;
    const colour = cut === value && state.lit ? "ink" : "soft";
    const letters = atInnerEdge(sight, isRightToLeft(figure.words), { ...cut, size, colour, lang: null });
    pen.text(figure.words, { x, y }, letters);
  };
  // Far enough off that it stands alone, the value is set in the narrower face.
  const value: Cut = near ? serif : sans;
  const largest = Math.round(letterSize(sight, 16) * sight.scale);
  const middle = front.y + front.height / 2 + 4.5 / sight.scale;
  set(figureIn(label.value, value, largest, room), near ? front.y + 19 : middle, value);
  if (!near) return;
  const under = state.was === null ? label.under : sight.told(changeWords(state.standing, state.was));
  const small = Math.round(letterSize(sight, 13) * sight.scale);
  const figure = figureIn(under, sans, small, room + 10 * sight.scale);
  set(figure, front.y + 36, { ...sans });
}
