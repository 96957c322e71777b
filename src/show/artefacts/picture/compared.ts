import { yearWords } from "../../../base/date/year-words.ts";
import type { Id } from "../../../base/finding.ts";
import type { Quantity } from "../../../base/quantity.ts";
import { measuredOf } from "../../../derive/prepare/select.ts";
import { apart } from "../../../judge/rules/measurements/compare.ts";
import { authorOrCorpus } from "../../../link/names/label.ts";
import type { Graph, MeasurementRecord } from "../../../link/graph.ts";
import { withheldIn } from "../../withhold.ts";
import { differenceWords, siUnitFor, siWords } from "../si-words.ts";
import type { ComparedLine } from "./asked.ts";

/** A measurement that is in no file yet. */
export interface Coming {
  readonly of: Id;
  readonly dimension: string;
  readonly between: string;
  readonly value: Quantity;
  /** Astronomical. */
  readonly year: number;
  /** What it shares with others of its picture, as a share of it. */
  readonly shared: number;
}

/** The measurements of the same dimension of the same thing between the same landmarks, each held against one to come, as findings do. */
export function comparedWith(graph: Graph, coming: Coming): readonly ComparedLine[] {
  const withheld = withheldIn(graph);
  const name = graph.dimensionName(coming.dimension);
  const others = graph
    .list("measurements")
    .filter(
      ({ id, values }) =>
        values.of === coming.of &&
        graph.dimensionName(values.dimension) === name &&
        (values.between ?? "") === coming.between &&
        !withheld(id),
    );
  const unit = siUnitFor(
    coming.value.kind,
    [coming.value, ...others.map((one) => one.values.value)].map((one) => one.value),
  );
  return others.map((other): ComparedLine => {
    const { values } = other;
    const year = values.year ?? graph.provenance(other.id).year;
    const isCompared =
      values.state !== "reconstructed" && values.spread !== true && values.repeats === undefined;
    const found = isCompared ? apart(asRecord(coming, other), other, graph) : null;
    const conflicts = found !== null && found.by > found.allowed;
    const shared = 2 * coming.shared * coming.value.value;
    return {
      id: other.id,
      figure: values.value.text,
      si: siWords(measuredOf(other, graph).quantity, unit),
      by: authorOrCorpus(graph, other.id),
      year: year === null ? null : yearWords(year),
      verdict: found === null ? "apart" : conflicts ? "conflicts" : "agrees",
      difference: found === null || found.by < 0 ? null : differenceWords(found.by, unit),
      withinScale: conflicts && found.by <= Math.hypot(found.allowed, shared),
    };
  });
}

/** What is to come, in the shape of a measurement of the corpus: all that the comparison looks at. */
function asRecord({ of, dimension, value, year }: Coming, like: MeasurementRecord): MeasurementRecord {
  return { ...like, values: { of, dimension, value, year } };
}
