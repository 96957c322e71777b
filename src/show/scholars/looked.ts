import type { Id } from "../../base/finding.ts";
import type { MeasurementRecord, ObservationRecord } from "../../link/graph.ts";
import type { Text } from "../../base/text/said/said.ts";
import { labelText } from "../../link/names/label.ts";
import type { Reported } from "../report/report.ts";
import { shownUnder, withheldIn } from "../withhold.ts";
import { namedIn } from "./named.ts";
import type { Named } from "./named.ts";

/** How near a scholar came to a thing: it itself, a likeness of it, somebody else's words, or it is not said. */
export type Nearness = "first-hand" | "from likenesses" | "second-hand" | "not said";

/** What a scholar saw and measured in one way; measurements of one dimension are told together. */
export interface Looked {
  readonly nearness: Nearness;
  readonly seen: readonly Named[];
  readonly measured: readonly Measured[];
}

/** Measurements of one dimension: how often, on which things, and the record where there is but one. */
export interface Measured {
  readonly dimension: string;
  readonly count: number;
  readonly things: readonly { readonly id: Id; readonly text: Text }[];
  readonly only: { readonly id: Id; readonly value: string } | null;
}

const nearest: readonly Nearness[] = ["first-hand", "from likenesses", "second-hand", "not said"];

/** What a scholar reports of things, by how near they came; a report, or what was read in another source, is second-hand. */
export function lookedAt(model: Reported, scholar: Id): readonly Looked[] {
  const { graph } = model;
  const withheld = withheldIn(graph);
  const shown = shownUnder(model);
  const own = (id: Id): boolean => shown(id) && graph.provenance(id).scholars.includes(scholar);
  const seen = graph.list("observations").filter(({ id }) => own(id));
  const measured = graph.list("measurements").filter(({ id }) => own(id));
  const near = (one: ObservationRecord | MeasurementRecord): Nearness => {
    if (graph.provenance(one.id).via.length > 0 || one.values.basis === "report") return "second-hand";
    if (one.list === "measurements" && one.values.repeats !== undefined) return "second-hand";
    if (one.values.basis === undefined) return "not said";
    return one.values.basis === "autopsy" ? "first-hand" : "from likenesses";
  };
  return nearest.flatMap((nearness): readonly Looked[] => {
    const those = seen.filter((one) => near(one) === nearness);
    const sizes = measured.filter((one) => near(one) === nearness);
    if (those.length + sizes.length === 0) return [];
    return [
      {
        nearness,
        seen: those.map(({ id }) => namedIn(model, id)),
        measured: byDimension(sizes),
      },
    ];
  });

  function byDimension(sizes: readonly MeasurementRecord[]): readonly Measured[] {
    const groups = new Map<string, MeasurementRecord[]>();
    for (const one of sizes) {
      const dimension = graph.dimensionName(one.values.dimension);
      groups.set(dimension, [...(groups.get(dimension) ?? []), one]);
    }
    return [...groups].map(([dimension, group]): Measured => {
      const [first] = group;
      const alone = group.length === 1;
      const wholes = new Set(group.map((one) => (alone ? one.values.of : wholeOf(one.values.of))));
      return {
        dimension,
        count: group.length,
        things: [...wholes].filter((id) => !withheld(id)).map((id) => ({ id, text: labelText(graph, id) })),
        only: first && alone ? { id: first.id, value: first.values.value.text } : null,
      };
    });
  }

  /** The thing itself, or the whole that a part of it is named under. */
  function wholeOf(thing: Id): Id {
    const whole = graph.wholeOf.get(thing);
    return whole === undefined || withheld(whole) ? thing : whole;
  }
}
