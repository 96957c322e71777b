import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import type { Model, SourceFile } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { examinationOf } from "../../../src/link/suppose/examination.ts";
import type { Examination } from "../../../src/link/suppose/examination.ts";
import { changesUnder, supposedTold } from "../../../src/show/judged/suppose/supposed.ts";
import { sheetOf } from "../../../src/show/pages/sheet.ts";
import { reportOf } from "../../../src/show/report/report.ts";
import { casePlugins, filesOf, randomCase } from "../../oracle/random-corpus.ts";
import { corpus } from "../judging/standpoint-corpora.ts";
import { readUnder } from "./supposed-model.ts";

/** Two surveys of one pit that disagree, an argument for each, a number that lacks what it needs, and a spring that is withheld. */
const lists = {
  artefacts: [
    { id: "pit", name: "The pit", access: { permit: "a word with the farmer" } },
    { id: "pit/floor", name: "its floor" },
    { id: "hidden", name: "The Hidden Spring" },
  ],
  claims: [
    { id: "deep", text: "The pit was deep.", "incompatible-with": ["shallow"] },
    { id: "shallow", text: "The pit was shallow." },
    { id: "even", text: "The posts stood at even distances." },
    { id: "wet", text: "The Hidden Spring ran." },
  ],
  questions: [{ id: "which", text: "Shallow or deep?", answers: ["shallow", "deep"] }],
  observations: [
    { id: "fresh", of: "pit/floor", text: "The floor is fresh." },
    { id: "worn", of: "pit/floor", text: "The floor is worn." },
    { id: "spring-ran", of: "hidden", text: "The Hidden Spring ran." },
  ],
  measurements: [
    { id: "one", of: "pit", dimension: "depth", value: "0.95 m" },
    { id: "again", of: "pit", dimension: "Depth", value: "95.0 cm" },
    { id: "other", of: "pit", dimension: "depth", value: "0.6 m" },
    { id: "sides", of: "pit", dimension: "depth", value: "0.7 m", between: "the two sides" },
    { id: "wide", of: "pit", dimension: "width", value: "2 m" },
    { id: "spring-depth", of: "hidden", dimension: "depth", value: "3 m" },
  ],
  arguments: [
    { id: "so-deep", because: "one", therefore: "deep" },
    { id: "so-shallow", because: "other", therefore: "shallow" },
    { id: "not-fresh", because: "worn", against: "fresh" },
    { id: "not-one", because: "fresh", against: "one" },
    { id: "so-wet", because: "spring-ran", therefore: "wet" },
  ],
  derivations: [
    {
      id: "rhythm",
      plugin: "spacing",
      text: "The rhythm of the posts",
      inputs: { gaps: { of: "pit", dimension: "gap" } },
      "bears-on": [{ claim: "even", supports: { p: "< 0.01" }, strength: "weak" }],
    },
    { id: "idle", plugin: "spacing", inputs: { gaps: { of: "pit", dimension: "gap" } } },
  ],
  examinations: [
    {
      id: "divine",
      of: "hidden",
      method: "a hazel rod at the Hidden Spring",
      outcomes: [{ id: "bends", text: "The Hidden Spring bends it.", therefore: "wet" }],
    },
    {
      id: "dig",
      of: "pit",
      method: "with a trowel",
      outcomes: [{ id: "dry", text: "It was never deeper.", against: ["wet", "one"] }],
    },
  ],
};
const files = corpus(lists, { withhold: ["hidden", "wet"] });
const memo = emptyMemo();

function modelUnder(suppose?: { readonly examination: string; readonly outcome: string }): Model {
  return readUnder(files, plugins, memo, suppose ? { suppose } : {}).model;
}
const recorded = modelUnder();
const proposed = (id: string): Examination => {
  const found = examinationOf(recorded.graph, id);
  if (!found) throw new Error(`nothing is proposed for ${id}`);
  return found;
};
const standing = (examination: string, outcome: string, id: string): string | undefined =>
  modelUnder({ examination, outcome }).judgement.standings.get(id);

