import type { Finding, Id, Span } from "../../base/finding.ts";

/** A standing to which prose may be held. */
export type HeldTo = "stands" | "open" | "falls" | "unsupported";

/** A file of the scholar's own prose: what it says, in order, and what in it leads to the corpus. */
export interface Prose {
  /** The name of the section that it is, or stands in: that of the file, without its ending. */
  readonly name: string;
  readonly file: string;
  readonly blocks: readonly ProseBlock[];
  /** All that leads to the corpus, in the order of the text. */
  readonly pieces: readonly ProsePiece[];
}

/** What is read of a file of prose. */
export interface ProseRead {
  readonly prose: Prose;
  readonly findings: readonly Finding[];
}

/** A piece of prose that stands by itself. */
export type ProseBlock =
  | { readonly is: "heading"; readonly level: 1 | 2 | 3; readonly of: ProseLine }
  | { readonly is: "paragraph"; readonly of: ProseLine }
  | { readonly is: "quotation"; readonly of: ProseLine }
  | { readonly is: "list"; readonly ordered: boolean; readonly items: readonly ProseLine[] };

/** What stands in a line, one after the other with nothing between. */
export type ProseLine = readonly (string | ProseSpan | ProsePiece)[];

/** Words that are more than words. */
export type ProseSpan =
  | { readonly is: "emphasis"; readonly of: ProseLine }
  | { readonly is: "strong"; readonly of: ProseLine }
  | { readonly is: "note"; readonly of: ProseLine };

/** What leads to the corpus from prose; `at` is where all of it is written. */
export type ProsePiece = ClaimPiece | NumberPiece | CitationPiece;

/** `{{claim:ID}}`: the claim's text; with a standing behind it, the prose is held to that. */
export interface ClaimPiece {
  readonly is: "claim";
  readonly id: Id;
  readonly standing: HeldTo | null;
  readonly at: Span;
  /** Where its id is written. */
  readonly idAt: Span;
}

/** `{{number:ID.NAME}}`: a number of a derivation; with a comparison behind it, the prose is held to that. */
export interface NumberPiece {
  readonly is: "number";
  readonly id: Id;
  readonly name: string;
  readonly comparison: string | null;
  readonly at: Span;
  readonly idAt: Span;
  readonly nameAt: Span;
}

/** `[@KEY, p. 12; @KEY]`: sources cited, each with the place in it. */
export interface CitationPiece {
  readonly is: "citation";
  readonly cites: readonly { readonly id: Id; readonly place: string | null; readonly idAt: Span }[];
  readonly at: Span;
}

/** What a piece names, each with the place where it does. */
export function namedBy(piece: ProsePiece): readonly { readonly id: Id; readonly idAt: Span }[] {
  return piece.is === "citation" ? piece.cites : [piece];
}
