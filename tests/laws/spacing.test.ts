import * as fc from "fast-check";
import { expect, test } from "vitest";
import { compareCensored } from "../../plugins/spacing/compare.ts";
import { periodogram, powerAt, rayleigh } from "../../plugins/spacing/period.ts";
import { exactRegularity, regularity } from "../../plugins/spacing/regularity.ts";
import { kaplanMeier } from "../../plugins/spacing/survival.ts";
import type { Gap } from "../../plugins/spacing/survival.ts";
import { overlapOf, turnbull } from "../../plugins/spacing/turnbull.ts";
import { choose, isRefusal, randomFrom } from "../../src/plugin.ts";
import type { Refusal } from "../../src/plugin.ts";

const size = fc.integer({ min: 1, max: 60 });
const gap: fc.Arbitrary<Gap> = fc.record({ size, observed: fc.boolean() });
const seen: fc.Arbitrary<Gap> = fc.record({ size, observed: fc.constant(true) });
const row = fc.array(gap, { minLength: 1, maxLength: 7 });
const positions = fc.array(fc.double({ min: 0, max: 500, noNaN: true }), { minLength: 5, maxLength: 15 });
const ends = fc.tuple(size, fc.integer({ min: 0, max: 30 }));

function sound<T extends object>(outcome: T | Refusal): T {
  if (isRefusal(outcome)) throw new Error(outcome.message);
  return outcome;
}

test("without broken ends the share longer is one less the share that is not", () => {
  fc.assert(
    fc.property(fc.array(seen, { minLength: 1, maxLength: 20 }), (gaps) => {
      const { times, shares } = sound(kaplanMeier(gaps));
      for (const [i, time] of times.entries())
        expect(shares[i]).toBeCloseTo(gaps.filter((one) => one.size > time).length / gaps.length, 9);
    }),
  );
});

test("the share longer never rises, and taking a gap for a broken end never lowers it", () => {
  fc.assert(
    fc.property(row, fc.nat(), (gaps, at) => {
      fc.pre(gaps.filter((one) => one.observed).length > 1);
      const first = gaps.findIndex((one, i) => one.observed && i >= at % gaps.length);
      const broken = first < 0 ? gaps.findIndex((one) => one.observed) : first;
      const [before, after] = [
        sound(kaplanMeier(gaps)),
        sound(kaplanMeier(gaps.map((one, i) => (i === broken ? { ...one, observed: false } : one)))),
      ];
      const shareAt = ({ times, shares }: typeof before, time: number) =>
        shares[times.findLastIndex((one) => one <= time)] ?? 1;
      before.times.forEach((time, i) => {
        expect(before.shares[i]).toBeLessThanOrEqual((before.shares[i - 1] ?? 1) + 1e-12);
        expect(shareAt(after, time)).toBeGreaterThanOrEqual(shareAt(before, time) - 1e-12);
      });
    }),
  );
});

test("two rows told the other way round differ as much the other way", () => {
  fc.assert(
    fc.property(row, row, (a, b) => {
      const [there, back] = [a, b].map((one) =>
        sound(compareCensored(one, one === a ? b : a, randomFrom(1), 100)),
      );
      expect(there?.w).toBe(0 - (back?.w ?? Number.NaN));
      expect(there?.gehan.p).toBeCloseTo(back?.gehan.p ?? Number.NaN, 12);
      expect(there?.logRank.chisq).toBeCloseTo(back?.logRank.chisq ?? Number.NaN, 9);
    }),
    { numRuns: 60 },
  );
});

test("no comparison is surer than its number of relabellings allows", () => {
  fc.assert(
    fc.property(row, row, (a, b) => {
      const { gehan } = sound(compareCensored(a, b, randomFrom(1), 100));
      expect(gehan.exact).toBe(true);
      expect(gehan.count).toBe(choose(a.length + b.length, a.length));
      expect(gehan.p).toBeGreaterThanOrEqual(1 / gehan.count - 1e-12);
      expect(gehan.below + gehan.above).toBeGreaterThanOrEqual(1);
    }),
    { numRuns: 60 },
  );
});

