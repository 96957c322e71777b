import fc from "fast-check";
import { expect, test } from "vitest";
import { byText } from "../../../src/base/order.ts";
import { entropyOf, expectedGain, jointGain } from "../../../src/plan/weigh/gain.ts";
import { exactUpTo, smallestHitting } from "../../../src/plan/weigh/hitting.ts";
import { daysIn, longestFirst } from "../../../src/plan/visit/lead-time.ts";

const share = fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 1, maxLength: 5 });

/** Weights that add up to 1; all alike where none is above 0. */
function normalised(weights: readonly number[]): readonly number[] {
  const sum = weights.reduce((all, one) => all + one, 0);
  return weights.map((one) => (sum > 0 ? one / sum : 1 / weights.length));
}

const examination = (answers: number): fc.Arbitrary<readonly (readonly number[])[]> =>
  fc.integer({ min: 1, max: 4 }).chain((outcomes) =>
    fc
      .array(fc.array(fc.integer({ min: 0, max: 9 }), { minLength: outcomes, maxLength: outcomes }), {
        minLength: answers,
        maxLength: answers,
      })
      .map((rows) => rows.map(normalised)),
  );

test("a gain lies between nothing and the lesser of what the answers and the outcomes leave open", () => {
  fc.assert(
    fc.property(
      share.map(normalised).chain((prior) => fc.tuple(fc.constant(prior), examination(prior.length))),
      ([prior, likely]) => {
        const { bits, priorBits, outcomes } = expectedGain(prior, likely);
        const open = entropyOf(outcomes.map((one) => one.p));
        expect(bits).toBeGreaterThanOrEqual(0);
        expect(bits).toBeLessThanOrEqual(Math.min(priorBits, open) + 1e-12);
        expect(priorBits).toBeCloseTo(entropyOf(prior), 12);
        expect(outcomes.reduce((sum, one) => sum + one.p, 0)).toBeCloseTo(1, 12);
        for (const { p, posterior } of outcomes)
          if (p > 0) expect(posterior.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12);
      },
    ),
  );
});

test("two examinations together tell no less than each, and no more than both", () => {
  fc.assert(
    fc.property(
      share
        .map(normalised)
        .chain((prior) => fc.tuple(fc.constant(prior), examination(prior.length), examination(prior.length))),
      ([prior, one, other]) => {
        const singles = [one, other].map((likely) => expectedGain(prior, likely).bits);
        const together = jointGain(prior, [one, other]);
        expect(together).toBeGreaterThanOrEqual(Math.max(...singles) - 1e-12);
        expect(together).toBeLessThanOrEqual((singles[0] ?? 0) + (singles[1] ?? 0) + 1e-12);
      },
    ),
  );
});

const things = "abcdefgh".split("");

/** All smallest hitting sets by cost, then number, found by trying every subset. */
function byTrying(sets: readonly (readonly string[])[], cost: (one: string) => number): readonly string[] {
  const wanted = sets.filter((set) => set.length > 0);
  const known = things.filter((one) => wanted.some((set) => set.includes(one)));
  const hitting = Array.from({ length: 2 ** known.length }, (_, mask) =>
    known.filter((_one, at) => (mask >> at) % 2 === 1),
  ).filter((some) => wanted.every((set) => set.some((one) => some.includes(one))));
  const price = (some: readonly string[]): readonly [number, number] => [
    some.reduce((sum, one) => sum + cost(one), 0),
    some.length,
  ];
  const least = hitting.map(price).reduce((a, b) => (b[0] < a[0] || (b[0] === a[0] && b[1] < a[1]) ? b : a));
  return hitting
    .filter((some) => price(some)[0] === least[0] && price(some)[1] === least[1])
    .map((some) => some.join())
    .sort(byText);
}

test("the smallest hitting sets are those that trying every subset finds, by cost, then number", () => {
  fc.assert(
    fc.property(
      fc.array(fc.subarray(things), { maxLength: 7 }),
      fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 8, maxLength: 8 }),
      (sets, costs) => {
        const cost = (one: string): number => costs[things.indexOf(one)] ?? 0;
        const found = smallestHitting(sets, cost);
        expect(found.nearMinimal).toBe(false);
        expect(found.unhittable).toEqual(sets.flatMap((set, at) => (set.length === 0 ? [at] : [])));
        const sorted = found.solutions.map((one) => one.toSorted(byText).join()).toSorted(byText);
        expect(sorted).toEqual(byTrying(sets, cost));
      },
    ),
    { numRuns: 400 },
  );
});

test("above twenty-five things a set is near-minimal: it hits all, and no part of it does", () => {
  const many = Array.from({ length: exactUpTo + 15 }, (_, at) => at);
  fc.assert(
    fc.property(
      fc.array(fc.subarray(many, { minLength: 1, maxLength: 6 }), { minLength: 20, maxLength: 60 }),
      (sets) => {
        const { solutions, nearMinimal } = smallestHitting(sets);
        const [set = []] = solutions;
        const hits = (some: readonly number[]): boolean =>
          sets.every((one) => one.some((thing) => some.includes(thing)));
        expect(nearMinimal).toBe(new Set(sets.flat()).size > exactUpTo);
        expect(hits(set)).toBe(true);
        for (const one of set) expect(hits(set.filter((other) => other !== one))).toBe(false);
      },
    ),
    { numRuns: 60 },
  );
});

test.each([
  ["a week", 7],
  ["eight weeks", 56],
  ["three months, after lambing", 90],
  ["10 days", 10],
  ["2–3 months", 90],
  ["a fortnight", 14],
  ["ask the clerk", null],
  ["après la moisson", null],
])("%s is so many days: %s", (written, days) => {
  expect(daysIn(written)).toBe(days);
});

test("the longest lead time comes first, and one that cannot be told before all", () => {
  expect(longestFirst(["a week", "ask the clerk", "three months", "a week", "90 days"])).toEqual([
    "ask the clerk",
    "90 days",
    "three months",
    "a week",
  ]);
});
