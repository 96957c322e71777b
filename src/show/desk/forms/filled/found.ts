import type { Id } from "../../../../base/finding.ts";
import type { AnyLinked, Graph } from "../../../../link/graph.ts";
import { placeWithheld, unreadSpans } from "../../../../link/withheld.ts";
import type { ListName } from "../../../../read/grammar/field.ts";
import { listNames } from "../../../../read/grammar/kinds.ts";
import { readYaml } from "../../../../read/yaml/text.ts";
import { valueAt } from "../../../../read/yaml/tree.ts";
import { withheldIn } from "../../../withhold.ts";

/** A record as it stands in the files, whether it could be read or not. */
export type Found = Pick<AnyLinked, "list" | "id" | "file" | "node">;

/** The record of a list that has an id, loaded or not; null where there is none. */
export function recordOf(
  graph: Graph,
  { list, id }: { readonly list: ListName; readonly id: Id | null },
): Found | null {
  if (id === null) return null;
  const read = graph.records.get(id) ?? graph.leftOut.find((one) => one.id === id);
  if (read) return read;
  const lost = graph.spoilt?.find((one) => one.id === id)?.written;
  return lost ? { ...lost, list, id } : null;
}

/** The record that has an id, wherever it stands; null where there is none, or none that may be shown. */
export function recordNamed(graph: Graph, texts: ReadonlyMap<string, string>, id: Id): Found | null {
  const loaded = graph.records.get(id);
  if (loaded) return withheldIn(graph)(id) ? null : loaded;
  const left = graph.leftOut.find((one) => one.id === id);
  const lost = graph.spoilt?.find((one) => one.id === id)?.written;
  const list = left?.list ?? (lost ? listAt(texts.get(lost.file) ?? "", lost.node.start) : null);
  const found = list === null ? null : recordOf(graph, { list, id });
  const hidden = unreadSpans(graph).some(
    (span) => span.file === found?.file && span.start === found.node.start,
  );
  return hidden || withheldIn(graph)(id) ? null : found;
}

/** The list in which the record stands that begins at a place of a file. */
function listAt(text: string, start: number): ListName | null {
  const { root } = readYaml("form", text);
  return (
    listNames.find((name) => {
      const list = root && valueAt(root, name);
      return list?.is === "list" && list.items.some((one) => one.start === start);
    }) ?? null
  );
}

/** Fields of a record that its form does not show, since they are kept out of every output. */
export function keptFields(graph: Graph, { list, id, node }: Found): readonly string[] {
  if (list !== "artefacts") return [];
  // Of a thing that could not be read nobody knows what it is part of.
  const hidden = !graph.records.has(id) || placeWithheld(graph, id);
  const names = node.entries.map(({ key }) => key);
  return names.filter((name) => name === "coordinates" || (name === "found-at" && hidden));
}
