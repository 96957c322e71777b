import type { Measured } from "../plugin.ts";

/**
 * Several readings of one dimension as one: the mean weighted by 1/u², with the larger of its own standard
 * uncertainty and half the difference between the readings (format.md 4).
 */
export function merged(readings: readonly Measured[]): Measured {
  const first = readings[0];
  if (!first) throw new Error("merged: no reading");
  if (readings.length === 1) return first;
  const values = readings.map((reading) => reading.quantity.value);
  const errors = readings.map((reading) => reading.quantity.u ?? 0);
  const exact = errors.some((u) => u === 0);
  const weights = errors.map((u) => (exact ? 1 : 1 / (u * u)));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = values.reduce((sum, value, at) => sum + value * (weights[at] ?? 0), 0) / total;
  const own = exact ? 0 : Math.sqrt(1 / total);
  const half = (Math.max(...values) - Math.min(...values)) / 2;
  const u = Math.max(own, half);
  const { quantity } = first;
  const causes = new Map(
    readings.flatMap((one) => one.quantity.shared).map((shared) => [shared.with, shared]),
  );
  return {
    ...first,
    quantity: {
      ...quantity,
      text: `mean of ${readings.map((one) => one.quantity.text).join("; ")}`,
      form: "value",
      value: mean,
      low: mean - 2 * u,
      high: mean + 2 * u,
      u,
      digit: Math.max(...readings.map((one) => one.quantity.digit)),
      shared: [...causes.values()],
    },
  };
}
