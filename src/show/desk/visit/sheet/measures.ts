import type { Id } from "../../../../base/finding.ts";
import { folded } from "../../../../link/dimension.ts";
import type { Graph, MeasurementRecord } from "../../../../link/graph.ts";
import { withheldIn } from "../../../../link/withheld.ts";
import type { Examination } from "../../../../link/suppose/examination.ts";
import { named } from "../../../judged/standpoints/named.ts";
import type { Named } from "../../../judged/standpoints/named.ts";
import { measureKey } from "./keys.ts";
import { oldValue } from "./old.ts";
import type { OldValue } from "./old.ts";
import { unitFor, unitsOf } from "./units.ts";
import type { Visited } from "./examined.ts";

/** One dimension of one thing, to be measured on a visit. */
export interface MeasureRow {
  readonly key: string;
  readonly of: Named;
  readonly dimension: string;
  /** How it is taken, by the corpus's settings. */
  readonly taken: string | null;
  /** The landmarks of those that are recorded; empty where none are. */
  readonly between: string;
  /** An outcome asks for it. */
  readonly asked: boolean;
  /** The unit that figures without one are in, and others to choose from; empty for counts and pure numbers. */
  readonly unit: string;
  readonly units: readonly string[];
  /** What it was measured with before. */
  readonly instruments: readonly string[];
  /** Not to be shown before the new readings are in. */
  readonly old: readonly OldValue[];
}

interface Wanted {
  readonly of: Id;
  readonly dimension: string;
}

/** What is to be measured: first what outcomes ask for, then what is recorded of the things besides. */
export function measureRows(graph: Graph, { examinations, things }: Visited): readonly MeasureRow[] {
  const withheld = withheldIn(graph);
  const recorded = graph.list("measurements").filter((one) => !withheld(one.id) && !one.values.spread);
  const byThing = new Map<Id, MeasurementRecord[]>();
  for (const one of recorded) byThing.set(one.values.of, [...(byThing.get(one.values.of) ?? []), one]);
  const asked = examinations.flatMap((one) => askedBy(graph, one)).filter((one) => !withheld(one.of));
  const besides = things.flatMap((of) =>
    (byThing.get(of) ?? []).map((one) => ({ of, dimension: one.values.dimension })),
  );
  const rows = new Map<string, MeasureRow>();
  for (const [wanted, isAsked] of [
    ...asked.map((one) => [one, true] as const),
    ...besides.map((one) => [one, false] as const),
  ]) {
    const dimension = graph.dimensionName(wanted.dimension);
    const same = (byThing.get(wanted.of) ?? []).filter(
      (one) => folded(graph.dimensionName(one.values.dimension)) === folded(dimension),
    );
    const landmarks = new Set(same.map((one) => one.values.between ?? ""));
    for (const between of landmarks.size > 0 ? landmarks : [""]) {
      const key = measureKey({ of: wanted.of, dimension, between });
      if (rows.has(key)) continue;
      const old = same.filter((one) => (one.values.between ?? "") === between);
      rows.set(key, rowOf(graph, { of: wanted.of, dimension, between }, old, isAsked));
    }
  }
  return [...rows.values()];
}

/** A row for a dimension, with what is recorded of it already. */
function rowOf(
  graph: Graph,
  about: Wanted & { readonly between: string },
  old: readonly MeasurementRecord[],
  asked: boolean,
): MeasureRow {
  const kind = graph.dimensionKind(about.dimension);
  const setting = graph.settings.dimensions.find((one) => folded(one.name) === folded(about.dimension));
  return {
    key: measureKey(about),
    of: named(graph, about.of),
    dimension: about.dimension,
    taken: setting?.taken ?? null,
    between: about.between,
    asked,
    unit: unitFor(
      kind,
      old.map((one) => one.values.value),
    ),
    units: unitsOf(kind),
    instruments: [...new Set(old.flatMap((one) => one.values.instrument ?? []))],
    old: old.map((one) => oldValue(graph, one)),
  };
}

/** The dimensions that an examination's outcomes measure, and those whose measurements they speak for or against. */
function askedBy(graph: Graph, { outcomes }: Examination): readonly Wanted[] {
  return outcomes.flatMap((outcome) => [
    ...outcome.measures,
    ...outcome.against.flatMap((id) => {
      const record = graph.records.get(id);
      return record?.list === "measurements" ? [record.values] : [];
    }),
  ]);
}
