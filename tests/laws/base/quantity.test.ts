import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import type { Quantity } from "../../../src/base/quantity.ts";
import { alike, formatIn, formatNumber, formatSI } from "../../../src/base/quantity/quantity-print.ts";
import { isPositive, parseQuantity, type QuantityContext } from "../../../src/base/quantity/quantity-text.ts";
import { builtInUnits } from "../../../src/base/unit/units-builtin.ts";
import { unitTable } from "../../../src/base/unit/unit-table.ts";

const context: QuantityContext = { units: unitTable([]), approximate: 0.025, plusMinus: "standard" };

function read(text: string, more: Partial<QuantityContext> = {}): Quantity {
  const result = parseQuantity(text, { ...context, ...more });
  if ("problem" in result) throw new Error(`${text}: ${inEnglish(result.problem.message)}`);
  return result.ok;
}

function problem(text: string, more: Partial<QuantityContext> = {}) {
  const result = parseQuantity(text, { ...context, ...more });
  if ("ok" in result) throw new Error(`${text} was read`);
  return result.problem;
}

const root12 = Math.sqrt(12);
const foot = 0.3048;
const inch = 0.0254;
const degree = Math.PI / 180;

/** Worked out by hand from section 3 of the format: kind, form, value, low, high, u, digit (SI). */
type Expected = readonly [string, string, number, number | null, number | null, number | null, number];
const written: Readonly<Record<string, Expected>> = {
  "18.2 cm": ["length", "value", 0.182, 0.1815, 0.1825, 0.001 / root12, 0.001],
  "18.20 cm": ["length", "value", 0.182, 0.18195, 0.18205, 0.0001 / root12, 0.0001],
  "240 cm": ["length", "value", 2.4, 2.395, 2.405, 0.01 / root12, 0.01],
  "18.2 ± 0.4 cm": ["length", "value", 0.182, 0.178, 0.186, 0.004, 0.001],
  "18.2 +/- 0.4 cm": ["length", "value", 0.182, 0.178, 0.186, 0.004, 0.001],
  "(18.2 ± 0.4) cm": ["length", "value", 0.182, 0.178, 0.186, 0.004, 0.001],
  "18.2 ± 0.4 cm (2 s)": ["length", "value", 0.182, 0.178, 0.186, 0.002, 0.001],
  "18.2 ± 0.4 cm (1 s)": ["length", "value", 0.182, 0.178, 0.186, 0.004, 0.001],
  "18.20 m ± 5 mm": ["length", "value", 18.2, 18.195, 18.205, 0.005, 0.01],
  "42–45 cm": ["length", "range", 0.435, 0.42, 0.45, 0.03 / root12, 0.01],
  "42-45 cm": ["length", "range", 0.435, 0.42, 0.45, 0.03 / root12, 0.01],
  "42 to 45 cm": ["length", "range", 0.435, 0.42, 0.45, 0.03 / root12, 0.01],
  "between 42 and 45 cm": ["length", "range", 0.435, 0.42, 0.45, 0.03 / root12, 0.01],
  "42 cm – 45 cm": ["length", "range", 0.435, 0.42, 0.45, 0.03 / root12, 0.01],
  "42 cm – 0.45 m": ["length", "range", 0.435, 0.42, 0.45, 0.03 / root12, 0.01],
  "-5 to -3 °": ["angle", "range", -4 * degree, -5 * degree, -3 * degree, (2 * degree) / root12, degree],
  "≥ 240 cm": ["length", "at-least", 2.4, 2.4, null, null, 0.01],
  ">= 240 cm": ["length", "at-least", 2.4, 2.4, null, null, 0.01],
  "> 240 cm": ["length", "at-least", 2.4, 2.4, null, null, 0.01],
  "at least 240 cm": ["length", "at-least", 2.4, 2.4, null, null, 0.01],
  "more than 240 cm": ["length", "at-least", 2.4, 2.4, null, null, 0.01],
  "Over 240 cm": ["length", "at-least", 2.4, 2.4, null, null, 0.01],
  "≤ 5 kg": ["mass", "at-most", 5, null, 5, null, 1],
  "<5 kg": ["mass", "at-most", 5, null, 5, null, 1],
  "at most 5 kg": ["mass", "at-most", 5, null, 5, null, 1],
  "less than 5 kg": ["mass", "at-most", 5, null, 5, null, 1],
  "under 5 kg": ["mass", "at-most", 5, null, 5, null, 1],
  "about 6 foot": ["length", "approximate", 6 * foot, 5 * foot, 7 * foot, foot, foot],
  "c. 6.00 ft": ["length", "approximate", 6 * foot, 5.85 * foot, 6.15 * foot, 0.15 * foot, 0.01 * foot],
  "ca. 42–45 cm": ["length", "approximate", 0.435, 0.42, 0.45, 0.025 * 0.435, 0.01],
  "circa 200 mm": ["length", "approximate", 0.2, 0.195, 0.205, 0.005, 0.001],
  "~200 mm": ["length", "approximate", 0.2, 0.195, 0.205, 0.005, 0.001],
  "≈ 200 mm": ["length", "approximate", 0.2, 0.195, 0.205, 0.005, 0.001],
  "17": ["count", "value", 17, 17, 17, 0, 0],
  "1.74": ["number", "value", 1.74, 1.735, 1.745, 0.01 / root12, 0.01],
  "45 %": ["number", "value", 0.45, 0.445, 0.455, 0.01 / root12, 0.01],
  "5 ft 4 in": ["length", "value", 64 * inch, 63.5 * inch, 64.5 * inch, inch / root12, inch],
  "12° 30′": [
    "angle",
    "value",
    12.5 * degree,
    (12.5 - 1 / 120) * degree,
    (12.5 + 1 / 120) * degree,
    degree / 60 / root12,
    degree / 60,
  ],
  "1 1/2 ft": ["length", "value", 1.5 * foot, 1.25 * foot, 1.75 * foot, (0.5 * foot) / root12, 0.5 * foot],
  "1½ ft": ["length", "value", 1.5 * foot, 1.25 * foot, 1.75 * foot, (0.5 * foot) / root12, 0.5 * foot],
  "½ in": ["length", "value", 0.5 * inch, 0.25 * inch, 0.75 * inch, (0.5 * inch) / root12, 0.5 * inch],
  "5 ft 4 1/2 in": [
    "length",
    "value",
    64.5 * inch,
    64.25 * inch,
    64.75 * inch,
    (0.5 * inch) / root12,
    0.5 * inch,
  ],
  "−5 °": ["angle", "value", -5 * degree, -5.5 * degree, -4.5 * degree, degree / root12, degree],
  "–5 °": ["angle", "value", -5 * degree, -5.5 * degree, -4.5 * degree, degree / root12, degree],
  "-5° 30′": [
    "angle",
    "value",
    -5.5 * degree,
    (-5.5 - 1 / 120) * degree,
    (-5.5 + 1 / 120) * degree,
    degree / 60 / root12,
    degree / 60,
  ],
  "١٨٫٢ cm": ["length", "value", 0.182, 0.1815, 0.1825, 0.001 / root12, 0.001],
  "१८.२ cm": ["length", "value", 0.182, 0.1815, 0.1825, 0.001 / root12, 0.001],
  "１８.２ cm": ["length", "value", 0.182, 0.1815, 0.1825, 0.001 / root12, 0.001],
  "7 ± 0 mm": ["length", "value", 0.007, 0.007, 0.007, 0, 0.001],
  "3 days": ["time", "value", 259200, 216000, 302400, 86400 / root12, 86400],
};

