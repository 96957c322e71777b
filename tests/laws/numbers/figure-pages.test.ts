import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { plugins } from "../../../plugins/index.ts";
import { build } from "../../../src/build.ts";
import type { Checked, Lens, Model, SourceFile } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import { numberPage } from "../../../src/show/numbers/number.ts";
import type { NumberPage } from "../../../src/show/numbers/number.ts";
import { numbersPage } from "../../../src/show/numbers/numbers.ts";
import type { Worded } from "../../../src/base/text/said/worded.ts";
import { demoMemo } from "../../demo-memo.ts";
import { wholeInEnglish } from "../base/in-english.ts";

const corpus = (path: string): readonly SourceFile[] =>
  readCorpusFolder(fileURLToPath(new URL(`../../../${path}`, import.meta.url)));
const memo = await demoMemo();

async function pagesOf(files: readonly SourceFile[], lens: Lens = {}) {
  const checked: Checked<Model> = await evaluate(files, plugins, memo, computingHere(plugins), { lens });
  const { model } = checked;
  if (!model) throw new Error("no model");
  const page = (id: string): Worded<NumberPage> => {
    const found = numberPage(model, plugins, memo.compute, id);
    if (!found) throw new Error(`no page of ${id}`);
    return wholeInEnglish(found);
  };
  return {
    model,
    findings: checked.findings,
    page,
    list: wholeInEnglish(numbersPage(model, plugins)),
  };
}

describe("the numbers of the demo", () => {
  let demo: Awaited<ReturnType<typeof pagesOf>>;
  beforeAll(async () => {
    demo = await pagesOf(corpus("demo-corpus"));
  });

  test("all stand in the list, under each claim they bear on, and each has a page", () => {
    const ids = demo.model.graph.list("derivations").map((one) => one.id);
    const listed = demo.list.flatMap((group) => group.rows.map((row) => row.id));
    expect([...new Set(listed)].sort()).toEqual([...ids].sort());
    for (const group of demo.list) {
      for (const row of group.rows) {
        const bearing = demo.page(row.id).bearings.find((one) => one.claim === group.claim?.id);
        expect(bearing?.says ?? null, row.id).toBe(row.says);
      }
    }
  });

  test("what was taken and what was left out are all there is of it", () => {
    for (const { id } of demo.model.graph.list("derivations")) {
      const derived = demo.model.derivations.byId.get(id);
      const { taken, left, withheld } = demo.page(id).entries;
      expect(withheld).toBe(0);
      const used = new Set(derived?.used);
      for (const line of taken) expect(used.has(line.id), line.id).toBe(true);
      expect(new Set([...taken, ...left].map((line) => line.id)).size).toBeGreaterThanOrEqual(used.size);
      for (const line of left) expect(line.why, line.id).not.toBeNull();
    }
    const [first] = demo.page("ring-unit").entries.taken;
    expect(first).toMatchObject({ written: "1.62 ± 0.02 m", inSI: "1.62 ± 0.02 m", input: null });
  });

  test("terms are told as they were written, with what was found", () => {
    const [bearing] = demo.page("ring-unit").bearings;
    expect(bearing).toMatchObject({ says: "supports", supportsWhen: "p < 0.01", disputesWhen: "p > 0.50" });
    expect(bearing?.found.map((one) => one.name)).toEqual(["p"]);
    const scale = demo.page("plan-scale").bearings[0];
    expect(scale?.disputesWhen).toBe("p < 0.01, or k < 1.9, or k > 2.1");
    expect(demo.page("depth-scale").bearings.map((one) => one.largeP)).toEqual([false, true]);
  });

  test("cautions that were met come first, and none that was not met is stated of these data", () => {
    for (const { id } of demo.model.graph.list("derivations")) {
      const derived = demo.model.derivations.byId.get(id);
      const plugin = plugins.find((one) => one.id === derived?.run?.plugin);
      if (!plugin || derived?.status !== "computed") continue;
      const { met, general } = demo.page(id).cautions;
      const textOf = (warning: string) =>
        inEnglish(plugin.cautions.find((one) => one.id === warning)?.text ?? "");
      expect(new Set(met)).toEqual(new Set(derived.warnings.map(textOf)));
      for (const one of plugin.cautions.filter((caution) => caution.whenMet))
        expect(general).not.toContain(inEnglish(one.text));
    }
    expect(demo.page("outer-spacing").cautions.met).toHaveLength(1);
  });

  test("a refused number says why, and shows no figure", () => {
    const page = demo.page("costa-foot-fit");
    expect(page).toMatchObject({ status: "refused", figure: null, sentence: null, turns: null, numbers: [] });
    expect(page.why).toContain("found in these data");
    expect(page.unit?.foundIn.map((piece) => piece.to)).toEqual(["ring-a"]);
  });

  test("the finding that a verdict depends on disputed readings and the page agree, number by number", () => {
    const rule = "verdict-depends-on-disputed-measurement";
    const told = new Set(demo.findings.filter((one) => one.rule === rule).map((one) => one.about[0]));
    for (const { id } of demo.model.graph.list("derivations")) {
      const tried = demo.page(id).turns?.tried ?? [];
      expect(
        tried.some((line) => line.turned.length > 0),
        id,
      ).toBe(told.has(id));
    }
  });
});

