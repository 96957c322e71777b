import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { plugins } from "../../../plugins/index.ts";
import { compute } from "../../../src/build.ts";
import type { Memo, Model, Run, SourceFile } from "../../../src/build.ts";
import { lossesOf } from "../../../src/derive/choices.ts";
import type { Loss } from "../../../src/derive/choices.ts";
import type { Derived } from "../../../src/derive/derived/derived.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import { numberPage } from "../../../src/show/numbers/number.ts";
import type { NumberPage } from "../../../src/show/numbers/number.ts";
import { readUnder } from "../linking/supposed-model.ts";
import type { Worded } from "../../../src/base/text/said/worded.ts";
import { wholeInEnglish } from "../base/in-english.ts";

/** A reading of one side of a thing in one source. */
interface Reading {
  readonly id: string;
  readonly thing: number;
  readonly source: number;
  readonly value: number;
}

const things = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13];
const sources = [0, 1, 2];

interface Asked {
  readonly parameters?: object;
  readonly prefer?: readonly string[];
  readonly supports?: object;
  readonly settings?: object;
  readonly arguments?: readonly object[];
}

function corpusOf(readings: readonly Reading[], asked: Asked = {}): readonly SourceFile[] {
  const records = {
    artefacts: [
      { id: "house", name: "the house" },
      ...things.map((n) => ({ id: `house/wall-${n}`, name: `wall ${n}` })),
    ],
    claims: [{ id: "in-feet", text: "The walls are whole feet." }],
    observations: [{ id: "bent", of: "house", text: "The tape was bent." }],
    measurements: readings.map(({ id, thing, source, value }) => ({
      id,
      of: `house/wall-${thing}`,
      dimension: "length",
      value: `${value.toFixed(2)} ± 0.02 m`,
      from: `report-${source}`,
    })),
    arguments: asked.arguments ?? [],
    derivations: [
      {
        id: "feet",
        plugin: "unit-fit",
        inputs: {
          values: { of: "house", dimension: "length", ...(asked.prefer ? { prefer: asked.prefer } : {}) },
        },
        parameters: asked.parameters ?? { unit: "work-foot" },
        "bears-on": [{ claim: "in-feet", supports: asked.supports ?? { p: "< 0.05" } }],
      },
    ],
  };
  const settings = {
    title: "Walls",
    bibliography: "sources.bib",
    units: { "work-foot": { is: "0.3 m" } },
    ...asked.settings,
  };
  const bib = sources.map(
    (n) => `@book{report-${n}, author = {Digger, Ada}, title = {Report ${n}}, year = 190${n}}`,
  );
  return [
    { path: "corpus.yaml", text: JSON.stringify(settings) },
    { path: "records.yaml", text: JSON.stringify(records) },
    { path: "sources.bib", text: bib.join("\n") },
  ];
}

const { read } = emptyMemo();
/** Nothing computed yet; what was read of one file stands for the same text everywhere. */
const newMemo = (): Memo => ({ read, compute: new Map() });

/** The number alone, with nothing tried besides. */
function modelOf(files: readonly SourceFile[], memo: Memo = newMemo()): Model {
  return readUnder(files, plugins, memo).model;
}

function feetIn(model: Model): Derived {
  const derived = model.derivations.byId.get("feet");
  if (!derived) throw new Error("expected the derivation");
  return derived;
}

/** What comes of each loss, once all they ask for is computed; `ran` gets what that was. */
function losses(model: Model, memo: Memo, ran: Run[] = []): readonly Loss[] {
  const { graph, lens, judgement } = model;
  const bench = { graph, plugins, memo: memo.compute, lens };
  for (;;) {
    const { each } = lossesOf(bench, feetIn(model), (id) => judgement.standings.get(id) === "stands");
    const missing = each.flatMap((loss) => loss.missing);
    if (missing.length === 0) return each;
    for (const run of missing) {
      ran.push(run);
      memo.compute.set(
        run.key,
        compute(run, plugins, () => undefined),
      );
    }
  }
}

async function pageOf(files: readonly SourceFile[]): Promise<Worded<NumberPage>> {
  const memo = newMemo();
  const { model } = await evaluate(files, plugins, memo, computingHere(plugins));
  const page = model === null ? null : numberPage(model, plugins, memo.compute, "feet");
  if (!page) throw new Error("expected the page");
  return wholeInEnglish(page);
}

const readings = fc
  .uniqueArray(fc.record({ thing: fc.constantFrom(...things), source: fc.constantFrom(...sources) }), {
    minLength: 15,
    maxLength: 20,
    selector: ({ thing, source }) => `${thing} ${source}`,
  })
  .chain((places) =>
    fc
      .array(fc.integer({ min: 60, max: 600 }), { minLength: places.length, maxLength: places.length })
      .map((sizes) =>
        places.map((place, n): Reading => ({ ...place, id: `m-${n}`, value: (sizes[n] ?? 100) / 100 })),
      ),
  );

