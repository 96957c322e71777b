import { brentRoot } from "./brent.ts";

/** A distribution over whole numbers from `from` on, by the logarithms of its weights at odds of 1. */
export interface Weights {
  readonly from: number;
  readonly logs: readonly number[];
}

/** Two outcomes count as equally probable when their chances differ by less than this share. */
const ALIKE = 1 + 1e-7;

/** Chances of each outcome when every step up is so many times as likely. */
export function chances({ logs }: Weights, odds: number): readonly number[] {
  if (odds === 0) return logs.map((_, i) => (i === 0 ? 1 : 0));
  const step = Math.log(odds);
  const tilted = logs.map((log, i) => log + i * step);
  let most = -Infinity;
  for (const one of tilted) most = Math.max(most, one);
  const raw = tilted.map((log) => Math.exp(log - most));
  const total = sumOf(raw);
  return raw.map((one) => one / total);
}

/** Chance of an outcome of at most `x`, of at least `x`, and of one no more probable than `x`. */
export function tails(
  weights: Weights,
  odds: number,
  x: number,
): { readonly less: number; readonly greater: number; readonly twoSided: number } {
  const all = chances(weights, odds);
  const at = x - weights.from;
  const own = all[at] ?? 0;
  return {
    less: Math.min(1, sumOf(all.slice(0, at + 1))),
    greater: Math.min(1, sumOf(all.slice(at))),
    twoSided: Math.min(1, sumOf(all.filter((chance) => chance <= own * ALIKE))),
  };
}

/** The least p that any outcome could have reached. */
export function smallestP(weights: Weights, odds: number): number {
  const all = chances(weights, odds);
  let least = Infinity;
  for (const chance of all) least = Math.min(least, chance);
  return sumOf(all.filter((chance) => chance <= least * ALIKE));
}

function sumOf(values: readonly number[]): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}

/** The odds under which the mean outcome is `x`: 0 at the lower end, infinite at the upper. */
export function likeliestOdds(weights: Weights, x: number, tolerance = 0): number {
  if (x === weights.from) return 0;
  if (x === lastOf(weights)) return Infinity;
  const rising = (odds: number): number => {
    const mean = chances(weights, odds).reduce((sum, chance, i) => sum + chance * (weights.from + i), 0);
    return mean - x;
  };
  return oddsWhere(rising, tolerance);
}

/** The odds under which `x` or more, or `x` or fewer, has just this chance: ends of an interval by one-sided tests. */
export function oddsWith(
  chance: number,
  weights: Weights,
  x: number,
  side: "or-more" | "or-fewer",
  tolerance = 0,
): number {
  if (side === "or-more" && x === weights.from) return 0;
  if (side === "or-fewer" && x === lastOf(weights)) return Infinity;
  const rising = (odds: number): number => {
    const { less, greater } = tails(weights, odds, x);
    return side === "or-more" ? greater - chance : chance - less;
  };
  return oddsWhere(rising, tolerance);
}

/**
 * Where a function that rises with the odds crosses 0: among odds below 1, or among the inverse of those above 1, as
 * near as `tolerance` on that scale, which at 0 is to the last bit.
 */
function oddsWhere(rising: (odds: number) => number, tolerance: number): number {
  const even = rising(1);
  if (even === 0) return 1;
  return even > 0
    ? brentRoot(rising, 0, 1, tolerance)
    : 1 / brentRoot((inverse) => rising(1 / inverse), Number.EPSILON, 1, tolerance);
}

function lastOf({ from, logs }: Weights): number {
  return from + logs.length - 1;
}
