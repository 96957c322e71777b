import fc from "fast-check";
import { expect, test } from "vitest";
import { scaling } from "../../../plugins/scaling/index.ts";
import { claimedIn } from "../../../plugins/scaling/rows.ts";
import { isRefusal, randomFrom } from "../../../src/plugin.ts";
import type { Measured, SharedError } from "../../../src/plugin.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";

const size = (id: string, value: number, u: number, shared: readonly SharedError[] = []): Measured => ({
  id,
  artefact: id,
  dimension: "width",
  state: "complete",
  source: null,
  quantity: {
    text: `${value} cm`,
    kind: "length",
    form: "value",
    unit: "cm",
    unitSize: 0.01,
    value: value / 100,
    low: (value - u) / 100,
    high: (value + u) / 100,
    u: u / 100,
    digit: 0.001,
    shared,
  },
});

/** Whether each of two ratios meets a factor that somebody names. */
function meets(
  factor: number,
  larger: readonly Measured[],
  smaller: readonly Measured[],
): readonly boolean[] {
  const made = scaling.compute(
    { larger, smaller },
    { claimed: { kind: "number", value: factor } },
    { random: randomFrom(1), report: () => undefined, looks: 1 },
  );
  if (isRefusal(made)) throw new Error(inEnglish(made.message));
  return claimedIn(made)?.meets ?? [];
}

const tape = (relative: number): readonly SharedError[] => [{ with: "tape", relative }];

test("a factor that is claimed meets a ratio within all its errors, those of one side among them", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.9, max: 1.1, noNaN: true }),
      fc.double({ min: 0.001, max: 0.05, noNaN: true }),
      (off, relative) => {
        const shared = tape(relative);
        const two = (all: readonly SharedError[]) => [size("a", 20, 0.1, all), size("b", 40, 0.1, all)];
        const small = (all: readonly SharedError[]) => [size("c", 10, 0.1, all), size("d", 20, 0.1, all)];
        const factor = 2 * off;
        const expected = (one: number, shares: number) =>
          [20, 40].map((a) => Math.abs(Math.log(off)) <= one * Math.hypot(0.1 / a, 0.1 / (a / 2), shares));
        expect(meets(factor, two([]), small([]))).toEqual(expected(2, 0));
        expect(meets(factor, two(shared), small([]))).toEqual(expected(2, relative));
        expect(meets(factor, two([]), small(shared))).toEqual(expected(2, relative));
        // What both sides share is no matter of their ratio.
        expect(meets(factor, two(shared), small(shared))).toEqual(expected(2, 0));
      },
    ),
  );
});
