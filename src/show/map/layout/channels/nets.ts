import { exactly } from "../places/spread.ts";
import type { Stop, Tier, Wire } from "../ways/wire.ts";

/** Lines nearer than this would seem to be one, in px. */
export const blur = 6;

/** One level stretch in a channel; a net has two where one would lead it over another's upright. */
export interface Run {
  readonly net: Net;
  readonly start: number;
  readonly end: number;
  readonly left: number;
  readonly right: number;
  /** Where it is joined from below, and from above. */
  readonly feet: readonly number[];
  readonly heads: readonly number[];
  /** Runs that have to lie above this one, that their uprights do not meet. */
  readonly above: Run[];
  /** Counted from the lowest track of its channel. */
  track: number;
}

/** What a wire does in the channel between one tier and the next. */
export interface Net {
  readonly wire: Wire;
  readonly lower: Stop;
  readonly upper: Stop;
  /** From its lower stop to its upper one; none where it goes straight up. */
  runs: readonly Run[];
}

/** The nets of each channel, by the tier under it. */
export function netsOf(wires: readonly Wire[], tiers: readonly Tier[]): readonly (readonly Net[])[] {
  const channels: Net[][] = tiers.map(() => []);
  for (const wire of wires) {
    for (const [at, upper] of wire.stops.entries()) {
      const lower = wire.stops[at - 1];
      if (lower) channels[lower.tier]?.push({ wire, lower, upper, runs: [] });
    }
  }
  return channels;
}

/** Whether a net comes back down into the tier it left. */
export function isReturn({ lower, upper }: Net): boolean {
  return lower.tier === upper.tier;
}

/** Gives the nets of a channel their level stretches, and says which have to lie above which: in no circle. */
export function runsOf(nets: readonly Net[]): readonly Run[] {
  const bent = nets.filter((net) => net.lower.x !== net.upper.x);
  for (const net of bent) {
    const [start, end] = [net.lower.x, net.upper.x];
    net.runs = [
      isReturn(net) ? run(net, start, end, [start, end], []) : run(net, start, end, [start], [end]),
    ];
  }
  const whole = bent.flatMap(({ runs }) => runs);
  bindRuns(whole);
  const twisted = onCircles(whole);
  if (twisted.size === 0) return whole;
  // Nets that go straight up have no run, but an upright all the same.
  const taken = nets.flatMap(({ lower, upper }) => [lower.x, upper.x]);
  for (const { net, start, end } of twisted) net.runs = stepped(net, start, end, taken);
  const parted = bent.flatMap(({ runs }) => runs);
  for (const one of parted) one.above.length = 0;
  bindRuns(parted);
  for (const {
    runs: [low, high],
  } of bent)
    if (low && high) low.above.push(high);
  return parted;
}

function run(net: Net, start: number, end: number, feet: readonly number[], heads: readonly number[]): Run {
  return {
    net,
    start,
    end,
    left: Math.min(start, end),
    right: Math.max(start, end),
    feet,
    heads,
    above: [],
    track: 0,
  };
}

/** Two runs for one net, joined where no other upright is: the lower has only feet, the upper only heads. */
function stepped(net: Net, start: number, end: number, taken: number[]): readonly Run[] {
  const middle = exactly((start + end) / 2);
  const step = Array.from(
    { length: 4 * taken.length + 4 },
    (_, at) => middle + blur * (at % 2 ? -(at >> 1) - 1 : at >> 1),
  );
  const joint = step.find((x) => taken.every((other) => Math.abs(other - x) >= blur)) ?? middle;
  taken.push(joint);
  return [run(net, start, joint, [start], []), run(net, joint, end, [], [end])];
}

/** Binds each run to those whose heads stand over its feet. */
function bindRuns(runs: readonly Run[]): void {
  const heads = runs.flatMap((one) => one.heads.map((x) => ({ x, one }))).sort((a, b) => a.x - b.x);
  const feet = runs.flatMap((one) => one.feet.map((x) => ({ x, one }))).sort((a, b) => a.x - b.x);
  let first = 0;
  for (const { x, one } of feet) {
    while ((heads[first]?.x ?? Infinity) <= x - blur) first++;
    for (let at = first; (heads[at]?.x ?? Infinity) < x + blur; at++) {
      const other = heads[at]?.one;
      if (other && other.net !== one.net) one.above.push(other);
    }
  }
}

/** Runs that, taken away, leave no circle of what has to lie above what. */
function onCircles(runs: readonly Run[]): ReadonlySet<Run> {
  const found = new Set<Run>();
  const state = new Map<Run, "open" | "done">();
  for (const root of runs) {
    if (state.has(root)) continue;
    const path = [{ one: root, next: 0 }];
    state.set(root, "open");
    for (let top = path.at(-1); top; top = path.at(-1)) {
      const other = top.one.above[top.next++];
      if (!other) {
        state.set(top.one, "done");
        path.pop();
      } else if (state.get(other) === "open") found.add(other);
      else if (!state.has(other)) {
        state.set(other, "open");
        path.push({ one: other, next: 0 });
      }
    }
  }
  return found;
}
