import { inEnglish } from "../../base/text/said/english.ts";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Derived } from "../../derive/derived/derived.ts";
import type { Graph } from "../../link/graph.ts";
import { withheldIn } from "../withhold.ts";

/** Why there is no number, which of a plug-in not allowed is told beside its file; a reason that would name something withheld is not given. */
export function whyWords(graph: Graph, { status, why }: Derived): Text | null {
  if (status === "withheld") return say`a plug-in of this corpus has not been allowed`;
  if (why === null) return null;
  const withheld = withheldIn(graph);
  const ids = [...graph.records.keys(), ...graph.sources.keys()];
  const told = inEnglish(why);
  const named = ids.some((id) => withheld(id) && told.includes(id));
  return named ? say`It leans on something withheld` : why;
}
