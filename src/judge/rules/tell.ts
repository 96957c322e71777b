import { finding } from "../../base/finding.ts";
import type { Finding, Fix, Id, Level, Span } from "../../base/finding.ts";
import { quoted } from "../../base/text/said/rows.ts";
import { row, say } from "../../base/text/said/said.ts";
import type { Mention, Row, Text } from "../../base/text/said/said.ts";
import type { Graph } from "../../link/graph.ts";
import { authorText, labelText } from "../../link/names/label.ts";
import { spanOf } from "../../read/record.ts";
import type { Step } from "../../read/yaml/tree.ts";

/** The place of a record's value, of a bibliography entry's key, or null for what stands nowhere. */
export function placeOf(graph: Graph, id: Id, ...path: readonly Step[]): Span | null {
  const record = graph.records.get(id);
  if (record) return spanOf(record, ...path);
  return graph.sources.get(id)?.keySpan ?? null;
}

/** A finding about some records, at the place of the first of them. */
export function tell(
  graph: Graph,
  rule: string,
  level: Level,
  about: readonly Id[],
  message: Text,
  more: { readonly path?: readonly Step[]; readonly fix?: Fix } = {},
): Finding {
  const first = about[0];
  const at = first === undefined ? null : placeOf(graph, first, ...(more.path ?? ["id"]));
  return finding(rule, message, at, { level, about, ...(more.fix ? { fix: more.fix } : {}) });
}

/** What is found, in groups that share a cause, in the order in which they are met. */
export function byCause<T>(
  all: readonly T[],
  causeOf: (one: T) => string,
): readonly (readonly [T, ...T[]])[] {
  const groups = new Map<string, [T, ...T[]]>();
  for (const one of all) {
    const group = groups.get(causeOf(one));
    if (group) group.push(one);
    else groups.set(causeOf(one), [one]);
  }
  return [...groups.values()];
}

/** What a record is called, in quotation marks. */
export const quotedLabel = (graph: Graph, id: Id): Mention => quoted(labelText(graph, id));

/** What several records are called, each in quotation marks, in a row. */
export const quotedLabels = (graph: Graph, ids: readonly Id[]): Row =>
  row(ids.map((id) => quotedLabel(graph, id)));

/** What several records are called, in a row. */
export const labels = (graph: Graph, ids: readonly Id[]): Row => row(ids.map((id) => labelText(graph, id)));

/** Whose a record is; the corpus's own where nobody is named. */
export const whose = (graph: Graph, id: Id): Text => authorText(graph, id) ?? say`the corpus`;
