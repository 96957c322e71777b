import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { clearance } from "../../../plugins/clearance/index.ts";
import { clearanceOf } from "../../../plugins/clearance/fit/dimension.ts";
import type { Size } from "../../../plugins/clearance/fit/dimension.ts";
import { beforeShrinking } from "../../../plugins/clearance/fit/shrinkage.ts";
import { chanceBetween, densityAt } from "../../../plugins/clearance/fit/spread.ts";
import { together } from "../../../plugins/clearance/fit/together.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import { svgDocument } from "../../../src/host/print/svg-document.ts";
import { integrate, isRefusal, randomFrom } from "../../../src/plugin.ts";
import type { Measured, Quantity } from "../../../src/plugin.ts";
import { numberPage } from "../../../src/show/numbers/number.ts";
import type { NumberPage } from "../../../src/show/numbers/number.ts";
import { tablesOf } from "../../../src/show/numbers/panel-table.ts";
import { draw } from "../../../src/write/figure/draw.ts";
import type { Mark, Panel } from "../../../src/write/figure/figure.ts";
import { svgText } from "../../../src/write/figure/svg-text.ts";
import { light } from "../../../src/write/pen/palette.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import type { Worded } from "../../../src/base/text/said/worded.ts";
import { corpus } from "../judging/standpoint-corpora.ts";
import { wholeInEnglish } from "../base/in-english.ts";

const amount = fc.double({ min: 5, max: 60, noNaN: true });
const error = fc.double({ min: 0.01, max: 4, noNaN: true });
const width = fc.oneof(fc.constant(0), fc.double({ min: 0.001, max: 4, noNaN: true }));
const size: fc.Arbitrary<Size> = fc.record({ value: amount, width, u: error, open: fc.constant(null) });
const plain = (value: number, u: number, open: Size["open"] = null): Size => ({ value, width: 0, u, open });