function near(found: number | null, expected: number | null): void {
  if (found === null || expected === null) expect(found).toBe(expected);
  else expect(Math.abs(found - expected)).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(expected)));
}

describe("what section 3 of the format shows", () => {
  test.each(Object.entries(written))("%s", (text, [kind, form, value, low, high, u, digit]) => {
    const quantity = read(text);
    expect([quantity.text, quantity.kind, quantity.form]).toEqual([text, kind, form]);
    near(quantity.value, value);
    near(quantity.low, low);
    near(quantity.high, high);
    near(quantity.u, u);
    near(quantity.digit, digit);
  });

  test("what ± means: the text before the record before the settings", () => {
    expect(read("18.2 ± 0.4 cm", { plusMinus: "expanded" }).u).toBeCloseTo(0.002, 12);
    expect(read("18.2 ± 0.4 cm", { plusMinus: "expanded", coverage: 1 }).u).toBeCloseTo(0.004, 12);
    expect(read("18.2 ± 0.4 cm", { coverage: 2 }).u).toBeCloseTo(0.002, 12);
    expect(read("18.2 ± 0.4 cm (1 s)", { coverage: 2 }).u).toBeCloseTo(0.004, 12);
  });

  test("what about adds is a setting", () => {
    expect(read("about 200 mm", { approximate: 0.1 }).u).toBeCloseTo(0.02, 12);
  });

  test("a whole number is a pure number where one is due, and a count where one is due", () => {
    expect(read("17", { kind: "number" })).toMatchObject({
      kind: "number",
      value: 17,
      low: 16.5,
      high: 17.5,
    });
    expect(read("17", { kind: "count" })).toMatchObject({ kind: "count", u: 0 });
    expect(problem("1.74", { kind: "count" }).code).toBe("wrong-kind");
  });

  test("a table may write the decimal sign as a comma", () => {
    expect(read("18,2 cm", { decimal: "comma" }).value).toBe(0.182);
    expect(problem("1.200,5 cm", { decimal: "comma" }).code).toBe("decimal-comma");
  });
});

