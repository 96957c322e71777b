import type { Finding, Id } from "../../base/finding.ts";
import type { Standing } from "../../judge/judge.ts";
import type { Text } from "../../base/text/said/said.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import type { Graph } from "../../link/graph.ts";
import { labelText } from "../../link/names/label.ts";
import { kindOf, listNames } from "../../read/grammar/kinds.ts";
import { plainWords } from "../search/fold.ts";
import { shownFindings, withheldIn } from "../withhold.ts";
import type { Reported } from "../report/report.ts";

/** One record in the index. */
export interface IndexEntry {
  readonly id: Id;
  readonly text: Text;
  readonly standing: Standing | null;
}

/** The records of one kind, or the sources. */
export interface IndexKind {
  readonly name: string;
  readonly entries: readonly IndexEntry[];
}

/** The records of one kind by their ids alone. */
export interface StockKind {
  readonly name: string;
  readonly entries: readonly Omit<IndexEntry, "text">[];
}

/** The first records of one kind, of those that are wanted. */
export interface RecordsKind extends IndexKind {
  /** How many there are of the kind, and how many of them are wanted. */
  readonly all: number;
  readonly count: number;
}

/** What the app's frame shows: the title, the questions, and how many findings. */
export interface Contents {
  readonly title: string;
  readonly language: string;
  readonly asOf: number | null;
  readonly questions: readonly {
    readonly id: Id;
    readonly text: string;
    readonly answers: readonly Standing[];
  }[];
  /** Null where they are being looked for the first time. */
  readonly findings: number | null;
  readonly pending: number;
}

/** The contents of a corpus under the model's lens. */
export function contentsOf(model: Reported, findings: readonly Finding[], pending: number): Contents {
  const { graph, judgement, lens } = model;
  const withheld = withheldIn(graph);
  const questions = graph.list("questions").filter(({ id }) => !withheld(id));
  return {
    title: graph.settings.title,
    language: graph.settings.language,
    asOf: lens.asOf ?? null,
    questions: questions.map(({ id, values }) => ({
      id,
      text: values.text,
      answers: values.answers
        .filter((claim) => judgement.listed(claim) && !withheld(claim))
        .map((claim) => judgement.standings.get(claim) ?? "unsupported"),
    })),
    findings: shownFindings(graph, findings).filter((one) => one.accepted === null).length,
    pending,
  };
}

type Judged = Pick<Reported, "graph" | "judgement">;

/** Everything in a corpus by kind, under the model's lens. */
export function indexOf(model: Judged): readonly IndexKind[] {
  return idsByKind(model).map(({ name, ids }) => ({ name, entries: ids.map((id) => entryOf(model, id)) }));
}

/** The ids alone of everything in a corpus, with their standings. */
export function stockOf(model: Judged): readonly StockKind[] {
  const standingOf = (id: Id): Standing | null => model.judgement.standings.get(id) ?? null;
  return idsByKind(model).map(({ name, ids }) => ({
    name,
    entries: ids.map((id) => ({ id, standing: standingOf(id) })),
  }));
}

/** So many records of one kind are told at once. */
const most = 400;

/** The page of records: of each kind the first, with how many there are; those alone that have all of some words. */
export function recordsPage(model: Judged, wanted: string): readonly RecordsKind[] {
  const words = plainWords(wanted).split(/\s+/).filter(Boolean);
  return idsByKind(model).map(({ name, ids }) => {
    const having = words.length === 0 ? ids : ids.filter((id) => hasAll(plainOf(model.graph, id), words));
    return {
      name,
      all: ids.length,
      count: having.length,
      entries: having.slice(0, most).map((id) => entryOf(model, id)),
    };
  });
}

function hasAll(text: string, words: readonly string[]): boolean {
  return words.every((word) => text.includes(word));
}

const plain = new WeakMap<Graph, Map<Id, string>>();

/** What a record is called, with its id, as it is looked through. */
function plainOf(graph: Graph, id: Id): string {
  const texts = plain.get(graph) ?? new Map<Id, string>();
  plain.set(graph, texts);
  const text = texts.get(id) ?? plainWords(`${inEnglish(labelText(graph, id))} ${id}`);
  texts.set(id, text);
  return text;
}

function entryOf({ graph, judgement }: Judged, id: Id): IndexEntry {
  return { id, text: labelText(graph, id), standing: judgement.standings.get(id) ?? null };
}

/** The ids of what may be shown and counts under the lens; sources are the last kind, even where there are none. */
function idsByKind({
  graph,
  judgement,
}: Judged): readonly { readonly name: string; readonly ids: readonly Id[] }[] {
  const withheld = withheldIn(graph);
  const kinds = listNames.flatMap((list) => {
    const records = graph.list(list).filter((one) => judgement.counts(one.id) && !withheld(one.id));
    const shown = list === "claims" ? records.filter((one) => judgement.listed(one.id)) : records;
    return shown.length > 0 ? [{ name: plural(list), ids: shown.map((one) => one.id) }] : [];
  });
  return [...kinds, { name: "sources", ids: [...graph.sources.keys()].filter((key) => !withheld(key)) }];
}

function plural(list: (typeof listNames)[number]): string {
  return kindOf(list).singular === "search" ? "searches" : list;
}
