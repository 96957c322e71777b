import type { Graph } from "../../link/graph.ts";
import type { Piece } from "../../show/pages/pieces.ts";

/** Records that are called by a sentence or a phrase: their names want quotation marks within another one. */
const sentences: ReadonlySet<string> = new Set([
  "claims",
  "observations",
  "measurements",
  "relations",
  "derivations",
]);

/** Pieces as text; where the screen has a link, what is called by a phrase is put in quotation marks. */
export function quotedText(graph: Graph, pieces: readonly Piece[]): string {
  return pieces
    .map(({ text, to }) => {
      const list = to === null ? undefined : graph.records.get(to)?.list;
      return list !== undefined && sentences.has(list) && !text.startsWith("“") ? `“${text}”` : text;
    })
    .join("");
}
