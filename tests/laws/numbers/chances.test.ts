import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { chanceBetween } from "../../../plugins/clearance/fit/spread.ts";
import { together } from "../../../plugins/clearance/fit/together.ts";
import { formatP, formatProbability } from "../../../src/base/quantity/quantity-print.ts";
import { numbersText } from "../../../src/cli/print/numbers.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { numberPage } from "../../../src/show/numbers/number.ts";
import { percent } from "../../../src/show/plan/wording.ts";
import { sheetOf } from "../../../src/show/pages/sheet.ts";
import { corpus } from "../judging/standpoint-corpora.ts";
import { readUnder } from "../linking/supposed-model.ts";

/** The figure that a probability is printed as, and whether it is only a limit. */
function printedAs(p: number, digits: number): { readonly limit: string; readonly figure: number } {
  const [, limit = "", mantissa = "", power = "0"] =
    /^([<>]?) ?([\d.]+)(?: × 10(.*))?$/u.exec(formatProbability(p, digits)) ?? [];
  const exponent = [...power].map((sign) => ("⁰¹²³⁴⁵⁶⁷⁸⁹".includes(sign) ? "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(sign) : "-"));
  return { limit, figure: Number(mantissa) * 10 ** Number(power === "0" ? 0 : exponent.join("")) };
}

describe("a probability is printed", () => {
  const inside = fc.oneof(
    fc.double({ min: 0, max: 1, minExcluded: true, maxExcluded: true, noNaN: true }),
    fc.double({ min: -18, max: -0.1, noNaN: true }).map((power) => 10 ** power),
    fc.double({ min: -15, max: -0.1, noNaN: true }).map((power) => 1 - 10 ** power),
  );

  test("as what it is near to, and never as 0 or 1, which it is not", () => {
    fc.assert(
      fc.property(inside, fc.constantFrom(2, 4), (p, digits) => {
        const { limit, figure } = printedAs(p, digits);
        expect(figure).toBeGreaterThan(0);
        expect(figure).toBeLessThan(1);
        if (limit === "<") expect(p).toBeLessThanOrEqual(figure);
        else if (limit === ">") expect(p).toBeGreaterThan(figure);
        else expect(Math.abs(figure / p - 1)).toBeLessThan(0.051);
      }),
      { numRuns: 2000 },
    );
  });

  test.each([
    [0, "0", "p < 1 × 10⁻⁹"],
    [1e-12, "< 1 × 10⁻⁹", "p < 1 × 10⁻⁹"],
    [0.0123, "0.012", "p = 0.012"],
    [0.9949, "0.995", "p = 0.995"],
    [0.9972, "0.997", "p = 0.997"],
    [0.999, "0.999", "p = 0.999"],
    [0.99951, "> 0.999", "p > 0.999"],
    [1 - 1e-16, "> 0.999", "p > 0.999"],
    [1, "1", "p = 1"],
  ])("%s", (p, alone, said) => {
    expect(formatProbability(p)).toBe(alone);
    expect(formatP(p)).toBe(said);
  });
});

// Q of two ratios 2 and 4 is (ln 2)² over 2 · 2 · 10⁻⁸, above 10⁷: the chance of more is below what a double can hold.
test("the p of a test is never said to be 0, however small", () => {
  const thing = (id: string) => ({ id, name: `the ${id}` });
  const side = (of: string, dimension: string, value: string) => ({ of, dimension, value });
  const scale = (id: string) => ({
    id,
    plugin: "scaling",
    inputs: { larger: { of: "hall" }, smaller: { of: "hut" } },
    "bears-on": [{ claim: "same", disputes: { p: "< 0.01" } }],
  });
  const files = corpus({
    artefacts: [thing("hall"), thing("hut")],
    claims: [{ id: "same", text: "The hall is the hut enlarged." }],
    measurements: [
      side("hall", "width", "20.000 ± 0.002 m"),
      side("hut", "width", "10.000 ± 0.001 m"),
      side("hall", "length", "40.000 ± 0.004 m"),
      side("hut", "length", "10.000 ± 0.001 m"),
    ],
    derivations: [scale("scale"), scale("again")],
  });
  const memo = emptyMemo();
  const { model } = readUnder(files, plugins, memo);
  const page = numberPage(model, plugins, memo.compute, "scale");
  expect(page?.numbers.find(({ name }) => name === "p")?.value).toBe("< 1 × 10⁻⁹");
  expect(page?.looks.map(({ adjusted }) => adjusted)).toEqual(["< 1 × 10⁻⁹"]);
  expect(numbersText(model).join("\n")).not.toMatch(/ p +0$/mu);
  expect(JSON.stringify(sheetOf(model, [], model.files, "scale"))).toContain('"< 1 × 10⁻⁹"');
});

test("in per cent it is no hundred either, unless it is certain", () => {
  const said = [0.5, 0.999, 0.99991, 1 - 1e-12, 1].map(percent);
  expect(said).toEqual(["50\u00a0%", "99.9\u00a0%", "> 99.99\u00a0%", "> 99.99\u00a0%", "100\u00a0%"]);
});

describe("a chance to fit", () => {
  test("is certain or impossible only where no error could make it otherwise", () => {
    const between = (u: number, centre: number): number =>
      chanceBetween({ centre, widths: [0.1, 0], u }, 0, null);
    expect(between(0, 1)).toBe(1);
    expect(between(0, -1)).toBe(0);
    for (const centre of [1, 100]) {
      expect(between(1e-3, centre)).toBeLessThan(1);
      expect(between(1e-3, -centre)).toBeGreaterThan(0);
    }
    expect(chanceBetween({ centre: 0, widths: [0, 0], u: 1 }, null, null)).toBe(1);
    expect(together([1 - 2 ** -53, 1 - 2 ** -53, 1 - 2 ** -53]).bounds[0]).toBeLessThan(1);
  });

  const files = (socket: string, peg: string) =>
    corpus({
      artefacts: [
        { id: "beam", name: "the beam" },
        { id: "post", name: "the post" },
      ],
      measurements: [
        { id: "s", of: "beam", dimension: "width", value: socket },
        { id: "p", of: "post", dimension: "width", value: peg },
      ],
      derivations: [{ id: "fit", plugin: "clearance", inputs: { pairs: [["s", "p"]] } }],
    });

  test.each([
    ["8.0 ± 0.1 cm", "7.0 ± 0.1 cm", "> 0.999"],
    ["80.0 ± 0.1 cm", "7.0 ± 0.1 cm", "> 0.999"],
    ["7.0 ± 0.1 cm", "80.0 ± 0.1 cm", "< 1 × 10⁻⁹"],
    ["7.1 ± 0.1 cm", "7.0 ± 0.1 cm", "0.7602"],
  ])("of %s about %s is said to be %s wherever it is printed", (socket, peg, said) => {
    const memo = emptyMemo();
    const { model } = readUnder(files(socket, peg), plugins, memo);
    const lines = numberPage(model, plugins, memo.compute, "fit")?.numbers ?? [];
    expect(lines.find(({ name }) => name === "p-fit")?.value).toBe(said);
    expect(
      numbersText(model)
        .find((line) => line.includes("p-fit"))
        ?.trim(),
    ).toBe(`p-fit          ${said}`);
    expect(JSON.stringify(sheetOf(model, [], model.files, "fit"))).toContain(`"${said}"`);
  });
});
