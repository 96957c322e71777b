import { formatNumber } from "../quantity/quantity-print.ts";

/**
 * A p from drawn sets for a sentence, with its own standard error √(p (1 − p) / B): `p = 0.069 ± 0.006`; where none of
 * the sets reached as far it is only said to be below one in so many, and it is never 0.
 */
export function formatDrawnP(p: number, draws: number): string {
  if (p <= 1 / draws) return `p < 1/${draws}`;
  if (p >= 1) return "p = 1";
  const error = Math.sqrt((p * (1 - p)) / draws);
  const places = Math.max(0, -Math.floor(Math.log10(error)));
  return `p = ${p.toFixed(places)} ± ${formatNumber(error, 1)}`;
}

/** Whether a p from drawn sets lies within twice its own error of 1 % or 5 %, so that other draws might put it beyond. */
export function isUnsettled(p: number, draws: number): boolean {
  return [0.01, 0.05].some((limit) => Math.abs(p - limit) <= 2 * Math.sqrt((limit * (1 - limit)) / draws));
}
