import type { Id } from "../../../base/finding.ts";

/** What a visit is for: one examination, or all that a keeper has; with things of the keeper's that are to be on the sheet besides. */
export interface VisitAsked {
  readonly examination: Id | null;
  readonly keeper: string | null;
  readonly also: readonly Id[];
}
