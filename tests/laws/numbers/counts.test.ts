import * as fc from "fast-check";
import { expect, test } from "vitest";
import { fisherExact } from "../../../plugins/counts/exact/fisher.ts";
import { clopperPearson, wilson } from "../../../plugins/counts/exact/proportion.ts";
import { rateEnds, rateRatio } from "../../../plugins/counts/exact/rates.ts";
import { plugins } from "../../../plugins/index.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import { svgDocument } from "../../../src/host/print/svg-document.ts";
import { numberPage } from "../../../src/show/numbers/number.ts";
import { draw } from "../../../src/write/figure/draw.ts";
import { svgText } from "../../../src/write/figure/svg-text.ts";
import { light } from "../../../src/write/pen/palette.ts";
import { wholeInEnglish } from "../base/in-english.ts";

const near = (got: number, expected: number, share = 1e-9): void =>
  expect(Math.abs(got - expected), `${got} for ${expected}`).toBeLessThanOrEqual(share * Math.abs(expected));

// By scipy 1.17.1: fisher_exact, contingency.odds_ratio (conditional), binomtest with proportion_ci exact, chi2.ppf.
const tables = [
  {
    table: [12, 5, 3, 14],
    p: 0.0048957925729217495,
    ratio: 10.255264437039445,
    low: 1.7942814275979522,
    high: 81.91788098806329,
  },
  {
    table: [30, 70, 45, 55],
    p: 0.040534006514982644,
    ratio: 0.5255296904330916,
    low: 0.2804322404515849,
    high: 0.9746424296295366,
  },
  {
    table: [8, 2, 1, 5],
    p: 0.034965034965034975,
    ratio: 15.465819716921013,
    low: 1.0088492079476723,
    high: 1059.6394950862782,
  },
  {
    table: [3, 1, 1, 3],
    p: 0.485714285714286,
    ratio: 6.408319658199662,
    low: 0.21173559544657966,
    high: 626.2435305888141,
  },
] as const;

test.each(tables)(
  "Fisher's test of $table to the last digits",
  ({ table: [a, b, c, d], p, ratio, low, high }) => {
    const found = fisherExact(a, b, c, d);
    near(found.p, p);
    near(found.ratio, ratio, 1e-8);
    near(found.low, low, 1e-8);
    near(found.high, high, 1e-8);
  },
);

test("three of four against one of four: the upper end solves the equation that Fisher's test sets", () => {
  const { high } = fisherExact(3, 1, 1, 3);
  // All four of the first row have it with chance w⁴ / (1 + 16 w + 36 w² + 16 w³ + w⁴), which is to be 97.5 %.
  near(high ** 4 / (1 + 16 * high + 36 * high ** 2 + 16 * high ** 3 + high ** 4), 0.975, 1e-12);
});

test.each([
  { counts: [12, 30, 5, 40], p: 0.026358489390296405, low: 1.049394525563755, high: 11.594641491573691 },
  { counts: [3, 12.5, 9, 14], p: 0.15372762596840434, low: 0.06501043630826914, high: 1.4959573418478123 },
  { counts: [4, 10, 0, 12], p: 0.042688340960316914, low: 0.7921488232320752, high: Infinity },
  { counts: [140, 1000, 101, 900], p: 0.09363228727138821, low: 0.95899880790734, high: 1.6276769305001422 },
] as const)("the ratio of rates for $counts", ({ counts: [x, t, y, s], p, low, high }) => {
  const found = rateRatio({ count: x, exposure: t }, { count: y, exposure: s });
  near(found.p, p);
  near(found.low, low);
  if (high === Infinity) expect(found.high).toBe(Infinity);
  else near(found.high, high);
});

