import type { Piece } from "../places/plan.ts";
import type { Net } from "../channels/nets.ts";
import type { Tier } from "../ways/wire.ts";

/** Where each tier and each track lies, in px down from the top. */
export interface Heights {
  readonly tops: readonly number[];
  readonly bottoms: readonly number[];
  /** Height of a track in the channel over a tier. */
  readonly trackAt: (tier: number, track: number) => number;
  /** About the middle of the channel over a tier, on no track of it. */
  readonly partingOver: (tier: number) => number;
  readonly height: number;
}

/** Room above the highest tier and under the lowest. */
const edge = 24;
/** Least height of a channel; of one with the stubs of cut lines. */
const least = 24;
const stubbed = 40;
/** From a tier to the nearest track; to that under a claim whose dotted tail hangs into the channel. */
const pad = 12;
const tailed = 52;
/** From track to track. */
const trackStep = 10;

interface Channel {
  readonly height: number;
  readonly lift: number;
}

/** Stacks the tiers: a channel is as high as its tracks need, or the stubs and tails in it. */
export function heightsOf(
  tiers: readonly Tier[],
  channels: readonly (readonly Net[])[],
  tracks: readonly number[],
): Heights {
  const rooms = tiers.map((_, at) => channelUnder(tiers[at + 1], channels[at] ?? [], tracks[at] ?? 0));
  const tops: number[] = [];
  const bottoms: number[] = [];
  let y = edge;
  for (const [at, tier] of [...tiers.entries()].reverse()) {
    y += rooms[at]?.height ?? 0;
    tops[at] = y;
    y += tier.height;
    bottoms[at] = y;
  }
  const trackAt = (tier: number, track: number): number =>
    (tops[tier] ?? 0) - (rooms[tier]?.lift ?? 0) - trackStep * track;
  const partingOver = (tier: number): number => {
    const count = tracks[tier] ?? 0;
    if (count === 0) return (tops[tier] ?? 0) - (rooms[tier]?.height ?? 0) / 2;
    return trackAt(tier, (count - 1) >> 1) - trackStep / 2;
  };
  return {
    tops,
    bottoms,
    trackAt,
    partingOver,
    height: y + edge,
  };
}

function channelUnder(next: Tier | undefined, nets: readonly Net[], tracks: number): Channel {
  const tracked = tracks > 0 ? trackStep * (tracks - 1) : 0;
  if (!next) return tracks > 0 ? { height: pad + tracked, lift: pad } : { height: 0, lift: 0 };
  if (next.kind === "words" && tracks === 0) return { height: 0, lift: 0 };
  const upper = next.slabs.some(hasTail) ? tailed : pad;
  const stub = nets.some(({ lower, upper: high }) => isMark(lower.foot?.piece) || isMark(high.foot?.piece));
  const needed = pad + tracked + upper;
  const height = Math.max(needed, stub ? stubbed : least);
  const slack = upper === pad ? (height - needed) / 2 : 0;
  return { height, lift: pad + slack };
}

function isMark(piece: Piece | undefined): boolean {
  return piece?.box.look.as === "mark";
}

/** A claim that nothing supports has a dotted tail of 40 px. */
function hasTail(slab: Tier["slabs"][number]): boolean {
  const look = "box" in slab ? (slab as Piece).box.look : null;
  return look !== null && (look.as === "claim" || look.as === "answer") && look.hangs;
}
