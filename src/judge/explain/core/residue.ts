import type { Program, Rows, Rule } from "../../solver/program.ts";
import { FALSE, TRUE, UNDEFINED } from "../../solver/well-founded.ts";

/** The open atoms below one open atom, numbered anew from 0, the goal, with what is left of their rules. */
export interface Residue {
  readonly atoms: readonly number[];
  readonly rules: readonly Rule[];
  /** For each atom the open atoms that decide it. */
  readonly leansOn: readonly (readonly number[])[];
}

/**
 * What of a program is left open below a goal, nearest first. What the well-founded model decides stays decided when
 * an open atom is held true or false, so that the goal may be judged by this part alone.
 */
export function residueOf(program: Program, values: Uint8Array, goal: number, rulesFor: Rows): Residue {
  const { positive, negative } = program;
  const row = ({ start, items }: Rows, at: number): Int32Array => items.subarray(start[at], start[at + 1]);
  const places = new Map([[goal, 0]]);
  const atoms = [goal];
  const rules: Rule[] = [];
  const leansOn: number[][] = [];
  const isOpen = (atom: number): boolean => values[atom] === UNDEFINED;
  const placeOf = (atom: number): number => {
    const known = places.get(atom);
    if (known !== undefined) return known;
    places.set(atom, atoms.length);
    return atoms.push(atom) - 1;
  };
  for (let head = 0; head < atoms.length; head++) {
    const below = new Set<number>();
    for (const rule of row(rulesFor, atoms[head] ?? goal)) {
      const needs = row(positive, rule);
      const bars = row(negative, rule);
      if (needs.some((atom) => values[atom] === FALSE) || bars.some((atom) => values[atom] === TRUE))
        continue;
      const left = {
        head,
        positive: [...needs].filter(isOpen).map(placeOf),
        negative: [...bars].filter(isOpen).map(placeOf),
      };
      rules.push(left);
      for (const atom of [...left.positive, ...left.negative]) below.add(atom);
    }
    leansOn.push([...below]);
  }
  return { atoms, rules, leansOn };
}
