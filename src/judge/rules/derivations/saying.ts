import type { Id } from "../../../base/finding.ts";
import type { Bearing } from "../../../derive/bearing.ts";
import type { Graph } from "../../../link/graph.ts";
import { labelOf } from "../../../link/names/label.ts";
import { inWords } from "../tell.ts";

/** What a number says of a claim under another choice. */
export type Saying = Bearing | "says nothing of";

/** What it says, where the claims are named already. */
export const saidAlone: Readonly<Record<Saying, string>> = {
  supports: "supports",
  disputes: "disputes",
  inconclusive: "is inconclusive",
  "says nothing of": "says nothing",
};

/** What a number says of each of some claims: `supports “A” and “B” and disputes “C”`. */
export function saidOf(graph: Graph, said: ReadonlyMap<Id, Saying>): string {
  const parts = [...new Set(said.values())].map((saying) => {
    const those = [...said].flatMap(([claim, one]) => (one === saying ? [`“${labelOf(graph, claim)}”`] : []));
    return `${saying === "inconclusive" ? "is inconclusive about" : saying} ${inWords(those)}`;
  });
  return inWords(parts);
}
