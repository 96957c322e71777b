import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { edited } from "../../../src/base/text/edit.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import type { Memo, Model, SourceFile } from "../../../src/build.ts";
import type { Action } from "../../../src/link/edit/action.ts";
import { prepared } from "../../../src/link/edit/prepare.ts";
import { actionOf } from "../../../src/show/map/arguing/action.ts";
import { takenInHand } from "../../../src/show/map/arguing/begun.ts";
import {
  against,
  draftIn,
  leadingTo,
  leadingToNew,
  nothingInHand,
  withPremise,
} from "../../../src/show/map/arguing/draft.ts";
import type { ArgumentDraft } from "../../../src/show/map/arguing/draft.ts";
import { noteOn } from "../../../src/show/map/arguing/noted.ts";
import { inHandTold } from "../../../src/show/map/arguing/told.ts";
import { rememberedTried } from "../../../src/show/map/arguing/trial.ts";
import { readUnder } from "../linking/supposed-model.ts";

const claims = ["c0", "c1", "c2", "c3"];
const seen = ["o0", "o1", "o2"];
const steps = ["a0", "a1", "a2", "a3"];
const premises = [...claims, ...seen];

const bib = "@book{hale, author = {Hale, Ada}, title = {The ring}, year = 1990}\n";

/** A small dispute: three answers to a question of which one can be right, and some arguments, two of them in the file of a source. */
function corpus(given: readonly Step[], more = ""): readonly SourceFile[] {
  const made = given.map((one, at) => {
    const { because, to, strength } = one;
    const leads = to.startsWith("not ") ? { against: [to.slice(4)] } : { therefore: to };
    return { id: steps[at] ?? "", because, ...leads, strength };
  });
  const lists = {
    artefacts: [{ id: "ring", name: "The ring" }],
    questions: [{ id: "q", text: "Which?", answers: ["c0", "c1"] }],
    claims: claims.map((id) => ({ id, text: `${id} is so.` })),
    observations: seen.map((id) => ({ id, of: "ring", text: `${id} was seen.`, feature: id })),
    arguments: made.slice(0, 2),
  };
  return [
    { path: "corpus.yaml", text: `title: T\nbibliography: [b.bib]\n${more}` },
    { path: "b.bib", text: bib },
    { path: "all.yaml", text: JSON.stringify(lists) },
    { path: "hale.yaml", text: `source: hale\narguments: ${JSON.stringify(made.slice(2))}\n` },
  ];
}

interface Step {
  readonly because: readonly string[];
  readonly to: string;
  readonly strength: string;
}

const strength = fc.constantFrom("weak", "ordinary", "strong");
const anyStep: fc.Arbitrary<Step> = fc.record({
  because: fc.uniqueArray(fc.constantFrom(...premises), { minLength: 1, maxLength: 3 }),
  to: fc.constantFrom(
    ...claims,
    ...claims.map((id) => `not ${id}`),
    ...seen.map((id) => `not ${id}`),
    "not a0",
  ),
  strength,
});
const anyCorpus = fc.array(anyStep, { minLength: 3, maxLength: 4 });

/** What a hand may do next with a box, a key or a button. */
type Hand = (draft: ArgumentDraft) => ArgumentDraft;
const anyHand: fc.Arbitrary<Hand> = fc.oneof(
  fc.constantFrom(...premises).map(
    (id): Hand =>
      (draft) =>
        withPremise(draft, id),
  ),
  fc.constantFrom(...claims).map(
    (id): Hand =>
      (draft) =>
        leadingTo(draft, id),
  ),
  fc.constantFrom(...premises, ...steps.slice(0, 3)).map(
    (id): Hand =>
      (draft) =>
        against(draft, id, claims.includes(id)),
  ),
  fc.constantFrom("q", null).map((question): Hand => (draft) => ({
    ...leadingToNew(draft, question),
    aim: { to: "new", text: "It was  all\notherwise.", question },
  })),
  strength.map((one): Hand => (draft) => ({ ...draft, strength: one })),
);
const anyHands = fc.array(anyHand, { minLength: 2, maxLength: 7 });

const emptyMemo = (): Memo => ({ read: new Map(), compute: new Map() });

function built(files: readonly SourceFile[], memo: Memo = emptyMemo()) {
  const { model, findings } = readUnder(files, plugins, memo, {});
  return {
    model,
    memo,
    errors: findings.filter((one) => one.level === "error").map((one) => inEnglish(one.message)),
  };
}

/** The files as an action leaves them. */
function after(files: readonly SourceFile[], { graph }: Model, action: Action): readonly SourceFile[] {
  const texts = new Map(files.map((one) => [one.path, one.text]));
  const what = prepared({ graph, files: texts }, action);
  if (!("changes" in what)) throw new Error(JSON.stringify(what));
  for (const { file, edits } of what.changes) texts.set(file, edited(texts.get(file) ?? "", edits));
  return [...texts].map(([path, text]) => ({ path, text }));
}

function told(files: readonly SourceFile[], model: Model, memo: Memo, draft: ArgumentDraft) {
  const ground = { files, read: memo.read, graph: model.graph, model };
  const tried = rememberedTried();
  return { told: inHandTold(ground, draft, tried), tried: tried(ground, draft) };
}

