import { formatNumber, formatWithU, twoPlacesOf } from "../../../base/quantity/quantity-print.ts";
import type { Unit } from "../../../base/unit/unit.ts";
import type { Graph, Linked } from "../../../link/graph.ts";
import type { WrittenMap } from "../../../read/edit/written.ts";
import type { PictureAsked, ScaleAsked } from "./asked.ts";
import { percent } from "./cautions.ts";
import type { Point } from "./points.ts";
import type { Pointed } from "./pointing.ts";
import type { OnPicture } from "./scale.ts";

/** The name that the error of a picture's scale has wherever it is shared. */
export const scaleName = (image: string): string => `scale of ${image}`;

/** A value with its own uncertainty (1 s) as it is written: `18.243 ± 0.052 cm`. */
export function valueText(measured: OnPicture, unit: Pick<Unit, "name" | "size">): string {
  const own = measured.own / unit.size;
  return withUnit(formatWithU(measured.value / unit.size, own, twoPlacesOf(own)), unit);
}

/** A measurement on a picture as it is written into a file: what was taken, how, and where the points stand. */
export function recordOf(
  graph: Graph,
  image: Linked<"images">,
  asked: PictureAsked,
  figure: Pointed,
  measured: OnPicture,
  unit: Pick<Unit, "name" | "size">,
): WrittenMap {
  const perFigure = measured.value / figure.mean / unit.size;
  const readings = figure.readings.map((one) => withUnit(formatNumber(one * perFigure, 5), unit));
  const from = (image.values.from ?? []).map(({ key, locator }) =>
    locator === null ? key : `${key} ${locator}`,
  );
  return {
    of: asked.of ?? "",
    dimension: asked.dimension.trim(),
    value: valueText(measured, unit),
    ...(asked.basis === "" ? {} : { basis: asked.basis }),
    ...(asked.between.trim() === "" ? {} : { between: asked.between.trim() }),
    instrument: `measured on the picture${asked.taken === "angle" ? "" : `, ${scaledBy(graph, asked.scale)}`}`,
    ...(readings.length > 1 ? { readings, n: String(readings.length) } : {}),
    ...(graph.settings.quantities.plusMinus === "expanded" ? { coverage: "1" } : {}),
    ...(measured.shared > 0
      ? { "shares-error": { with: scaleName(image.id), of: percent(measured.shared) } }
      : {}),
    ...(asked.by === null ? {} : { by: asked.by }),
    ...(asked.year.trim() === "" ? {} : { year: asked.year.trim() }),
    ...(from.length === 0 ? {} : { from }),
    note: placesOf(image, asked),
  };
}

function withUnit(figure: string, { name }: Pick<Unit, "name">): string {
  return /^[°′″]/u.test(name) ? figure + name : `${figure} ${name}`;
}

function scaledBy(graph: Graph, { way, length, known, ratio, perInch }: ScaleAsked): string {
  if (way === "bar") return `scale bar of ${length.trim()}`;
  if (way === "printed") return `printed scale ${ratio.trim()} at ${perInch.trim()} pixels to the inch`;
  const record = known === null ? undefined : graph.records.get(known);
  return record?.list === "measurements"
    ? `scale by the ${record.values.dimension} of ${record.values.value.text}`
    : "";
}

/** Where the points stand, so that anybody can point at them again; files do not follow the reader's language. */
function placesOf(image: Linked<"images">, { width, height, readings, scale, taken }: PictureAsked): string {
  const size = `${String(width)} × ${String(height)} pixels from its upper left corner`;
  const places = `Points on ${image.values.file}, ${size}: ${readings.map(placeOf).join("; ")}.`;
  if (taken === "angle" || scale.way === "printed") return places;
  return `${places} Ends of the scale: ${scale.readings.map(placeOf).join("; ")}.`;
}

function placeOf(points: readonly Point[]): string {
  return points.map(({ x, y }) => `(${tenth(x)}, ${tenth(y)})`).join(" to ");
}

const tenth = (pixels: number): string => String(Math.round(pixels * 10) / 10);
