import { inEnglish } from "../../base/text/said/english.ts";
import { worded } from "../../base/text/said/worded.ts";
import type { DrawingWords } from "../../show/artefacts/drawing/cell.ts";
import type { Drawing } from "../../show/artefacts/drawing/drawing.ts";
import { sheetOf } from "../../show/artefacts/drawing/sheet.ts";
import type { Sheet } from "../../show/artefacts/drawing/sheet.ts";
import { drawSheet, scaleWords } from "../drawing/drawing.ts";
import { svgFile, svgPen } from "../pen/svg-pen.ts";
import { pageHeight, paper, paperPen, pxPerMm, sizedTo } from "./paper.ts";
import type { Printed } from "./paper.ts";

/** Words on drawings in a file. */
const words: DrawingWords = {
  meanOf: (readings) => `mean of ${readings}`,
  form: { circle: "circle", rectangle: "rectangle", profile: "profile" },
};

/** The highest that a thing is drawn on paper, in mm, and lower where the whole then has room on one page. */
const heights = [110, 80, 55, 40];

/** Draws things to scale on a sheet of a width in mm, true to the scale that is printed on it. */
export function toScaleSvg(drawing: Drawing, width: number, name: string): Printed {
  return drawn(drawing, sheetFor(drawing, width), width, name);
}

/** The same on as many sheets as a page's height needs, each with the scale and the bars of its own. */
export function toScalePages(drawing: Drawing, width: number, name: string): readonly Printed[] {
  const sheets = sheetsFor(drawing, width);
  return sheets.map((part, n) =>
    drawn(part, sheetFor(part, width), width, sheets.length === 1 ? name : `${name}${n + 1}-`),
  );
}

/** The scales of the sheets that a drawing is on: `1:20`, or `1:20 and 1:5`. */
export function scalesOf(drawing: Drawing, width: number): string {
  const all = sheetsFor(drawing, width).map((part) => scaleWords(sheetFor(part, width)));
  return [...new Set(all)].join(" and ");
}

function sheetFor(drawing: Drawing, width: number): Sheet {
  const { groups, units } = worded(drawing, inEnglish);
  const frame = { width: width * pxPerMm, unit: units[0] ?? null, words };
  const sheets = heights.map((mm) => sheetOf(groups, { ...frame, tallest: mm * pxPerMm }));
  const [largest] = sheets;
  if (largest === undefined) throw new Error("sheetFor: no height");
  return sheets.find((one) => one.height <= pageHeight * pxPerMm) ?? largest;
}

/** Parts of a drawing that each have room on a page, as many things in each as go on. */
function sheetsFor(drawing: Drawing, width: number): readonly Drawing[] {
  const fits = (groups: Drawing["groups"]): boolean =>
    sheetFor({ ...drawing, groups }, width).height <= pageHeight * pxPerMm;
  const pages: Drawing["groups"][] = [];
  for (const group of drawing.groups) {
    for (const [n, thing] of group.entries()) {
      const last = pages.at(-1);
      const grown = last === undefined ? [[thing]] : n === 0 ? [...last, [thing]] : withLast(last, thing);
      if (last === undefined || !fits(grown)) pages.push([[thing]]);
      else pages[pages.length - 1] = grown;
    }
  }
  return pages.map((groups) => ({ ...drawing, groups }));
}

function withLast(groups: Drawing["groups"], thing: Drawing["groups"][number][number]): Drawing["groups"] {
  return [...groups.slice(0, -1), [...(groups.at(-1) ?? []), thing]];
}

function drawn(drawing: Drawing, sheet: Sheet, width: number, name: string): Printed {
  const pen = svgPen(paper, name);
  drawSheet(paperPen(pen, 1), sheet);
  const things = drawing.groups.flat().map((one) => inEnglish(one.name));
  const title = `${things.join(", ")}, ${scaleWords(sheet)}`;
  const svg = svgFile({ x: 0, y: 0, width: sheet.width, height: sheet.height }, title, pen.drawn());
  return sizedTo(svg, width, sheet.height / pxPerMm);
}
