import type { Id } from "../../../../base/finding.ts";
import { inset, lane } from "../places/gaps.ts";
import { isSide, screen, type Foot, type Gutter, type Stop, type Tier, type Wire } from "./wire.ts";

/** Across so many px there is room for one line more: four in the gap of 40 px between two boxes. */
const share = 10;
/** How many gutters to either side are tried before a line is cut. */
const reach = 10;
/** What a bend counts, in px of way. */
const bend = 16;
/** How much farther than a screen a line may be led aside before it is cut, in px. */
const slack = 40;

/**
 * Finds each wire its gutters through the rows it passes, near the straight way. Gives the names of what is to be cut
 * because its gutters are full, or its way leads over more than a screen.
 */
export function chooseGutters(wires: readonly Wire[], tiers: readonly Tier[]): ReadonlySet<Id> {
  const crowdedOut = new Set<Id>();
  for (const wire of wires) {
    if (run(wire, tiers)) continue;
    crowdedOut.add(wire.knot.name);
    for (const stop of wire.stops) leave(stop);
  }
  return crowdedOut;
}

/** Names what the lanes in the end lead too far across, round marks or through crowded gutters. */
export function ledAstray(wires: readonly Wire[]): ReadonlySet<Id> {
  const far = wires.filter(({ knot, stops }) => {
    if (knot.cut || stops.length === 0) return false;
    const xs = stops.flatMap(({ x, foot }) => (foot && isSide(foot) ? [x, sideX(foot)] : [x]));
    return Math.max(...xs) - Math.min(...xs) > screen + slack;
  });
  return new Set(far.map(({ knot }) => knot.name));
}

function sideX({ piece, at }: Foot): number {
  return at === "left" ? piece.x : piece.x + piece.width;
}

function run({ stops, knot }: Wire, tiers: readonly Tier[]): boolean {
  let x = stops[0]?.x ?? 0;
  const goal = stops.at(-1)?.x ?? x;
  let [least, most] = [Math.min(x, goal), Math.max(x, goal)];
  for (const stop of stops) {
    if (stop.foot) continue;
    stop.x = x;
    const tier = tiers[stop.tier];
    if (tier?.kind !== "row") continue;
    const found = nearest(tier.gutters, x, goal);
    if (!found) return false;
    stop.gutter = found.gutter;
    found.gutter.passing.push(stop);
    x = stop.x = found.x;
    least = Math.min(least, x);
    most = Math.max(most, x);
  }
  return knot.cut || most - least <= screen;
}

function leave(stop: Stop): void {
  const passing = stop.gutter?.passing ?? [];
  const at = passing.indexOf(stop);
  if (at >= 0) passing.splice(at, 1);
}

function nearest(
  gutters: readonly Gutter[],
  x: number,
  goal: number,
): { readonly gutter: Gutter; readonly x: number } | null {
  const start = gutterAt(gutters, x);
  let best: { readonly gutter: Gutter; readonly x: number; readonly cost: number } | null = null;
  for (let at = Math.max(0, start - reach); at <= start + reach; at++) {
    const gutter = gutters[at];
    if (!gutter || !hasRoom(gutter)) continue;
    const from = gutter.left + inset(gutter.leftEnds.length);
    const to = gutter.right - inset(gutter.rightEnds.length);
    const here = Math.max(from, Math.min(to, x));
    const cost = Math.abs(here - x) + Math.abs(goal - here) + (here === x ? 0 : bend);
    if (!best || cost < best.cost) best = { gutter, x: here, cost };
  }
  return best;
}

function gutterAt(gutters: readonly Gutter[], x: number): number {
  let [low, high] = [0, gutters.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((gutters[middle]?.right ?? Infinity) < x) low = middle + 1;
    else high = middle;
  }
  return low;
}

function hasRoom({ left, right, leftEnds, rightEnds, passing }: Gutter): boolean {
  const width = right - left;
  const count = leftEnds.length + rightEnds.length + passing.length + 1;
  const needed = inset(leftEnds.length) + lane * (count - 1) + inset(rightEnds.length);
  return needed <= width && count <= Math.max(4, Math.floor(width / share));
}
