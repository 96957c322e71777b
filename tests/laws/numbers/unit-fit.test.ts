import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { unitFit } from "../../../plugins/unit-fit/index.ts";
import { lumpedVariance, squaresBelow, vTest } from "../../../plugins/unit-fit/given/given-unit.ts";
import { atLeast } from "../../../plugins/unit-fit/given/item-fits.ts";
import { attenuation, plain } from "../../../plugins/unit-fit/lengths.ts";
import type { Length } from "../../../plugins/unit-fit/lengths.ts";
import { highestPeak, peaksOf, phi, scan } from "../../../plugins/unit-fit/search/quantogram.ts";
import { searchUnit } from "../../../plugins/unit-fit/search/search.ts";
import { significance } from "../../../plugins/unit-fit/search/significance.ts";
import { isRefusal, randomFrom } from "../../../src/plugin.ts";
import type { Computation, Inputs, Measured, Settings } from "../../../src/plugin.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";

const size = fc.double({ min: 5, max: 200, noNaN: true });
const sizes = fc.array(size, { minLength: 6, maxLength: 25 });
const trial = fc.double({ min: 1, max: 40, noNaN: true });
const factor = fc.double({ min: 0.01, max: 100, noNaN: true });
type Phis = Float64Array;
const plainly = (values: readonly number[]): readonly Length[] => values.map((value) => plain(value));

describe("the quantogram", () => {
  test("does not depend on the unit in which the lengths are written", () => {
    fc.assert(
      fc.property(sizes, trial, factor, (x, q, c) => {
        const scaled = phi(plainly(x.map((value) => c * value)), c * q);
        expect(Math.abs(scaled - phi(plainly(x), q))).toBeLessThan(1e-9);
      }),
    );
  });

  test("stays within the square root of twice the number of lengths, and reaches it for whole multiples", () => {
    fc.assert(
      fc.property(sizes, trial, (x, q) => {
        const most = Math.sqrt(2 * x.length);
        expect(Math.abs(phi(plainly(x), q))).toBeLessThanOrEqual(most + 1e-9);
        const whole = x.map((value) => Math.ceil(value) * q);
        expect(phi(plainly(whole), q)).toBeCloseTo(most, 9);
      }),
    );
  });

  test("is the same for two sets at once, by transform or not, as for each by recurrence", () => {
    const many = fc.integer({ min: 6, max: 120 }).chain((n) => {
      const set = fc.array(size, { minLength: n, maxLength: n });
      return fc.tuple(set, set, fc.double({ min: 0.3, max: 3, noNaN: true }));
    });
    fc.assert(
      fc.property(many, ([one, other, qMin]) => {
        const { grid, fill, fillTwo } = scan(plainly(one), qMin, 12, 8);
        const phis = Array.from({ length: 4 }, () => new Float64Array(grid.count));
        const [first, second, firstAlone, secondAlone] = phis as [Phis, Phis, Phis, Phis];
        fillTwo(Float64Array.from(one), Float64Array.from(other), first, second);
        fill(Float64Array.from(one), firstAlone);
        fill(Float64Array.from(other), secondAlone);
        for (let k = 0; k < grid.count; k += 1) {
          expect(Math.abs(first[k]! - firstAlone[k]!)).toBeLessThan(1e-9);
          expect(Math.abs(second[k]! - secondAlone[k]!)).toBeLessThan(1e-9);
        }
      }),
      { numRuns: 60 },
    );
  });

  test("is the same by recurrence over a grid as by its formula, with weights and without", () => {
    const lengths = fc.array(
      fc.record({
        value: size,
        sd: fc.double({ min: 0, max: 0.3, noNaN: true }),
        width: fc.constantFrom(0, 0, 0.5),
        recordedTo: fc.constant(0),
        artefact: fc.constant(""),
      }),
      { minLength: 12, maxLength: 20 },
    );
    fc.assert(
      fc.property(fc.oneof(lengths, sizes.map(plainly)), (all) => {
        const { grid, fill } = scan(all, 3, 12, 8);
        const phis = new Float64Array(grid.count);
        const values = Float64Array.from(all, (length) => length.value);
        fill(values, phis);
        for (const [k, got] of phis.entries()) {
          if (got === -Infinity) continue;
          const q = 1 / (grid.from + k * grid.step);
          expect(Math.abs(got - phi(all, q))).toBeLessThan(1e-9);
        }
      }),
      { numRuns: 40 },
    );
  });

  test("has its highest peak at least as high as any unit of the range that one tries", () => {
    fc.assert(
      fc.property(sizes, fc.double({ min: 3, max: 5, noNaN: true }), (x, q) => {
        const [first, second] = peaksOf(plainly(x), 3, 5);
        const highest = highestPeak(plainly(x), 3, 5);
        const grain = 0.02 * Math.sqrt(2 * x.length);
        const top = first?.phi ?? -Infinity;
        expect(top).toBeGreaterThanOrEqual(phi(plainly(x), q) - grain);
        expect(highest?.phi).toBeGreaterThanOrEqual(top - grain);
        // Of peaks as good as alike the grid may show another higher.
        if (second === undefined || second.phi < top - grain)
          expect(highest?.q).toBeCloseTo(first?.q ?? Number.NaN, 6);
      }),
      // A case that fails has thousands of peaks: to make it smaller would take minutes.
      { numRuns: 50, endOnFailure: true },
    );
  });

  test("weakens a length by its error between not at all and wholly", () => {
    fc.assert(
      fc.property(size, fc.double({ min: 0, max: 9, noNaN: true }), trial, (value, error, q) => {
        for (const [sd, width] of [
          [error, 0],
          [0, error],
        ] as const) {
          const rho = attenuation({ ...plain(value), sd, width }, q);
          expect(rho).toBeGreaterThanOrEqual(0);
          expect(rho).toBeLessThanOrEqual(1);
        }
      }),
    );
  });
});

