import type { Id } from "../finding.ts";
import type { Statement } from "./differences.ts";

/** Something that happened: the making of an artefact, an entry of its history, or an event in words. */
export interface DatedEvent {
  /** Its name in what is said. */
  readonly event: string;
  /** The artefact it is about; null for an event in words. */
  readonly record: Id | null;
  /** What happened, in words; empty for the making of the artefact. */
  readonly text: string;
  /** Whether its date is what is asked. */
  readonly asked: boolean;
}

/** What one record says of dates, as differences of years. */
export interface DateStatement extends Statement {
  readonly record: Id;
  readonly kind: "relation" | "history" | "date";
  /** Whether a date it gives is only approximate or uncertain. */
  readonly loose: boolean;
}

/** What is said of the dates of some events and of all that it ties to them. */
export interface Chronicle {
  /** Those asked about first. */
  readonly events: readonly DatedEvent[];
  readonly statements: readonly DateStatement[];
}
