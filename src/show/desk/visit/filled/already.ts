import { saysSame } from "../../../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../../../read/edit/written.ts";
import { headFrom, ownWritten } from "../../../../read/edit/head.ts";
import { folded } from "../../../../link/dimension.ts";
import type { AnyLinked, Graph } from "../../../../link/graph.ts";
import type { Id } from "../../../../base/finding.ts";
import { visitOf } from "./signable.ts";

/** Whether the same person has the same value of the same dimension and day in the corpus. */
export function hasMeasured(graph: Graph, record: WrittenMap, day: string): boolean {
  const dimension = folded(String(record["dimension"]));
  return graph
    .list("measurements")
    .some(
      (one) =>
        one.values.of === record["of"] &&
        folded(graph.dimensionName(one.values.dimension)) === dimension &&
        same(writtenIn(one), record, ["value", "between", "by", "year", "from"]) &&
        sameDay(one, day),
    );
}

/** Whether the same person has seen the same of a feature on the same day. */
export function hasSeen(graph: Graph, record: WrittenMap, day: string): boolean {
  return graph
    .list("observations")
    .some(
      (one) =>
        same(writtenIn(one), record, ["of", "text", "feature", "present", "by", "year", "from"]) &&
        sameDay(one, day),
    );
}

/** Whether a file is an image of a thing already. */
export function hasImage(graph: Graph, of: Id, file: string): boolean {
  return graph.list("images").some(({ values }) => values.file === file && values.of.includes(of));
}

/** A record with the source that it has from the head of its file. */
function writtenIn(record: AnyLinked): WrittenMap {
  const head = headFrom(record);
  return head === null ? ownWritten(record) : { ...ownWritten(record), from: head };
}

function same(a: WrittenMap, b: WrittenMap, fields: readonly string[]): boolean {
  const said = (record: WrittenMap, field: string): Written | null => record[field] ?? null;
  return fields.every((field) => saysSame(said(a, field), said(b, field)));
}

/** A record that names no day of a visit is taken for one of that day: its year is the same. */
function sameDay({ values }: AnyLinked, day: string): boolean {
  const note = values.note ?? "";
  return note.includes(visitOf({ day })) || !/\d{4}-\d{2}-\d{2}/.test(note);
}
