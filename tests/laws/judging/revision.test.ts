import * as fc from "fast-check";
import { expect, test } from "vitest";
import type { SourceFile } from "../../../src/build.ts";
import { derive } from "../../../src/derive/derive.ts";
import type { Derivations } from "../../../src/derive/derive.ts";
import type { Lens } from "../../../src/derive/lens.ts";
import { compute } from "../../../src/derive/run.ts";
import type { Outcome } from "../../../src/derive/run.ts";
import { argumentOf } from "../../../src/judge/argument.ts";
import { judge } from "../../../src/judge/judge.ts";
import type { Judgement } from "../../../src/judge/judge.ts";
import { reviser } from "../../../src/judge/revise.ts";
import type { Change, Reviser } from "../../../src/judge/revise.ts";
import { programOf, type Rule } from "../../../src/judge/solver/program.ts";
import { baseOf } from "../../../src/judge/solver/revision/base.ts";
import { laidOut } from "../../../src/judge/solver/revision/edit.ts";
import { reachOf } from "../../../src/judge/solver/revision/reach.ts";
import { revisable, type Body, type Edit } from "../../../src/judge/solver/revision/revision.ts";
import { UNDEFINED, wellFounded } from "../../../src/judge/solver/well-founded.ts";
import type { Graph } from "../../../src/link/graph.ts";
import { link } from "../../../src/link/link.ts";
import { readCorpus } from "../../../src/read/read.ts";
import { changedCases, recanted, signedFiles } from "../../oracle/changed-case.ts";
import { naiveWellFounded } from "../../oracle/naive.ts";
import { casePlugins, filesOf } from "../../oracle/random-corpus.ts";
import { nameOf, plainRules, randomCircles, randomProgram } from "../../oracle/random-program.ts";
import type { RandomProgram } from "../../oracle/random-program.ts";

const words = ["false", "undefined", "true"] as const;

/** Edits of a program: other rules for some of its atoms, and for new ones. */
function editsOf(atomCount: number): fc.Arbitrary<readonly Edit[]> {
  const atom = fc.nat({ max: atomCount + 2 });
  const body = fc.record({
    positive: fc.array(atom, { maxLength: 2 }),
    negative: fc.array(atom, { maxLength: 2 }),
  });
  const edit = fc.array(fc.tuple(atom, fc.array(body, { maxLength: 3 })), { maxLength: 4 });
  return fc.array(
    edit.map((pairs) => new Map<number, readonly Body[]>(pairs)),
    { minLength: 1, maxLength: 4 },
  );
}

const atomIn = (name: string): number => Number(name.slice(1));

/** The rules after an edit, by the plain meaning of it. */
function rulesAfter({ rules }: RandomProgram, edit: Edit): readonly Rule[] {
  const kept = rules
    .map(({ head, positive, negative }) => ({
      head: atomIn(head),
      positive: positive.map(atomIn),
      negative: negative.map(atomIn),
    }))
    .filter(({ head }) => !edit.has(head));
  return [...kept, ...[...edit].flatMap(([head, bodies]) => bodies.map((body) => ({ head, ...body })))];
}

function revisesAsFromScratch(random: RandomProgram, edits: readonly Edit[]): void {
  const { program } = random;
  const { values, revise } = revisable(program);
  expect(values).toEqual(wellFounded(program));
  for (const edit of edits) {
    const rules = rulesAfter(random, edit);
    const whole = wellFounded(programOf(program.atomCount + 3, rules));
    const plain = naiveWellFounded(plainRules(rules));
    const changed = revise(edit);
    for (let atom = 0; atom < program.atomCount + 3; atom++) {
      const was = values[atom];
      const is = changed.get(atom) ?? was ?? 0;
      expect(is, `atom ${atom}`).toBe(whole[atom]);
      expect(words[is]).toBe(plain.get(nameOf(atom)) ?? "false");
      if (was !== undefined && changed.has(atom)) expect(is).not.toBe(was);
    }
  }
}

test("after an edit the model is that of the edited program, for edits one after another", () => {
  const cases = randomProgram(24).chain((random) =>
    fc.tuple(fc.constant(random), editsOf(random.program.atomCount)),
  );
  fc.assert(
    fc.property(cases, ([random, edits]) => revisesAsFromScratch(random, edits)),
    { numRuns: 1500 },
  );
});

test("so it is where circles fall one after another", () => {
  const cases = randomCircles(10).chain((random) =>
    fc.tuple(fc.constant(random), editsOf(random.program.atomCount)),
  );
  fc.assert(
    fc.property(cases, ([random, edits]) => revisesAsFromScratch(random, edits)),
    { numRuns: 1500 },
  );
});

