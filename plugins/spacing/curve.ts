import type { Json, Pair } from "../../src/plugin.ts";
import type { Gap, Survival } from "./survival.ts";
import type { Turnbull } from "./turnbull.ts";

/** The stretches of a row one after another, from its first feature; a broken one has an end that is open. */
export function edgeOf(gaps: readonly Gap[]): Json {
  let at = 0;
  return gaps.map((gap, i) => {
    const from = at;
    at += gap.size;
    // A row that begins broken begins before its first feature; any other break cuts a gap short at its end.
    return { from, to: at, open: gap.observed ? null : i === 0 && gaps.length > 1 ? "start" : "end" };
  });
}

/** The share of gaps longer than each length, the lengths within which it cannot be told, and the broken ends on it. */
export function curveOf(
  gaps: readonly Gap[],
  survival: Survival,
  ranges: Turnbull | null,
): { readonly steps: Json; readonly between: Json; readonly broken: Json } {
  const drops = ranges === null ? dropsOf(survival) : dropsOfRanges(ranges);
  const points: Pair[] = [[0, 1]];
  const between: Json[] = [];
  for (const { from, to, share } of drops) {
    const before = points.at(-1)?.[1] ?? 1;
    points.push([to, before], [to, share]);
    if (to > from) between.push([from, share, before], [to, share, before]);
  }
  const last = points.at(-1) ?? [0, 1];
  if (survival.largest > last[0]) points.push([survival.largest, last[1]]);
  const broken = gaps
    .filter((gap) => !gap.observed)
    .map((gap): Pair => [gap.size, points.findLast((point) => point[0] <= gap.size)?.[1] ?? 1]);
  return { steps: points, between, broken };
}

interface Drop {
  readonly from: number;
  readonly to: number;
  readonly share: number;
}

function dropsOf({ times, shares }: Survival): readonly Drop[] {
  return times.map((time, i) => ({ from: time, to: time, share: shares[i] ?? 0 }));
}

/** The share falls somewhere within each interval; a mass beyond the last end never falls. */
function dropsOfRanges({ intervals, mass }: Turnbull): readonly Drop[] {
  let left = 1;
  return intervals.flatMap(([from, to], i) => {
    left -= mass[i] ?? 0;
    return to === null ? [] : [{ from, to, share: Math.max(0, left) }];
  });
}
