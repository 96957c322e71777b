import type { Id } from "../../../base/finding.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Picture } from "../../../show/telling/blocks/picture.ts";
import type { Runs } from "../../references/runs.ts";

/** A text with its citations in a style, its tables, figures and notes numbered, and its links known to lead somewhere; it has no format yet. */
export interface SetText {
  readonly title: Text;
  readonly authors: readonly string[];
  /** The language its prose is in, by BCP 47. */
  readonly language: string;
  readonly blocks: readonly SetBlock[];
  /** The notes in the order of their numbers, the first being 1. */
  readonly notes: readonly SetInlines[];
}

/** A piece that stands by itself, ready to be written. */
export type SetBlock =
  | SetHeading
  | { readonly is: "paragraph" | "quotation" | "caution"; readonly of: SetInlines }
  | { readonly is: "list"; readonly ordered: boolean; readonly items: readonly SetInlines[] }
  | SetTable
  | SetPlate
  | { readonly is: "terms"; readonly rows: readonly (readonly [name: SetInlines, value: SetInlines])[] }
  | { readonly is: "contents"; readonly entries: readonly SetHeading[] }
  | { readonly is: "references"; readonly entries: readonly SetEntry[] }
  | { readonly is: "computations"; readonly entries: readonly SetComputation[] }
  | { readonly is: "room"; readonly lines: number };

/** A heading; `anchor` is its own in the whole text. */
export interface SetHeading {
  readonly is: "heading";
  readonly level: 1 | 2 | 3;
  readonly of: SetInlines;
  readonly anchor: string;
  /** Begins a leaf of its own. */
  readonly apart?: true;
}

/** A table with its number, from 1. */
export interface SetTable {
  readonly is: "table";
  readonly number: number;
  readonly anchor: string;
  readonly caption: SetInlines;
  readonly head: readonly SetInlines[];
  readonly rows: readonly (readonly SetInlines[])[];
  /** The columns, from 0, that hold figures. */
  readonly figures: readonly number[];
}

/** A picture with its number, from 1. */
export interface SetPlate {
  readonly is: "plate";
  readonly number: number;
  readonly anchor: string;
  readonly picture: Picture;
  readonly caption: SetInlines;
  readonly alt: Text;
}

/** One entry of the references, with the language of its source where it is known. */
export interface SetEntry {
  readonly id: Id;
  readonly runs: Runs;
  readonly lang: string | null;
}

/** A computation that numbers of the text come from; `key` names all that went into it. */
export interface SetComputation {
  readonly anchor: string;
  readonly title: Text;
  readonly method: string;
  readonly key: string;
}

/** What stands in a line, ready to be written. */
export type SetInlines = readonly SetInline[];

/** A stretch of a line. */
export type SetInline =
  /** `lang` where it is not the language of the text. */
  | { readonly is: "text"; readonly text: Text; readonly lang?: string }
  | { readonly is: "words"; readonly text: string; readonly lang: string | null; readonly quoted: boolean }
  | { readonly is: "strong" | "emphasis"; readonly of: SetInlines }
  /** A citation in the style. */
  | { readonly is: "runs"; readonly runs: Runs }
  /** A computed number; `to` is the anchor of its computation, null where the text declares none. */
  | { readonly is: "printed"; readonly text: Text; readonly run: string; readonly to: string | null }
  | { readonly is: "standing"; readonly standing: "stands" | "open" | "falls" | "unsupported" }
  /** Where the note of that number is called. */
  | { readonly is: "note"; readonly number: number }
  | { readonly is: "link"; readonly to: string; readonly of: SetInlines };

/** The lines of some inlines as one text, without notes and in one language: for names of files, outlines and the like. */
export function plainWords(of: SetInlines, inWords: (text: Text) => string): string {
  return of
    .map((one) => {
      switch (one.is) {
        case "text":
        case "printed":
          return inWords(one.text);
        case "words":
          return one.quoted ? `“${one.text}”` : one.text;
        case "strong":
        case "emphasis":
        case "link":
          return plainWords(one.of, inWords);
        case "runs":
          return one.runs.map((run) => run.text).join("");
        case "standing":
          return one.standing;
        case "note":
          return "";
      }
    })
    .join("");
}
