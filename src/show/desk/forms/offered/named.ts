import type { AnyLinked, Graph } from "../../../../link/graph.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { labelText } from "../../../../link/names/label.ts";

/** What a record is called where it is chosen or changed: its whole sentence where it is one, since short forms are easily mistaken. */
export function nameIn(graph: Graph, record: AnyLinked): Text {
  const { list, values } = record;
  return list === "claims" || list === "questions" || list === "observations"
    ? values.text
    : labelText(graph, record.id);
}
