import { isRightToLeft } from "../../../show/map/letters/letters.ts";
import type { Bow, Point } from "../../../show/map/scene.ts";
import type { Colour, Pen } from "../../pen/pen.ts";
import { rectangle } from "../boxes/shapes.ts";
import { widthOf } from "../measure.ts";
import { isSeen, letterSize, lineWidth } from "../sight.ts";
import type { Sight, Tone } from "../sight.ts";
import { rivalWords } from "../words.ts";
import { aroundBow } from "./traced.ts";

const sans = { face: "sans", weight: 400 } as const;
const colours: Readonly<Record<Tone, Colour>> = { ink: "red", unlit: "line", later: "hair" };

/** Far off a bow over answers lies between their lines and their names: how far over the answers' feet its ends and its crown lie, in px on the screen. */
const farBow = { ends: 9, crown: 16 } as const;
/** How far over the foot of an answer its name ends far off, clear of a bow, in px on the screen. */
export const farBowTop = farBow.crown + 4;

/** What drawing a bow asks of the boxes it joins: their tone, their upper edge, and the foot of an answer. */
interface Joined {
  readonly top: number;
  readonly tone: Tone;
  readonly foot: number | null;
}

/** Draws what cannot be right together: one red bow over a row of rivals, red dots between measurements in conflict. */
export function drawBows(pen: Pen, sight: Sight, bows: readonly Bow[], boxOf: (id: string) => Joined): void {
  for (const bow of bows) {
    const joined = bow.boxes.map(boxOf);
    const tones = joined.map(({ tone }) => tone);
    const tone = (["later", "unlit"] as const).find((one) => tones.includes(one)) ?? "ink";
    const placed = bow.kind === "rivals" ? lowered(sight, bow, joined) : bow;
    if (!isSeen(sight, aroundBow(placed), 30)) continue;
    if (bow.kind === "rivals") drawRivals(pen, sight, placed, tone);
    else drawConflict(pen, sight, bow, { tone, top: Math.min(...joined.map(({ top }) => top)) });
  }
}

/** Over answers far off, of which only the lines are left, a bow comes down to them. */
function lowered(sight: Sight, bow: Bow, joined: readonly Joined[]): Bow {
  const feet = joined.flatMap(({ foot }) => foot ?? []);
  if (sight.distance !== "far" || feet.length < joined.length) return bow;
  const over = (by: number): number => Math.min(...feet) - by / sight.scale;
  const y = over(farBow.ends);
  return { ...bow, from: { ...bow.from, y }, to: { ...bow.to, y }, crown: over(farBow.crown) };
}

function drawRivals(pen: Pen, sight: Sight, { from, to, crown }: Bow, tone: Tone): void {
  const colour = colours[tone];
  // Two curves that meet at the crown, level between them over a long row.
  const middle = { x: (from.x + to.x) / 2, y: crown };
  const way = Math.sign(to.x - from.x) || 1;
  // Over a narrow gap it stands on the upper edges of both, where it is still a bow.
  const reach = sight.distance === "far" ? 0 : Math.max(0, Math.min(64, 84 - Math.abs(to.x - from.x) / 2));
  const [start, end] = [
    { x: from.x - way * reach, y: from.y },
    { x: to.x + way * reach, y: to.y },
  ];
  const shoulder = Math.min(240, Math.abs(end.x - start.x) / 2);
  pen.outline(
    [
      { go: "move", to: start },
      {
        go: "curve",
        by: { x: start.x + way * shoulder * 0.4, y: crown },
        to: { x: start.x + way * shoulder, y: crown },
      },
      { go: "line", to: { x: end.x - way * shoulder, y: crown } },
      { go: "curve", by: { x: end.x - way * shoulder * 0.4, y: crown }, to: end },
    ],
    null,
    { colour, width: lineWidth(sight, 2, 1.4) },
  );
  if (sight.distance === "near" && tone === "ink")
    drawWords(pen, sight, sight.told(rivalWords), { x: middle.x, y: crown - 7 });
}

function drawConflict(
  pen: Pen,
  sight: Sight,
  bow: Bow,
  { tone, top }: { readonly tone: Tone; readonly top: number },
): void {
  const width = lineWidth(sight, 3, 2);
  const stroke = { colour: colours[tone], width, dash: [0.1, 2 * width], round: true } as const;
  const { from, to, crown } = bow;
  const level = from.y === to.y && Math.abs(crown - from.y) < 1;
  const points = level ? [from, to] : [from, { x: from.x, y: crown }, { x: to.x, y: crown }, to];
  pen.line(points, stroke, 8);
  if (bow.words === undefined || sight.distance !== "near" || tone !== "ink") return;
  drawWords(pen, sight, bow.words, { x: (from.x + to.x) / 2, y: Math.min(crown, from.y, to.y, top) - 8 });
}

/** Words over a bow, on a piece of film where a line passes behind them. */
function drawWords(pen: Pen, sight: Sight, words: string, at: Point): void {
  const size = letterSize(sight, 13);
  const width = widthOf(words, sans, size) + 4;
  const patch = { x: at.x - width / 2, y: at.y - size * 0.8, width, height: size * 1.05 };
  pen.outline(rectangle(patch), "sheet", null);
  pen.text(words, at, {
    ...sans,
    size,
    colour: "red",
    anchor: "middle",
    rtl: isRightToLeft(words),
    lang: null,
  });
}
