import type { Id } from "../base/finding.ts";
import type { Derivations } from "../derive/derive.ts";
import type { Graph } from "../link/graph.ts";
import type { Argument, Strength } from "./argument.ts";
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
}

const rank: Readonly<Record<Strength, number>> = { weak: 0, ordinary: 1, strong: 2 };

const evidence = ["observations", "measurements", "relations"] as const;

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
  for (const list of ["claims", ...evidence, "positions"] as const) {
    for (const record of graph.list(list)) if (counts(record.id)) atomOf(record.id);
  }
  for (const id of derivations.byId.keys()) atomOf(id);
  for (const argument of argued) atomOf(argument.id);

  const pro = new Map<Id, number[]>();
  const contra = new Map<Id, number[]>();
  argued.forEach((argument, place) => {
    if (argument.therefore !== null) append(pro, argument.therefore, place);
    for (const target of argument.against) append(contra, target, place);
  });
  const attackers = argued.map((argument) => attackersOf(argument, argued, pro, contra, graph));

  const rules: Rule[] = [];
  const works = (places: readonly number[]): readonly number[] =>
    places.map((place) => atomOf(argued[place]?.id ?? ""));
  const unlessAttacked = (id: Id, positive: readonly number[]): void => {
    rules.push({ head: atomOf(id), positive, negative: works(contra.get(id) ?? []) });
  };
  for (const list of [...evidence, "positions"] as const) {
    for (const record of graph.list(list)) if (counts(record.id)) unlessAttacked(record.id, []);
  }
  for (const derived of derivations.byId.values()) {
    if (derived.status === "computed") unlessAttacked(derived.id, derived.used.map(atomOf));
  }
  const silence = silenceAtoms(graph, derivations, atoms, rules);
  argued.forEach((argument, place) => {
    const positive = argument.because.map(atomOf);
    if (argument.silent) positive.push(silence(argument));
    rules.push({ head: atomOf(argument.id), positive, negative: works(attackers[place] ?? []) });
    if (argument.therefore !== null) {
      rules.push({ head: atomOf(argument.therefore), positive: [atomOf(argument.id)], negative: [] });
    }
  });
  return { program: programOf(atoms.size, rules), atoms, arguments: argued, pro, contra, attackers };
}

/** Every argument against it, and every one whose conclusion conflicts with its own and that is as strong at least. */
function attackersOf(
  argument: Argument,
  all: readonly Argument[],
  pro: ReadonlyMap<Id, readonly number[]>,
  contra: ReadonlyMap<Id, readonly number[]>,
  graph: Graph,
): readonly number[] {
  const places = new Set(contra.get(argument.id) ?? []);
  const conflicting: number[] = [];
  if (argument.therefore !== null) {
    conflicting.push(...(contra.get(argument.therefore) ?? []));
    for (const rival of graph.rivalsOf(argument.therefore)) conflicting.push(...(pro.get(rival) ?? []));
  }
  for (const target of argument.against) {
    if (graph.records.get(target)?.list === "claims") conflicting.push(...(pro.get(target) ?? []));
  }
  for (const place of conflicting) {
    const other = all[place];
    if (other && rank[other.strength] >= rank[argument.strength]) places.add(place);
  }
  return [...places].sort((a, b) => a - b);
}

/**
 * The atom that an argument from silence leans on besides: some `silence` derivation that bears on the same claim
 * the same way holds. It has no rule where there is none, or where the argument is against anything but a claim.
 */
function silenceAtoms(
  graph: Graph,
  derivations: Derivations,
  atoms: Map<Id, number>,
  rules: Rule[],
): (argument: Argument) => number {
  const weighed = new Map<string, readonly Id[]>();
  for (const derived of derivations.byId.values()) {
    const record = graph.records.get(derived.id);
    if (record?.list !== "derivations" || record.values.plugin !== "silence") continue;
    for (const { claim, bearing } of derived.bearings) {
      const key = `${bearing} ${claim}`;
      weighed.set(key, [...(weighed.get(key) ?? []), derived.id]);
    }
  }
  const made = new Map<string, number>();
  return (argument) => {
    const targets = argument.therefore !== null ? [argument.therefore] : argument.against;
    const way = argument.therefore !== null ? "supports" : "disputes";
    const onlyClaims = targets.every((id) => graph.records.get(id)?.list === "claims");
    const key = onlyClaims && targets.length === 1 ? `${way} ${targets[0] ?? ""}` : "nothing";
    const known = made.get(key);
    if (known !== undefined) return known;
    const atom = atoms.size;
    atoms.set(`silence: ${key}`, atom);
    made.set(key, atom);
    for (const id of weighed.get(key) ?? []) {
      rules.push({ head: atom, positive: [atoms.get(id) ?? atom], negative: [] });
    }
    return atom;
  };
}

function append(lists: Map<Id, number[]>, key: Id, place: number): void {
  const list = lists.get(key);
  if (list) list.push(place);
  else lists.set(key, [place]);
}
