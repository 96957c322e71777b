import type { Id } from "../../base/finding.ts";
import type { Standing } from "../../judge/judge.ts";
import type { Text } from "../../base/text/said/said.ts";
import { labelText } from "../../link/names/label.ts";
import type { Reported } from "../report/report.ts";

/** The name of a record with its standing. */
export interface Named {
  readonly id: Id;
  readonly text: Text;
  readonly standing: Standing | null;
}

/** A record by its name, with its standing under the lens. */
export function namedIn({ graph, judgement }: Pick<Reported, "graph" | "judgement">, id: Id): Named {
  return { id, text: labelText(graph, id), standing: judgement.standings.get(id) ?? null };
}
