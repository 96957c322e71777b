import type { Id } from "../../base/finding.ts";
import type { Graph } from "../../link/graph.ts";
import { labelOf } from "../../link/names/label.ts";
import { withheldIn } from "../withhold.ts";

/** A piece of a field's value: words, or the name of a record that leads there. */
export interface Piece {
  readonly text: string;
  readonly to: Id | null;
  readonly lang: string | null;
}

/** One line of a field's value; the label says what it is where a field has several parts. */
export interface FieldRow {
  readonly label: string | null;
  readonly pieces: readonly Piece[];
}

/** Plain words as a piece. */
export const words = (text: string, lang: string | null = null): Piece => ({ text, to: null, lang });

/** The name of a record as a piece that leads to it; of a withheld one only that there is one. */
export function linkTo(graph: Graph, id: Id): Piece {
  const known = (graph.records.has(id) || graph.sources.has(id)) && !withheldIn(graph)(id);
  return { text: labelOf(graph, id), to: known ? id : null, lang: null };
}

/** Pieces one after the other, with words between them. */
export function joined(groups: readonly (readonly Piece[])[], between: string): readonly Piece[] {
  return groups
    .filter((group) => group.length > 0)
    .flatMap((group, place) => (place > 0 ? [words(between), ...group] : group));
}
