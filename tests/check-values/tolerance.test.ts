import { describe, expect, test } from "vitest";
import { casesOf } from "./case-file.ts";
import type { Case, Fields } from "./case.ts";
import { differences } from "./compare.ts";
import { formulaValue } from "./formula.ts";
import { isPass, verdictOn } from "./runner.ts";

const caseWith = (expected: Fields, tolerance: Fields, input: unknown = {}): Case => ({
  id: "x",
  method: "m",
  input,
  expected,
  tolerance,
});
const paths = (one: Case, got: unknown) => differences(one, got).map(({ path }) => path);

describe("numbers", () => {
  test("`abs` and `rel` hold for every number, at any depth", () => {
    const one = caseWith({ a: 100, b: { c: [1, 2] } }, { rel: 0.01 });
    expect(paths(one, { a: 100.9, b: { c: [1.009, 2.1] } })).toEqual(["b.c[1]"]);
    expect(paths(caseWith({ a: 100 }, { abs: 0.5 }), { a: 100.6 })).toEqual(["a"]);
    expect(paths(caseWith({ a: 3 }, { abs: 0 }), { a: 3 })).toEqual([]);
    expect(paths(caseWith({ a: 3 }, { abs: 0 }), { a: 3.0000001 })).toEqual(["a"]);
  });

  test("a field's own tolerance goes before the general one, and before that of the field around it", () => {
    const one = caseWith({ q: 1, residuals: [1, 1], se: 1 }, { rel: 1e-9, q_rel: 0.1, residuals_abs: 0.2 });
    expect(paths(one, { q: 1.05, residuals: [1.15, 1.25], se: 1.0001 })).toEqual(["residuals[1]", "se"]);
  });

  test("of an absolute and a relative tolerance the wider counts", () => {
    const one = caseWith({ p_exact: 1e-6 }, { p_exact_rel: 0.02, p_exact_abs: 2e-6 });
    expect(paths(one, { p_exact: 2.9e-6 })).toEqual([]);
    expect(paths(one, { p_exact: 3.1e-6 })).toEqual(["p_exact"]);
  });

  test("`p` stands for every p, `stat` for what is left, and neither for words that begin alike", () => {
    const one = caseWith(
      { mean: 10, period: 10, pRegular: 0.5, p_exact: 0.5 },
      { stat_rel: 1e-9, p_abs: 0.1 },
    );
    expect(paths(one, { mean: 10, period: 10.05, pRegular: 0.55, p_exact: 0.55 })).toEqual(["period"]);
  });

  test("a number that is not there or is a text never passes", () => {
    const one = caseWith({ a: 0, b: 0, c: 0 }, { abs: 5 });
    expect(paths(one, { a: NaN, b: "0" })).toEqual(["a", "b", "c"]);
  });

  test("exact leaves the last digits to rounding and no more", () => {
    const one = caseWith({ phi: 2.449489742783178, n: 4096 }, { exact: true });
    expect(paths(one, { phi: 2.4494897427831783, n: 4096 })).toEqual([]);
    expect(paths(one, { phi: 2.44948974, n: 4097 })).toEqual(["phi", "n"]);
  });
});

describe("formulas", () => {
  const se = 0.0011581760281769928;
  const simulated = { nulls: { kde: { p: 0.0136, se } } };

  test("the three forms of the published file", () => {
    const names = (name: string) => ({ se, p: 0.25, B: 10_000 })[name];
    expect(formulaValue("max(4*se*sqrt(2), 0.004)", names)).toBeCloseTo(4 * se * Math.SQRT2, 15);
    expect(formulaValue("4*sqrt(p(1-p)/B)+0.002", names)).toBeCloseTo(4 * 0.00433012702 + 0.002, 10);
    expect(formulaValue("4*sqrt(p(1-p)/B)+1e-4", names)).toBeCloseTo(4 * 0.00433012702 + 0.0001, 10);
  });

  test("`se` is that of the case, and follows the p that was got", () => {
    const one = caseWith(simulated, { p_abs: "max(4*se*sqrt(2), 0.004)" }, { B: 10_000 });
    const result = (p: number, error: number) => ({ nulls: { kde: { p, se: error } } });
    const errorOf = (p: number) => Math.sqrt((p * (1 - p)) / 10_000);
    expect(paths(one, result(0.02, errorOf(0.02)))).toEqual([]);
    expect(paths(one, result(0.0203, errorOf(0.0203)))).toEqual(["nulls.kde.p"]);
    expect(paths(one, result(0.02, 0.01))).toEqual(["nulls.kde.se"]);
  });

  test("a simulated p may use the tolerance for simulation, another may not", () => {
    const one = caseWith({ p_exact: 0.5 }, { p_exact_abs: 2e-5, p_exact_mc_abs: "4*sqrt(p(1-p)/B)+1e-4" });
    expect(paths(one, { p_exact: 0.51 })).toEqual(["p_exact"]);
    expect(paths(one, { p_exact: 0.51, B: 10_000 })).toEqual([]);
    expect(paths(one, { p_exact: 0.53, B: 10_000 })).toEqual(["p_exact"]);
  });

  test.each(["2*foo", "sqrt(2", "1 2", "", "0-1", "constructor(1)", "1/0"])("`%s` is a failure", (text) => {
    expect(() => formulaValue(text, () => undefined)).toThrow("formula");
    const one = caseWith({ a: 1 }, { a_abs: text });
    expect(isPass(verdictOn(one, { m: () => ({ a: 1 }) }))).toBe(false);
  });
});

describe("what is not a number", () => {
  test("lists have the length expected, objects may hold more", () => {
    const one = caseWith({ list: [1], flag: true, word: "a" }, { abs: 0 });
    expect(paths(one, { list: [1], flag: true, word: "a", more: 1 })).toEqual([]);
    expect(paths(one, { list: [1, 2], flag: 1, word: "b" })).toEqual(["list", "flag", "word"]);
  });

  test("null is no value or none that is finite; below a stated floor also a number", () => {
    const plain = caseWith({ a: null }, { abs: 1 });
    expect(paths(plain, { a: Infinity })).toEqual([]);
    expect(paths(plain, {})).toEqual([]);
    expect(paths(plain, { a: 1e-12 })).toEqual(["a"]);
    const floored = caseWith({ p_exact: null, n: null }, { p_exact_floor: "below 1e-9 print p < 1e-9" });
    expect(paths(floored, { p_exact: 1e-10, n: 1e-10 })).toEqual(["n"]);
    expect(paths(floored, { p_exact: 1e-8 })).toEqual(["p_exact"]);
  });

  test("an infinite number is written as a text", () => {
    const one = caseWith({ odds: "Inf", ci: [1, "Infinity"] }, { rel: 1e-9 });
    expect(paths(one, { odds: Infinity, ci: [1, Infinity] })).toEqual([]);
    expect(paths(one, { odds: 1e300, ci: [1, -Infinity] })).toEqual(["odds", "ci[1]"]);
  });

  test("the sets of the argument files are compared as sets", () => {
    const file = [
      {
        id: "x",
        arguments: ["a", "b"],
        attacks: [
          ["a", "b"],
          ["b", "a"],
        ],
        preferred: [["b"], ["a"]],
      },
    ];
    expect(casesOf(JSON.stringify({ cases: file })).map((one) => isPass(verdictOn(one)))).toEqual([true]);
    const wrong = [{ ...file[0], preferred: [["b"], ["b"]] }];
    expect(casesOf(JSON.stringify(wrong)).map((one) => isPass(verdictOn(one)))).toEqual([false]);
  });
});