describe("one dimension", () => {
  test("turned round, socket for peg, has the opposite clearance and interval", () => {
    fc.assert(
      fc.property(size, size, (a, b) => {
        const [one, other] = [clearanceOf(a, b), clearanceOf(b, a)];
        expect(one.value).toBeCloseTo(-other.value, 9);
        expect(one.interval[0]).toBeCloseTo(-(other.interval[1] ?? Number.NaN), 9);
        expect(one.chance[0] + other.chance[0]).toBeCloseTo(1, 7);
      }),
    );
  });

  test("does not depend on the unit; more room never fits worse, a limit never better", () => {
    fc.assert(
      fc.property(size, size, fc.double({ min: 0.001, max: 1000, noNaN: true }), error, (a, b, c, more) => {
        const times = (one: Size): Size => ({
          ...one,
          value: c * one.value,
          width: c * one.width,
          u: c * one.u,
        });
        const chance = clearanceOf(a, b).chance[0];
        expect(clearanceOf(times(a), times(b)).chance[0]).toBeCloseTo(chance, 7);
        expect(clearanceOf({ ...a, value: a.value + more }, b).chance[0]).toBeGreaterThanOrEqual(
          chance - 1e-9,
        );
        expect(clearanceOf(a, b, { loosest: more }).chance[0]).toBeLessThanOrEqual(chance + 1e-9);
      }),
    );
  });

  test("has a chance that is the area under its likelihood, and all of it is 1", () => {
    fc.assert(
      fc.property(
        size,
        size,
        fc.double({ min: 0.5, max: 12, noNaN: true }),
        ({ value, ...a }, b, loosest) => {
          const near = { ...a, value: b.value + (value % 6) - 3 };
          const { spread, chance } = clearanceOf(near, b, { loosest });
          const area = (low: number, high: number): number =>
            integrate((x) => densityAt(spread, x), low, high, 400);
          const far = (a.width + b.width) / 2 + 9 * Math.hypot(a.u, b.u);
          expect(area(spread.centre - far, spread.centre + far)).toBeCloseTo(1, 5);
          expect(Math.abs(area(0, loosest) - chance[0])).toBeLessThan(1e-4);
        },
      ),
      { numRuns: 60 },
    );
  });

  test("fits as often as parts drawn at random do", () => {
    const random = randomFrom(7);
    const cases: readonly (readonly [Size, Size, number | null])[] = [
      [plain(42, 0.5), plain(41.6, 0.4), null],
      [{ value: 41.5, width: 3, u: 0, open: null }, plain(41, 0.6), null],
      [{ value: 41.5, width: 3, u: 0.2, open: null }, { value: 41.2, width: 1, u: 0.1, open: null }, 1],
    ];
    for (const [socket, peg, loosest] of cases) {
      const drawn = (one: Size): number =>
        one.value + one.width * (random.uniform() - 0.5) + one.u * random.normal();
      let fits = 0;
      for (let k = 0; k < 20_000; k += 1) {
        const clearance = drawn(socket) - drawn(peg);
        if (clearance >= 0 && (loosest === null || clearance <= loosest)) fits += 1;
      }
      const { chance } = clearanceOf(socket, peg, { loosest });
      expect(Math.abs(chance[0] - fits / 20_000)).toBeLessThan(0.015);
    }
  });

  test("a range so narrow that it tells nothing changes nothing, and exact sizes fit or do not", () => {
    for (const narrow of [1e-12, 1e-7, 1e-5, 4e-5, 2e-4, 1e-3]) {
      const { chance } = clearanceOf({ ...plain(42, 0.5), width: narrow }, plain(41.5, 0.4));
      expect(Math.abs(chance[0] - clearanceOf(plain(42, 0.5), plain(41.5, 0.4)).chance[0])).toBeLessThan(
        1e-6,
      );
    }
    expect(clearanceOf(plain(3, 0), plain(3, 0))).toMatchObject({ chance: [1, 1], flag: "fits" });
    expect(clearanceOf(plain(3, 0), plain(3.1, 0))).toMatchObject({ chance: [0, 0], flag: "impossible" });
    expect(clearanceOf(plain(3, 0), plain(2, 0), { loosest: 1 }).flag).toBe("fits");
    expect(chanceBetween({ centre: 1, widths: [0, 0], u: 0.1 }, 2, 1)).toBe(0);
  });

  test("an error common to both cancels as far as they are alike", () => {
    const [slot, peg] = [plain(40, 0.4), plain(40, 0.4)];
    expect(clearanceOf(slot, peg, { covariance: 0.16 }).u).toBeCloseTo(0, 7);
    expect(clearanceOf(slot, peg, { covariance: 0.08 }).u).toBeCloseTo(0.4, 12);
  });

  test("what a bound leaves possible holds the chance of every size that it allows", () => {
    const bound = fc.constantFrom("more" as const, "less" as const);
    const beyond = fc.double({ min: 0, max: 30, noNaN: true });
    const limit = fc.option(fc.double({ min: 0.5, max: 9, noNaN: true }));
    fc.assert(
      fc.property(size, size, bound, beyond, fc.boolean(), limit, (a, b, open, more, slot, loosest) => {
        const moved = (one: Size): Size => ({ ...one, value: one.value + (open === "more" ? more : -more) });
        const bounded = clearanceOf(slot ? { ...a, open } : a, slot ? b : { ...b, open }, { loosest });
        const actual = clearanceOf(slot ? moved(a) : a, slot ? b : moved(b), { loosest });
        expect(actual.chance[0]).toBeGreaterThanOrEqual(bounded.chance[0] - 1e-9);
        expect(actual.chance[0]).toBeLessThanOrEqual(bounded.chance[1] + 1e-9);
        expect(actual.value).toBeGreaterThanOrEqual((bounded.ends[0] ?? -Infinity) - 1e-9);
        expect(actual.value).toBeLessThanOrEqual((bounded.ends[1] ?? Infinity) + 1e-9);
      }),
    );
  });

  test("a bound that decides does: a deeper socket than the peg is long fits, a shorter one never will", () => {
    expect(clearanceOf(plain(45, 0, "more"), plain(40, 0.4)).flag).toBe("fits");
    expect(clearanceOf(plain(45, 0, "more"), plain(40, 0.4), { loosest: 8 }).flag).toBe("undecidable");
    expect(clearanceOf(plain(45, 0, "more"), plain(40, 0.4), { loosest: 2 }).flag).toBe("impossible");
    expect(clearanceOf(plain(38, 0, "less"), plain(40, 0.4)).flag).toBe("impossible");
    expect(clearanceOf(plain(38, 0), plain(40, 0, "more")).flag).toBe("impossible");
    expect(clearanceOf(plain(38, 0, "more"), plain(30, 0, "more")).flag).toBe("undecidable");
  });
});

