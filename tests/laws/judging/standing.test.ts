import { expect, test } from "vitest";
import { build, compute } from "../../../src/build.ts";
import type { Checked, Memo, Model, SourceFile } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { longestSentence, sentenceOf } from "../../../src/judge/explain/sentence.ts";
import { reasonOf } from "../../../src/judge/explain/reason.ts";
import { reportOf } from "../../../src/show/report/report.ts";
import { clingoPartialStable } from "../../oracle/clingo.ts";
import { casePlugins, filesOf, randomCase } from "../../oracle/random-corpus.ts";
import type { Case } from "../../oracle/random-corpus.ts";
import { rulesOf, secondStandings } from "../../oracle/second-standing.ts";

const seeds = Array.from({ length: 600 }, (_, seed) => seed + 1);

function evaluated(files: readonly SourceFile[], memo: Memo = emptyMemo()): Checked<Model> {
  for (;;) {
    const checked = build(files, casePlugins, memo);
    const missing = checked.model?.missing ?? [];
    if (missing.length === 0) return checked;
    for (const run of missing)
      memo.compute.set(
        run.key,
        compute(run, casePlugins, () => undefined),
      );
  }
}

function modelOf(one: Case): Model {
  const { model } = evaluated(filesOf(one));
  if (!model) throw new Error("no model");
  return model;
}

/** What the cases must between them have; each asks whether one case has it. */
const features: Readonly<Record<string, (one: Case, standings: ReadonlyMap<string, string>) => boolean>> = {
  stands: (_, standings) => [...standings.values()].includes("stands"),
  open: (_, standings) => [...standings.values()].includes("open"),
  falls: (_, standings) => [...standings.values()].includes("falls"),
  unsupported: (_, standings) => [...standings.values()].includes("unsupported"),
  "against a claim": (one) => one.arguments.some((it) => it.against?.some((id) => id.startsWith("c"))),
  "against an argument": (one) =>
    one.arguments.some((it) => it.against?.some((id) => id.startsWith("a") && id !== it.id)),
  "against evidence": (one) => one.arguments.some((it) => it.against?.some((id) => /^[om]/.test(id))),
  "against a position": (one) => one.arguments.some((it) => it.against?.some((id) => id.startsWith("p"))),
  "a list of targets": (one) => one.arguments.some((it) => (it.against?.length ?? 0) > 1),
  "an undercut circle": (one) =>
    one.arguments.some((a) =>
      a.against?.some(
        (id) => id !== a.id && one.arguments.some((b) => b.id === id && b.against?.includes(a.id)),
      ),
    ),
  "a self-attack": (one) => one.arguments.some((it) => it.against?.includes(it.id)),
  "a circle through three claims": (one) => {
    const leads = (a: string, b: string): boolean =>
      one.arguments.some((it) => it.because.includes(a) && it.therefore === b);
    const ids = one.claims.map((claim) => claim.id);
    return ids.some((a) =>
      ids.some((b) =>
        ids.some((c) => new Set([a, b, c]).size === 3 && leads(a, b) && leads(b, c) && leads(c, a)),
      ),
    );
  },
  "unequal strengths": (one) => new Set(one.arguments.map((it) => it.strength)).size > 1,
  "an exclusive question": (one) => one.questions.some((it) => it.exclusive && it.answers.length > 1),
  "a question that is not": (one) => one.questions.some((it) => !it.exclusive && it.answers.length > 1),
  "a shared answer": (one) =>
    one.claims.some(({ id }) => one.questions.filter((it) => it.answers.includes(id)).length > 1),
  "incompatible claims": (one) => one.claims.some((it) => it.incompatible.length > 0),
  testimony: (one) =>
    one.testimony && one.positions.some((it) => it.stance === "holds" || it.stance === "rejects"),
  "a derivation with an attacked input": (one) =>
    one.derivations.some((it) =>
      it.values.some((id) => one.arguments.some((argument) => argument.against?.includes(id))),
    ),
  "a derivation that did not compute": (one) => one.derivations.some((it) => it.refuses),
  "a derivation on a derivation": (one) => one.derivations.some((it) => it.after !== undefined),
  "a broken premise": (one) => one.arguments.some((it) => it.because.includes("nowhere")),
  "silence that works": (one, standings) =>
    one.arguments.some((it) => it.scheme === "silence" && standings.get(it.id) === "stands"),
  "silence that is not weighed": (one, standings) =>
    one.arguments.some((it) => it.scheme === "silence" && standings.get(it.id) === "unsupported"),
};

