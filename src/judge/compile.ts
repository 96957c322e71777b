import type { Id } from "../base/finding.ts";
import { listsBy } from "../base/lists/gathered.ts";
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
import { namedBy } from "./clauses/named.ts";
import type { Named } from "./clauses/named.ts";
import { programFrom } from "./solver/program.ts";
import type { Program, Rows } from "./solver/program.ts";

/** A corpus as a normal logic program, with the atom of each claim, argument, piece of evidence and position. */
export interface Compiled {
  readonly program: Program;
  readonly atoms: ReadonlyMap<Id, number>;
  /** The id of each atom; that of an auxiliary one names no record. */
  readonly ids: readonly Id[];
  /** The atoms from 0 to before this one are of what is there and counts. */
  readonly seated: number;
  /** The atoms of positions, which lie together. */
  readonly positions: { readonly from: number; readonly before: number };
  readonly arguments: readonly Argument[];
  readonly named: Named;
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
  // Claims and evidence have names of their own, so that none of them has an atom before its turn.
  const seat = (list: "claims" | (typeof evidenceLists)[number]): void => {
    for (const { id } of graph.list(list)) if (counts(id)) atoms.set(id, atoms.size);
  };
  seat("claims");
  const claims = atoms.size;
  let positions = { from: 0, before: 0 };
  for (const list of evidenceLists) {
    const from = atoms.size;
    seat(list);
    if (list === "positions") positions = { from, before: atoms.size };
  }
  const evidence = [...atoms.keys()].slice(claims);
  const atomOf = (id: Id): number => {
    const known = atoms.get(id);
    if (known !== undefined) return known;
    atoms.set(id, atoms.size);
    return atoms.size - 1;
  };
  for (const id of derivations.byId.keys()) atomOf(id);
  const own = argued.map((argument) => atomOf(argument.id));
  const seated = atoms.size;
  const named = namedBy(atoms, own, seated);

  const places = new Map<Argument, number>(argued.map((argument, place) => [argument, place]));
  const pro = listsBy(argued.keys(), (place) => concludedBy(argued[place]));
  const contra = listsBy(argued.keys(), (place) => argued[place]?.against ?? nothing);
  const [argumentsFor, argumentsAgainst] = [placedIn(pro, argued), placedIn(contra, argued)];
  const dispute = disputeOf(graph, derivations, { argumentsFor, argumentsAgainst });
  const attackers = argued.map((argument) => {
    const found = attackersOf(argument, dispute);
    if (found.length === 0) return nothing;
    return found.map((attacker) => places.get(attacker) ?? -1).sort((a, b) => a - b);
  });

  const [heads, positive, negative]: [number[], Rowing, Rowing] = [[], begun(), begun()];
  const put = (head: number, clause: Clause): void => {
    heads.push(head);
    end(positive, clause.positive, atomOf);
    end(negative, clause.negative, atomOf);
  };
  const add = (clauses: readonly Clause[]): void => {
    for (const clause of clauses) put(atomOf(clause.head), clause);
  };
  evidence.forEach((id, at) => put(claims + at, clauseOfEvidence(id, dispute)));
  for (const derived of derivations.byId.values()) add(clausesOfDerivation(derived, dispute));
  const silences = new Set<Id>();
  argued.forEach((argument, place) => {
    const by = (attackers[place] ?? nothing).flatMap((at) => argued[at] ?? nothing);
    const silence = argument.silent ? silenceOf(argument, dispute) : null;
    if (silence !== null && !silences.has(silence)) {
      silences.add(silence);
      add(clausesOfSilence(silence, dispute));
    }
    put(own[place] ?? -1, clauseOfArgument(argument, by, dispute));
    add(clausesOfConclusion(argument));
  });
  const program = programFrom(atoms.size, Int32Array.from(heads), rows(positive), rows(negative));
  const ids = [...atoms.keys()];
  return {
    program,
    atoms,
    ids,
    seated,
    positions,
    arguments: argued,
    named,
    pro,
    contra,
    attackers,
    dispute,
  };
}

/** Rows of atoms that are still being written, one after another. */
interface Rowing {
  readonly start: number[];
  readonly items: number[];
}

const begun = (): Rowing => ({ start: [0], items: [] });

function end({ start, items }: Rowing, ids: readonly Id[], atomOf: (id: Id) => number): void {
  for (const id of ids) items.push(atomOf(id));
  start.push(items.length);
}

function rows({ start, items }: Rowing): Rows {
  return { start: Int32Array.from(start), items: Int32Array.from(items) };
}

const nothing: readonly never[] = [];

const concludedBy = (argument: Argument | undefined): readonly Id[] =>
  argument === undefined || argument.therefore === null ? nothing : [argument.therefore];

/** Finds arguments by their places. */
function placedIn(
  lists: ReadonlyMap<Id, readonly number[]>,
  argued: readonly Argument[],
): (id: Id) => readonly Argument[] {
  return (id) => {
    const found: Argument[] = [];
    for (const place of lists.get(id) ?? nothing) {
      const argument = argued[place];
      if (argument) found.push(argument);
    }
    return found;
  };
}
