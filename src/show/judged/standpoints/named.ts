import type { Id } from "../../../base/finding.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Fit, Misfit } from "../../../judge/standpoints/scholars/fit.ts";
import type { Graph } from "../../../link/graph.ts";
import { labelText } from "../../../link/names/label.ts";

/** A record by what it is called. */
export interface Named {
  readonly id: Id;
  readonly text: Text;
}

/** A scholar whose latest positions fit, or all but one. */
export interface FitLine extends Named {
  readonly positions: number;
  /** The position that does not fit; null where all do. */
  readonly but: (Pick<Misfit, "stance" | "standing"> & { readonly claim: Named }) | null;
}

/** A record by its label. */
export function named(graph: Graph, id: Id): Named {
  return { id, text: labelText(graph, id) };
}

/** A scholar's fit in words. */
export function fitLine(graph: Graph, { scholar, positions, but }: Fit): FitLine {
  const misfit = but && { claim: named(graph, but.claim), stance: but.stance, standing: but.standing };
  return { ...named(graph, scholar), positions, but: misfit };
}
