import type { Id } from "../../base/finding.ts";
import { count, say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import { kindWords } from "../../read/grammar/words.ts";
import type { WrittenMap } from "../../read/edit/written.ts";
import type { Graph } from "../graph.ts";
import { labelText } from "../names/label.ts";
import type { Action } from "./action.ts";

/** What a step is called where it can be undone: what is done, to which kind of record, and its first words. */
export function stepOf(graph: Graph, action: Action): Text {
  switch (action.do) {
    case "add": {
      const [first] = action.records;
      const kind = kindWords[action.list];
      if (action.records.length === 1 && first) return say`New ${kind}: ${wordsOf(first)}`;
      return say`${count(action.records.length)} new records of one kind: ${kind}`;
    }
    case "change":
      return say`Change to ${named(graph, action.id)}`;
    case "take": {
      const [first] = action.ids;
      if (action.ids.length === 1 && first !== undefined) return say`Take out ${named(graph, first)}`;
      return say`Take out ${count(action.ids.length)} records`;
    }
    case "rename":
      return say`Rename ${action.id} to ${action.to}`;
    case "together": {
      const [first, ...others] = action.actions;
      if (action.called !== undefined || first === undefined) return action.called ?? say`Nothing`;
      const begun = stepOf(graph, first);
      if (others.length === 0) return begun;
      if (others.length === 1) return say`${begun}, and another change`;
      return say`${begun}, and ${count(others.length)} more changes`;
    }
    case "setting":
      return say`Change of the setting ${action.path.join(" > ")}`;
  }
}

function named(graph: Graph, id: Id): Text {
  const record = graph.records.get(id);
  if (!record) return id;
  const label = labelText(graph, id);
  return say`${kindWords[record.list]}: ${typeof label === "string" ? shortened(label) : label}`;
}

function wordsOf(record: WrittenMap): Text {
  for (const name of [
    "short",
    "name",
    "title",
    "text",
    "method",
    "words",
    "quote",
    "where",
    "dimension",
    "claim",
    "at",
    "id",
  ]) {
    const said = record[name];
    if (typeof said === "string" && said.trim() !== "") return shortened(said.trim());
  }
  return say`without words`;
}

const longest = 60;

function shortened(words: string): string {
  const line = words.replace(/\s+/gu, " ");
  if (line.length <= longest) return line;
  const cut = line.slice(0, longest);
  return `${cut.slice(0, Math.max(cut.lastIndexOf(" "), 30)).trimEnd()}…`;
}
