import { isRightToLeft } from "../../../show/map/letters/letters.ts";
import type { Band, Route, Scene } from "../../../show/map/scene.ts";
import type { Pen } from "../../pen/pen.ts";
import { rectangle } from "../boxes/shapes.ts";
import { linesOf, widthOf } from "../measure.ts";
import { atInnerEdge, inward } from "../sight.ts";
import type { Frame, Sight } from "../sight.ts";
import { bandWords } from "../words.ts";

/** Width of the column at the inner edge in which the names of the bands stay, in px on the screen. */
export const nameColumn = 96;

/** Windows narrower than this on the screen have no column: each name stands where its band leaves room at the inner edge. */
const narrow = 620;

const sans = { face: "sans", weight: 400 } as const;
const size = 13;
const leading = 16;

/** Draws the names of the bands where they stay: at the window's inner edge, in the middle of what is seen of each. */
export function drawBandNames(pen: Pen, sight: Sight, scene: Scene, foot: number): void {
  const { window, scale, mirrored } = sight;
  const wide = window.width * scale >= narrow;
  const column = nameColumn / scale;
  if (wide) {
    const x = mirrored ? window.x + window.width - column : window.x;
    pen.outline(rectangle({ ...window, x, width: column }), "sheet", null);
  }
  const taken = wide ? [] : takenIn(scene);
  for (const band of scene.bands) {
    const high = Math.max(band.top, window.y);
    const low = Math.min(band.bottom, window.y + window.height - foot);
    if (wide) drawInColumn(pen, sight, band, { high, low });
    else drawWhereFree(pen, sight, band, { high, low, taken });
  }
}

interface Reach {
  readonly high: number;
  readonly low: number;
}

function drawInColumn(pen: Pen, sight: Sight, { name }: Band, { high, low }: Reach): void {
  const lines = linesOf(sight.told(bandWords[name]), sans, { size, width: nameColumn - 24, lines: 2 });
  const block = (leading * lines.length) / sight.scale;
  if (low - high >= block) drawLines(pen, sight, lines, { inner: 14, top: (high + low - block) / 2 });
}

/** On one line or on several, as high in the band as nothing stands in its way; nowhere, if all of it is taken. */
function drawWhereFree(
  pen: Pen,
  sight: Sight,
  { name }: Band,
  { high, low, taken }: Reach & { readonly taken: readonly Frame[] },
): void {
  const { window, scale, mirrored } = sight;
  const px = (screen: number): number => screen / scale;
  const words = sight.told(bandWords[name]);
  for (const lines of [[words], linesOf(words, sans, { size, width: 64, lines: 2 })]) {
    const width = px(Math.max(...lines.map((line) => widthOf(line, sans, size))) + 10);
    const height = px(leading * lines.length + 2);
    const x = mirrored ? window.x + window.width - width : window.x;
    for (let top = high + px(2); top + height <= low; top += px(4)) {
      const place = { x, y: top, width, height };
      if (taken.some((other) => meet(place, other))) continue;
      pen.outline(rectangle(place), "sheet", null);
      return drawLines(pen, sight, lines, { inner: 6, top });
    }
  }
}

function drawLines(
  pen: Pen,
  sight: Sight,
  lines: readonly string[],
  { inner, top }: { readonly inner: number; readonly top: number },
): void {
  const px = (screen: number): number => screen / sight.scale;
  const x = inward(sight, sight.window, px(inner));
  lines.forEach((line, n) => {
    const at = { x, y: top + px(12 + leading * n) };
    pen.text(
      line,
      at,
      atInnerEdge(sight, isRightToLeft(line), { ...sans, size: px(size), colour: "soft", lang: null }),
    );
  });
}

/** Where the boxes and the stretches of all lines lie. */
function takenIn({ boxes, routes, attacks }: Scene): readonly Frame[] {
  return [...boxes, ...[...routes, ...attacks].flatMap(stretches)];
}

function stretches({ points }: Route): readonly Frame[] {
  return points.slice(1).map((point, at) => {
    const before = points[at] ?? point;
    const [x, y] = [Math.min(before.x, point.x), Math.min(before.y, point.y)];
    return { x, y, width: Math.abs(before.x - point.x), height: Math.abs(before.y - point.y) };
  });
}

function meet(one: Frame, other: Frame): boolean {
  return (
    one.x <= other.x + other.width &&
    other.x <= one.x + one.width &&
    one.y <= other.y + other.height &&
    other.y <= one.y + one.height
  );
}