test("an edit that gives a decided atom the rules it has reaches nothing", () => {
  const cases = fc.oneof(randomProgram(24), randomCircles(10));
  fc.assert(
    fc.property(cases, ({ program, rules }) => {
      const base = baseOf(program);
      const reach = reachOf(base);
      for (let atom = 0; atom < program.atomCount; atom++) {
        const own = rules.filter(({ head }) => head === nameOf(atom));
        const bodies = own.map(({ positive, negative }) => ({
          positive: positive.map(atomIn),
          negative: negative.map(atomIn),
        }));
        const { atoms } = reach(laidOut(new Map([[atom, bodies]])));
        if (base.values[atom] !== UNDEFINED) expect(atoms).toEqual([]);
        expect(atoms.filter((one) => base.values[one] !== UNDEFINED)).toEqual([]);
      }
    }),
    { numRuns: 1000 },
  );
});

interface Judged {
  readonly graph: Graph;
  readonly derivations: Derivations;
  readonly judgement: Judgement;
}

const outcomes = new Map<string, Outcome>();

/** A corpus judged whole, every number computed. */
function judged(files: readonly SourceFile[], lens: Lens = {}): Judged {
  const reading = readCorpus(files, new Map());
  if (!("settings" in reading)) throw new Error("no corpus");
  const graph = link(reading);
  for (;;) {
    const derivations = derive(graph, casePlugins, outcomes, lens);
    if (derivations.missing.length === 0)
      return { graph, derivations, judgement: judge(graph, derivations, lens) };
    for (const run of derivations.missing)
      outcomes.set(
        run.key,
        compute(run, casePlugins, () => undefined),
      );
  }
}

/** The derivations that are not as they were. */
function differing(before: Derivations, after: Derivations): NonNullable<Change["derived"]> {
  return [...after.byId.values()].filter(
    (one) => JSON.stringify(one) !== JSON.stringify(before.byId.get(one.id)),
  );
}

/** Revises a judgement and compares with the corpus judged whole; how many standings are others. */
function revisesAsWhole(
  before: Judged,
  revise: Reviser,
  change: Change,
  after: Judged,
  told: string,
): number {
  const revised = revise(change);
  const gone = new Set(change.gone);
  const expected = new Map<string, readonly [string | null, string]>();
  for (const [id, standing] of after.judgement.standings) {
    if (gone.has(id)) continue;
    const was = before.judgement.standings.get(id) ?? null;
    if (was !== standing) expected.set(id, [was, standing]);
    expect(revised.standing(id), `${told}: ${id}`).toBe(standing);
  }
  expect([...revised.standings].sort(), told).toEqual([...expected].sort());
  for (const id of gone) expect(revised.standing(id), `${told}: ${id}`).toBeNull();
  return expected.size;
}

const seeds = Array.from({ length: 150 }, (_, seed) => seed + 1);

test("after a change of records all stands as when the changed corpus is judged whole", () => {
  const changes = { added: 0, weighed: 0, computed: 0 };
  for (const seed of seeds) {
    const cases = changedCases(seed);
    const before = judged(filesOf(cases.one));
    const revise = reviser(before.graph, before.derivations, before.judgement);
    for (const { after: one, evidence, steps } of cases.added) {
      const after = judged(filesOf(one));
      const records = after.graph.list("arguments").filter(({ id }) => steps.includes(id));
      const added = { arguments: records.map((record) => argumentOf(record, after.graph)), evidence };
      changes.added += revisesAsWhole(before, revise, { added }, after, `seed ${seed}, added`);
    }
    for (const { after: one, strengths } of cases.weighed) {
      const change = { strengths };
      changes.weighed += revisesAsWhole(
        before,
        revise,
        change,
        judged(filesOf(one)),
        `seed ${seed}, weighed`,
      );
    }
    for (const one of cases.computed) {
      const after = judged(filesOf(one));
      const change = { derived: differing(before.derivations, after.derivations) };
      changes.computed += revisesAsWhole(before, revise, change, after, `seed ${seed}, computed`);
    }
  }
  for (const count of Object.values(changes)) expect(count).toBeGreaterThan(40);
});

test("and when all that a scholar or a source stands behind is gone, testimony and numbers with it", () => {
  let changed = 0;
  for (const seed of seeds) {
    const { one } = changedCases(seed);
    const files = signedFiles(seed % 2 === 0 ? recanted(one) : one, seed);
    const before = judged(files);
    const revise = reviser(before.graph, before.derivations, before.judgement);
    for (const origin of ["s0", "s1", "k0", "k1"]) {
      const after = judged(files, { without: [origin] });
      const gone = [...before.graph.records.keys()].filter((id) => !after.judgement.counts(id));
      const derived = differing(before.derivations, after.derivations);
      changed += revisesAsWhole(before, revise, { gone, derived }, after, `seed ${seed} without ${origin}`);
    }
  }
  expect(changed).toBeGreaterThan(40);
});
