import type { Text } from "../../../base/text/said/said.ts";
import { worded } from "../../../base/text/said/worded.ts";
import type { DrawingWords } from "../../../show/artefacts/drawing/cell.ts";
import type { Drawing } from "../../../show/artefacts/drawing/drawing.ts";
import { pointsPerFigurePx, pointsPerMapPx } from "../../../show/telling/talk/layout/room.ts";
import type { Picture } from "../../../show/telling/blocks/picture.ts";
import { drawSheet } from "../../drawing/drawing.ts";
import { draw } from "../../figure/draw.ts";
import { svgText } from "../../figure/svg-text.ts";
import { drawMap } from "../../map/map.ts";
import { distanceAt } from "../../map/sight.ts";
import type { Palette } from "../../pen/palette.ts";
import { svgPen } from "../../pen/svg-pen.ts";
import { besideBars } from "./side-by-side.ts";

/** What pictures on slides are drawn with. */
export interface Easel {
  readonly document: Document;
  readonly palette: Palette;
  /** Puts what is said into the reader's language. */
  readonly told: (text: Text) => string;
  readonly words: DrawingWords;
  /** Begins every id in the picture: several stand in one document. */
  readonly prefix: string;
  readonly mirrored: boolean;
}

/** A picture as it was drawn: its elements without the root around them, what of the plane they show, and its size in points. */
export interface OnSlide {
  readonly inner: string;
  readonly box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  readonly width: number;
  readonly height: number;
  /** The letters that the text elements inherit, for pictures that set them once. */
  readonly letters: Readonly<Record<string, string>>;
}

/** The words of drawings to scale in a file. */
export const drawingInEnglish: DrawingWords = {
  meanOf: (readings) => `mean of ${readings}`,
  form: { circle: "circle", rectangle: "rectangle", profile: "profile" },
};

/** A room on a slide, in points. */
export interface SlideRoom {
  readonly width: number;
  readonly height: number;
}

/** Draws a picture into a room on a slide, no letter of it under 18 points; an image is put there as the file it is. */
export function drawnOn(picture: Picture, room: SlideRoom, easel: Easel): OnSlide | null {
  switch (picture.is) {
    case "computed":
      return figureOn(picture, room, easel);
    case "map":
      return mapOn(picture.map, room, easel);
    case "drawing":
      return drawingOn(picture.drawing, room, easel);
    case "image":
      return null;
  }
}

function figureOn(
  { figure }: Extract<Picture, { readonly is: "computed" }>,
  room: SlideRoom,
  easel: Easel,
): OnSlide {
  const { document, palette, told, prefix } = easel;
  const plain = worded(figure, told);
  // The slide's own sentence stands over it; the panel's title is told to those who do not see it.
  const bare = { ...plain, panels: plain.panels.map((panel) => ({ ...panel, title: "" })) };
  const most = room.height / pointsPerFigurePx + titleLine;
  const width = Math.floor(room.width / pointsPerFigurePx);
  const at = (tallest: number): SVGSVGElement =>
    draw(bare, { document, width, palette, id: `${prefix}figure`, tallest });
  const heightAt = (svg: SVGSVGElement): number => Number(svg.getAttribute("height"));
  let svg = at(Infinity);
  // The plot is as high as there is room for, to 8 px.
  for (let [low, high] = [80, 400]; heightAt(svg) > most && high - low >= 8;) {
    const middle = (low + high) / 2;
    const tried = at(middle);
    if (heightAt(tried) > most) high = middle;
    else low = middle;
    svg = high - low < 8 ? at(low) : svg;
  }
  const box = { x: 0, y: titleLine, width, height: heightAt(svg) - titleLine };
  const scale = Math.min(pointsPerFigurePx, room.height / box.height, room.width / box.width);
  const letters = Object.fromEntries(
    ["font-family", "font-size", "text-anchor", "fill"].map((name) => [name, svg.getAttribute(name) ?? ""]),
  );
  return { inner: insideOf(svg), box, width: box.width * scale, height: box.height * scale, letters };
}

/** The elements of a figure without the root around them, as XML: no sign of a tag stands in an attribute. */
function insideOf(svg: SVGSVGElement): string {
  return svgText(svg)
    .replace(/^[^]*?<svg[^>]*>/u, "")
    .replace(/<\/svg>\s*$/u, "");
}

/** What the empty title of a panel takes, in px. */
const titleLine = 18;

/** In a window narrower than this, in px of the screen, the names of the bands stand where they find room (`drawBandNames`). */
const mostWide = 618;
const rim = 8;
/** Below the lowest name, which is larger beside its pit than the room it was laid out with. */
const foot = 16;

function mapOn(
  { scene, states, beaten }: Extract<Picture, { readonly is: "map" }>["map"],
  room: SlideRoom,
  { palette, prefix, told, mirrored }: Easel,
): OnSlide {
  const screen = {
    width: Math.min(mostWide, room.width / pointsPerMapPx),
    height: room.height / pointsPerMapPx,
  };
  const scale = Math.min(
    1,
    (screen.width - 2 * rim) / scene.width,
    (screen.height - rim - foot) / scene.height,
  );
  const box = {
    x: (scene.width - screen.width / scale) / 2,
    y: -rim / scale,
    width: screen.width / scale,
    height: scene.height + (rim + foot) / scale,
  };
  const pen = svgPen(palette, prefix);
  const distance = scale > 0.9 ? "near" : distanceAt(Math.min(scale, 0.69));
  drawMap(pen, { scene, states, beaten, mirrored, told, window: box, distance, scale });
  const perPx = scale * pointsPerMapPx;
  return { inner: pen.drawn(), box, width: box.width * perPx, height: box.height * perPx, letters: {} };
}

function drawingOn(drawing: Drawing, room: SlideRoom, easel: Easel): OnSlide {
  const { palette, told, words, prefix } = easel;
  const { groups, units } = worded(drawing, told);
  const frame = { width: room.width / pointsPerFigurePx, height: room.height / pointsPerFigurePx };
  const sheet = besideBars(groups.flat(), { ...frame, unit: units[0] ?? null, words });
  const pen = svgPen(palette, prefix);
  drawSheet(pen, sheet);
  const scale = Math.min(pointsPerFigurePx, room.height / sheet.height, room.width / sheet.width);
  const box = { x: 0, y: 0, width: sheet.width, height: sheet.height };
  return { inner: pen.drawn(), box, width: sheet.width * scale, height: sheet.height * scale, letters: {} };
}
