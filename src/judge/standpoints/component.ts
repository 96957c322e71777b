import type { Id } from "../../base/finding.ts";
import type { Acceptance } from "./ways/accepted.ts";
import type { Fates } from "./told/apart.ts";
import type { Contradiction } from "./told/contradiction.ts";
import type { Fit } from "./scholars/fit.ts";

/** One coherent way to decide a part of what is open. */
export interface Alternative {
  /** What becomes of everything in the part that may be told. */
  readonly fates: Fates;
  /** How many ways look so: above 1 only where what tells them apart may not be told. */
  readonly ways: number;
  /** The fewest things that tell it from all its rivals. */
  readonly toldBy: readonly Id[];
  /** The scholars whose latest positions on the claims of the part fit it wholly, then those all but one of whose do. */
  readonly fits: readonly Fit[];
}

/** A part of what is open that is decided on its own, whatever is made of the others; things that hang on several are in none. */
export interface Component {
  readonly about: readonly Contradiction[];
  /** What is open in it and may be told: claims (answers first), evidence, arguments; each kind in corpus order. */
  readonly claims: readonly Id[];
  readonly evidence: readonly Id[];
  readonly arguments: readonly Id[];
  /** How many ways there are to decide it; at least so many where not `exact`. */
  readonly count: bigint;
  readonly exact: boolean;
  /** Every way; none where there are too many to lay out. */
  readonly alternatives: readonly Alternative[];
  /** Of each claim. */
  readonly accepted: ReadonlyMap<Id, Acceptance>;
  /** Where the ways were not laid out: the scholars whom some way fits wholly, or all but one. */
  readonly fits: readonly Fit[];
  /** Of these scholars it is not known whether any way fits them. */
  readonly unknown: readonly Id[];
}

/** A claim that hangs on several components at once, with their places among all. */
export interface Joint extends Acceptance {
  readonly claim: Id;
  readonly on: readonly number[];
}

/** The coherent standpoints (format.md 5) as a product: one alternative of each component, on top of what stands and falls anyway. */
export interface Standpoints {
  /** How many standpoints there are, by multiplication; at least so many where not `exact`. */
  readonly count: bigint;
  readonly exact: boolean;
  readonly components: readonly Component[];
  readonly joint: readonly Joint[];
  /** How many scholars hold or reject any claim at present. */
  readonly scholars: number;
  /** Scholars all whose latest positions on any claim fit some standpoint, or all but one of whose do; by the corpus's order. */
  readonly fits: readonly Fit[];
  /** Of these scholars it is not known. */
  readonly unknown: readonly Id[];
}
