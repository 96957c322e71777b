import { byText } from "../../src/base/order.ts";
import { frameworkOf, type Framework } from "../../src/judge/solver/framework.ts";
import { TRUE, UNDEFINED, wellFounded } from "../../src/judge/solver/well-founded.ts";
import { contrastOf } from "../../src/plan/weigh/contrast.ts";
import { expectedGain, jointGain } from "../../src/plan/weigh/gain.ts";
import { smallestHitting } from "../../src/plan/weigh/hitting.ts";
import type { Methods } from "./case.ts";

type Likely = readonly (readonly number[])[];
type Labels = Readonly<Record<string, string>>;

interface Edit {
  readonly addArguments?: readonly string[];
  readonly addAttacks?: readonly (readonly [string, string])[];
}

function entropy(input: unknown): unknown {
  const { prior, examinations } = input as { prior: readonly number[]; examinations: Record<string, Likely> };
  const results = Object.entries(examinations).map(([name, likely]) => {
    const { priorBits, bits, outcomes } = expectedGain(prior, likely);
    return [name, { priorEntropyBits: priorBits, expectedReductionBits: bits, outcomes }] as const;
  });
  const ranking = results
    .toSorted((a, b) => b[1].expectedReductionBits - a[1].expectedReductionBits || byText(a[0], b[0]))
    .map(([name]) => name);
  return { results: Object.fromEntries(results), ranking };
}

function entropyJoint(input: unknown): unknown {
  const { prior, examinations } = input as { prior: readonly number[]; examinations: readonly Likely[] };
  const singles = examinations.map((likely) => expectedGain(prior, likely).bits);
  return {
    expectedReductionBits: jointGain(prior, examinations),
    sumOfSingles: singles.reduce((sum, one) => sum + one, 0),
  };
}

/** The labels of the watched arguments once an edit is made to a framework. */
function labelsAfter(framework: Framework, edit: Edit, watch: readonly string[]): Labels {
  const names = [...framework.arguments, ...(edit.addArguments ?? [])];
  const attacks = [...framework.attacks, ...(edit.addAttacks ?? [])];
  const values = wellFounded(frameworkOf({ arguments: names, attacks }));
  const label = (name: string): string => {
    const value = values[names.indexOf(name)];
    return value === TRUE ? "in" : value === UNDEFINED ? "undecided" : "out";
  };
  return Object.fromEntries(watch.map((name) => [name, label(name)]));
}

function flips(input: unknown): unknown {
  const { framework, examinations, watch } = input as {
    framework: Framework;
    examinations: Record<string, readonly Edit[]>;
    watch: readonly string[];
  };
  const current = labelsAfter(framework, {}, watch);
  const exams = Object.entries(examinations).map(([name, edits]) => {
    const labellings = edits.map((edit) => labelsAfter(framework, edit, watch));
    const changes = labellings.map(
      (labels) => new Map(Object.entries(labels).filter(([id, label]) => label !== current[id])),
    );
    const contrast = contrastOf(changes);
    const decided = labellings.every((labels) => watch.every((id) => labels[id] !== "undecided"));
    const counted = { nFlips: contrast.flips.length, decidesInEveryOutcome: decided };
    return [name, { labellings, ...contrast, ...counted }] as const;
  });
  const ranking = exams
    .toSorted(
      ([a, one], [b, other]) =>
        other.nFlips - one.nFlips || other.discriminates.length - one.discriminates.length || byText(a, b),
    )
    .map(([name]) => name);
  return { current, exams: Object.fromEntries(exams), ranking };
}

function hittingSet(input: unknown): unknown {
  const { sets } = input as { sets: readonly (readonly string[])[] };
  const { solutions, unhittable } = smallestHitting(sets);
  if (unhittable.length > 0) return { minimum: null, solutions: [], undecidablePairs: unhittable };
  const sorted = solutions.map((one) => one.toSorted(byText));
  return {
    minimum: sorted[0]?.length ?? 0,
    solutions: sorted.toSorted((a, b) => byText(a.join("\n"), b.join("\n"))),
  };
}

/** What to examine next (methods J), by the planner's own functions. */
export const next: Methods = {
  "next.entropy": entropy,
  "next.entropyJoint": entropyJoint,
  "next.flips": flips,
  "next.hittingSet": hittingSet,
};
