import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Model } from "../../../src/build.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import type { MapView, Section } from "../../../src/show/map/scene.ts";
import { sectionOf } from "../../../src/show/map/section/section.ts";
import { withheldIn } from "../../../src/show/withhold.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";
import { casePlugins, filesOf, randomCase } from "../../oracle/random-corpus.ts";
import type { Case } from "../../oracle/random-corpus.ts";
import { demoFiles, modelOf, ruleCorpora, shapeOf, unfoldedWhole, viewOf } from "./section-corpora.ts";

const demo = modelOf(demoFiles);
const made = new Map<number, Model>();
const madeOf = (records: number): Model => {
  const known = made.get(records) ?? modelOf(corpusOf({ records, seed: 7 }));
  made.set(records, known);
  return known;
};
const questionsOf = (model: Model): readonly (string | null)[] => [
  null,
  ...model.graph.list("questions").map((one) => one.id),
];
const randomModel = (seed: number): Model => modelOf(filesOf(randomCase(seed)), casePlugins);
const seeds = fc.integer({ min: 0, max: 100_000 });

/** What holds of every section, whatever the view. */
function expectSound(model: Model, section: Section): void {
  const { graph } = model;
  const withheld = withheldIn(graph);
  const boxes = new Map(section.boxes.map((box) => [box.id, box]));
  expect(boxes.size, "every box has a name of its own").toBe(section.boxes.length);
  for (const box of section.boxes) {
    for (const id of box.records) {
      expect(graph.records.has(id), `${box.id} shows ${id}`).toBe(true);
      expect(withheld(id), `${id} is withheld`).toBe(false);
    }
    for (const port of box.ports) {
      expect(port.from).toBeGreaterThanOrEqual(0);
      expect(port.to).toBeLessThanOrEqual(box.width);
    }
    expect([...box.title].length).toBeLessThanOrEqual(40);
  }
  for (const line of section.lines) {
    const [from, to] = [boxes.get(line.from.box), boxes.get(line.to.box)];
    expect(from && to, line.id).toBeTruthy();
    if (from && to) expect(from.row < to.row || line.circle, line.id).toBe(true);
  }
  expect(new Set(section.lines.map((line) => line.id)).size).toBe(section.lines.length);
  for (const attack of section.attacks) {
    expect(boxes.get(attack.from)?.look.as).toBe("beam");
    expect(boxes.has(attack.to), attack.id).toBe(true);
  }
  for (const rivals of [...section.rivals, ...section.conflicts]) {
    expect(rivals.boxes.length).toBeGreaterThan(1);
    for (const id of rivals.boxes) expect(boxes.has(id)).toBe(true);
  }
}

describe("a map as it opens", () => {
  test.each([
    ["the demo", () => demo],
    ["300 records", () => madeOf(300)],
    ["2,000 records", () => madeOf(2000)],
  ])("%s has at most 40 boxes for any question, answers among them", (_, model) => {
    for (const question of questionsOf(model())) {
      const section = sectionOf(model(), viewOf({ question }));
      expect(section.boxes.length).toBeLessThanOrEqual(40);
      expect(section.boxes.some((box) => box.look.as === "answer")).toBe(true);
      expectSound(model(), section);
    }
  });

  test("every example of a rule", () => {
    const corpora = ruleCorpora();
    expect(corpora.length).toBeGreaterThan(60);
    for (const [, model] of corpora) {
      const section = sectionOf(model, viewOf());
      expect(section.boxes.length).toBeLessThanOrEqual(40);
      expectSound(model, section);
    }
  });

  test("many answers, and many things, are folded into what says how many", () => {
    const many = Array.from({ length: 60 }, (_, n) => n);
    const records = {
      artefacts: many.map((n) => ({ id: `t${n}`, name: `Post ${n}` })),
      observations: many.map((n) => ({ id: `o${n}`, of: `t${n}`, text: `Seen ${n}.` })),
      claims: many.map((n) => ({ id: `c${n}`, text: `Claim ${n}.` })),
      questions: [{ id: "q", text: "Which?", answers: many.map((n) => `c${n}`) }],
      arguments: many.map((n) => ({ id: `a${n}`, because: [`o${n}`], therefore: `c${n}` })),
    };
    const model = modelOf([
      { path: "corpus.yaml", text: "title: Many" },
      { path: "records.yaml", text: JSON.stringify(records) },
    ]);
    const section = sectionOf(model, viewOf());
    expect(section.boxes.length).toBeLessThanOrEqual(40);
    const answers = section.boxes.filter((box) => box.look.as === "answer").length;
    const things = section.boxes.filter((box) => box.look.as === "thing").length;
    const folds = section.boxes.filter((box) => box.look.as === "fold").map((box) => box.folded);
    expect(folds).toContain(`${60 - answers} more answers`);
    expect(folds).toContain(`${60 - things} more things`);
  });
});

