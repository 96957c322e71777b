import type { Derived } from "../../derive/derive.ts";
import type { Graph } from "../../link/graph.ts";
import { withheldIn } from "../withhold.ts";

/** Why there is no number; a reason that would name something withheld is not given. */
export function whyWords(graph: Graph, { why }: Derived): string | null {
  if (why === null) return null;
  const withheld = withheldIn(graph);
  const ids = [...graph.records.keys(), ...graph.sources.keys()];
  const named = ids.some((id) => withheld(id) && why.includes(id));
  return named ? "It leans on something withheld" : why;
}