test("all dimensions together are within Fréchet's bounds, and these within the least chance", () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 6 }), (chances) => {
      const { independent, bounds } = together(chances);
      expect(independent).toBeGreaterThanOrEqual(bounds[0] - 1e-12);
      expect(independent).toBeLessThanOrEqual(bounds[1] + 1e-12);
      expect(bounds[1]).toBe(Math.min(1, ...chances));
    }),
  );
});

test("what shrank to nothing had no size that can be told", () => {
  expect(isRefusal(beforeShrinking({ value: 3, u: 0 }, { value: 1, u: 0 }))).toBe(true);
  expect(beforeShrinking({ value: 3, u: 0.1 }, { value: 0, u: 0 })).toEqual({ value: 3, u: 0.1 });
});

interface Part {
  readonly of: string;
  readonly dimension: string;
  readonly value: string;
  readonly [field: string]: unknown;
}

/** The page of one joint, and what it says of the claim that the parts belong together. */
async function joint(
  measurements: readonly Part[],
  derivation: object = {},
  corpus: object = {},
): Promise<{
  readonly page: Worded<NumberPage>;
  readonly says: readonly unknown[];
  readonly reason: string | null | undefined;
}> {
  const things = [...new Set(measurements.map((one) => one.of))];
  const records = {
    artefacts: things.map((id) => ({ id, name: `The ${id}` })),
    claims: [{ id: "mates", text: "They mate." }],
    measurements,
    derivations: [
      {
        id: "d",
        plugin: "clearance",
        inputs: { socket: { of: "sill" }, peg: { of: "pivot" } },
        ...derivation,
      },
    ],
  };
  const files = [
    { path: "corpus.yaml", text: JSON.stringify({ title: "Joints", ...corpus }) },
    { path: "records.yaml", text: JSON.stringify(records) },
  ];
  const memo = emptyMemo();
  const { model } = await evaluate(files, plugins, memo, computingHere(plugins));
  const page = model ? wholeInEnglish(numberPage(model, plugins, memo.compute, "d")) : null;
  if (!model || !page) throw new Error("no page");
  const derived = model.derivations.byId.get("d");
  return { page, says: (derived?.bearings ?? []).map((one) => one.bearing), reason: derived?.reason };
}

const sill = (dimension: string, value: string, more: object = {}): Part => ({
  of: "sill",
  dimension,
  value,
  ...more,
});
const pivot = (dimension: string, value: string, more: object = {}): Part => ({
  of: "pivot",
  dimension,
  value,
  ...more,
});
const asked = {
  "bears-on": [{ claim: "mates", supports: { "p-fit": "> 0.95" }, disputes: { "p-fit": "< 0.05" } }],
};
const valueOf = (page: Worded<NumberPage>, name: string) => page.numbers.find((one) => one.name === name);

