import { refuse, refuseFewer, say } from "../../src/plugin.ts";
import type { Refusal } from "../../src/plugin.ts";

/** A size known only to lie in a range; `high` null is open. */
export interface Range {
  readonly low: number;
  readonly high: number | null;
}

/** The distribution of greatest likelihood from ranges alone (Turnbull 1976; methods D6). */
export interface Turnbull {
  readonly intervals: readonly (readonly [number, number | null])[];
  readonly mass: readonly number[];
  readonly logLik: number;
}

const mostRounds = 100_000;
const leastRounds = 5_000;

/** Masses on the innermost intervals by the EM of Turnbull 1976, until the log-likelihood rests. */
export function turnbull(ranges: readonly Range[]): Turnbull | Refusal {
  const few = refuseFewer(ranges.length, 1, say`ranges`);
  if (few) return few;
  if (ranges.some(({ low, high }) => !Number.isFinite(low) || (high !== null && high < low))) {
    return refuse("backwards", say`Unexpected range that runs backwards, expected its smaller end first.`);
  }
  const intervals = innermost(ranges);
  const inside = ranges.map((range) => intervals.map((interval) => (holds(range, interval) ? 1 : 0)));
  let mass = intervals.map(() => 1 / intervals.length);
  let before = -Infinity;
  for (let round = 0; round < mostRounds; round++) {
    const shares = inside.map((row) => row.reduce<number>((sum, is, j) => sum + is * (mass[j] ?? 0), 0));
    const logLik = shares.reduce((sum, share) => sum + Math.log(share), 0);
    if (round >= leastRounds && logLik - before < 1e-12) break;
    before = logLik;
    mass = mass.map(
      (value, j) =>
        (value * inside.reduce((sum, row, i) => sum + (row[j] ?? 0) / (shares[i] ?? 1), 0)) / ranges.length,
    );
  }
  return {
    intervals: intervals.map(([from, to]) => [from, to === Infinity ? null : to]),
    mass,
    logLik: before,
  };
}

/**
 * Stretches from a lower end to the next upper end with no end between. A range is open at its lower end, so that a
 * shared point parts two neighbours; an exact size is a stretch of its own.
 */
function innermost(ranges: readonly Range[]): readonly (readonly [number, number])[] {
  const ends = ranges
    .flatMap(({ low, high }) => [
      { at: low, rank: high === low ? 0 : 2, lower: true },
      { at: top(high), rank: 1, lower: false },
    ])
    .sort((a, b) => a.at - b.at || a.rank - b.rank);
  return ends.flatMap((end, i) => {
    const next = ends[i + 1];
    return end.lower && next !== undefined && !next.lower ? [[end.at, next.at] as const] : [];
  });
}

function holds({ low, high }: Range, [from, to]: readonly [number, number]): boolean {
  if (to > top(high)) return false;
  return from === to && high !== low ? low < from : low <= from;
}

function top(high: number | null): number {
  return high ?? Infinity;
}

/** How two ranges lie to one another, and the factors of the first that make them meet (methods D8). */
export interface Overlap {
  readonly overlap: readonly [number, number] | null;
  readonly length: number;
  readonly gap: number;
  readonly jaccard: number;
  readonly shareOfA: number;
  readonly shareOfB: number;
  readonly relation: string;
  readonly kNeeded: readonly [number, number];
  /** P(a < b) for independent uniforms. */
  readonly pLess: number;
}

/** Compares two ranges of smallest to largest; no p is allowed from such. */
export function overlapOf(a: readonly [number, number], b: readonly [number, number]): Overlap | Refusal {
  if (!(a[0] <= a[1]) || !(b[0] <= b[1])) {
    return refuse("backwards", say`Unexpected range that runs backwards, expected its smaller end first.`);
  }
  const [low, high] = [Math.max(a[0], b[0]), Math.min(a[1], b[1])];
  const length = Math.max(0, high - low);
  const [wide, other] = [a[1] - a[0], b[1] - b[0]];
  return {
    overlap: high >= low ? [low, high] : null,
    length,
    gap: Math.max(0, low - high),
    jaccard: length === 0 ? 0 : length / (wide + other - length),
    shareOfA: wide === 0 ? 0 : length / wide,
    shareOfB: other === 0 ? 0 : length / other,
    relation: relationOf(a, b),
    kNeeded: [b[0] / a[1], b[1] / a[0]],
    pLess: lessOf(a, b),
  };
}

/** Allen's relations (1983, from memory). */
function relationOf(a: readonly [number, number], b: readonly [number, number]): string {
  if (a[1] < b[0]) return "before";
  if (b[1] < a[0]) return "after";
  if (a[0] === b[0] && a[1] === b[1]) return "equals";
  if (a[1] === b[0]) return "meets";
  if (b[1] === a[0]) return "met-by";
  if (a[0] === b[0]) return a[1] < b[1] ? "starts" : "started-by";
  if (a[1] === b[1]) return a[0] > b[0] ? "finishes" : "finished-by";
  if (a[0] > b[0] && a[1] < b[1]) return "during";
  if (a[0] < b[0] && a[1] > b[1]) return "contains";
  return a[0] < b[0] ? "overlaps" : "overlapped-by";
}

/** P(x < y) for x even on a and y even on b, by the area under the line x = y. */
function lessOf(a: readonly [number, number], b: readonly [number, number]): number {
  const [wa, wb] = [a[1] - a[0], b[1] - b[0]];
  if (wa === 0 || wb === 0) return Number(a[0] + a[1] < b[0] + b[1]);
  const [low, high] = [Math.max(a[0], b[0]), Math.min(a[1], b[1])];
  if (high <= low) return Number(a[1] <= b[0]);
  const inner = (high - low) ** 2 / 2;
  const before = Math.max(0, low - a[0]) * wb + Math.max(0, b[1] - high) * (high - low);
  return (inner + before) / (wa * wb);
}
