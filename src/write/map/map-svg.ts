import { inEnglish } from "../../base/text/said/english.ts";
import type { Palette } from "../pen/palette.ts";
import { svgFile, svgPen } from "../pen/svg-pen.ts";
import { drawMap } from "./map.ts";
import type { MapDrawing } from "./map.ts";
import { nameColumn } from "./film/band-names.ts";

/** A map for a file: what it shows, in which colours, and what it is called. */
export interface MapFigure extends Pick<MapDrawing, "scene" | "states" | "beaten" | "mirrored" | "told"> {
  readonly palette: Palette;
  readonly title: string;
}

/** Film left free around the drawing, in px. */
const margin = 24;

/** The whole map as an SVG file at 100 %, with the names of its bands beside it. */
export function mapSvg(figure: MapFigure): string {
  const { scene, states, beaten, mirrored = false, told = inEnglish } = figure;
  const column = nameColumn + 8;
  const window = {
    x: mirrored ? -margin : -column,
    y: -margin,
    width: scene.width + margin + column,
    height: scene.height + 2 * margin,
  };
  const pen = svgPen(figure.palette);
  drawMap(pen, { scene, states, beaten, mirrored, told, window, distance: "near", scale: 1 });
  return svgFile(window, figure.title, pen.drawn());
}
