import type { Id } from "../../../base/finding.ts";
import { parseEdtf } from "../../../base/date/edtf.ts";
import { ofThings } from "../../../derive/lens.ts";
import { ownU } from "../../../derive/prepare/select.ts";
import type { Graph, MeasurementRecord, ObservationRecord } from "../../../link/graph.ts";
import type { View } from "../rule.ts";

/** Kinds of events after which a thing is not the same to look at or to measure (format.md 6). */
export const altering: readonly string[] = ["loss", "restoration", "conservation", "sampling"];

/** Measurements of one dimension of one artefact between the same landmarks that can be compared at all. */
export function comparable(
  view: Pick<View, "graph"> & { readonly judgement: Pick<View["judgement"], "counts"> },
): readonly (readonly MeasurementRecord[])[] {
  const { graph, judgement } = view;
  const groups = new Map<string, MeasurementRecord[]>();
  for (const record of graph.list("measurements")) {
    const { values } = record;
    if (!judgement.counts(record.id) || values.state === "reconstructed" || values.spread === true) continue;
    if (values.repeats !== undefined) continue;
    const key = `${values.of}\n${graph.dimensionName(values.dimension)}\n${values.between ?? ""}`;
    groups.set(key, [...(groups.get(key) ?? []), record]);
  }
  return [...groups.values()].filter((group) => group.length > 1);
}

/** How far two readings lie apart, and how far both and honest repetition allow, in SI of their kind. */
export interface Apart {
  readonly by: number;
  readonly allowed: number;
}

/** Whether two readings differ by more than both and honest repetition allow (format.md 6); a bound only when wholly on the wrong side. */
export function conflict(a: MeasurementRecord, b: MeasurementRecord, graph: Graph): boolean {
  const found = apart(a, b, graph);
  return found !== null && found.by > found.allowed;
}

/**
 * The difference of two readings and twice its standard uncertainty, reproducibility included (format.md 6). Of a
 * bound, `by` is how far the other lies on the wrong side of it; null where nothing can be compared.
 */
export function apart(a: MeasurementRecord, b: MeasurementRecord, graph: Graph): Apart | null {
  if (alteredBetween(a, b, graph)) return null;
  const [low, high] = [boundOf(a), boundOf(b)];
  const r = graph.settings.reproducibility;
  const [va, vb] = [a.values.value.value, b.values.value.value];
  const allowed = 2 * Math.hypot(ownU(a) ?? 0, ownU(b) ?? 0, r * va, r * vb);
  if (low === "value" && high === "value") return { by: Math.abs(va - vb), allowed };
  if (low !== "value" && high !== "value") {
    if (low === high) return null;
    return { by: low === "at-least" ? va - vb : vb - va, allowed };
  }
  const [bound, value, kind] = low === "value" ? [vb, va, high] : [va, vb, low];
  return { by: kind === "at-least" ? bound - value : value - bound, allowed };
}

function boundOf({ values }: MeasurementRecord): "value" | "at-least" | "at-most" {
  if (values.value.form === "at-most") return "at-most";
  return values.state === "preserved" || values.value.form === "at-least" ? "at-least" : "value";
}

/** Whether any of their things, or what it is part of, was altered between the years of two records; not where a year is unknown. */
export function alteredBetween(
  a: MeasurementRecord | ObservationRecord,
  b: MeasurementRecord | ObservationRecord,
  graph: Graph,
): boolean {
  const years = [a, b].map(({ id, values }) => values.year ?? graph.provenance(id).year ?? Number.NaN);
  const [from, to] = [Math.min(...years), Math.max(...years)];
  return [...ofThings(a), ...ofThings(b)].some((thing) =>
    alterations(thing, graph, altering).some((year) => year >= from && year <= to),
  );
}

/** The years in which a thing, or what it is part of, met events of the given kinds (the earliest each can be). */
export function alterations(thing: Id, graph: Graph, kinds: readonly string[]): readonly number[] {
  return eventsOf(wholesOf(thing, graph), graph, kinds).flatMap(({ low, high }) => low ?? high ?? []);
}

/** A thing and all that it is part of, from the inside out. */
export function wholesOf(thing: Id, graph: Graph): readonly Id[] {
  const whole = graph.wholeOf.get(thing);
  return whole === undefined ? [thing] : [thing, ...wholesOf(whole, graph)];
}

/** When events of the given kinds befell any of some things: first and last year each can be, null where open. */
export function eventsOf(
  things: readonly Id[],
  graph: Graph,
  kinds: readonly string[],
): readonly { readonly low: number | null; readonly high: number | null }[] {
  return things.flatMap((thing) => {
    const record = graph.records.get(thing);
    if (record?.list !== "artefacts") return [];
    return (record.values.history ?? []).flatMap((event) => {
      const when = parseEdtf(event.when);
      return "ok" in when && kinds.includes(event.kind) ? [when.ok] : [];
    });
  });
}
