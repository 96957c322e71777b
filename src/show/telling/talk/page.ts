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

/** The talks of a corpus, and a first one proposed for each question. */
export interface TalksPage {
  readonly talks: readonly TalkLine[];
  readonly proposed: readonly { readonly question: Id; readonly text: string; readonly talk: WrittenMap }[];
}

/** The page of all talks that may be shown. */
export function talksPage(
  model: Reported,
  findings: readonly Finding[],
  plugins: readonly Plugin[],
): TalksPage {
  const { graph } = model;
  const withheld = withheldIn(graph);
  return {
    talks: graph
      .list("talks")
      .filter(({ id }) => !withheld(id))
      .map(({ id, values }) => ({ id, title: values.title, steps: values.steps.length })),
    proposed: graph.list("questions").flatMap(({ id, values }) => {
      const talk = proposedTalk({ model, findings, plugins }, id);
      return talk === null ? [] : [{ question: id, text: values.text, talk }];
    }),
  };
}
