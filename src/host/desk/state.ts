import type { Text } from "../../base/text/said/said.ts";

/** What can be done at the desk of a corpus now. */
export interface DeskState {
  /** Why nothing can be written; null where the corpus can be changed. */
  readonly readOnly: Text | null;
  /** The name of the step that undoing would take back; null where there is none. */
  readonly undo: string | null;
  /** The name of the step that would be done again; null where there is none. */
  readonly redo: string | null;
  /** What of the desk could not be used, and was set aside or is passed over; absent where all could. */
  readonly troubles?: readonly Text[];
}

/** One step in the history of a corpus's files. */
export interface Step {
  /** Its number, from 1, in the order in which the steps were made. */
  readonly n: number;
  /** What was done, in words; of an undone or redone step its own words, and empty for what was changed outside. */
  readonly step: string;
  /** When, as an ISO 8601 instant in UTC. */
  readonly when: string;
  readonly kind: "edit" | "undo" | "redo" | "back" | "outside";
  readonly files: readonly StepFile[];
}

/** A file that a step changed, by the SHA-256 of its text before and after; null where there was or is none. */
export interface StepFile {
  readonly file: string;
  readonly was: string | null;
  readonly is: string | null;
}