test("600 random corpora stand as a second evaluation has them, and cover every kind of attack", () => {
  const shares = new Map(Object.keys(features).map((name) => [name, 0]));
  for (const seed of seeds) {
    const one = randomCase(seed);
    const expected = secondStandings(one);
    const model = modelOf(one);
    const got = new Map<string, string>(model.judgement.standings);
    expect([...got].sort(), `seed ${seed}`).toEqual([...expected].sort());
    for (const [name, has] of Object.entries(features)) {
      if (has(one, expected)) shares.set(name, (shares.get(name) ?? 0) + 1);
    }
  }
  const told = [...shares].map(([name, n]) => `${name} ${((100 * n) / seeds.length).toFixed(0)} %`);
  process.stdout.write(`Of ${seeds.length} corpora: ${told.join(", ")}.\n`);
  expect([...shares].filter(([, n]) => n === 0)).toEqual([]);
});

test("clingo's least partial stable model gives the same standings on 500 random corpora", async () => {
  let asked = 0;
  for (const seed of seeds.slice(0, 500)) {
    const one = randomCase(seed);
    const { rules } = rulesOf(one);
    const models = await clingoPartialStable(rules);
    const [first, ...others] = models;
    if (!first) throw new Error(`clingo found no model for seed ${seed}`);
    const least = others.reduce(
      (small, model) => (model.certain.size < small.certain.size ? model : small),
      first,
    );
    for (const [id, standing] of modelOf(one).judgement.standings) {
      const atom = least.certain.has(`works ${id}`) || least.certain.has(`holds ${id}`);
      const possible = least.possible.has(`works ${id}`) || least.possible.has(`holds ${id}`);
      expect(standing === "stands", `seed ${seed}, ${id}`).toBe(atom);
      expect(standing === "open", `seed ${seed}, ${id}`).toBe(possible && !atom);
    }
    asked++;
  }
  expect(asked).toBe(500);
});

test("two claims that cannot both be right never both stand", () => {
  for (const seed of seeds) {
    const { graph, judgement } = modelOf(randomCase(seed));
    for (const { id } of graph.list("claims")) {
      if (judgement.standings.get(id) !== "stands") continue;
      for (const rival of graph.rivalsOf(id))
        expect(judgement.standings.get(rival), `seed ${seed}`).not.toBe("stands");
    }
  }
});

test("every standing has a sentence of at most 25 words, without ids", () => {
  for (const seed of seeds) {
    const { graph, derivations, judgement } = modelOf(randomCase(seed));
    for (const id of judgement.standings.keys()) {
      const sentence = sentenceOf(graph, reasonOf(graph, derivations, judgement, id));
      expect(
        sentence.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length,
        sentence,
      ).toBeLessThanOrEqual(longestSentence);
      expect(sentence, `seed ${seed}, ${id}`).not.toMatch(/\b[adopm]\d\b/);
    }
  }
});

const bytes = (checked: Checked<Model>, files: readonly SourceFile[]): string =>
  JSON.stringify(
    reportOf(checked.model, checked.findings, new Map(files.map((file) => [file.path, file.text]))),
  );

/** The records of a case, each list in a file of its own. */
function divided(files: readonly SourceFile[]): readonly SourceFile[] {
  return files.flatMap((file) => {
    if (file.path === "corpus.yaml") return [file];
    const lists = JSON.parse(file.text) as Readonly<Record<string, unknown>>;
    return Object.entries(lists).map(([list, records]) => ({
      path: `${list}.yaml`,
      text: JSON.stringify({ [list]: records }),
    }));
  });
}

test("the order of the files does not matter", () => {
  for (const seed of seeds.slice(0, 150)) {
    const files = divided(filesOf(randomCase(seed)));
    expect(bytes(evaluated(files), files)).toBe(bytes(evaluated([...files].reverse()), files));
  }
});

test("warm and cold memo, and an edit built upon or from scratch, give equal bytes", () => {
  for (const seed of seeds.slice(0, 150)) {
    const files = filesOf(randomCase(seed));
    const edited = filesOf(randomCase(seed + 1));
    const memo = emptyMemo();
    const cold = bytes(evaluated(files, memo), files);
    expect(bytes(evaluated(files, memo), files)).toBe(cold);
    expect(bytes(evaluated(edited, memo), edited)).toBe(bytes(evaluated(edited), edited));
    expect(bytes(evaluated(files, memo), files)).toBe(cold);
  }
});