test("a section is sound whatever is unfolded, in focus, alone or narrow", () => {
  fc.assert(
    fc.property(seeds, fc.infiniteStream(fc.nat()), (seed, draws) => {
      const model = randomModel(seed);
      const draw = (n: number): number => Number(draws.next().value) % n;
      const ids = [...model.graph.records.keys(), ...model.graph.list("claims").map(({ id }) => `~${id}`)];
      const some = (): string => ids[draw(ids.length)] ?? "";
      const questions = questionsOf(model);
      const view: MapView = {
        question: questions[draw(questions.length)] ?? null,
        unfolded: Array.from({ length: draw(6) }, some),
        focus: draw(3) === 0 ? null : some(),
        only: draw(2) === 0,
        narrow: draw(3) === 0,
      };
      const section = sectionOf(model, view);
      expectSound(model, section);
      if (view.narrow && view.unfolded.length === 0) expect(section.boxes.length).toBeLessThanOrEqual(12);
      if (
        !view.narrow &&
        !view.only &&
        view.focus !== null &&
        model.graph.records.get(view.focus)?.list === "arguments"
      )
        expect(sectionOf(model, { ...view, question: null }).boxes.map((box) => box.id)).toContain(
          view.focus,
        );
    }),
    { numRuns: 100, seed: 1 },
  );
});

test("what nothing leans on is on the map when it is in focus", () => {
  const records = {
    artefacts: [
      { id: "stone", name: "A stone" },
      { id: "stone/side", name: "its side" },
    ],
    observations: [{ id: "smooth", of: "stone/side", text: "It is smooth." }],
    claims: [
      { id: "answer", text: "Yes." },
      { id: "aside", text: "Aside." },
    ],
    questions: [{ id: "q", text: "Is it?", answers: ["answer"] }],
    arguments: [{ id: "by-the-way", because: ["smooth"], therefore: "aside" }],
  };
  const model = modelOf([
    { path: "corpus.yaml", text: "title: Focus" },
    { path: "records.yaml", text: JSON.stringify(records) },
  ]);
  const ids = (focus: string | null): readonly string[] =>
    sectionOf(model, viewOf({ question: "q", focus })).boxes.map((box) => box.id);
  expect(ids(null)).toEqual(["answer"]);
  expect(ids("stone")).toEqual(["answer", "smooth", "stone"]);
  expect(ids("by-the-way")).toContain("by-the-way");
  expect(ids("aside")).toContain("aside");
});

describe("unfolding everything shows every argument exactly once", () => {
  const expectAll = (model: Model): void => {
    const section = unfoldedWhole(model, viewOf());
    expectSound(model, section);
    const withheld = withheldIn(model.graph);
    const beams = section.boxes.filter((box) => box.look.as === "beam").map((box) => box.id);
    const every = model.graph.list("arguments").flatMap(({ id }) => (withheld(id) ? [] : [id]));
    for (const id of every) expect(beams.filter((beam) => beam === id)).toEqual([id]);
    const claims = model.graph.list("claims").flatMap(({ id }) => (withheld(id) ? [] : [id]));
    const shown = section.boxes.map((box) => box.id);
    for (const id of claims) expect(shown).toContain(id);
  };
  test("of the demo", () => expectAll(demo));
  test("of random corpora", () => {
    fc.assert(
      fc.property(seeds, (seed) => expectAll(randomModel(seed))),
      { numRuns: 40, seed: 2 },
    );
  });
});

test("more than 300 boxes fold again by themselves", () => {
  const model = madeOf(2000);
  const folded = model.graph.list("claims").flatMap(({ id }) => [id, `~${id}`]);
  const section = sectionOf(model, viewOf({ unfolded: [...folded, "~answers", "~claims", "~things"] }));
  expect(section.boxes.length).toBeLessThanOrEqual(300);
  expect(section.boxes.length).toBeGreaterThan(40);
  expectSound(model, section);
});