describe("a joint in a corpus", () => {
  test("supports, disputes, or does neither where a bound leaves it open", async () => {
    const snug = [sill("width", "42.0 ± 0.5 mm"), pivot("width", "40.5 ± 0.4 mm")];
    expect((await joint(snug, asked)).says).toEqual(["supports"]);
    const small = [sill("width", "38.0 ± 0.5 mm"), pivot("width", "40.5 ± 0.4 mm")];
    expect((await joint(small, asked)).says).toEqual(["disputes"]);
    const broken = [...snug, sill("depth", "35 mm", { state: "preserved" }), pivot("depth", "40 to 41 mm")];
    const { page, says } = await joint(broken, asked);
    expect(says).toEqual(["inconclusive"]);
    expect(valueOf(page, "p-fit")?.interval).toMatch(/^0 to 0\.99/);
    expect(page.sentence).toContain("depth at least −6 mm, left open by a bound");
    expect(page.cautions.met.join(" ")).toContain("leaves open");
    // 42.0 - 40.5 by hand: that the depth is at least -6 mm is no value of it.
    expect(valueOf(page, "clearance")?.value).toBe("1.500 mm");
    expect(JSON.stringify(page.figure)).not.toContain("reaches beyond the wall");
    // scipy.stats.norm.sf(5) is 2.9e-7: as little as that is told as no lower limit of 0.001.
    const coarse = await joint([...snug, sill("depth", "≥ 35 mm"), pivot("depth", "40.0 ± 1.0 mm")]);
    expect(coarse.page.sentence).toContain("is up to 0.99 if their errors are independent");
    // One dimension is impossible whatever the other, which nobody can tell.
    const lost = [...small, sill("depth", "≥ 35 mm"), pivot("depth", "40 to 41 mm")];
    expect((await joint(lost, asked)).says).toEqual(["disputes"]);
  });

  test("only open dimensions give no chance, and a socket and a peg both broken no clearance either", async () => {
    const { page } = await joint([sill("depth", "≥ 35 mm"), pivot("depth", "≥ 40 mm")]);
    expect(page.status).toBe("computed");
    expect(page.numbers).toEqual([]);
    expect(page.sentence).toContain("cannot be decided");
    const { page: half } = await joint([sill("depth", "≥ 35 mm"), pivot("depth", "40 mm")], asked);
    expect(half.numbers.map(({ name }) => name)).toEqual(["clearance"]);
    expect(valueOf(half, "clearance")?.interval).toMatch(/ to …$/);
  });

  test("pairs given by hand keep their bounds, and their unlike names are warned of", async () => {
    const { page } = await joint(
      [sill("bore", "≥ 45 mm", { id: "bore" }), pivot("diagonal", "40.5 ± 0.4 mm", { id: "diagonal" })],
      { inputs: { pairs: [["bore", "diagonal"]] } },
    );
    expect(page.entries.left).toEqual([]);
    expect(page.sentence).toContain("is compatible with");
    expect(page.cautions.met.join(" ")).toContain("Dimensions of different names");
  });

  test("things named in a row are matched in that order, and none enters twice", async () => {
    const size = (of: string, value: string) => ({ id: `${of}-width`, of, dimension: "width", value });
    const { model } = await evaluate(
      corpus({
        artefacts: ["s1", "s2", "p1", "p2"].map((id) => ({ id, name: id })),
        measurements: [size("s1", "42 mm"), size("s2", "52 mm"), size("p1", "40 mm"), size("p2", "50 mm")],
        derivations: [
          {
            id: "joints",
            plugin: "clearance",
            inputs: {
              socket: { of: ["s1", "s2"], dimension: "width" },
              peg: { of: ["p1", "p2"], dimension: "width" },
            },
          },
        ],
      }),
      plugins,
      emptyMemo(),
      computingHere(plugins),
    );
    const { run, leftOut } = model?.derivations.byId.get("joints") ?? {};
    expect(run?.inputs["socket"]?.map((one) => one.id)).toEqual(["s1-width", "s2-width"]);
    expect(run?.inputs["peg"]?.map((one) => one.id)).toEqual(["p1-width", "p2-width"]);
    expect(leftOut).toEqual([]);
  });

  test("an error common to both makes the interval narrower", async () => {
    const shared = { "shares-error": { with: "the callipers", of: "2 %" } };
    const both = [sill("width", "42.0 ± 0.1 mm", shared), pivot("width", "40.5 ± 0.1 mm", shared)];
    const one = [sill("width", "42.0 ± 0.1 mm", shared), pivot("width", "40.5 ± 0.1 mm")];
    const [alike, apart] = [await joint(both), await joint(one)];
    // u² = 0.1² + 0.1² + (2 % of 1.5)², and with one size alone 0.1² + 0.1² + (2 % of 42)².
    expect(valueOf(alike.page, "clearance")?.interval).toBe("1.217 mm to 1.783 mm");
    expect(valueOf(apart.page, "clearance")?.interval).toBe("−0.1695 mm to 3.17 mm");
    expect(alike.page.cautions.met.join(" ")).toContain("common to both");
  });

  test.each<readonly [string, readonly Part[], object, string]>([
    ["masses", [sill("mass", "3 kg"), pivot("mass", "2 kg")], {}, "wrong-kind"],
    [
      "a loosest that is a mass",
      [sill("width", "3 cm"), pivot("width", "2 cm")],
      { loosest: "2 g" },
      "wrong-kind",
    ],
    [
      "a loosest of nothing",
      [sill("width", "3 cm"), pivot("width", "2 cm")],
      { loosest: "0 cm" },
      "non-positive",
    ],
  ])("%s are refused", async (_, parts, parameters, reason) => {
    const { page, reason: given } = await joint(parts, { parameters });
    expect(page.status).toBe("refused");
    expect(given).toBe(reason);
  });

  test("with several joints, a peg of another is tried in each socket", async () => {
    const parts = [
      { of: "sill/a", dimension: "width", value: "42.0 ± 0.5 mm" },
      { of: "sill/b", dimension: "width", value: "60.0 ± 0.5 mm" },
      { of: "pivot/a", dimension: "width", value: "40.5 ± 0.4 mm" },
      { of: "pivot/b", dimension: "width", value: "58.5 ± 0.4 mm" },
      { of: "sill", dimension: "length", value: "1 m" },
      { of: "pivot", dimension: "length", value: "1 m" },
    ];
    const inputs = { socket: { of: "sill", dimension: "width" }, peg: { of: "pivot", dimension: "width" } };
    const { page } = await joint(parts, { inputs, parameters: { loosest: "5 mm" } });
    // The peg of b is far too wide for a, and that of a far too loose in b.
    expect(page.sentence).toContain("With a peg of another of these sockets the chance would be below 0.001");
    expect(page.sentence).toContain("2 crossings");
    const alike = await joint(
      parts.map((one) => (one.value.startsWith("60") ? { ...one, value: "43.0 ± 0.5 mm" } : one)),
      { inputs },
    );
    // Peg a in socket b: Φ(2.5 / 0.6403) = 0.99995; peg b, 58.5 mm, in socket a: 0.
    expect(alike.page.sentence).toContain("the chance would be 0.5 on average");
  });
});

