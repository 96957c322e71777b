import type { Panel, Pair } from "./figure.ts";
import { textWidth } from "../../show/map/letters/letters.ts";
import type { Palette } from "../pen/palette.ts";
import { extentOf } from "./extent.ts";

/** Sizes of letters in px: figures on axes, words beside marks, titles of panels. */
export const letters = { axis: 12, mark: 12, strong: 15, title: 14 } as const;

/** Where a panel is drawn: its size, its margins, its axes, and its colours. */
export interface Ground {
  readonly panel: Panel;
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: Pair;
  readonly y: Pair;
  readonly palette: Palette;
  /** Place on the sheet of an x, and of a y, in px. */
  readonly px: (x: number) => number;
  readonly py: (y: number) => number;
}

/** About how many px a text takes, by the widths of the letters of the bundled sans. */
export function widthOf(text: string, size: number, weight: 400 | 600 = 400): number {
  return textWidth(text, "sans", size, weight);
}

/** A text cut to a width in px, with a sign that it was. */
export function cutTo(text: string, width: number, size: number, weight: 400 | 600 = 400): string {
  if (widthOf(text, size, weight) <= width) return text;
  const signs = [...text];
  while (signs.length > 1 && widthOf(`${signs.join("").trimEnd()}…`, size, weight) > width) signs.pop();
  return `${signs.join("").trimEnd()}…`;
}

/** A text parted at its spaces into lines of at most so many px. */
export function linesOf(
  text: string,
  width: number,
  size: number,
  weight: 400 | 600 = 400,
): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && widthOf(longer, size, weight) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** The ground of a panel on a sheet of that width, its plot no higher than `tallest` where its rows allow it. */
export function groundOf(panel: Panel, width: number, palette: Palette, tallest = Infinity): Ground {
  const { x, y } = extentOf(panel);
  const { names } = panel.y;
  const edge = panel.marks.some((mark) => mark.mark === "edge");
  const longest = Math.max(0, ...(names ?? []).map((name) => widthOf(name, letters.axis)));
  const left = edge ? 4 : names === undefined ? 58 : Math.min(longest + 14, 0.42 * width);
  const above = panel.marks.some((mark) => mark.mark === "peaks") ? 32 : 0;
  const headed = panel.marks.some((mark) => mark.mark === "rule" && mark.axis === "x" && mark.label !== "");
  const [right, top, bottom] = [14, above + (panel.y.label === "" ? (headed ? 20 : 10) : 30), 46];
  const height =
    top + bottom + Math.min(heightOf(panel, width, edge), Math.max(tallest, leastOf(panel, edge)));
  const along = (ends: Pair, from: number, to: number, log: boolean) => (value: number) => {
    const at = log
      ? Math.log(value / ends[0]) / Math.log(ends[1] / ends[0])
      : (value - ends[0]) / (ends[1] - ends[0]);
    return from + at * (to - from);
  };
  return {
    panel,
    width,
    height,
    left,
    right,
    top,
    bottom,
    x,
    y,
    palette,
    px: along(x, left, width - right, panel.x.scale === "log"),
    py: along(y, height - bottom, top, panel.y.scale === "log"),
  };
}

function heightOf({ x, y, marks }: Panel, width: number, edge: boolean): number {
  // A row in which something is drawn to scale, or rises as a curve, needs more than a row of dots.
  const tall = edge || marks.some((mark) => mark.mark === "bars" || mark.mark === "band");
  if (y.names !== undefined) return y.names.length * (tall ? 66 : 24);
  if (x.scale === "log" && y.scale === "log") return Math.min(0.75 * width, 380);
  return Math.min(0.62 * width, 280);
}

/** What the plot of a panel needs at least: its names one below the other, else room to see anything. */
function leastOf({ y, marks }: Panel, edge: boolean): number {
  const tall = edge || marks.some((mark) => mark.mark === "bars" || mark.mark === "band");
  return y.names === undefined ? 90 : y.names.length * (tall ? 40 : 16);
}