test("a year back, a number is what it was on what was in print", async () => {
  const early = await pagesOf(corpus("demo-corpus"), { asOf: 1990 });
  const { taken, left } = early.page("ring-unit").entries;
  const years = taken.flatMap((line) => early.model.graph.provenance(line.id).year ?? []);
  expect(taken.length).toBeGreaterThan(0);
  for (const year of years) expect(year).toBeLessThanOrEqual(1990);
  expect(left.some((line) => line.why === "not in print or lost")).toBe(true);
});

describe("what would turn it", () => {
  const folder = "tests/corpora/rules/verdict-depends-on-disputed-measurement";

  test("is told with the numbers that other readings give", async () => {
    const { model, page } = await pagesOf(corpus(`${folder}/fires`));
    const [derivation] = model.graph.list("derivations");
    const turns = page(derivation?.id ?? "").turns;
    const turning = turns?.tried.filter((line) => line.turned.length > 0) ?? [];
    expect(turns?.pending).toBe(0);
    expect(turning.length).toBeGreaterThan(0);
    expect(turning.some((line) => line.throughout && line.numbers.length > 0)).toBe(true);
  });

  test("is nothing in the near twin", async () => {
    const { model, page } = await pagesOf(corpus(`${folder}/near-twin`));
    const [derivation] = model.graph.list("derivations");
    expect(page(derivation?.id ?? "").turns?.tried.flatMap((line) => line.turned)).toEqual([]);
  });

  test("is said of each claim as it is: supported, disputed, and what comes of each", async () => {
    const files = corpus(`${folder}/fires`).map((file) =>
      file.path === "records.yaml"
        ? {
            ...file,
            text: file.text
              .replace("claims:", "claims:\n  - { id: in-feet, text: The ring was laid out in feet. }")
              .replace(
                "bears-on: [",
                'bears-on: [{ claim: in-feet, disputes: { p: "< 0.05" }, supports: { phi: "< 1" } }, ',
              ),
          }
        : file,
    );
    const { findings } = await pagesOf(files);
    const told = findings.find((one) => one.rule === "verdict-depends-on-disputed-measurement");
    expect(inEnglish(told?.message ?? "")).toBe(
      "“the unit fit number” disputes “The ring was laid out in feet” and supports “The ring was laid out in paces”, but with the readings of Ferrant 1937 it supports “The ring was laid out in feet” and is inconclusive about “The ring was laid out in paces”.",
    );
  });

  test("is not claimed to be nothing before it was tried", async () => {
    const files = corpus(`${folder}/fires`);
    const { model } = await pagesOf(files);
    const [derivation] = model.graph.list("derivations");
    const id = derivation?.id ?? "";
    const key = model.derivations.byId.get(id)?.run?.key ?? "";
    const outcome = memo.compute.get(key);
    if (!outcome) throw new Error("not computed");
    const fresh = emptyMemo(new Map([[key, outcome]]));
    const built = build(files, plugins, fresh).model;
    if (!built) throw new Error("no model");
    const turns = numberPage(built, plugins, fresh.compute, id)?.turns;
    expect(turns?.tried).toEqual([]);
    expect(turns?.pending).toBeGreaterThan(0);
  });
});

