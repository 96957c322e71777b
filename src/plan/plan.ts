import type { Id } from "../base/finding.ts";
import type { Text } from "../base/text/said/said.ts";
import type { Bench } from "../derive/choices.ts";
import type { Derivations } from "../derive/derive.ts";
import type { Derived } from "../derive/derived/derived.ts";
import type { Judgement, Standing } from "../judge/judge.ts";
import type { Examination } from "../link/suppose/examination.ts";
import type { Caution } from "./visit/cautions.ts";
import type { Place } from "./visit/places.ts";
import type { OutcomeGain } from "./weigh/gain.ts";

/** What a plan is made from: a judged corpus, and what is needed to compute its numbers under an outcome. */
export interface PlanBench extends Bench {
  readonly derivations: Derivations;
  readonly judgement: Judgement;
  /** For claims of questions, what each would not stand without. */
  readonly restsOn: ReadonlyMap<Id, readonly Id[]>;
}

/** Every examination with what its outcomes would decide; nothing withheld is in it, so that all of it may be shown. */
export interface Plan {
  /** Those of the record, the most decisive first. */
  readonly recorded: readonly Planned[];
  /** Those that the record itself suggests, ranked among themselves: nobody has costed them. */
  readonly proposed: readonly Planned[];
  /** How many more could be proposed and were not looked at. */
  readonly passedOver: number;
  /** The recorded ones by who lets one in. */
  readonly trips: readonly Trip[];
  readonly contest: Contest;
}

/** One examination and what would come of it. */
export interface Planned {
  readonly examination: Examination;
  /** Why it is proposed; null for a recorded one. */
  readonly reason: Reason | null;
  readonly outcomes: readonly PlannedOutcome[];
  /** Answers of questions that in at least one outcome become `stands` or `falls` and were not that before. */
  readonly decides: readonly Id[];
  /** Claims whose standing is another than now in at least one outcome. */
  readonly changed: readonly Id[];
  /** Claims that stand differently in different outcomes. */
  readonly discriminates: readonly Id[];
  /** Every outcome, as far as they are recorded, makes each answer that it decides stand or fall which did not so before. */
  readonly decidesInEveryOutcome: boolean;
  /** No claim stands differently between its outcomes; nor, where it has but one, than now. */
  readonly idle: boolean;
  /** What it is expected to tell of the question that it tells most about; null where `noGain` says why. */
  readonly gain: Gain | null;
  readonly noGain: NoGain | null;
  /** Bits for each unit of cost; null without a gain or a cost above 0. */
  readonly gainPerCost: number | null;
  /** The things to look at, and who lets one in; those withheld are left out. */
  readonly places: readonly Place[];
  readonly cautions: readonly Caution[];
  /** For a destructive one: others that are not, and decide something of what it decides or look at the same thing. */
  readonly gentler: readonly Id[];
}

/** One outcome, and what follows from it as the record stands. */
export interface PlannedOutcome {
  readonly id: Id;
  readonly text: Text;
  /** Every claim, argument and piece of evidence that would stand differently: from now to then. */
  readonly changes: ReadonlyMap<Id, readonly [from: Standing, to: Standing]>;
  /** Answers that become `stands` or `falls` and are not that now. */
  readonly decides: readonly Id[];
  /** Derivations that would come out differently: as they are now, and as they would be. */
  readonly numbers: ReadonlyMap<Id, readonly [now: Derived, then: Derived]>;
  /** Derivations whose number under this outcome is still to be computed; what hangs on them is taken as now. */
  readonly pending: readonly Id[];
  /** As recorded: one for all answers, or one for each; null where none is given. */
  readonly probability: number | ReadonlyMap<Id, number> | null;
}

/** Expected gain in bits about one question (methods J1). */
export interface Gain {
  readonly question: Id;
  readonly bits: number;
  /** The answers that have a prior, with it, adding up to 1. */
  readonly prior: ReadonlyMap<Id, number>;
  readonly priorBits: number;
  /** In the order of the examination's outcomes: `posterior` in the order of `prior`. */
  readonly outcomes: readonly OutcomeGain[];
}

/** Why no gain can be told. */
export type NoGain =
  /** No question has a prior, or not every outcome has a probability. */
  | { readonly why: "no-prior" | "no-probabilities" }
  /** The outcomes' probabilities under this answer leave something out, or add up to `sum` instead of 1. */
  | { readonly why: "answer-left-out"; readonly answer: Id }
  | { readonly why: "not-one"; readonly answer: Id; readonly sum: number };

/** Why the record suggests an examination, and the records that show it. */
export interface Reason {
  readonly kind: "second-hand" | "attacked" | "in-conflict" | "rests-on" | "no-number";
  readonly about: readonly Id[];
}

/** What can be looked at with one keeper. */
export interface Trip {
  /** Whom to ask: the keeper, else where the things are held; null where the record names neither. */
  readonly keeper: string | null;
  /** What is not destructive first; then in the order of the plan. */
  readonly examinations: readonly Id[];
  /** The sum of the costs that are known; null where none is. */
  readonly cost: number | null;
  /** How many have no recorded cost. */
  readonly uncosted: number;
  readonly permits: readonly string[];
  /** How long beforehand to ask, the longest first. */
  readonly leadTimes: readonly string[];
  /** What they are expected to tell together; null where fewer than two tell anything about one question. */
  readonly together: GainTogether | null;
}

/** What several examinations tell of one question, their outcomes independent under each answer (methods J3). */
export interface GainTogether {
  readonly question: Id;
  readonly examinations: readonly Id[];
  readonly bits: number;
  /** What each tells alone, added up: never less. */
  readonly sum: number;
}

/** Rival answers of which none stands and one at least is open: `by` lists the recorded examinations that separate them, and are not idle. */
export interface RivalPair {
  readonly answers: readonly [Id, Id];
  readonly by: readonly Id[];
}

/** What the recorded examinations together could decide, and what none of them can. */
export interface Contest {
  readonly pairs: readonly RivalPair[];
  /** The cheapest examinations that together separate every pair that any separates; of equal cost the fewest. */
  readonly set: readonly Id[];
  /** The set is small, and need not be the smallest. */
  readonly nearMinimal: boolean;
  readonly undecided: {
    /** Pairs that no recorded examination separates, and proposed ones that would. */
    readonly pairs: readonly { readonly answers: readonly [Id, Id]; readonly proposed: readonly Id[] }[];
    /** Answers, open or unsupported, that no recorded one which is not idle makes stand or fall, and proposed ones that would. */
    readonly answers: readonly { readonly answer: Id; readonly proposed: readonly Id[] }[];
  };
}