describe("a unit given beforehand", () => {
  test("leaves residuals whose lumped variance is a share of the largest possible", () => {
    fc.assert(
      fc.property(sizes, fc.double({ min: 1, max: 10, noNaN: true }), (x, q) => {
        const { ratio, n, residuals } = lumpedVariance(x, q);
        expect(ratio).toBeGreaterThanOrEqual(0);
        expect(ratio).toBeLessThanOrEqual(1 + 1e-9);
        for (const [i, value] of x.entries()) {
          expect((n[i] ?? 0) * q + (residuals[i] ?? 0)).toBeCloseTo(value, 9);
        }
      }),
    );
  });

  test("has tails that fall as the statistic rises, and halves at its middle", () => {
    for (const n of [3, 4, 7, 20, 100]) {
      const even = Array.from({ length: n }, (_, i) => 10 + i / n);
      expect(vTest(even, 1).exact).toBeCloseTo(0.5, 6);
      const ps = [0.2, 0.5, 0.9, 1.3].map((x) => squaresBelow(n, (x * n) / 3));
      expect([...ps].sort((a, b) => a - b)).toEqual(ps);
    }
  });

  // The volumes by hand: an interval, a quarter disc and an eighth of a ball cut by the unit cube.
  test("knows the volumes of a ball in a cube", () => {
    expect(squaresBelow(1, 0.25)).toBeCloseTo(0.5, 12);
    expect(squaresBelow(2, 1)).toBeCloseTo(Math.PI / 4, 12);
    expect(squaresBelow(3, 1)).toBeCloseTo(Math.PI / 6, 12);
    // Three caps of height sqrt(x) - 1 stick out, one half of each on the positive side of the other axes.
    const radius = Math.sqrt(1.2);
    const cap = (Math.PI * (radius - 1) ** 2 * (2 * radius + 1)) / 3;
    expect(squaresBelow(3, 1.2)).toBeCloseTo((Math.PI * radius ** 3) / 6 - (3 * cap) / 4, 7);
    expect(squaresBelow(9, 9)).toBe(1);
  });

  test("counts fitting items as all outcomes written out do", () => {
    const chances = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(chances, fc.nat(8), (all, m) => {
        let total = 0;
        for (let outcome = 0; outcome < 2 ** all.length; outcome += 1) {
          const hits = all.map((_, i) => (outcome >> i) % 2 === 1);
          if (hits.filter(Boolean).length < m) continue;
          total += all.reduce((p, chance, i) => p * (hits[i] ? chance : 1 - chance), 1);
        }
        expect(atLeast(m, all)).toBeCloseTo(total, 9);
      }),
    );
  });
});

