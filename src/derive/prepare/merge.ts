import type { SharedError } from "../../base/quantity.ts";
import type { Measured } from "../../plugin.ts";

/**
 * Several readings of one dimension as one: the mean weighted by 1/u², with the larger of its own standard
 * uncertainty and half the difference between the readings (format.md 4). It shares an error as far as they do.
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
      shared: sharedIn(
        readings,
        values.map((value, at) => (mean === 0 ? 1 : value / mean) * ((weights[at] ?? 0) / total)),
      ),
    },
  };
}

/** Each cause's relative error of the mean: those of the readings, as far as each makes up the mean (GUM 5.2.2). */
function sharedIn(readings: readonly Measured[], parts: readonly number[]): readonly SharedError[] {
  const byCause = new Map<string, number>();
  readings.forEach(({ quantity }, at) => {
    for (const { with: cause, relative } of quantity.shared)
      byCause.set(cause, (byCause.get(cause) ?? 0) + relative * (parts[at] ?? 0));
  });
  return [...byCause].map(([cause, relative]) => ({ with: cause, relative }));
}