test("nothing withheld can be read off a number's page, its figure, or the list", async () => {
  const secret = 417.31;
  const values = [150, 301, 452.5, 598, 748, 903];
  const corpusWith = (withhold: readonly string[]): readonly SourceFile[] => [
    { path: "corpus.yaml", text: JSON.stringify({ title: "T", withhold, units: { hand: { is: "15 cm" } } }) },
    {
      path: "records.yaml",
      text: JSON.stringify({
        artefacts: [
          ...values.map((_, i) => ({ id: `open-${i}`, name: `Open ${i}` })),
          { id: "hidden-stone", name: "The hidden stone" },
        ],
        measurements: [
          ...values.map((value, i) => ({
            id: `m${i}`,
            of: `open-${i}`,
            dimension: "side",
            value: `${value} cm`,
          })),
          { id: "m-secret", of: "hidden-stone", dimension: "side", value: `${secret} cm` },
        ],
        claims: [
          { id: "c", text: "In hands." },
          { id: "unsaid", text: "The unsayable.", about: ["hidden-stone"] },
        ],
        derivations: [
          {
            id: "fit",
            plugin: "unit-fit",
            parameters: { unit: "hand" },
            inputs: { values: [...values.map((_, i) => `m${i}`), "m-secret"] },
            "bears-on": [
              {
                claim: "c",
                supports: { p: "< 0.05" },
              },
              {
                claim: "unsaid",
                supports: { p: "< 0.05" },
              },
            ],
          },
          { id: "row", plugin: "spacing", inputs: { gaps: [...values.map((_, i) => `m${i}`), "m-secret"] } },
        ],
      }),
    },
  ];
  const open = await pagesOf(corpusWith([]));
  const all = JSON.stringify([open.page("fit"), open.page("row"), open.list]);
  for (const word of ["The hidden stone", "m-secret", "417.31", "unsayable"]) expect(all).toContain(word);

  const held = await pagesOf(corpusWith(["hidden-stone", "unsaid"]));
  const { figure, entries } = held.page("fit");
  expect(entries).toMatchObject({ withheld: 1 });
  expect(figure?.leftOut).toBe(true);
  expect(figure?.figure.panels.map((panel) => panel.shows)).toEqual(["together"]);
  expect(held.page("row").figure?.figure.panels).toEqual([]);
  const shown = JSON.stringify([held.page("fit"), held.page("row"), held.list]);
  for (const word of ["hidden-stone", "hidden stone", "m-secret", "417.31", "4.1731", "unsayable"])
    expect(shown).not.toContain(word);
});

/** A corpus of one file of records, as JSON, which is YAML. */
function corpusWith(records: object, settings: object = {}, bibliography = ""): readonly SourceFile[] {
  return [
    {
      path: "corpus.yaml",
      text: JSON.stringify({ title: "T", bibliography: ["b.bib"], ...settings }),
    },
    { path: "b.bib", text: bibliography },
    { path: "records.yaml", text: JSON.stringify(records) },
  ];
}

/** Things with one measurement each. */
function measuredAs(name: string, values: readonly string[]) {
  return {
    artefacts: values.map((_, i) => ({ id: `${name}-${i}`, name: `${name} ${i}` })),
    measurements: values.map((value, i) => ({
      id: `${name}-m${i}`,
      of: `${name}-${i}`,
      dimension: "side",
      value,
    })),
  };
}

const inHands = ["150 cm", "301 cm", "452.5 cm", "598 cm", "748 cm", "903 cm"];
const hand = { units: { hand: { is: "15 cm" } } };

test("a year back, a claim that nothing in print names yet is not told with a number", async () => {
  const files = corpusWith(
    {
      ...measuredAs("block", inHands),
      claims: [
        { id: "early", text: "In hands, said early.", from: "old-1900" },
        { id: "late", text: "In hands, said late.", from: "new-2000" },
      ],
      derivations: [
        {
          id: "fit",
          plugin: "unit-fit",
          parameters: { unit: "hand" },
          inputs: { values: inHands.map((_, i) => `block-m${i}`) },
          "bears-on": ["early", "late"].map((claim) => ({ claim, supports: { p: "< 0.05" } })),
        },
      ],
    },
    hand,
    "@book{old-1900, author = {Old, Ann}, title = {A}, year = 1900}\n@book{new-2000, author = {New, Ann}, title = {B}, year = 2000}\n",
  );
  const claims = ({ page, list }: Awaited<ReturnType<typeof pagesOf>>) => [
    list.map((group) => group.claim?.id),
    page("fit").bearings.map((one) => one.claim),
  ];
  expect(claims(await pagesOf(files))).toEqual([
    ["early", "late"],
    ["early", "late"],
  ]);
  expect(claims(await pagesOf(files, { asOf: 1950 }))).toEqual([["early"], ["early"]]);
});

