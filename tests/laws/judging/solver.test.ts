import * as fc from "fast-check";
import { expect, test } from "vitest";
import { frameworkProgram } from "../../../src/judge/solver/framework.ts";
import { programFrom, programOf, rowsOf, type Program } from "../../../src/judge/solver/program.ts";
import { eachStandpoint, standpoints } from "../../../src/judge/solver/standpoints.ts";
import { circlesOf } from "../../../src/judge/solver/strong-components.ts";
import { leastWithoutAttacks, TRUE, UNDEFINED, wellFounded } from "../../../src/judge/solver/well-founded.ts";
import { clingoPartialStable } from "../../oracle/clingo.ts";
import {
  atomsOf,
  naiveLeast,
  naivePartialStable,
  naiveRegular,
  naiveWellFounded,
  type Partial3,
} from "../../oracle/naive.ts";
import { nameOf, randomCircles, randomProgram, type RandomProgram } from "../../oracle/random-program.ts";

const words = ["false", "undefined", "true"] as const;

const plainAlternation = ({ program, rules }: RandomProgram): void => {
  const expected = naiveWellFounded(rules);
  const values = [...wellFounded(program)].map((value) => words[value]);
  expect(values).toEqual(values.map((_, atom) => expected.get(nameOf(atom)) ?? "false"));
};

test("the well-founded model is that of the plain alternating fixpoint", () => {
  fc.assert(fc.property(randomProgram(30), plainAlternation), { numRuns: 2000 });
});

test("so it is where circles fall one after another", () => {
  fc.assert(fc.property(randomCircles(12), plainAlternation), { numRuns: 3000 });
});

test("a framework by places is the program of its arguments; a place that there is none of is refused", () => {
  const attacks = fc.array(fc.tuple(fc.nat(6), fc.nat(6)), { maxLength: 14 });
  fc.assert(
    fc.property(attacks, fc.integer({ min: 7, max: 12 }), (pairs, above) => {
      const [from, to] = [0, 1].map((end) => Int32Array.from(pairs, (pair) => pair[end] ?? 0));
      if (!from || !to) return;
      const made = frameworkProgram(7, from, to);
      const rules = Array.from({ length: 7 }, (_, head) => ({
        head,
        positive: [],
        negative: pairs.flatMap(([attacker, attacked]) => (attacked === head ? [attacker] : [])),
      }));
      const plain = programOf(7, rules);
      expect(made.negative.start).toEqual(plain.negative.start);
      expect(made.negative.items).toEqual(plain.negative.items);
      expect(wellFounded(made)).toEqual(wellFounded(plain));
      for (const none of [above, -1, -2, -above]) {
        const others = Int32Array.of(...from, none);
        expect(() => frameworkProgram(7, others, Int32Array.of(...to, 0))).toThrow(`Unknown atom ${none}`);
        expect(() => frameworkProgram(7, Int32Array.of(...to, 0), others)).toThrow(`Unknown atom ${none}`);
        const needs = [rowsOf([[none]]), rowsOf([[]])] as const;
        const head = Int32Array.of(0);
        expect(() => programFrom(7, head, needs[0], needs[1])).toThrow(`Unknown atom ${none}`);
        expect(() => programFrom(7, head, needs[1], needs[0])).toThrow(`Unknown atom ${none}`);
      }
    }),
    { numRuns: 60 },
  );
});

test("circles are the nodes that reach one another, or themselves", () => {
  const graph = fc.integer({ min: 1, max: 12 }).chain((count) => {
    const successors = fc.array(fc.nat({ max: count - 1 }), { maxLength: 3 });
    return fc.array(successors, { minLength: count, maxLength: count });
  });
  fc.assert(
    fc.property(graph, (successors) => {
      const circle = circlesOf(rowsOf(successors));
      const reached = successors.map((_, node) => reachedFrom(node, successors));
      for (let a = 0; a < successors.length; a++) {
        expect(circle[a] !== -1).toBe(reached[a]!.has(a));
        for (let b = 0; b < successors.length; b++) {
          if (a === b || circle[a] === -1) continue;
          expect(circle[a] === circle[b]).toBe(reached[a]!.has(b) && reached[b]!.has(a));
        }
      }
    }),
    { numRuns: 1000 },
  );
});

