import type { Id } from "../../../../base/finding.ts";
import { mentionsIn } from "../../../../link/edit/mentions.ts";
import type { Graph } from "../../../../link/graph.ts";
import { withheldIn } from "../../../withhold.ts";
import type { Choice } from "./choices.ts";
import { choiceOf } from "./labels.ts";

/** What names a record: how many places in all, and which records they are in, none of them withheld. */
export interface Referring {
  readonly places: number;
  readonly records: readonly Choice[];
  readonly settings: boolean;
}

/** What names a record by its id. */
export function referringTo(graph: Graph, id: Id): Referring {
  const withheld = withheldIn(graph);
  const places = mentionsIn(graph).filter((one) => one.id === id);
  const by = [...new Set(places.flatMap((one) => one.by ?? []))].filter(
    (one) => one !== id && !withheld(one),
  );
  return {
    places: places.length,
    records: by.flatMap((one) => choiceOf(graph, one) ?? []),
    settings: places.some((one) => one.by === null),
  };
}
