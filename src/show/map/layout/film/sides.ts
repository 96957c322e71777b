import type { Piece } from "../places/plan.ts";
import { isSide, type Foot, type Wire } from "../ways/wire.ts";

/** The height at which each attack meets a side: from its wire and the box, in px. */
export type SideHeights = (wire: Wire, foot: Foot) => number;

/** Most distance between two attacks at one side, in px. */
const step = 6;

/** An attack at a side of a box: whether it goes on up, down or level, and its lane. */
interface Meeting {
  readonly wire: Wire;
  readonly foot: Foot;
  readonly way: "up" | "level" | "down";
  readonly lane: number;
}

/**
 * Gives attacks their heights at the sides of boxes: in the middle, several apart from each other, in the order in which
 * they do not cross: those that go up above, nearest the box highest; those that go down under.
 */
export function sideHeightsOf(wires: readonly Wire[], topOf: (piece: Piece) => number): SideHeights {
  const heights = new Map<Wire, Map<Foot, number>>();
  const set = ({ wire, foot }: Meeting, y: number): void => {
    const own = heights.get(wire) ?? new Map<Foot, number>();
    heights.set(wire, own.set(foot, y));
  };
  for (const meetings of meetingsBySide(wires)) {
    const [first] = meetings;
    if (!first) continue;
    const { piece } = first.foot;
    const [top, bottom] = [topOf(piece), topOf(piece) + piece.height];
    const levels = meetings.filter(({ way }) => way === "level");
    const sort = (way: Meeting["way"], sign: number): readonly Meeting[] => {
      const out = first.foot.at === "left" ? -sign : sign;
      return meetings.filter((one) => one.way === way).sort((a, b) => (a.lane - b.lane) * out);
    };
    const [ups, downs] = [sort("up", 1), sort("down", -1)];
    if (levels.length === 0) {
      stack([...ups, ...downs], top, bottom, set);
      continue;
    }
    const [from, to] = sharedHeight(levels, topOf);
    const least = Math.min(step, (to - from) / (levels.length + 1));
    const start = (from + to) / 2 - ((levels.length - 1) * least) / 2;
    levels.forEach((one, at) => set(one, start + least * at));
    stack(ups, top, start, set);
    stack(downs, start + least * (levels.length - 1), bottom, set);
  }
  return (wire, foot) => heights.get(wire)?.get(foot) ?? topOf(foot.piece) + foot.piece.height / 2;
}

function stack(
  meetings: readonly Meeting[],
  top: number,
  bottom: number,
  set: (one: Meeting, y: number) => void,
): void {
  const apart = Math.min(step, (bottom - top) / (meetings.length + 1));
  const start = (top + bottom) / 2 - ((meetings.length - 1) * apart) / 2;
  meetings.forEach((one, at) => set(one, start + apart * at));
}

/** The heights that all boxes have at which level attacks meet. */
function sharedHeight(
  levels: readonly Meeting[],
  topOf: (piece: Piece) => number,
): readonly [number, number] {
  const pieces = levels.flatMap(({ wire }) => [wire.from.piece, wire.to.piece]);
  const from = Math.max(...pieces.map(topOf));
  return [from, Math.max(from + 1, Math.min(...pieces.map((piece) => topOf(piece) + piece.height)))];
}

function meetingsBySide(wires: readonly Wire[]): Iterable<readonly Meeting[]> {
  const found = new Map<string, Meeting[]>();
  for (const wire of wires) {
    for (const foot of [wire.from, wire.to]) {
      if (!isSide(foot)) continue;
      const stop = wire.stops.find((one) => one.foot === foot);
      const way = !stop ? "level" : goesDown(wire, stop.tier) ? "down" : "up";
      const key = `${foot.at} ${foot.piece.tier} ${foot.piece.place}`;
      const meetings = found.get(key) ?? [];
      meetings.push({ wire, foot, way, lane: stop?.x ?? 0 });
      found.set(key, meetings);
    }
  }
  return found.values();
}

function goesDown({ stops }: Wire, tier: number): boolean {
  return stops.some((stop) => stop.tier < tier);
}
