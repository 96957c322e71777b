import {
  chiSquareAbove,
  isRefusal,
  normalQuantileAbove,
  refuseFewer,
  refuseUnlessPositive,
  rootBetween,
  say,
  type Refusal,
} from "../../src/plugin.ts";
import { covarianceOf, type SharedByCause } from "./covariance.ts";

/** One homologous dimension of two things, with standard uncertainties. */
export interface PairOfDimensions {
  readonly a: number;
  readonly ua: number;
  readonly b: number;
  readonly ub: number;
}

/** Whether one scale factor is enough for all dimensions (methods C3). */
export interface OneFactor {
  readonly k: number;
  readonly low: number;
  readonly high: number;
  /** Cochran's Q. */
  readonly heterogeneity: number;
  readonly df: number;
  /** Null for one dimension, where nothing can be tested. */
  readonly p: number | null;
  /** Departure of one dimension that would hardly be missed, as a share; null for one dimension. */
  readonly detectable: number | null;
  readonly logRatios: readonly number[];
  readonly uLog: readonly number[];
  /** Distance of each dimension from the common factor in its own standard uncertainties. */
  readonly departures: readonly (number | null)[];
}

/** The share that each pair has in the common factor, adding up to 1: as 1 / v, with v of methods C3. */
export function sharesIn(pairs: readonly PairOfDimensions[], tolerance: number): readonly number[] {
  const weights = pairs.map(({ a, ua, b, ub }) => 1 / ((ua / a) ** 2 + (ub / b) ** 2 + tolerance ** 2));
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / whole);
}

/**
 * Weighted mean of the log ratios and Cochran's Q about it; `tolerance` is the natural variation between products
 * of one maker, a share, added in quadrature. What only some of the ratios share by cause is an error of their scatter
 * too; where nothing is, or all share it alike, this is methods C3.
 */
export function oneFactor(
  pairs: readonly PairOfDimensions[],
  tolerance = 0,
  confidence = 0.95,
  shared: SharedByCause = [],
): OneFactor | Refusal {
  const bad =
    refuseFewer(pairs.length, 1, say`pairs of dimensions`) ??
    refuseUnlessPositive(
      pairs.flatMap(({ a, b }) => [a, b]),
      say`dimensions`,
    ) ??
    refuseUnlessPositive(
      pairs.map(({ a, ua, b, ub }) => Math.hypot(ua / a, ub / b, tolerance)),
      say`uncertainties`,
    );
  if (bad !== null) return bad;
  const y = pairs.map(({ a, b }) => Math.log(a / b));
  const v = pairs.map(({ a, ua, b, ub }) => (ua / a) ** 2 + (ub / b) ** 2 + tolerance ** 2);
  const weight = v.reduce((sum, value) => sum + 1 / value, 0);
  const centre = y.reduce((sum, value, i) => sum + value / (v[i] ?? 1), 0) / weight;
  const together = covarianceOf(v, shared);
  const heterogeneity =
    together === null
      ? y.reduce((sum, value, i) => sum + (value - centre) ** 2 / (v[i] ?? 1), 0)
      : together.heterogeneity(y);
  const reach = normalQuantileAbove((1 - confidence) / 2) / Math.sqrt(weight);
  const df = pairs.length - 1;
  const [first = 0, second = 0] = [...v].sort((a, b) => b - a);
  return {
    k: Math.exp(centre),
    low: Math.exp(centre - reach),
    high: Math.exp(centre + reach),
    heterogeneity,
    df,
    p: df === 0 ? null : chiSquareAbove(heterogeneity, df),
    detectable: df === 0 ? null : Math.expm1(2.8 * Math.sqrt(together?.largestBetween ?? first + second)),
    logRatios: y,
    uLog: v.map(Math.sqrt),
    departures: y.map((value, i) => {
      const rest = together?.ofDeparture(i) ?? (v[i] ?? 0) - 1 / weight;
      return df === 0 || rest <= 0 ? null : (value - centre) / Math.sqrt(rest);
    }),
  };
}

/**
 * The least natural variation between products of one maker, a share, with which one factor would no longer be rejected
 * at 5 %; null where it is not, and for one dimension. Where Q falls to its critical value (Viechtbauer 2007,
 * Statist. Med. 26, 37–52, from memory: the lower limit of the Q profile).
 */
export function toleranceNeeded(
  pairs: readonly PairOfDimensions[],
  tolerance: number,
  shared: SharedByCause = [],
): number | null {
  const excess = (share: number): number => {
    const fit = oneFactor(pairs, share, 0.95, shared);
    return isRefusal(fit) || fit.p === null ? 1 : fit.p - 0.05;
  };
  if (excess(tolerance) >= 0) return null;
  let high = Math.max(2 * tolerance, 0.01);
  while (excess(high) < 0) high *= 2;
  return rootBetween(excess, tolerance, high);
}
