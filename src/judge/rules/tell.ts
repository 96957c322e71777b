import { finding } from "../../base/finding.ts";
import type { Finding, Fix, Id, Level, Span } from "../../base/finding.ts";
import type { Graph } from "../../link/graph.ts";
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
  message: string,
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

/** The first three of a row, and how many more there are of what. */
export function fewOf(names: readonly string[], more = "more"): readonly string[] {
  return names.length > 4 ? [...names.slice(0, 3), `${names.length - 3} ${more}`] : names;
}

/** Names in a row: `a`, `a and b`, `a, b and c`. */
export function inWords(names: readonly string[]): string {
  if (names.length <= 1) return names[0] ?? "";
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1) ?? ""}`;
}
