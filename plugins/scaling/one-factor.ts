import {
  chiSquareAbove,
  normalQuantileAbove,
  refuseFewer,
  refuseUnlessPositive,
  type Refusal,
} from "../../src/plugin.ts";

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

/**
 * Weighted mean of the log ratios and Cochran's Q about it; `tolerance` is the natural variation between products
 * of one maker, a share, added in quadrature.
 */
export function oneFactor(
  pairs: readonly PairOfDimensions[],
  tolerance = 0,
  confidence = 0.95,
): OneFactor | Refusal {
  const bad =
    refuseFewer(pairs.length, 1, "pairs of dimensions") ??
    refuseUnlessPositive(
      pairs.flatMap(({ a, b }) => [a, b]),
      "dimensions",
    ) ??
    refuseUnlessPositive(
      pairs.map(({ a, ua, b, ub }) => Math.hypot(ua / a, ub / b, tolerance)),
      "uncertainties",
    );
  if (bad !== null) return bad;
  const y = pairs.map(({ a, b }) => Math.log(a / b));
  const v = pairs.map(({ a, ua, b, ub }) => (ua / a) ** 2 + (ub / b) ** 2 + tolerance ** 2);
  const weight = v.reduce((sum, value) => sum + 1 / value, 0);
  const centre = y.reduce((sum, value, i) => sum + value / (v[i] ?? 1), 0) / weight;
  const heterogeneity = y.reduce((sum, value, i) => sum + (value - centre) ** 2 / (v[i] ?? 1), 0);
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
    detectable: df === 0 ? null : Math.expm1(2.8 * Math.sqrt(first + second)),
    logRatios: y,
    uLog: v.map(Math.sqrt),
    departures: y.map((value, i) => {
      const rest = (v[i] ?? 0) - 1 / weight;
      return df === 0 || rest <= 0 ? null : (value - centre) / Math.sqrt(rest);
    }),
  };
}
