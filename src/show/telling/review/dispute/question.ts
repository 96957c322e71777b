import { yearWords } from "../../../../base/date/year-words.ts";
import type { Id } from "../../../../base/finding.ts";
import { byYear } from "../../../../base/order.ts";
import { count, countInWords, first, say } from "../../../../base/text/said/said.ts";
import type { Said, Text } from "../../../../base/text/said/said.ts";
import { withoutStop } from "../../../../link/names/label.ts";
import { claimText, holdersOf } from "../../../pages/question.ts";
import type { Block, Inlines } from "../../blocks/block.ts";
import type { Group, Sight } from "../desk.ts";
import { howTheyStand, standingIn, standingsMean } from "./standings.ts";
import { aside, citesFor } from "../pieces/cites.ts";
import { readingsOf } from "../searches/readings.ts";
import { claimInside, heading, line, listed, paragraph, words } from "../pieces/inlines.ts";

export { standingIn } from "./standings.ts";

/** What is asked, what has been answered, and how each answer stands: the first page of a review. */
export function questionSection(sight: Sight): readonly Block[] {
  const groups = sight.groups.filter((one) => one.question !== null && one.answers.length > 0);
  if (groups.length === 0) return [];
  const several = groups.length > 1;
  return [
    ...paragraph([basis(sight), several ? line(howMany(groups.length)) : []]),
    ...groups.flatMap((group, place) => [
      ...(several ? [heading(2, [words(group.text, sight.language)])] : []),
      ...questionBlocks(sight, group, several, place === 0),
    ]),
  ];
}

function howMany(questions: number): Said {
  return say`The dispute turns on ${countInWords(questions)} questions.`;
}

/** How much literature it rests on, and of which years: works that records were taken from, as the flow of records counts them. */
function basis(sight: Sight): Inlines {
  const sources = readingsOf(sight).drawnOn.flatMap((key) => sight.graph.sources.get(key) ?? []);
  const years = sources.flatMap(({ year }) => year ?? []).toSorted((a, b) => a - b);
  const [from, to] = [years[0], years.at(-1)];
  if (from === undefined || to === undefined || sources.length < 2) return [];
  return from === to
    ? [say`This review draws on a literature of ${count(sources.length)} works of ${yearWords(from)}.`]
    : [
        say`This review draws on a literature of ${count(sources.length)} works from ${yearWords(from)} to ${yearWords(to)}.`,
      ];
}

function questionBlocks(sight: Sight, group: Group, several: boolean, explains: boolean): readonly Block[] {
  const { answers, exclusive, text } = group;
  const inOrder = answers.toSorted((a, b) => byYear("last")(inPrint(sight, a), inPrint(sight, b)));
  const question: Inlines = several ? [] : [{ is: "emphasis", of: [words(text, sight.language)] }];
  const given = listed(
    inOrder.map((claim) => [
      ...claimInside(sight, claim),
      ...aside(citesFor(sight, firstSaid(sight, claim))),
    ]),
  );
  const opening: Inlines =
    answers.length === 1
      ? [say`One answer has been given: `, ...given, "."]
      : [manyAnswers(answers.length, exclusive, someRival(sight, answers)), ": ", ...given, "."];
  const gist: Inlines = [
    say`On the record as it is, `,
    ...howTheyStand(sight, inOrder),
    ".",
    ...(explains ? [{ is: "note" as const, of: [standingsMean] }] : []),
  ];
  return [...paragraph([question, opening, gist]), answerTable(sight, group, inOrder)];
}

/** Whether two answers are declared to exclude each other, whatever their question allows. */
function someRival({ graph }: Sight, answers: readonly Id[]): boolean {
  return answers.some((claim) => graph.rivalsOf(claim).some((rival) => answers.includes(rival)));
}

function manyAnswers(n: number, exclusive: boolean, rival: boolean): Said {
  if (!exclusive && !rival)
    return first(say`${countInWords(n)} answers have been given, which may be right together`);
  if (!exclusive && n > 2)
    return first(say`${countInWords(n)} answers have been given, not all of which can be right together`);
  return n === 2
    ? say`Two answers have been given, which cannot both be right`
    : first(say`${countInWords(n)} answers have been given, of which no two can both be right`);
}

/** The record by which a claim came into print: that of its wording, or the first position on it. */
function firstSaid({ graph, shown }: Sight, claim: Id): Id {
  const positions = graph.list("positions").filter(({ id, values }) => shown(id) && values.claim === claim);
  const year = (id: Id): number | null => graph.provenance(id).year;
  const [first = claim] = [claim, ...positions.map(({ id }) => id)].toSorted((a, b) =>
    byYear("last")(year(a), year(b)),
  );
  return first;
}

function inPrint(sight: Sight, claim: Id): number | null {
  return sight.graph.provenance(firstSaid(sight, claim)).year;
}

function answerTable(sight: Sight, { text }: Group, answers: readonly Id[]): Block {
  return {
    is: "table",
    caption: [say`The answers to the question: `, words(text, sight.language)],
    head: [say`Answer`, say`In print since`, say`Held by`, say`Standing`].map(line),
    rows: answers.map((claim): readonly Inlines[] => {
      const year = inPrint(sight, claim);
      return [
        [words(withoutStop(claimText(sight.graph, claim)), sight.language)],
        year === null ? [] : [yearWords(year)],
        holders(sight, claim),
        [{ is: "standing", standing: standingIn(sight, claim) }],
      ];
    }),
    figures: [],
  };
}

/** Who held a claim, since when and until when. */
export function holders({ graph, model }: Sight, claim: Id): Inlines {
  const told = holdersOf(graph, model.judgement, claim).map(({ name, since, until }): Text => {
    if (since === null) return until === null ? name : say`${name} (until ${yearWords(until)})`;
    if (until === since) return say`${name} (in ${yearWords(since)})`;
    if (until === null) return say`${name} (since ${yearWords(since)})`;
    return say`${name} (${yearWords(since)} to ${yearWords(until)})`;
  });
  return listed(told.map((one) => [one]));
}
