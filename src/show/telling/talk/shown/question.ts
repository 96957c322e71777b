import { yearWords } from "../../../../base/date/year-words.ts";
import type { Id } from "../../../../base/finding.ts";
import { count, row, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { holdersOf, questionPage } from "../../../pages/question.ts";
import type { Holder } from "../../../pages/question.ts";
import type { Statement } from "../slides.ts";
import { ofCorpus } from "../slides.ts";
import { leftOut, remark } from "./setting.ts";
import type { Setting, Told } from "./setting.ts";

/** Most scholars who are named under an answer; of more, how many. */
const mostNamed = 4;

/** A question as a slide shows it: its answers, how each stands, and who holds it since when. */
export function questionTold({ model }: Setting, id: Id): Told {
  const without = leftOut(model, id);
  const page = without === null ? questionPage(model, id) : null;
  if (page === null) return { parts: without === null ? [] : [without], about: [] };
  const answers = page.answers.map((answer): Statement => ({
    is: "statement",
    of: answer.claim,
    standing: answer.standing,
    words: ofCorpus(answer.text),
    quoted: false,
    under: heldBy(answer.holders),
  }));
  const parts = [
    ...answers,
    ...laterWords(page.later).map((text) => remark(text, "left-out")),
    ...(answers.length === 0 && page.later === 0 ? [remark(say`Nobody has given an answer yet.`)] : []),
  ];
  return { parts, about: page.answers.flatMap((answer) => positionsFor(model, answer.claim)) };
}

function laterWords(later: number): readonly Text[] {
  if (later === 0) return [];
  return [
    later === 1 ? say`One answer was not yet in print.` : say`${count(later)} answers were not yet in print.`,
  ];
}

/** Who holds a claim, in one line: names with the years of their positions. */
export function heldBy(holders: readonly Holder[]): readonly Text[] {
  if (holders.length === 0) return [];
  const named = holders.slice(0, holders.length > mostNamed ? mostNamed - 1 : mostNamed).map(holderWords);
  const more = holders.length - named.length;
  return [more > 0 ? say`${row(named, "comma")} and ${count(more)} more` : say`${row(named, "comma")}`];
}

/** Who holds a claim under a model, in one line. */
export function heldIn({ model }: Setting, claim: Id): readonly Text[] {
  return heldBy(holdersOf(model.graph, model.judgement, claim));
}

function holderWords({ name, since, until }: Holder): Text {
  if (until !== null && since !== null) return say`${name} ${yearWords(since)} (until ${yearWords(until)})`;
  return since === null ? name : say`${name} ${yearWords(since)}`;
}

/** The positions that hold a claim: what they are taken from is what a slide of it cites. */
export function positionsFor(model: Setting["model"], claim: Id): readonly Id[] {
  const { graph, judgement } = model;
  return graph
    .list("positions")
    .filter(({ id, values }) => values.claim === claim && values.stance === "holds" && judgement.counts(id))
    .map(({ id }) => id);
}
