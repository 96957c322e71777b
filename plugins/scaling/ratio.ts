import { normalQuantileAbove, refuse, refuseUnlessPositive, say, type Refusal } from "../../src/plugin.ts";

/** Two ends; null where one is open. */
export type Interval = readonly [number | null, number | null];

/** The ratio of two homologous dimensions with three intervals (methods C1). */
export interface Ratio {
  readonly ratio: number;
  readonly u: number;
  readonly logRatio: number;
  readonly uLog: number;
  readonly byLog: readonly [number, number];
  readonly linear: readonly [number, number];
  /** Fieller 1954; null when the denominator cannot be told from 0. */
  readonly fieller: readonly [number, number] | null;
}

/** a / b with independent standard uncertainties (less a covariance, where known) at the given confidence. */
export function ratioOf(
  a: number,
  ua: number,
  b: number,
  ub: number,
  confidence = 0.95,
  covariance = 0,
): Ratio | Refusal {
  const bad = refuseUnlessPositive([a, b], say`dimensions`);
  if (bad !== null) return bad;
  if (!(ua >= 0) || !(ub >= 0)) return refuse("negative-uncertainty", say`Unexpected uncertainty below 0.`);
  const z = normalQuantileAbove((1 - confidence) / 2);
  const ratio = a / b;
  const uLog = Math.sqrt(Math.max(0, (ua / a) ** 2 + (ub / b) ** 2 - (2 * covariance) / (a * b)));
  return {
    ratio,
    u: ratio * uLog,
    logRatio: Math.log(ratio),
    uLog,
    byLog: [ratio * Math.exp(-z * uLog), ratio * Math.exp(z * uLog)],
    linear: [ratio - z * ratio * uLog, ratio + z * ratio * uLog],
    fieller: fieller(a, ua, b, ub, z, covariance),
  };
}

function fieller(
  a: number,
  ua: number,
  b: number,
  ub: number,
  z: number,
  covariance: number,
): readonly [number, number] | null {
  const g = ((z * ub) / b) ** 2;
  if (g >= 1) return null;
  const ratio = a / b;
  const shift = (g * covariance) / (ub * ub || 1);
  const inner =
    ua ** 2 -
    2 * ratio * covariance +
    ratio ** 2 * ub ** 2 -
    g * (ua ** 2 - covariance ** 2 / (ub * ub || 1));
  const reach = (z / b) * Math.sqrt(Math.max(0, inner));
  return [(ratio - shift - reach) / (1 - g), (ratio - shift + reach) / (1 - g)];
}

/** The ratio of two intervals, each end of which may be open (methods C2), and what can be said of it. */
export function ratioOfIntervals(
  a: Interval,
  b: Interval,
): { readonly ratio: Interval; readonly says: "within" | "at least" | "at most" | "undecided" } | Refusal {
  const bad = refuseUnlessPositive(
    [...a, ...b].filter((end) => end !== null),
    say`ends`,
  );
  if (bad !== null) return bad;
  const low = a[0] === null || b[1] === null ? null : a[0] / b[1];
  const high = a[1] === null || b[0] === null ? null : a[1] / b[0];
  if (low === null && high === null) return { ratio: [low, high], says: "undecided" };
  return { ratio: [low, high], says: low === null ? "at most" : high === null ? "at least" : "within" };
}