describe("its figure", () => {
  const parts = [
    sill("width", "42.0 ± 0.5 mm"),
    pivot("width", "40.5 ± 0.4 mm"),
    sill("depth", "≥ 35 mm"),
    pivot("depth", "40 to 41 mm"),
    sill("height", "20 to 21 mm"),
    pivot("height", "20.5 ± 0.2 mm"),
  ];
  const barsIn = (panel: Panel | undefined, role: string) =>
    (panel?.marks ?? []).flatMap((mark) => (mark.mark === "bars" && mark.role === role ? mark.bars : []));

  test("lays the peg into the socket to scale, and gives a bound a side and no curve", async () => {
    const { page } = await joint(parts, { parameters: { loosest: "3 mm" } });
    const [laid, likely] = page.figure?.figure.panels ?? [];
    expect(barsIn(laid, "opening").map(({ to, open }) => [Number(to.toFixed(6)), open])).toEqual([
      [42, null],
      [35, "more"],
      [20.5, null],
    ]);
    expect(barsIn(laid, "piece").map(({ to }) => Number(to.toFixed(6)))).toEqual([40.5, 40.5, 20.5]);
    expect(barsIn(laid, "piece")[1]?.ends?.map((end) => Number(end.toFixed(6)))).toEqual([40, 41]);
    expect(barsIn(laid, "between").map(({ label }) => label)).toEqual([
      "+1.5 mm",
      "at least −6 mm",
      "−0.5 to +0.5 mm",
    ]);
    const of = (mark: Mark["mark"]) => (likely?.marks ?? []).filter((one) => one.mark === mark);
    expect([of("line").length, of("band").length, of("dots").length]).toEqual([2, 2, 1]);
    expect(barsIn(likely, "between")).toMatchObject([{ row: 1, open: "more" }]);
    expect(barsIn(likely, "between")[0]?.from).toBeCloseTo(-6, 9);
    for (const one of of("band")) {
      if (one.mark !== "band") continue;
      expect(Math.min(...one.points.map(([x]) => x))).toBeCloseTo(0, 9);
      expect(Math.max(...one.points.map(([x]) => x))).toBeLessThanOrEqual(3 + 1e-9);
    }
  });

  test("holds nothing but finite numbers, whatever is measured how", () => {
    const form = fc.constantFrom("value", "range", "at-least", "at-most") satisfies fc.Arbitrary<
      Quantity["form"]
    >;
    const quantity = fc
      .record({
        value: fc.double({ min: 1e-4, max: 9, noNaN: true }),
        u: fc.constantFrom(0, 1e-9, 1e-3, 0.1),
        form,
      })
      .map(({ value, u, form: as }): Quantity => ({
        text: "",
        kind: "length",
        form: as,
        unit: "cm",
        unitSize: 0.01,
        value,
        digit: 0,
        shared: [],
        low: as === "at-most" ? null : value * (as === "range" ? 0.9 : 1),
        high: as === "at-least" ? null : value * (as === "range" ? 1.1 : 1),
        u: as === "at-least" || as === "at-most" ? null : u,
      }));
    const numbersIn = (value: unknown): readonly number[] => {
      if (typeof value === "number") return [value];
      return value !== null && typeof value === "object" ? Object.values(value).flatMap(numbersIn) : [];
    };
    fc.assert(
      fc.property(
        fc.array(fc.tuple(quantity, quantity), { minLength: 1, maxLength: 5 }),
        fc.boolean(),
        (pairs, limited) => {
          const measured = (side: 0 | 1): readonly Measured[] =>
            pairs.map((pair, i) => ({
              id: `m${side}${i}`,
              artefact: `a${side}`,
              dimension: `d${i}`,
              state: "complete",
              source: null,
              quantity: pair[side],
            }));
          const loosest = { kind: "quantity", value: { ...pairs[0]?.[0], value: 0.01 } as Quantity } as const;
          const settings = limited ? { loosest } : {};
          const tools = { random: randomFrom(1), report: () => {}, looks: 1 };
          const made = clearance.compute({ socket: measured(0), peg: measured(1) }, settings, tools);
          if (isRefusal(made)) throw new Error(inEnglish(made.message));
          for (const number of numbersIn([made.numbers, clearance.figure(made, settings, (id) => id)]))
            expect(Number.isFinite(number)).toBe(true);
          for (const { value, low, high } of Object.values(made.numbers)) {
            expect(low === null && high === null ? 0 : value).toBeGreaterThanOrEqual(
              (low ?? -Infinity) - 1e-9,
            );
            expect(value).toBeLessThanOrEqual((high ?? Infinity) + 1e-9);
          }
          expect(inEnglish(clearance.sentence(made, settings, (id) => id))).not.toMatch(
            /NaN|undefined|Infinity|∞/,
          );
        },
      ),
    );
  });

  test("is drawn without a browser, a wall for each side of a socket that has one", async () => {
    const { page } = await joint(parts);
    if (!page.figure) throw new Error("no figure");
    for (const width of [320, 720]) {
      const svg = draw(page.figure.figure, { document: svgDocument(), width, palette: light, id: "f" });
      const text = svgText(svg);
      expect(text).not.toMatch(/NaN|undefined|Infinity|<style|style=|class=|currentColor/);
      expect(text).toContain("−0.5 to +0.5 mm");
      const walls = [...svg.querySelectorAll("[stroke-width='2.4'] line, line[stroke-width='2.4']")];
      expect(walls).toHaveLength(5);
    }
  });

  test("is in its tables, without the heights of curves that have none", async () => {
    const { page } = await joint(parts);
    const [laid, likely] = (page.figure?.figure.panels ?? []).map(tablesOf);
    expect(laid?.find((table) => table.title === "socket")?.rows.map((row) => row[2])).toEqual([
      "42",
      "≥ 35",
      "20.5",
    ]);
    expect(likely?.map((table) => table.title)).toEqual([
      "just fits",
      "clearance of each dimension",
      "left open by a bound",
    ]);
  });
});

test("of a withheld part neither size, name nor clearance is told in words or drawn", async () => {
  const parts = [
    sill("width", "42.0 ± 0.5 mm"),
    pivot("width", "40.5 ± 0.4 mm"),
    sill("depth", "77.7 mm"),
    pivot("depth", "66.6 mm", { id: "quiet" }),
  ];
  const open = await joint(parts);
  expect(open.page.sentence).toContain("depth +11.1 mm");
  expect(open.page.figure?.figure.panels).toHaveLength(2);
  const { page } = await joint(parts, {}, { withhold: ["quiet"] });
  expect(page.sentence).toBe("Peg and socket are compatible (the chance is 0.99).");
  expect(page.figure?.figure.panels).toEqual([]);
  expect(JSON.stringify(page)).not.toMatch(/66\.6|11\.1|quiet/);
});
