import gammaln from "@stdlib/math-base-special-gammaln";

/** Natural logarithm of the volume of a ball of `radius` in `dimensions` dimensions. */
export function logBallVolume(dimensions: number, radius: number): number {
  if (radius === 0) return dimensions === 0 ? 0 : -Infinity;
  return (dimensions / 2) * Math.log(Math.PI) + dimensions * Math.log(radius) - gammaln(dimensions / 2 + 1);
}

/** Natural logarithm of n!, for whole n. */
export function logFactorial(n: number): number {
  return gammaln(n + 1);
}

/** Number of ways to choose `k` of `n`; a float once it passes 2^53. */
export function choose(n: number, k: number): number {
  let ways = 1;
  for (let i = 1; i <= Math.min(k, n - k); i += 1) ways = (ways * (n - Math.min(k, n - k) + i)) / i;
  return Math.round(ways);
}
