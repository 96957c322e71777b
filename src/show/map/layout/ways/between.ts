import { gap, lane } from "../places/gaps.ts";
import { middleOf, type Slab } from "../places/plan.ts";
import { exactly, spread, type Wish } from "../places/spread.ts";
import { afterOf, beforeOf, type Stop, type Tier } from "./wire.ts";

/** Distance of a line from a mark or the word of a bow, in px. */
const clear = 10;
/** How much more a line keeps its way than a mark its place. */
const firm = 8;
/** The word of a bow is in the middle of it, and stays there. */
const fixed = 1_000_000;
/** How far a mark goes aside to where it fits, before lines have to go round it, in px. */
const aside = 240;

/** A mark, or the word of a bow, or a wire that passes them, by its middle. */
interface Passer {
  readonly slab: Slab | null;
  readonly stop: Stop | null;
  readonly at: number;
}

/** Room between two lines in which marks may stand, in px. */
interface Room {
  readonly from: number;
  readonly to: number;
}

/**
 * Sets marks over or under their boxes, and lines between them: the lines keep straight and the marks give way, but
 * round the words of bows the lines go.
 */
export function passBetween({ kind, slabs, stops }: Tier): void {
  const wanted = new Map<Slab, number>();
  const passers: Passer[] = [];
  for (const stop of stops) {
    const at = beforeOf(stop) ?? stop.x;
    if (!stop.foot) passers.push({ slab: null, stop, at });
    else wanted.set(stop.foot.piece, stop.foot.at === "top" ? (afterOf(stop) ?? stop.x) : at);
  }
  let rooms = roomsAmong(passers.map(({ at }) => at));
  const wish = (slab: Slab): number => wanted.get(slab) ?? middleOf(slab);
  for (const slab of slabs.toSorted((a, b) => wish(a) - wish(b))) {
    const at = kind === "words" ? wish(slab) : freePlace(rooms, slab, wish(slab));
    if (at !== null) rooms = without(rooms, slab, at);
    passers.push({ slab, stop: null, at: at ?? wish(slab) });
  }
  passers.sort((a, b) => a.at - b.at);
  setClear(passers, kind === "words" ? fixed : 1);
  for (const stop of stops) if (stop.foot) stop.x = middleOf(stop.foot.piece);
  slabs.sort((a, b) => a.x - b.x);
}

function setClear(passers: readonly Passer[], firmness: number): void {
  let before: Passer | null = null;
  const wishes = passers.map((passer): Wish => {
    const step = before ? between(before, passer) + halfOf(before) + halfOf(passer) : 0;
    before = passer;
    return { at: passer.at, weight: passer.slab ? firmness : firm, step };
  });
  const [first] = passers;
  const places = spread(wishes, { by: "median", from: lane + (first ? halfOf(first) : 0) });
  for (const [at, { slab, stop }] of passers.entries()) {
    const place = exactly(places[at] ?? 0);
    if (slab) slab.x = place - slab.width / 2;
    if (stop) stop.x = place;
  }
}

function halfOf({ slab }: Passer): number {
  return slab ? slab.width / 2 : 0;
}

function between(left: Passer, right: Passer): number {
  if (left.slab && right.slab) return gap;
  return left.slab || right.slab ? clear : lane;
}

function roomsAmong(lines: readonly number[]): readonly Room[] {
  const sorted = lines.toSorted((a, b) => a - b);
  const ends = [...sorted.map((x) => x - clear), Infinity];
  return ends.map((to, at) => ({ from: at === 0 ? lane : (sorted[at - 1] ?? 0) + clear, to }));
}

/** The middle nearest to the wish where a slab fits into a room; null where none is near. */
function freePlace(rooms: readonly Room[], { width }: Slab, wish: number): number | null {
  let best: number | null = null;
  for (const { from, to } of rooms) {
    if (to - from < width || from > wish + aside + width || to < wish - aside - width) continue;
    const at = Math.max(from + width / 2, Math.min(to - width / 2, wish));
    const off = Math.abs(at - wish);
    if (off <= aside && (best === null || off < Math.abs(best - wish))) best = at;
  }
  return best;
}

function without(rooms: readonly Room[], { width }: Slab, at: number): readonly Room[] {
  return rooms.flatMap(({ from, to }) => {
    if (at < from || at > to) return [{ from, to }];
    return [
      { from, to: at - width / 2 - gap },
      { from: at + width / 2 + gap, to },
    ];
  });
}
