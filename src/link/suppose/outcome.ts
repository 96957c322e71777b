import type { Id } from "../../base/finding.ts";
import type { Quantity } from "../../base/quantity.ts";
import type { Text } from "../../base/text/said/said.ts";

/** Whether an examination stands in the record, or is proposed from it: a second look, or a dimension that a number lacks. */
export type ExaminationOrigin = "recorded" | "look-again" | "see-again" | "measure-again" | "measure";

/** A feature that an outcome would show, and whether it would be seen. */
export interface SupposedFeature {
  readonly feature: string;
  readonly present: "true" | "false" | "unclear" | "not-reported";
}

/** A dimension that an outcome would give. */
export interface SupposedReading {
  readonly of: Id;
  readonly dimension: string;
  readonly value: Quantity;
}

/** One of the things that may come of an examination, and what it would speak for and against. */
export interface SupposedOutcome {
  /** Holds no colon, so that `EXAMINATION:OUTCOME` is parted at the last one. */
  readonly id: Id;
  readonly text: Text;
  readonly sees: readonly SupposedFeature[];
  readonly measures: readonly SupposedReading[];
  readonly therefore: readonly Id[];
  readonly against: readonly Id[];
  readonly strength: "weak" | "ordinary" | "strong";
  /** One probability, or one for each answer; null where none is given. */
  readonly probability: number | ReadonlyMap<Id, number> | null;
}

/** A look that could be taken. A recorded one has the id of its record; the id of a proposed one is `ORIGIN:WHAT`. */
export interface Examination {
  readonly id: Id;
  readonly origin: ExaminationOrigin;
  readonly of: readonly Id[];
  readonly method: Text;
  /** In the corpus's measure of cost; null where none is recorded. */
  readonly cost: number | null;
  readonly destructive: boolean;
  readonly permit: string | null;
  readonly outcomes: readonly SupposedOutcome[];
}

/** An outcome taken as found: what it adds to the record, and the record without it. */
export interface Supposed<G> {
  readonly examination: Examination;
  readonly outcome: SupposedOutcome;
  /** The ids of what is added. */
  readonly records: ReadonlySet<Id>;
  readonly before: G;
}
