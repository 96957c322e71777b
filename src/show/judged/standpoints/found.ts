import type { Id } from "../../../base/finding.ts";
import type { Judgement } from "../../../judge/judge.ts";
import { standpointsOf } from "../../../judge/standpoints/standpoints.ts";
import type { Standpoints } from "../../../judge/standpoints/standpoints.ts";
import type { Graph } from "../../../link/graph.ts";
import { withheldIn } from "../../withhold.ts";

/** What the coherent standpoints follow from. */
export interface Judged {
  readonly graph: Graph;
  readonly judgement: Judgement;
}

const known = new WeakMap<Judgement, Standpoints>();

/** The coherent standpoints as they may be told; looked for once in each judgement. */
export function standpointsIn({ graph, judgement }: Judged): Standpoints {
  const found = known.get(judgement) ?? standpointsOf(graph, judgement, tellableIn({ graph, judgement }));
  known.set(judgement, found);
  return found;
}

/** Tells what may be named: nothing withheld, and no claim that nothing in print names yet. */
export function tellableIn({ graph, judgement }: Judged): (id: Id) => boolean {
  const withheld = withheldIn(graph);
  const isClaim = (id: Id): boolean => graph.records.get(id)?.list === "claims";
  return (id) => !withheld(id) && (!isClaim(id) || judgement.listed(id));
}