test.each([
  [0, 0, 3.6888794541139354],
  [1, 0.025317807984289876, 5.571643390938898],
  [7, 2.8143630515198654, 14.422675361702376],
  [40, 28.576586441788965, 54.468646963984064],
  // By mpmath 1.3, findroot on the regularised gammainc at 30 digits.
  [1000, 938.973018407695215623549555954, 1063.9521360163019802818504463],
  [5000, 4862.35918869489911274029481205, 5140.5489485350048891193948995],
])("the exact interval of a count of %i", (count, low, high) => {
  const [from, to] = rateEnds({ count, exposure: 1 });
  near(from, low);
  near(to, high);
});

const small = fc.integer({ min: 0, max: 12 });

test("Fisher's p is what all tables with the same margins add up to", () => {
  fc.assert(
    fc.property(small, small, small, small, (a, b, c, d) => {
      const choose = (n: number, k: number): number =>
        k < 0 || k > n
          ? 0
          : Array.from({ length: k }, (_, i) => (n - i) / (i + 1)).reduce((x, y) => x * y, 1);
      const weight = (x: number): number => choose(a + c, x) * choose(b + d, a + b - x);
      const all = Array.from({ length: a + b + 1 }, (_, x) => weight(x));
      const total = all.reduce((sum, one) => sum + one, 0);
      const least = all.filter((one) => one <= weight(a) * (1 + 1e-7)).reduce((sum, one) => sum + one, 0);
      near(fisherExact(a, b, c, d).p, least / total, 1e-9);
    }),
  );
});

test("sides that change places turn the ratio round and leave p; more exposure does what it must", () => {
  const exposure = fc.integer({ min: 1, max: 500 }).map((parts) => parts / 7);
  fc.assert(
    fc.property(small, small, exposure, exposure, (x, y, s, t) => {
      const there = rateRatio({ count: x, exposure: s }, { count: y, exposure: t });
      const back = rateRatio({ count: y, exposure: t }, { count: x, exposure: s });
      near(back.p, there.p, 1e-9);
      if (there.low > 0) near(back.high, 1 / there.low, 1e-9);
      else expect(back.high).toBe(Infinity);
      expect(there.low).toBeLessThanOrEqual(there.high);
      const table = fisherExact(x, y, y + 1, x + 2);
      const turned = fisherExact(y + 1, x + 2, x, y);
      near(turned.p, table.p, 1e-9);
      if (table.low > 0) near(turned.high, 1 / table.low, 1e-8);
    }),
  );
});

test("the ratio that stands for an infinite one has as much in the outcome half of the time", () => {
  // All x on the first side with chance p ** x = 1 / 2.
  const { middle, ratio } = rateRatio({ count: 4, exposure: 10 }, { count: 0, exposure: 12 });
  expect(ratio).toBe(Infinity);
  const share = 0.5 ** (1 / 4);
  near(middle, ((share / (1 - share)) * 12) / 10, 1e-9);
});

test("intervals of a share hold it, and that of Clopper and Pearson is the wider one at 0 and 1", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 60 }), fc.float({ min: 0, max: 1, noNaN: true }), (n, share) => {
      const x = Math.round(share * n);
      for (const [low, high] of [clopperPearson(x, n), wilson(x, n)]) {
        expect(low).toBeLessThanOrEqual(x / n + 1e-12);
        expect(high).toBeGreaterThanOrEqual(x / n - 1e-12);
        expect(low).toBeGreaterThanOrEqual(0);
        expect(high).toBeLessThanOrEqual(1);
      }
    }),
  );
});

/** A corpus of walls with these measurements and observations, and one comparison. */
async function compared(records: object, derivation: object, settings = "") {
  const files = [
    {
      path: "corpus.yaml",
      text: `title: Walls\ndimensions:\n  edge: { kind: length, also: [Kante] }\n${settings}`,
    },
    {
      path: "records.yaml",
      text: JSON.stringify({ ...records, derivations: [{ id: "d", plugin: "counts", ...derivation }] }),
    },
  ];
  const memo = emptyMemo();
  const { model, findings } = await evaluate(files, plugins, memo, computingHere(plugins));
  if (!model) throw new Error(JSON.stringify(findings));
  return {
    derived: wholeInEnglish(model.derivations.byId.get("d")),
    findings,
    page: wholeInEnglish(numberPage(model, plugins, memo.compute, "d")),
  };
}

