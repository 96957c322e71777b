import type { Id } from "../../../base/finding.ts";
import { rulesByHead } from "../../solver/program.ts";
import type { Program, Rows } from "../../solver/program.ts";
import { FALSE, TRUE } from "../../solver/well-founded.ts";

/** One working rule of a cone: what it needs. */
export type Option = readonly number[];

/**
 * What holds up one true atom, the goal: every true atom below it with the rules that work for each. Atoms are
 * numbered anew from 0, the goal; a record's place in `records` is also its place in the order of ids.
 */
export interface Cone {
  readonly atoms: readonly number[];
  readonly options: readonly (readonly Option[])[];
  /** The place of the record that each atom stands for; -1 for claims, which cost nothing. */
  readonly record: readonly number[];
  readonly records: readonly Id[];
}

/** The cone below a true atom, given the values of the well-founded model and the record of each atom. */
export function coneOf(
  program: Program,
  values: Uint8Array,
  goal: number,
  recordOf: (atom: number) => Id | null,
  rulesFor: Rows = rulesByHead(program),
): Cone {
  const { positive, negative } = program;
  const row = ({ start, items }: Rows, at: number): Int32Array => items.subarray(start[at], start[at + 1]);
  const places = new Map([[goal, 0]]);
  const atoms = [goal];
  const placeOf = (atom: number): number => {
    const known = places.get(atom);
    if (known !== undefined) return known;
    places.set(atom, atoms.length);
    return atoms.push(atom) - 1;
  };
  const options: Option[][] = [];
  for (let at = 0; at < atoms.length; at++) {
    const rules = [...row(rulesFor, atoms[at] ?? goal)].filter(
      (rule) =>
        row(positive, rule).every((atom) => values[atom] === TRUE) &&
        row(negative, rule).every((atom) => values[atom] === FALSE),
    );
    options.push(rules.map((rule) => [...new Set(row(positive, rule))].map(placeOf)));
  }
  const ids = atoms.map(recordOf);
  const records = [...new Set(ids.flatMap((id) => id ?? []))].sort((a, b) => (a < b ? -1 : 1));
  const order = new Map(records.map((id, place) => [id, place]));
  return { atoms, options, record: ids.map((id) => (id === null ? -1 : (order.get(id) ?? -1))), records };
}
