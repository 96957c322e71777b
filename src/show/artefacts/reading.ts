import type { Id } from "../../base/finding.ts";
import { byYear } from "../../base/order.ts";
import { yearWords } from "../../base/date/year-words.ts";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import { measuredOf } from "../../derive/prepare/select.ts";
import type { Graph, MeasurementRecord } from "../../link/graph.ts";
import { authorOrCorpus } from "../../link/names/label.ts";
import { citationPieces, citedPieces } from "../pages/fields.ts";
import type { Piece } from "../pages/pieces.ts";
import type { Reported } from "../report/report.ts";
import { withheldIn } from "../withhold.ts";
import { siWords } from "./si-words.ts";
import type { SIUnit } from "./si-words.ts";

/** One reading of a dimension, as its source has it and in SI. */
export interface Reading {
  readonly id: Id;
  /** The figure as written. */
  readonly figure: string;
  /** In SI, ± 1 s; a preserved length is a lower bound. */
  readonly si: string;
  readonly state: "complete" | "preserved" | "reconstructed";
  readonly basis: string | null;
  readonly year: Text | null;
  readonly by: Text;
  readonly from: readonly Piece[];
  readonly via: readonly Piece[];
  readonly instrument: string | null;
  readonly condition: string | null;
  readonly note: string | null;
  /** It sums up so many things or readings. */
  readonly n: number | null;
  /** Whose figure it copies; it then counts for nothing of its own. */
  readonly copyOf: Text | null;
  /** How a derivation would take it: alone, in a mean, or not at all, and then why. */
  readonly use: "alone" | "in-mean" | "left-out";
  readonly leftOut: Text | null;
  readonly clashing: boolean;
}

/** What is known of a reading beside its record. */
export interface Beside {
  readonly unit: SIUnit;
  readonly original: Text | null;
  readonly entered: readonly Id[];
  readonly leftOut: Text | null;
  readonly clashing: boolean;
}

/** A measurement as one row of the table of dimensions. */
export function readingOf({ graph }: Reported, record: MeasurementRecord, beside: Beside): Reading {
  const { id, values } = record;
  const { year: printed } = graph.provenance(id);
  const year = values.year ?? printed;
  const entered = beside.entered.includes(id);
  return {
    id,
    figure: values.value.text,
    si: siWords(measuredOf(record, graph).quantity, beside.unit),
    state: values.state ?? "complete",
    basis: values.basis ?? null,
    year: year === null ? null : yearWords(year),
    by: authorOrCorpus(graph, id),
    from: citedPieces(graph, values.from ?? []),
    via: values.via ? citationPieces(graph, values.via) : [],
    instrument: values.instrument ?? null,
    condition: values.condition ?? null,
    note: values.note ?? null,
    n: values.n ?? null,
    copyOf: beside.original,
    use: !entered ? "left-out" : beside.entered.length > 1 ? "in-mean" : "alone",
    leftOut: entered ? null : beside.leftOut,
    clashing: beside.clashing,
  };
}

/** A reading with the name of the one it copies. */
export interface Placed {
  readonly record: MeasurementRecord;
  readonly original: Text | null;
}

/** Readings in the order of the years, each followed by what copies it. */
export function inOrder(graph: Graph, group: readonly MeasurementRecord[]): readonly Placed[] {
  const when = ({ id, values }: MeasurementRecord): number | null => values.year ?? graph.provenance(id).year;
  const sorted = group.toSorted((a, b) => byYear("last")(when(a), when(b)));
  const copied = (record: MeasurementRecord): MeasurementRecord | undefined => {
    const { repeats } = record.values;
    if (repeats === undefined) return undefined;
    return sorted.find(
      (one) => one !== record && (one.id === repeats || graph.provenance(one.id).sources.includes(repeats)),
    );
  };
  const done = new Set<MeasurementRecord>();
  const place = (record: MeasurementRecord): readonly Placed[] => {
    if (done.has(record)) return [];
    done.add(record);
    const copies = sorted.filter((one) => copied(one) === record);
    return [{ record, original: originalOf(graph, record, copied(record)) }, ...copies.flatMap(place)];
  };
  // Copies of one another alone have no first among them: they stand as they come.
  return [...sorted.filter((one) => copied(one) === undefined), ...sorted].flatMap(place);
}

function originalOf(
  graph: Graph,
  record: MeasurementRecord,
  copied: MeasurementRecord | undefined,
): Text | null {
  const { repeats } = record.values;
  if (repeats === undefined || withheldIn(graph)(repeats)) return repeats === undefined ? null : say`another`;
  return copied
    ? authorOrCorpus(graph, copied.id)
    : (graph.sources.get(repeats)?.label ?? authorOrCorpus(graph, repeats));
}