test("a withheld reading is not named beside those it entered one mean with", async () => {
  const { artefacts, measurements } = measuredAs("block", inHands);
  const records = {
    scholars: [
      { id: "ann", name: "Ann Open" },
      { id: "zoe", name: "Zoe Quiet" },
    ],
    artefacts,
    measurements: [
      ...measurements.map((one) => ({ ...one, by: "ann" })),
      { id: "quiet", of: "block-0", dimension: "side", value: "151 cm", by: "zoe" },
    ],
    claims: [{ id: "c", text: "In hands." }],
    derivations: [
      {
        id: "fit",
        plugin: "unit-fit",
        parameters: { unit: "hand" },
        inputs: { values: { of: artefacts.map((one) => one.id), dimension: "side" } },
        "bears-on": [{ claim: "c", supports: { p: "< 0.05" } }],
      },
    ],
  };
  const open = await pagesOf(corpusWith(records, hand));
  expect(JSON.stringify(open.page("fit"))).toContain("Quiet");
  const held = await pagesOf(corpusWith(records, { ...hand, withhold: ["quiet"] }));
  expect(held.page("fit").entries.withheld).toBe(1);
  expect(JSON.stringify(held.page("fit"))).not.toContain("Quiet");
});

test("two terms for one claim are told as one, and turn nothing by themselves", async () => {
  const { artefacts, measurements } = measuredAs("block", inHands);
  const records = {
    artefacts,
    measurements: [
      ...measurements.map((one) => ({ ...one, from: "old-1900" })),
      { id: "again", of: "block-0", dimension: "side", value: "150.2 cm", from: "new-2000" },
    ],
    claims: [{ id: "c", text: "In hands." }],
    derivations: [
      {
        id: "fit",
        plugin: "unit-fit",
        parameters: { unit: "hand" },
        inputs: { values: { of: artefacts.map((one) => one.id), dimension: "side" } },
        "bears-on": [
          { claim: "c", supports: { p: "< 0.05" } },
          { claim: "c", disputes: { p: "> 0.5" } },
        ],
      },
    ],
  };
  const books =
    "@book{old-1900, author = {Old, Ann}, title = {A}, year = 1900}\n@book{new-2000, author = {New, Ann}, title = {B}, year = 2000}\n";
  const { page, list } = await pagesOf(corpusWith(records, hand, books));
  const { tried, pending } = page("fit").turns ?? {};
  expect(pending).toBe(0);
  expect(tried?.length).toBeGreaterThan(0);
  expect(tried?.flatMap((line) => line.turned)).toEqual([]);
  expect(list[0]?.rows.map((row) => row.says)).toEqual(["supports"]);
});

test("a condition on a name that every object has hides no number", async () => {
  const records = {
    ...measuredAs("block", inHands),
    claims: [{ id: "c", text: "In hands." }],
    derivations: [
      {
        id: "fit",
        plugin: "unit-fit",
        parameters: { unit: "hand" },
        inputs: { values: inHands.map((_, i) => `block-m${i}`) },
        "bears-on": [{ claim: "c", supports: { constructor: "< 1" } }],
      },
    ],
  };
  const { page, list } = await pagesOf(corpusWith(records, hand));
  expect(list[0]?.rows[0]?.main).toHaveLength(1);
  expect(page("fit").bearings[0]).toMatchObject({ supportsWhen: "constructor < 1", found: [] });
  expect(page("fit").bearings[0]?.trouble).toContain("constructor");
});

const textsIn = (value: unknown): readonly string[] => {
  if (typeof value === "string") return [value];
  return value !== null && typeof value === "object" ? Object.values(value).flatMap(textsIn) : [];
};

