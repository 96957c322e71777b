import { betaQuantile, type Pair } from "../../src/plugin.ts";

/** How often a source reports what is known, and on how many independent occasions it is silent. */
export interface Habit {
  readonly reported: number;
  readonly known: number;
  readonly occasions: number;
  /** The share of occasions on which the source reports what is not there, from 0 up to but not 1. */
  readonly falseReports: number;
}

/** What a silence is worth: the rate at which its source reports, and how likely the silence is either way. */
export interface Worth {
  /** Mean of the rate's distribution, Beta(a + k, b + m − k), and the ends of its middle 95 %. */
  readonly rate: number;
  readonly rateEnds: Pair;
  /** Chance of the silence if the thing is there, over the whole distribution of the rate, and for the ends of its 95 %. */
  readonly ifPresent: number;
  readonly ifPresentEnds: Pair;
  readonly ifAbsent: number;
  /** Likelihood ratio of absent to present, with the band that the 95 % of the rate give. */
  readonly ratio: number;
  readonly ratioEnds: Pair;
  /** Nothing is known by which the source's habit could be judged. */
  readonly rateUnknown: boolean;
}

const TAIL = 0.025;

/**
 * Weighs a silence by its source's habit of reporting (methods F): the rate is Beta with a flat prior unless told
 * otherwise, and B(a + k, b + m − k + n) / B(a + k, b + m − k) the chance of n silences. With nothing known the rate is
 * the prior's own, and any number of silences counts as one.
 */
export function weighSilence(record: Habit, priorA = 1, priorB = 1): Worth {
  const { reported, known, falseReports } = record;
  const rateUnknown = known === 0;
  const occasions = rateUnknown ? Math.min(record.occasions, 1) : record.occasions;
  const a = priorA + reported;
  const b = priorB + known - reported;
  const rateEnds: Pair = [betaQuantile(TAIL, a, b), betaQuantile(1 - TAIL, a, b)];
  let ifPresent = 1;
  for (let i = 0; i < occasions; i += 1) ifPresent *= (b + i) / (a + b + i);
  const ifAbsent = (1 - falseReports) ** occasions;
  const ifPresentEnds: Pair = [(1 - rateEnds[1]) ** occasions, (1 - rateEnds[0]) ** occasions];
  return {
    rate: a / (a + b),
    rateEnds,
    ifPresent,
    ifPresentEnds,
    ifAbsent,
    ratio: ifAbsent / ifPresent,
    ratioEnds: [ifAbsent / ifPresentEnds[1], ifAbsent / ifPresentEnds[0]],
    rateUnknown,
  };
}

/** The chance that the thing is there after the silence, from the chance given to it before. */
export function presentAfter(ratio: number, before: number): number {
  return before / (before + (1 - before) * ratio);
}
