import type { Finding, Id } from "../../base/finding.ts";
import type { Standing } from "../../judge/judge.ts";
import type { Text } from "../../base/text/said/said.ts";
import { labelText } from "../../link/names/label.ts";
import { kindOf, listNames } from "../../read/grammar/kinds.ts";
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
  readonly findings: number;
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

/** Everything in a corpus by kind, under the model's lens. */
export function indexOf({ graph, judgement }: Pick<Reported, "graph" | "judgement">): readonly IndexKind[] {
  const withheld = withheldIn(graph);
  const entry = (id: Id): IndexEntry => ({
    id,
    text: labelText(graph, id),
    standing: judgement.standings.get(id) ?? null,
  });
  const kinds = listNames.flatMap((list) => {
    const records = graph.list(list).filter((one) => judgement.counts(one.id) && !withheld(one.id));
    const shown = list === "claims" ? records.filter((one) => judgement.listed(one.id)) : records;
    return shown.length > 0 ? [{ name: plural(list), entries: shown.map((one) => entry(one.id)) }] : [];
  });
  return [
    ...kinds,
    { name: "sources", entries: [...graph.sources.keys()].filter((key) => !withheld(key)).map(entry) },
  ];
}

function plural(list: (typeof listNames)[number]): string {
  return kindOf(list).singular === "search" ? "searches" : list;
}
