import type { Id } from "../../base/finding.ts";
import { listsBy } from "../../base/lists/gathered.ts";
import { remembered } from "../../base/text/remembered.ts";
import { folded } from "../../link/dimension.ts";
import type { Graph, ObservationRecord } from "../../link/graph.ts";

/** An observation with the folded name of its feature, null without one, and its place among those of the corpus. */
export interface Seen {
  readonly record: ObservationRecord;
  readonly feature: string | null;
  readonly place: number;
}

/** The observations of a graph, found by what they are of and what they look for. */
interface SeenIn {
  readonly all: readonly Seen[];
  readonly ofThing: ReadonlyMap<Id, readonly Seen[]>;
  readonly ofFeature: ReadonlyMap<string, readonly Seen[]>;
}

const known = new WeakMap<Graph, SeenIn>();

/**
 * The observations of some things, else with one of some features (folded names), else all: in the order of the corpus. A
 * selection goes through these, and not through all there are.
 */
export function seenOf(
  graph: Graph,
  { things, features }: { readonly things: Iterable<Id> | null; readonly features: readonly string[] | null },
): readonly Seen[] {
  const seen = known.get(graph) ?? seenIn(graph);
  known.set(graph, seen);
  const found = new Set<Seen>();
  if (things !== null) {
    for (const thing of things) for (const one of seen.ofThing.get(thing) ?? []) found.add(one);
  } else if (features !== null) {
    for (const feature of features) for (const one of seen.ofFeature.get(feature) ?? []) found.add(one);
  } else return seen.all;
  return [...found].sort((a, b) => a.place - b.place);
}

function seenIn(graph: Graph): SeenIn {
  const nameOf = remembered((written) => folded(graph.featureName(written)));
  const all = graph.list("observations").map((record, place): Seen => {
    const { feature } = record.values;
    return { record, feature: feature === undefined ? null : nameOf(feature), place };
  });
  return {
    all,
    ofThing: listsBy(all, ({ record }) => record.values.of),
    ofFeature: listsBy(all, ({ feature }) => (feature === null ? [] : [feature])),
  };
}
