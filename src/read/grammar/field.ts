import type { Id } from "../../base/finding.ts";
import type { Json } from "../../base/json.ts";
import type { Quantity } from "../../base/quantity.ts";
import type { Text } from "../../base/text/said/said.ts";

/** A place in a source: its key and, where given, the locator as written (`p. 12, fig. 3`). */
export interface Citation {
  readonly key: Id;
  readonly locator: string | null;
}

/** The plain types a field may have, and what each is after reading. */
export interface Meanings {
  readonly id: Id;
  readonly text: string;
  readonly texts: readonly string[];
  readonly flag: boolean;
  readonly number: number;
  /** A number, 0 or more. */
  readonly amount: number;
  readonly whole: number;
  /** Astronomical year: 480 BC is −479. */
  readonly year: number;
  /** EDTF text, checked. */
  readonly date: string;
  readonly quantity: Quantity;
  readonly quantities: readonly Quantity[];
  readonly citation: Citation;
  readonly citations: readonly Citation[];
  readonly ref: Id;
  readonly refs: readonly Id[];
  readonly textMap: ReadonlyMap<string, string>;
  /** Numbers, 0 or more, by what they are of. */
  readonly numberMap: ReadonlyMap<string, number>;
  /** One probability, or one for each answer. */
  readonly probability: number | ReadonlyMap<string, number>;
  readonly json: Json;
}

/** The lists in which records stand. */
export type ListName =
  | "scholars"
  | "questions"
  | "claims"
  | "passages"
  | "positions"
  | "artefacts"
  | "images"
  | "observations"
  | "measurements"
  | "relations"
  | "arguments"
  | "derivations"
  | "examinations"
  | "talks"
  | "searches"
  | "readings";

interface Described {
  readonly doc: Text;
  readonly required?: true;
  /** The most letters that a text may have. */
  readonly most?: number;
  /** What it is taken for where what is written cannot be read: the careful one of two. */
  readonly inDoubt?: true;
}

/** What a reference may point to: lists of records, or `sources` for bibliography keys. */
export type Target = ListName | "sources";

/** A field as the table has it: its type, its line of documentation, whether it is required. */
export type Field =
  | (Described & { readonly type: Exclude<keyof Meanings, "ref" | "refs"> })
  | (Described & { readonly type: "ref" | "refs"; readonly to: readonly Target[] })
  | (Described & { readonly type: "choice"; readonly of: readonly string[] })
  | (Described & { readonly type: "group"; readonly fields: Fields })
  /** A list of maps; `short` names the field that a bare value stands for. */
  | (Described & { readonly type: "items"; readonly fields: Fields; readonly short?: string })
  /** A map from names of the scholar's own to maps. */
  | (Described & { readonly type: "named"; readonly fields: Fields });

/** The fields of a map, by name. */
export type Fields = Readonly<Record<string, Field>>;

/** What a field holds after reading. */
export type ValueOf<F> = F extends { readonly type: "choice"; readonly of: readonly (infer C)[] }
  ? C
  : F extends { readonly type: "group"; readonly fields: infer G }
    ? ValuesOf<G>
    : F extends { readonly type: "items"; readonly fields: infer G }
      ? readonly ValuesOf<G>[]
      : F extends { readonly type: "named"; readonly fields: infer G }
        ? ReadonlyMap<string, ValuesOf<G>>
        : F extends { readonly type: infer T }
          ? T extends keyof Meanings
            ? Meanings[T]
            : never
          : never;

/** What a map of fields holds after reading: required ones always, the others where given and good. */
export type ValuesOf<G> = {
  readonly [K in keyof G as G[K] extends { readonly required: true } ? K : never]: ValueOf<G[K]>;
} & { readonly [K in keyof G as G[K] extends { readonly required: true } ? never : K]?: ValueOf<G[K]> };
