import { studentQuantile } from "../../../src/plugin.ts";

/** A unit estimated from lengths whose whole numbers of units are accepted. */
export interface UnitEstimate {
  readonly q: number;
  readonly se: number;
  /** Residual standard deviation. */
  readonly s: number;
  readonly low: number;
  readonly high: number;
  readonly df: number;
  /** The units for which every length keeps its whole number. */
  readonly sameFrom: number;
  readonly sameTo: number;
}

/**
 * Regression through the origin of lengths on whole numbers (methods A5), with a constant error or one in
 * proportion to size; the interval is Student's and disregards that the whole numbers may be wrong.
 */
export function estimateUnit(
  values: readonly number[],
  n: readonly number[],
  error: "constant" | "proportional" = "constant",
  confidence = 0.95,
): UnitEstimate {
  const weights = n.map((multiple) => (error === "constant" ? 1 : 1 / multiple ** 2));
  const sum = (term: (i: number) => number): number =>
    values.reduce((total, _, i) => total + (weights[i] ?? 0) * term(i), 0);
  const squares = sum((i) => (n[i] ?? 0) ** 2);
  const q = sum((i) => (n[i] ?? 0) * (values[i] ?? 0)) / squares;
  const df = values.length - 1;
  const s2 = sum((i) => ((values[i] ?? 0) - (n[i] ?? 0) * q) ** 2) / df;
  const se = Math.sqrt(s2 / squares);
  const reach = studentQuantile(confidence, df) * se;
  return {
    q,
    se,
    s: Math.sqrt(s2),
    low: q - reach,
    high: q + reach,
    df,
    sameFrom: Math.max(...values.map((value, i) => value / ((n[i] ?? 0) + 0.5))),
    sameTo: Math.min(...values.map((value, i) => ((n[i] ?? 0) > 1 ? value / ((n[i] ?? 0) - 0.5) : Infinity))),
  };
}

/** The interval of an estimated unit, widened by the relative error that the lengths share (an instrument, a survey, a unit). */
export function widened(
  { q, low, high }: UnitEstimate,
  common: number,
): { readonly low: number; readonly high: number } {
  const shared = 1.959964 * common * q;
  return { low: q - Math.hypot(q - low, shared), high: q + Math.hypot(high - q, shared) };
}

/** The exponent with which each length enters the estimate, adding up to 1: n X / (q Σ n²). */
export function powersIn(values: readonly number[], n: readonly number[]): readonly number[] {
  const products = values.map((value, i) => value * (n[i] ?? 0));
  const whole = products.reduce((sum, product) => sum + product, 0);
  return products.map((product) => product / whole);
}
