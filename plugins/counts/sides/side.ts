import type { Id, LeftOut } from "../../../src/plugin.ts";

/** One side of the comparison: what was counted, how much was looked at for it, and how many records that sums up. */
export interface Side {
  readonly count: number;
  /** In SI, or a number of things examined. */
  readonly exposure: number;
  /** Counts and exposures one by one. */
  readonly parts: readonly { readonly count: number; readonly exposure: number }[];
  readonly artefacts: readonly Id[];
}

/**
 * Two sides to be compared: as rates over an exposure, or as shares of things examined; `unit` and `size` say how the
 * exposure was written, `per` what it is.
 */
export interface Sides {
  readonly of: "rates" | "shares";
  readonly first: Side;
  readonly second: Side;
  readonly per: string;
  readonly unit: string;
  readonly size: number;
  readonly leftOut: readonly LeftOut[];
  readonly warnings: readonly string[];
}

/** A side as the sum of its parts. */
export function sideOf(parts: Side["parts"], artefacts: readonly Id[]): Side {
  let [count, exposure] = [0, 0];
  for (const part of parts) {
    count += part.count;
    exposure += part.exposure;
  }
  return { count, exposure, parts, artefacts };
}
