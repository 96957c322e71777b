import type { Id } from "../../base/finding.ts";
import type { Said } from "../../base/text/said/said.ts";

/** A stretch of a text, marked where it is what was looked for. */
export interface Stretch {
  readonly text: string;
  readonly marked: boolean;
}

/** A piece of a text around the words that were looked for. */
export interface Excerpt {
  readonly field: string;
  readonly lang: string | null;
  readonly stretches: readonly Stretch[];
  /** The text begins before it, or goes on after it. */
  readonly before: boolean;
  readonly after: boolean;
}

/** A record or source that was found. */
export interface Hit {
  readonly id: Id;
  readonly title: readonly Stretch[];
  /** What the title says, where it is in words of ours; none where it is the corpus's. */
  readonly said?: Said;
  readonly year: number | null;
  /** The words where they stand; null where the title has them already. */
  readonly excerpt: Excerpt | null;
  readonly file: string;
  readonly line: number;
}

/** What was found in one kind, the best first, as many as are shown. */
export interface HitGroup {
  readonly kind: string;
  readonly count: number;
  readonly hits: readonly Hit[];
}

/** What a search gives. */
export interface Found {
  readonly text: string;
  /** Whether what was found has all the words, or only some, as nothing has them all. */
  readonly match: "all" | "some" | "none";
  readonly count: number;
  /** How many of them have a word only with one letter amiss; they come last. */
  readonly slips: number;
  /** Kinds with the best hit first. */
  readonly groups: readonly HitGroup[];
  /** Words that stand nowhere in the corpus, with those most like them that do. */
  readonly unknown: readonly { readonly word: string; readonly nearest: readonly string[] }[];
  /** There were more words than are looked for. */
  readonly cut: boolean;
}
