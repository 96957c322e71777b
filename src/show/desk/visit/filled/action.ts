import { first, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { Action, RecordAction } from "../../../../link/edit/action.ts";
import type { Graph } from "../../../../link/graph.ts";
import { examinationOf } from "../../../../link/suppose/examination.ts";
import type { VisitAsked } from "../asked.ts";
import type { Coming, VisitList } from "./records.ts";

const lists: readonly VisitList[] = ["measurements", "observations", "images", "arguments"];

/** All that a visit adds, as one step; null where it adds nothing. */
export function actionFor(graph: Graph, asked: VisitAsked, { records }: Coming, day: string): Action | null {
  const actions = lists.flatMap((list): readonly RecordAction[] =>
    records[list].length === 0 ? [] : [{ do: "add", list, records: records[list] }],
  );
  if (actions.length === 0) return null;
  return { do: "together", actions, called: first(say`Visit of ${day}: ${calledIn(graph, asked)}`) };
}

function calledIn(graph: Graph, { examination, keeper }: VisitAsked): Text {
  return (examination === null ? null : examinationOf(graph, examination)?.method) ?? keeper ?? "";
}
