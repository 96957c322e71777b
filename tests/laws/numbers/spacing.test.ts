import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { meetingOf } from "../../../plugins/spacing/two-rows/ranges.ts";
import { compareCensored } from "../../../plugins/spacing/two-rows/compare.ts";
import { spacing } from "../../../plugins/spacing/index.ts";
import { periodogram, rayleigh } from "../../../plugins/spacing/period/period.ts";
import { exactRegularity, regularity } from "../../../plugins/spacing/regularity.ts";
import { kaplanMeier } from "../../../plugins/spacing/survival.ts";
import type { Gap } from "../../../plugins/spacing/survival.ts";
import { overlapOf, turnbull } from "../../../plugins/spacing/turnbull.ts";
import { choose, isRefusal, randomFrom } from "../../../src/plugin.ts";
import type { Measured, Refusal } from "../../../src/plugin.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { wholeInEnglish } from "../base/in-english.ts";

const gap: fc.Arbitrary<Gap> = fc.record({ size: fc.integer({ min: 1, max: 30 }), observed: fc.boolean() });
const row = fc
  .array(gap, { minLength: 2, maxLength: 7 })
  .filter((gaps) => gaps.filter((one) => one.observed).length >= 1);
const sizes = fc.array(fc.integer({ min: 1, max: 99 }), { minLength: 2, maxLength: 12 });

function certain<T extends object>(outcome: T | Refusal): T {
  if (isRefusal(outcome)) throw new Error(inEnglish(outcome.message));
  return outcome;
}

describe("evenness", () => {
  test("does not depend on the unit, and is a probability above 0 unless all gaps are equal", () => {
    fc.assert(
      fc.property(sizes, fc.double({ min: 0.01, max: 100, noNaN: true }), (gaps, c) => {
        const one = certain(regularity(gaps, randomFrom(1), 500));
        const other = certain(
          regularity(
            gaps.map((size) => c * size),
            randomFrom(1),
            500,
          ),
        );
        expect(other.cv).toBeCloseTo(one.cv, 9);
        expect(other.pRegular).toBeCloseTo(one.pRegular, 6);
        expect(one.pRegular).toBeLessThanOrEqual(1);
        if (new Set(gaps).size > 1) expect(one.pRegular).toBeGreaterThan(0);
      }),
    );
  });

  test("has an exact p that agrees with drawing gaps at random", () => {
    const random = randomFrom(3);
    for (const n of [2, 3, 5, 9]) {
      const cv = (0.8 * Math.sqrt(n)) / (n - 1);
      let below = 0;
      for (let k = 0; k < 20_000; k += 1) {
        const gaps = Array.from({ length: n }, () => -Math.log(1 - random.uniform()));
        const average = gaps.reduce((sum, one) => sum + one, 0) / n;
        const spread = Math.sqrt(gaps.reduce((sum, one) => sum + (one - average) ** 2, 0) / (n - 1));
        if (spread / average <= cv) below += 1;
      }
      expect(Math.abs((exactRegularity(n, cv) ?? -1) - below / 20_000)).toBeLessThan(0.02);
    }
  });
});

describe("a period", () => {
  test("is followed wholly by its own multiples, wherever they begin", () => {
    const start = fc.double({ min: 0, max: 50, noNaN: true });
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 20 }), start, (n, first) => {
        const positions = Array.from({ length: n }, (_, i) => first + 7 * i);
        const tested = certain(rayleigh(positions, 7));
        expect(tested.length).toBeCloseTo(1, 9);
        const moved = positions.map((x) => x + 3);
        expect(certain(rayleigh(moved, 7)).z).toBeCloseTo(tested.z, 6);
      }),
      { numRuns: 30 },
    );
  });

  test("is found where it is", () => {
    const random = randomFrom(4);
    const positions = Array.from({ length: 12 }, (_, i) => 20 + 11 * i + 0.3 * random.normal());
    const found = certain(periodogram(positions, 6, 20, random, 200));
    expect(Math.abs(found.period - 11)).toBeLessThan(0.1);
    expect(found.p).toBeLessThan(0.01);
    expect(certain(rayleigh(positions, found.period)).z).toBeCloseTo(found.power, 6);
  });
});

describe("broken ends", () => {
  test("leave, where there are none, the plain share of longer gaps", () => {
    fc.assert(
      fc.property(sizes, (all) => {
        const { times, shares } = certain(kaplanMeier(all.map((size) => ({ size, observed: true }))));
        for (const [i, time] of times.entries()) {
          expect(shares[i]).toBeCloseTo(all.filter((size) => size > time).length / all.length, 9);
        }
      }),
    );
  });

  test("make shares that never rise, and never fall below those without them", () => {
    fc.assert(
      fc.property(row, (gaps) => {
        const { times, shares } = certain(kaplanMeier(gaps));
        expect([...shares].sort((a, b) => b - a)).toEqual([...shares]);
        const naive = certain(kaplanMeier(gaps.map((one) => ({ ...one, observed: true }))));
        for (const [i, time] of times.entries()) {
          const at = naive.times.findLastIndex((other) => other <= time);
          expect((shares[i] ?? 0) + 1e-12).toBeGreaterThanOrEqual(naive.shares[at] ?? 1);
        }
      }),
    );
  });

  test("all of them refuse a median", () => {
    expect(kaplanMeier([{ size: 50, observed: false }])).toMatchObject({ refused: "no-observed-values" });
  });
});

