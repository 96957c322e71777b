import type { Band, Point, Scene } from "../../../show/map/scene.ts";
import type { Pen } from "../../pen/pen.ts";
import { rectangle } from "../boxes/shapes.ts";
import { linesOf, widthOf } from "../measure.ts";
import { lineWidth } from "../sight.ts";
import type { Sight } from "../sight.ts";
import { bandWords } from "../words.ts";

type Line = readonly Point[];

/** Width of the column at the inner edge in which the names of the bands stay, in px on the screen. */
export const nameColumn = 96;

/** Windows narrower than this on the screen have no column: the names stand at the top of their bands. */
const narrow = 620;

/** Draws the film and its 5 mm grid: every 20 px fine, every 100 px strong; in the middle distance the strong lines alone, far off none. */
export function drawFilm(pen: Pen, sight: Sight): void {
  const { window, distance } = sight;
  pen.outline(rectangle(window), "sheet", null);
  if (distance === "far") return;
  if (distance === "near") {
    pen.lines(gridLines(sight, 20, true), { colour: "grid", width: lineWidth(sight, 1) });
  }
  pen.lines(gridLines(sight, 100, false), { colour: "grid-strong", width: lineWidth(sight, 1) });
}

/** Grid lines so many px apart, on half pixels so that they are sharp; those of the strong grid may be left out. */
function gridLines({ window }: Sight, apart: number, without: boolean): readonly Line[] {
  const lines: Line[] = [];
  const [right, bottom] = [window.x + window.width, window.y + window.height];
  for (let x = Math.ceil(window.x / apart) * apart; x <= right; x += apart) {
    if (without && x % 100 === 0) continue;
    lines.push([
      { x: x + 0.5, y: window.y },
      { x: x + 0.5, y: bottom },
    ]);
  }
  for (let y = Math.ceil(window.y / apart) * apart; y <= bottom; y += apart) {
    if (without && y % 100 === 0) continue;
    lines.push([
      { x: window.x, y: y + 0.5 },
      { x: right, y: y + 0.5 },
    ]);
  }
  return lines;
}

/** Draws the hairlines between the ranks of claims. */
export function drawRanks(pen: Pen, sight: Sight, bands: readonly Band[]): void {
  if (sight.distance === "far") return;
  const { x, width } = sight.window;
  const lines = bands.flatMap(({ hairlines }) =>
    hairlines.map((y): Line => [
      { x, y },
      { x: x + width, y },
    ]),
  );
  if (lines.length > 0) pen.lines(lines, { colour: "hair", width: lineWidth(sight, 1) });
}

/** Draws the names of the bands where they stay: at the window's inner edge, in the middle of what is seen of each. */
export function drawBandNames(pen: Pen, sight: Sight, scene: Scene, foot: number): void {
  const { window, scale, mirrored } = sight;
  const wide = window.width * scale >= narrow;
  const column = nameColumn / scale;
  if (wide) {
    const x = mirrored ? window.x + window.width - column : window.x;
    pen.outline(rectangle({ ...window, x, width: column }), "sheet", null);
  }
  for (const band of scene.bands)
    drawName(pen, sight, band, { wide, bottom: window.y + window.height - foot });
}

function drawName(
  pen: Pen,
  sight: Sight,
  { name, top, bottom }: Band,
  place: { readonly wide: boolean; readonly bottom: number },
): void {
  const { window, scale, mirrored } = sight;
  const px = (screen: number): number => screen / scale;
  const [high, low] = [Math.max(top, window.y), Math.min(bottom, place.bottom)];
  const cut = { face: "sans", weight: 400 } as const;
  const words = bandWords[name];
  const lines = place.wide ? linesOf(words, cut, { size: 13, width: nameColumn - 24, lines: 2 }) : [words];
  const block = px(16 * lines.length);
  if (low - high < block) return;
  const inner = place.wide ? 14 : 6;
  const x = mirrored ? window.x + window.width - px(inner) : window.x + px(inner);
  const first = place.wide ? (high + low - block) / 2 + px(12) : high + px(14);
  if (!place.wide) drawPatch(pen, sight, x, first, widthOf(words, cut, px(13)));
  const anchor = mirrored ? "end" : "start";
  lines.forEach((line, n) => {
    const at = { x, y: first + px(16) * n };
    pen.text(line, at, { ...cut, size: px(13), colour: "soft", anchor, rtl: false, lang: null });
  });
}

/** The film under a name that has no column, so that it reads over what it lies on. */
function drawPatch({ outline }: Pen, { scale, mirrored }: Sight, x: number, y: number, width: number): void {
  const px = (screen: number): number => screen / scale;
  const left = mirrored ? x - width - px(4) : x - px(4);
  outline(rectangle({ x: left, y: y - px(13), width: width + px(8), height: px(18) }), "sheet", null);
}
