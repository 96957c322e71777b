import { finding } from "../../base/finding.ts";
import type { Finding, Id } from "../../base/finding.ts";
import { say } from "../../base/text/said/said.ts";
import { spanOf } from "../../read/record.ts";
import type { Step } from "../../read/yaml/tree.ts";
import type { Linked } from "../graph.ts";
import type { Known } from "./points-to.ts";

type Examination = Linked<"examinations">;

/** An examination whose outcomes have names of their own, and probabilities by answers alone; the rest is told and left out. */
export function withOutcomes(record: Examination, known: Known, findings: Finding[]): Examination {
  const seen = new Set<Id>();
  const outcomes = record.values.outcomes.flatMap((outcome, place) => {
    const path: readonly Step[] = ["outcomes", place];
    if (seen.has(outcome.id)) {
      const message = say`Duplicate outcome \`${outcome.id}\`, expected another name; the first is kept`;
      findings.push(finding("duplicate-id", message, spanOf(record, ...path, "id"), { about: [record.id] }));
      return [];
    }
    seen.add(outcome.id);
    const { probability } = outcome;
    if (!(probability instanceof Map)) return [outcome];
    const kept = answersOnly(record, probability, answersOf(known), [...path, "probability"], findings);
    return [kept === probability ? outcome : { ...outcome, probability: kept }];
  });
  const same = outcomes.length === record.values.outcomes.length;
  return same && outcomes.every((one, place) => one === record.values.outcomes[place])
    ? record
    : { ...record, values: { ...record.values, outcomes } };
}

/** A question whose prior is of its own answers; the rest is told and left out. */
export function withPrior(record: Linked<"questions">, findings: Finding[]): Linked<"questions"> {
  const { prior, answers } = record.values;
  if (prior === undefined) return record;
  const kept = answersOnly(record, prior, new Set(answers), ["prior"], findings);
  return kept === prior ? record : { ...record, values: { ...record.values, prior: kept } };
}

const answers = new WeakMap<Known["names"], ReadonlySet<Id>>();

function answersOf({ names }: Known): ReadonlySet<Id> {
  const had = answers.get(names);
  if (had) return had;
  const all = new Set<Id>();
  for (const record of names.records.values()) {
    if (record.list === "questions") for (const id of record.values.answers) all.add(id);
  }
  answers.set(names, all);
  return all;
}

function answersOnly(
  record: Examination | Linked<"questions">,
  numbers: ReadonlyMap<Id, number>,
  allowed: ReadonlySet<Id>,
  path: readonly Step[],
  findings: Finding[],
): ReadonlyMap<Id, number> {
  const others = [...numbers.keys()].filter((id) => !allowed.has(id));
  for (const id of others) {
    const expected =
      record.list === "questions" ? say`one of the question's answers` : say`an answer of some question`;
    const message = say`Unexpected \`${id}\`, expected ${expected}`;
    findings.push(finding("bad-value", message, spanOf(record, ...path, id), { about: [record.id] }));
  }
  return others.length === 0 ? numbers : new Map([...numbers].filter(([id]) => allowed.has(id)));
}
