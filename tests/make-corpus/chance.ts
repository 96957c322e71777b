import { randomFrom } from "../../src/base/outcome/random.ts";

/** Choices from a seeded stream. */
export interface Chance {
  /** True in a share of cases, 0 to 1. */
  readonly of: (share: number) => boolean;
  /** Whole number from low to high, both included. */
  readonly between: (low: number, high: number) => number;
  readonly pick: <T>(list: readonly T[]) => T;
  /** Up to `most` different ones, at least one, in the order of the list. */
  readonly some: <T>(list: readonly T[], most: number) => readonly T[];
  readonly normal: () => number;
}

/** Choices that are the same for the same seed, on every machine. */
export function chanceFrom(seed: number): Chance {
  const random = randomFrom(seed);
  const pick = <T>(list: readonly T[]): T => {
    const chosen = list[random.below(list.length)];
    if (chosen === undefined) throw new Error("Nothing to pick from, expected at least one");
    return chosen;
  };
  return {
    of: (share) => random.uniform() < share,
    between: (low, high) => low + random.below(high - low + 1),
    pick,
    some: (list, most) => {
      const wanted = 1 + random.below(Math.min(most, list.length));
      const chosen = new Set(Array.from({ length: wanted }, () => pick(list)));
      return list.filter((one) => chosen.has(one));
    },
    normal: random.normal,
  };
}
