import type { Derived } from "../../derive/derive.ts";
import type { Graph } from "../../link/graph.ts";
import { withheldIn } from "../withhold.ts";

/** Why there is no number, which of a plug-in not allowed is told beside its file; a reason that would name something withheld is not given. */
export function whyWords(graph: Graph, { status, why }: Derived): string | null {
  if (status === "withheld") return "a plug-in of this corpus has not been allowed";
  if (why === null) return null;
  const withheld = withheldIn(graph);
  const ids = [...graph.records.keys(), ...graph.sources.keys()];
  const named = ids.some((id) => withheld(id) && why.includes(id));
  return named ? "It leans on something withheld" : why;
}
