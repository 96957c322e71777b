import type { Piece, Slab } from "../places/plan.ts";
import type { Span } from "./bow-runs.ts";
import { bowHeight } from "./bow-runs.ts";
import { footX } from "./knots.ts";
import { markHeight, type Stub } from "./marks.ts";
import { isSide, type Foot, type Gutter, type Knot, type Stop, type Tier, type Wire } from "./wire.ts";

/** The storeys of the map: over each row the words of its bows, then the marks between it and the next. */
export function tiersOf(
  rows: readonly (readonly Piece[])[],
  spans: readonly Span[],
  stubs: readonly Stub[],
): readonly Tier[] {
  const tiers: Tier[] = [];
  const put = (kind: Tier["kind"], row: number, slabs: readonly Slab[], height: number): void => {
    if (slabs.length === 0) return;
    for (const slab of slabs) slab.tier = tiers.length;
    const gutters = kind === "row" ? guttersBetween(slabs) : [];
    tiers.push({ kind, row, slabs: [...slabs], height, gutters, stops: [] });
  };
  const putMarks = (slot: number): void => {
    const marks = stubs.filter((stub) => stub.slot === slot).map(({ mark }) => mark);
    put("marks", slot, marks, markHeight);
  };
  putMarks(-1);
  for (const [at, row] of rows.entries()) {
    put("row", at, row, Math.max(...row.map(({ height }) => height)));
    const over = spans.filter((span) => span.row === at);
    const levels = Math.max(-1, ...over.map(({ level }) => level));
    for (let level = 0; level <= levels; level++) {
      const words = over.filter((span) => span.level === level).map(({ word }) => word);
      put("words", at, words, bowHeight);
    }
    putMarks(at);
  }
  return tiers;
}

function guttersBetween(slabs: readonly Slab[]): readonly Gutter[] {
  let left = 0;
  const room = (right: number): Gutter => ({ left, right, leftEnds: [], rightEnds: [], passing: [] });
  const gutters = slabs.map((slab) => {
    const gutter = room(slab.x);
    left = slab.x + slab.width;
    return gutter;
  });
  return [...gutters, room(Infinity)];
}

/** The wires of all knots, each known to the tiers it is in and to the gutters it turns in; those it passes are still open. */
export function wiresOf(
  knots: readonly Knot[],
  stubs: readonly Stub[],
  tiers: readonly Tier[],
): readonly Wire[] {
  const whole = knots
    .filter(({ cut }) => !cut)
    .map((knot) => wireFor({ knot, also: [], from: knot.from, to: knot.to }, tiers));
  const cut = stubs.map(({ knot, also, side, foot, mark }) => {
    const end: Foot = { piece: mark, at: foot.at === "bottom" ? "top" : "bottom", port: "" };
    mark.x = footX(foot) - mark.width / 2;
    // From rivals and what is in conflict the stubs go up to their marks on either side.
    const [from, to] = side === "from" || foot.at === "top" ? [foot, end] : [end, foot];
    return wireFor({ knot, also, from, to }, tiers);
  });
  return [...whole, ...cut];
}

function wireFor(ends: Omit<Wire, "stops">, tiers: readonly Tier[]): Wire {
  const { knot, from, to } = ends;
  const stops: Stop[] = [];
  const wire: Wire = { ...ends, stops };
  if (knot.direct) return wire;
  const [low, high] = from.piece.tier <= to.piece.tier ? [from, to] : [to, from];
  const stand = (tier: number, foot: Foot | null): void => {
    const stop: Stop = { wire, tier, foot, x: foot ? footX(foot) : 0, gutter: null };
    stops.push(stop);
    tiers[tier]?.stops.push(stop);
    if (foot && isSide(foot)) turnAt(stop, foot, tiers);
  };
  stand(low.piece.tier, low);
  for (let tier = low.piece.tier + 1; tier < high.piece.tier; tier++) stand(tier, null);
  stand(high.piece.tier, high);
  return wire;
}

function turnAt(stop: Stop, { piece, at }: Foot, tiers: readonly Tier[]): void {
  stop.gutter = tiers[piece.tier]?.gutters[piece.place + (at === "left" ? 0 : 1)] ?? null;
  if (at === "left") stop.gutter?.rightEnds.push(stop);
  else stop.gutter?.leftEnds.push(stop);
}
