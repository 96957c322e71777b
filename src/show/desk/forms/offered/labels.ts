import type { Id } from "../../../../base/finding.ts";
import type { Graph } from "../../../../link/graph.ts";
import { say } from "../../../../base/text/said/said.ts";
import { labelText } from "../../../../link/names/label.ts";
import type { Field, Fields, ListName } from "../../../../read/grammar/field.ts";
import { kindWords } from "../../../../read/grammar/words.ts";
import { withheldIn } from "../../../withhold.ts";
import type { Choice } from "./choices.ts";
import { nameIn } from "./named.ts";
import { isEnteredList } from "../filled/entered.ts";
import type { Entered, EnteredMap } from "../filled/entered.ts";
import { fieldsIn, helpFor } from "../layout.ts";
import { isMasked } from "../filled/masked.ts";

/** What the records and sources are called that a form names; a sign for something withheld says no more than that. */
export function labelsIn(graph: Graph, list: ListName, entered: EnteredMap): readonly Choice[] {
  const ids = new Set<Id>();
  inMap(list, fieldsIn(list), entered, ids);
  return [...ids].flatMap((id) => choiceOf(graph, id) ?? []);
}

/** A record or source as it is named where it was chosen; null where there is none. */
export function choiceOf(graph: Graph, id: Id): Choice | null {
  if (isMasked(id) || withheldIn(graph)(id)) return { id, label: say`something withheld`, kind: null };
  const record = graph.records.get(id);
  if (record) return { id, label: nameIn(graph, record), kind: kindWords[record.list] };
  return graph.sources.has(id) ? { id, label: labelText(graph, id), kind: kindWords.sources } : null;
}

function inMap(list: ListName, fields: Fields, entered: EnteredMap, ids: Set<Id>): void {
  for (const [name, value] of Object.entries(entered)) {
    const field = Object.hasOwn(fields, name) ? fields[name] : undefined;
    if (field) inField(list, name, field, value, ids);
  }
}

function inField(list: ListName, name: string, field: Field, entered: Entered, ids: Set<Id>): void {
  if (typeof entered !== "string") {
    if (isEnteredList(entered)) for (const one of entered) inField(list, name, field, one, ids);
    else if (field.type === "numberMap" || field.type === "probability") {
      if (typeof entered["name"] === "string") ids.add(entered["name"]);
    } else if (field.type === "group" || field.type === "items") inMap(list, field.fields, entered, ids);
    return;
  }
  const refers =
    field.type === "ref" || field.type === "refs" || helpFor(list, name, field)?.from === "records";
  if (refers) ids.add(entered);
  else if (field.type === "citation" || field.type === "citations") ids.add(entered.split(/\s/u)[0] ?? "");
}
