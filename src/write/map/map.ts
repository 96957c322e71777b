import { inEnglish } from "../../base/text/said/english.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { BoxState, PlacedBox, Scene } from "../../show/map/scene.ts";
import type { Pen } from "../pen/pen.ts";
import { drawBox } from "./boxes/boxes.ts";
import { drawNotch } from "./boxes/changes.ts";
import { drawBandNames } from "./film/band-names.ts";
import { drawFilm, drawRanks } from "./film/film.ts";
import { drawGround, drawStrip, drawTurf, isGroundBelow, stripHeight } from "./film/ground.ts";
import { drawBows } from "./lines/bows.ts";
import { drawAttacks, drawRoutes } from "./lines/lines.ts";
import type { StateOf } from "./lines/lines.ts";
import { traced } from "./lines/traced.ts";
import type { Gaps } from "./lines/traced.ts";
import { isSeen, toneOf } from "./sight.ts";
import type { Distance, Frame, Sight } from "./sight.ts";

/** A map to be drawn: the scene, how its boxes stand, and from where it is seen. */
export interface MapDrawing {
  readonly scene: Scene;
  /** By box; a box without one is in ink and has no standing. */
  readonly states: Readonly<Record<string, BoxState>>;
  /** Attacks that are beaten, by the id of the line they are drawn from. */
  readonly beaten: readonly string[];
  readonly distance: Distance;
  /** Screen px for each px of the scene; the pen draws in px of the scene. */
  readonly scale: number;
  /** What is seen, in px of the scene; names of bands and the strip of ground are pinned to its edges. Left out, the whole scene. */
  readonly window?: Frame;
  readonly mirrored?: boolean;
  /** Puts words of the drawing's own into the reader's language; into English unless told otherwise. */
  readonly told?: (text: Text) => string;
}

const none: Gaps = { left: 0, right: 0 };
const unsaid: BoxState = { standing: null, said: "", later: false, was: null, lit: true };

/** Draws the map, from the film up to what is pinned to the window's edges; what lies outside the window is left out. */
export function drawMap(pen: Pen, drawing: MapDrawing): void {
  const { scene, states, distance, scale, mirrored = false, told = inEnglish } = drawing;
  const window = drawing.window ?? { x: 0, y: 0, width: scene.width, height: scene.height };
  const sight: Sight = { distance, scale, window, mirrored, told };
  const { boxes, things, routes, attacks, marked, gaps } = traced(scene);
  const stateOf: StateOf = (box) => {
    if (box.look.as !== "mark") return states[box.id] ?? unsaid;
    const ends = [states[box.look.to], states[marked.get(box.id)?.id ?? ""]];
    return {
      ...unsaid,
      later: ends.some((end) => end?.later === true),
      lit: ends.every((end) => end?.lit !== false),
    };
  };
  const seen = scene.boxes.filter((box) => isSeen(sight, box, 48));
  drawFilm(pen, sight);
  drawGround(pen, sight, scene);
  drawBoxes(pen, sight, seen.filter(isThing), stateOf, gaps);
  drawTurf(pen, sight, scene, things);
  drawRanks(pen, sight, scene.bands);
  drawRoutes(pen, sight, routes, stateOf);
  drawAttacks(pen, sight, attacks, { stateOf, beaten: new Set(drawing.beaten) });
  drawBoxes(
    pen,
    sight,
    seen.filter((box) => !isThing(box)),
    stateOf,
    gaps,
  );
  drawBows(pen, sight, scene.bows, (id) => {
    const box = boxes.get(id);
    if (box === undefined) return { top: Infinity, tone: "ink", foot: null };
    const foot = box.look.as === "answer" ? box.y + box.height : null;
    return { top: box.y, tone: toneOf(stateOf(box)), foot };
  });
  const strip = isGroundBelow(sight, scene);
  if (strip) drawStrip(pen, sight, things);
  drawBandNames(pen, sight, scene, strip ? stripHeight / scale : 0);
}

const isThing = (box: PlacedBox): boolean => box.look.as === "thing";

function drawBoxes(
  pen: Pen,
  sight: Sight,
  boxes: readonly PlacedBox[],
  stateOf: StateOf,
  gaps: ReadonlyMap<string, Gaps>,
): void {
  for (const box of boxes) {
    const state = stateOf(box);
    pen.part(box.records[0] ?? box.id, box.title, () => {
      drawBox(pen, sight, box, state, gaps.get(box.id) ?? none);
      if (state.was !== null && box.look.as !== "mark") drawNotch(pen, sight, box);
    });
  }
}
