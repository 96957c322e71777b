import { refuse, refuseFewer, refuseUnlessPositive, say, type Refusal } from "../../src/plugin.ts";

/** A gap, or the least that it can have been where the edge is broken. */
export interface Gap {
  readonly size: number;
  readonly observed: boolean;
}

/** The share of gaps longer than each observed length, with broken ends taken into account (methods D4). */
export interface Survival {
  readonly times: readonly number[];
  readonly atRisk: readonly number[];
  readonly events: readonly number[];
  readonly shares: readonly number[];
  /** Greenwood's standard error; null where the share is 0. */
  readonly errors: readonly (number | null)[];
  /** Null when half of the gaps are not reached. */
  readonly median: number | null;
  /** Mean up to the largest value, observed or not. */
  readonly restrictedMean: number;
  readonly largest: number;
}

/** Kaplan & Meier 1958; refuses when every gap is a lower bound. */
export function kaplanMeier(gaps: readonly Gap[]): Survival | Refusal {
  const bad =
    refuseUnlessPositive(
      gaps.map((gap) => gap.size),
      say`gaps`,
    ) ?? refuseFewer(gaps.length, 1, say`gaps`);
  if (bad !== null) return bad;
  const largest = Math.max(...gaps.map((gap) => gap.size));
  if (!gaps.some((gap) => gap.observed)) {
    return refuse(
      "no-observed-values",
      say`all gaps are lower bounds (longest bound ${String(largest)}); no median can be given`,
      { longest: largest },
    );
  }
  const steps = stepsOf(gaps);
  const errors: (number | null)[] = [];
  const shares: number[] = [];
  let share = 1;
  let greenwood = 0;
  let area = 0;
  let past = 0;
  for (const { time, atRisk, events } of steps) {
    area += share * (time - past);
    past = time;
    share = atRisk === events ? 0 : share * (1 - events / atRisk);
    greenwood += events / (atRisk * (atRisk - events));
    shares.push(share);
    errors.push(share === 0 ? null : share * Math.sqrt(greenwood));
  }
  return {
    times: steps.map((step) => step.time),
    atRisk: steps.map((step) => step.atRisk),
    events: steps.map((step) => step.events),
    shares,
    errors,
    median: medianOf(
      steps.map((step) => step.time),
      shares,
    ),
    restrictedMean: area + share * (largest - past),
    largest,
  };
}

/** Numbers at risk and observed at each distinct observed gap; a bound counts as at risk at its own length. */
export function stepsOf(
  gaps: readonly Gap[],
): readonly { readonly time: number; readonly atRisk: number; readonly events: number }[] {
  const times = [...new Set(gaps.filter((gap) => gap.observed).map((gap) => gap.size))].sort((a, b) => a - b);
  return times.map((time) => ({
    time,
    atRisk: gaps.filter((gap) => gap.size >= time).length,
    events: gaps.filter((gap) => gap.observed && gap.size === time).length,
  }));
}

// Where the share is one half over a stretch, the median is the middle of the stretch.
function medianOf(times: readonly number[], shares: readonly number[]): number | null {
  for (const [i, share] of shares.entries()) {
    const time = times[i] ?? NaN;
    if (Math.abs(share - 0.5) < 1e-9) return i + 1 < times.length ? (time + (times[i + 1] ?? NaN)) / 2 : time;
    if (share < 0.5) return time;
  }
  return null;
}
