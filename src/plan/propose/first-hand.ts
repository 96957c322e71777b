import type { Id } from "../../base/finding.ts";
import type { Graph, MeasurementRecord, ObservationRecord } from "../../link/graph.ts";
import type { Citation } from "../../read/grammar/field.ts";
import { remembered } from "../../base/text/remembered.ts";

type Seen = ObservationRecord | MeasurementRecord;

/**
 * What nobody of the record has seen first-hand: it came through another source or is a report, and no other record
 * of the same thing and feature, or thing and dimension, was made at the thing itself. Yields between its parts.
 */
export function* unseenIn(graph: Graph): Generator<void, readonly Seen[]> {
  const all: readonly Seen[] = [...graph.list("observations"), ...graph.list("measurements")];
  const second = all.filter((one) => isSecondHand(graph, one));
  yield;
  const heard = new Set(second);
  const things = new Set(second.flatMap(thingsOf));
  const firstHand = new Set<string>();
  const subjectsOf = subjectsIn(graph);
  for (const record of all) {
    if (heard.has(record) || !thingsOf(record).some((thing) => things.has(thing))) continue;
    for (const key of subjectsOf(record)) firstHand.add(key);
  }
  yield;
  return second.filter((record) => !subjectsOf(record).some((key) => firstHand.has(key)));
}

function isSecondHand(graph: Graph, record: Seen): boolean {
  return record.values.basis === "report" || cameThroughAnother(graph, record.values, new Set());
}

/** It has `via`, or the passage that says it has; passages may cite passages, even in a circle. */
function cameThroughAnother(
  graph: Graph,
  { via, from }: { readonly via?: Citation; readonly from?: readonly Citation[] },
  seen: Set<Id>,
): boolean {
  if (via !== undefined) return true;
  return (from ?? []).some(({ key }) => {
    const passage = graph.records.get(key);
    if (passage?.list !== "passages" || seen.has(key)) return false;
    seen.add(key);
    return cameThroughAnother(graph, passage.values, seen);
  });
}

function thingsOf(record: Seen): readonly Id[] {
  return record.list === "observations" ? record.values.of : [record.values.of];
}

/** What a record is about: each thing with the feature or dimension; an observation of no feature is about itself alone. */
function subjectsIn(graph: Graph): (record: Seen) => readonly string[] {
  const dimensionName = remembered(graph.dimensionName);
  const featureName = remembered(graph.featureName);
  return (record) => {
    if (record.list === "measurements") {
      const { of, dimension, between } = record.values;
      return [`${of}\n${dimensionName(dimension)}\n${between ?? ""}`];
    }
    const { of, feature } = record.values;
    const what = feature === undefined ? `itself ${record.id}` : featureName(feature);
    return of.map((thing) => `${thing}\n${what}`);
  };
}
