import type { Id } from "../base/finding.ts";
import type { Derivations } from "../derive/derive.ts";
import type { Graph } from "../link/graph.ts";
import type { Argument } from "./argument.ts";
import {
  attackersOf,
  clauseOfArgument,
  clauseOfEvidence,
  clausesOfConclusion,
  clausesOfDerivation,
  clausesOfSilence,
  silenceOf,
} from "./clauses/clauses.ts";
import type { Clause, Dispute } from "./clauses/clauses.ts";
import { disputeOf } from "./clauses/dispute.ts";
import { programOf } from "./solver/program.ts";
import type { Program, Rule } from "./solver/program.ts";

/** A corpus as a normal logic program, with the atom of each claim, argument, piece of evidence and position. */
export interface Compiled {
  readonly program: Program;
  readonly atoms: ReadonlyMap<Id, number>;
  readonly arguments: readonly Argument[];
  /** The arguments for each claim, and those against each thing, by place in `arguments`. */
  readonly pro: ReadonlyMap<Id, readonly number[]>;
  readonly contra: ReadonlyMap<Id, readonly number[]>;
  /** The places of the arguments that attack each argument, by its place. */
  readonly attackers: readonly (readonly number[])[];
  /** The same arguments as clauses are made from them. */
  readonly dispute: Dispute;
}

/** The lists of what holds unless it is attacked. */
export const evidenceLists = ["observations", "measurements", "relations", "positions"] as const;

/** Puts the record into rules, as format.md 5 has them. */
export function compile(
  graph: Graph,
  derivations: Derivations,
  argued: readonly Argument[],
  counts: (id: Id) => boolean,
): Compiled {
  const atoms = new Map<Id, number>();
  const atomOf = (id: Id): number => {
    const known = atoms.get(id);
    if (known !== undefined) return known;
    atoms.set(id, atoms.size);
    return atoms.size - 1;
  };
  for (const list of ["claims", ...evidenceLists] as const) {
    for (const record of graph.list(list)) if (counts(record.id)) atomOf(record.id);
  }
  for (const id of derivations.byId.keys()) atomOf(id);
  for (const argument of argued) atomOf(argument.id);

  const pro = new Map<Id, number[]>();
  const contra = new Map<Id, number[]>();
  const places = new Map<Argument, number>();
  argued.forEach((argument, place) => {
    places.set(argument, place);
    if (argument.therefore !== null) append(pro, argument.therefore, place);
    for (const target of argument.against) append(contra, target, place);
  });
  const dispute = disputeOf(graph, derivations, argued);
  const attackers = argued.map((argument) =>
    Array.from(attackersOf(argument, dispute), (attacker) => places.get(attacker) ?? -1).sort(
      (a, b) => a - b,
    ),
  );

  const rules: Rule[] = [];
  const ruleOf = ({ head, positive, negative }: Clause): Rule => ({
    head: atomOf(head),
    positive: positive.map(atomOf),
    negative: negative.map(atomOf),
  });
  const add = (clauses: readonly Clause[]): void => {
    for (const clause of clauses) rules.push(ruleOf(clause));
  };
  for (const list of evidenceLists) {
    for (const { id } of graph.list(list)) if (counts(id)) add([clauseOfEvidence(id, dispute)]);
  }
  for (const derived of derivations.byId.values()) add(clausesOfDerivation(derived, dispute));
  const silences = new Set<Id>();
  argued.forEach((argument, place) => {
    const by = (attackers[place] ?? []).flatMap((at) => argued[at] ?? []);
    const rule = ruleOf(clauseOfArgument(argument, by, dispute));
    const silence = argument.silent ? silenceOf(argument, dispute) : null;
    if (silence !== null && !silences.has(silence)) {
      silences.add(silence);
      add(clausesOfSilence(silence, dispute));
    }
    rules.push(rule);
    add(clausesOfConclusion(argument));
  });
  return { program: programOf(atoms.size, rules), atoms, arguments: argued, pro, contra, attackers, dispute };
}

function append(lists: Map<Id, number[]>, key: Id, place: number): void {
  const list = lists.get(key);
  if (list) list.push(place);
  else lists.set(key, [place]);
}
