import {
  logBallVolume,
  logFactorial,
  mean,
  refuseFewer,
  refuseUnlessPositive,
  say,
  standardDeviation,
  type Random,
  type Refusal,
} from "../../src/plugin.ts";

/** How even the gaps are, against features placed at random (methods D1). */
export interface Regularity {
  readonly n: number;
  readonly mean: number;
  readonly sd: number;
  /** Coefficient of variation sd / mean. */
  readonly cv: number;
  /** Chance that random features have gaps as even as these; exact where `exact` is not null. */
  readonly pRegular: number;
  /** Chance that random features have gaps as uneven as these. */
  readonly pClustered: number;
  readonly exact: number | null;
}

/**
 * Coefficient of variation of at least two gaps, with its p under random (exponential) gaps: exact up to
 * sqrt(n) / (n - 1), else by `draws` sets. `smallest` is the least gap that could be, such as the features' width.
 */
export function regularity(
  gaps: readonly number[],
  random: Random,
  draws: number,
  smallest = 0,
): Regularity | Refusal {
  const bad = refuseUnlessPositive(gaps, say`gaps`) ?? refuseFewer(gaps.length, 2, say`gaps`);
  if (bad !== null) return bad;
  const n = gaps.length;
  const average = mean(gaps);
  const sd = standardDeviation(gaps);
  // Random gaps above a least one are that one and an exponential gap, which leaves the sd as it is.
  const compared = sd / Math.max(average - smallest, Number.MIN_VALUE);
  const exact = exactRegularity(n, compared);
  const drawn = exact === null ? shareBelow(n, compared, random, draws) : null;
  const pRegular = exact ?? drawn?.below ?? 1;
  return {
    n,
    mean: average,
    sd,
    cv: sd / average,
    pRegular,
    pClustered: drawn?.above ?? 1 - pRegular,
    exact,
  };
}

/**
 * Chance that n random gaps have a coefficient of variation of at most `cv`: shares of a whole are even on a
 * simplex, so it is the volume of a ball in it; null where the ball would stick out of the simplex.
 */
export function exactRegularity(n: number, cv: number): number | null {
  if (cv > Math.sqrt(n) / (n - 1)) return null;
  const radius = cv * Math.sqrt((n - 1) / n);
  // The radius is in shares of the mean; of the whole it is n times less.
  const logVolume = logBallVolume(n - 1, radius / Math.sqrt(n));
  return Math.min(1, Math.exp(logVolume + logFactorial(n - 1) - 0.5 * Math.log(n)));
}

function shareBelow(
  n: number,
  cv: number,
  random: Random,
  draws: number,
): { readonly below: number; readonly above: number } {
  const gaps = Array.from({ length: n }, () => 0);
  let below = 0;
  let above = 0;
  for (let k = 0; k < draws; k += 1) {
    for (let i = 0; i < n; i += 1) gaps[i] = -Math.log(1 - random.uniform());
    const drawn = standardDeviation(gaps) / mean(gaps);
    if (drawn <= cv) below += 1;
    if (drawn >= cv) above += 1;
  }
  return { below: (1 + below) / (draws + 1), above: (1 + above) / (draws + 1) };
}
