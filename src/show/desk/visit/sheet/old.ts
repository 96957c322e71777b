import type { Id } from "../../../../base/finding.ts";
import { yearText } from "../../../../base/date/year.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { Graph, MeasurementRecord, ObservationRecord } from "../../../../link/graph.ts";
import { labelText } from "../../../../link/names/label.ts";
import { withheldIn } from "../../../../link/withheld.ts";
import { sightOf } from "./sight.ts";

/** What the record has already, and who says so. */
export interface OldValue {
  /** Null where the id itself would tell something withheld. */
  readonly id: Id | null;
  readonly said: Text;
  /** The source, else the scholars; empty where neither may be told. */
  readonly by: readonly Text[];
  readonly year: string | null;
}

/** A measurement as an earlier value. */
export function oldValue(graph: Graph, record: MeasurementRecord): OldValue {
  return { said: record.values.value.text, ...saidBy(graph, record) };
}

/** An observation of a feature as what was seen before. */
export function oldSight(graph: Graph, record: ObservationRecord): OldValue {
  return { said: sightOf(record.values.present ?? "true"), ...saidBy(graph, record) };
}

function saidBy(graph: Graph, record: MeasurementRecord | ObservationRecord): Omit<OldValue, "said"> {
  const withheld = withheldIn(graph);
  const { sources, scholars } = graph.provenance(record.id);
  const shown = sources.filter((key) => !withheld(key));
  const names = shown.length > 0 ? shown : scholars.filter((id) => !withheld(id));
  const { year } = record.values;
  return {
    id: shown.length === sources.length ? record.id : null,
    by: names.map((id) => labelText(graph, id)),
    year: year === undefined || shown.length > 0 ? null : yearText(year),
  };
}
