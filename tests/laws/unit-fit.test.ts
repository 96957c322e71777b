import * as fc from "fast-check";
import { expect, test } from "vitest";
import { estimateUnit } from "../../plugins/unit-fit/estimate.ts";
import { lumpedVariance, squaresBelow, vTest } from "../../plugins/unit-fit/given-unit.ts";
import { atLeast } from "../../plugins/unit-fit/item-fits.ts";
import { attenuation, plain } from "../../plugins/unit-fit/lengths.ts";
import type { Length } from "../../plugins/unit-fit/lengths.ts";
import { peaksOf, phi, scan } from "../../plugins/unit-fit/quantogram.ts";
import { significance } from "../../plugins/unit-fit/significance.ts";
import { randomFrom } from "../../src/plugin.ts";

const size = fc.double({ min: 1, max: 200, noNaN: true });
const sizes = fc.array(size, { minLength: 6, maxLength: 25 });
const unit = fc.double({ min: 0.5, max: 30, noNaN: true });

const length = fc
  .record({ value: size, sd: fc.double({ min: 0, max: 1, noNaN: true }), ranged: fc.boolean() })
  .map(({ value, sd, ranged }): Length => ({
    ...plain(value),
    sd: ranged ? 0 : sd,
    width: ranged ? sd : 0,
  }));

test("the fit does not depend on the unit of measurement", () => {
  fc.assert(
    fc.property(sizes, unit, fc.double({ min: 0.01, max: 100, noNaN: true }), (values, q, factor) => {
      const one = values.map((value) => plain(value));
      const other = values.map((value) => plain(value * factor));
      expect(phi(other, q * factor)).toBeCloseTo(phi(one, q), 9);
    }),
  );
});

test("the fit is at most the square root of twice the number, reached by whole multiples alone", () => {
  fc.assert(
    fc.property(sizes, unit, (values, q) => {
      const most = Math.sqrt(2 * values.length);
      expect(
        Math.abs(
          phi(
            values.map((value) => plain(value)),
            q,
          ),
        ),
      ).toBeLessThanOrEqual(most + 1e-12);
      const multiples = values.map((value) => plain(Math.ceil(value) * q));
      expect(phi(multiples, q)).toBeCloseTo(most, 9);
    }),
  );
});

test("an error only ever weakens a phase, and lengths without errors count in full", () => {
  fc.assert(
    fc.property(length, unit, (one, q) => {
      expect(attenuation(one, q)).toBeGreaterThanOrEqual(0);
      expect(attenuation(one, q)).toBeLessThanOrEqual(1);
      expect(attenuation(plain(one.value), q)).toBe(1);
    }),
  );
});

test("the quick scan agrees with the formula at each of its units, with and without weights", () => {
  fc.assert(
    fc.property(fc.array(length, { minLength: 8, maxLength: 20 }), (lengths) => {
      const { grid, fill } = scan(lengths, 3, 20, 8);
      const phis = new Float64Array(grid.count);
      fill(
        Float64Array.from(lengths, (one) => one.value),
        phis,
      );
      for (const [k, fast] of phis.entries()) {
        if (fast !== -Infinity)
          expect(Math.abs(fast - phi(lengths, 1 / (grid.from + k * grid.step)))).toBeLessThan(1e-8);
      }
    }),
    { numRuns: 30 },
  );
});

test("no unit of the range fits better than the best peak", () => {
  fc.assert(
    fc.property(sizes, fc.double({ min: 3, max: 20, noNaN: true }), (values, q) => {
      const lengths = values.map((value) => plain(value));
      const [best, ...rest] = peaksOf(lengths, 3, 20);
      expect(best?.phi).toBeGreaterThanOrEqual(phi(lengths, q) - 1e-9);
      for (const peak of rest) expect(peak.phi).toBeLessThanOrEqual((best?.phi ?? 0) + 1e-9);
    }),
    { numRuns: 50 },
  );
});

test("residuals put the lengths together again, and their ratio is 0 to 1 from half a unit on", () => {
  fc.assert(
    fc.property(sizes, unit, (values, q) => {
      const long = values.map((value) => value + q / 2);
      const { n, residuals, ratio, exact } = lumpedVariance(long, q);
      for (const [i, value] of long.entries())
        expect((n[i] ?? 0) * q + (residuals[i] ?? 0)).toBeCloseTo(value, 9);
      expect(ratio).toBeGreaterThanOrEqual(0);
      expect(ratio).toBeLessThanOrEqual(1 + 1e-9);
      expect(exact).toBeGreaterThanOrEqual(0);
      expect(exact).toBeLessThanOrEqual(1);
    }),
  );
});

test("the chance of a sum of squares grows with the sum", () => {
  const shares = fc.tuple(
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
  );
  fc.assert(
    fc.property(fc.integer({ min: 3, max: 30 }), shares, (n, [a, b]) => {
      const [low, high] = [Math.min(a, b) * n, Math.max(a, b) * n];
      expect(squaresBelow(n, low)).toBeLessThanOrEqual(squaresBelow(n, high) + 1e-8);
    }),
    { numRuns: 50 },
  );
});

test("the exact p of a unit given is a chance that falls as the fit rises", () => {
  fc.assert(
    fc.property(sizes, unit, unit, (values, q, other) => {
      const [one, two] = [vTest(values, q), vTest(values, other)];
      const [higher, lower] = one.phi >= two.phi ? [one, two] : [two, one];
      expect(higher.exact ?? 0).toBeLessThanOrEqual((lower.exact ?? 1e-9) + 1e-8);
    }),
    { numRuns: 10 },
  );
});

test("the estimate gives whole multiples back their unit", () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 3, maxLength: 20 }), unit, (n, q) => {
      const estimate = estimateUnit(
        n.map((multiple) => multiple * q),
        n,
      );
      expect(estimate.q).toBeCloseTo(q, 9);
      expect(estimate.sameFrom).toBeLessThan(q);
      expect(estimate.sameTo).toBeGreaterThan(q);
    }),
  );
});

test("the chance that so many fit anyhow falls with their number", () => {
  const chances = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 15 });
  fc.assert(
    fc.property(chances, (all) => {
      expect(atLeast(0, all)).toBeCloseTo(1, 9);
      for (let m = 1; m <= all.length; m++)
        expect(atLeast(m, all)).toBeLessThanOrEqual(atLeast(m - 1, all) + 1e-12);
      expect(atLeast(all.length, all)).toBeCloseTo(
        all.reduce((product, chance) => product * chance, 1),
        9,
      );
    }),
  );
});

test("a search drawn twice from one seed gives one p, which is never 0", () => {
  fc.assert(
    fc.property(sizes, fc.integer(), (values, seed) => {
      const lengths = values.map((value) => plain(value));
      const [peak] = peaksOf(lengths, 3, 20);
      if (!peak) throw new Error("no peak");
      const trial = { lengths, qMin: 3, qMax: 20, peak, draws: 50 };
      const first = significance(trial, "kde", randomFrom(seed), () => undefined);
      expect(significance(trial, "kde", randomFrom(seed), () => undefined)).toEqual(first);
      expect(first.p).toBeGreaterThanOrEqual(1 / 51);
      expect(first.p).toBeLessThanOrEqual(1);
    }),
    { numRuns: 20 },
  );
});
