import { inset, lane, turn } from "../places/gaps.ts";
import type { Slab } from "../places/plan.ts";
import { exactly, spread } from "../places/spread.ts";
import { passBetween } from "./between.ts";
import { pin } from "./pins.ts";
import { afterOf, beforeOf, type Gutter, type Stop, type Tier } from "./wire.ts";

/** How much more a line keeps its way than an attack the middle of its gutter. */
const firm = 8;

/** Gives every wire its x in every tier, from the lowest up: each goes on straight where it can. */
export function giveLanes(tiers: readonly Tier[]): void {
  for (const tier of tiers) {
    if (tier.kind !== "row") {
      passBetween(tier);
      continue;
    }
    for (const stops of atOneEdge(tier, "bottom")) pin(stops);
    for (const gutter of tier.gutters) runIn(gutter);
    for (const stops of atOneEdge(tier, "top")) pin(stops);
  }
}

function atOneEdge({ stops }: Tier, edge: "top" | "bottom"): Iterable<readonly Stop[]> {
  const byBox = new Map<Slab, Stop[]>();
  for (const stop of stops) {
    if (stop.foot?.at !== edge) continue;
    const others = byBox.get(stop.foot.piece);
    if (others) others.push(stop);
    else byBox.set(stop.foot.piece, [stop]);
  }
  return byBox.values();
}

function runIn({ left, right, leftEnds, rightEnds, passing }: Gutter): void {
  if (leftEnds.length + rightEnds.length + passing.length === 0) return;
  const from = left + inset(leftEnds.length);
  const to = right - inset(rightEnds.length);
  const way = (stop: Stop): number => beforeOf(stop) ?? afterOf(stop) ?? stop.x;
  const byWay = (stops: readonly Stop[]): readonly Stop[] =>
    stops.toSorted((a, b) => way(a) - way(b) || (afterOf(a) ?? a.x) - (afterOf(b) ?? b.x));
  const wish = (at: (stop: Stop) => number, weight: number) => (stop: Stop) => ({
    at: at(stop),
    weight,
    step: lane,
  });
  const half = (right - left) / 2;
  const turning = (at: number) => wish(() => at, 1);
  const stops = [...byWay(leftEnds), ...byWay(passing), ...byWay(rightEnds)];
  const wishes = [
    ...byWay(leftEnds).map(turning(left + Math.min(half, turn))),
    ...byWay(passing).map(wish(way, firm)),
    ...byWay(rightEnds).map(turning(right - Math.min(half, turn))),
  ];
  const places = spread(wishes, { by: "median", from, to });
  for (const [at, stop] of stops.entries()) stop.x = exactly(places[at] ?? stop.x);
}
