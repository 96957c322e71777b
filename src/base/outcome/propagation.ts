import type { SharedError } from "../quantity.ts";

/** A quantity in a product of powers: its exponent, and the relative errors it shares with others. */
export interface Factor {
  readonly power: number;
  readonly shared: readonly SharedError[];
}

/**
 * Relative standard uncertainty that a product of powers has from the errors its factors share (GUM 5.2.2, fully
 * correlated within a cause, causes independent of each other): what is common to both sides of a ratio cancels.
 */
export function commonError(factors: readonly Factor[]): number {
  const byCause = new Map<string, number>();
  for (const { power, shared } of factors) {
    for (const { with: cause, relative } of shared)
      byCause.set(cause, (byCause.get(cause) ?? 0) + power * relative);
  }
  return Math.hypot(...byCause.values());
}
