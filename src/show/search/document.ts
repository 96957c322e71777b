import type { Id } from "../../base/finding.ts";
import type { Said } from "../../base/text/said/said.ts";

/** What a text is to its record: what it is called, a number it has, what it says, its id, what it is tied to. */
export type Weight = "name" | "number" | "says" | "key" | "tie";

/** Whether a text is also looked for as one, without the signs and spaces in it. */
export function isOne(weight: Weight): boolean {
  return weight === "number" || weight === "key";
}

/** One text of a record, with the place where it stands. */
export interface SearchText {
  /** The field as the format names it. */
  readonly field: string;
  readonly text: string;
  /** BCP 47, or null where it is not known. */
  readonly lang: string | null;
  readonly weight: Weight;
  /** Counted from 1. */
  readonly line: number;
  /** Where each further line of the file begins in the text, in UTF-16 units; empty for a text on one line. */
  readonly breaks: readonly number[];
}

/** A record or source as it is searched. */
export interface SearchDocument {
  readonly id: Id;
  /** Its list in the corpus, or `sources`. */
  readonly kind: string;
  readonly title: string;
  /** What the title says, where it is in words of ours; none where it is the corpus's. */
  readonly said?: Said;
  readonly file: string;
  readonly line: number;
  /** Astronomical year since when it is in print; null for the corpus's own reasoning. */
  readonly year: number | null;
  readonly texts: readonly SearchText[];
}
