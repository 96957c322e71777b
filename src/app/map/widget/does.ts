import type { Id } from "../../../base/finding.ts";

/** What can be done from the map with a box or its record. */
export interface MapDoes {
  readonly open: (record: Id, at: Id) => void;
  /** Remembers the box in the address, before the page is left. */
  readonly leave: (at: Id) => void;
  readonly focus: (record: Id | null) => void;
  readonly only: (record: Id) => void;
  /** Unfolds a box by its id, or folds it again. */
  readonly fold: (id: Id) => void;
}
