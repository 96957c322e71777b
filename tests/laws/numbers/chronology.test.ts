import { readFileSync } from "node:fs";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { plugins } from "../../../plugins/index.ts";
import { edtfYear } from "../../../src/base/date/edtf.ts";
import type { Lens } from "../../../src/build.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import { svgDocument } from "../../../src/host/print/svg-document.ts";
import { numberPage } from "../../../src/show/numbers/number.ts";
import { tablesOf } from "../../../src/show/numbers/panel-table.ts";
import { draw } from "../../../src/write/figure/draw.ts";
import { svgText } from "../../../src/write/figure/svg-text.ts";
import { light } from "../../../src/write/pen/palette.ts";
import { casesOf } from "../../check-values/case-file.ts";
import { wholeInEnglish } from "../base/in-english.ts";

const sources = [1901, 1988]
  .map((year) => `@book{book-${year}, author = {Stern, Ida}, title = {On ${year}}, date = {${year}}}`)
  .join("\n");

/** A corpus of dated things and relations, and one chronology of `of`. */
async function dated(of: unknown, records: object, lens: Lens = {}, settings = "") {
  const derivations = [{ id: "when", plugin: "chronology", inputs: { of } }];
  const files = [
    { path: "corpus.yaml", text: `title: Dates\nbibliography: [sources.bib]\n${settings}` },
    { path: "sources.bib", text: sources },
    { path: "records.yaml", text: JSON.stringify({ derivations, ...records }) },
  ];
  const memo = emptyMemo();
  const { model, findings } = await evaluate(files, plugins, memo, computingHere(plugins), { lens });
  if (!model) throw new Error(JSON.stringify(findings));
  const derived = wholeInEnglish(model.derivations.byId.get("when"));
  const value = (name: string): number | undefined => derived?.numbers[name]?.value;
  return {
    derived,
    findings,
    page: wholeInEnglish(numberPage(model, plugins, memo.compute, "when")),
    standing: (id: string) => model.judgement.standings.get(id),
    years: [value("consistent"), value("earliest"), value("latest")],
  };
}

const caseOf = (id: string) =>
  casesOf(readFileSync(new URL("../../published/check-values.json", import.meta.url), "utf8")).find(
    (one) => one.id === id,
  );

type Bounds = Readonly<Record<string, readonly [number, number]>>;

/** Case G1-chain as a corpus: dates as EDTF, "before" and distances as relations. */
const chain = {
  artefacts: [
    { id: "coin", name: "the coin", date: "-0050/-0031" },
    { id: "wall", name: "the wall", date: "-0120/-0061" },
  ],
  relations: [
    { id: "s2", earlier: "wall", later: "the floor was laid" },
    { id: "s3", earlier: "the floor was laid", later: "the pit was dug", "at-least": 5 },
    { id: "s4", earlier: "coin", later: "the pit was dug" },
    { id: "s6", earlier: "wall", later: "the pit was dug", "at-most": 60 },
  ],
};

test("a wall, a floor, a pit and a coin: the bounds that scipy's linprog gives (G1-chain), as years", async () => {
  const expected = caseOf("G1-chain")?.expected as { readonly bounds?: Bounds } | undefined;
  const bounds: Bounds = expected?.bounds ?? {};
  const named = { wall: "wall", coin: "coin", floor: "the floor was laid", pit: "The pit  was dug" };
  for (const [event, of] of Object.entries(named)) {
    const [low, high] = bounds[event] ?? [Number.NaN, Number.NaN];
    // The last year ends where the bound lies.
    expect((await dated(of, chain)).years, event).toEqual([1, low, high - 1]);
  }
  expect((await dated(["wall", "the pit was dug"], chain)).years).toEqual([1, -110, -1]);
});

