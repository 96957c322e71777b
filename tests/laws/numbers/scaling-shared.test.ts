import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { scaling } from "../../../plugins/scaling/index.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { isRefusal, randomFrom } from "../../../src/plugin.ts";
import type { Computation, Measured, SharedError } from "../../../src/plugin.ts";

const size = (id: string, value: number, u: number, shared: readonly SharedError[] = []): Measured => ({
  id,
  artefact: id,
  dimension: id,
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

function computed(larger: readonly Measured[], smaller: readonly Measured[]): Computation {
  const tools = { random: randomFrom(1), report: () => undefined, looks: 1 };
  const made = scaling.compute({ larger, smaller }, {}, tools);
  if (isRefusal(made)) throw new Error(inEnglish(made.message));
  return made;
}

const by = (cause: string, relative: number): readonly SharedError[] => [{ with: cause, relative }];

const off = fc.double({ min: 0.9, max: 1.1, noNaN: true });
const share = fc.double({ min: 0.001, max: 0.1, noNaN: true });

describe("ratios of which only some share an error", () => {
  // Of two normal numbers Q is the square of their difference over its variance.
  test("differ by it too: of two, Q is their squared difference over its variance", () => {
    fc.assert(
      fc.property(off, share, share, (times, one, other) => {
        const larger = [size("a", 20 * times, 0.1, by("span", one)), size("b", 40, 0.1, by("rod", other))];
        const smaller = [size("c", 10, 0.1), size("d", 20, 0.1)];
        const { numbers } = computed(larger, smaller);
        const own = (0.1 / (20 * times)) ** 2 + 0.01 ** 2 + 0.0025 ** 2 + 0.005 ** 2;
        const variance = own + one ** 2 + other ** 2;
        expect(numbers["heterogeneity"]?.value).toBeCloseTo(Math.log(times) ** 2 / variance, 8);
        expect(numbers["detectable"]?.value).toBeCloseTo(Math.expm1(2.8 * Math.sqrt(variance)), 8);
      }),
    );
  });

  test("are tested as if nothing were shared where all of them share it alike", () => {
    fc.assert(
      fc.property(off, share, (times, relative) => {
        const larger = (all: readonly SharedError[]) =>
          [20 * times, 40, 60].map((value, at) => size(`l${at}`, value, 0.1, all));
        const smaller = [10, 20, 30].map((value, at) => size(`s${at}`, value, 0.1));
        const names = ["heterogeneity", "p", "detectable"] as const;
        const [alone, shared] = [[], by("span", relative)].map((all) => computed(larger(all), smaller));
        for (const name of names)
          expect(shared?.numbers[name]?.value).toBeCloseTo(alone?.numbers[name]?.value ?? Number.NaN, 9);
      }),
    );
  });

  test("of one true factor are rejected at 5 % in about 5 of 100 draws", () => {
    const { normal } = randomFrom(2024);
    const draws = 4000;
    let rejected = 0;
    for (let draw = 0; draw < draws; draw += 1) {
      const span = 0.04 * normal();
      const larger = [20, 40, 60, 80].map((value, at) => {
        const inSpans = at < 2;
        const drawn = value * Math.exp(inSpans ? span : 0) + 0.2 * normal();
        return size(`l${at}`, drawn, 0.2, inSpans ? by("span", 0.04) : []);
      });
      const smaller = [10, 20, 30, 40].map((value, at) => size(`s${at}`, value + 0.1 * normal(), 0.1));
      if ((computed(larger, smaller).numbers["p"]?.value ?? 1) < 0.05) rejected += 1;
    }
    expect(Math.abs(rejected / draws - 0.05)).toBeLessThan(4 * Math.sqrt((0.05 * 0.95) / draws));
  });
});
