import type { Finding, Id } from "../../../base/finding.ts";
import type { Plugin } from "../../../plugin.ts";
import type { WrittenMap } from "../../../read/edit/written.ts";
import type { Reported } from "../../report/report.ts";
import { withheldIn } from "../../withhold.ts";
import { proposedTalk } from "./proposed.ts";

/** A talk in the list of talks. */
export interface TalkLine {
  readonly id: Id;
  readonly title: string;
  readonly steps: number;
}

/** A first talk on a question. */
export interface Proposal {
  readonly question: Id;
  readonly talk: WrittenMap;
}

/** The talks of a corpus, the questions for each of which a first one can be proposed, and the one that was asked for. */
export interface TalksPage {
  readonly talks: readonly TalkLine[];
  readonly questions: readonly { readonly id: Id; readonly text: string }[];
  /** Null where none was asked for, or on no question that may be shown. */
  readonly proposed: Proposal | null;
}

/** The page of all talks that may be shown, with a proposed one on the question that is asked for. */
export function talksPage(
  model: Reported,
  { findings, plugins }: { readonly findings: readonly Finding[]; readonly plugins: readonly Plugin[] },
  question: Id | null,
): TalksPage {
  const { graph } = model;
  const withheld = withheldIn(graph);
  const talk = question === null ? null : proposedTalk({ model, findings, plugins }, question);
  return {
    talks: graph
      .list("talks")
      .filter(({ id }) => !withheld(id))
      .map(({ id, values }) => ({ id, title: values.title, steps: values.steps.length })),
    questions: graph
      .list("questions")
      .filter(({ id }) => !withheld(id))
      .map(({ id, values }) => ({ id, text: values.text })),
    proposed: question === null || talk === null ? null : { question, talk },
  };
}
