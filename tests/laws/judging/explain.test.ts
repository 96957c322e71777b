import * as fc from "fast-check";
import { expect, test } from "vitest";
import { failedAttacks } from "../../../src/judge/explain/attack.ts";
import { evaluationOf } from "../../../src/judge/explain/evaluation.ts";
import { coneOf } from "../../../src/judge/explain/support/cone.ts";
import { byDeletion } from "../../../src/judge/explain/support/founding.ts";
import { smallestSet } from "../../../src/judge/explain/support/smallest.ts";
import { supportOf } from "../../../src/judge/explain/support/support.ts";
import { programOf } from "../../../src/judge/solver/program.ts";
import {
  FALSE,
  TRUE,
  UNDEFINED,
  decidedInOrder,
  wellFounded,
} from "../../../src/judge/solver/well-founded.ts";
import { naiveLeast, naiveWellFounded } from "../../oracle/naive.ts";
import { filesOf } from "../../oracle/random-corpus.ts";
import type { Case } from "../../oracle/random-corpus.ts";
import { nameOf, plainRules, randomCircles, randomProgram } from "../../oracle/random-program.ts";
import type { RandomProgram } from "../../oracle/random-program.ts";
import { rulesOf } from "../../oracle/second-standing.ts";
import { modelOf } from "../../oracle/computed-model.ts";
import { atomOf, each, recordOf, told, unattacked, valueOf, withOnly } from "./explain-cases.ts";
import type { Told } from "./explain-cases.ts";

test("everything that has a standing has an explanation of that standing", () => {
  for (const { all, model } of told) {
    expect(new Map(all.map(({ id, standing }) => [id, standing]))).toEqual(
      new Map(model.judgement.standings),
    );
  }
});

test("the support alone makes it stand, everything else being lost", () => {
  each("stands", ({ id, support }, from) => {
    expect(valueOf(from, withOnly(from, new Set(support.records)), id), `seed ${from.seed}, ${id}`).toBe(
      "true",
    );
  });
});

test("a corpus of the support's records alone has it stand", () => {
  each("stands", ({ id, support }, { seed, one, model }) => {
    if (seed > 120 || model.graph.records.get(id)?.list !== "claims") return;
    const kept = new Set(support.records);
    const only = <T extends { readonly id: string }>(list: readonly T[]): readonly T[] =>
      list.filter((it) => kept.has(it.id));
    const less: Case = {
      ...one,
      observations: only(one.observations),
      measurements: one.measurements.filter((it) => kept.has(it)),
      derivations: only(one.derivations),
      positions: only(one.positions),
      arguments: only(one.arguments),
    };
    expect(modelOf(filesOf(less)).judgement.standings.get(id), `seed ${seed}, ${id}`).toBe("stands");
  });
});

test("no smaller set of records that stand does, nor one as small that comes first by id", () => {
  let tried = 0;
  each("stands", ({ id, support }, from) => {
    expect(support.exact).toBe(true);
    const model = naiveWellFounded(from.rules);
    const standing = from.rules.flatMap(({ head }) => {
      const record = recordOf(from.one, head);
      return record !== null && model.get(head) === "true" ? [record] : [];
    });
    const records = [...new Set(standing)].sort();
    expect(records).toEqual(expect.arrayContaining([...support.records]));
    if (support.records.length > 5) return;
    for (const set of setsBefore(records, support.records)) {
      tried++;
      const rules = withOnly(from, new Set(set));
      const least = naiveLeast(
        rules.filter(({ head }) => model.get(head) === "true").map(unattacked),
        new Set(),
      );
      expect(least.has(atomOf(from.one, id)), `seed ${from.seed}, ${id} by ${set.join()}`).toBe(false);
    }
  });
  expect(tried).toBeGreaterThan(10_000);
});

/** All sets of fewer of these, and those of as many that come before a set in the order of their members. */
function setsBefore(all: readonly string[], set: readonly string[]): readonly (readonly string[])[] {
  const sets: string[][] = set.length > 0 ? [[]] : [];
  for (let size = 1; size <= set.length; size++) {
    const grown = sets
      .filter((one) => one.length === size - 1)
      .flatMap((one) =>
        all.filter((id) => one.length === 0 || id > (one.at(-1) ?? "")).map((id) => [...one, id]),
      );
    sets.push(...(size < set.length ? grown : grown.filter((one) => one.join("\n") < set.join("\n"))));
  }
  return sets;
}

