import { poissonMean, type Pair } from "../../../src/plugin.ts";
import { compared, logChoose } from "./fisher.ts";
import type { Comparison } from "./fisher.ts";
import { clopperPearson } from "./proportion.ts";

/** A count and how much was looked at for it, both sides in one unit. */
export interface Rate {
  readonly count: number;
  readonly exposure: number;
}

/**
 * The ratio of two rates by the exact conditional test: of all that was counted the share on the first side is binomial,
 * its interval that of Clopper and Pearson, the two-sided p that of outcomes no more probable (methods F).
 */
export function rateRatio(first: Rate, second: Rate): Comparison {
  const total = first.count + second.count;
  const per = second.exposure / first.exposure;
  const logs = Array.from({ length: total + 1 }, (_, i) => logChoose(total, i));
  const outcome = compared({ from: 0, logs }, first.count, { odds: 1 / per, per });
  const [low, high] = total === 0 ? [0, 1] : clopperPearson(first.count, total);
  const odds = (share: number): number => (share === 1 ? Infinity : share / (1 - share));
  return {
    ...outcome,
    ratio: second.count === 0 ? outcome.ratio : (first.count / second.count) * per,
    low: odds(low) * per,
    high: odds(high) * per,
  };
}

/** Exact 95 % interval of a rate from one count (Garwood 1936, from memory). */
export function rateEnds({ count, exposure }: Rate): Pair {
  const low = count === 0 ? 0 : poissonMean(0.975, count - 1);
  return [low / exposure, poissonMean(0.025, count) / exposure];
}
