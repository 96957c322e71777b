import type { Band, Point } from "../../../show/map/scene.ts";
import type { Pen } from "../../pen/pen.ts";
import { rectangle } from "../boxes/shapes.ts";
import { lineWidth } from "../sight.ts";
import type { Sight } from "../sight.ts";

type Line = readonly Point[];

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
