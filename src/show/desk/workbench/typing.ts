import { formatSI } from "../../../base/quantity/quantity-print.ts";
import { conditionOf } from "../../../derive/bearing.ts";
import type { Graph } from "../../../link/graph.ts";
import type { NumberDeclaration, Plugin } from "../../../plugin.ts";
import type { QuantityKind } from "../../../base/quantity.ts";
import type { Understood } from "./settings.ts";

/** A text that is being typed into one of a draft's fields and is not taken yet: which field, and the text so far. */
export interface Typing {
  /** `parameters.low`, `limit.p`, `find.gaps`. */
  readonly at: string;
  readonly text: string;
}

/** How a comparison with one of a plug-in's numbers is understood; `kind` is that of its first input's quantities. */
export function limitUnderstood(
  graph: Graph,
  plugin: Plugin,
  name: string,
  text: string,
  kind: QuantityKind | null,
): Understood {
  if (text.trim() === "") return { as: null, problem: null };
  const read = conditionOf({ [name]: text }, plugin, graph.settings.quantities);
  if ("why" in read) return { as: null, problem: read.why };
  const comparison = read.condition[0]?.[0];
  const declared = plugin.numbers.find((one) => one.name === name);
  if (
    comparison === undefined ||
    kind === null ||
    declared?.kind !== ("input" satisfies NumberDeclaration["kind"])
  )
    return { as: null, problem: null };
  const ends = [comparison.low, comparison.high].filter(Number.isFinite).map((end) => formatSI(end, kind));
  return { as: ends.join(" to "), problem: null };
}