const wrong: Readonly<
  Record<string, readonly [code: string, place: string, replacement?: string, otherwise?: string]>
> = {
  "18,2 cm": ["decimal-comma", "18,2", "18.2 cm"],
  "1,200 mm": ["decimal-comma", "1,200", "1200 mm", "1.200 mm"],
  "0,200 m": ["decimal-comma", "0,200", "0.200 m"],
  "1,200,000 mm": ["decimal-comma", "1,200,000", "1200000 mm"],
  "1.200,5 m": ["decimal-comma", "1.200,5", "1200.5 m"],
  "18,2 ± 0,4 cm": ["decimal-comma", "18,2", "18.2 ± 0.4 cm"],
  "1,200 ± 0,5 m": ["decimal-comma", "1,200", "1.200 ± 0.5 m"],
  "١٨،٢ cm": ["decimal-comma", "١٨،٢", "18.2 cm"],
  "1 200 mm": ["digit-groups", "1 200", "1200 mm"],
  "12,5 x 3 cm": ["decimal-comma", "12,5"],
  "45–42 cm": ["backwards", "45–42 cm"],
  "18.2 ± -0.4 cm": ["negative-uncertainty", "-0.4 cm", "18.2 ± 0.4 cm"],
  "-5–-3 °": ["negative-end", "–", "-5 to -3 °"],
  "5 ft 3 kg": ["mixed-kinds", "5 ft 3 kg"],
  "18.2 cm ± 3 g": ["mixed-kinds", "18.2 cm ± 3 g"],
  "4 in 5 ft": ["unreadable", "4 in 5 ft"],
  "5 ft 4": ["missing-unit", "4"],
  "7 cubits": ["unknown-unit", "cubits"],
  "7 CM": ["unknown-unit", "CM"],
  "5' 4\"": ["unknown-unit", "'"],
  "18.2 cm wide": ["unreadable", "wide"],
  "18.2 cm (2 s)": ["unreadable", "(2 s)"],
  "at least 2–3 m": ["unreadable", "at least 2–3 m"],
  "about at least 2 m": ["unreadable", "about at least"],
  "between 3 m": ["unreadable", ""],
  "1/0 ft": ["unreadable", "1/0"],
  "1e400 m": ["unreadable", "1e400"],
  large: ["unreadable", "large"],
  "": ["unreadable", ""],
};

describe("what cannot be read", () => {
  test.each(Object.entries(wrong))("%s", (text, [code, place, replacement, otherwise]) => {
    const found = problem(text);
    expect([found.code, text.slice(found.start, found.end)]).toEqual([code, place]);
    expect([found.replacement, found.otherwise]).toEqual([replacement, otherwise]);
    if (replacement !== undefined) expect(parseQuantity(replacement, context)).toHaveProperty("ok");
  });

  test("a wrong kind is an error, never a conversion", () => {
    expect(problem("5 kg", { kind: "length" })).toMatchObject({ code: "wrong-kind" });
    expect(problem("18.2", { kind: "length" })).toMatchObject({ code: "missing-unit" });
    expect(problem("17 cm", { kind: "count" })).toMatchObject({ code: "wrong-kind" });
  });

  test("an unknown unit comes with the nearest names", () => {
    expect(inEnglish(problem("7 Romman feet").message)).toBe(
      "Unknown unit `Romman feet`, expected `Roman foot`",
    );
    expect(inEnglish(problem("3 pes").message)).toBe("Unknown unit `pes`, expected `Roman foot`");
  });
});