describe("two rows", () => {
  test("have opposite sums when they change places, the same p, and none below what the design can reach", () => {
    fc.assert(
      fc.property(row, row, (a, b) => {
        const one = certain(compareCensored(a, b, randomFrom(2), 500));
        const other = certain(compareCensored(b, a, randomFrom(2), 500));
        expect(one.w + other.w).toBe(0);
        expect(one.gehan.p).toBeCloseTo(other.gehan.p, 12);
        expect(one.logRank.chisq).toBeCloseTo(other.logRank.chisq, 9);
        expect(one.gehan.p + 1e-12).toBeGreaterThanOrEqual(1 / choose(a.length + b.length, a.length));
        expect(one.gehan.count).toBe(choose(a.length + b.length, a.length));
      }),
    );
  });
});

describe("ranges", () => {
  test("known exactly have the shares of the sizes themselves", () => {
    fc.assert(
      fc.property(sizes, (all) => {
        const { intervals, mass } = certain(turnbull(all.map((size) => ({ low: size, high: size }))));
        for (const [i, [from]] of intervals.entries()) {
          expect(mass[i]).toBeCloseTo(all.filter((size) => size === from).length / all.length, 6);
        }
        expect(mass.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9);
      }),
      { numRuns: 20 },
    );
  });

  test("overlap alike from either side, and one is below the other or not", () => {
    const range = fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 20 }));
    fc.assert(
      fc.property(range, range, ([a, wide], [b, other]) => {
        const [first, second] = [
          [a, a + wide],
          [b, b + other],
        ] as const;
        const one = certain(overlapOf(first, second));
        const two = certain(overlapOf(second, first));
        expect(one.length).toBe(two.length);
        expect(one.pLess + two.pLess).toBeCloseTo(1, 9);
        expect(one.kNeeded[0] * two.kNeeded[1]).toBeCloseTo(1, 9);
      }),
    );
  });
});

const measured = (size: number, form: "value" | "at-least" | "at-most", i: number): Measured => ({
  id: `g-${i}`,
  artefact: "row",
  dimension: "gap",
  quantity: {
    text: `${size} cm`,
    kind: "length",
    form,
    unit: "cm",
    unitSize: 0.01,
    value: size / 100,
    low: form === "at-most" ? null : (size - 0.5) / 100,
    high: form === "at-least" ? null : (size + 0.5) / 100,
    u: form === "value" ? 0.01 / Math.sqrt(12) : null,
    digit: 0.01,
    shared: [],
  },
  state: "complete",
  source: null,
});

describe("the plug-in", () => {
  const tools = () => ({ random: randomFrom(9), report: () => undefined, looks: 1 });
  const certainly = (gaps: readonly Measured[]) => certain(spacing.compute({ gaps }, {}, tools()));

  test("gives equal bytes for equal inputs, counts broken ends and leaves out bounds from above", () => {
    fc.assert(
      fc.property(sizes, (all) => {
        const gaps = [...all, 40, 41].map((size, i) =>
          measured(size, i === all.length ? "at-least" : "value", i),
        );
        const once = certainly(gaps);
        expect(JSON.stringify(certainly(gaps))).toBe(JSON.stringify(once));
        expect(once.numbers["censored"]?.value).toBe(1);
        expect(once.numbers["n"]?.value).toBe(all.length + 1);
        const more = certainly([...gaps, measured(9, "at-most", 99)]);
        expect(wholeInEnglish(more.leftOut)).toEqual([{ id: "g-99", why: "a bound from above" }]);
        expect(more.numbers).toEqual(once.numbers);
      }),
      { numRuns: 30 },
    );
  });

  test("never prints a p of 0, and says when gaps are as even as they were measured", () => {
    const { numbers, warnings } = certainly(
      [60, 60, 60, 60, 60].map((size, i) => measured(size, "value", i)),
    );
    expect(numbers["p"]?.value).toBeGreaterThan(0);
    expect(warnings).toEqual(expect.arrayContaining(["as-even-as-measured", "below-smallest-p"]));
  });
});

describe("two rows of which only the reach is known", () => {
  const end = fc.double({ min: 1, max: 200, noNaN: true });
  const reach = fc
    .tuple(end, fc.option(end))
    .map(([a, b]): readonly [number, number | null] =>
      b === null ? [a, null] : [Math.min(a, b), Math.max(a, b)],
    );

  test("meet with the factors needed, and with no others", () => {
    fc.assert(
      fc.property(reach, reach, fc.double({ min: 0.2, max: 5, noNaN: true }), (own, other, factor) => {
        const met = certain(meetingOf(own, other, [factor, factor]));
        const [low, high] = [own[0] * factor, (own[1] ?? Infinity) * factor];
        const common = high >= other[0] && low <= (other[1] ?? Infinity);
        expect(met.meetEnlarged).toBe(common ? "all" : "none");
        const near =
          Math.abs(factor - met.needed[0]) < 1e-9 || Math.abs(factor - (met.needed[1] ?? 0)) < 1e-9;
        if (!near) expect(common).toBe(factor > met.needed[0] && factor < (met.needed[1] ?? Infinity));
      }),
    );
  });

  test("meet with some of a range of factors where its ends do not agree", () => {
    expect(certain(meetingOf([50, 60], [75, 90], [1, 1.5]))).toMatchObject({
      meet: false,
      meetEnlarged: "some",
    });
    expect(certain(meetingOf([50, 60], [75, 90], [1.25, 1.8])).meetEnlarged).toBe("all");
    expect(certain(meetingOf([50, 60], [75, null], [0.5, 1])).meetEnlarged).toBe("none");
    expect(isRefusal(meetingOf([0, 60], [75, 90]))).toBe(true);
  });
});
