import betainc from "@stdlib/math-base-special-betainc";
import gammainc from "@stdlib/math-base-special-gammainc";
import gammaln from "@stdlib/math-base-special-gammaln";
import { rootBetween } from "./root.ts";

/** Chance that a standard normal number is above `z`, from the upper incomplete gamma function. */
export function normalAbove(z: number): number {
  if (z === 0) return 0.5;
  const tail = gammainc((z * z) / 2, 0.5, true, true) / 2;
  return z > 0 ? tail : 1 - tail;
}

/** The normal number that a share `upper` of the distribution lies above, for 0 < `upper` < 1. */
export function normalQuantileAbove(upper: number): number {
  if (upper > 0.5) return -normalQuantileAbove(1 - upper);
  return rootBetween((z) => normalAbove(z) - upper, 0, 40);
}

/** Chance that a chi-square number with `df` degrees of freedom is above `x`. */
export function chiSquareAbove(x: number, df: number): number {
  return x <= 0 ? 1 : gammaAbove(x / 2, df / 2);
}

/** Two-sided chance of a Student t as far from 0 as `t`, with `df` degrees of freedom. */
export function studentTwoSided(t: number, df: number): number {
  if (!Number.isFinite(t)) return 0;
  return betainc(df / (df + t * t), df / 2, 0.5, true, false);
}

/** The t that is exceeded in size with chance 1 - `confidence`, with `df` degrees of freedom. */
export function studentQuantile(confidence: number, df: number): number {
  const tail = 1 - confidence;
  let high = 2;
  while (studentTwoSided(high, df) > tail) high *= 2;
  return rootBetween((t) => studentTwoSided(t, df) - tail, 0, high);
}

/** Chance that an F number with `first` and `second` degrees of freedom is above `f`. */
export function fisherAbove(f: number, first: number, second: number): number {
  if (f <= 0) return 1;
  if (!Number.isFinite(f)) return 0;
  return betainc(second / (second + first * f), second / 2, first / 2, true, false);
}

/** The F that is exceeded with chance `upper`, with `first` and `second` degrees of freedom. */
export function fisherQuantile(upper: number, first: number, second: number): number {
  let high = 4;
  while (fisherAbove(high, first, second) > upper) high *= 2;
  return rootBetween((f) => fisherAbove(f, first, second) - upper, 0, high);
}

/** Chance that a Beta(a, b) share is below `x`, for a and b above 0. */
export function betaBelow(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  return x >= 1 ? 1 : betainc(x, a, b, true, false);
}

/** The share that a Beta(a, b) share is below with chance `lower`, for 0 < `lower` < 1. */
export function betaQuantile(lower: number, a: number, b: number): number {
  return rootBetween((x) => betaBelow(x, a, b) - lower, 0, 1);
}

/** The mean that a Poisson count of `count` or fewer has with chance `lower`, for 0 < `lower` < 1. */
export function poissonMean(lower: number, count: number): number {
  let high = count + 2;
  while (gammaAbove(high, count + 1) > lower) high *= 2;
  return rootBetween((mean) => gammaAbove(mean, count + 1) - lower, 1e-300, high);
}

/** Chance that a gamma number of that shape, in units of its scale, is above `x`, for both above 0. */
function gammaAbove(x: number, shape: number): number {
  // Above 1000 the library's series is up to some percent off, most where the shape is near x.
  const large = x > 1000 && shape > 50 && shape < x + 60;
  if (!large) return gammainc(x, shape, true, true);
  let term = Math.exp((shape - 1) * Math.log(x) - x - gammaln(shape));
  let sum = 0;
  for (let k = shape - 1; term > sum * 1e-17; k -= 1) {
    sum += term;
    term *= k / x;
  }
  return Math.min(1, sum);
}
