import type { Id } from "../../../../base/finding.ts";
import { inEnglish } from "../../../../base/text/said/english.ts";
import { count, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { MeasurementRecord } from "../../../../link/graph.ts";
import { labelText } from "../../../../link/names/label.ts";
import type { Sight } from "../desk.ts";
import { citesFor } from "../pieces/cites.ts";
import { stateOf } from "./state.ts";
import type { Evidence } from "./state.ts";

/** Readings that differ in nothing but their figures and what they are of: at least `leastInSeries`, in the order they were given. */
export interface Series {
  readonly readings: readonly [MeasurementRecord, ...MeasurementRecord[]];
}

/** Fewer readings are told one by one. */
const leastInSeries = 4;

/** Evidence with readings of one dimension from one place of a source, of equal standing, as series; what is a bound stands by itself. */
export function inSeries(
  sight: Sight,
  evidence: readonly Evidence[],
): readonly (readonly [Evidence] | Series)[] {
  const byKey = new Map<string, Evidence[]>();
  for (const one of evidence) {
    const key = keyOf(sight, one) ?? one.id;
    byKey.set(key, [...(byKey.get(key) ?? []), one]);
  }
  return [...byKey].flatMap(([key, all]): readonly (readonly [Evidence] | Series)[] => {
    const [first, ...others] = all.filter((one) => one.list === "measurements");
    const apart = all.length < leastInSeries || first === undefined || key === first.id;
    return apart ? all.map((one) => [one] as const) : [{ readings: [first, ...others] }];
  });
}

/** What readings of one series have in common; null for what belongs to none. */
function keyOf(sight: Sight, one: Evidence): string | null {
  if (one.list !== "measurements") return null;
  const { graph, model } = sight;
  const { dimension, value, basis, via, year } = one.values;
  if (value.form !== "value" && value.form !== "approximate") return null;
  const { scholars, year: printed } = graph.provenance(one.id);
  const state = stateOf(one);
  return JSON.stringify([
    graph.dimensionName(dimension),
    value.kind,
    basis,
    via,
    year ?? printed,
    state === null ? null : inEnglish(state),
    model.judgement.standings.get(one.id),
    scholars,
    citesFor(sight, one.id),
  ]);
}

/** What a series is of: one thing, or how many, from the first to the last. */
export function ofSeries({ graph }: Sight, { readings }: Series): Text {
  const things = [...new Set(readings.map(({ values }): Id => values.of))];
  const [first = "", last = first] = [things[0], things.at(-1)];
  return things.length === 1
    ? labelText(graph, first)
    : say`${count(things.length)} parts, from ${nameIn(labelText(graph, first))} to ${nameIn(labelText(graph, last))}`;
}

/** A label without what is added to the name after a comma. */
function nameIn(label: Text): Text {
  return typeof label === "string" ? label.replace(/(?<=\p{L}.*)[,،;].*$/su, "") : label;
}

/** How many readings, with the least and the greatest as they were recorded. */
export function spanOf({ readings }: Series): Text {
  const inOrder = readings.map(({ values }) => values.value).toSorted((a, b) => a.value - b.value);
  const [least, most] = [inOrder[0], inOrder.at(-1)];
  return say`${count(readings.length)} readings, from ${least?.text ?? ""} to ${most?.text ?? ""}`;
}