test("a contradiction is told by the fewest statements that clash, each by name (G2)", async () => {
  const records = {
    artefacts: [
      { id: "hearth", name: "the hearth", date: "0800/0900" },
      { id: "wall", name: "the wall", date: "0950/1050" },
      { id: "roof", name: "the roof", date: "0600/0700" },
    ],
    relations: [
      { id: "s1", earlier: "wall", later: "hearth" },
      { id: "s2", earlier: "hearth", later: "the fire" },
    ],
  };
  const { years, page } = await dated("hearth", records);
  expect(years).toEqual([0, undefined, undefined]);
  expect(page?.sentence).toContain("cannot all be true, at least one of these being wrong");
  for (const name of ["the hearth", "the wall", "the wall before the hearth"])
    expect(page?.sentence).toContain(name);
  expect(page?.sentence).not.toMatch(/roof|fire/);
  const mended = await dated({ of: "hearth", without: ["s1"] }, records);
  expect(mended.years).toEqual([1, 800, 900]);
  expect(mended.derived?.leftOut).toEqual([{ id: "s1", why: "left out by name" }]);
});

test("what happened holds its true year, and facts that are turned round are found out", async () => {
  const year = fc.integer({ min: -900, max: 900 });
  await fc.assert(
    fc.asyncProperty(
      fc.array(year, { minLength: 3, maxLength: 7 }),
      fc.integer({ min: 0, max: 60 }),
      async (truth, slack) => {
        const sorted = truth.toSorted((a, b) => a - b);
        const artefacts = sorted.map((at, i) => ({
          id: `thing-${i}`,
          name: `thing ${i}`,
          ...(i % 2 === 0 ? { date: `${edtfYear(at - slack)}/${edtfYear(at + slack)}` } : {}),
        }));
        const relations = sorted.slice(1).map((at, i) => ({
          id: `r-${i}`,
          earlier: `thing-${i}`,
          later: `thing-${i + 1}`,
          ...(at - (sorted[i] ?? 0) > 1 ? { "at-least": at - (sorted[i] ?? 0) - 1 } : {}),
        }));
        const asked = sorted.length - 1;
        const { years } = await dated(`thing-${asked}`, { artefacts, relations });
        expect(years[0]).toBe(1);
        expect(years[1] ?? -Infinity).toBeLessThanOrEqual(sorted[asked] ?? 0);
        expect(years[2] ?? Infinity).toBeGreaterThanOrEqual(sorted[asked] ?? 0);
        const wrong = { id: "wrong", earlier: `thing-${asked}`, later: "thing-0", "at-least": 1 };
        const turned = await dated(`thing-${asked}`, { artefacts, relations: [...relations, wrong] });
        expect(turned.years).toEqual([0, undefined, undefined]);
      },
    ),
    { numRuns: 25 },
  );
});

test("the number leans on its relations, and claims do not enter", async () => {
  const records = {
    ...chain,
    observations: [{ id: "mixed", of: "wall", text: "The layers are mixed." }],
    claims: [
      { id: "late", text: "The pit is late.", dates: [{ event: "the pit was dug", after: "0100" }] },
      { id: "before-christ", text: "The pit was dug before Christ." },
    ],
    arguments: [{ id: "for-late", because: "mixed", therefore: "late" }],
    derivations: [
      {
        id: "when",
        plugin: "chronology",
        inputs: { of: "the pit was dug" },
        "bears-on": [
          {
            claim: "before-christ",
            supports: { consistent: ">= 1", latest: "<= 0" },
            disputes: { earliest: "> 0" },
          },
        ],
      },
    ],
  };
  const open = await dated("", records);
  expect(open.years).toEqual([1, -50, -1]);
  expect(open.derived?.used).toEqual(["s2", "s3", "s4", "s6"]);
  expect([open.standing("when"), open.standing("before-christ")]).toEqual(["stands", "stands"]);
  const attack = { id: "against-s6", because: "mixed", against: ["s6"] };
  const refuted = await dated("", { ...records, arguments: [...records.arguments, attack] });
  expect([refuted.standing("when"), refuted.standing("before-christ")]).toEqual(["falls", "falls"]);
});

