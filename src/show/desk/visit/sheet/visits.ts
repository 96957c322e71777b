import type { Graph } from "../../../../link/graph.ts";
import { withheldIn } from "../../../../link/withheld.ts";
import { placesOf } from "../../../../plan/visit/places.ts";
import { askedOf } from "../../../../plan/visit/trips.ts";
import { byText } from "../../../../base/order.ts";
import { named } from "../../../judged/standpoints/named.ts";
import type { Named } from "../../../judged/standpoints/named.ts";

/** What a visit can be made for. */
export interface Visits {
  /** The title of the corpus. */
  readonly corpus: string;
  readonly examinations: readonly Named[];
  /** By name, with how many things each has. */
  readonly keepers: readonly (readonly [name: string, things: number])[];
}

/** The recorded examinations and the keepers of a corpus, with nothing withheld among them. */
export function visitsIn(graph: Graph): Visits {
  const withheld = withheldIn(graph);
  const kept = new Map<string, number>();
  const all = graph.list("artefacts").map((one) => one.id);
  for (const place of placesOf(graph, all)) {
    const keeper = askedOf(place);
    if (keeper !== null) kept.set(keeper, (kept.get(keeper) ?? 0) + 1);
  }
  return {
    corpus: graph.settings.title,
    examinations: graph
      .list("examinations")
      .filter(({ id }) => !withheld(id))
      .map(({ id }) => named(graph, id)),
    keepers: [...kept].toSorted(([a], [b]) => byText(a, b)),
  };
}
