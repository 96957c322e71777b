import type { Id } from "../../base/finding.ts";
import type { Argument } from "../argument.ts";
import type { Compiled } from "../compile.ts";
import type { Judgement, Standing } from "../judge.ts";
import { rulesByHead } from "../solver/program.ts";
import type { Rows } from "../solver/program.ts";
import { FALSE, TRUE, UNDEFINED, decidedInOrder, leastWithoutAttacks } from "../solver/well-founded.ts";

/** The values behind a judgement, for whatever explains it: worked out once for each. */
export interface Evaluation {
  readonly compiled: Compiled;
  /** For each atom its value in the well-founded model, and 1 where it would be true if nothing attacked. */
  readonly values: Uint8Array;
  readonly unattacked: Uint8Array;
  /** When each atom was decided; -1 where it is undefined. */
  readonly order: Int32Array;
  readonly rulesFor: Rows;
  /** The standing of anything that has an atom, positions and the weights of silence among them. */
  readonly standingOf: (id: Id) => Standing;
  /** An argument by its id. */
  readonly argument: (id: Id) => Argument | undefined;
  /** Arguments against a record, and for an argument also those whose conclusion conflicts with its own. */
  readonly attackersOf: (id: Id) => readonly Argument[];
  /** Arguments for a claim. */
  readonly argumentsFor: (id: Id) => readonly Argument[];
  /** What a record leans on: arguments of a claim; premises, weighers of silence among them; inputs of a number. */
  readonly needsOf: (id: Id) => readonly Id[];
  /** Whether something would not hold even if nothing attacked: in the end, nothing is under it. */
  readonly isBare: (id: Id) => boolean;
  /** Whether an argument reasons from a silence that nothing weighs. */
  readonly unweighed: (id: Id) => boolean;
  /** Working arguments by which something falls, and what it leans on by whose fall it falls: decided before it is. */
  readonly beatenBy: (id: Id) => readonly Argument[];
  readonly fallsWith: (id: Id) => readonly Id[];
}

const known = new WeakMap<Compiled, Evaluation>();

/** The values behind a judgement. */
export function evaluationOf(judgement: Judgement): Evaluation {
  const had = known.get(judgement.compiled);
  if (had) return had;
  const made = evaluated(judgement);
  known.set(judgement.compiled, made);
  return made;
}

function evaluated({ compiled, standings }: Judgement): Evaluation {
  const { program, atoms, ids, named } = compiled;
  const { values, order } = decidedInOrder(program);
  const unattacked = leastWithoutAttacks(program);
  const rulesFor = rulesByHead(program);
  const argumentsAt = (at: readonly number[]): readonly Argument[] =>
    at.flatMap((place) => compiled.arguments[place] ?? []);
  const argument = (id: Id): Argument | undefined => compiled.arguments[named.placeOf(id)];
  const auxiliary = (id: Id): boolean => id.startsWith("silence: ");

  const standingOf = (id: Id): Standing => {
    const told = standings.get(id);
    if (told !== undefined) return told;
    const atom = atoms.get(id);
    const value = atom === undefined ? FALSE : values[atom];
    if (value === TRUE) return "stands";
    if (value === UNDEFINED) return "open";
    return atom !== undefined && unattacked[atom] === 1 ? "falls" : "unsupported";
  };
  const attackersOf = (id: Id): readonly Argument[] => {
    const place = named.placeOf(id);
    return argumentsAt((place === -1 ? compiled.contra.get(id) : compiled.attackers[place]) ?? []);
  };
  const needsOf = (id: Id): readonly Id[] => {
    const atom = atoms.get(id);
    if (atom === undefined) return [];
    const needs = new Set<Id>();
    for (const one of neededBy(atom)) {
      if (!auxiliary(one)) needs.add(one);
      else for (const weigher of neededBy(atoms.get(one) ?? -1)) needs.add(weigher);
    }
    return [...needs];
  };
  const neededBy = (atom: number): readonly Id[] => {
    const { positive } = program;
    const rules = rulesFor.items.subarray(rulesFor.start[atom], rulesFor.start[atom + 1]);
    return [...rules].flatMap((rule) =>
      [...positive.items.subarray(positive.start[rule], positive.start[rule + 1])].map(
        (need) => ids[need] ?? "",
      ),
    );
  };
  const orderOf = (id: Id): number => order[atoms.get(id) ?? -1] ?? -1;
  return {
    compiled,
    values,
    unattacked,
    order,
    rulesFor,
    standingOf,
    argument,
    attackersOf,
    argumentsFor: (id) => argumentsAt(compiled.pro.get(id) ?? []),
    needsOf,
    isBare: (id) => unattacked[atoms.get(id) ?? -1] !== 1,
    unweighed: (id) =>
      neededBy(atoms.get(id) ?? -1).some(
        (one) => auxiliary(one) && neededBy(atoms.get(one) ?? -1).length === 0,
      ),
    beatenBy: (id) =>
      attackersOf(id).filter((one) => standingOf(one.id) === "stands" && orderOf(one.id) < orderOf(id)),
    fallsWith: (id) =>
      needsOf(id).filter((one) => standingOf(one) === "falls" && orderOf(one) <= orderOf(id)),
  };
}