const number = fc.tuple(fc.nat(99999), fc.integer({ min: 0, max: 4 })).map(([digits, places]) => {
  const text = String(digits).padStart(places + 1, "0");
  return places === 0 ? text : `${text.slice(0, -places)}.${text.slice(-places)}`;
});
const unit = fc.constantFrom(...builtInUnits.filter((one) => one.symbols.length + one.names.length > 0));
const named = unit.chain((one) =>
  fc.constantFrom(...one.symbols, ...one.names).map((name) => ({ unit: one, name })),
);
const digitsOf = (zero: number) => (text: string) =>
  text.replace(/\d/g, (digit) => String.fromCodePoint(zero + Number(digit)));
const script = fc
  .constantFrom(0x30, 0x660, 0x6f0, 0x966, 0x9e6, 0xe50, 0xff10, 0x1d7ce, 0x1e950)
  .map(digitsOf);
const statement = fc
  .tuple(
    fc.constantFrom("", "about ", "c. ", "≥ ", "under "),
    number,
    number,
    named,
    fc.constantFrom("", "–", " to ", " ± "),
  )
  .map(([prefix, a, b, { unit: one, name }, join]) => {
    const plain = prefix === "≥ " || prefix === "under " || join === "";
    const [low, high] = Number(a) <= Number(b) ? [a, b] : [b, a];
    return {
      text: plain ? `${prefix}${a} ${name}` : `${prefix}${low}${join}${high} ${name}`,
      unit: one,
      a,
      low,
      high,
    };
  });

describe("laws", () => {
  test("every form is read back, lies between its limits and is no surer than certain", () => {
    fc.assert(
      fc.property(statement, ({ text, unit: one, low, high }) => {
        const quantity = read(text);
        expect(quantity.unit).toBe(one.name);
        expect(quantity.low === null || quantity.low <= quantity.value).toBe(true);
        expect(quantity.high === null || quantity.value <= quantity.high).toBe(true);
        expect(quantity.u === null || quantity.u >= 0).toBe(true);
        expect((quantity.u === null) === (quantity.low === null || quantity.high === null)).toBe(true);
        if (quantity.form !== "range") return;
        expect(quantity.low ?? Infinity).toBeLessThanOrEqual(Number(low) * one.size * (1 + 1e-14));
        expect(quantity.high ?? -Infinity).toBeGreaterThanOrEqual(Number(high) * one.size * (1 - 1e-14));
      }),
      { numRuns: 1000 },
    );
  });

  test("a value printed in its unit is read as the same value", () => {
    fc.assert(
      fc.property(number, fc.boolean(), named, (digits, below, { unit: one, name }) => {
        const value = Number(digits) * one.size * (below ? -1 : 1);
        near(read(`${below ? "-" : ""}${digits} ${name}`).value / one.size, value / one.size);
        near(read(formatIn(value, one, 15)).value / one.size, value / one.size);
      }),
      { numRuns: 500 },
    );
  });

  test("the unit scales value, limits and uncertainty alike", () => {
    fc.assert(
      fc.property(number, number, unit, unit, (a, b, one, other) => {
        const [first, second] = [one, other].map((each) =>
          read(`${a} ± ${b} ${each.symbols[0] ?? each.names[0]}`),
        );
        if (first === undefined || second === undefined) throw new Error("two units, two quantities");
        const ratio = one.size / other.size;
        for (const field of ["value", "low", "high", "u", "digit"] as const) {
          const [x, y] = [Number(first[field]), Number(second[field]) * ratio];
          expect(Math.abs(x - y)).toBeLessThanOrEqual(1e-12 * (Number(a) + Number(b) + 1) * one.size);
        }
      }),
      { numRuns: 300 },
    );
  });

  test("the digits of any script mean the same", () => {
    fc.assert(
      fc.property(statement, script, ({ text }, inScript) => {
        const { text: _, ...other } = read(inScript(text));
        const { text: __, ...plain } = read(text);
        expect(other).toEqual(plain);
      }),
    );
  });

  test("no text throws, and every problem lies in its text", () => {
    const pieces = fc.constantFrom(
      "18",
      "1,2",
      " ",
      "cm",
      "±",
      "-",
      "–",
      "(",
      ")",
      "½",
      "/",
      "to",
      "and",
      "about ",
      "≥",
      "between ",
      "Roman foot",
      "°",
      "'",
      ".",
      "٣",
      "e",
      "2 s",
      "\u200f",
      "𝟙",
    );
    const any = fc.oneof(
      fc.string({ unit: "binary" }),
      fc.string(),
      fc.array(pieces).map((list) => list.join("")),
    );
    fc.assert(
      fc.property(any, fc.constantFrom("point", "comma"), (text, decimal) => {
        const result = parseQuantity(text, { ...context, decimal });
        if ("ok" in result) return void expect(Number.isFinite(result.ok.value)).toBe(true);
        const { start, end } = result.problem;
        expect(0 <= start && start <= end && end <= text.length).toBe(true);
      }),
      { numRuns: 5000 },
    );
  });

  test("long texts of every shape end", () => {
    for (const piece of [
      "1",
      "1 ",
      "1,",
      "1.",
      "a",
      "a ",
      " ",
      "-",
      "– ",
      "1 ft ",
      "½",
      "1/2 ",
      "(",
      "to ",
      "±",
      "1e1",
      "\u200f",
      "'",
    ]) {
      const text = piece.repeat(20_000);
      expect(problem(text).end).toBeLessThanOrEqual(text.length);
      expect(problem(`5 ${text} ft!`).end).toBeLessThanOrEqual(text.length + 6);
    }
  });
});