const prefer = fc.option(fc.constant(["report-1", "report-0"]), { nil: undefined });

describe("leaving out one at a time", () => {
  test("a source or a thing is the same as striking its measurements from the text", () => {
    fc.assert(
      fc.property(readings, prefer, (all, first) => {
        const asked = first ? { prefer: first } : {};
        const memo = newMemo();
        const model = modelOf(corpusOf(all, asked), memo);
        for (const { leaving, other } of losses(model, memo)) {
          const left = all.filter(({ id }) => !leaving.ids.includes(id));
          const [name] = leaving.names;
          const gone = all.filter(({ thing, source }) =>
            [`house/wall-${thing}`, `report-${source}`].includes(name.name),
          );
          expect(gone.map(({ id }) => id).sort()).toEqual([...leaving.ids].sort());
          const struck = feetIn(modelOf(corpusOf(left, asked)));
          expect(other?.numbers).toEqual(struck.numbers);
          expect(other?.status).toEqual(struck.status);
        }
      }),
      { numRuns: 2 },
    );
  });

  test("what was found is not taken for another corpus: a reading passed over and changed is seen", () => {
    fc.assert(
      fc.property(readings, fc.integer({ min: 60, max: 600 }), fc.nat(), (all, size, at) => {
        const changed = all.map((one, n) => (n === at % all.length ? { ...one, value: size / 100 } : one));
        const asked = { prefer: ["report-1"] };
        const memo = newMemo();
        losses(modelOf(corpusOf(all, asked), memo), memo);
        const after = losses(modelOf(corpusOf(changed, asked), memo), memo);
        const fresh = newMemo();
        const anew = losses(modelOf(corpusOf(changed, asked), fresh), fresh);
        expect(after.map(({ other }) => other?.numbers)).toEqual(anew.map(({ other }) => other?.numbers));
      }),
      { numRuns: 2 },
    );
  });

  test("nothing is left out without which there would be nothing at all", () => {
    const one = things.map((thing): Reading => ({
      id: `m-${thing}`,
      thing,
      source: 0,
      value: 0.3 * (thing + 3),
    }));
    const memo = newMemo();
    const names = losses(modelOf(corpusOf(one), memo), memo).flatMap(({ leaving }) => leaving.names);
    expect(names.map(({ name }) => name).sort()).toEqual(things.map((n) => `house/wall-${n}`).sort());
  });
});

/** Exact feet in one report; in the other what is no foot at all. */
const whole = [3, 5, 6, 8, 10, 11, 13, 16, 17, 19, 21, 22, 24, 25].map((n, thing): Reading => ({
  id: `exact-${thing}`,
  thing,
  source: 0,
  value: 0.3 * n,
}));
const other = [1.05, 1.64, 1.93, 2.56].map((value, thing): Reading => ({
  id: `off-${thing}`,
  thing,
  source: 1,
  value,
}));

describe("searches, which draw sets", () => {
  const drawsOf = (run: Run | null | undefined): number | undefined => {
    const draws = run?.settings["draws"];
    return draws?.kind === "number" ? draws.value : undefined;
  };

  test("draw a thousand for each loss, and all of theirs only where p comes near a limit", () => {
    const search = { low: "0.2 m", high: "0.8 m", draws: "3000" };
    // One thing that is no foot at all carries p to the limit: without it the rest is all the clearer.
    const odd = [...whole, { id: "odd", thing: 0, source: 2, value: 1.13 }];
    for (const limit of ["0.0001", "0.5"]) {
      const memo = newMemo();
      const asked = { parameters: search, supports: { p: `< ${limit}` } };
      const ran: Run[] = [];
      const each = losses(modelOf(corpusOf(odd, asked), memo), memo, ran);
      expect(each.length).toBeGreaterThan(5);
      for (const { other, draws } of each) {
        const p = other?.numbers["p"]?.value ?? 1;
        const reach = 4 * Math.sqrt(Math.max(p, Number(limit)) / 1000);
        const drawn = drawsOf(other?.run);
        expect(drawn).toBe(draws ?? 3000);
        if (Math.abs(p - Number(limit)) > 2 * reach) expect(drawn).toBe(1000);
        if (Math.abs(p - Number(limit)) < reach / 2) expect(drawn).toBe(3000);
      }
      // Nothing is drawn at full length that was not drawn at a thousand before.
      const full = ran.filter((run) => drawsOf(run) === 3000).length;
      expect(ran.length - full).toBe(each.length);
      expect(full).toBe(each.filter(({ draws }) => draws === null).length);
    }
  });
});

