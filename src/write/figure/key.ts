import type { Mark, Panel } from "./figure.ts";
import type { Palette } from "../pen/palette.ts";
import { letters, linesOf, widthOf } from "./ground.ts";

const NS = "http://www.w3.org/2000/svg";
const SAMPLE = 26;
const LINE = 19;

/** Dashes and widths of lines by what they are; the same in the drawing and in its key. */
export const dashes = { main: "", other: "7 4", null: "2.5 3.5", zero: "" } as const;
export const widths = { main: 1.8, other: 1.6, null: 1.2, zero: 0.8 } as const;

/** Whether a mark is explained in the key of its panel, not beside itself. */
export function inKey(mark: Mark, { marks }: Panel): boolean {
  if (["reach", "band", "strokes", "bars"].includes(mark.mark)) return mark.label !== "";
  const lines = marks.filter((one) => one.mark === "line");
  if (mark.mark === "line") return lines.length > 1;
  return mark.mark === "rule" && mark.axis === "y" && mark.role === "null" && lines.length > 0;
}

/** The key of a panel: a sample and a word for each line and shade that is not named beside itself. */
export function keyOf(
  panel: Panel,
  width: number,
  palette: Palette,
  document: Document,
): { readonly group: Element; readonly height: number } {
  const group = document.createElementNS(NS, "g");
  const known = new Set<string>();
  const entries = panel.marks.filter((mark) => {
    const fresh = inKey(mark, panel) && !known.has(mark.label);
    known.add(mark.label);
    return fresh;
  });
  let [x, row] = [0, 0];
  for (const mark of entries) {
    const room = SAMPLE + 7 + widthOf(mark.label, letters.mark) + 18;
    if (x > 0 && x + room > width) [x, row] = [0, row + 1];
    const y = row * LINE + 10;
    group.appendChild(made(document, "path", sampleOf(mark, x, y, palette)));
    // Words that are wider than the figure go on below, behind the same sample.
    const lines = linesOf(mark.label, width - SAMPLE - 7, letters.mark);
    for (const [place, words] of lines.entries()) {
      const text = made(document, "text", {
        x: String(x + SAMPLE + 7),
        y: String(y + 4 + place * LINE),
        "text-anchor": "start",
        "font-size": String(letters.mark),
        fill: palette.soft,
      });
      text.textContent = words;
      group.appendChild(text);
    }
    row += lines.length - 1;
    x += lines.length > 1 ? width : room;
  }
  return { group, height: entries.length === 0 ? 0 : (row + 1) * LINE + 4 };
}

function sampleOf(mark: Mark, x: number, y: number, palette: Palette): Readonly<Record<string, string>> {
  if (mark.mark === "reach" || mark.mark === "band") {
    return { d: `M${x} ${y - 6}h${SAMPLE}v12h-${SAMPLE}z`, fill: palette.hair, "fill-opacity": "0.6" };
  }
  if (mark.mark === "strokes") {
    return { d: `M${x + SAMPLE / 2} ${y - 5}v10`, stroke: palette.ink, "stroke-width": "1.4", fill: "none" };
  }
  if (mark.mark === "bars") return barSample(mark.role, x, y, palette);
  const role = mark.mark === "line" || mark.mark === "rule" ? mark.role : "main";
  return {
    d: `M${x} ${y}h${SAMPLE}`,
    stroke: palette.ink,
    "stroke-width": String(widths[role]),
    fill: "none",
    ...(dashes[role] === "" ? {} : { "stroke-dasharray": dashes[role] }),
  };
}

function barSample(
  role: Extract<Mark, { readonly mark: "bars" }>["role"],
  x: number,
  y: number,
  palette: Palette,
): Readonly<Record<string, string>> {
  const ink = { stroke: palette.ink, fill: "none" };
  if (role === "piece") {
    const shade = { fill: palette.hair, "fill-opacity": "0.7", "stroke-width": "1" };
    return { d: `M${x + 1} ${y - 5}h${SAMPLE - 2}v10h-${SAMPLE - 2}z`, ...ink, ...shade };
  }
  return role === "opening"
    ? { d: `M${x + 1} ${y - 6}v11h${SAMPLE - 2}v-11`, ...ink, "stroke-width": "1.8" }
    : { d: `M${x + 1} ${y - 4}v8m0 -4h${SAMPLE - 2}m0 -4v8`, ...ink, "stroke-width": "1" };
}

function made(document: Document, tag: string, attributes: Readonly<Record<string, string>>): Element {
  const element = document.createElementNS(NS, tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  return element;
}
