import * as fc from "fast-check";
import { expect, test } from "vitest";
import { allometry } from "../../plugins/scaling/allometry.ts";
import { oneFactor } from "../../plugins/scaling/one-factor.ts";
import { predictIsometric } from "../../plugins/scaling/prediction.ts";
import { ratioOf, ratioOfIntervals } from "../../plugins/scaling/ratio.ts";
import { isRefusal, linearRegression } from "../../src/plugin.ts";
import type { Refusal } from "../../src/plugin.ts";

const size = fc.double({ min: 1, max: 100, noNaN: true });
const error = fc.double({ min: 0.01, max: 0.2, noNaN: true });
const pair = fc.record({ a: size, ua: error, b: size, ub: error });
const pairs = fc.array(pair, { minLength: 2, maxLength: 10 });
const points = fc.array(fc.tuple(size, size), { minLength: 4, maxLength: 15 });

function sound<T extends object>(outcome: T | Refusal): T {
  if (isRefusal(outcome)) throw new Error(outcome.message);
  return outcome;
}

test("the ratio turned round is the inverse, its interval included", () => {
  fc.assert(
    fc.property(pair, ({ a, ua, b, ub }) => {
      const [there, back] = [sound(ratioOf(a, ua, b, ub)), sound(ratioOf(b, ub, a, ua))];
      expect(there.ratio * back.ratio).toBeCloseTo(1, 12);
      expect(there.byLog[0] * back.byLog[1]).toBeCloseTo(1, 12);
      expect(there.byLog[1] * back.byLog[0]).toBeCloseTo(1, 12);
    }),
  );
});

test("Fieller's interval holds the ratio", () => {
  fc.assert(
    fc.property(pair, ({ a, ua, b, ub }) => {
      const { ratio, fieller } = sound(ratioOf(a, ua, b, ub));
      expect(fieller?.[0]).toBeLessThanOrEqual(ratio);
      expect(fieller?.[1]).toBeGreaterThanOrEqual(ratio);
    }),
  );
});

test("the ratio of two intervals holds the ratio of any two sizes in them", () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(size, size, size, size, share, share, (a, wide, b, broad, s, t) => {
      const { ratio, says } = sound(ratioOfIntervals([a, a + wide], [b, b + broad]));
      const one = (a + s * wide) / (b + t * broad);
      expect(says).toBe("within");
      expect(ratio[0]).toBeLessThanOrEqual(one + 1e-9);
      expect(ratio[1]).toBeGreaterThanOrEqual(one - 1e-9);
    }),
  );
});

test("one factor: turned round it is the inverse, and the test stays the same", () => {
  fc.assert(
    fc.property(pairs, (all) => {
      const there = sound(oneFactor(all));
      const back = sound(oneFactor(all.map(({ a, ua, b, ub }) => ({ a: b, ua: ub, b: a, ub: ua }))));
      expect(there.k * back.k).toBeCloseTo(1, 9);
      expect(back.heterogeneity / there.heterogeneity).toBeCloseTo(1, 6);
      expect(there.low).toBeLessThan(there.k);
      expect(there.high).toBeGreaterThan(there.k);
    }),
  );
});

test("one factor: exact copies give their factor without heterogeneity", () => {
  fc.assert(
    fc.property(
      fc.array(size, { minLength: 2, maxLength: 10 }),
      fc.double({ min: 0.2, max: 5, noNaN: true }),
      (b, k) => {
        const fit = sound(oneFactor(b.map((value) => ({ a: k * value, ua: 0.1, b: value, ub: 0.1 }))));
        expect(fit.k).toBeCloseTo(k, 9);
        expect(fit.heterogeneity).toBeCloseTo(0, 9);
        expect(fit.p).toBeCloseTo(1, 6);
      },
    ),
  );
});

test("one factor: a larger tolerance accepts more, and detects less", () => {
  fc.assert(
    fc.property(pairs, (all) => {
      const [strict, lenient] = [sound(oneFactor(all, 0.01)), sound(oneFactor(all, 0.05))];
      expect(lenient.heterogeneity).toBeLessThanOrEqual(strict.heterogeneity + 1e-9);
      expect(lenient.detectable).toBeGreaterThan(strict.detectable ?? Infinity);
    }),
  );
});

test("the standardised axis turned round is the inverse slope", () => {
  fc.assert(
    fc.property(points, (all) => {
      const [x, y] = [all.map(([one]) => one), all.map(([, other]) => other)];
      fc.pre(new Set(x).size > 2 && new Set(y).size > 2);
      const [there, back] = [sound(allometry(x, y)), sound(allometry(y, x))];
      fc.pre(Math.abs(there.r) > 1e-6);
      expect(there.sma.slope * back.sma.slope).toBeCloseTo(1, 6);
      expect(back.r).toBeCloseTo(there.r, 9);
    }),
  );
});

test("exact copies foretell their missing dimension", () => {
  fc.assert(
    fc.property(fc.array(size, { minLength: 3, maxLength: 10 }), size, size, (x, k, x0) => {
      const { y0, low, high } = sound(
        predictIsometric(
          x,
          x.map((value) => k * value),
          x0,
        ),
      );
      expect(y0 / (k * x0)).toBeCloseTo(1, 9);
      expect(low).toBeLessThanOrEqual(y0 * (1 + 1e-9));
      expect(high).toBeGreaterThanOrEqual(y0 * (1 - 1e-9));
    }),
  );
});

test("least squares: what is left over is at right angles to the columns", () => {
  fc.assert(
    fc.property(points, (all) => {
      const [x, y] = [all.map(([one]) => one), all.map(([, other]) => other)];
      fc.pre(Math.max(...x) - Math.min(...x) > 1);
      const fit = linearRegression([x], y);
      const [intercept = 0, slope = 0] = fit?.coefficients ?? [];
      const left = all.map(([one, other]) => other - intercept - slope * one);
      expect(left.reduce((sum, e) => sum + e, 0)).toBeCloseTo(0, 6);
      expect(left.reduce((sum, e, i) => sum + e * (x[i] ?? 0), 0)).toBeCloseTo(0, 4);
    }),
  );
});