test("an event that nothing names fails with the nearest names, and a claim is no event", async () => {
  const { derived, findings } = await dated("the pit was dig", chain);
  expect(derived?.status).toBe("failed");
  expect(derived?.why).toContain("`the pit was dug`");
  expect(findings.map((one) => one.rule)).toContain("failed-derivation");
  const claims = [{ id: "late", text: "The pit is late." }];
  const wrong = await dated("late", { ...chain, claims });
  expect(inEnglish(wrong.findings.find((one) => one.rule === "unknown-reference")?.message ?? "")).toContain(
    "Unexpected claim `late`",
  );
});

test("an end that nothing bounds is left open and said, and dates that are loose are cautioned of", async () => {
  const records = {
    artefacts: [
      { id: "wall", name: "the wall", date: "1850~" },
      { id: "shed", name: "the shed" },
      { id: "well", name: "the well" },
    ],
    relations: [{ id: "r", earlier: "wall", later: "shed" }],
  };
  const { years, derived, page } = await dated("shed", records);
  expect(years).toEqual([1, 1850, undefined]);
  expect(derived?.warnings).toEqual(["loose-dates", "open-end"]);
  expect(page?.sentence).toContain("it falls in 1850 or later");
  expect((await dated("well", records)).derived?.reason).toBe("empty-selection");
});

test("a date counts from when it was in print, and not when its source is lost; histories count", async () => {
  const records = {
    artefacts: [
      {
        id: "jar",
        name: "the jar",
        date: [{ is: "1700/1750", from: "book-1988" }],
        history: [{ when: "1890", what: "mended with rivets", kind: "restoration", from: "book-1901" }],
      },
    ],
  };
  expect((await dated("jar", records)).years).toEqual([1, 1700, 1750]);
  expect((await dated("jar", records, { asOf: 1950 })).years).toEqual([1, undefined, 1890]);
  expect((await dated("jar", records, { without: ["book-1988"] })).years).toEqual([1, undefined, 1890]);
  expect((await dated("jar", records, { asOf: 1900 })).derived?.reason).toBe("empty-selection");
  expect((await dated("mended with rivets", records)).years).toEqual([1, 1890, 1890]);
});

test("what is withheld has no date, and is named in no figure and no sentence", async () => {
  const hidden = await dated("coin", chain, {}, "withhold: [coin]\n");
  expect(hidden.derived?.status).toBe("refused");
  const tied = await dated("the pit was dug", chain, {}, "withhold: [coin]\n");
  expect(tied.years).toEqual([1, -50, -1]);
  expect(tied.page?.figure?.figure.panels).toEqual([]);
  expect(tied.page?.figure?.leftOut).toBe(true);
  expect(JSON.stringify(tied.page)).not.toMatch(/coin/);
});

test("the figure is drawn without a browser: a span for each event, the asked one first, open ends without an upright", async () => {
  const records = {
    ...chain,
    relations: [...chain.relations, { id: "s7", earlier: "the pit was dug", later: "the fire" }],
  };
  const { page } = await dated("the pit was dug", records);
  const [panel] = page?.figure?.figure.panels ?? [];
  expect(panel?.y.names?.[0]).toBe("the pit was dug");
  const edge = panel?.marks[0];
  const stretches = edge?.mark === "edge" ? edge.stretches : [];
  expect(stretches[0]).toEqual({ row: 0, from: -50, to: -1, open: null });
  expect(stretches.filter((one) => one.open !== null).map((one) => panel?.y.names?.[one.row])).toEqual([
    "the fire",
  ]);
  const table = panel === undefined ? undefined : tablesOf(panel).find((one) => one.title === "the fire");
  expect(table?.rows).toEqual([["−50", "…", "…"]]);
  for (const width of [320, 720]) {
    const drawn = draw(page?.figure?.figure ?? { title: "", panels: [] }, {
      document: svgDocument(),
      width,
      palette: light,
      id: "f",
    });
    expect(svgText(drawn)).not.toMatch(/NaN|undefined|Infinity|style=/);
  }
});
