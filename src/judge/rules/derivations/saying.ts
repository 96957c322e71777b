import type { Id } from "../../../base/finding.ts";
import { row, say } from "../../../base/text/said/said.ts";
import type { Row, Said } from "../../../base/text/said/said.ts";
import type { Bearing } from "../../../derive/bearing.ts";
import type { Graph } from "../../../link/graph.ts";
import { quotedLabels } from "../tell.ts";

/** What a number says of a claim under another choice. */
export type Saying = Bearing | "says nothing of";

/** What it says, where the claims are named already. */
export const saidAlone: Readonly<Record<Saying, Said>> = {
  supports: say`supports`,
  disputes: say`disputes`,
  inconclusive: say`is inconclusive`,
  "says nothing of": say`says nothing`,
};

/** What a number says of each of some claims: `supports “A” and “B” and disputes “C”`. */
export function saidOf(graph: Graph, said: ReadonlyMap<Id, Saying>): Row {
  return row(
    [...new Set(said.values())].map((saying) => {
      const those = [...said].flatMap(([claim, one]) => (one === saying ? [claim] : []));
      return sayingOf(saying, quotedLabels(graph, those));
    }),
  );
}

function sayingOf(saying: Saying, claims: Row): Said {
  switch (saying) {
    case "supports":
      return say`supports ${claims}`;
    case "disputes":
      return say`disputes ${claims}`;
    case "inconclusive":
      return say`is inconclusive about ${claims}`;
    case "says nothing of":
      return say`says nothing of ${claims}`;
  }
}
