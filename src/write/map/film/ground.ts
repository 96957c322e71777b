import type { PlacedBox, Point, Scene } from "../../../show/map/scene.ts";
import type { Pen } from "../../pen/pen.ts";
import { cut, rectangle } from "../boxes/shapes.ts";
import { fitted } from "../measure.ts";
import { lineWidth } from "../sight.ts";
import type { Frame, Sight } from "../sight.ts";
import { turfBetween, turfLine, unevenness } from "./turf.ts";

type Line = readonly Point[];

/** Draws the ground under the turf in light hachures. */
export function drawGround(pen: Pen, sight: Sight, { ground }: Scene): void {
  const { window } = sight;
  const top = Math.max(ground + 5, window.y);
  drawHachures(pen, sight, { ...window, y: top, height: window.y + window.height - top }, ground);
}

/** Draws the turf line, over the mouths of the cuts too, and short strokes along it. */
export function drawTurf(pen: Pen, sight: Sight, scene: Scene, things: readonly PlacedBox[]): void {
  const { window } = sight;
  if (scene.ground - 8 > window.y + window.height || scene.ground + 16 < window.y) return;
  const step = 16 * 2 ** Math.max(0, Math.ceil(Math.log2(0.5 / sight.scale)));
  // Whole steps beyond the window, so that the line does not change as the window moves.
  const [from, to] = [
    (Math.floor(window.x / step) - 5) * step,
    (Math.ceil((window.x + window.width) / step) + 5) * step,
  ];
  pen.line(turfLine(things, scene.ground, { from, to }, step), turfStroke(sight), 12);
  if (sight.distance === "near") {
    pen.lines(turfStrokes(things, scene.ground, from, to), { colour: "ink", width: lineWidth(sight, 1.2) });
  }
}

const turfStroke = (sight: Sight) => ({ colour: "ink", width: lineWidth(sight, 2.2, 1.4) }) as const;

/** Hachures of a piece of ground, rising to the right, about as dense at any distance; `level` is where the ground begins. */
function drawHachures(pen: Pen, sight: Sight, piece: Frame, level: number): void {
  if (piece.height <= 4) return;
  const space = 16 * 2 ** Math.max(0, Math.ceil(Math.log2(0.8 / sight.scale)));
  const slope = 0.6;
  const [top, bottom, right] = [piece.y, piece.y + piece.height, piece.x + piece.width];
  // How far left of where it meets the level a line is at the top and at the bottom of the piece.
  const [over, under] = [(top - level) / slope, (bottom - level) / slope];
  const lines: Line[] = [];
  for (let foot = Math.ceil((piece.x + over) / space) * space; foot < right + under; foot += space) {
    const high = Math.min(right, foot - over);
    const low = Math.max(piece.x, foot - under);
    if (low >= high) continue;
    lines.push([
      { x: low, y: level + (foot - low) * slope },
      { x: high, y: level + (foot - high) * slope },
    ]);
  }
  pen.lines(lines, { colour: "hair", width: lineWidth(sight, 0.8, 0.8) });
}

/** Here and there three short strokes under the turf, as on a drawn section. */
function turfStrokes(
  things: readonly PlacedBox[],
  ground: number,
  from: number,
  to: number,
): readonly Line[] {
  const [apart, lines] = [190, [] as Line[]];
  for (const stretch of turfBetween(things, from, to)) {
    for (let n = Math.ceil(stretch.from / apart); n * apart < stretch.to; n++) {
      const start = n * apart + ((n * 53) % 61);
      if (start - 12 < stretch.from || start + 34 > stretch.to) continue;
      for (const x of [start, start + 12, start + 24]) {
        const y = ground + 2 + unevenness(x, Math.min(x - stretch.from, stretch.to - x));
        lines.push([
          { x, y },
          { x: x - 6, y: y + 9 },
        ]);
      }
    }
  }
  return lines;
}

/** Height of the strip of ground at the window's foot, and how far under its upper edge the turf lies, in px on the screen. */
export const stripHeight = 40;
const turfDepth = 11;

/** Whether the ground lies so low in the window, or under it, that its strip is pinned to the foot. */
export function isGroundBelow({ window, scale }: Sight, scene: Scene): boolean {
  return scene.ground > window.y + window.height - (stripHeight - turfDepth) / scale;
}

/** Draws the ground as a strip of 40 px at the window's foot, with the mouths of the cuts and their names. */
export function drawStrip(pen: Pen, sight: Sight, things: readonly PlacedBox[]): void {
  const { window, scale } = sight;
  const px = (screen: number): number => screen / scale;
  const strip = { ...window, y: window.y + window.height - px(stripHeight), height: px(stripHeight) };
  const turf = strip.y + px(turfDepth);
  pen.outline(rectangle(strip), "sheet", null);
  drawHachures(pen, sight, { ...strip, y: turf, height: px(stripHeight - turfDepth) }, turf);
  const right = window.x + window.width;
  const seen = things.filter(({ x, width }) => x < right && x + width > window.x);
  for (const thing of seen) {
    // Deeper than the strip, which cuts the foot off.
    pen.outline(cut({ x: thing.x, y: turf, width: thing.width, height: px(90) }), "paper", {
      colour: "ink",
      width: lineWidth(sight, 1.8),
    });
  }
  pen.line(
    [
      { x: window.x, y: turf },
      { x: right, y: turf },
    ],
    turfStroke(sight),
  );
  for (const thing of seen) nameInStrip(pen, sight, thing, turf + px(19));
}

function nameInStrip(pen: Pen, sight: Sight, { look, x, width }: PlacedBox, y: number): void {
  if (look.as !== "thing") return;
  const letters = { face: "serif", weight: 400, size: 13 / sight.scale, colour: "ink" } as const;
  const line = fitted(look.name.lines.join(" "), letters, 13, width * sight.scale - 14);
  if (line === "") return;
  const { rtl, lang } = look.name;
  pen.text(line, { x: x + width / 2, y }, { ...letters, anchor: "middle", rtl, lang });
}