describe("an argument made by hand", () => {
  test("is saved as records that can be read, and stands as its trial said", () => {
    fc.assert(
      fc.property(
        anyCorpus,
        anyHands,
        fc.option(fc.constantFrom(...steps.slice(0, 3))),
        (given, hands, of) => {
          const files = corpus(given);
          const { model, memo, errors } = built(files);
          const begun = of === null ? nothingInHand : takenInHand(model.graph, of);
          if (!begun) throw new Error("Missing argument, expected it to be taken in hand");
          const draft = hands.reduce((one, hand) => hand(one), begun);
          expect(draftIn(JSON.parse(JSON.stringify(draft)))).toEqual(draft);
          const action = actionOf(model.graph, draft);
          const { told: said, tried } = told(files, model, memo, draft);
          if ("problem" in action) {
            expect(inEnglish(action.problem)).toMatch(/^Missing .*, expected /);
            expect([said.turned, tried]).toEqual([null, null]);
            return;
          }
          const now = built(after(files, model, action));
          expect(now.errors).toEqual(errors);
          expect(new Map(tried?.judgement.standings)).toEqual(new Map(now.model.judgement.standings));
          const turned = [...now.model.judgement.standings].filter(
            ([id, is]) => model.judgement.standings.get(id) !== is && id !== tried?.argument,
          );
          expect(new Map(said.turned?.map(({ id, is }) => [id, is]))).toEqual(new Map(turned));
          const record = now.model.graph.records.get(tried?.argument ?? "");
          if (record?.list === "arguments")
            expect([...record.values.because].sort()).toEqual([...draft.because].sort());
        },
      ),
      { numRuns: 40 },
    );
  });

  test("changes of an argument what was changed alone, letter for letter", () => {
    const files = corpus([
      { because: ["o0"], to: "c0", strength: "ordinary" },
      { because: ["o1"], to: "c1", strength: "weak" },
    ]).map((one) =>
      one.path === "hale.yaml"
        ? {
            ...one,
            text: "source: hale\narguments:\n  # in his words\n  - id: h\n    because: [o1, o2]   # both\n    therefore: c2\n    via: hale\n    x-mine: kept\n",
          }
        : one,
    );
    const { model } = built(files);
    const draft = takenInHand(model.graph, "h");
    const action = draft && actionOf(model.graph, withPremise({ ...draft, text: "Both were cut." }, "c3"));
    if (!action || "problem" in action) throw new Error("Missing action");
    const text = after(files, model, action).find((one) => one.path === "hale.yaml")?.text;
    expect(text).toBe(
      "source: hale\narguments:\n  # in his words\n  - id: h\n    because: [o1, o2, c3]   # both\n    therefore: c2\n    text: Both were cut.\n    via: hale\n    x-mine: kept\n",
    );
  });

  test("an answer may stand in the air; anything else needs a premise", () => {
    const { model } = built(corpus([]));
    const answer: ArgumentDraft = { ...nothingInHand, aim: { to: "new", text: "Neither.", question: "q" } };
    expect(actionOf(model.graph, answer)).toMatchObject({
      do: "together",
      actions: [{ list: "claims" }, { id: "q" }],
    });
    const bare: ArgumentDraft = { ...answer, aim: { to: "new", text: "Neither.", question: null } };
    expect(actionOf(model.graph, bare)).toHaveProperty("problem");
  });
});

describe("what is withheld", () => {
  const files = corpus([{ because: ["o0", "o1"], to: "c0", strength: "ordinary" }], "withhold: [o1, c3]\n");
  const { model, memo } = built(files);

  test("is neither named nor taken, and stays where it stands", () => {
    const draft = takenInHand(model.graph, "a0");
    if (!draft) throw new Error("Missing argument");
    expect(draft.because).toEqual(["o0"]);
    const next = withPremise(withPremise(draft, "o0"), "o2");
    const { told: said } = told(files, model, memo, next);
    expect(JSON.stringify(said)).not.toMatch(/o1|c3/);
    const action = actionOf(model.graph, next);
    if ("problem" in action) throw new Error("Missing action");
    const now = built(after(files, model, action)).model.graph.records.get("a0");
    expect(now?.list === "arguments" && now.values.because).toEqual(["o1", "o2"]);
  });

  test("can be no premise, no conclusion, and gets no note", () => {
    const drafts = [
      withPremise(leadingTo(nothingInHand, "c0"), "o1"),
      withPremise(leadingTo(nothingInHand, "c3"), "o0"),
    ];
    for (const draft of drafts) {
      expect(actionOf(model.graph, draft)).toHaveProperty("problem");
      expect(JSON.stringify(told(files, model, memo, draft).told)).not.toMatch(/o1 was|c3 is/);
    }
    expect(noteOn(model.graph, "o1", "Was it?")).toBeNull();
    expect(takenInHand(model.graph, "c0")).toBeNull();
  });
});

test("a note stands behind the one that is there", () => {
  const { model } = built(corpus([]));
  expect(noteOn(model.graph, "o0", "Was it?")).toMatchObject({ do: "change", values: { note: "Was it?" } });
});
