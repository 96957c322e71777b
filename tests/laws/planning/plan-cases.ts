import { randomFrom } from "../../../src/base/outcome/random.ts";
import { build, compute } from "../../../src/build.ts";
import type { Checked, Lens, Memo, Model, Reach, SourceFile } from "../../../src/build.ts";
import type { Plan } from "../../../src/plan/plan.ts";
import type { Plugin } from "../../../src/plugin.ts";
import { casePlugins, filesOf, randomCase } from "../../oracle/random-corpus.ts";
import type { Case } from "../../oracle/random-corpus.ts";

/** A plug-in whose number is the first of its measurements, so that another reading gives another number. */
const first: Plugin = {
  ...casePlugins[0]!,
  id: "first",
  parameters: [],
  compute: ({ values = [] }) => {
    const value = values[0]?.quantity.value ?? 0;
    return { numbers: { p: { value, low: null, high: null } }, leftOut: [], warnings: [], data: null };
  },
};

export const planPlugins: readonly Plugin[] = [...casePlugins, first];

/** A random corpus with examinations of every kind: for, against, seeing, measuring what is known and what is not. */
export function planFiles(seed: number): readonly SourceFile[] {
  const one = randomCase(seed);
  return [...filesOf(one), { path: "later.yaml", text: JSON.stringify(laterRecords(one, seed)) }];
}

function laterRecords(one: Case, seed: number): object {
  const random = randomFrom(seed * 7919);
  const chance = (share: number): boolean => random.uniform() < share;
  const pick = <T>(list: readonly T[]): T => list[random.below(list.length)]!;
  const some = <T>(list: readonly T[], most: number): readonly T[] => [
    ...new Set(Array.from({ length: 1 + random.below(most) }, () => pick(list))),
  ];
  const claims = one.claims.map((claim) => claim.id);
  const targets = [
    ...one.observations.map((it) => it.id),
    ...one.measurements,
    ...one.derivations.map((it) => it.id),
    ...one.arguments.map((it) => it.id),
    ...claims,
  ];
  const bearing = (claim: string): object => ({ claim, supports: { p: "< 2.5" }, disputes: { p: "> 4.5" } });
  const derivations = [
    ["f0", "width m nought"],
    ["f1", "depth"],
  ].map(([id, dimension]) => ({
    id,
    plugin: "first",
    inputs: { values: { of: "post", dimension } },
    "bears-on": some(claims, 2).map(bearing),
  }));
  const leaning = {
    id: "f2",
    plugin: "echo",
    inputs: { values: ["m0"] },
    parameters: { p: "1", refuses: "false", after: { number: "f1.p" } },
    "bears-on": [bearing(pick(claims))],
  };
  const outcome = (id: string): object => ({
    id,
    text: `Outcome ${id}.`,
    ...(chance(0.3) ? { sees: [{ feature: "charcoal", present: pick(["true", "false", "unclear"]) }] } : {}),
    ...(chance(0.5)
      ? {
          measures: [
            { of: "post", dimension: pick(["width m nought", "depth"]), value: `${1 + random.below(5)}.0 m` },
          ],
        }
      : {}),
    ...(chance(0.5) ? { therefore: some(claims, 2) } : {}),
    ...(chance(0.6) ? { against: some([...targets, "f0"], 2) } : {}),
    ...(chance(0.4) ? { strength: pick(["weak", "strong"]) } : {}),
    ...(chance(0.5) ? { probability: "0.5" } : {}),
  });
  const examinations = Array.from({ length: 1 + random.below(4) }, (_, n) => ({
    id: `x${n}`,
    of: [chance(0.4) ? "post" : "stone"],
    method: `look number ${n}`,
    ...(chance(0.7) ? { cost: String(random.below(4)) } : {}),
    ...(chance(0.3) ? { destructive: "true" } : {}),
    outcomes: Array.from({ length: 1 + random.below(3) }, (_, at) => outcome(`out-${at}`)),
  }));
  const seen = { id: "o-told", of: "post", text: "Told of.", feature: "soot", basis: "report" };
  const again = { id: "m-again", of: "post", dimension: "width m nought", value: "9.0 ± 0.1 m" };
  const told = { id: "a-told", because: [pick(["o-told", "m-again"])], therefore: pick(claims) };
  const answers = some(claims, 3);
  const prior = Object.fromEntries(answers.map((id) => [id, "1"]));
  const questions = [{ id: "q-later", text: "Which?", answers, exclusive: String(chance(0.7)), prior }];
  return {
    artefacts: [{ id: "stone", name: "A stone" }],
    ...(chance(0.5) ? { observations: [seen], measurements: [again], arguments: [told] } : {}),
    derivations: [...derivations, leaning],
    examinations,
    questions,
  };
}

/** What files come to under a lens, every number computed. */
export function checkedUnder(
  files: readonly SourceFile[],
  lens: Lens = {},
  reach: Reach = {},
  memo: Memo = { read: new Map(), compute: new Map() },
): Checked<Model> & { readonly model: Model } {
  for (;;) {
    const { model, findings } = build(files, planPlugins, memo, lens, reach);
    if (!model) throw new Error("no model");
    if (model.missing.length === 0) return { model, findings };
    for (const run of model.missing)
      memo.compute.set(
        run.key,
        compute(run, planPlugins, () => undefined),
      );
  }
}

/** The plan of files, and the model it was made from. */
export function plannedFrom(
  files: readonly SourceFile[],
  memo?: Memo,
): { readonly model: Model; readonly plan: Plan } {
  const { model } = checkedUnder(files, {}, { plan: true }, memo);
  if (!model.plan) throw new Error("no plan");
  return { model, plan: model.plan };
}
