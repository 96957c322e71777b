import fc from "fast-check";
import { beforeAll, describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import type { Lens, Model } from "../../../src/build.ts";
import { computingHere, evaluate } from "../../../src/host/evaluate.ts";
import { textWidth } from "../../../src/show/map/letters/letters.ts";
import { mapPage, rememberedMaps } from "../../../src/show/map/page.ts";
import type { MapDesk } from "../../../src/show/map/page.ts";
import type { MapPage, MapView } from "../../../src/show/map/scene.ts";
import { sectionOf } from "../../../src/show/map/section/section.ts";
import { demoMemo } from "../../demo-memo.ts";
import { casePlugins, filesOf, randomCase } from "../../oracle/random-corpus.ts";
import { faultsOf } from "../../oracle/scene-faults.ts";
import { demoFiles, modelOf, ruleCorpora, unfoldedWhole, viewOf } from "./section-corpora.ts";

const memo = await demoMemo();
const models = new Map<string, Model>();
const under = (lens: Lens): Model => {
  const key = JSON.stringify(lens);
  const model = models.get(key) ?? modelOf(demoFiles, plugins, lens, memo);
  models.set(key, model);
  return model;
};
const desk = (lens: Lens = {}): MapDesk => ({ model: under(lens), under });
const asked = { question: "what-was-it" } as const;
const everything = () =>
  viewOf({
    unfolded: [
      "ring-a-roofed",
      "ring-a-open",
      "posts-bear-span",
      "no-fire-inside",
      "~ring-a-roofed",
      "deep-enough",
    ],
    ...asked,
  });

beforeAll(async () => {
  await evaluate(demoFiles, plugins, memo, computingHere(plugins));
});

describe("a look back in time", () => {
  test("nothing moves when the year moves, and what is not in print yet is marked so", () => {
    const maps = rememberedMaps();
    const whole = maps(desk(), { view: everything() });
    expect(Object.values(whole.states).some((state) => state.later)).toBe(false);
    let later = Infinity;
    for (const year of whole.years.filter((_, at) => at % 3 === 0)) {
      const page = maps(desk({ asOf: year }), { view: everything() });
      expect(page.scene).toEqual(whole.scene);
      expect(mapPage(desk({ asOf: year }), everything()).scene).toEqual(whole.scene);
      const { judgement } = under({ asOf: year });
      for (const box of page.scene.boxes) {
        const state = page.states[box.id];
        if (box.look.as === "mark") continue;
        if (box.look.as === "claim" || box.look.as === "answer")
          expect(state?.later, `${year} ${box.id}`).toBe(!judgement.listed(box.id));
        if (state?.later) expect(state).toMatchObject({ standing: null, said: "" });
        else if (judgement.standings.has(box.id))
          expect(state?.standing).toBe(judgement.standings.get(box.id));
      }
      const unseen = Object.values(page.states).filter((state) => state.later).length;
      expect(unseen).toBeLessThanOrEqual(later);
      later = unseen;
    }
    expect(later).toBeLessThan(5);
  });

  test("what a step changed is marked with how it stood before, and told in a sentence", () => {
    const { years } = mapPage(desk(), everything());
    let marked = 0;
    let before: MapPage | null = null;
    for (const year of years) {
      const page = mapPage(desk({ asOf: year }), everything());
      for (const [id, state] of Object.entries(page.states)) {
        const then = before?.states[id];
        if (!then) expect(state.was).toBeNull();
        else if (then.later && !state.later) expect(state.was, `${year} ${id}`).toBe("not there");
        else expect(state.was, `${year} ${id}`).toBe(then.standing === state.standing ? null : then.standing);
        const look = page.scene.boxes.find((box) => box.id === id)?.look;
        if (state.was === null || (look?.as !== "claim" && look?.as !== "answer")) continue;
        marked++;
        const title = page.scene.boxes.find((box) => box.id === id)?.title ?? "";
        expect(
          page.changes.some((sentence) => sentence.startsWith(`“${title}” `)),
          title,
        ).toBe(true);
      }
      before = page;
    }
    expect(marked).toBeGreaterThan(5);
    expect(mapPage(desk(), everything()).changes).toEqual([]);
  });

  test("the earliest year has no step before it", () => {
    const [first = 0] = mapPage(desk(), everything()).years;
    expect(mapPage(desk({ asOf: first }), everything()).changes).toEqual([]);
  });
});

test("under a claim stand its standing and who holds it, two names at most", () => {
  const { states } = mapPage(desk(), viewOf(asked));
  expect(states["ring-a-roofed"]?.said).toBe("open · Oyelaran, Lindqvist");
  const said = Object.values(states).map((state) => state.said);
  for (const line of said.filter((one) => one.includes(" · ")))
    expect(line).toMatch(/^(?:stands|open|falls|unsupported) · [^,]+(?:, [^,]+(?: \+\d+)?)?$/u);
});

test("a number that bears on a claim says in a word what it says", () => {
  const { states, scene } = mapPage(desk(), viewOf({ question: "laid-out-in-paces" }));
  const { bearings } = under({}).derivations.byId.get("ring-unit") ?? { bearings: [] };
  expect(bearings).toHaveLength(1);
  expect(states["ring-unit>rings-in-paces"]?.said).toBe(bearings[0]?.bearing);
  // Whatever it says under another lens has room beside the beam.
  const beam = scene.boxes.find(({ id }) => id === "ring-unit>rings-in-paces");
  const room = (beam?.width ?? 0) - (beam?.look.as === "beam" ? beam.look.length : Infinity);
  for (const word of ["supports", "disputes", "inconclusive"])
    expect(textWidth(`by number · ${word}`, "sans", 13)).toBeLessThan(room);
  expect(states["ring-unit"]?.said).toMatch(/^p 0\.\d+$/u);
});

test("attacks of arguments that neither stand nor are open are beaten", () => {
  const page = mapPage(desk(), everything());
  const { attacks } = unfoldedWhole(under({}), viewOf());
  const shown = attacks.filter(({ from }) => from in page.states);
  const { standings } = under({}).judgement;
  for (const id of page.beaten) {
    const from = id.slice(0, id.indexOf("!"));
    expect(["stands", "open"]).not.toContain(standings.get(from));
  }
  for (const { id, from } of shown.filter((one) => one.to in page.states))
    expect(page.beaten.includes(id), id).toBe(!["stands", "open"].includes(standings.get(from) ?? ""));
});

describe("focus", () => {
  const lit = (focus: string): readonly string[] => {
    const { states } = mapPage(desk(), viewOf({ ...asked, focus }));
    return Object.keys(states).filter((id) => states[id]?.lit);
  };
  test("on a thing keeps what rests on it, and lets the rest go", () => {
    const kept = lit("drip-gully");
    for (const id of [
      "drip-gully",
      "gully-from-eaves",
      "gully-from-feet",
      "eaves-need-a-roof",
      "ring-a-roofed",
    ])
      expect(kept).toContain(id);
    for (const id of ["centre", "no-fire-inside", "ring-a-windbreak"]) expect(kept).not.toContain(id);
  });
  test("on a scholar keeps what is theirs", () => {
    const kept = lit("brandt");
    expect(kept).toContain("open-side-is-lee-side");
    expect(kept).not.toContain("eaves-need-a-roof");
  });
  test("without one everything is in ink", () => {
    const { states } = mapPage(desk(), viewOf(asked));
    expect(Object.values(states).every((state) => state.lit)).toBe(true);
  });
  test("on what is folded away unfolds the way to it", () => {
    const page = mapPage(desk(), viewOf({ ...asked, focus: "antler-marks" }));
    expect(page.scene.boxes.map((box) => box.id)).toContain("antler-marks");
  });
  test("alone removes what it has nothing to do with", () => {
    const page = mapPage(desk(), viewOf({ ...asked, focus: "no-fire-inside", only: true }));
    const ids = page.scene.boxes.map((box) => box.id);
    expect(ids).toContain("centre");
    for (const id of ["drip-gully", "ring-a-windbreak", "walls-daubed"]) expect(ids).not.toContain(id);
  });
});

test("names in the address that lead nowhere, or to what is withheld, are passed over", () => {
  const [withheld = ""] = under({}).graph.settings.withhold;
  const plain = mapPage(desk(), viewOf());
  for (const id of ["no-such", withheld]) {
    const page = mapPage(desk(), viewOf({ question: id, focus: id, only: true, unfolded: [id] }));
    expect(page.view).toMatchObject({ question: null, focus: null, only: false });
    expect(page.scene).toEqual(plain.scene);
  }
});

test("nothing withheld is on the page: neither ids, nor exact places, nor where a thing was found", () => {
  const { graph } = under({});
  const artefacts = graph.list("artefacts");
  const secrets = [
    ...graph.settings.withhold,
    ...artefacts.flatMap((one) => one.values.coordinates ?? []),
    ...artefacts
      .filter((one) => one.values["withhold-location"])
      .flatMap((one) => one.values["found-at"] ?? []),
  ];
  expect(secrets.length).toBeGreaterThan(2);
  const unfolded = [
    ...graph.records.keys(),
    ...graph.list("claims").map(({ id }) => `~${id}`),
    "~answers",
    "~claims",
    "~things",
  ].filter((id) => !graph.settings.withhold.includes(id));
  const pages = [{}, { asOf: 1951 }].map((lens) => mapPage(desk(lens), viewOf({ unfolded })));
  for (const page of pages) {
    expect(page.scene.boxes.length).toBeGreaterThan(100);
    const text = JSON.stringify({ ...page, view: null });
    for (const secret of secrets) expect(text).not.toContain(secret);
  }
});

test("real sections are laid out without fault: the demo's, those of every rule, random ones, narrow and alone", () => {
  const expectFaultless = (model: Model, view: MapView): void => {
    const { scene, states } = mapPage({ model, under: () => model }, view);
    expect(faultsOf(sectionOf(model, view), scene)).toEqual([]);
    for (const box of scene.boxes) if (box.look.as !== "mark") expect(states[box.id]).toBeDefined();
  };
  const everythingOf = (model: Model): readonly string[] => [
    ...model.graph.records.keys(),
    ...model.graph.list("claims").map(({ id }) => `~${id}`),
    "~answers",
    "~claims",
  ];
  const demo = under({});
  for (const question of [null, ...demo.graph.list("questions").map((one) => one.id)]) {
    expectFaultless(demo, viewOf({ question }));
    expectFaultless(demo, viewOf({ question, unfolded: everythingOf(demo) }));
  }
  for (const focus of [...demo.graph.records.keys()].filter((_, at) => at % 12 === 0)) {
    expectFaultless(demo, viewOf({ focus, narrow: true }));
    expectFaultless(demo, viewOf({ focus, only: true }));
  }
  for (const [, model] of ruleCorpora()) expectFaultless(model, viewOf());
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 100_000 }), (seed) => {
      const model = modelOf(filesOf(randomCase(seed)), casePlugins);
      expectFaultless(model, viewOf({ unfolded: everythingOf(model) }));
    }),
    { numRuns: 20, seed: 3 },
  );
});
