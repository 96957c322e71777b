import type { Id } from "../../base/finding.ts";
import type { Derivations } from "../../derive/derive.ts";
import type { Derived } from "../../derive/derived/derived.ts";
import type { Graph } from "../../link/graph.ts";
import type { Argument } from "../argument.ts";
import type { Arguments } from "./change.ts";
import {
  attackersOf,
  clauseOfArgument,
  clauseOfEvidence,
  clausesOfConclusion,
  clausesOfDerivation,
  clausesOfSilence,
  isSilence,
  silenceOf,
} from "./clauses.ts";
import type { Clause, Dispute } from "./clauses.ts";
import { silencesWeighedBy } from "./dispute.ts";
import type { Difference } from "./dispute.ts";

/** A record under a change: as it was judged, what is other than it was, and the dispute as it then is. */
export interface Changed {
  readonly graph: Graph;
  readonly derivations: Derivations;
  readonly found: Arguments;
  readonly difference: Difference;
  readonly dispute: Dispute;
  readonly isEvidence: (id: Id) => boolean;
}

/** All the clauses of every head that a change gives others. */
export function clausesEdited(changed: Changed): ReadonlyMap<Id, readonly Clause[]> {
  const argumentsNamed = argumentsUnder(changed);
  const clauses = new Map<Id, readonly Clause[]>();
  const silences = new Set<Id>();
  for (const head of headsTouched(changed)) {
    const named = argumentsNamed(head);
    for (const argument of named) if (argument.silent) silences.add(silenceOf(argument, changed.dispute));
    clauses.set(
      head,
      named.length > 0 ? named.map((one) => whole(one, changed.dispute)) : clausesOf(head, changed),
    );
  }
  for (const silence of silences) clauses.set(silence, clausesOfSilence(silence, changed.dispute));
  return clauses;
}

const whole = (argument: Argument, dispute: Dispute): Clause =>
  clauseOfArgument(argument, attackersOf(argument, dispute), dispute);

/** The arguments with an id as the change would have them. */
function argumentsUnder({ found, difference: { gone, come } }: Changed): (id: Id) => readonly Argument[] {
  const coming = new Map(come.map((argument) => [argument.id, argument]));
  return (id) => {
    const argument = coming.get(id);
    return argument ? [argument] : gone.has(id) ? [] : found.named(id);
  };
}

/** The clauses of what is no argument. */
function clausesOf(head: Id, { derivations, difference, dispute, isEvidence }: Changed): readonly Clause[] {
  if (isSilence(head)) return clausesOfSilence(head, dispute);
  if (dispute.isClaim(head)) return dispute.argumentsFor(head).flatMap(clausesOfConclusion);
  if (difference.lost.has(head)) return [];
  const derived: Derived | undefined = difference.derived.get(head) ?? derivations.byId.get(head);
  if (derived) return clausesOfDerivation(derived, dispute);
  return isEvidence(head) || difference.evidence.has(head) ? [clauseOfEvidence(head, dispute)] : [];
}

/** The heads whose clauses name, or could name, what the change names. */
function headsTouched(changed: Changed): ReadonlySet<Id> {
  const { graph, derivations, found, difference, dispute } = changed;
  const heads = new Set<Id>([...difference.lost, ...difference.evidence]);
  const touchAll = (those: readonly Argument[]): void => {
    for (const { id } of those) heads.add(id);
  };
  const before = [...difference.gone].flatMap(found.named);
  for (const { id, therefore, against } of [...before, ...difference.come]) {
    heads.add(id);
    if (therefore !== null) {
      heads.add(therefore);
      touchAll(dispute.argumentsAgainst(therefore));
      for (const rival of dispute.rivalsOf(therefore)) touchAll(dispute.argumentsFor(rival));
    }
    for (const target of against) {
      if (dispute.isClaim(target)) touchAll(dispute.argumentsFor(target));
      else heads.add(target);
    }
  }
  for (const [id, derived] of difference.derived) {
    heads.add(id);
    const had = derivations.byId.get(id);
    const weighed = [had, derived].flatMap((one) => (one ? silencesWeighedBy(one, graph) : []));
    for (const silence of weighed) heads.add(silence);
  }
  return heads;
}
