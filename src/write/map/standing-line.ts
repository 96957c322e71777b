import type { Standing } from "../../judge/judge.ts";
import type { Point } from "../../show/map/scene.ts";
import type { Colour, Pen, Stroke } from "../pen/pen.ts";
import { lineWidth, markScale } from "./sight.ts";
import type { Sight, Tone } from "./sight.ts";

/** The colour of a standing's line and word. */
export const standingColour: Readonly<Record<Standing, Colour>> = {
  stands: "blue",
  open: "ink",
  falls: "red",
  unsupported: "soft",
};

/** A level or upright line that tells a standing: its ends, and how heavy it is in px where it is solid. */
export interface StandingLine {
  readonly standing: Standing;
  readonly from: Point;
  readonly to: Point;
  readonly heavy: number;
  readonly tone: Tone;
  /** Upright lines step to the left when they fall; to the right in a mirrored map. */
  readonly turned?: boolean;
}

/** Draws a standing as its line: one solid and heavy, two dashed, one that steps down, a row of dots. */
export function drawStanding(pen: Pen, sight: Sight, line: StandingLine): void {
  const { standing, from, to, tone } = line;
  const unit = markScale(sight);
  const colour = tone === "ink" ? standingColour[standing] : tone === "unlit" ? "line" : "hair";
  if (tone === "later") return pen.line([from, to], { colour, width: lineWidth(sight, 1) });
  const thin = tone === "unlit" ? 0.6 : 1;
  const stroke = (width: number, more: Partial<Stroke> = {}): Stroke => ({
    colour,
    width: width * unit * thin,
    ...more,
  });
  if (standing === "stands") return pen.line([from, to], stroke(line.heavy));
  if (standing === "unsupported") {
    const dots = { dash: [0.1 * unit, 5.4 * unit], round: true };
    return pen.line([along(line, unit), to], stroke(2, dots));
  }
  if (standing === "open") {
    const stroked = stroke(1.8, { dash: [6.5 * unit, 6 * unit].map((part) => part * dashScale(sight)) });
    pen.line([aside(line, from, -2.5 * unit), aside(line, to, -2.5 * unit)], stroked);
    return pen.line([aside(line, from, 2.5 * unit), aside(line, to, 2.5 * unit)], stroked);
  }
  // The step keeps its slope however long the line is.
  const middle = (Math.hypot(to.x - from.x, to.y - from.y) * 15) / 32;
  const [before, after] = [along(line, middle - 2 * unit), along(line, middle + 2 * unit)];
  const points = [
    aside(line, from, -3 * unit),
    aside(line, before, -3 * unit),
    aside(line, after, 3 * unit),
    aside(line, to, 3 * unit),
  ];
  pen.line(points, stroke(2.5));
}

/** Half the height of what is drawn about the line, in px of the scene: where what stands under it or on it ends. */
export function halfHeight(sight: Sight, standing: Standing | null, heavy: number): number {
  const unit = markScale(sight);
  if (standing === "open") return 3.4 * unit;
  if (standing === "falls") return 4.2 * unit;
  return (heavy / 2) * unit;
}

/** Shorter dashes far off, so that a short line still has some. */
function dashScale({ distance }: Sight): number {
  return distance === "near" ? 1 : 0.75;
}

function along({ from, to }: StandingLine, by: number): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  return {
    x: from.x + ((to.x - from.x) / length) * by,
    y: from.y + ((to.y - from.y) / length) * by,
  };
}

/** A point moved down from a level line, and to the left of an upright one. */
function aside({ from, to, turned = false }: StandingLine, point: Point, by: number): Point {
  if (from.y === to.y) return { x: point.x, y: point.y + by };
  return { x: point.x + (turned ? by : -by), y: point.y };
}
