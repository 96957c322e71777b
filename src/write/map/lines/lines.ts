import type { BoxState, PlacedBox, Point } from "../../../show/map/scene.ts";
import type { Pen, Stroke } from "../../pen/pen.ts";
import { beamReach, postReach } from "../boxes/beams.ts";
import { isAs } from "../boxes/boxes.ts";
import { isSeen, lineWidth, toneOf } from "../sight.ts";
import type { Sight, Tone } from "../sight.ts";
import type { Traced } from "./traced.ts";

/** How each box stands, marks as the box their line goes on to. */
export type StateOf = (box: PlacedBox) => BoxState;

type Line = readonly Point[];

const corner = 8;

/** Draws the lines that go up from what supports to what is supported, and the posts on to the beams; what is lit lies over the rest. */
export function drawRoutes(pen: Pen, sight: Sight, routes: readonly Traced[], stateOf: StateOf): void {
  const lines: Record<keyof Strokes, Line[]> = { ink: [], unlit: [], later: [], rivals: [], conflict: [] };
  for (const one of routes) {
    if (!isSeen(sight, one.within, 40)) continue;
    const tone = toneBetween(one, stateOf);
    const into = lines[(tone === "ink" ? one.collision : null) ?? tone];
    into.push(one.route.points);
    into.push(...posts(sight, one, stateOf));
  }
  const drawn = strokes(sight);
  for (const kind of ["later", "unlit", "ink", "rivals", "conflict"] as const) {
    if (lines[kind].length > 0) pen.lines(lines[kind], drawn[kind], corner);
  }
}

/** Draws attacks: dashed, and an upright bar before what they attack; soft where the attacking argument is beaten. */
export function drawAttacks(
  pen: Pen,
  sight: Sight,
  attacks: readonly Traced[],
  { stateOf, beaten }: { readonly stateOf: StateOf; readonly beaten: ReadonlySet<string> },
): void {
  const far = sight.distance === "far";
  for (const one of attacks) {
    if (!isSeen(sight, one.within, 40)) continue;
    const tone = toneBetween(one, stateOf);
    const soft = beaten.has(one.route.line);
    const base = strokes(sight)[tone];
    const colour = tone === "ink" && soft ? "soft" : base.colour;
    const dash = (far ? [3, 2] : [6, 4]).map((part) => lineWidth(sight, part, far ? part : 1));
    pen.line(fromBeam(sight, one, stateOf), { colour, width: base.width, dash }, corner);
    const end = one.route.points.at(-1);
    if (end !== undefined && !(one.to !== null && isAs(one.to, "mark"))) {
      const half = lineWidth(sight, 11, 5);
      const bar = [
        { x: end.x, y: end.y - half },
        { x: end.x, y: end.y + half },
      ];
      pen.line(bar, { colour, width: lineWidth(sight, tone === "ink" ? 4 : 2, 2) });
    }
  }
}

/** An attack's way from the beam itself, or from the end of the words beside it, where it leaves on their side. */
function fromBeam(sight: Sight, { route, from }: Traced, stateOf: StateOf): Line {
  const [first] = route.points;
  if (first === undefined || from === null || !isAs(from, "beam")) return route.points;
  const reach = beamReach(sight, from, stateOf(from));
  const outer = sight.mirrored ? from.x + from.width - reach : from.x + reach;
  const leaves = sight.mirrored ? first.x <= from.x + 1 : first.x >= from.x + from.width - 1;
  return leaves ? [{ x: outer, y: first.y }, ...route.points] : route.points;
}

type Strokes = Readonly<Record<Tone | "rivals" | "conflict", Stroke>>;

function strokes(sight: Sight): Strokes {
  const dot = lineWidth(sight, 3, 2);
  return {
    ink: { colour: "ink", width: lineWidth(sight, 1.5) },
    unlit: { colour: "line", width: lineWidth(sight, 1) },
    later: { colour: "hair", width: lineWidth(sight, 1) },
    rivals: { colour: "red", width: lineWidth(sight, 2, 1.4) },
    conflict: { colour: "red", width: dot, dash: [0.1, 2 * dot], round: true },
  };
}

function toneBetween({ from, to }: Traced, stateOf: StateOf): Tone {
  const tones = [from, to].map((box) => (box === null ? "ink" : toneOf(stateOf(box))));
  return tones.includes("later") ? "later" : tones.includes("unlit") ? "unlit" : "ink";
}

/** From the edge of a beam's box on to its line, at both ends. */
function posts(sight: Sight, { route, from, to }: Traced, stateOf: StateOf): readonly Line[] {
  const found: Line[] = [];
  const [first, last] = [route.points[0], route.points.at(-1)];
  if (from !== null && first !== undefined && isAs(from, "beam")) {
    const reach = postReach(sight, from, stateOf(from).standing);
    if (reach > 0) found.push([first, { x: first.x, y: first.y + reach }]);
  }
  if (to !== null && last !== undefined && isAs(to, "beam")) {
    const reach = postReach(sight, to, stateOf(to).standing);
    if (reach > 0) found.push([last, { x: last.x, y: last.y - reach }]);
  }
  return found;
}
