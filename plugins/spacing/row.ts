import {
  isRefusal,
  kindWords,
  refuse,
  row as inRow,
  say,
  type LeftOut,
  type Measured,
  type QuantityKind,
  type Refusal,
} from "../../src/plugin.ts";
import type { Gap } from "./survival.ts";
import { turnbull, type Range, type Turnbull } from "./turnbull.ts";

/** A row of gaps in the order given, and what could not enter it. */
export interface Row {
  readonly gaps: readonly Gap[];
  readonly measured: readonly Measured[];
  readonly leftOut: readonly LeftOut[];
  /** Quadratic mean of the standard uncertainties of the observed gaps, in SI. */
  readonly u: number;
}

/** Reads gaps: bounds from below are broken ends, bounds from above say too little and are left out. */
export function rowOf(all: readonly Measured[]): Row {
  const measured = all.filter((one) => one.quantity.form !== "at-most");
  const gaps = measured.map(({ quantity, state }) => ({
    size: quantity.value,
    observed: quantity.form !== "at-least" && state !== "preserved",
  }));
  const errors = measured.flatMap(({ quantity }, i) => (gaps[i]?.observed ? [quantity.u ?? 0] : []));
  return {
    gaps,
    measured,
    leftOut: all
      .filter((one) => !measured.includes(one))
      .map(({ id }) => ({ id, why: say`a bound from above` })),
    u: Math.sqrt(errors.reduce((sum, u) => sum + u * u, 0) / Math.max(1, errors.length)),
  };
}

/** Refuses gaps of several kinds, and settings of another kind than the gaps. */
export function refuseKinds(kinds: readonly QuantityKind[]): Refusal | null {
  const several = new Set(kinds);
  if (several.size <= 1) return null;
  const found = inRow(
    [...several].map((kind) => kindWords[kind]),
    "comma",
  );
  return refuse(
    "mixed-dimensions",
    say`Unexpected gaps and periods of several kinds (${found}), expected one kind.`,
  );
}

/** Places of the features along the longest stretch without a broken end, from its first feature. */
export function positionsOf(gaps: readonly Gap[]): readonly number[] {
  let best: readonly number[] = [0];
  let run: readonly number[] = [0];
  for (const gap of gaps) {
    run = gap.observed ? [...run, (run.at(-1) ?? 0) + gap.size] : [0];
    if (run.length > best.length) best = run;
  }
  return best;
}

/** The distribution of gaps of which some are known as ranges (methods D6); null where none is, or nothing was observed. */
export function distributionOf(row: Row): Turnbull | null {
  if (!row.measured.some((one) => one.quantity.form === "range")) return null;
  const ranges = row.measured.map(({ quantity }, i): Range => {
    if (!row.gaps[i]?.observed) return { low: quantity.value, high: null };
    const { form, low, high, value } = quantity;
    return form === "range" && low !== null && high !== null ? { low, high } : { low: value, high: value };
  });
  const found = turnbull(ranges);
  return isRefusal(found) ? null : found;
}

/** The stretch in which half of the gaps are reached. */
export function medianOfRanges({ mass, intervals }: Turnbull): readonly [number, number | null] | null {
  let reached = 0;
  for (const [i, share] of mass.entries()) {
    reached += share;
    if (reached >= 0.5 - 1e-6) return intervals[i] ?? null;
  }
  return null;
}
