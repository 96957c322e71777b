import type { SearchDocument } from "../../../show/search/document.ts";
import type { Found } from "../../../show/search/found.ts";

/** To the worker that searches: the door through which the corpus comes, or what to look for. */
export type SearchAsked =
  | { readonly ask: "corpus"; readonly port: MessagePort }
  | {
      readonly ask: "find";
      readonly number: number;
      readonly text: string;
      /** At most so many hits of each kind. */
      readonly most: number;
      /** Hits of this kind alone; null for those of all. */
      readonly kind: string | null;
    };

/** From the worker that searches; told again as more of the corpus is indexed. */
export interface SearchTold {
  readonly number: number;
  readonly found: Found;
  /** How much of the corpus is indexed. */
  readonly done: number;
  readonly of: number;
}

/** Through the door from the model: the corpus as it is now. */
export type Corpus = readonly SearchDocument[];
