import type { Id } from "../../../base/finding.ts";
import type { Action } from "../../../link/edit/action.ts";
import type { Graph } from "../../../link/graph.ts";
import { ownWritten } from "../../../read/edit/head.ts";
import { withheldIn } from "../../withhold.ts";

/** What puts a note on a record, behind the note it has; null where there is no such record, or it is withheld. */
export function noteOn(graph: Graph, id: Id, text: string): Action | null {
  const record = graph.records.get(id);
  if (!record || withheldIn(graph)(id)) return null;
  const seen = ownWritten(record);
  const before = seen["note"];
  const note = typeof before === "string" && before.trim() !== "" ? `${before.trim()} ${text}` : text;
  return { do: "change", id, seen, values: { ...seen, note } };
}
