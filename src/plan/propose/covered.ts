import type { Id } from "../../base/finding.ts";
import { folded } from "../../link/dimension.ts";
import type { Graph } from "../../link/graph.ts";
import type { Examination } from "../../link/suppose/examination.ts";
import type { Feeding } from "../feeding.ts";
import type { Candidate } from "./candidates.ts";

/**
 * Tells whether an examination of the record already looks at the same thing for the same evidence as one that could
 * be proposed: it is against that evidence, or looks there for the same feature or dimension, or at the very artefact.
 */
export function coveredBy(
  graph: Graph,
  recorded: readonly Examination[],
  feeding: Feeding,
): (candidate: Candidate) => boolean {
  const outcomes = recorded.flatMap((one) => one.outcomes);
  const against = new Set(outcomes.flatMap((one) => one.against));
  const subjects = new Set(recorded.flatMap((one) => subjectsOf(graph, one)));
  const measured = new Set(
    recorded.flatMap((one) =>
      one.outcomes.filter((outcome) => outcome.measures.length > 0).flatMap((it) => [...feeding(one, it)]),
    ),
  );
  const looked = new Set(recorded.flatMap((one) => one.of));
  const sought = (evidence: Id): boolean => soughtBy(graph, evidence).some((key) => subjects.has(key));
  return ({ id, reason }) => {
    const about = id.slice(id.indexOf(":") + 1);
    switch (reason.kind) {
      case "rests-on":
        return looked.has(about);
      case "no-number":
        return measured.has(about);
      case "in-conflict":
        return sought(about) || reason.about.some((reading) => against.has(reading));
      default:
        return against.has(about) || sought(about);
    }
  };
}

/** Each thing with what is looked for or measured there. */
function subjectsOf(graph: Graph, { of, outcomes }: Examination): readonly string[] {
  return outcomes.flatMap(({ sees, measures }) => [
    ...sees.flatMap(({ feature }) => of.map((thing) => seenKey(graph, thing, feature))),
    ...measures.map((one) => measuredKey(graph, one.of, one.dimension)),
  ]);
}

function soughtBy(graph: Graph, evidence: Id): readonly string[] {
  const record = graph.records.get(evidence);
  if (record?.list === "measurements") return [measuredKey(graph, record.values.of, record.values.dimension)];
  if (record?.list !== "observations" || record.values.feature === undefined) return [];
  const { feature } = record.values;
  return record.values.of.map((thing) => seenKey(graph, thing, feature));
}

function seenKey(graph: Graph, thing: Id, feature: string): string {
  return `sees ${thing}\n${folded(graph.featureName(feature))}`;
}

function measuredKey(graph: Graph, thing: Id, dimension: string): string {
  return `measures ${thing}\n${folded(graph.dimensionName(dimension))}`;
}
