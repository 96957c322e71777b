import { chiSquareAbove, choose, refuseFewer, refuseUnlessPositive, say } from "../../../src/plugin.ts";
import type { Random, Refusal } from "../../../src/plugin.ts";
import { stepsOf } from "../survival.ts";
import type { Gap } from "../survival.ts";

/** A permutation test of scores between two groups. */
export interface Permutation {
  readonly p: number;
  readonly below: number;
  readonly above: number;
  /** How many relabellings were looked at. */
  readonly count: number;
  readonly exact: boolean;
  /** The smallest p that the design could reach. */
  readonly smallest: number;
}

/** Two groups of gaps, broken ends among them, compared (methods D5). */
export interface Comparison {
  readonly logRank: {
    readonly chisq: number;
    readonly p: number;
    readonly observed: readonly [number, number];
    readonly expected: readonly [number, number];
  };
  readonly petoPeto: { readonly chisq: number; readonly p: number };
  /** Gehan's scores, first group first, and their sum over it. */
  readonly scores: readonly number[];
  readonly w: number;
  readonly gehan: Permutation;
  readonly logRankScores: readonly number[];
  readonly logRankExact: Permutation;
}

/** Most relabellings that are all looked at. */
const MOST_EXACT = 200_000;

/** Log-rank, Peto-Peto and Gehan's test, the last with all relabellings where there are few enough, else with `draws`. */
export function compareCensored(
  a: readonly Gap[],
  b: readonly Gap[],
  random: Random,
  draws: number,
): Comparison | Refusal {
  const all = [...a, ...b];
  const bad =
    refuseUnlessPositive(
      all.map((gap) => gap.size),
      say`gaps`,
    ) ??
    refuseFewer(a.length, 1, say`gaps in the first group`) ??
    refuseFewer(b.length, 1, say`gaps in the second group`);
  if (bad) return bad;
  const scores = gehanScores(all);
  const logRankScores = logRankScoresOf(all);
  const logRank = weighted(a, all, () => 1);
  const petoPeto = weighted(a, all, (share) => share);
  return {
    logRank,
    petoPeto: { chisq: petoPeto.chisq, p: petoPeto.p },
    scores,
    w: scores.slice(0, a.length).reduce((sum, score) => sum + score, 0),
    gehan: permutation(scores, a.length, random, draws),
    logRankScores,
    logRankExact: permutation(logRankScores, a.length, random, draws),
  };
}

/** Gehan's permutation test alone: every relabelling where there are at most `most`, else `draws` of them. */
export function gehanTest(
  a: readonly Gap[],
  b: readonly Gap[],
  random: Random,
  draws: number,
  most: number = MOST_EXACT,
): Permutation {
  return permutation(gehanScores([...a, ...b]), a.length, random, draws, most);
}

/** For each gap how many are surely shorter, less how many are surely longer. */
function gehanScores(all: readonly Gap[]): readonly number[] {
  return all.map((one) => all.reduce((sum, other) => sum + shorter(other, one) - shorter(one, other), 0));
}

/** 1 when a gap is surely shorter than another: observed, and below it or equal to a bound. */
function shorter(one: Gap, other: Gap): number {
  if (!one.observed) return 0;
  return one.size < other.size || (one.size === other.size && !other.observed) ? 1 : 0;
}

/** d − H(t), with H the Nelson-Aalen estimate over both groups. */
function logRankScoresOf(all: readonly Gap[]): readonly number[] {
  const steps = stepsOf(all);
  return all.map((gap) => {
    const hazard = steps
      .filter((step) => step.time <= gap.size)
      .reduce((sum, step) => sum + step.events / step.atRisk, 0);
    return (gap.observed ? 1 : 0) - hazard;
  });
}

/** The Fleming-Harrington family: weights 1 give the log-rank test, the Kaplan-Meier share just before gives Peto-Peto's. */
function weighted(
  a: readonly Gap[],
  all: readonly Gap[],
  weight: (share: number) => number,
): Comparison["logRank"] {
  let share = 1;
  let [observed, expected, variance, others, othersExpected] = [0, 0, 0, 0, 0];
  for (const { time, atRisk, events } of stepsOf(all)) {
    const w = weight(share);
    const first = a.filter((gap) => gap.size >= time).length;
    const firstEvents = a.filter((gap) => gap.observed && gap.size === time).length;
    observed += w * firstEvents;
    expected += (w * events * first) / atRisk;
    others += w * (events - firstEvents);
    othersExpected += (w * events * (atRisk - first)) / atRisk;
    if (atRisk > 1) {
      variance +=
        (w * w * events * first * (atRisk - first) * (atRisk - events)) / (atRisk * atRisk * (atRisk - 1));
    }
    share *= 1 - events / atRisk;
  }
  const chisq = variance > 0 ? (observed - expected) ** 2 / variance : 0;
  return {
    chisq,
    p: chiSquareAbove(chisq, 1),
    observed: [observed, others],
    expected: [expected, othersExpected],
  };
}

/** How often a relabelling of the groups differs from its mean by as much, to either side. */
function permutation(
  scores: readonly number[],
  size: number,
  random: Random,
  draws: number,
  most: number = MOST_EXACT,
): Permutation {
  const n = scores.length;
  const ways = choose(n, size);
  const mean = (size * scores.reduce((sum, score) => sum + score, 0)) / n;
  const seen = scores.slice(0, size).reduce((sum, score) => sum + score, 0);
  const reach = Math.abs(seen - mean) - 1e-9;
  const exact = ways <= most;
  let [far, below, above, count] = [0, 0, 0, 0];
  const look = (sum: number): void => {
    count++;
    if (Math.abs(sum - mean) >= reach) far++;
    if (sum <= seen + 1e-9) below++;
    if (sum >= seen - 1e-9) above++;
  };
  if (exact) eachSum(scores, size, look);
  else for (let k = 0; k < draws; k++) look(drawnSum(scores, size, random));
  const extra = exact ? 0 : 1;
  const share = (hits: number): number => (hits + extra) / (count + extra);
  return { p: share(far), below: share(below), above: share(above), count, exact, smallest: 1 / ways };
}

function eachSum(scores: readonly number[], size: number, look: (sum: number) => void): void {
  const from = (start: number, left: number, sum: number): void => {
    if (left === 0) return look(sum);
    for (let i = start; i <= scores.length - left; i++) from(i + 1, left - 1, sum + (scores[i] ?? 0));
  };
  from(0, size, 0);
}

function drawnSum(scores: readonly number[], size: number, random: Random): number {
  const left = [...scores];
  let sum = 0;
  for (let k = 0; k < size; k++) {
    const at = k + random.below(left.length - k);
    [left[k], left[at]] = [left[at] ?? 0, left[k] ?? 0];
    sum += left[k] ?? 0;
  }
  return sum;
}
