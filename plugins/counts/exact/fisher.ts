import { logFactorial } from "../../../src/plugin.ts";
import { likeliestOdds, oddsWith, smallestP, tails } from "./tilted.ts";
import type { Weights } from "./tilted.ts";

/** Two counts compared: p either way and two-sided, the ratio with its exact 95 % interval, infinite where it has no end. */
export interface Comparison {
  readonly less: number;
  readonly greater: number;
  readonly p: number;
  readonly ratio: number;
  readonly low: number;
  readonly high: number;
  /** The ratio under which as much would be seen half of the time: for where the likeliest one is infinite. */
  readonly middle: number;
  /** The least p that these totals could have given. */
  readonly smallest: number;
}

/**
 * Fisher's exact test of `a` and `b` with and without a feature against `c` and `d` (Fisher 1935): the two-sided p sums
 * the tables no more probable; the odds ratio is the conditional likeliest one, its interval from one-sided tests. These
 * are found as near as `tolerance` on the scale of the odds, or of their inverse where they are above 1.
 */
export function fisherExact(a: number, b: number, c: number, d: number, tolerance = 0): Comparison {
  const [row, withIt, without] = [a + b, a + c, b + d];
  const from = Math.max(0, row - without);
  const to = Math.min(row, withIt);
  const logs = Array.from(
    { length: to - from + 1 },
    (_, i) => logChoose(withIt, from + i) + logChoose(without, row - from - i),
  );
  return compared({ from, logs }, a, { odds: 1, per: 1, tolerance });
}

/** The odds expected by chance, what turns odds into the ratio asked for, and how near it is to be found. */
interface Asked {
  readonly odds: number;
  readonly per: number;
  readonly tolerance?: number;
}

/** What a tilted distribution says of an outcome against odds that are expected by chance. */
export function compared(weights: Weights, x: number, { odds, per, tolerance }: Asked): Comparison {
  const { less, greater, twoSided } = tails(weights, odds, x);
  return {
    less,
    greater,
    p: twoSided,
    ratio: likeliestOdds(weights, x, tolerance) * per,
    low: oddsWith(0.025, weights, x, "or-more", tolerance) * per,
    high: oddsWith(0.025, weights, x, "or-fewer", tolerance) * per,
    middle: oddsWith(0.5, weights, x, "or-more", tolerance) * per,
    smallest: smallestP(weights, odds),
  };
}

/** Natural logarithm of the number of ways to choose `k` of `n`. */
export function logChoose(n: number, k: number): number {
  return logFactorial(n) - logFactorial(k) - logFactorial(n - k);
}
