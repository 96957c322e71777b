import type { Text } from "../../base/text/said/said.ts";
import type { BoxState, Look, PlacedBox } from "../../show/map/scene.ts";
import type { Colour, Letters, Stroke } from "../pen/pen.ts";

/** How far away the map is: everything; short texts and values; or lines and names alone. */
export type Distance = "near" | "middle" | "far";

/** A part of the plane, in px of the scene. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** From where a map is seen: what decides how large and how full everything is drawn. */
export interface Sight {
  readonly distance: Distance;
  /** Screen px for each px of the scene. */
  readonly scale: number;
  /** What is seen of the scene. */
  readonly window: Frame;
  /** Whether the order along the ground runs from right to left. */
  readonly mirrored: boolean;
  /** Puts words of the drawing's own into the reader's language. */
  readonly told: (text: Text) => string;
}

/** The distance at a zoom: near over 0.7, far under 0.35. */
export function distanceAt(scale: number): Distance {
  return scale > 0.7 ? "near" : scale < 0.35 ? "far" : "middle";
}

/** Sizes letters are set at on the screen, in px; none is smaller. */
const sizes = [11, 12, 13, 14, 15, 16, 18, 20, 22, 24, 27, 30, 34, 38, 43, 48, 54, 60, 68, 76, 86, 96];

/** The size of letters in px of the scene: those of the nearest smaller step on the screen, in the middle and far off 13 px. */
export function letterSize({ distance, scale }: Sight, natural: number): number {
  if (distance !== "near") return 13 / scale;
  const wanted = natural * scale;
  return (sizes.findLast((size) => size <= wanted + 1e-9) ?? 11) / scale;
}

/** The width of a line in px of the scene that is drawn at its own width, but never thinner than so many px on the screen. */
export function lineWidth({ scale }: Sight, natural: number, least = 1): number {
  return Math.max(natural, least / scale);
}

/** What marks are multiplied by, so that their shape can be told at any distance. */
export function markScale({ scale }: Sight): number {
  return Math.max(1, 0.62 / scale);
}

/** Whether a rectangle meets the window, with a margin for what reaches over its edge. */
export function isSeen(sight: Sight, box: Frame, margin: number): boolean {
  const { x, y, width, height } = sight.window;
  return (
    box.x - margin < x + width &&
    box.x + box.width + margin > x &&
    box.y - margin < y + height &&
    box.y + box.height + margin > y
  );
}

/** How a box is drawn: in ink; unlit beside the focus; or as what is not yet in print. */
export type Tone = "ink" | "unlit" | "later";

/** The tone of a state. */
export function toneOf(state: BoxState): Tone {
  return state.later ? "later" : state.lit ? "ink" : "unlit";
}

/** The colour of an outline in a tone. */
export const outlineColour: Readonly<Record<Tone, Colour>> = { ink: "ink", unlit: "line", later: "hair" };

/** An outline's stroke: 1.5 px in ink, else a hairline. */
export function outlineStroke(sight: Sight, tone: Tone, width = 1.5): Stroke {
  return { colour: outlineColour[tone], width: lineWidth(sight, tone === "ink" ? width : 1) };
}

/** A box whose look is of one kind. */
export type BoxAs<Kind extends Look["as"]> = PlacedBox & { readonly look: Extract<Look, { as: Kind }> };

/** Letters at the box's inner edge: a text in another direction keeps its own order, and the edge. */
export function atInnerEdge(
  { mirrored }: Sight,
  rtl: boolean,
  letters: Omit<Letters, "anchor" | "rtl">,
): Letters {
  return { ...letters, rtl, anchor: rtl === mirrored ? "start" : "end" };
}

/** The place so many px inward from a box's inner edge. */
export function inward({ mirrored }: Sight, box: Frame, by: number): number {
  return mirrored ? box.x + box.width - by : box.x + by;
}