test("evenness does not depend on the unit, and drawing agrees with the exact chance", () => {
  const gaps = fc.array(fc.double({ min: 10, max: 30, noNaN: true }), { minLength: 2, maxLength: 10 });
  fc.assert(
    fc.property(gaps, fc.double({ min: 0.01, max: 100, noNaN: true }), (all, factor) => {
      const one = sound(regularity(all, randomFrom(3), 100));
      const other = sound(
        regularity(
          all.map((value) => value * factor),
          randomFrom(3),
          100,
        ),
      );
      expect(other.cv).toBeCloseTo(one.cv, 9);
      expect(one.pRegular).toBeGreaterThanOrEqual(0);
      expect(one.pRegular).toBeLessThanOrEqual(1);
    }),
  );
  // Two gaps of a broken stick: the chance of a coefficient of at most c is c / √2.
  expect(exactRegularity(2, 0.7)).toBeCloseTo(0.7 / Math.SQRT2, 12);
});

test("a period is found wherever the row begins", () => {
  fc.assert(
    fc.property(positions, fc.double({ min: 5, max: 80, noNaN: true }), size, (all, period, start) => {
      const moved = all.map((x) => x + start);
      expect(powerAt(moved, period)).toBeCloseTo(powerAt(all, period), 6);
      const [one, other] = [sound(rayleigh(all, period)), sound(rayleigh(moved, period))];
      expect(one.length).toBeLessThanOrEqual(1 + 1e-12);
      expect(other.exact).toBeCloseTo(one.exact, 6);
    }),
    { numRuns: 10 },
  );
});

test("no period of the range has more power than the one found", () => {
  fc.assert(
    fc.property(positions, fc.double({ min: 20, max: 90, noNaN: true }), (all, period) => {
      fc.pre(Math.max(...all) - Math.min(...all) > 50);
      const found = sound(periodogram(all, 20, 90, randomFrom(5), 20));
      // The peak of the grid is the one made finer, so a neighbour may be higher by what the grid misses.
      expect(found.power).toBeGreaterThanOrEqual(powerAt(all, period) * 0.9);
      expect(found.p).toBeGreaterThanOrEqual(1 / 21);
    }),
    { numRuns: 40 },
  );
});

test("ranges alone: the masses are shares, and sizes known exactly give their own shares", () => {
  fc.assert(
    fc.property(fc.array(ends, { minLength: 1, maxLength: 8 }), (all) => {
      const { mass } = sound(turnbull(all.map(([low, wide]) => ({ low, high: low + wide }))));
      expect(mass.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 6);
      for (const share of mass) expect(share).toBeGreaterThanOrEqual(0);
    }),
    { numRuns: 20 },
  );
  const exact = sound(turnbull([3, 5, 5, 9].map((low) => ({ low, high: low }))));
  expect(exact.intervals).toEqual([
    [3, 3],
    [5, 5],
    [9, 9],
  ]);
  expect(exact.mass.map((share) => Math.round(1000 * share))).toEqual([250, 500, 250]);
});

test("two ranges meet, or a factor that brings them together is named", () => {
  fc.assert(
    fc.property(ends, ends, ([a, wide], [b, broad]) => {
      const [one, other] = [[a, a + wide] as const, [b, b + broad] as const];
      const [there, back] = [sound(overlapOf(one, other)), sound(overlapOf(other, one))];
      expect(back.length).toBe(there.length);
      expect(there.pLess).toBeGreaterThanOrEqual(0);
      expect(there.pLess).toBeLessThanOrEqual(1);
      const touching = there.kNeeded[0] <= 1 && there.kNeeded[1] >= 1;
      expect(there.overlap !== null).toBe(touching);
    }),
  );
});
