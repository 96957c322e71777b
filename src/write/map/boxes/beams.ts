import { isRightToLeft } from "../../../show/map/letters/letters.ts";
import type { BoxState, Point } from "../../../show/map/scene.ts";
import { apart } from "../../../show/map/section/boxes/words.ts";
import type { Pen } from "../../pen/pen.ts";
import { widthOf } from "../measure.ts";
import { atInnerEdge, inward, letterSize, lineWidth, toneOf } from "../sight.ts";
import type { BoxAs, Frame, Sight } from "../sight.ts";
import { drawStanding, halfHeight } from "../standing-line.ts";
import { changeWords } from "../words.ts";
import { drawCrease } from "./folded.ts";

type Beam = BoxAs<"beam">;

const sans = { face: "sans", weight: 400 } as const;

/** How heavy the line of a beam is that stands, in px. */
const heavy = 3;

/** Draws an argument's beam: a level line that tells its standing, and near by the words beside it. */
export function drawBeam(pen: Pen, sight: Sight, box: Beam, state: BoxState): void {
  const tone = toneOf(state);
  const y = box.y + box.height / 2;
  const [from, to] = sight.mirrored
    ? [box.x + box.width - box.look.length, box.x + box.width]
    : [box.x, box.x + box.look.length];
  const line = { from: { x: from, y }, to: { x: to, y } };
  if (state.standing === null) {
    const colour = tone === "ink" ? "ink" : tone === "unlit" ? "line" : "hair";
    pen.line([line.from, line.to], { colour, width: lineWidth(sight, 1.5) });
  } else drawStanding(pen, sight, { ...line, standing: state.standing, heavy, tone });
  if (tone === "later") return;
  if (sight.distance === "near") drawWords(pen, sight, box, state);
  if (box.folded !== null && sight.distance !== "far") {
    const x = inward(sight, box, box.look.length + 8);
    const length = (sight.mirrored ? -1 : 1) * 26;
    drawCrease(pen, sight, { x, y: box.y + box.height + 5, length }, state.lit);
  }
}

function drawWords(pen: Pen, sight: Sight, box: Beam, state: BoxState): void {
  const { words, length } = box.look;
  const last = words.lines.length - 1;
  const changed = state.was === null ? [] : [sight.told(changeWords(state.standing, state.was))];
  const lines = [...words.lines, ...changed];
  const leading = 16;
  const x = inward(sight, box, length + 8);
  const first = box.y + box.height / 2 + 4.5 - ((lines.length - 1) * leading) / 2;
  const size = letterSize(sight, 13);
  lines.forEach((line, n) => {
    const isChange = n >= words.lines.length;
    const letters = {
      face: "sans",
      size,
      weight: isChange ? 600 : 400,
      colour: isChange && state.lit ? "ink" : "soft",
      lang: words.lang,
    } as const;
    const at = { x, y: first + n * leading };
    pen.text(line, at, atInnerEdge(sight, isChange ? isRightToLeft(line) : words.rtl, letters));
    if (n === last && state.said !== "") drawBearing(pen, sight, at, line, state);
  });
}

/** What a number says of the claim, as a word behind the argument's own; a change tells it anew. */
function drawBearing(pen: Pen, sight: Sight, { x, y }: Point, before: string, state: BoxState): void {
  const size = letterSize(sight, 13);
  const plain = { ...sans, size, lang: null } as const;
  const rtl = isRightToLeft(state.said);
  const behind = (words: string): Point => ({
    x: x + (sight.mirrored ? -1 : 1) * widthOf(words, sans, size),
    y,
  });
  pen.text(apart, behind(before), atInnerEdge(sight, rtl, { ...plain, colour: "soft" }));
  const colour = state.lit ? "ink" : "soft";
  pen.text(state.said, behind(`${before}${apart}`), atInnerEdge(sight, rtl, { ...plain, colour }));
}

/** How far a beam goes from its inner end, with the words beside it where they are drawn, in px of the scene. */
export function beamReach(sight: Sight, { look, width }: Beam, state: BoxState): number {
  const tone = toneOf(state);
  if (sight.distance !== "near" || tone === "later" || look.words.lines.length === 0) return look.length;
  const size = letterSize(sight, 13);
  const words = Math.max(
    ...look.words.lines.map((line, n) =>
      widthOf(
        n === look.words.lines.length - 1 && state.said !== "" ? `${line}${apart}${state.said}` : line,
        sans,
        size,
      ),
    ),
  );
  return Math.min(width, look.length + 8 + words + 6);
}

/** How far from the upper and lower edge of a beam's box its posts go on, to end at the line itself. */
export function postReach(sight: Sight, box: Frame, standing: BoxState["standing"]): number {
  return Math.max(0, box.height / 2 - halfHeight(sight, standing, heavy));
}
