import type { Id } from "../../../base/finding.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { madeBefore } from "../../../link/edit/action.ts";
import type { Action, RecordAction } from "../../../link/edit/action.ts";
import type { AnyLinked, Graph } from "../../../link/graph.ts";
import { ownWritten } from "../../../read/edit/head.ts";
import { isList } from "../../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../../read/edit/written.ts";
import { withheldIn } from "../../withhold.ts";
import { takenInHand } from "./begun.ts";
import { namedBy, nothingInHand } from "./draft.ts";
import type { ArgumentDraft } from "./draft.ts";

/** What saving an argument in hand does, all of it one step; or why it cannot be saved yet. */
export function actionOf(graph: Graph, draft: ArgumentDraft): Action | { readonly problem: Text } {
  const { aim, because } = draft;
  const problem = problemWith(graph, draft);
  if (problem !== null) return { problem };
  const made: RecordAction[] = [];
  if (aim.to === "new") {
    made.push({ do: "add", list: "claims", records: [{ text: oneLine(aim.text) }] });
    const question = aim.question === null ? undefined : graph.records.get(aim.question);
    if (question) made.push(withAnswer(question));
  }
  // An answer may be put down before anything is put under it.
  if (because.length > 0 || draft.of !== null) made.push(argumentOf(graph, draft));
  return { do: "together", actions: made };
}

function problemWith(graph: Graph, draft: ArgumentDraft): Text | null {
  const { of, aim, because } = draft;
  const withheld = withheldIn(graph);
  const there = (id: Id): boolean => (graph.records.has(id) || graph.sources.has(id)) && !withheld(id);
  if (!namedBy(draft).every(there))
    return say`Missing record that the argument names, expected it in the corpus`;
  if (aim.to === "nothing") return say`Missing conclusion, expected a claim, or something that it is against`;
  if (aim.to === "new" && aim.text.trim() === "")
    return say`Missing words of the new claim, expected a sentence`;
  const answer = aim.to === "new" && aim.question !== null && of === null;
  if (because.length === 0 && !answer)
    return say`Missing premise, expected at least one record that the argument leans on`;
  return null;
}

/** A question with the new claim, the first that the step makes, among its answers. */
function withAnswer(question: AnyLinked): RecordAction {
  const seen = ownWritten(question);
  const answers = [...listOf(seen["answers"]), madeBefore(0)];
  return { do: "change", id: question.id, seen, values: { ...seen, answers } };
}

function argumentOf(graph: Graph, draft: ArgumentDraft): RecordAction {
  const before = draft.of === null ? undefined : graph.records.get(draft.of);
  if (!before) return { do: "add", list: "arguments", records: [fieldsOf(draft, nothingInHand, {})] };
  const seen = ownWritten(before);
  const shown = takenInHand(graph, before.id) ?? nothingInHand;
  return { do: "change", id: before.id, seen, values: fieldsOf(draft, shown, seen) };
}

/** The fields of an argument: what no page shows of them stays, and those that the hand does not hold are as they were. */
function fieldsOf(draft: ArgumentDraft, shown: ArgumentDraft, seen: WrittenMap): WrittenMap {
  const { aim } = draft;
  const targets = shown.aim.to === "against" ? shown.aim.ids : [];
  const listed = (name: string, was: readonly string[], now: readonly string[]): readonly Written[] =>
    joined(listOf(seen[name]), was, now);
  const ours: Readonly<Record<string, Written | null>> = {
    because: listed("because", shown.because, draft.because),
    therefore: aim.to === "claim" ? aim.id : aim.to === "new" ? madeBefore(0) : null,
    against: aim.to === "against" ? single(listed("against", targets, aim.ids)) : null,
    text: said(draft.text),
    scheme: said(draft.scheme),
    strength: said(draft.strength),
    "why-strength": said(draft.why),
    by: single(listed("by", shown.by, draft.by)),
    from: single(listed("from", shown.from, draft.from)),
  };
  const all = { ...seen, ...ours };
  return Object.fromEntries(
    Object.entries(all).flatMap(([name, value]) => (value === null ? [] : [[name, value]])),
  );
}

function listOf(value: Written | undefined): readonly Written[] {
  return value === undefined ? [] : typeof value === "string" ? [value] : isList(value) ? value : [];
}

function single(values: readonly Written[]): Written | null {
  return values.length > 1 ? values : (values[0] ?? null);
}

const said = (text: string): string | null => (text.trim() === "" ? null : oneLine(text));
/** Words typed in a few lines are one sentence. */
const oneLine = (text: string): string => text.trim().replace(/\s+/gu, " ");

/** A list in the order it had, without what was shown of it and is there no more, and with what is new. */
function joined(
  before: readonly Written[],
  shown: readonly string[],
  now: readonly string[],
): readonly Written[] {
  const kept = before.filter((one) => typeof one !== "string" || now.includes(one) || !shown.includes(one));
  return [...kept, ...now.filter((one) => !kept.includes(one))];
}
