import type { Id } from "../../../../base/finding.ts";
import type { Graph } from "../../../../link/graph.ts";
import { examinationOf } from "../../../../link/suppose/examination.ts";
import type { Examination } from "../../../../link/suppose/examination.ts";
import { withheldIn } from "../../../../link/withheld.ts";
import { placesOf } from "../../../../plan/visit/places.ts";
import { askedOf } from "../../../../plan/visit/trips.ts";
import type { VisitAsked } from "../asked.ts";

/** What a visit is made for: the examinations, the things that are to be looked at, and others that the keeper has. */
export interface Visited {
  /** What uses nothing up first. */
  readonly examinations: readonly Examination[];
  readonly things: readonly Id[];
  readonly others: readonly Id[];
}

/** What is looked at on a visit, with nothing withheld in it; null where there is no such examination or keeper. */
export function visitedIn(graph: Graph, asked: VisitAsked): Visited | null {
  if (asked.examination !== null) {
    const one = examinationOf(graph, asked.examination);
    return one && { examinations: [one], things: shown(graph, one.of), others: [] };
  }
  const { keeper } = asked;
  if (keeper === null) return null;
  const kept = new Set(thingsOf(graph, keeper));
  const examinations = graph
    .list("examinations")
    .flatMap(({ id }) => examinationOf(graph, id) ?? [])
    .filter((one) => one.of.some((thing) => kept.has(thing)))
    .toSorted((a, b) => Number(a.destructive) - Number(b.destructive));
  if (kept.size === 0) return null;
  const examined = new Set(examinations.flatMap((one) => one.of.filter((thing) => kept.has(thing))));
  const also = asked.also.filter((thing) => kept.has(thing) && !examined.has(thing));
  // Where nothing is to be examined, the sheet is for what is there.
  const things = [...examined, ...also];
  const others = [...kept].filter((thing) => !things.includes(thing));
  return { examinations, things, others };
}

/** The keepers whom the record names, each with what a visit to them would be for. */
export function thingsOf(graph: Graph, keeper: string): readonly Id[] {
  const all = graph.list("artefacts").map((one) => one.id);
  return placesOf(graph, all)
    .filter((place) => askedOf(place) === keeper)
    .map((place) => place.artefact);
}

function shown(graph: Graph, of: readonly Id[]): readonly Id[] {
  const withheld = withheldIn(graph);
  return [...new Set(of)].filter((id) => !withheld(id) && graph.records.get(id)?.list === "artefacts");
}
