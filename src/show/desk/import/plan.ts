import type { Id } from "../../../base/finding.ts";
import type { Graph } from "../../../link/graph.ts";
import type { Arrived } from "../../../read/bibliography/incoming/arrived.ts";
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

/** Plans an import into a corpus; what is like something withheld is left alone and not told of. */
export function importPlan(
  graph: Graph,
  shelf: Shelf,
  arrived: readonly Arrived[],
  asked: { readonly choices: ReadonlyMap<number, Choice>; readonly duplicates: "leave" | "merge" },
): Plan {
  return planned(shelf, arrived, { ...asked, isHidden: withheldIn(graph) });
}
