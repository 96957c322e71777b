import type { Core, Position } from "cytoscape";
import { nameColumn } from "../../../write/map/film/band-names.ts";
import { mirrored } from "../../words/reader/language.ts";

/** The size of a scene at 100 %, in px. */
export interface Extent {
  readonly width: number;
  readonly height: number;
}

/** White space kept beside the scene, in px on the screen; where there is room, the names of the bands stand in it. */
function marginsIn(graph: Core): Readonly<Record<"left" | "right" | "top" | "bottom", number>> {
  const narrow = graph.width() < 620;
  const [inner, outer] = narrow ? [20, 20] : [nameColumn + 12, 32];
  return { left: mirrored ? outer : inner, right: mirrored ? inner : outer, top: 28, bottom: 48 };
}

const nearest = 2;

/** The zoom at which the whole scene is in sight, at most 100 %. */
export function zoomOfWhole(graph: Core, scene: Extent): number {
  const margin = marginsIn(graph);
  const across = (graph.width() - margin.left - margin.right) / Math.max(1, scene.width);
  const down = (graph.height() - margin.top - margin.bottom) / Math.max(1, scene.height);
  return Math.max(0.02, Math.min(1, across, down));
}

/** Sets how near and how far one can go, by the size of the scene. */
export function limit(graph: Core, scene: Extent): void {
  graph.minZoom(Math.min(0.3, zoomOfWhole(graph, scene)));
  graph.maxZoom(nearest);
}

/** Where the view may lie: never so that the scene is lost; a scene with room to spare stays in the middle. */
export function kept(graph: Core, scene: Extent, zoom: number, pan: Position): Position {
  const margin = marginsIn(graph);
  return {
    x: within(pan.x, scene.width * zoom, graph.width(), margin.left, margin.right),
    y: within(pan.y, scene.height * zoom, graph.height(), margin.top, margin.bottom),
  };
}

function within(pan: number, length: number, view: number, before: number, after: number): number {
  const spare = view - before - after - length;
  if (spare >= 0) return before + spare / 2;
  return Math.max(before + spare, Math.min(before, pan));
}

/** The view in which the whole scene is in sight. */
export function whole(graph: Core, scene: Extent): { readonly zoom: number; readonly pan: Position } {
  const zoom = zoomOfWhole(graph, scene);
  return { zoom, pan: kept(graph, scene, zoom, { x: 0, y: 0 }) };
}

/** Below this zoom words are left out. */
const readable = 0.72;
/** The least zoom at which the short words of claims still say enough to open with. */
const telling = 0.4;
/** What has to be seen of the things that lie under the ground, with their names, in px of the scene. */
const underGround = 48;

/** What of a scene is to be in sight when it opens: from the first answer along the ground to the last, and the ground. */
export interface Opening extends Extent {
  readonly answers: readonly [from: number, to: number];
  readonly ground: number;
}

/**
 * The view that opens a scene: the whole where its words can be read; else its answers with the ground, where these
 * can be; else the whole, or the answers with the ground, by their short words; and where all of this would be too
 * small, its top from the inner end.
 */
export function opening(graph: Core, scene: Opening): { readonly zoom: number; readonly pan: Position } {
  const all = whole(graph, scene);
  if (all.zoom >= readable) return all;
  const margin = marginsIn(graph);
  const [from, to] = scene.answers;
  const across = graph.width() - margin.left - margin.right;
  const down = graph.height() - margin.top;
  const most = Math.min(readable, across / Math.max(1, to - from), down / (scene.ground + underGround));
  if (most < readable && all.zoom >= telling) return all;
  const zoom = most >= telling ? most : readable;
  const left = most >= telling ? (from + to) / 2 - across / 2 / zoom : innerEnd(scene, across / zoom);
  return { zoom, pan: kept(graph, scene, zoom, { x: margin.left - left * zoom, y: margin.top }) };
}

/** Where the view begins to the left when it opens at the inner end, or at the first answer where that would be far off. */
function innerEnd({ width, answers: [from, to] }: Opening, across: number): number {
  if (!mirrored) return from <= across / 3 ? 0 : from;
  return (width - to <= across / 3 ? width : to) - across;
}

/** The view about a place of the scene, near enough to read. */
export function openingAt(
  graph: Core,
  scene: Extent,
  at: Position,
): { readonly zoom: number; readonly pan: Position } {
  return around(graph, scene, at, Math.max(readable, zoomOfWhole(graph, scene)));
}

/** The view that has a place of the scene in its middle. */
export function around(
  graph: Core,
  scene: Extent,
  at: Position,
  zoom: number,
): { readonly zoom: number; readonly pan: Position } {
  const pan = { x: graph.width() / 2 - at.x * zoom, y: graph.height() / 2 - at.y * zoom };
  return { zoom, pan: kept(graph, scene, zoom, pan) };
}

/** Zooms by a factor about a point of the screen, by default the middle of the view. */
export function zoomed(
  graph: Core,
  scene: Extent,
  factor: number,
  about: Position = { x: graph.width() / 2, y: graph.height() / 2 },
): { readonly zoom: number; readonly pan: Position } {
  const before = graph.zoom();
  const zoom = Math.max(graph.minZoom(), Math.min(graph.maxZoom(), before * factor));
  const pan = graph.pan();
  const moved = {
    x: about.x - ((about.x - pan.x) * zoom) / before,
    y: about.y - ((about.y - pan.y) * zoom) / before,
  };
  return { zoom, pan: kept(graph, scene, zoom, moved) };
}
