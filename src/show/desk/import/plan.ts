import type { Id } from "../../../base/finding.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Graph } from "../../../link/graph.ts";
import type { Arrived } from "../../../read/bibliography/incoming/arrived.ts";
import { importChanges } from "../../../read/bibliography/incoming/changes.ts";
import type { Changes } from "../../../read/bibliography/incoming/changes.ts";
import { planned } from "../../../read/bibliography/incoming/plan.ts";
import type { Choice, Plan } from "../../../read/bibliography/incoming/plan.ts";
import { shelfOf } from "../../../read/bibliography/incoming/shelf.ts";
import type { Shelf } from "../../../read/bibliography/incoming/shelf.ts";
import type { SourceFile } from "../../../read/source-file.ts";
import { withheldIn } from "../../withhold.ts";

/** What a corpus has of sources; every id in it is taken, of what could not be read as well. */
export function shelfFor(graph: Graph, files: readonly SourceFile[]): Shelf {
  const { file: settings, bibliography: named } = graph.settings;
  return shelfOf({ files, settings, named, ids: idsIn(graph) });
}

function* idsIn(graph: Graph): Iterable<Id> {
  yield* graph.records.keys();
  yield* graph.sources.keys();
  for (const { id } of graph.leftOut) if (id !== undefined) yield id;
  for (const { id } of graph.spoilt ?? []) if (id !== null) yield id;
}

/** As many entries as are left out one by one; where more would have to be, the import is refused. */
const mostRefused = 100;

/** A plan that can be carried out, the changes that do it, and the entries that had to be left out for it, each with the reason. */
export interface ImportPlan {
  readonly plan: Plan;
  readonly made: Changes;
  readonly refused: ReadonlyMap<number, Text>;
}

/**
 * Plans an import into a corpus; what is like something withheld is left alone and not told of. An entry that would be read
 * otherwise than in its own file is left out, and the others are planned anew without it.
 */
export function importPlan(
  graph: Graph,
  shelf: Shelf,
  arrived: readonly Arrived[],
  asked: { readonly choices: ReadonlyMap<number, Choice>; readonly duplicates: "leave" | "merge" },
): ImportPlan {
  const refused = new Map<number, Text>();
  for (;;) {
    const isHidden = withheldIn(graph);
    const plan = planned(shelf, arrived, { ...asked, isHidden, refused: new Set(refused.keys()) });
    const made = importChanges(plan);
    const more = "problem" in made && made.at !== null && !refused.has(made.at) && refused.size < mostRefused;
    if (!more || made.at === null) return { plan, made, refused };
    refused.set(made.at, made.problem);
  }
}
