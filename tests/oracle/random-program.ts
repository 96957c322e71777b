import * as fc from "fast-check";
import { programOf, type Program } from "../../src/judge/solver/program.ts";
import type { PlainRule } from "./naive.ts";

/** The name under which the oracles know an atom. */
export const nameOf = (atom: number): string => `a${atom}`;

/** Rules for the oracles from rules on atom numbers. */
export function plainRules(
  rules: readonly { head: number; positive: readonly number[]; negative: readonly number[] }[],
): PlainRule[] {
  return rules.map(({ head, positive, negative }) => ({
    head: nameOf(head),
    positive: positive.map(nameOf),
    negative: negative.map(nameOf),
  }));
}

export type RandomProgram = { readonly program: Program; readonly rules: readonly PlainRule[] };

/** Random normal programs of at most `most` atoms: facts, circles of need and of `not`, atoms needed and barred at once. */
export function randomProgram(most: number): fc.Arbitrary<RandomProgram> {
  return fc.integer({ min: 1, max: most }).chain((atomCount) => {
    const atom = fc.nat({ max: atomCount - 1 });
    const body = (maxLength: number) => fc.array(atom, { maxLength });
    const rule = fc.record({ head: atom, positive: body(2), negative: body(2) });
    return fc
      .array(rule, { maxLength: atomCount * 3 })
      .map((rules) => ({ program: programOf(atomCount, rules), rules: plainRules(rules) }));
  });
}

/**
 * Random programs of circles that hold themselves up until a switch goes: a switch is true when an atom of its circle
 * is false, and bars rules of other circles, so that one circle's fall takes the support of the next.
 */
export function randomCircles(most: number): fc.Arbitrary<RandomProgram> {
  return fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 2, maxLength: most }).chain((lengths) => {
    const starts = lengths.map((_, circle) =>
      lengths.slice(0, circle).reduce((sum, length) => sum + length, 0),
    );
    const size = lengths.reduce((sum, length) => sum + length, 0);
    const ring = lengths.flatMap((length, circle) =>
      Array.from({ length }, (_, at) => ({
        head: starts[circle]! + at,
        positive: [starts[circle]! + ((at + 1) % length)],
        negative: [],
      })),
    );
    const switches = lengths.map((_, circle) => ({
      head: size + circle,
      positive: [],
      negative: [starts[circle]!],
    }));
    const member = fc.nat({ max: size - 1 });
    const barred = fc.nat({ max: lengths.length - 1 }).map((circle) => size + circle);
    const further = fc.oneof(
      fc.record({ head: member, positive: fc.array(member, { maxLength: 1 }), negative: fc.tuple(barred) }),
      fc.record({
        head: member,
        positive: fc.array(member, { minLength: 1, maxLength: 2 }),
        negative: fc.constant([]),
      }),
      fc.record({ head: member, positive: fc.tuple(member), negative: fc.tuple(barred) }),
    );
    return fc.array(further, { maxLength: 3 * size }).map((more) => {
      const rules = [...ring, ...switches, ...more];
      return { program: programOf(size + lengths.length, rules), rules: plainRules(rules) };
    });
  });
}
