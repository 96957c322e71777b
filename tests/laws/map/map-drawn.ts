import fc from "fast-check";
import type { PlacedBox, Point, Scene } from "../../../src/show/map/scene.ts";
import { drawMap } from "../../../src/write/map/map.ts";
import type { MapDrawing } from "../../../src/write/map/map.ts";
import { distanceAt } from "../../../src/write/map/sight.ts";
import type { Colour, Letters, Pen, Step, Stroke } from "../../../src/write/pen/pen.ts";
import { scene, states } from "./map-scene.ts";

/** A text as it was drawn, and the part it belongs to. */
export interface Text {
  readonly words: string;
  readonly at: Point;
  readonly letters: Letters;
  readonly part: string | null;
}
/** A line, outline or disc as it was drawn. */
export interface Mark {
  readonly points: readonly Point[];
  readonly fill: Colour | null;
  readonly stroke: Stroke | null;
  readonly part: string | null;
}

/** Draws and keeps every call. */
export function drawn(drawing: MapDrawing): { texts: Text[]; marks: Mark[]; parts: string[] } {
  const [texts, marks, parts] = [[] as Text[], [] as Mark[], [] as string[]];
  let part: string | null = null;
  const pointsOf = (steps: readonly Step[]): readonly Point[] =>
    steps.flatMap((step) =>
      step.go === "close" ? [] : step.go === "curve" ? [step.by, step.to] : [step.to],
    );
  const keep = (points: readonly Point[], fill: Colour | null, stroke: Stroke | null): void =>
    void marks.push({ points, fill, stroke, part });
  const pen: Pen = {
    line: (points, stroke) => keep(points, null, stroke),
    lines: (lines, stroke) => {
      for (const points of lines) keep(points, null, stroke);
    },
    outline: (steps, fill, stroke) => keep(pointsOf(steps), fill, stroke),
    disc: (at, _, fill, stroke) => keep([at], fill, stroke),
    text: (words, at, letters) => void texts.push({ words, at, letters, part }),
    part: (id, _, draw) => {
      const outer = part;
      part = id;
      parts.push(id);
      draw();
      part = outer;
    },
  };
  drawMap(pen, drawing);
  return { texts, marks, parts };
}

/** The fixture at a scale. */
export const at = (scale: number, more: Partial<MapDrawing> = {}): MapDrawing => ({
  scene,
  states,
  beaten: [],
  scale,
  distance: distanceAt(scale),
  ...more,
});
/** Zooms from far off to close by. */
export const scales = fc.double({ min: 0.02, max: 3, noNaN: true });
/** Windows by their place in the scene and their size on the screen. */
export const windows = fc.record({
  x: fc.integer({ min: -300, max: 2000 }),
  y: fc.integer({ min: -300, max: 900 }),
  wide: fc.integer({ min: 300, max: 1400 }),
  high: fc.integer({ min: 200, max: 900 }),
});
/** The fixture at a scale through a window. */
export const windowed = (
  scale: number,
  { x, y, wide, high }: { x: number; y: number; wide: number; high: number },
) => at(scale, { window: { x, y, width: wide / scale, height: high / scale } });
/** The fixture with one box alone. */
export const single = (box: PlacedBox): Scene => ({
  ...scene,
  boxes: [box],
  routes: [],
  attacks: [],
  bows: [],
});
/** A box of the fixture. */
export const boxOf = (id: string): PlacedBox => {
  const box = scene.boxes.find((one) => one.id === id);
  if (!box) throw new Error(`no box ${id}`);
  return box;
};
