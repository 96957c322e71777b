import type { Sheet } from "../../show/artefacts/drawing/sheet.ts";
import { pxPerMm } from "../../show/artefacts/drawing/sheet.ts";
import type { Point } from "../../show/map/scene.ts";
import type { Palette } from "../pen/palette.ts";
import type { Letters, Pen } from "../pen/pen.ts";
import { svgFile, svgPen } from "../pen/svg-pen.ts";
import { drawScaleBar } from "./scale-bar.ts";
import { drawThing } from "./thing.ts";

/** Draws a sheet of things to scale: the 5 mm grid of drawing film, the things, the scale and its bars. */
export function drawSheet(pen: Pen, sheet: Sheet): void {
  drawGrid(pen, sheet);
  for (const thing of sheet.things) drawThing(pen, thing, sheet.perMetre);
  for (const { bar, at } of sheet.bars) drawScaleBar(pen, bar, at);
  const [first] = sheet.bars;
  if (!first) return;
  const letters: Letters = {
    face: "sans",
    size: 13,
    weight: 600,
    colour: "ink",
    anchor: "start",
    rtl: false,
    lang: null,
  };
  pen.text(scaleWords(sheet), { x: first.at.x, y: first.at.y - 8 }, letters);
}

/** A scale as it is printed: 1:20. */
export function scaleWords({ scale }: Pick<Sheet, "scale">): string {
  return `1:${scale}`;
}

/** A whole SVG file of a sheet, true to its scale at 96 px to the inch, on white. */
export function drawingFile(sheet: Sheet, title: string, palette: Palette): string {
  const pen = svgPen(palette);
  drawSheet(pen, sheet);
  return svgFile({ x: 0, y: 0, width: sheet.width, height: sheet.height }, title, pen.drawn());
}

/** Every tenth line of the grid, 50 mm, is a strong one. */
function drawGrid(pen: Pen, { width, height }: Sheet): void {
  const step = 5 * pxPerMm;
  const upright = lines(width, step).map(({ at, strong }) => ({ strong, points: vertical(at, height) }));
  const level = lines(height, step).map(({ at, strong }) => ({ strong, points: horizontal(at, width) }));
  for (const strong of [false, true]) {
    const those = [...upright, ...level].filter((one) => one.strong === strong);
    pen.lines(
      those.map((one) => one.points),
      { colour: strong ? "grid-strong" : "grid", width: 1 },
    );
  }
}

function lines(length: number, step: number): readonly { readonly at: number; readonly strong: boolean }[] {
  return Array.from({ length: Math.floor(length / step) + 1 }, (_, n) => ({
    at: n * step,
    strong: n % 10 === 0,
  }));
}

function vertical(x: number, height: number): readonly Point[] {
  return [
    { x, y: 0 },
    { x, y: height },
  ];
}

function horizontal(y: number, width: number): readonly Point[] {
  return [
    { x: 0, y },
    { x: width, y },
  ];
}
