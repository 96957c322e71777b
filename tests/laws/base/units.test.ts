import { readFileSync } from "node:fs";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { editDistance, nearest } from "../../../src/base/nearest.ts";
import { parseQuantity, type QuantityContext } from "../../../src/base/quantity/quantity-text.ts";
import { fromSI, ownUnit, toSI, type Unit } from "../../../src/base/unit/unit.ts";
import { unitTable } from "../../../src/base/unit/unit-table.ts";
import { builtInUnits, unitById } from "../../../src/base/unit/units-builtin.ts";

const table = unitTable([]);
const context: QuantityContext = { units: table, approximate: 0.025, plusMinus: "standard" };

function published<Content>(name: string): Content {
  return JSON.parse(readFileSync(new URL(`../../published/${name}`, import.meta.url), "utf8")) as Content;
}

interface Historical {
  readonly id: string;
  readonly names: readonly string[];
  readonly si: number;
  readonly low: number | null;
  readonly high: number | null;
}

function own(id: string, is: string, also: readonly string[] = []): Unit {
  const size = parseQuantity(is, context);
  const unit = "ok" in size ? ownUnit(id, also, size.ok, "vane-1968") : null;
  if (unit === null) throw new Error(`${id} is no unit`);
  return unit;
}

describe("the historical units of the published file, each with its source", () => {
  const { units } = published<{ units: readonly Historical[] }>("historical-units.json");

  test("there are 55, and each is read by a name of more than one word", () => {
    expect(units).toHaveLength(55);
    for (const record of units) {
      const unit = unitById(record.id);
      if (unit === null) throw new Error(record.id);
      expect(unit.size).toBe(record.si);
      expect(unit.source).not.toBe("");
      expect(unit.names.every((name) => / /u.test(name) && table.find(name) === unit)).toBe(true);
      expect(unit.names.length).toBeGreaterThan(0);
    }
  });

  test("the uncertainty is rectangular over the published range, else 1 % and marked so", () => {
    for (const { id, si, low, high } of units) {
      const unit = unitById(id);
      const known = low !== null && high !== null;
      expect(unit?.uAssumed).toBe(!known);
      expect(unit?.u).toBeCloseTo(known ? (high - low) / 2 / Math.sqrt(3) : 0.01 * si, 12);
    }
    // 20.63 in give or take 0.2 in.
    expect(unitById("egyptianroyalcubit")?.u).toBeCloseTo((0.2 * 0.0254) / Math.sqrt(3), 12);
  });

  test("no bare word is read, but it leads to the units that bear it", () => {
    const bare = [
      "pes",
      "cubit",
      "cubits",
      "digit",
      "palm",
      "stater",
      "shekel",
      "deben",
      "mina",
      "stadion",
      "libra",
      "pace",
    ];
    expect(bare.filter((word) => table.find(word) !== null)).toEqual([]);
    expect(bare.filter((word) => table.near(word).length === 0)).toEqual([]);
    expect(table.near("pes")).toEqual(["Roman foot"]);
    expect(table.near("deben")).toEqual(["New Kingdom deben", "Old Kingdom deben"]);
    expect(table.find("foot")?.size).toBe(0.3048);
  });
});

test("sizes agree with GNU units 2.22 (check values, case B1-table)", () => {
  interface Case {
    readonly id: string;
    readonly expected: { readonly values: readonly { readonly unit: string; readonly si: number }[] };
  }
  const { cases } = published<{ cases: readonly Case[] }>("check-values.json");
  const values = cases.find(({ id }) => id === "B1-table")?.expected.values ?? [];
  expect(values.length).toBeGreaterThan(100);
  for (const { unit, si } of values) {
    const size = (unitById(unit) ?? table.find(unit))?.size ?? NaN;
    expect(Math.abs(size - si), unit).toBeLessThanOrEqual(1e-12 * si);
  }
});

describe("names and symbols", () => {
  test.each(["mm", "kg", "ft", "µm", "°", "′", "%"])("the symbol %s matches exactly", (symbol) => {
    expect(table.find(symbol)?.symbols).toContain(symbol);
    const other = symbol.toUpperCase();
    if (other !== symbol) expect(table.find(other)).toBeNull();
  });

  test.each([
    ["feet", "ft"],
    ["Inches", "in"],
    ["METRES", "m"],
    ["millimeter", "mm"],
    ["roman feet", "Roman foot"],
    ["ROMAN INCHES", "Roman inch"],
    ["Attic drachmas", "Attic drachma"],
    ["shekels of Karkemish", "shekel of Karkemish"],
    ["pes Drusianus", "pes Drusianus"],
    ["Minutes of arc", "′"],
    ["days", "day"],
    ["\u03bcm", "µm"],
  ])("%s is %s", (text, name) => {
    expect(table.find(text)?.name).toBe(name);
  });

  test("no two built-in units have a symbol or a name in common", () => {
    for (const unit of builtInUnits) {
      const names = [...unit.symbols, ...unit.names];
      expect(names.filter((name) => table.find(name) !== unit)).toEqual([]);
    }
  });
});

