import { corner, lane } from "../places/gaps.ts";
import { exactly, spread } from "../places/spread.ts";
import type { Foot, Stop } from "./wire.ts";

/** How near to the end of its port a line may be, in px. */
const rim = 3;

/** A line that is to meet an edge, and where its way goes on beyond it, in px. */
interface Pin {
  readonly stop: Stop;
  readonly next: number;
}

/** A stretch of an edge, in px of the map, with the lines that meet it from the left. */
interface Stretch {
  readonly isPort: boolean;
  readonly from: number;
  readonly to: number;
  readonly pins: Pin[];
}

/**
 * Gives the lines that meet one edge of a box their places: each within its port, straight to where its way goes on
 * where that lies within, else evenly along it; those without a port beside those that have one. No two are at one point.
 */
export function pin(stops: readonly Stop[]): void {
  const stretches = stretchesOf(stops);
  const ports = stretches.filter(({ isPort }) => isPort);
  for (const stretch of ports) setWithin(stretch);
  for (const stretch of stretches) {
    if (stretch.isPort) continue;
    if (ports.length === 0) setWithin(stretch);
    else
      setBeside(
        stretch,
        ports.flatMap(({ pins }) => pins.map(({ stop }) => stop.x)),
      );
  }
}

function stretchesOf(stops: readonly Stop[]): readonly Stretch[] {
  const found = new Map<string, Stretch>();
  for (const stop of stops) {
    if (!stop.foot) continue;
    const next = beyond(stop, stop.foot)?.x ?? stop.x;
    const stretch = stretchFor(stop.foot);
    const key = `${stretch.isPort} ${stretch.from} ${stretch.to}`;
    const known = found.get(key) ?? stretch;
    known.pins.push({ stop, next });
    found.set(key, known);
  }
  for (const { pins } of found.values()) pins.sort((a, b) => a.next - b.next);
  return [...found.values()];
}

/** Where the way of a line is known next: below all is; above, marks and words do not stand yet. */
function beyond({ wire: { stops } }: Stop, { at }: Foot): Stop | undefined {
  return at === "bottom"
    ? stops.at(-2)
    : stops.slice(1).find(({ foot, gutter }) => foot !== null || gutter !== null);
}

function stretchFor({ piece, at, port: name }: Foot): Stretch {
  const port = piece.box.ports.find((one) => one.edge === at && one.name === name);
  if (port) return { isPort: true, from: piece.x + port.from, to: piece.x + port.to, pins: [] };
  const inset = piece.width * corner;
  return { isPort: false, from: piece.x + inset, to: piece.x + piece.width - inset, pins: [] };
}

function setWithin({ from, to, pins }: Stretch): void {
  const width = to - from;
  const step = Math.min(lane, width / (pins.length + 1));
  const inside = Math.min(rim, step / 2);
  const straight = pins.map(({ next }) => (next >= from + inside && next <= to - inside ? next : null));
  const wishes = evenly(straight, from, to).map((at, n) => ({
    at,
    weight: straight[n] === null ? 1 : 2,
    step,
  }));
  const places = spread(wishes, { by: "median", from: from + inside, to: to - inside });
  for (const [at, { stop }] of pins.entries()) stop.x = exactly(places[at] ?? stop.x);
}

/** Fills in what is open evenly between what is given, from one end to the other. */
function evenly(given: readonly (number | null)[], from: number, to: number): readonly number[] {
  const found: number[] = [];
  let start = from;
  let open = 0;
  for (const x of [...given, to]) {
    if (x === null) {
      open++;
      continue;
    }
    for (let at = 1; at <= open; at++) found.push(start + ((x - start) * at) / (open + 1));
    found.push(x);
    start = x;
    open = 0;
  }
  return found.slice(0, -1);
}

function setBeside({ from, to, pins }: Stretch, taken: number[]): void {
  for (const { stop, next } of pins) {
    const wish = Math.max(from, Math.min(to, next));
    stop.x = exactly(freeNear(wish, from, to, taken));
    taken.push(stop.x);
  }
}

/** The place nearest to a wish that keeps its distance from those that are taken: the usual one, or half, a quarter … of it. */
function freeNear(wish: number, from: number, to: number, taken: readonly number[]): number {
  for (let apart = lane; ; apart /= 2) {
    const sides = taken.flatMap((x) => [x - apart, x + apart]);
    const free = [wish, ...sides]
      .filter((x) => x >= from && x <= to && taken.every((other) => Math.abs(other - x) >= apart - 1e-9))
      .sort((a, b) => Math.abs(a - wish) - Math.abs(b - wish) || a - b);
    if (free[0] !== undefined) return free[0];
  }
}
