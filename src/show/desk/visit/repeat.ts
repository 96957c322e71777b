import { mean, standardDeviation, studentQuantile } from "../../../base/numeric/index.ts";

/**
 * Repeated readings of one thing, all in one unit: type A evaluation (GUM, JCGM 100:2008, 4.2: the mean, s with n − 1, and
 * s/√n as the standard uncertainty of the mean), with the resolution of the instrument (F.2.2.1: a/√12) beside it.
 */
export interface Repeated {
  readonly n: number;
  readonly mean: number;
  /** Standard deviation of a single reading; null for one reading. */
  readonly spread: number | null;
  /** Standard uncertainty of the mean by its repeats alone; null for one reading. */
  readonly ofMean: number | null;
  readonly resolution: number;
  /** The two combined: √(s²/n + a²/12). */
  readonly u: number;
  /** Half of the interval that holds the value with 95 %: t times u, t for the effective degrees of freedom (G.4.1); null for one reading. */
  readonly half: number | null;
  readonly t: number | null;
  /**
   * What is written after ±. A file does not tell degrees of freedom, and whoever reads it takes twice this for 95 %: it is half
   * of that interval (GUM G.6.4; halving it is common practice) where t is above 2, which it is for few readings, else u.
   */
  readonly stated: number;
}

const confidence = 0.95;
/** From here on t is that of the normal distribution to four digits. */
const many = 1e5;

/** What repeated readings come to; `nearest` is the step that the instrument was read to. */
export function repeated(readings: readonly number[], nearest: number): Repeated {
  const n = readings.length;
  const resolution = nearest / Math.sqrt(12);
  const single = { n, mean: mean(readings), resolution };
  if (n < 2)
    return { ...single, spread: null, ofMean: null, u: resolution, half: null, t: null, stated: resolution };
  const spread = standardDeviation(readings);
  const ofMean = spread / Math.sqrt(n);
  const u = Math.hypot(ofMean, resolution);
  const t = studentQuantile(confidence, freedom(u, ofMean, n));
  return { ...single, spread, ofMean, u, half: t * u, t, stated: (Math.max(t, 2) / 2) * u };
}

/** Effective degrees of freedom (Welch and Satterthwaite, GUM G.4.1), the resolution being known exactly. */
function freedom(u: number, ofMean: number, n: number): number {
  const share = ofMean > 0 ? (u / ofMean) ** 4 * (n - 1) : many;
  return Math.min(share, many);
}
