import { SMALLEST_P, isRefusal, type Refusal, type Settings, type Tools } from "../../../src/plugin.ts";
import { periodogram, powerAt, rayleigh } from "./period.ts";

/** A period given or found, its p, and the power at half and twice of it. */
export interface PeriodResult {
  readonly period: number;
  readonly p: number;
  readonly given: boolean;
  /** Sets of positions at random that were searched alike; 0 for a period given. */
  readonly sets: number;
  readonly power: number;
  readonly atHalf: number;
  readonly atTwice: number;
}

/** Tests the period given, or searches for one; null where neither was asked for. */
export function periodOf(
  positions: readonly number[],
  settings: Settings,
  tools: Tools,
  draws: number,
): PeriodResult | Refusal | null {
  const [given, low, high] = [settings["period"], settings["low"], settings["high"]];
  if (given?.kind === "quantity") {
    const period = given.value.value;
    const test = rayleigh(positions, period);
    if (isRefusal(test)) return test;
    const [atHalf, atTwice] = [powerAt(positions, period / 2), powerAt(positions, period * 2)];
    return {
      period,
      p: Math.max(SMALLEST_P, test.exact),
      given: true,
      sets: 0,
      power: test.z,
      atHalf,
      atTwice,
    };
  }
  if (low?.kind !== "quantity" || high?.kind !== "quantity") return null;
  const sets = Math.max(1000, draws);
  const found = periodogram(positions, low.value.value, high.value.value, tools.random, sets);
  return isRefusal(found) ? found : { ...found, given: false, sets };
}
