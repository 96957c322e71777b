import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { allometry } from "../../../plugins/scaling/allometry.ts";
import { oneFactor, toleranceNeeded } from "../../../plugins/scaling/one-factor.ts";
import { predictAllometric, predictIsometric } from "../../../plugins/scaling/prediction.ts";
import { ratioOf, ratioOfIntervals } from "../../../plugins/scaling/ratio.ts";
import { isRefusal, linearRegression, randomFrom } from "../../../src/plugin.ts";
import type { Refusal } from "../../../src/plugin.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";

const size = fc.double({ min: 1, max: 500, noNaN: true });
const error = fc.double({ min: 0.01, max: 0.4, noNaN: true });
const pair = fc.record({ a: size, ua: error, b: size, ub: error });
const pairs = fc.array(pair, { minLength: 2, maxLength: 8 });

function certain<T extends object>(outcome: T | Refusal): T {
  if (isRefusal(outcome)) throw new Error(inEnglish(outcome.message));
  return outcome;
}

describe("a ratio", () => {
  test("of b to a is the inverse of a to b, its interval too", () => {
    fc.assert(
      fc.property(pair, ({ a, ua, b, ub }) => {
        const one = certain(ratioOf(a, ua, b, ub));
        const other = certain(ratioOf(b, ub, a, ua));
        expect(one.ratio * other.ratio).toBeCloseTo(1, 9);
        expect(one.byLog[0] * other.byLog[1]).toBeCloseTo(1, 9);
        if (one.fieller && other.fieller) expect(one.fieller[0] * other.fieller[1]).toBeCloseTo(1, 6);
      }),
    );
  });

  test("of ranges holds the ratio of any two values in them", () => {
    fc.assert(
      fc.property(size, size, size, size, (a, b, c, d) => {
        const [first, second] = [
          [Math.min(a, b), Math.max(a, b)],
          [Math.min(c, d), Math.max(c, d)],
        ] as const;
        const { ratio } = certain(ratioOfIntervals(first, second));
        expect(ratio[0]).toBeLessThanOrEqual(a / c);
        expect(ratio[1]).toBeGreaterThanOrEqual(a / c);
        expect(certain(ratioOfIntervals([a, null], [c, null])).says).toBe("undecided");
        expect(certain(ratioOfIntervals([a, null], second)).says).toBe("at least");
      }),
    );
  });

  test("refuses what is not above 0", () => {
    for (const b of [0, -1, Number.NaN]) expect(isRefusal(ratioOf(10, 1, b, 0.1))).toBe(true);
  });
});

describe("one factor", () => {
  test("turns into its inverse when the things change places, with the same p", () => {
    fc.assert(
      fc.property(pairs, (all) => {
        const one = certain(oneFactor(all));
        const other = certain(oneFactor(all.map(({ a, ua, b, ub }) => ({ a: b, ua: ub, b: a, ub: ua }))));
        expect(one.k * other.k).toBeCloseTo(1, 9);
        expect(one.p ?? -1).toBeCloseTo(other.p ?? -2, 9);
      }),
    );
  });

  test("is met exactly by an exact copy, and a tolerance never makes p smaller", () => {
    fc.assert(
      fc.property(pairs, fc.double({ min: 0.2, max: 5, noNaN: true }), (all, k) => {
        const copy = certain(oneFactor(all.map((one) => ({ ...one, a: one.b * k }))));
        expect(copy.k).toBeCloseTo(k, 9);
        expect(copy.p).toBeCloseTo(1, 9);
        const strict = certain(oneFactor(all));
        const lenient = certain(oneFactor(all, 0.05));
        expect(lenient.p ?? 0).toBeGreaterThanOrEqual((strict.p ?? 0) - 1e-12);
        expect(lenient.detectable ?? 0).toBeGreaterThan(strict.detectable ?? 0);
      }),
    );
  });

  test("is no longer rejected with the tolerance that is needed, and is with a little less", () => {
    let needed = 0;
    fc.assert(
      fc.property(pairs, fc.constantFrom(0, 0.02), (all, given) => {
        const share = toleranceNeeded(all, given);
        expect(share === null).toBe((certain(oneFactor(all, given)).p ?? 1) >= 0.05);
        if (share === null) return;
        needed += 1;
        expect(share).toBeGreaterThanOrEqual(given);
        expect(certain(oneFactor(all, share)).p).toBeCloseTo(0.05, 6);
        expect(certain(oneFactor(all, 0.99 * share)).p).toBeLessThan(0.05);
      }),
    );
    expect(needed).toBeGreaterThan(20);
  });

  test("rejects a true factor about as often as the level says", () => {
    const random = randomFrom(11);
    let rejected = 0;
    for (let k = 0; k < 400; k += 1) {
      const all = [40, 25, 12].map((b) => ({
        a: 1.5 * b + 0.3 * random.normal(),
        ua: 0.3,
        b: b + 0.2 * random.normal(),
        ub: 0.2,
      }));
      if ((certain(oneFactor(all)).p ?? 1) < 0.05) rejected += 1;
    }
    expect(rejected).toBeGreaterThan(5);
    expect(rejected).toBeLessThan(45);
  });
});

describe("allometry", () => {
  const points = fc
    .array(fc.tuple(size, fc.double({ min: -0.4, max: 0.4, noNaN: true })), { minLength: 4, maxLength: 20 })
    .filter((all) => new Set(all.map(([x]) => x)).size > 3)
    .map((all) => ({ x: all.map(([x]) => x), y: all.map(([x, e]) => x ** 1.2 * Math.exp(e)) }));

  test("by standardised and by major axes, has inverse slopes when the sizes change places", () => {
    fc.assert(
      fc.property(points, ({ x, y }) => {
        const one = certain(allometry(x, y));
        const other = certain(allometry(y, x));
        expect(one.sma.slope * other.sma.slope).toBeCloseTo(1, 6);
        expect(one.ma.slope * other.ma.slope).toBeCloseTo(1, 6);
        expect(one.sma.p).toBeCloseTo(one.ma.p, 6);
      }),
    );
  });

  test("finds the exponent of exact powers, and foretells from it", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 3, noNaN: true }), size, (power, x0) => {
        const x = [2, 3, 5, 8, 13];
        const y = x.map((value) => 2 * value ** power);
        expect(certain(allometry(x, y)).ols.slope).toBeCloseTo(power, 9);
        const [foretold] = certain(predictAllometric(x, y, [x0]));
        expect((foretold?.y0 ?? 0) / (2 * x0 ** power)).toBeCloseTo(1, 6);
        expect(foretold?.extrapolation).toBe(x0 < 2 || x0 > 13);
        const scaled = certain(
          predictIsometric(
            x,
            x.map((value) => 3 * value),
            x0,
          ),
        );
        expect(scaled.y0).toBeCloseTo(3 * x0, 6);
      }),
    );
  });

  test("refuses two pairs, and sizes that do not vary", () => {
    expect(allometry([3, 4], [5, 6])).toMatchObject({ refused: "too-few", details: { needed: 3 } });
    expect(allometry([3, 3, 3], [5, 6, 7])).toMatchObject({ refused: "no-variation" });
    expect(
      linearRegression(
        [
          [1, 2, 3, 4],
          [2, 4, 6, 8],
        ],
        [1, 2, 3, 5],
      ),
    ).toBeNull();
  });
});
