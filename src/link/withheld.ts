import type { Id } from "../base/finding.ts";
import type { AnyLinked, Graph } from "./graph.ts";
import { speakerOf } from "./spoken.ts";

const known = new WeakMap<Graph, ReadonlySet<Id>>();

/** Tells the ids that appear in no output: those the settings withhold, their parts, and what is about nothing else. */
export function withheldIn(graph: Graph): (id: Id) => boolean {
  const ids = known.get(graph) ?? closedOver(graph);
  known.set(graph, ids);
  return (id) => ids.has(id) || ids.has(speakerOf(id));
}

/** Whether where a thing was found stays out of every output: by its own word, or by that of what it is part of. */
export function placeWithheld(graph: Graph, artefact: Id): boolean {
  for (let at: Id | undefined = artefact; at !== undefined; at = graph.wholeOf.get(at)) {
    const record = graph.records.get(at);
    if (record?.list === "artefacts" && record.values["withhold-location"] === true) return true;
  }
  return false;
}

function closedOver(graph: Graph): ReadonlySet<Id> {
  const ids = new Set(graph.settings.withhold.flatMap((id) => [id, ...graph.withParts(id)]));
  for (let size = 0; size !== ids.size;) {
    size = ids.size;
    for (const record of graph.records.values()) if (leansOn(record, ids)) ids.add(record.id);
  }
  return ids;
}

/** Whether a record would be about nothing without what is withheld. */
function leansOn(record: AnyLinked, ids: ReadonlySet<Id>): boolean {
  const all = (those: readonly Id[] | undefined): boolean =>
    those !== undefined && those.length > 0 && those.every((id) => ids.has(id));
  switch (record.list) {
    case "measurements":
      return ids.has(record.values.of);
    case "observations":
    case "images":
    case "examinations":
      return all(record.values.of);
    case "positions":
      return ids.has(record.values.claim) || all(record.values.who);
    case "arguments":
      return all(record.values.because) || all([record.values.therefore ?? ""]) || all(record.values.against);
    case "passages":
    case "readings":
      return all(record.values.from?.map((one) => one.key));
    case "relations":
      return [record.values.earlier, record.values.later, ...(record.values["same-time"] ?? [])].some(
        (id) => id !== undefined && ids.has(id),
      );
    default:
      return false;
  }
}