describe("a second look", () => {
  test("at one observation: it holds against what is recorded against it, or it does not hold", () => {
    expect(recorded.judgement.standings.get("fresh")).toBe("falls");
    expect(standing("look-again:fresh", "as-recorded", "fresh")).toBe("stands");
    expect(standing("look-again:worn", "not-so", "worn")).toBe("falls");
    expect(standing("look-again:worn", "not-so", "fresh")).toBe("stands");
    expect(proposed("look-again:worn").outcomes.map((one) => [one.id, one.against])).toEqual([
      ["as-recorded", []],
      ["not-so", ["worn"]],
    ]);
  });

  test("at an artefact: nothing changes, or nothing of it and of its parts holds", () => {
    const { outcomes } = proposed("see-again:pit");
    expect(outcomes.map((one) => [one.id, one.against.toSorted()])).toEqual([
      ["as-recorded", []],
      ["not-so", ["again", "fresh", "one", "other", "sides", "wide", "worn"]],
    ]);
    expect(standing("see-again:pit", "not-so", "deep")).toBe("falls");
    const same = modelUnder({ examination: "see-again:pit", outcome: "as-recorded" });
    for (const [id, was] of recorded.judgement.standings)
      expect([id, same.judgement.standings.get(id)]).toEqual([id, was]);
  });

  test("names the things, the permit and a way without touching, and no id", () => {
    const one = proposed("look-again:fresh");
    expect(one).toMatchObject({ origin: "look-again", of: ["pit/floor"], cost: null, destructive: false });
    expect(one.permit).toBe("a word with the farmer");
    expect(inEnglish(one.method)).toBe("look again at its floor, as far as can be seen without digging");
    expect(one.outcomes.map((each) => inEnglish(each.text))).toEqual([
      "It is as recorded: The floor is fresh.",
      "It is not as recorded: The floor is fresh.",
    ]);
  });
});

test("a permit that something withheld takes is not told beside that of what is not", () => {
  const hidden = { id: "hidden", name: "The Hidden Spring", access: { permit: "leave of the miller" } };
  const both = { id: "both", of: ["pit", "hidden"], text: "They are in one line." };
  const written = corpus(
    {
      ...lists,
      artefacts: [...lists.artefacts.filter(({ id }) => id !== "hidden"), hidden],
      observations: [...lists.observations, both],
    },
    { withhold: ["hidden", "wet"] },
  );
  const { graph } = readUnder(written, plugins, memo, {}).model;
  const found = examinationOf(graph, "look-again:both");
  expect([found?.of, found?.permit]).toEqual([["pit", "hidden"], "a word with the farmer"]);
});

describe("a dimension measured anew", () => {
  test("has one outcome for each distinct reading between the same landmarks, against the others", () => {
    const { outcomes, method } = proposed("measure-again:one");
    expect(inEnglish(method)).toContain("depth of The pit");
    expect(outcomes.map((one) => [inEnglish(one.text), one.against])).toEqual([
      ["The depth of The pit is 0.95 m.", ["other"]],
      ["The depth of The pit is 0.6 m.", ["one", "again"]],
    ]);
    expect(standing("measure-again:one", "reading-1", "other")).toBe("falls");
    expect(standing("measure-again:one", "reading-2", "shallow")).toBe("stands");
  });

  test("is named by the first reading alone, and there must be two", () => {
    expect(examinationOf(recorded.graph, "measure-again:other")).toBeNull();
    expect(examinationOf(recorded.graph, "measure-again:wide")).toBeNull();
  });
});