test("atoms are told in an order in which each is decided by those before it, or falls together with its needs", () => {
  fc.assert(
    fc.property(fc.oneof(randomProgram(20), randomCircles(8)), ({ program, rules }) => {
      const { values, order } = decidedInOrder(program);
      expect([...values]).toEqual([...wellFounded(program)]);
      const at = (name: string): number => Number(name.slice(1));
      const before = (name: string, head: number, value: number): boolean =>
        values[at(name)] === value && (order[at(name)] ?? 0) < (order[head] ?? 0);
      for (const [head, value] of values.entries()) {
        const own = rules.filter((rule) => at(rule.head) === head);
        expect(order[head] === -1).toBe(value === UNDEFINED);
        const works = own.map(({ positive, negative }) =>
          [
            ...positive.map((it) => before(it, head, TRUE)),
            ...negative.map((it) => before(it, head, FALSE)),
          ].every(Boolean),
        );
        const dead = own.map(
          ({ positive, negative }) =>
            negative.some((it) => before(it, head, TRUE)) ||
            positive.some(
              (it) => before(it, head, FALSE) || (values[at(it)] === FALSE && order[at(it)] === order[head]),
            ),
        );
        if (value === TRUE) expect(works).toContain(true);
        if (value === FALSE) expect(dead).not.toContain(false);
      }
    }),
    { numRuns: 2000 },
  );
});

/** Programs of many ways to hold: facts below, rules above them, circles among these, and here and there an attack that fails. */
const manyWays: fc.Arbitrary<RandomProgram> = fc.constant(10).chain((atomCount) => {
  const atom = fc.nat({ max: atomCount - 1 });
  const fact = fc.integer({ min: 5, max: atomCount - 1 });
  const rule = fc.record({
    head: fc.nat({ max: 6 }),
    positive: fc.array(atom, { minLength: 1, maxLength: 3 }),
    negative: fc.oneof({ weight: 6, arbitrary: fc.constant([]) }, fc.tuple(atom)),
  });
  return fc
    .tuple(fc.array(fact, { maxLength: 4 }), fc.array(rule, { minLength: 6, maxLength: 16 }))
    .map(([facts, steps]) => {
      const rules = [...facts.map((head) => ({ head, positive: [], negative: [] })), ...steps];
      return { program: programOf(atomCount, rules), rules: plainRules(rules) };
    });
});

test("the smallest set is that found by trying every set, in random programs whose atoms may share records", () => {
  let more = 0;
  fc.assert(
    fc.property(manyWays, fc.array(fc.nat({ max: 11 }), { minLength: 10, maxLength: 10 }), (made, record) => {
      const values = wellFounded(made.program);
      // Half of the atoms cost nothing; the others stand for six records, so that some share one.
      const recordAt = (atom: number): string | null => ((record[atom] ?? 0) < 6 ? `r${record[atom]}` : null);
      for (const goal of values.keys()) {
        if (values[goal] !== TRUE) continue;
        const cone = coneOf(made.program, values, goal, recordAt);
        const holdsBy = (kept: (record: string | null) => boolean): boolean => {
          const rules = made.rules.filter(({ head, positive, negative }) => {
            const works = [head, ...positive].every((name) => values[Number(name.slice(1))] === TRUE);
            const free = negative.every((name) => values[Number(name.slice(1))] === 0);
            return works && free && kept(recordAt(Number(head.slice(1))));
          });
          return naiveLeast(rules.map(unattacked), new Set()).has(nameOf(goal));
        };
        const found = smallestSet(cone)?.map((place) => cone.records[place] ?? "") ?? [];
        const by = (set: readonly string[]) => holdsBy((one) => one === null || set.includes(one));
        expect(by(found)).toBe(true);
        for (const set of setsBefore(cone.records, found)) expect(by(set)).toBe(false);
        if (found.length > 1) more++;
        const minimal = byDeletion(cone).map((place) => cone.records[place] ?? "");
        expect(by(minimal)).toBe(true);
        for (const one of minimal) expect(by(minimal.filter((other) => other !== one))).toBe(false);
      }
    }),
    { numRuns: 3000, seed: 7 },
  );
  expect(more).toBeGreaterThan(300);
});

