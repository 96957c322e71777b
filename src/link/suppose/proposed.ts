import type { Id } from "../../base/finding.ts";
import type { Said, Text } from "../../base/text/said/said.ts";
import { folded } from "../dimension.ts";
import type { ArtefactRecord, Graph, MeasurementRecord, ObservationRecord } from "../graph.ts";
import { labelText } from "../names/label.ts";
import { withheldIn } from "../withheld.ts";
import type { Examination, SupposedOutcome } from "./outcome.ts";
import { inRow, methods, outcomes } from "./wording.ts";

/** A second look at one observation or measurement: it is as recorded, or not so. */
export function lookAgain(graph: Graph, evidence: ObservationRecord | MeasurementRecord): Examination {
  const { id } = evidence;
  const of = evidence.list === "observations" ? evidence.values.of : [evidence.values.of];
  const objections = graph.list("arguments").filter((one) => one.values.against?.includes(id));
  const what = labelText(graph, id);
  return {
    ...proposal(graph, "look-again", id, of),
    method: secondLook(graph, of),
    outcomes: [
      outcome("as-recorded", outcomes.asRecorded(what), { against: objections.map((one) => one.id) }),
      outcome("not-so", outcomes.notSo(what), { against: [id] }),
    ],
  };
}

/** A second look at an artefact with its parts: all that is recorded of it is so, or nothing of it. */
export function seeAgain(graph: Graph, artefact: ArtefactRecord): Examination {
  const things = new Set(graph.withParts(artefact.id));
  const against = [
    ...graph.list("observations").filter((one) => one.values.of.some((thing) => things.has(thing))),
    ...graph.list("measurements").filter((one) => things.has(one.values.of)),
  ].map((one) => one.id);
  const what = labelText(graph, artefact.id);
  return {
    ...proposal(graph, "see-again", artefact.id, [artefact.id]),
    method: secondLook(graph, [artefact.id]),
    outcomes: [
      outcome("as-recorded", outcomes.allAsRecorded(what)),
      outcome("not-so", outcomes.nothingSo(what), { against }),
    ],
  };
}

/** The readings of one dimension of one artefact between the same landmarks, in corpus order. */
export function readingsBeside(graph: Graph, { values }: MeasurementRecord): readonly MeasurementRecord[] {
  const name = folded(graph.dimensionName(values.dimension));
  return graph
    .list("measurements")
    .filter(
      (other) =>
        other.values.of === values.of &&
        folded(graph.dimensionName(other.values.dimension)) === name &&
        (other.values.between ?? "") === (values.between ?? "") &&
        other.values.spread !== true,
    );
}

/** A dimension measured anew, of which the record has several readings: one of them is right against the others. */
export function measureAgain(graph: Graph, first: MeasurementRecord): Examination | null {
  const group = readingsBeside(graph, first);
  if (group[0]?.id !== first.id) return null;
  const distinct = new Map<string, MeasurementRecord[]>();
  for (const one of group) {
    const { form, value } = one.values.value;
    const key = `${form} ${value}`;
    distinct.set(key, [...(distinct.get(key) ?? []), one]);
  }
  if (distinct.size < 2) return null;
  const { of } = first.values;
  const dimension = graph.dimensionName(first.values.dimension);
  const thing = labelText(graph, of);
  return {
    ...proposal(graph, "measure-again", first.id, [of]),
    method: methods.measureAgain(dimension, thing),
    outcomes: [...distinct.values()].map((same, at) =>
      outcome(`reading-${at + 1}`, outcomes.reading(dimension, thing, same[0]?.values.value.text ?? ""), {
        against: group.filter((one) => !same.includes(one)).map((one) => one.id),
      }),
    ),
  };
}

/** What every proposal has of its own accord: no cost is known, and nothing is used up. */
export function proposal(
  graph: Graph,
  origin: Examination["origin"],
  about: Id,
  of: readonly Id[],
): Omit<Examination, "method" | "outcomes"> {
  const withheld = withheldIn(graph);
  const permits = of.flatMap((thing) => (withheld(thing) ? [] : (permitOf(graph, thing) ?? [])));
  return {
    id: `${origin}:${about}`,
    origin,
    of,
    cost: null,
    destructive: false,
    permit: permits.length > 0 ? [...new Set(permits)].join("; ") : null,
  };
}

/** What is kept somewhere can be looked at there; what is not is where it was found, as far as the record says. */
function secondLook(graph: Graph, of: readonly Id[]): Said {
  const withheld = withheldIn(graph);
  const kept = of.every((thing) => withheld(thing) || isKept(graph, thing));
  return (kept ? methods.lookAgain : methods.lookInGround)(inRow(graph, of));
}

/** It, or what it is part of, is said to be held somewhere. */
function isKept(graph: Graph, artefact: Id): boolean {
  for (let at: Id | undefined = artefact; at !== undefined; at = graph.wholeOf.get(at)) {
    const record = graph.records.get(at);
    if (record?.list === "artefacts" && record.values["held-at"] !== undefined) return true;
  }
  return false;
}

/** The permission that an artefact takes, by its own record or by that of what it is part of. */
function permitOf(graph: Graph, artefact: Id): string | null {
  for (let at: Id | undefined = artefact; at !== undefined; at = graph.wholeOf.get(at)) {
    const record = graph.records.get(at);
    const permit = record?.list === "artefacts" ? record.values.access?.permit : undefined;
    if (permit !== undefined) return permit;
  }
  return null;
}

/** An outcome that sees and measures nothing but speaks for or against what is there. */
export function outcome(
  id: Id,
  text: Text,
  speaks: Partial<Pick<SupposedOutcome, "therefore" | "against" | "strength">> = {},
): SupposedOutcome {
  return {
    id,
    text,
    sees: [],
    measures: [],
    therefore: [],
    against: [],
    strength: "ordinary",
    probability: null,
    ...speaks,
  };
}
