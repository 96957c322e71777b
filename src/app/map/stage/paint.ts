import type { Id } from "../../../base/finding.ts";
import type { BoxState, PlacedBox, Point, Scene, Setting } from "../../../show/map/scene.ts";
import { drawMap } from "../../../write/map/map.ts";
import { distanceAt } from "../../../write/map/sight.ts";
import { canvasPen } from "../../../write/pen/canvas-pen.ts";
import type { Canvas } from "../../../write/pen/canvas-pen.ts";
import { familyList } from "../../../write/pen/faces.ts";
import type { Palette } from "../../../write/pen/palette.ts";
import type { Pen } from "../../../write/pen/pen.ts";
import { mirrored } from "../../words/reader/language.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import type { Marks } from "../arguing/boxes.ts";
import { drawMarks, drawPulled } from "../arguing/marks.ts";
import type { Pulled } from "../arguing/marks.ts";
import type { Size } from "./canvas.ts";

/** What is drawn: a scene, how its boxes stand, and the box with the ring. */
export interface Drawn {
  readonly scene: Scene;
  readonly states: Readonly<Record<Id, BoxState>>;
  readonly beaten: readonly Id[];
  readonly current: Id | null;
  /** Where the argument in hand is marked; null where there is none. */
  readonly marks: Marks | null;
}

/** How it is looked at. */
export interface Seen {
  readonly size: Size;
  readonly palette: Palette;
  readonly zoom: number;
  readonly pan: Point;
  /** A line that is being drawn by hand. */
  readonly pulled: Pulled | null;
}

/** Draws what of the scene is in sight, and the ring round the current box. */
export function paint(context: CanvasRenderingContext2D, drawn: Drawn, seen: Seen): void {
  const { size, zoom, pan, palette } = seen;
  const scale = size.dots * zoom;
  context.setTransform(scale, 0, 0, scale, pan.x * size.dots, pan.y * size.dots);
  const pen = canvasPen(context as unknown as Canvas, palette);
  const window = { x: -pan.x / zoom, y: -pan.y / zoom, width: size.width / zoom, height: size.height / zoom };
  const { scene, states, beaten } = drawn;
  const distance = distanceAt(zoom);
  drawMap(pen, { scene, states, beaten, distance, scale: zoom, window, mirrored, told: inReadersWords });
  const current = drawn.current === null ? undefined : scene.boxes.find((box) => box.id === drawn.current);
  if (current) ring(pen, current, zoom);
  if (drawn.marks) drawMarks(pen, scene, drawn.marks, zoom);
  if (seen.pulled) drawPulled(pen, seen.pulled, zoom);
}

function ring(pen: Pen, box: PlacedBox, zoom: number): void {
  const off = 5 / zoom;
  const [left, top] = [box.x - off, box.y - off];
  const [right, bottom] = [box.x + box.width + off, box.y + box.height + off];
  pen.outline(
    [
      { go: "move", to: { x: left, y: top } },
      { go: "line", to: { x: right, y: top } },
      { go: "line", to: { x: right, y: bottom } },
      { go: "line", to: { x: left, y: bottom } },
      { go: "close" },
    ],
    null,
    { colour: "ink", width: 2 / zoom },
  );
}

/** Loads the letters that a scene needs; each script comes in files of its own. */
export async function lettersReady(scene: Scene): Promise<void> {
  const words = [...new Set(scene.boxes.flatMap(wordsOf).join(""))].join("");
  const faces = (["serif", "sans"] as const).flatMap((face) =>
    [400, 600].map((weight) => `${weight} 16px ${familyList(face, '"')}`),
  );
  await Promise.allSettled(
    faces.map((face) => document.fonts.load(face, `${words}0123456789 openstandsfalls`)),
  );
}

function wordsOf({ look, title }: PlacedBox): readonly string[] {
  const of = (setting: Setting): readonly string[] => setting.lines;
  switch (look.as) {
    case "claim":
    case "answer":
      return [...of(look.text), ...of(look.short)];
    case "pile":
      return look.labels.flatMap((label) => [label.value, label.under]);
    case "number":
      return [look.value, look.under];
    case "thing":
      return [...of(look.name), ...look.parts.flatMap((part) => of(part.name))];
    default:
      return [title, ...of(look.words)];
  }
}
