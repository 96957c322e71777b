import type { Id } from "../../../../base/finding.ts";
import type { AnyLinked, Graph } from "../../../../link/graph.ts";
import type { Citation } from "../../../../read/grammar/field.ts";

/** Records that are said to be from a passage, in the order of the corpus. */
export function takenFrom(graph: Graph, passage: Id): readonly AnyLinked[] {
  return restingOn(graph).get(passage) ?? [];
}

/** The source in which a passage was really read, else those whose words it has. */
export function readIn(graph: Graph, passage: Id): readonly Id[] {
  const { sources, via } = graph.provenance(passage);
  return via.length > 0 ? via : sources;
}

const known = new WeakMap<Graph, ReadonlyMap<Id, readonly AnyLinked[]>>();

function restingOn(graph: Graph): ReadonlyMap<Id, readonly AnyLinked[]> {
  const before = known.get(graph);
  if (before !== undefined) return before;
  const resting = new Map<Id, AnyLinked[]>();
  for (const record of graph.records.values()) {
    const { from = [] } = record.values as { readonly from?: readonly Citation[] };
    for (const key of new Set(from.map((one) => one.key))) {
      if (graph.records.get(key)?.list !== "passages" || key === record.id) continue;
      const all = resting.get(key) ?? [];
      resting.set(key, all);
      all.push(record);
    }
  }
  known.set(graph, resting);
  return resting;
}