test("what is above 0", () => {
  const positive = ["18.2 cm", "about 0.5 mm", "0.4 ± 0.5 mm", "1–2 mm", "< 3 mm", "> 3 mm"];
  expect(positive.filter((text) => !isPositive(read(text)))).toEqual([]);
  const not = ["0 mm", "-1 mm", "0–2 mm", "-1 to 2 mm", "< 0 mm", "≥ 0 mm"];
  expect(not.filter((text) => isPositive(read(text)))).toEqual([]);
});

test("numbers in sentences", () => {
  expect(formatNumber(-0.00012346)).toBe("−0.0001235");
  expect([0, 17, 1.7, 0.45, 1234567, 1e-9, 2e20].map((value) => formatNumber(value))).toEqual([
    "0",
    "17",
    "1.7",
    "0.45",
    "1235000",
    "1 × 10⁻⁹",
    "2 × 10²⁰",
  ]);
  expect(formatSI(0.182, "length")).toBe("18.2 cm");
  expect(formatSI(18.2, "length")).toBe("18.2 m");
  expect(formatSI(0.0042, "length")).toBe("4.2 mm");
  expect(formatSI(0.0084, "mass")).toBe("8.4 g");
  expect(formatSI(-Math.PI / 4, "angle")).toBe("−45°");
  expect(formatSI(17, "count")).toBe("17");
  expect(formatIn(0.888, { name: "Roman foot", size: 0.296 })).toBe("3 Roman foot");
});

test("numbers read together have decimals alike where they are of one magnitude", () => {
  expect(alike(["2.008", "1.98", "2.036"])).toEqual(["2.008", "1.980", "2.036"]);
  expect(alike(["1.3", "1", "3.4"])).toEqual(["1.3", "1.0", "3.4"]);
  expect(alike(["0.743 m", "0.74 m", "0.745 m"])).toEqual(["0.743 m", "0.740 m", "0.745 m"]);
  expect(alike(["−2.5", "−4", "−1"])).toEqual(["−2.5", "−4.0", "−1.0"]);
  for (const others of [
    ["0.25", "0.0084", "0.71"],
    ["17", "12", "23"],
    ["1.5 × 10⁻⁹", "1 × 10⁻⁹", "2 × 10⁻⁹"],
    ["0.5", "…", "∞"],
    ["0", "−1", "1.5"],
  ])
    expect(alike(others)).toEqual(others);
});
