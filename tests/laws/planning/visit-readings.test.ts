import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { randomFrom } from "../../../src/base/outcome/random.ts";
import { unitTable } from "../../../src/base/unit/unit-table.ts";
import { repeated } from "../../../src/show/desk/visit/repeat.ts";
import { readingsTold } from "../../../src/show/desk/visit/filled/readings.ts";
import type { ReadAs } from "../../../src/show/desk/visit/filled/readings.ts";
import type { QuantityKind } from "../../../src/base/quantity.ts";

const context: ReadAs["context"] = { units: unitTable([]), approximate: 0.025, plusMinus: "standard" };

const told = (
  readings: readonly string[],
  unit = "mm",
  kind: QuantityKind | null = "length",
  nearest = "",
): ReturnType<typeof readingsTold> => readingsTold(readings, { context, kind, unit, nearest });

const why = (...given: Parameters<typeof told>): string =>
  told(...given)
    .troubles.map((one) => inEnglish(one.message))
    .join();

/** How often the true length lies within twice what is written after ±, readings being rounded to the step of 1. */
function covered(n: number, spread: number): number {
  const random = randomFrom(11);
  const rounds = 4000;
  let within = 0;
  for (let round = 0; round < rounds; round++) {
    const truth = 100 + random.uniform();
    const readings = Array.from({ length: n }, () => Math.round(truth + spread * random.normal()));
    const { mean, stated } = repeated(readings, 1);
    if (Math.abs(mean - truth) <= 2 * stated) within += 1;
  }
  return within / rounds;
}

describe("what is written after ± is good for 95 % when it is doubled, as everybody doubles it", () => {
  // Three readings of which only s/√n is written would hold it 83 times in 100 (t with 2 degrees of freedom).
  test.each([
    [3, 1],
    [3, 3],
    [5, 1],
    [5, 3],
    [10, 3],
  ])("%i readings that scatter by %i steps", (n, spread) => {
    expect(covered(n, spread)).toBeGreaterThan(0.925);
  });

  test("by hand: t for 2 degrees of freedom is 4.303, so half of 95 % is 2.15 s/√3", () => {
    const { stated, half, ofMean } = repeated([41, 42, 43], 1e-9);
    expect(stated).toBeCloseTo(2.1513 * (ofMean ?? 0), 3);
    expect(half).toBeCloseTo(2 * stated, 12);
    // With many it is u itself: never made less by a t below 2.
    const many = repeated(
      Array.from({ length: 400 }, (_, at) => at % 2),
      0,
    );
    expect(many.stated).toBe(many.u);
  });
});

describe("readings of one dimension", () => {
  test("in feet and inches, or degrees and minutes, come to a value that can be read", () => {
    const feet = told(["5 ft 4 in", "5 ft 5 in", "5 ft 4 in"], "ft");
    expect(feet.value).toMatch(/^5\.36\d? ± 0\.0\d+ ft$/);
    expect(feet.quantity?.value).toBeCloseTo((5 + 13 / 36) * 0.3048, 3);
    const turned = told(["12° 30′", "12° 31′", "12° 29′"], "°", "angle");
    expect(turned.quantity?.value).toBeCloseTo((12.5 * Math.PI) / 180, 6);
    for (const { value, summary } of [feet, turned]) expect(`${value} ${summary?.mean}`).not.toMatch(/in|′/);
  });

  test("a fraction, a bound and `about` get the row's unit like any other figure", () => {
    expect(told(["1 1/2", "1 3/4"], "in").readings).toEqual(["1 1/2 in", "1 3/4 in"]);
    expect(told(["≥ 40"]).value).toBe("≥ 40 mm");
    expect(told(["about 40"]).value).toBe("about 40 mm");
    expect(told(["٤٢"]).quantity?.value).toBeCloseTo(0.042, 9);
    expect(told(["4.2 cm"]).value).toBe("4.2 cm");
  });

  test("one with an uncertainty of its own is not averaged as if it had none", () => {
    expect(why(["42.1 ± 3", "42.2", "42.0"])).toContain("what has its own ± stands alone");
    expect(told(["42.1 ± 3"]).value).toBe("42.1 ± 3 mm");
  });

  test("a step is a size above 0: nothing is more exact than what it is read to", () => {
    for (const step of ["-0.5 mm", "0 mm", "> 1 mm", "1–2 mm"])
      expect(why(["41", "42", "43"], "mm", "length", step), step).toContain("a step above 0");
    expect(told(["42", "42", "42"], "mm", "length", "0.5 mm").value).toBe("42.00 ± 0.14 mm");
  });

  test("the step of a caliper, said for the whole sheet, is not that of a balance", () => {
    const row = (kind: QuantityKind, unit: string, own: boolean) =>
      readingsTold(["41", "42", "43"], { context, kind, unit, nearest: "0.5 mm", own });
    expect(row("length", "mm", false)).toMatchObject({ nearest: "0.5 mm", troubles: [] });
    expect(row("mass", "g", false)).toMatchObject({ nearest: "", troubles: [], value: "42.0 ± 1.0 g" });
    expect(row("mass", "g", true).troubles).toHaveLength(1);
    expect(why(["41 g", "42 g"], "", null, "0.5 mm")).toContain("mass");
  });
});
