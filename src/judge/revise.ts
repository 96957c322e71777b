import type { Id } from "../base/finding.ts";
import type { Derivations } from "../derive/derive.ts";
import type { Graph } from "../link/graph.ts";
import { argumentsFound, differenceOf } from "./clauses/change.ts";
import type { Change } from "./clauses/change.ts";
import type { Clause } from "./clauses/clauses.ts";
import { disputeWith } from "./clauses/dispute.ts";
import { clausesEdited } from "./clauses/edited.ts";
import { evidenceLists } from "./compile.ts";
import { evaluationOf } from "./explain/evaluation.ts";
import { hasStanding, isDisputed, standingFrom } from "./judge.ts";
import type { Judgement, Standing } from "./judge.ts";
import { withoutBars } from "./solver/program.ts";
import { placesFor, revisable } from "./solver/revision/revision.ts";
import type { Body, Revisable } from "./solver/revision/revision.ts";
import { FALSE, TRUE } from "./solver/well-founded.ts";

export type { Change } from "./clauses/change.ts";

/** What a change makes of the standings. */
export interface Revised {
  /** Everything that stands otherwise, with how it stood (null: it was not there) and how it stands; not what is gone. */
  readonly standings: ReadonlyMap<Id, readonly [from: Standing | null, to: Standing]>;
  /** How something stands after the change; null where it is not there or has no standing. */
  readonly standing: (id: Id) => Standing | null;
}

/** Judges a changed record anew; every change is of the record that was judged, not of the change before it. */
export type Reviser = (change: Change) => Revised;

const prepared = new WeakMap<Judgement, Reviser>();

/**
 * Prepares a judgement, once, to be revised. Each revision gives what `judge` would give for the changed record, and
 * takes time in proportion to what the change reaches, not to the corpus.
 */
export function reviser(graph: Graph, derivations: Derivations, judgement: Judgement): Reviser {
  const known = prepared.get(judgement);
  if (known) return known;
  const made = prepare(graph, derivations, judgement);
  prepared.set(judgement, made);
  return made;
}

function prepare(graph: Graph, derivations: Derivations, judgement: Judgement): Reviser {
  const { compiled, counts } = judgement;
  const { program, ids } = compiled;
  const found = argumentsFound(graph, compiled, counts);
  const { rulesFor, ...decided } = evaluationOf(judgement);
  const places = placesFor(program.atomCount);
  const attacked = revisable(program, { decided, rulesFor }, places);
  const unattacked = revisable(withoutBars(program), { rulesFor }, places);
  const lists: readonly string[] = evidenceLists;
  const isEvidence = (id: Id): boolean => lists.includes(graph.records.get(id)?.list ?? "") && counts(id);

  return (change) => {
    const difference = differenceOf(change, found);
    const dispute = disputeWith(compiled.dispute, difference, graph);
    const clauses = clausesEdited({ graph, derivations, found, difference, dispute, isEvidence });
    const { atomOf, idOf, edit, bare } = editOf(clauses, compiled.atoms, ids);
    const values = attacked.revise(edit);
    const possible = unattacked.revise(bare);

    const valueOf = (id: Id): number => valueIn(values, attacked, atomOf(id));
    const isThere = (id: Id): boolean =>
      !difference.lost.has(id) && (!difference.gone.has(id) || difference.come.some((one) => one.id === id));
    const to = (id: Id): Standing =>
      standingFrom(valueOf(id), valueIn(possible, unattacked, atomOf(id)) === TRUE, () =>
        isDisputed(id, dispute, (argument) => valueOf(argument) === TRUE),
      );

    const standings = new Map<Id, readonly [Standing | null, Standing]>();
    const touched = new Set([...values.keys(), ...possible.keys()].map(idOf));
    const speaking = [...touched, ...difference.gone].flatMap(found.named);
    for (const { against } of [...speaking, ...difference.come]) {
      for (const target of against) if (dispute.isClaim(target)) touched.add(target);
    }
    for (const id of touched) {
      if (!hasStanding(id, graph) || !isThere(id)) continue;
      const [was, is] = [judgement.standings.get(id) ?? null, to(id)];
      if (was !== is) standings.set(id, [was, is]);
    }
    return {
      standings,
      standing: (id) =>
        isThere(id) ? (standings.get(id)?.[1] ?? judgement.standings.get(id) ?? null) : null,
    };
  };
}

function valueIn(changed: ReadonlyMap<number, number>, { values }: Revisable, atom: number): number {
  return changed.get(atom) ?? values[atom] ?? FALSE;
}

/** Clauses as an edit of the program, and of the program without attacks; what has no atom yet gets a new one. */
function editOf(
  clauses: ReadonlyMap<Id, readonly Clause[]>,
  atoms: ReadonlyMap<Id, number>,
  ids: readonly Id[],
) {
  const fresh = new Map<Id, number>();
  const knownAtom = (id: Id): number => atoms.get(id) ?? fresh.get(id) ?? -1;
  const atomOf = (id: Id): number => {
    const known = knownAtom(id);
    if (known !== -1) return known;
    fresh.set(id, ids.length + fresh.size);
    return ids.length + fresh.size - 1;
  };
  const edit = new Map<number, readonly Body[]>();
  const bare = new Map<number, readonly Body[]>();
  for (const [head, list] of clauses) {
    if (list.length === 0 && !atoms.has(head)) continue;
    const atom = atomOf(head);
    const bodies = list.map(({ positive, negative }) => ({
      positive: positive.map(atomOf),
      negative: negative.map(atomOf),
    }));
    edit.set(atom, bodies);
    bare.set(
      atom,
      bodies.map(({ positive }) => ({ positive, negative: [] })),
    );
  }
  const freshIds = [...fresh.keys()];
  return {
    edit,
    bare,
    atomOf: knownAtom,
    idOf: (atom: number): Id => ids[atom] ?? freshIds[atom - ids.length] ?? "",
  };
}
