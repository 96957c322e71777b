import { isRefusal, type Json, type Measured } from "../../src/plugin.ts";
import { allometry } from "./allometry.ts";
import type { PairOfDimensions } from "./one-factor.ts";
import { predictAllometric } from "./prediction.ts";

const POINTS = 40;

/** The unit both sides of every pair can be drawn in, with its size in SI; null where the pairs are of several kinds. */
export function unitOfPairs(
  measured: readonly Measured[],
): { readonly unit: string; readonly size: number } | null {
  const [first] = measured;
  if (first === undefined || measured.some((one) => one.quantity.kind !== first.quantity.kind)) return null;
  return { unit: first.quantity.unit, size: first.quantity.unitSize };
}

/**
 * The line through the logged sizes by least squares, with the 95 % band of the line itself (methods C4 and C5); null
 * where fewer than three pairs, or sizes all alike, leave none.
 */
export function fittedLine(pairs: readonly PairOfDimensions[]): Json {
  const x = pairs.map(({ b }) => b);
  const y = pairs.map(({ a }) => a);
  const fit = allometry(x, y, 1, Math.log);
  if (isRefusal(fit)) return null;
  const [low, high] = [Math.min(...x), Math.max(...x)];
  const at = Array.from({ length: POINTS }, (_, k) => low * (high / low) ** (k / (POINTS - 1)));
  const line = predictAllometric(x, y, at);
  if (isRefusal(line)) return null;
  return {
    slope: fit.ols.slope,
    interval: [...fit.ols.interval],
    pRelation: fit.pRelation,
    points: line.map((one, k) => [at[k] ?? 0, one.y0, ...one.line]),
  };
}