describe("what a number lacks", () => {
  test("named, and what the number would then say of each claim, as strongly as it is to bear on it", () => {
    const one = proposed("measure:rhythm");
    expect(inEnglish(one.method)).toBe("measure the gap of The pit, without touching where that can be done");
    expect(
      one.outcomes.map(({ id, therefore, against, strength }) => [id, therefore, against, strength]),
    ).toEqual([
      ["supports-even", ["even"], [], "weak"],
      ["disputes-even", [], ["even"], "weak"],
    ]);
    expect(standing("measure:rhythm", "supports-even", "even")).toBe("stands");
    expect(standing("measure:rhythm", "disputes-even", "even")).toBe("falls");
  });

  test("only where it bears on something", () => {
    expect(examinationOf(recorded.graph, "measure:idle")).toBeNull();
  });
});

test("nothing is proposed for what is not there or is of another kind", () => {
  for (const id of [
    "look-again:nothing",
    "look-again:pit",
    "see-again:fresh",
    "measure:one",
    "ponder:one",
    "one",
    "",
  ])
    expect([id, examinationOf(recorded.graph, id)]).toEqual([id, null]);
});

test("nothing withheld is proposed, supposed or named", () => {
  for (const id of ["divine", "look-again:spring-ran", "see-again:hidden", "look-again:spring-depth"]) {
    expect([id, examinationOf(recorded.graph, id)]).toEqual([id, null]);
    const { model, findings } = readUnder(files, plugins, memo, {
      suppose: { examination: id, outcome: "bends" },
    });
    expect(model.graph.supposed).toBeNull();
    const told = JSON.stringify(
      reportOf(model, findings, new Map(files.map((file) => [file.path, file.text]))),
    );
    expect(told).not.toMatch(/Hidden|hazel|spring-ran"/);
  }
});

test("what it changes is told answers first, with nothing of what is withheld", () => {
  const suppose = { examination: "dig", outcome: "dry" };
  const then = modelUnder(suppose);
  expect(then.judgement.standings.get("wet")).not.toBe(recorded.judgement.standings.get("wet"));
  const told = supposedTold(then, (lens) => readUnder(files, plugins, memo, lens).model);
  expect(told).toEqual({
    known: true,
    examination: { id: "dig", text: "with a trowel" },
    outcome: { id: "dig~dry", text: "It was never deeper." },
    changed: [
      { id: "shallow", text: "The pit was shallow", was: "open", is: "stands" },
      { id: "deep", text: "The pit was deep", was: "open", is: "falls" },
    ],
    pending: false,
  });
  expect(sheetOf(then, [], new Map(), "dig~dry~against-1")).toBeNull();
  expect(sheetOf(then, [], new Map(), "dig~dry~against-2")?.kind).toBe("supposed argument");
  const shallow = modelUnder({ examination: "measure-again:one", outcome: "reading-2" });
  expect(changesUnder(shallow, recorded).map(({ id, was, is }) => [id, was, is])).toEqual([
    ["shallow", "open", "stands"],
    ["deep", "open", "falls"],
  ]);
});

test("every proposal of a random corpus can be supposed, with ids that nothing else has", () => {
  for (let seed = 1; seed <= 12; seed++) {
    const written: readonly SourceFile[] = filesOf(randomCase(seed));
    const own = emptyMemo();
    const { model } = readUnder(written, casePlugins, own);
    const ids = [...model.graph.records.values()].flatMap(({ id, list }) =>
      list === "observations" || list === "measurements"
        ? [`look-again:${id}`, `measure-again:${id}`]
        : list === "artefacts"
          ? [`see-again:${id}`]
          : list === "derivations"
            ? [`measure:${id}`]
            : [],
    );
    for (const examination of ids) {
      for (const { id: outcome, against, therefore } of examinationOf(model.graph, examination)?.outcomes ??
        []) {
        const then = readUnder(written, casePlugins, own, { suppose: { examination, outcome } }).model.graph;
        // The examination itself, and one observation for the outcome.
        expect(then.supposed?.records.size).toBe(2 + against.length + therefore.length);
        for (const id of then.supposed?.records ?? []) expect(model.graph.records.has(id)).toBe(false);
      }
    }
  }
});
