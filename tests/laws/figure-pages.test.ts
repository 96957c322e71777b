import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, test } from "vitest";
import { plugins } from "../../plugins/index.ts";
import { build } from "../../src/build.ts";
import type { Checked, Lens, Model, SourceFile } from "../../src/build.ts";
import { readCorpusFolder } from "../../src/host/corpus-folder.ts";
import { computingHere, emptyMemo, evaluate } from "../../src/host/evaluate.ts";
import { numberPage } from "../../src/show/numbers/number.ts";
import type { NumberPage } from "../../src/show/numbers/number.ts";
import { numbersPage } from "../../src/show/numbers/numbers.ts";

const corpus = (path: string): readonly SourceFile[] =>
  readCorpusFolder(fileURLToPath(new URL(`../../${path}`, import.meta.url)));
const memo = emptyMemo();

async function pagesOf(files: readonly SourceFile[], lens: Lens = {}) {
  const checked: Checked<Model> = await evaluate(files, plugins, memo, computingHere(plugins), { lens });
  const { model } = checked;
  if (!model) throw new Error("no model");
  const page = (id: string): NumberPage => {
    const found = numberPage(model, plugins, memo.compute, id);
    if (!found) throw new Error(`no page of ${id}`);
    return found;
  };
  return { model, findings: checked.findings, page, list: numbersPage(model, plugins) };
}

describe("the numbers of the demo", () => {
  let demo: Awaited<ReturnType<typeof pagesOf>>;
  beforeAll(async () => {
    demo = await pagesOf(corpus("demo-corpus"));
  }, 60_000);

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
      const textOf = (warning: string) => plugin.cautions.find((one) => one.id === warning)?.text;
      expect(new Set(met)).toEqual(new Set(derived.warnings.map(textOf)));
      for (const one of plugin.cautions.filter((caution) => caution.whenMet))
        expect(general).not.toContain(one.text);
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