describe("a unit of which sizes differ", () => {
  const units = (other: object) => ({
    units: {
      "work-foot": { is: "0.3 m", also: ["foot of the works"], from: "report-2" },
      "other-foot": { is: "0.331 m", also: ["Foot of the Works"], ...other },
    },
  });
  const exact = whole.map((one) => ({ ...one, id: `at-${one.thing}` }));

  test("is tried with each of them, as if the derivation named it, and what turns is told", async () => {
    const files = corpusOf(exact, { settings: units({ from: "report-1" }) });
    const { model, findings } = await evaluate(files, plugins, newMemo(), computingHere(plugins));
    expect(model && feetIn(model).bearings.map(({ bearing }) => bearing)).toEqual(["supports"]);
    const told = findings.filter(({ rule }) => rule === "verdict-depends-on-disputed-measurement");
    expect(told.map(({ message }) => inEnglish(message))).toEqual([
      "“the unit fit number” supports “The walls are whole feet”, but with the other-foot of 33.1 cm it is inconclusive.",
    ]);
    const page = await pageOf(files);
    const tried = page.turns?.tried.filter(({ id }) => id === null) ?? [];
    expect(tried.map(({ text }) => text)).toEqual(["the other-foot of 33.1 cm (Digger 1901)"]);
    const named = corpusOf(exact, {
      settings: units({ from: "report-1" }),
      parameters: { unit: "other-foot" },
    });
    const alone = (await pageOf(named)).numbers.find(({ name }) => name === "p");
    expect(tried[0]?.numbers).toEqual([{ name: "p", value: alone?.value }]);
  });

  test("is not tried with one that was found in these very data, or comes from where they were measured", async () => {
    for (const other of [{ "found-in": ["house"] }, { from: "report-0" }]) {
      const page = await pageOf(corpusOf(exact, { settings: units(other) }));
      expect(page.turns?.tried.filter(({ id }) => id === null)).toEqual([]);
    }
  });

  test("is not tried with what a withheld source says", async () => {
    const settings = { ...units({ from: "report-1" }), withhold: ["report-1"] };
    const page = await pageOf(corpusOf(exact, { settings }));
    expect(JSON.stringify(page)).not.toMatch(/other-foot|Digger 1901/);
  });
});

describe("the page of a number", () => {
  test("names what would turn it, and tells how far the rest moves it", async () => {
    const page = await pageOf(corpusOf([...whole.slice(6), ...other], { supports: { p: "< 0.05" } }));
    const said = page.bearings[0]?.says;
    for (const { turned, names } of page.losses?.turning ?? []) {
      expect(names.length).toBeGreaterThan(0);
      for (const one of turned) expect(one.says).not.toBe(said);
    }
    const exact = await pageOf(corpusOf(whole));
    expect(exact.losses?.turning).toEqual([]);
    expect(exact.losses?.tried).toBe(things.length);
    expect(exact.losses?.reach.map(({ name }) => name)).toEqual(["p"]);
  });

  test("shows a beaten reading as such, and takes it nowhere", async () => {
    const against = { id: "bent-tape", because: ["bent"], against: [`off-0`], text: "The tape was bent." };
    const files = corpusOf([...whole, ...other], { prefer: ["report-0"], arguments: [against] });
    const page = await pageOf(files);
    expect(page.turns?.beaten.map(({ id }) => id)).toEqual(["off-0"]);
    expect(page.turns?.tried.map(({ id }) => id)).not.toContain("off-0");
    expect(page.entries.left.filter(({ beaten }) => beaten).map(({ id }) => id)).toEqual(["off-0"]);
    const memo = newMemo();
    const wall = losses(modelOf(files, memo), memo).find(({ leaving }) => leaving.ids.includes("exact-0"));
    expect(wall?.other?.used).not.toContain("off-0");
  });

  test("names nothing withheld, and tells no single value that could be told from it", async () => {
    const files = corpusOf([...whole, ...other], {
      supports: { p: "< 0.001" },
      settings: { withhold: ["house/wall-2"] },
    });
    const page = await pageOf(files);
    expect(JSON.stringify(page)).not.toContain("wall-2");
    expect(JSON.stringify(page)).not.toContain("wall 2");
    expect(page.losses?.reach).toEqual([]);
    for (const line of [...(page.losses?.turning ?? []), ...(page.losses?.without ?? [])])
      expect(line.numbers).toEqual([]);
    const memo = newMemo();
    const { findings } = await evaluate(files, plugins, memo, computingHere(plugins));
    const about = findings
      .filter(({ rule }) => rule === "verdict-depends-on-one")
      .flatMap((one) => one.about);
    expect(about).not.toContain("house/wall-2");
  });
});
