import type { Id } from "../../base/finding.ts";
import type { Judgement } from "../../judge/judge.ts";
import type { Lens } from "../../derive/lens.ts";
import type { Graph } from "../../link/graph.ts";
import { withheldIn } from "../withhold.ts";
import type { Taken } from "./taken.ts";

/** Astronomical years of the first and the last thing in print. */
export interface Years {
  readonly first: number;
  readonly last: number;
}

/** Since when and until when each scholar is in print under the lens: by sources of their own, records and stances. */
export function activeYears(
  graph: Graph,
  judgement: Judgement,
  lens: Lens,
  taken: readonly Taken[],
): ReadonlyMap<Id, Years> {
  const withheld = withheldIn(graph);
  const found = new Map<Id, Years>();
  const note = (who: Id, year: number | null): void => {
    if (year === null || (lens.asOf !== undefined && year > lens.asOf)) return;
    const known = found.get(who);
    found.set(who, {
      first: Math.min(known?.first ?? year, year),
      last: Math.max(known?.last ?? year, year),
    });
  };
  for (const one of taken) for (const stance of one.stances) note(one.scholar, stance.year);
  for (const [key, source] of graph.sources) {
    if (!withheld(key)) for (const who of graph.authorsOf(key)) note(who, source.year);
  }
  for (const { id } of graph.records.values()) {
    if (!judgement.counts(id) || withheld(id)) continue;
    const { scholars, year } = graph.provenance(id);
    for (const who of scholars) note(who, year);
  }
  return found;
}
