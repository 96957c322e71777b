import type { Id } from "../../../../base/finding.ts";
import type { Net } from "../net/net.ts";
import { wholeOf } from "../net/reach.ts";

/** Finds labels that lie over each other: of one thing, one dimension and one source, and used by the same steps and numbers. */
export interface Pile {
  /** The first of them in corpus order. */
  readonly id: Id;
  readonly members: readonly Id[];
}

/** Most labels of a pile that are seen; more become one label with their count and span. */
export const mostInPile = 3;

/** The pile of each label on a map. */
export function pilesOf(net: Net, universe: ReadonlySet<Id>): ReadonlyMap<Id, Pile> {
  const groups = new Map<string, Id[]>();
  const piles = new Map<Id, Pile>();
  for (const list of ["observations", "measurements", "relations", "positions"] as const) {
    for (const { id } of net.graph.list(list)) {
      if (!universe.has(id)) continue;
      const key = keyOf(net, id);
      const group = groups.get(key);
      if (group) group.push(id);
      else groups.set(key, [id]);
    }
  }
  for (const members of groups.values()) {
    const [id = ""] = members;
    for (const member of members) piles.set(member, { id, members });
  }
  return piles;
}

function keyOf(net: Net, id: Id): string {
  const record = net.graph.records.get(id);
  if (record?.list !== "measurements") return id;
  const source = net.graph.provenance(id).sources[0] ?? net.graph.provenance(id).scholars[0] ?? "";
  const dimension = net.graph.dimensionName(record.values.dimension);
  const uses = [...net.usedIn(id), ...net.contra(id)].map((step) => step.id);
  return [wholeOf(net, record.values.of), dimension, source, ...uses, ...net.feeds(id)].join("\n");
}