test("a change of standing changes no box and no line", async () => {
  const changed: number[] = [];
  const judged = async (corpus: Case): Promise<Model> => {
    const { model } = await evaluate(filesOf(corpus), casePlugins, emptyMemo(), computingHere(casePlugins));
    if (!model) throw new Error("no model");
    return model;
  };
  for (let seed = 0; seed < 40; seed++) {
    const one = randomCase(seed);
    const other = {
      ...one,
      arguments: one.arguments.map((argument) => ({ ...argument, strength: "strong" as const })),
      derivations: one.derivations.map((derivation) => ({ ...derivation, p: 0.9 })),
    };
    const [before, after] = [await judged(one), await judged(other)];
    const standings = (model: Model): string => JSON.stringify([...model.judgement.standings]);
    if (standings(before) !== standings(after)) changed.push(seed);
    expect(shapeOf(sectionOf(after, viewOf()))).toBe(shapeOf(sectionOf(before, viewOf())));
  }
  expect(changed.length).toBeGreaterThan(3);
});

test("what is withheld is on no map, nor is what is about nothing else", () => {
  const withheld = demo.graph.settings.withhold;
  expect(withheld.length).toBeGreaterThan(0);
  const text = JSON.stringify([
    unfoldedWhole(demo, viewOf()),
    ...withheld.map((focus) => sectionOf(demo, viewOf({ focus, only: true }))),
  ]);
  for (const id of withheld) expect(text).not.toContain(id);
  for (let seed = 0; seed < 40; seed++) {
    const files = filesOf(randomCase(seed)).map((file) =>
      file.path === "corpus.yaml"
        ? { ...file, text: JSON.stringify({ title: "A random corpus", withhold: ["c0", "a1", "o0", "m0"] }) }
        : file,
    );
    const model = modelOf(files, casePlugins);
    const hidden = withheldIn(model.graph);
    const section = unfoldedWhole(model, viewOf());
    expectSound(model, section);
    const named = JSON.stringify(section);
    for (const id of [...model.graph.records.keys()].filter(hidden))
      expect(named).not.toMatch(new RegExp(`["~|>!]${id.replace(/[^\w]/gu, "\\$&")}["|>!]`, "u"));
    expect(named).not.toMatch(/claim c nought|Seen o nought/u);
  }
});

describe("heights", () => {
  const records = {
    artefacts: [{ id: "post", name: "A post" }],
    observations: [{ id: "seen", of: "post", text: "It is there." }],
    claims: ["low", "middle", "answer", "hanging", "round-1", "round-2", "lone"].map((id) => ({
      id,
      text: `It is ${id}.`,
    })),
    questions: [{ id: "q", text: "Is it?", answers: ["answer"] }],
    arguments: [
      { id: "a1", because: ["seen"], therefore: "low" },
      { id: "a2", because: ["low"], therefore: "middle" },
      { id: "a3", because: ["middle", "hanging"], therefore: "answer" },
      { id: "a4", because: ["round-1"], therefore: "round-2" },
      { id: "a5", because: ["round-2"], therefore: "round-1" },
      { id: "a6", because: ["low"], against: ["a3"] },
      { id: "a7", because: ["seen"], against: ["answer"] },
    ],
  };
  const model = modelOf([
    { path: "corpus.yaml", text: "title: Heights" },
    { path: "records.yaml", text: JSON.stringify(records) },
  ]);
  const section = unfoldedWhole(model, viewOf());
  const row = (id: string): number | undefined => section.boxes.find((box) => box.id === id)?.row;
  const hangs = (id: string): boolean | undefined => {
    const look = section.boxes.find((box) => box.id === id)?.look;
    return look?.as === "claim" || look?.as === "answer" ? look.hangs : undefined;
  };

  test("things, labels, claims one above their highest premise, the answer on top", () => {
    expect([row("post"), row("seen"), row("low"), row("middle"), row("answer")]).toEqual([-1, 0, 1, 2, 3]);
  });
  test("a claim that nothing supports stands one rank below what it is used for, else at rank 1", () => {
    expect([row("hanging"), hangs("hanging"), row("lone"), hangs("lone"), hangs("low")]).toEqual([
      2,
      true,
      1,
      true,
      false,
    ]);
  });
  test("a circle is one rank, with a line that leads back", () => {
    expect(row("round-1")).toBe(row("round-2"));
    const back = section.lines.filter((line) => line.circle).map(({ from, to }) => `${from.box} ${to.box}`);
    expect(back.sort()).toEqual(["round-1 a4", "round-2 a5"]);
  });
  test("a beam for something hangs under it, one against something stands over its premises", () => {
    expect([row("a2"), row("a3"), row("a6")]).toEqual([1.75, 2.75, 1.5]);
    expect(row("a7")).toBeGreaterThan(0.5);
    expect(row("a7")).toBeLessThan(1);
    expect(section.attacks.map(({ from, to }) => `${from} ${to}`).sort()).toEqual(["a6 a3", "a7 answer"]);
  });
});
