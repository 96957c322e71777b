import { folded } from "../../../../link/dimension.ts";
import type { Graph } from "../../../../link/graph.ts";
import { authorText, labelText } from "../../../../link/names/label.ts";
import type { InputDeclaration } from "../../../../plugin.ts";
import { withheldIn } from "../../../withhold.ts";
import type { Choice } from "./choice.ts";
import { thingText } from "./things.ts";
import { inEnglish } from "../../../../base/text/said/english.ts";
import { say } from "../../../../base/text/said/said.ts";

/** So many records are offered at once. */
export const mostOffered = 200;

/** Records that an input can be given by hand, those in whose words all words of a text occur, and how many there are. */
export function offeredByHand(
  graph: Graph,
  { kind, takesObservations }: InputDeclaration,
  sought: string,
): { readonly choices: readonly Choice[]; readonly all: number } {
  const withheld = withheldIn(graph);
  const words = sought.split(/\s+/u).map(folded);
  const measurements =
    kind === "measurements"
      ? graph.list("measurements").map(({ id, values }) => ({
          value: id,
          text: say`${graph.dimensionName(values.dimension)}, ${thingText(graph, values.of)}: ${values.value.text}, ${authorText(graph, id) ?? say`the corpus`}`,
        }))
      : [];
  const observations =
    kind === "observations" || takesObservations === true
      ? graph.list("observations").map(({ id }) => ({ value: id, text: labelText(graph, id) }))
      : [];
  const all = [...measurements, ...observations].filter(
    ({ value, text }) => !withheld(value) && words.every((word) => folded(inEnglish(text)).includes(word)),
  );
  return { choices: all.slice(0, mostOffered), all: all.length };
}