function reachedFrom(node: number, successors: readonly (readonly number[])[]): ReadonlySet<number> {
  const reached = new Set(successors[node]);
  for (const next of reached) for (const further of successors[next]!) reached.add(further);
  return reached;
}

test("switched-off atoms are as if their rules were not there", () => {
  fc.assert(
    fc.property(randomProgram(20), fc.infiniteStream(fc.boolean()), ({ program, rules }, coins) => {
      const without = Uint8Array.from({ length: program.atomCount }, () => (coins.next().value ? 1 : 0));
      const off = new Set([...without.keys()].filter((atom) => without[atom] === 1).map(nameOf));
      const left = rules.filter((rule) => !off.has(rule.head));
      const expected = naiveWellFounded(left);
      const values = [...wellFounded(program, { without })].map((value) => words[value]);
      expect(values).toEqual(values.map((_, atom) => expected.get(nameOf(atom)) ?? "false"));
      const bare = naiveLeast(left, new Set());
      expect([...leastWithoutAttacks(program, { without })]).toEqual(
        values.map((_, atom) => (bare.has(nameOf(atom)) ? 1 : 0)),
      );
    }),
    { numRuns: 2000 },
  );
});

const asSet = (models: readonly { holds: readonly string[]; open: readonly string[] }[]): readonly string[] =>
  models.map(({ holds, open }) => `${[...holds].sort()} | ${[...open].sort()}`).sort();

const ofSolver = (program: Program, models: "regular" | "partial-stable") => {
  const found = standpoints(program, { models, limit: 10_000 });
  const all = [...eachStandpoint(found)];
  expect(found.truncated).toBe(false);
  expect(found.count).toBe(BigInt(all.length));
  return asSet(all.map(({ holds, open }) => ({ holds: holds.map(nameOf), open: open.map(nameOf) })));
};

const ofOracle = (models: readonly Partial3[]) =>
  asSet(
    models.map(({ certain, possible }) => ({
      holds: [...certain],
      open: [...possible].filter((atom) => !certain.has(atom)),
    })),
  );

test("partial stable and regular models are those found by trying every set of atoms", () => {
  fc.assert(
    fc.property(randomProgram(8), ({ program, rules }) => {
      const expected = naivePartialStable(rules);
      expect(ofSolver(program, "partial-stable")).toEqual(ofOracle(expected));
      expect(ofSolver(program, "regular")).toEqual(ofOracle(naiveRegular(expected)));
    }),
    { numRuns: 1000 },
  );
});

test("clingo finds the same partial stable models, and the well-founded model is the least of them", async () => {
  await fc.assert(
    fc.asyncProperty(randomProgram(16), async ({ program, rules }) => {
      const expected = await clingoPartialStable(rules);
      expect(ofSolver(program, "partial-stable")).toEqual(ofOracle(expected));
      expect(ofSolver(program, "regular")).toEqual(ofOracle(naiveRegular(expected)));
      const inAll = [...atomsOf(rules)].filter((atom) => expected.every(({ certain }) => certain.has(atom)));
      const inSome = [...atomsOf(rules)].filter((atom) =>
        expected.some(({ possible }) => possible.has(atom)),
      );
      const values = wellFounded(program);
      const named = (least: number) =>
        [...values.keys()].filter((atom) => values[atom]! >= least).map(nameOf);
      expect(named(TRUE).sort()).toEqual(inAll.sort());
      expect(named(UNDEFINED).sort()).toEqual(inSome.sort());
    }),
    { numRuns: 300 },
  );
});
