import type { Id } from "../../../base/finding.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Graph } from "../../../link/graph.ts";
import type { ListName } from "../../../read/grammar/field.ts";
import { kindOf, listNames } from "../../../read/grammar/kinds.ts";
import { spanOf } from "../../../read/record.ts";
import type { WrittenMap } from "../../../read/edit/written.ts";
import type { Companion } from "../../../read/settings/companions/corpus.ts";
import { ownerOfFile } from "../../../read/settings/companions/files.ts";
import { placesIn } from "../../../base/text/lines/place.ts";
import { withheldIn } from "../../withhold.ts";
import { headFrom } from "../../../read/edit/head.ts";
import { enteredFrom, seenOf } from "./filled/asked.ts";
import { keptFields, recordNamed } from "./filled/found.ts";
import type { Found } from "./filled/found.ts";
import type { FormAsked } from "./filled/asked.ts";
import { checkedForm } from "./checked/checked.ts";
import type { Checked } from "./checked/checked.ts";
import { nameIn } from "./offered/named.ts";
import { choiceOf } from "./offered/labels.ts";
import type { Choice } from "./offered/choices.ts";
import { enteredAt, isListed } from "./filled/entered.ts";
import type { Entered, EnteredMap } from "./filled/entered.ts";
import { fieldsIn } from "./layout.ts";

/** What a form is asked for: a list to which a record is to be added, or a record that is to be changed. */
export interface FormWanted {
  readonly list: string | null;
  readonly record: Id | null;
  /** What is known of a new record already: names of fields with values. */
  readonly presets: readonly (readonly [name: string, value: string])[];
}

/** A form as it is opened. */
export interface FormPage extends Pick<FormAsked, "list" | "id" | "seen" | "entered"> {
  /** What was known of a new record when its form was asked for. */
  readonly presets: FormWanted["presets"];
  readonly singular: string;
  /** What the record is called; null for a new one. */
  readonly title: Text | null;
  /** Fields that are recorded and kept out of every output, this form among them. */
  readonly kept: readonly string[];
  /** Where the record is said to be from by the head of its file. */
  readonly head: Choice | null;
  readonly where: { readonly file: string; readonly line: number } | null;
  /** The other corpus that the record is taken from: it is changed in that one's folder alone. */
  readonly takenFrom: Companion | null;
  /** The question of which a new claim becomes an answer, with what it says now. */
  readonly answers: { readonly id: Id; readonly text: string; readonly seen: WrittenMap } | null;
  readonly checked: Checked;
}

/** The form that is asked for; null where there is no such list, or no record that may be shown. */
export function formPage(
  graph: Graph,
  texts: ReadonlyMap<string, string>,
  { list, record: id, presets }: FormWanted,
): FormPage | null {
  if (id !== null) {
    const record = recordNamed(graph, texts, id);
    return record && formOf(graph, texts, record);
  }
  const name = listNames.find((one) => one === list);
  return name === undefined ? null : newForm(graph, name, presets);
}

function formOf(graph: Graph, texts: ReadonlyMap<string, string>, record: Found): FormPage {
  const { list, id } = record;
  const loaded = graph.records.get(id);
  const seen = seenOf(graph, record);
  const asked: FormAsked = { list, id, seen, entered: enteredFrom(list, seen) };
  const head = headFrom(record);
  const { file, line } = placesIn(texts)(spanOf(record));
  return {
    ...asked,
    presets: [],
    singular: kindOf(list).singular,
    title: loaded ? nameIn(graph, loaded) : id,
    kept: keptFields(graph, record),
    head: head === null ? null : choiceOf(graph, head.split(/\s/u)[0] ?? ""),
    where: { file, line },
    takenFrom: ownerOfFile(graph.companions, record.file),
    answers: null,
    checked: checkedForm(graph, asked),
  };
}

function newForm(graph: Graph, list: ListName, presets: FormWanted["presets"]): FormPage {
  const asked: FormAsked = { list, id: null, seen: null, entered: preset(list, presets) };
  const answered = presets.find(([name]) => name === "answer-to")?.[1] ?? "";
  const question = list === "claims" ? graph.records.get(answered) : undefined;
  return {
    ...asked,
    presets,
    singular: kindOf(list).singular,
    title: null,
    kept: [],
    head: null,
    where: null,
    takenFrom: null,
    answers:
      question?.list === "questions" && !withheldIn(graph)(question.id)
        ? { id: question.id, text: question.values.text, seen: seenOf(graph, question) }
        : null,
    checked: checkedForm(graph, asked),
  };
}

/** Fields of a new record that are known when its form is opened. */
function preset(list: ListName, presets: FormWanted["presets"]): EnteredMap {
  const fields = fieldsIn(list);
  let entered: EnteredMap = {};
  for (const [name, value] of presets) {
    const field = Object.hasOwn(fields, name) ? fields[name] : undefined;
    if (!field || ["items", "group", "named", "textMap", "numberMap", "json"].includes(field.type)) continue;
    const before = enteredAt(entered, name);
    const next: Entered = isListed(field)
      ? [...(Array.isArray(before) ? (before as readonly Entered[]) : []), value]
      : value;
    entered = { ...entered, [name]: next };
  }
  return entered;
}