describe("figures in words", () => {
  const scaled = (larger: readonly string[], smaller: readonly string[]) => {
    const [big, small] = [measuredAs("big", larger), measuredAs("small", smaller)];
    return corpusWith({
      artefacts: [...big.artefacts, ...small.artefacts],
      measurements: [...big.measurements, ...small.measurements],
      derivations: [
        {
          id: "scale",
          plugin: "scaling",
          inputs: { pairs: larger.map((_, i) => [`big-m${i}`, `small-m${i}`]) },
        },
      ],
    });
  };

  test("are never in the notation of a machine", async () => {
    const coarse = await pagesOf(scaled(["2 ± 0.5 m", "4 ± 1 m"], ["1 ± 0.2 m", "2 ± 0.5 m"]));
    const small = await pagesOf(
      corpusWith(
        {
          ...measuredAs(
            "block",
            [1999.4, 3998.8, 5998.2, 9997, 13995.8, 15995.2].map((mm) => `${mm} mm`),
          ),
          derivations: [
            {
              id: "search",
              plugin: "unit-fit",
              parameters: { low: "900 mm", high: "1100 mm", draws: "50" },
              inputs: { values: [0, 1, 2, 3, 4, 5].map((i) => `block-m${i}`) },
            },
          ],
        },
        hand,
      ),
    );
    expect(coarse.page("scale").sentence).toContain("would hardly be missed");
    expect(small.page("search").sentence).toContain("999.7 mm");
    for (const page of [coarse.page("scale"), small.page("search")]) {
      const texts = textsIn([page.sentence, page.figure]);
      expect(texts.length).toBeGreaterThan(5);
      for (const text of texts) expect(text).not.toMatch(/\de[+-]?\d/);
    }
  });

  test("one ratio is drawn no surer than it is told: without ends where the number has none", async () => {
    const { page } = await pagesOf(scaled(["2 ± 0.1 m"], ["1 ± 0.6 m"]));
    const scale = page("scale");
    expect(scale.numbers.find((one) => one.name === "k")?.interval).toBeNull();
    const dots = scale.figure?.figure.panels[0]?.marks.flatMap((one) =>
      one.mark === "dots" ? one.dots : [],
    );
    expect(dots?.map((dot) => dot.xEnds)).toEqual([undefined]);
  });

  test("what is less than half a unit lies further out than half a unit, and that is said", async () => {
    const { page } = await pagesOf(
      corpusWith(
        {
          ...measuredAs("block", ["3 cm", ...inHands]),
          derivations: [
            {
              id: "fit",
              plugin: "unit-fit",
              parameters: { unit: "hand" },
              inputs: { values: [0, 1, 2, 3, 4, 5, 6].map((i) => `block-m${i}`) },
            },
          ],
        },
        hand,
      ),
    );
    const [, residuals] = page("fit").figure?.figure.panels ?? [];
    expect(residuals?.caption).not.toContain("as far as anything can lie");
    expect(residuals?.caption).toContain("less than half the unit");
  });

  test("a median known as a range is told as one", async () => {
    const gaps = ["50–60 cm", "52–64 cm", "55–70 cm", "66–80 cm", "75–90 cm"];
    const { page } = await pagesOf(
      corpusWith({
        ...measuredAs("gap", gaps),
        derivations: [{ id: "row", plugin: "spacing", inputs: { gaps: gaps.map((_, i) => `gap-m${i}`) } }],
      }),
    );
    const interval = page("row").numbers.find((one) => one.name === "median")?.interval ?? "";
    const [low, high] = interval.split(" to ").map((end) => Number.parseFloat(end));
    const shares = page("row").figure?.figure.panels[1];
    expect(shares?.caption).toContain(`lies between ${low} and ${high} cm`);
    expect(shares?.marks.some((mark) => mark.mark === "rule")).toBe(false);
    expect(shares?.marks.some((mark) => mark.mark === "reach" && mark.axis === "x")).toBe(true);
  });

  test("the SI column has the digits that what entered was known to, and counts are whole", async () => {
    const values = ["≥ 240 cm", "12345", "2.5 m", "18.20 m ± 5 mm"];
    const sides = measuredAs("block", values);
    const { page } = await pagesOf(
      corpusWith({
        artefacts: sides.artefacts,
        measurements: sides.measurements.map((one, i) => ({
          ...one,
          dimension: `dimension ${i}`,
          ...(i === 2 ? { "to-nearest": "50 cm" } : {}),
        })),
        derivations: [
          {
            id: "fit",
            plugin: "unit-fit",
            parameters: { low: "1 m", high: "2 m" },
            inputs: { values: values.map((_, i) => `block-m${i}`) },
          },
        ],
      }),
    );
    const { taken, left } = page("fit").entries;
    const inSI = new Map([...taken, ...left].map((line) => [line.written, line.inSI]));
    expect([...inSI]).toEqual([
      ["12345", "12345"],
      // 50 cm / √12 is 14 cm.
      ["2.5 m", "2.50 ± 0.14 m"],
      ["18.20 m ± 5 mm", "18.200 ± 0.005 m"],
      ["≥ 240 cm", "≥ 2.40 m"],
    ]);
  });
});