describe("units of the corpus's own", () => {
  const pace = own("down-pace", "0.743 ± 0.006 m", ["pace of the Down"]);
  const units = unitTable([pace, own("cubit", "0.52–0.53 m"), own("foot", "0.31 m")]);

  test("are read by id and other names, whatever the hyphens, case and plural", () => {
    for (const name of ["down-pace", "Down paces", "pace of the Down", "paces of the down"]) {
      expect(units.find(name)).toBe(pace);
    }
    expect(parseQuantity("7½ down-paces", { ...context, units })).toMatchObject({
      ok: { value: 5.5725, unit: "down-pace" },
    });
  });

  test("their uncertainty is common to all that is measured in them", () => {
    const read = parseQuantity("7 down-pace", { ...context, units });
    if ("problem" in read) throw new Error(inEnglish(read.problem.message));
    expect(read.ok.shared).toHaveLength(1);
    expect(read.ok.shared[0]?.with).toBe("unit:down-pace");
    expect(read.ok.shared[0]?.relative).toBeCloseTo(0.006 / 0.743, 12);
    expect(units.find("cubit")?.u).toBeCloseTo(0.01 / Math.sqrt(12), 12);
    const inRoman = own("rod", "10 Roman feet");
    const digit = (0.296 / Math.sqrt(12)) ** 2;
    const roman = (10 * 0.0031) ** 2 / 12;
    expect(inRoman.u).toBeCloseTo(Math.sqrt(digit + roman), 12);
  });

  test("hide a built-in unit whole, and the table tells", () => {
    expect(units.find("feet")?.size).toBe(0.31);
    expect(units.find("ft")).toBeNull();
    expect(units.hidden.map(({ builtIn, by }) => [builtIn.name, by.name])).toEqual([["ft", "foot"]]);
    expect(units.find("Roman foot")?.own).toBe(false);
  });

  test("a bound, or nothing above 0, is the size of no unit", () => {
    for (const text of ["at least 3 m", "0 m", "-1 m"]) {
      const read = parseQuantity(text, context);
      expect("ok" in read ? ownUnit("x", [], read.ok, "") : "unread").toBeNull();
    }
  });
});

test("to SI and back", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
      fc.constantFrom(...builtInUnits),
      (n, unit) => {
        expect(Math.abs(fromSI(toSI(n, unit), unit) - n)).toBeLessThanOrEqual(1e-13 * n);
      },
    ),
  );
  expect([toSI(18.2, { size: 0.01 }), toSI(6, { size: 0.3048 }), toSI(3, { size: 0.1 })]).toEqual([
    0.182, 1.8288, 0.3,
  ]);
});

/** The distance by its definition, without a table and without a limit. */
function plainDistance(a: string, b: string): number {
  if (a === "" || b === "") return a.length + b.length;
  const [x, y] = [a.slice(1), b.slice(1)];
  const swap = a.length > 1 && b.length > 1 && a[0] === b[1] && a[1] === b[0];
  return Math.min(
    plainDistance(x, b) + 1,
    plainDistance(a, y) + 1,
    plainDistance(x, y) + (a[0] === b[0] ? 0 : 1),
    swap ? plainDistance(a.slice(2), b.slice(2)) + 1 : Infinity,
  );
}

describe("nearest names", () => {
  const word = fc.string({ unit: fc.constantFrom("a", "b", "c"), maxLength: 6 });

  test("the distance is that of the definition, cut off at the limit", () => {
    fc.assert(
      fc.property(word, word, fc.nat(7), (a, b, limit) => {
        expect(editDistance(a, b, limit)).toBe(Math.min(plainDistance(a, b), limit + 1));
      }),
    );
  });

  test("the likeliest comes first, ties in the order of their text, and nothing far off", () => {
    expect(nearest("ring-a/psot-12", ["ring-b/post-12", "ring-a/post-12", "vane-1968"])).toEqual([
      "ring-a/post-12",
      "ring-b/post-12",
    ]);
    expect(nearest("Vane-1968", ["vane-1969", "vane-1868", "vane-1968"])).toEqual([
      "vane-1968",
      "vane-1868",
      "vane-1969",
    ]);
    expect(nearest("zzz", ["vane-1968", "post"])).toEqual([]);
    expect(nearest("a", ["b", "b", "cc"], 1)).toEqual(["b"]);
  });
});
