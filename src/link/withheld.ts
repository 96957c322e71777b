import type { Id, Span } from "../base/finding.ts";
import { spanOf } from "../read/record.ts";
import type { Node } from "../read/yaml/tree.ts";
import type { AnyLinked, Graph } from "./graph.ts";
import { speakerOf } from "./names/spoken.ts";

const known = new WeakMap<Graph, ReadonlySet<Id>>();

/** Tells the ids that appear in no output: those the settings withhold, their parts, what is about nothing else, and what has the id of such a one in its own. */
export function withheldIn(graph: Graph): (id: Id) => boolean {
  const ids = known.get(graph) ?? closedOver(graph);
  known.set(graph, ids);
  // Most corpora withhold nothing, and this is asked of every record of a page.
  if (ids.size === 0) return () => false;
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

/** Where what is withheld is written, read or not. */
export function withheldSpans(graph: Graph): readonly Span[] {
  const withheld = withheldIn(graph);
  const read = [...graph.records.values()].filter((one) => withheld(one.id));
  return [...read.map((one) => spanOf(one)), ...unreadSpans(graph)];
}

/** Records that are in no graph, since they could not be read whole or cannot do without what is not there. */
export function unread(graph: Graph): readonly Pick<AnyLinked, "file" | "node">[] {
  return [...graph.leftOut, ...(graph.spoilt ?? []).flatMap(({ written }) => written ?? [])];
}

/** Where those are written that name something withheld. */
export function unreadSpans(graph: Graph): readonly Span[] {
  const ids = withheldIn(graph);
  const names = (text: string): boolean => {
    const id = text.split(/\s/u)[0] ?? "";
    return ids(id) || graph.settings.withhold.some((whole) => id.startsWith(`${whole}/`));
  };
  const mentions = (node: Node): boolean =>
    node.is === "text"
      ? names(node.text)
      : node.is === "list"
        ? node.items.some(mentions)
        : node.entries.some(({ value }) => mentions(value));
  return unread(graph).flatMap((one) => (mentions(one.node) ? [spanOf(one)] : []));
}

function closedOver(graph: Graph): ReadonlySet<Id> {
  const ids = new Set(graph.settings.withhold.flatMap((id) => [id, ...graph.withParts(id)]));
  for (let size = 0; size !== ids.size;) {
    size = ids.size;
    for (const record of graph.records.values())
      if (leansOn(record, ids) || idTells(graph, record, ids)) ids.add(record.id);
  }
  return ids;
}

/** Whether the id that a record goes by has that of something withheld in it: `OF:DIMENSION@KEY` of the source, `TRENCH/PHOTO` of the trench. */
function idTells(graph: Graph, record: AnyLinked, ids: ReadonlySet<Id>): boolean {
  if (record.named) {
    const slashes = [...record.id.matchAll(/\//gu)].map(({ index }) => record.id.slice(0, index));
    return slashes.some((whole) => ids.has(whole));
  }
  const first = "from" in record.values ? record.values.from?.[0]?.key : undefined;
  const passage = first === undefined ? undefined : graph.records.get(first);
  const source = (passage?.list === "passages" ? passage.values.from?.[0]?.key : undefined) ?? first;
  const who = record.list === "positions" ? record.values.who : [];
  return [...who, ...(source === undefined ? [] : [source])].some((id) => ids.has(id));
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
