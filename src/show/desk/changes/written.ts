import type { Id } from "../../../base/finding.ts";
import { byText } from "../../../base/order.ts";
import type { AnyLinked, Graph } from "../../../link/graph.ts";
import { isList, writtenOf } from "../../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../../read/edit/written.ts";
import type { ListName } from "../../../read/grammar/field.ts";
import type { MapNode } from "../../../read/yaml/tree.ts";

/** A record of one reading of a corpus, as its file says it. */
export interface RecordWritten {
  readonly id: Id;
  /** Whether the id is written, or made from what the record says. */
  readonly named: boolean;
  /** Null where the record could not be read. */
  readonly list: ListName | null;
  readonly fields: WrittenMap;
  readonly file: string;
  readonly start: number;
  /** The record in the graph; null where it could not be read whole, or lacks what it needs. */
  readonly known: AnyLinked | null;
}

/** Every record that a corpus's files hold, in the order of the files, those that could not be read among them. */
export function recordsWritten(graph: Graph): readonly RecordWritten[] {
  const one = (record: AnyLinked, known: AnyLinked | null): RecordWritten => ({
    id: record.id,
    named: record.named,
    list: record.list,
    fields: fieldsOf(record.node),
    file: record.file,
    start: record.node.start,
    known,
  });
  return [
    ...[...graph.records.values()].map((record) => one(record, record)),
    ...graph.leftOut.map((record) => one(record, null)),
    ...(graph.spoilt ?? []).flatMap(({ id, written }) =>
      written === undefined
        ? []
        : [
            {
              id,
              named: id !== "",
              list: null,
              fields: fieldsOf(written.node),
              file: written.file,
              start: written.node.start,
              known: null,
            },
          ],
    ),
  ].toSorted((a, b) => byText(a.file, b.file) || a.start - b.start);
}

/** The fields of a map as they are typed; what a value stands for in place of a map has none. */
export function fieldsOf(node: MapNode): WrittenMap {
  const written = writtenOf(node);
  return typeof written === "string" || isList(written) ? {} : written;
}

/** A value with every text in it made anew, the keys of maps among them. */
export function withTexts(value: Written, anew: (text: string) => string): Written {
  if (typeof value === "string") return anew(value);
  if (isList(value)) return value.map((one) => withTexts(one, anew));
  const map = Object.create(null) as Record<string, Written>;
  for (const [key, one] of Object.entries(value)) map[anew(key)] = withTexts(one, anew);
  return map;
}

/** Every text in a value, the keys of maps among them. */
export function textsIn(value: Written): readonly string[] {
  if (typeof value === "string") return [value];
  if (isList(value)) return value.flatMap(textsIn);
  return Object.entries(value).flatMap(([key, one]) => [key, ...textsIn(one)]);
}
