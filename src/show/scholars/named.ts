import type { Id } from "../../base/finding.ts";
import type { Standing } from "../../judge/judge.ts";
import { labelOf } from "../../link/names/label.ts";
import type { Reported } from "../report/report.ts";

/** The name of a record with its standing. */
export interface Named {
  readonly id: Id;
  readonly text: string;
  readonly standing: Standing | null;
}

/** A record by its name, with its standing under the lens. */
export function namedIn({ graph, judgement }: Pick<Reported, "graph" | "judgement">, id: Id): Named {
  return { id, text: labelOf(graph, id), standing: judgement.standings.get(id) ?? null };
}
