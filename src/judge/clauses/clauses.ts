import type { Id } from "../../base/finding.ts";
import type { Derived } from "../../derive/derived/derived.ts";
import type { Argument, Strength } from "../argument.ts";

/** A rule of the program in the names of the record: the head holds when all of `positive` hold and none of `negative`. */
export interface Clause {
  readonly head: Id;
  readonly positive: readonly Id[];
  readonly negative: readonly Id[];
}

/** What clauses are made from: the arguments as they are recorded, or as a change would have them. */
export interface Dispute {
  readonly argumentsFor: (claim: Id) => readonly Argument[];
  readonly argumentsAgainst: (id: Id) => readonly Argument[];
  /** Claims that cannot be right together with a claim. */
  readonly rivalsOf: (claim: Id) => readonly Id[];
  readonly isClaim: (id: Id) => boolean;
  /** The derivations any one of which lends a silence its weight, by the name of the silence. */
  readonly weighersOf: (silence: Id) => readonly Id[];
}

const rank: Readonly<Record<Strength, number>> = { weak: 0, ordinary: 1, strong: 2 };

const nothing: readonly Id[] = [];

const namesOf = (found: readonly Argument[]): readonly Id[] =>
  found.length === 0 ? nothing : found.map((argument) => argument.id);

/** Every argument against it, and every one whose conclusion conflicts with its own and that is as strong at least. */
export function attackersOf(argument: Argument, dispute: Dispute): readonly Argument[] {
  const { id, therefore, against } = argument;
  const conflicting = [
    ...(therefore === null ? [] : [dispute.argumentsAgainst(therefore)]),
    ...(therefore === null ? [] : dispute.rivalsOf(therefore).map(dispute.argumentsFor)),
    ...against.filter(dispute.isClaim).map(dispute.argumentsFor),
  ].filter(({ length }) => length > 0);
  const own = dispute.argumentsAgainst(id);
  if (conflicting.length === 0 && own.length < 2) return own;
  const asStrong = conflicting.flat().filter(({ strength }) => rank[strength] >= rank[argument.strength]);
  return [...new Set([...own, ...asStrong])];
}

/** The clause of a record that holds unless a working argument is against it. */
export function clauseOfEvidence(id: Id, dispute: Dispute): Clause {
  return { head: id, positive: nothing, negative: namesOf(dispute.argumentsAgainst(id)) };
}

/** The clause of a derivation, which holds with all it used; none where it did not compute. */
export function clausesOfDerivation({ id, status, used }: Derived, dispute: Dispute): readonly Clause[] {
  return status === "computed" ? [{ ...clauseOfEvidence(id, dispute), positive: used }] : [];
}

/** The clause of an argument, beside the arguments that attack it. */
export function clauseOfArgument(
  argument: Argument,
  attackers: readonly Argument[],
  dispute: Dispute,
): Clause {
  const { id, because, silent } = argument;
  const positive = silent ? [...because, silenceOf(argument, dispute)] : because;
  return { head: id, positive, negative: namesOf(attackers) };
}

/** The clause by which a claim holds when an argument for it works. */
export function clausesOfConclusion({ id, therefore }: Argument): readonly Clause[] {
  return therefore === null ? [] : [{ head: therefore, positive: [id], negative: nothing }];
}

const named = "silence: ";

/** Whether an id names the weight of a silence: no record has it. */
export const isSilence = (id: Id): boolean => id.startsWith(named);

/** The name of the weight of a silence that bears on a claim one way. */
export const silenceOn = (way: "supports" | "disputes", claim: Id): Id => `${named}${way} ${claim}`;

/** What an argument from silence leans on besides; where it is against anything but a claim, what never holds. */
export function silenceOf({ therefore, against }: Argument, dispute: Dispute): Id {
  const targets = therefore !== null ? [therefore] : against;
  const [target] = targets;
  if (target === undefined || targets.length > 1 || !dispute.isClaim(target)) return `${named}nothing`;
  return silenceOn(therefore !== null ? "supports" : "disputes", target);
}

/** The clauses by which any one derivation lends a silence its weight. */
export function clausesOfSilence(silence: Id, dispute: Dispute): readonly Clause[] {
  return dispute.weighersOf(silence).map((id) => ({ head: silence, positive: [id], negative: nothing }));
}