describe("a search", () => {
  const search = (seed: number, error: number): number => {
    const random = randomFrom(seed);
    const x = Array.from({ length: 20 }, () => 5 * (3 + random.below(9)) + error * (random.uniform() - 0.5));
    const found = searchUnit(plainly(x), 2.6, 9);
    if (isRefusal(found)) throw new Error(inEnglish(found.message));
    const trialOf = { lengths: plainly(x), qMin: 2.6, qMax: 9, peak: found.best, draws: 199 };
    return significance(trialOf, "kde", random, () => undefined).p;
  };
  const share = (error: number): number =>
    Array.from({ length: 60 }, (_, seed) => search(seed, error)).filter((p) => p <= 0.05).length / 60;

  test("finds a unit that is there, and seldom one that is not", () => {
    expect(share(2)).toBeGreaterThan(0.9);
    expect(share(10)).toBeLessThan(0.2);
  });
});

const lengthsIn = (texts: readonly number[], unitSize: number): readonly Measured[] =>
  texts.map((value, i) => ({
    id: `m-${i}`,
    artefact: `a-${i % 4}`,
    dimension: "side",
    quantity: {
      text: String(value),
      kind: "length",
      form: "value",
      unit: unitSize === 1 ? "m" : "cm",
      unitSize,
      value: value * unitSize,
      low: value * unitSize,
      high: value * unitSize,
      u: 0,
      digit: 0,
      shared: [],
    },
    state: "complete",
    source: null,
  }));

const settingsIn = (unitSize: number): Settings => {
  const end = (value: number): Settings[string] => {
    const [measured] = lengthsIn([value], unitSize);
    if (!measured) throw new Error("no quantity");
    return { kind: "quantity", value: measured.quantity };
  };
  return { low: end(2), high: end(9), draws: { kind: "number", value: 99 } };
};

describe("the plug-in", () => {
  const run = (inputs: Inputs, settings: Settings, looks = 1): Computation => {
    const outcome = unitFit.compute(inputs, settings, {
      random: randomFrom(5),
      report: () => undefined,
      looks,
    });
    if (isRefusal(outcome)) throw new Error(inEnglish(outcome.message));
    return outcome;
  };
  const whole = fc.array(fc.integer({ min: 10, max: 90 }), { minLength: 10, maxLength: 15 });

  test("gives the same bytes for the same inputs, and the same p in centimetres as in metres", () => {
    fc.assert(
      fc.property(whole, (values) => {
        const inMetres = run({ values: lengthsIn(values, 1) }, settingsIn(1));
        expect(JSON.stringify(run({ values: lengthsIn(values, 1) }, settingsIn(1)))).toBe(
          JSON.stringify(inMetres),
        );
        const inCentimetres = run({ values: lengthsIn(values, 0.01) }, settingsIn(0.01));
        expect(inCentimetres.numbers["phi"]?.value).toBeCloseTo(
          inMetres.numbers["phi"]?.value ?? Number.NaN,
          6,
        );
        expect(inCentimetres.numbers["p"]?.value).toBeCloseTo(inMetres.numbers["p"]?.value ?? Number.NaN, 1);
      }),
      { numRuns: 8 },
    );
  });

  test("makes p no smaller for looks, and never 0", () => {
    fc.assert(
      fc.property(whole, fc.integer({ min: 1, max: 40 }), (values, looks) => {
        const unit = { kind: "unit", value: { name: "span", kind: "length", size: 7, u: 0.1 } } as const;
        const { numbers } = run({ values: lengthsIn(values, 1) }, { unit }, looks);
        const p = numbers["p"]?.value ?? 0;
        expect(p).toBeGreaterThan(0);
        expect(numbers["p-adjusted"]?.value).toBe(Math.min(1, p * looks));
      }),
      { numRuns: 25 },
    );
  });
});
