import type { Id } from "../../../base/finding.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Picture } from "./picture.ts";

/** A text to be written, before it has a format or a citation style: what it says, in order. */
export interface Manuscript {
  readonly title: Text;
  /** The people named under the title. */
  readonly authors: readonly string[];
  /** The language its prose is in, by BCP 47. */
  readonly language: string;
  readonly blocks: readonly Block[];
  /** The computations whose numbers are printed in it, each once, in the order of their first mention. */
  readonly computations: readonly Computed[];
}

/** A computation that numbers come from, as it is declared at the end of a text. */
export interface Computed {
  /** The hash of all that went into it: what `Printed.run` names. */
  readonly run: string;
  readonly derivation: Id;
  /** What it is called. */
  readonly title: Text;
  /** Plug-in and version. */
  readonly method: string;
}

/** A piece of a text that stands by itself. */
export type Block =
  | Heading
  | { readonly is: "paragraph"; readonly of: Inlines }
  | { readonly is: "quotation"; readonly of: Inlines }
  | { readonly is: "list"; readonly ordered: boolean; readonly items: readonly Inlines[] }
  | Table
  | Plate
  /** What is to be careful about: a condition under which a method misleads, what a keeper will ask. */
  | { readonly is: "caution"; readonly of: Inlines }
  /** Names and what they are: dates, places, amounts. */
  | { readonly is: "terms"; readonly rows: readonly (readonly [name: Inlines, value: Inlines])[] }
  /** Where the table of contents stands. */
  | { readonly is: "contents" }
  /** Where the entries of all that was cited stand, in the style's order. */
  | { readonly is: "references" }
  /** Where the computations are declared, each with its key. */
  | { readonly is: "computations" }
  /** Room to write by hand. */
  | { readonly is: "room"; readonly lines: number };

/** A heading; `anchor` is how links find it. */
export interface Heading {
  readonly is: "heading";
  readonly level: 1 | 2 | 3;
  readonly of: Inlines;
  readonly anchor?: string;
  /** Begins a leaf of its own, which is not looked at before the rest is done. */
  readonly apart?: true;
}

/** A table with its caption; it is numbered where it is written. */
export interface Table {
  readonly is: "table";
  readonly caption: Inlines;
  readonly head: readonly Inlines[];
  readonly rows: readonly (readonly Inlines[])[];
  /** The columns, from 0, that hold figures. */
  readonly figures: readonly number[];
}

/** A picture with its caption, and what it shows for those who do not see it; it is numbered where it is written. */
export interface Plate {
  readonly is: "plate";
  readonly picture: Picture;
  readonly caption: Inlines;
  readonly alt: Text;
}

/** What stands in a line, one after the other with nothing between. */
export type Inlines = readonly Inline[];

/** Words of ours or of the corpus, and what is more than words. */
export type Inline = Text | Piece;

/** What is more than words. */
export type Piece =
  /** Words of the corpus in their own language, in quotation marks where they are `quoted`. */
  | { readonly is: "words"; readonly text: string; readonly lang: string | null; readonly quoted: boolean }
  | { readonly is: "strong"; readonly of: Inlines }
  | { readonly is: "emphasis"; readonly of: Inlines }
  | Citing
  /** A number that was computed, with the key of its computation. */
  | { readonly is: "printed"; readonly text: Text; readonly run: string }
  /** Where a standing is told: its word, which a format may set off by the line that tells it. */
  | { readonly is: "standing"; readonly standing: "stands" | "open" | "falls" | "unsupported" }
  /** A note at the foot. */
  | { readonly is: "note"; readonly of: Inlines }
  /** Leads to a heading of the same text. */
  | { readonly is: "link"; readonly to: string; readonly of: Inlines };

/** Sources cited, each with the place in it as it is written (`p. 12, fig. 3`). */
export interface Citing {
  readonly is: "citing";
  /** `aside`: (Vane 1968, 12); `sentence`: Vane (1968, 12); `year`: (1968, 12), where the name was said. */
  readonly manner: "aside" | "sentence" | "year";
  readonly cites: readonly { readonly id: Id; readonly at?: string }[];
}
