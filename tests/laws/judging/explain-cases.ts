import { expect } from "vitest";
import type { Model } from "../../../src/build.ts";
import { explain } from "../../../src/judge/explain/explanation.ts";
import type { Explanation } from "../../../src/judge/explain/explanation.ts";
import { modelOf } from "../../oracle/computed-model.ts";
import { naiveWellFounded } from "../../oracle/naive.ts";
import type { PlainRule } from "../../oracle/naive.ts";
import { filesOf, randomCase } from "../../oracle/random-corpus.ts";
import type { Case } from "../../oracle/random-corpus.ts";
import { rulesOf } from "../../oracle/second-standing.ts";

const seeds = Array.from({ length: 300 }, (_, seed) => seed + 1);

/** A random corpus with all that is said of it. */
export interface Told {
  readonly seed: number;
  readonly one: Case;
  readonly model: Model;
  /** The rules of the case as a second evaluation has them. */
  readonly rules: readonly PlainRule[];
  readonly all: readonly Explanation[];
}

/** Every explanation of every random corpus. */
export const told: readonly Told[] = seeds.map((seed) => {
  const one = randomCase(seed);
  const model = modelOf(filesOf(one));
  const { graph, derivations, judgement } = model;
  const all = [...judgement.standings.keys()].flatMap(
    (id) => explain(graph, derivations, judgement, id) ?? [],
  );
  return { seed, one, model, rules: rulesOf(one).rules, all };
});

/** The explanations of one standing. */
export type Of<S extends Explanation["standing"]> = Extract<Explanation, { readonly standing: S }>;

/** Checks every explanation of one standing, of which there must be many. */
export function each<S extends Explanation["standing"]>(
  standing: S,
  check: (explanation: Of<S>, from: Told) => void,
): void {
  let met = 0;
  for (const from of told) {
    for (const explanation of from.all) {
      if (explanation.standing !== standing) continue;
      check(explanation as Of<S>, from);
      met++;
    }
  }
  expect(met).toBeGreaterThan(50);
}

/** The atom of an id among the oracle's rules. */
export const atomOf = (one: Case, id: string): string =>
  id.includes(">") || one.arguments.some((it) => it.id === id) ? `works ${id}` : `holds ${id}`;

/** The record that the head of an oracle's rule stands for; null for a claim, which is never lost. */
export function recordOf(one: Case, head: string): string | null {
  const id = head.replace(/^(?:works|holds) /, "").replace(/>.*$/, "");
  return one.claims.some((claim) => claim.id === id) ? null : id;
}

/** The rules of a case without those of lost records. */
export const withOnly = (from: Told, kept: ReadonlySet<string>): readonly PlainRule[] =>
  from.rules.filter(({ head }) => {
    const record = recordOf(from.one, head);
    return record === null || kept.has(record);
  });

/** The value of an id by some rules: `true`, `undefined` or `false`. */
export const valueOf = (from: Told, rules: readonly PlainRule[], id: string): string =>
  naiveWellFounded(rules).get(atomOf(from.one, id)) ?? "false";

/** What stands has no working attack, so that among such records the attacks may be left away. */
export const unattacked = (rule: PlainRule): PlainRule => ({ ...rule, negative: [] });