const walls = (counts: readonly (readonly [string, string, string])[]): object => ({
  artefacts: [
    { id: "north", name: "the north wall" },
    { id: "south", name: "the south wall" },
    ...counts.map(([id]) => ({ id, name: id })),
  ],
  measurements: counts.flatMap(([of, holes, edge], i) => [
    { id: `holes-${i}`, of, dimension: "holes", value: holes },
    { id: `edge-${i}`, of, dimension: i % 2 === 0 ? "edge" : "Kante", value: edge, state: "preserved" },
  ]),
});
const sides = {
  first: { of: "north", dimension: "holes", state: ["complete", "preserved"] },
  second: { of: "south", dimension: "holes", state: ["complete", "preserved"] },
};

test("counts of the parts of a thing over what of their edges is preserved, by any spelling of the dimension", async () => {
  const records = walls([
    ["north/a", "3", "40 m"],
    ["north/b", "4", "8000 cm"],
    ["south/a", "1", "60 m"],
    ["south/b", "1", "35 m"],
  ]);
  const { derived, page } = await compared(records, { inputs: sides, parameters: { per: "kante" } });
  // R poisson.test(c(7, 2), c(120, 95)).
  near(derived?.numbers["ratio"]?.value ?? 0, 2.77083333333333);
  near(derived?.numbers["ratio"]?.low ?? 0, 0.527572034331186, 1e-6);
  near(derived?.numbers["p"]?.value ?? 0, 0.314822296584698);
  expect(page?.sentence).toBe(
    "7 in 120 m against 2 in 95 m: a ratio of the rates of 2.77 (0.528 to 27.3) departs from equal rates no better than chance, and whether they differ cannot be decided (exact conditional test: p = 0.31).",
  );
});

test("a count without an exposure, and one that is a bound, are left out with the reason", async () => {
  const records = {
    artefacts: [
      { id: "north", name: "N" },
      { id: "south", name: "S" },
      { id: "north/a", name: "A" },
      { id: "north/b", name: "B" },
    ],
    measurements: [
      { id: "n", of: "north", dimension: "holes", value: "7" },
      { id: "ne", of: "north", dimension: "edge", value: "120 m" },
      { id: "na", of: "north/a", dimension: "holes", value: "3" },
      { id: "nb", of: "north/b", dimension: "holes", value: "≥ 3" },
      { id: "nbe", of: "north/b", dimension: "edge", value: "3 m" },
      { id: "s", of: "south", dimension: "holes", value: "2" },
      { id: "se", of: "south", dimension: "edge", value: "95 m" },
    ],
  };
  const { derived } = await compared(records, { inputs: sides, parameters: { per: "edge" } });
  near(derived?.numbers["ratio"]?.value ?? 0, 2.77083333333333);
  const left = new Map(derived?.leftOut.map((one) => [one.id, one.why]));
  expect(left.get("na")).toBe("no edge to count it over");
  expect(left.get("nb")).toBe("bound");
  expect(left.get("nbe")).toBe("nothing was counted over it");
});

test("counts out of things examined are shares; without a `per` counts are per thing, which is said", async () => {
  const counted = (of: string, n: string, all: string): readonly object[] => [
    { id: `${of}-n`, of, dimension: "tooled", value: n },
    { id: `${of}-all`, of, dimension: "stones", value: all },
  ];
  const records = {
    artefacts: [
      { id: "north", name: "N" },
      { id: "south", name: "S" },
    ],
    measurements: [...counted("north", "12", "17"), ...counted("south", "3", "17")],
  };
  const inputs = {
    first: { of: "north", dimension: "tooled" },
    second: { of: "south", dimension: "tooled" },
  };
  const shares = await compared(records, { inputs, parameters: { per: "stones" } });
  near(shares.derived?.numbers["p"]?.value ?? 0, 0.0048957925729217495);
  near(shares.derived?.numbers["ratio"]?.value ?? 0, 10.255264437039445, 1e-8);
  expect(shares.page?.sentence).toContain("not compatible with equal shares");
  expect(shares.derived?.warnings).toContain("read-as-shares");
  const things = await compared(records, { inputs });
  near(things.derived?.numbers["ratio"]?.value ?? 0, 4);
  expect(things.derived?.warnings).toContain("per-thing");
});

