import type { Id } from "../../base/finding.ts";
import type { Graph } from "../../link/graph.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import { say } from "../../base/text/said/said.ts";
import type { Said, Text } from "../../base/text/said/said.ts";
import { labelText } from "../../link/names/label.ts";
import { withheldIn } from "../withhold.ts";

/** A piece of a field's value: words, or the name of a record that leads there. */
export interface Piece {
  /** In English where the words are ours. */
  readonly text: string;
  /** What our own words say, to be put into the reader's language; none where the text is the corpus's. */
  readonly said?: Said;
  readonly to: Id | null;
  readonly lang: string | null;
}

/** One line of a field's value; the label says what it is where a field has several parts. */
export interface FieldRow {
  readonly label: string | null;
  /** What the label says, where it is ours; none where it is the corpus's. */
  readonly labelSaid?: Said;
  readonly pieces: readonly Piece[];
}

/** Plain words as a piece. */
export const words = (text: Text, lang: string | null = null): Piece => ({ ...piece(text), to: null, lang });

/** A text in English, and if it is ours what it says. */
function piece(text: Text): Pick<Piece, "text" | "said"> {
  return typeof text === "string" ? { text } : { text: inEnglish(text), said: text };
}

/** The name of a record as a piece that leads to it; of a withheld one only that there is one. */
export function linkTo(graph: Graph, id: Id): Piece {
  const known = (graph.records.has(id) || graph.sources.has(id)) && !withheldIn(graph)(id);
  return { ...piece(labelText(graph, id)), to: known ? id : null, lang: null };
}

/** Signs between pieces in a row. */
export const between = { comma: say`, `, semicolon: say`; ` } as const;

/** One line of a field's value; its label is a text of the corpus, or says what it is in words of ours. */
export function rowOf(pieces: readonly Piece[], label: Text | null = null): FieldRow {
  if (label === null || typeof label === "string") return { label, pieces };
  return { label: inEnglish(label), labelSaid: label, pieces };
}

/** Pieces one after the other, with words between them. */
export function joined(groups: readonly (readonly Piece[])[], tie: Text): readonly Piece[] {
  return groups
    .filter((group) => group.length > 0)
    .flatMap((group, place) => (place > 0 ? [words(tie), ...group] : group));
}
