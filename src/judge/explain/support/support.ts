import type { Id } from "../../../base/finding.ts";
import type { Graph } from "../../../link/graph.ts";
import type { Evaluation } from "../evaluation.ts";
import { coneOf } from "./cone.ts";
import type { Cone } from "./cone.ts";
import { byDeletion, foundingWithin, reachedBy } from "./founding.ts";
import { smallestSet } from "./smallest.ts";

/** A set of records that stand and by which something stands, were everything else lost. */
export interface Support {
  /** In the order of ids. */
  readonly records: readonly Id[];
  /** Whether no smaller set would do; else that none of these can be spared, the search for a smaller having been given up. */
  readonly exact: boolean;
  /** How it stands by them: what leans on what, from the top down. */
  readonly steps: readonly Step[];
}

/** A claim, an argument or a piece of evidence, and what it leans on. */
export interface Step {
  readonly id: Id;
  readonly needs: readonly Id[];
}

/** The smallest support of something that stands: by number of records, then by their ids. */
export function supportOf(graph: Graph, evaluation: Evaluation, id: Id, effort?: number): Support {
  const { compiled, values, rulesFor, argument } = evaluation;
  const { ids } = compiled;
  const goal = compiled.atoms.get(id);
  if (goal === undefined) throw new Error("supportOf: nothing of that name is judged");
  const recordOf = (atom: number): Id | null => {
    const name = ids[atom] ?? "";
    const speaker = argument(name)?.from ?? name;
    return graph.records.has(speaker) && graph.records.get(speaker)?.list !== "claims" ? speaker : null;
  };
  const cone = coneOf(compiled.program, values, goal, recordOf, rulesFor);
  const smallest = smallestSet(cone, effort);
  const places = smallest ?? byDeletion(cone);
  return {
    records: places.map((place) => cone.records[place] ?? ""),
    exact: smallest !== null,
    steps: stepsOf(cone, places, ids),
  };
}

function stepsOf(cone: Cone, places: readonly number[], ids: readonly Id[]): readonly Step[] {
  const kept = new Uint8Array(cone.records.length);
  for (const place of places) kept[place] = 1;
  const founding = foundingWithin(cone, kept);
  if (!founding) throw new Error("stepsOf: records by which the goal does not hold");
  const idOf = (atom: number): Id => ids[cone.atoms[atom] ?? -1] ?? "";
  const needsOf = (atom: number): readonly number[] => cone.options[atom]?.[founding[atom] ?? -1] ?? [];
  const auxiliary = (atom: number): boolean => idOf(atom).startsWith("silence: ");
  return reachedBy(cone, founding)
    .filter((atom) => !auxiliary(atom))
    .map((atom) => ({
      id: idOf(atom),
      needs: needsOf(atom)
        .flatMap((need) => (auxiliary(need) ? needsOf(need) : [need]))
        .map(idOf),
    }));
}