const stones = (present: readonly (readonly [string, string])[]): object => ({
  artefacts: [
    { id: "north", name: "N" },
    { id: "south", name: "S" },
    ...[...new Set(present.map(([of]) => of))].map((id) => ({ id, name: id })),
  ],
  observations: present.map(([of, seen], i) => ({
    id: `o${i}`,
    of,
    text: "Looked at.",
    feature: "tooling",
    present: seen,
  })),
});
const features = { first: { of: "north", feature: "tooling" }, second: { of: "south", feature: "tooling" } };

test("observations: what cannot be told, is passed over, or is seen by one and missed by another counts for nothing", async () => {
  const present = [
    ["north/a", "true"],
    ["north/b", "true"],
    ["north/c", "true"],
    ["north/d", "true"],
    ["north/e", "true"],
    ["north/f", "unclear"],
    ["north/g", "not-reported"],
    ["north/h", "true"],
    ["north/h", "false"],
    ["south/a", "true"],
    ["south/b", "true"],
    ...["c", "d", "e", "f", "g", "h"].map((name) => [`south/${name}`, "false"] as const),
    ["south/c", "unclear"],
  ] as const;
  const { derived, page } = await compared(stones(present), { inputs: features });
  // R fisher.test(rbind(c(5, 0), c(2, 6))).
  near(derived?.numbers["p"]?.value ?? 0, 0.020979020979021);
  expect(derived?.warnings).toContain("no-upper-end");
  expect(derived?.numbers["ratio"]).toMatchObject({ high: null });
  near(derived?.numbers["ratio"]?.low ?? 0, 1.21098826259752, 1e-4);
  expect(page?.sentence).toContain("an odds ratio of at least 1.21 is not compatible with equal shares");
  expect(derived?.leftOut.map((one) => one.why)).toEqual(
    expect.arrayContaining([
      "cannot be told",
      "not reported, which is not the same as absent",
      "seen by one, looked for in vain by another",
    ]),
  );
});

test("all or none on both sides: no comparison possible, p is 1 and there is no ratio", async () => {
  for (const seen of ["true", "false"]) {
    const { derived, page } = await compared(
      stones([
        ["north/a", seen],
        ["north/b", seen],
        ["south/a", seen],
        ["south/b", seen],
      ]),
      { inputs: features },
    );
    expect(derived?.numbers["p"]?.value).toBe(1);
    expect(derived?.numbers["ratio"]).toBeUndefined();
    expect(page?.sentence).toContain("no comparison is possible");
  }
});

test("so few that no outcome reaches 5 % is said; a large p never means that there is no difference", async () => {
  const { derived, page } = await compared(
    stones([
      ["north/a", "true"],
      ["north/b", "true"],
      ["south/a", "false"],
    ]),
    { inputs: features },
  );
  expect(derived?.warnings).toContain("comparison-too-small");
  expect(page?.sentence).toContain("cannot be decided");
  expect(page?.sentence).not.toMatch(/no difference|are equal|are the same/);
});

test("counts that come in clusters are cautioned of", async () => {
  const records = walls(
    ["0", "9", "0", "8", "1"].flatMap(
      (n, i) =>
        [
          [`north/${i}`, n, "5 m"],
          [`south/${i}`, "2", "5 m"],
        ] as const,
    ),
  );
  const { derived } = await compared(records, { inputs: sides, parameters: { per: "edge" } });
  expect(derived?.warnings).toContain("clustered");
});