test("beyond its effort a support is a minimal one, and says so", () => {
  let inexact = 0;
  each("stands", ({ id }, from) => {
    const { graph, judgement } = from.model;
    const { records, exact } = supportOf(graph, evaluationOf(judgement), id, 0);
    const stands = (kept: readonly string[]) => valueOf(from, withOnly(from, new Set(kept)), id) === "true";
    expect(stands(records)).toBe(true);
    if (exact) return;
    inexact++;
    for (const one of records) expect(stands(records.filter((other) => other !== one))).toBe(false);
  });
  expect(inexact).toBeGreaterThan(50);
});

test("every attack on a support fails, all of them are told, and none by what it attacks", () => {
  each("stands", ({ support, failed }, { one, model, rules }) => {
    const { graph, derivations, judgement } = model;
    expect(failed).toEqual(failedAttacks(graph, derivations, judgement, support));
    const members = new Set(support.steps.map(({ id }) => atomOf(one, id)));
    const attackers = rules.filter(({ head }) => members.has(head)).flatMap(({ negative }) => negative);
    expect(new Set(failed.map(({ by }) => atomOf(one, by)))).toEqual(new Set(attackers));
    for (const { by, on, reason } of failed) {
      expect(["falls", "unsupported"]).toContain(judgement.standings.get(by));
      if (reason.why === "beaten") expect(on).not.toContain(reason.by);
    }
  });
});

test("a working attack works, hits what it says, and does so by its support alone", () => {
  each("falls", ({ id, attacks }, from) => {
    const { model, one, rules, seed } = from;
    const { steps } = rulesOf(one);
    const where = `seed ${seed}, ${id}`;
    expect(attacks.length, where).toBeGreaterThan(0);
    for (const { by, on, way, support } of attacks) {
      expect(model.judgement.standings.get(by), where).toBe("stands");
      expect(way[0]).toBe(id);
      expect(way.at(-1)).toBe(on);
      const bars = rules.filter(({ head }) => head === atomOf(one, on)).flatMap(({ negative }) => negative);
      const named = steps.some((step) => step.id === by && step.against.includes(on));
      const isClaim = model.graph.records.get(on)?.list === "claims";
      expect(isClaim ? named : bars.includes(atomOf(one, by)), where).toBe(true);
      expectWay(way, from);
      const kept = new Set([...support.records, ...way.map((it) => it.replace(/>.*$/, ""))]);
      const value = naiveWellFounded(withOnly(from, kept));
      expect(value.get(atomOf(one, by)), where).toBe("true");
      if (!isClaim) expect(value.get(atomOf(one, on)) ?? "false", where).toBe("false");
    }
  });
});

/** Each record of a way leans on the next. */
function expectWay(way: readonly string[], { one, rules }: Told): void {
  way.slice(1).forEach((next, place) => {
    const needs = rules
      .filter(({ head }) => head === atomOf(one, way[place] ?? ""))
      .flatMap((rule) => rule.positive);
    expect(needs).toContain(atomOf(one, next));
  });
}

test("every argument for a claim that falls and would work unattacked falls by an attack that is told", () => {
  each("falls", ({ id, attacks }, { one, model, rules }) => {
    if (model.graph.records.get(id)?.list !== "claims") return;
    const { compiled, standings } = model.judgement;
    for (const argument of compiled.arguments) {
      if (argument.therefore !== id || standings.get(argument.id) !== "falls") continue;
      const bars = rules
        .filter(({ head }) => head === atomOf(one, argument.id))
        .flatMap((rule) => rule.negative);
      const covered = attacks.some(
        (attack) => attack.way.includes(argument.id) || bars.includes(atomOf(one, attack.by)),
      );
      expect(covered || attacks.some((attack) => attack.on === id)).toBe(true);
    }
  });
});
