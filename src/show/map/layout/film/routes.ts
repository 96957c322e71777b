import type { Point, Route } from "../../scene.ts";
import type { Piece } from "../places/plan.ts";
import type { Net } from "../channels/nets.ts";
import { isSide, type Foot, type Wire } from "../ways/wire.ts";
import type { Heights } from "./heights.ts";
import { sideHeightsOf } from "./sides.ts";

/** Distance of an attack's bar from the side of what it attacks, in px. */
const bar = 6;

/** The polylines of all wires: level and upright stretches from where each comes from to where it leads. */
export function routesOf(
  wires: readonly Wire[],
  channels: readonly (readonly Net[])[],
  heights: Heights,
  topOf: (piece: Piece) => number,
): { readonly routes: readonly Route[]; readonly attacks: readonly Route[] } {
  const nets = new Map<Wire, Net[]>();
  for (const net of channels.flat()) {
    const own = nets.get(net.wire);
    if (own) own.push(net);
    else nets.set(net.wire, [net]);
  }
  const sideAt = sideHeightsOf(wires, topOf);
  const all = wires.map((wire) => {
    const points = trim(pointsOf(wire, nets.get(wire) ?? [], heights, { topOf, sideAt }));
    return { wire, route: routeFor(wire, points) };
  });
  const isAttack = ({ wire }: (typeof all)[number]): boolean => wire.knot.kind === "attack";
  return {
    routes: all.filter((one) => !isAttack(one)).map(({ route }) => route),
    attacks: all.filter(isAttack).map(({ route }) => route),
  };
}

function routeFor({ knot: { id, kind }, also, from, to }: Wire, points: readonly Point[]): Route {
  return {
    line: id,
    from: from.piece.box.id,
    to: to.piece.box.id,
    points,
    ...(kind === "rivals" || kind === "conflict" ? { kind } : {}),
    ...(also.length > 0 ? { also: also.map((knot) => knot.id) } : {}),
  };
}

interface Edges {
  readonly topOf: (piece: Piece) => number;
  readonly sideAt: (wire: Wire, foot: Foot) => number;
}

function pointsOf(wire: Wire, nets: readonly Net[], heights: Heights, edges: Edges): readonly Point[] {
  const [first, last] = [wire.stops[0], wire.stops.at(-1)];
  if (!first?.foot || !last?.foot) {
    const y = edges.sideAt(wire, wire.from);
    return [start(wire.from, y), end(wire.to, y)];
  }
  const middle = nets.flatMap(({ lower, runs }) =>
    runs.flatMap((run) => {
      const y = heights.trackAt(lower.tier, run.track);
      return [
        { x: run.start, y },
        { x: run.end, y },
      ];
    }),
  );
  const upwards = [
    ...meet(wire, first.foot, first.x, edges),
    ...middle,
    ...meet(wire, last.foot, last.x, edges).reverse(),
  ];
  return first.foot === wire.from ? upwards : upwards.reverse();
}

/** From a box to where the wire goes upright. */
function meet(wire: Wire, foot: Foot, x: number, { topOf, sideAt }: Edges): Point[] {
  const { piece, at } = foot;
  if (!isSide(foot)) return [{ x, y: at === "top" ? topOf(piece) : topOf(piece) + piece.height }];
  const y = sideAt(wire, foot);
  return [foot === wire.from ? start(foot, y) : end(foot, y), { x, y }];
}

function start({ piece, at }: Foot, y: number): Point {
  return { x: at === "left" ? piece.x : piece.x + piece.width, y };
}

function end({ piece, at }: Foot, y: number): Point {
  return { x: at === "left" ? piece.x - bar : piece.x + piece.width + bar, y };
}

/** Leaves out points that lie on the way between their neighbours. */
function trim(points: readonly Point[]): readonly Point[] {
  const kept: Point[] = [];
  for (const point of points) {
    const [before, last] = [kept.at(-2), kept.at(-1)];
    if (last && last.x === point.x && last.y === point.y) continue;
    const onTheWay =
      before &&
      last &&
      ((before.x === last.x && last.x === point.x) || (before.y === last.y && last.y === point.y));
    if (onTheWay) kept.pop();
    kept.push(point);
  }
  return kept;
}