test("where p and interval fall on different sides of 5 % nothing is decided, and it is said", async () => {
  const records = walls([
    ["north/a", "7", "60 m"],
    ["south/a", "3", "100 m"],
  ]);
  const { derived, page } = await compared(records, { inputs: sides, parameters: { per: "edge" } });
  // scipy 1.17.1: binomtest(7, 10, 60 / 160) and its proportion_ci(0.95, "exact"), turned into a ratio.
  near(derived?.numbers["p"]?.value ?? 0, 0.04749274719506502);
  near(derived?.numbers["ratio"]?.low ?? 0, 0.8877963363125961);
  near(derived?.numbers["ratio"]?.high ?? 0, 23.3060464571702);
  expect(derived?.warnings).toContain("p-and-interval-differ");
  expect(page?.sentence).toContain("cannot be decided");
  expect(page?.sentence).not.toContain("not compatible");
});

test("a count or an exposure that is approximate or a range is cautioned of, for it is taken as exact", async () => {
  const warned = async (holes: string, edge: string): Promise<boolean> => {
    const records = walls([
      ["north/a", holes, edge],
      ["south/a", "2", "95 m"],
    ]);
    const { derived } = await compared(records, { inputs: sides, parameters: { per: "edge" } });
    return derived?.warnings.includes("loose-counts") ?? false;
  };
  expect(await warned("7", "120 m")).toBe(false);
  expect(await warned("5–9", "120 m")).toBe(true);
  expect(await warned("c. 7", "120 m")).toBe(true);
  expect(await warned("≥ 7", "120 m")).toBe(false);
});

test("refuses what is no count, one kind against the other, and the same things on both sides", async () => {
  const records = walls([
    ["north/a", "3", "40 m"],
    ["south/a", "1", "60 m"],
  ]);
  const whole = {
    artefacts: [
      { id: "north", name: "N" },
      { id: "south", name: "S" },
    ],
    measurements: ["north", "south"].flatMap((of) => [
      { id: `${of}-n`, of, dimension: "holes", value: "3" },
      { id: `${of}-e`, of, dimension: "edge", value: "40 m" },
    ]),
  };
  const all = { first: { of: "north" }, second: { of: "south" } };
  expect((await compared(whole, { inputs: all })).derived?.reason).toBe("no-count");
  expect(
    (await compared(records, { inputs: { first: sides.first, second: sides.first } })).derived?.reason,
  ).toBe("same-things");
  const both = { ...records, observations: [{ id: "o", of: "south/a", text: "Seen.", feature: "tooling" }] };
  const mixed = { inputs: { first: sides.first, second: features.second } };
  expect((await compared(both, mixed)).derived?.reason).toBe("mixed-kinds");
});

test("the figure is drawn without a browser; of a withheld single measurement neither panel nor sentence tells the size", async () => {
  const records = walls([
    ["north/a", "3", "41 m"],
    ["north/b", "4", "79 m"],
    ["south/a", "2", "95 m"],
  ]);
  const asked = { inputs: sides, parameters: { per: "edge" } };
  const open = await compared(records, asked);
  const figure = open.page?.figure?.figure ?? { title: "", panels: [] };
  expect(figure.panels).toHaveLength(2);
  for (const width of [320, 720]) {
    const text = svgText(draw(figure, { document: svgDocument(), width, palette: light, id: "f" }));
    expect(text).not.toMatch(/NaN|undefined|Infinity|style=/);
  }
  const hidden = await compared(records, asked, "withhold: [south/a]\n");
  const said = JSON.stringify([hidden.page?.figure, hidden.page?.sentence, hidden.page?.entries]);
  expect(said).not.toMatch(/95 m|south\/a|2 in/);
  expect(hidden.page?.figure?.figure.panels).toHaveLength(1);
});
