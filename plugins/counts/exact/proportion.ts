import { betaQuantile, normalQuantileAbove, type Pair } from "../../../src/plugin.ts";

/** Exact interval of a share of which `x` of `n` were found (Clopper & Pearson 1934), with `tail` outside at each end. */
export function clopperPearson(x: number, n: number, tail = 0.025): Pair {
  return [x === 0 ? 0 : betaQuantile(tail, x, n - x + 1), x === n ? 1 : betaQuantile(1 - tail, x + 1, n - x)];
}

/** Interval of a share by the score test without correction (Wilson 1927). */
export function wilson(x: number, n: number, tail = 0.025): Pair {
  const z = normalQuantileAbove(tail);
  const share = x / n;
  const centre = (share + (z * z) / (2 * n)) / (1 + (z * z) / n);
  const half = (z * Math.sqrt((share * (1 - share)) / n + (z * z) / (4 * n * n))) / (1 + (z * z) / n);
  // Rounding must not carry an end that is 0 or 1 beyond it.
  return [x === 0 ? 0 : centre - half, x === n ? 1 : centre + half];
}

/** Middle of Beta(x + 1/2, n − x + 1/2) (Jeffreys), with the end at 0 or 1 where none or all were found. */
export function jeffreys(x: number, n: number, tail = 0.025): Pair {
  const [a, b] = [x + 0.5, n - x + 0.5];
  return [x === 0 ? 0 : betaQuantile(tail, a, b), x === n ? 1 : betaQuantile(1 - tail, a, b)];
}

/** The largest share compatible at 95 % with none found among `n`, 1 − 0.05^(1/n); null where some were found. */
export function ruleOfThree(x: number, n: number): number | null {
  return x === 0 ? -Math.expm1(Math.log(0.05) / n) : null;
}
