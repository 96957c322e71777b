import type { Id } from "../../base/finding.ts";
import { kindOf } from "../../read/grammar/kinds.ts";
import type { ListName } from "../../read/grammar/field.ts";
import type { WrittenMap } from "../../read/edit/written.ts";
import type { Graph } from "../graph.ts";
import { labelOf } from "../names/label.ts";
import type { Action } from "./action.ts";

/** What a step is called where it can be undone: what is done, to which kind of record, and its first words. */
export function stepOf(graph: Graph, action: Action): string {
  switch (action.do) {
    case "add": {
      const [first] = action.records;
      if (action.records.length === 1 && first) return `New ${kind(action.list)}: ${wordsOf(first)}`;
      return `${action.records.length} new ${action.list}`;
    }
    case "change":
      return `Change to ${named(graph, action.id)}`;
    case "take": {
      const [first] = action.ids;
      if (action.ids.length === 1 && first !== undefined) return `Take out ${named(graph, first)}`;
      return `Take out ${action.ids.length} records`;
    }
    case "rename":
      return `Rename ${action.id} to ${action.to}`;
    case "setting":
      return `Change of the setting ${action.path.join(" > ")}`;
  }
}

function kind(list: ListName): string {
  return kindOf(list).singular;
}

function named(graph: Graph, id: Id): string {
  const record = graph.records.get(id);
  return record ? `${kind(record.list)}: ${shortened(labelOf(graph, id))}` : id;
}

function wordsOf(record: WrittenMap): string {
  for (const name of ["short", "name", "title", "text", "method", "words", "dimension", "claim", "id"]) {
    const said = record[name];
    if (typeof said === "string" && said.trim() !== "") return shortened(said.trim());
  }
  return "without words";
}

const longest = 60;

function shortened(words: string): string {
  const line = words.replace(/\s+/gu, " ");
  if (line.length <= longest) return line;
  const cut = line.slice(0, longest);
  return `${cut.slice(0, Math.max(cut.lastIndexOf(" "), 30)).trimEnd()}…`;
}
