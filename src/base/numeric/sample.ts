/** Arithmetic mean; NaN for an empty list. */
export function mean(values: readonly number[]): number {
  let total = 0;
  for (const value of values) total += value;
  return total / values.length;
}

/** Standard deviation with n - 1; NaN for fewer than two values. */
export function standardDeviation(values: readonly number[]): number {
  const centre = mean(values);
  let total = 0;
  for (const value of values) total += (value - centre) ** 2;
  return Math.sqrt(total / (values.length - 1));
}

/** Quantile by linear interpolation between order statistics (Hyndman & Fan 1996, type 7). */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const place = (sorted.length - 1) * share;
  const below = Math.floor(place);
  const low = sorted[below] ?? NaN;
  const high = sorted[Math.min(below + 1, sorted.length - 1)] ?? NaN;
  return low + (place - below) * (high - low);
}

/** The middle value, or the mean of the two middle ones. */
export function median(values: readonly number[]): number {
  return quantile(values, 0.5);
}
