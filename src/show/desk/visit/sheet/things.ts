import type { Id } from "../../../../base/finding.ts";
import type { Graph } from "../../../../link/graph.ts";
import { labelText } from "../../../../link/names/label.ts";
import { placesOf } from "../../../../plan/visit/places.ts";
import type { Named } from "../../../judged/standpoints/named.ts";

/** A thing that is to be looked at: what it is called, by which numbers, and where it is kept. Never where it was found. */
export interface ThingLine extends Named {
  /** By register. */
  readonly numbers: readonly (readonly [register: string, number: string])[];
  readonly heldAt: string | null;
}

/** The things of a visit, those withheld left out. */
export function thingLines(graph: Graph, of: readonly Id[]): readonly ThingLine[] {
  return placesOf(graph, of).map(({ artefact, heldAt }) => {
    const record = graph.records.get(artefact);
    const numbers = record?.list === "artefacts" ? record.values.numbers : undefined;
    return { id: artefact, text: labelText(graph, artefact), numbers: [...(numbers ?? [])], heldAt };
  });
}
