import type { Id } from "../../base/finding.ts";
import type { Graph } from "../../link/graph.ts";
import { withheldIn } from "../../link/withheld.ts";

/** A thing to look at, and how one gets to see it: its own record, or that of the nearest whole that says so. */
export interface Place {
  readonly artefact: Id;
  readonly keeper: string | null;
  readonly heldAt: string | null;
  readonly permit: string | null;
  readonly leadTime: string | null;
  readonly note: string | null;
}

/** Where the things of an examination are and who lets one in; things withheld are passed over. */
export function placesOf(graph: Graph, of: readonly Id[]): readonly Place[] {
  const withheld = withheldIn(graph);
  return of.filter((id) => !withheld(id)).map((id) => placeOf(graph, id));
}

function placeOf(graph: Graph, artefact: Id): Place {
  const access = nearest(graph, artefact, (values) => values.access);
  return {
    artefact,
    keeper: access?.keeper ?? null,
    heldAt: nearest(graph, artefact, (values) => values["held-at"]) ?? null,
    permit: access?.permit ?? null,
    leadTime: access?.["lead-time"] ?? null,
    note: access?.note ?? null,
  };
}

type ArtefactValues = Extract<
  NonNullable<ReturnType<Graph["records"]["get"]>>,
  { list: "artefacts" }
>["values"];

/** What the thing says of itself, else what it is part of, from the inside out. */
function nearest<T>(
  graph: Graph,
  artefact: Id,
  said: (values: ArtefactValues) => T | undefined,
): T | undefined {
  for (let at: Id | undefined = artefact; at !== undefined; at = graph.wholeOf.get(at)) {
    const record = graph.records.get(at);
    const own = record?.list === "artefacts" ? said(record.values) : undefined;
    if (own !== undefined) return own;
  }
  return undefined;
}
