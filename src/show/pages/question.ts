import type { Id } from "../../base/finding.ts";
import { byYear } from "../../base/order.ts";
import { stances } from "../../judge/argument.ts";
import type { Judgement, Standing } from "../../judge/judge.ts";
import type { Said, Text } from "../../base/text/said/said.ts";
import { reasonOf } from "../../judge/explain/reason.ts";
import { reasonSaid } from "../../judge/explain/sentence.ts";
import { labelOf, labelText } from "../../link/names/label.ts";
import type { Graph } from "../../link/graph.ts";
import type { Reported } from "../report/report.ts";
import { withheldIn } from "../withhold.ts";

/** Who holds an answer, and from when until when, as the sources show it. */
export interface Holder {
  readonly scholar: Id;
  readonly name: Text;
  /** Astronomical years; null where not known, or where the position is still held. */
  readonly since: number | null;
  readonly until: number | null;
}

/** One answer as the page shows it. */
export interface Answer {
  readonly claim: Id;
  readonly text: string;
  readonly standing: Standing;
  readonly why: Said;
  readonly holders: readonly Holder[];
}

/** A question with its answers as they stand, and the years in which the dispute moved. */
export interface QuestionPage {
  readonly id: Id;
  readonly text: string;
  readonly exclusive: boolean;
  readonly answers: readonly Answer[];
  /** Answers that nothing in print names yet. */
  readonly later: number;
  /** Years in which something about this question, or anything it rests on, came into print. */
  readonly years: readonly number[];
}

/** The page of one question under the model's lens. */
export function questionPage(model: Reported, id: Id): QuestionPage | null {
  const { graph, judgement, derivations } = model;
  const question = graph.records.get(id);
  const withheld = withheldIn(graph);
  if (question?.list !== "questions" || withheld(id)) return null;
  const { text, exclusive = true } = question.values;
  const answers = question.values.answers.filter((claim) => !withheld(claim));
  const listed = answers.filter((claim) => judgement.counts(claim) && judgement.listed(claim));
  return {
    id,
    text,
    exclusive,
    answers: listed.map((claim) => ({
      claim,
      text: claimText(graph, claim),
      standing: judgement.standings.get(claim) ?? "unsupported",
      why: reasonSaid(graph, reasonOf(graph, derivations, judgement, claim)),
      holders: holdersOf(graph, judgement, claim),
    })),
    later: answers.length - listed.length,
    years: printYears(graph),
  };
}

/** A claim's whole text. */
export function claimText(graph: Graph, claim: Id): string {
  const record = graph.records.get(claim);
  return record?.list === "claims" ? record.values.text : labelOf(graph, claim);
}

/** A stance with its place among all of them. */
type Placed = ReturnType<typeof stances>[number] & { readonly place: number };
const placed = new WeakMap<
  Judgement,
  { readonly graph: Graph; readonly byClaim: ReadonlyMap<Id, readonly Placed[]> }
>();

/** The stances that may be shown, by their claims. */
function stancesIn(graph: Graph, judgement: Judgement): ReadonlyMap<Id, readonly Placed[]> {
  const known = placed.get(judgement);
  if (known?.graph === graph) return known.byClaim;
  const withheld = withheldIn(graph);
  const byClaim = new Map<Id, Placed[]>();
  stances(graph, (id) => judgement.counts(id) && !withheld(id)).forEach((one, place) => {
    if (withheld(one.scholar)) return;
    const those = byClaim.get(one.claim);
    if (those) those.push({ ...one, place });
    else byClaim.set(one.claim, [{ ...one, place }]);
  });
  placed.set(judgement, { graph, byClaim });
  return byClaim;
}

/** Everybody who held a claim: since the first position that holds it, until the first later one that does not; of positions that may be shown. */
export function holdersOf(graph: Graph, judgement: Judgement, claim: Id): readonly Holder[] {
  const byClaim = stancesIn(graph, judgement);
  const rivals = new Set(graph.rivalsOf(claim));
  rivals.delete(claim);
  const all = [
    ...(byClaim.get(claim) ?? []),
    ...[...rivals].flatMap((rival) => byClaim.get(rival)?.filter((one) => one.stance === "holds") ?? []),
  ]
    .sort((a, b) => a.place - b.place)
    .sort((a, b) => byYear("first")(a.year, b.year));
  const scholars = [
    ...new Set(all.filter((one) => one.claim === claim && one.stance === "holds").map((one) => one.scholar)),
  ];
  return scholars
    .map((scholar): Holder => {
      const own = all.filter((one) => one.scholar === scholar);
      const first = own.findIndex((one) => one.claim === claim && one.stance === "holds");
      const since = own[first]?.year ?? null;
      // Who says two things in one year contradicts themselves, and has left neither.
      const left = own
        .slice(first + 1)
        .find(
          (one) =>
            (one.claim !== claim || one.stance !== "holds") &&
            (since === null || one.year === null || one.year > since),
        );
      return {
        scholar,
        name: labelText(graph, scholar),
        since,
        until: left?.year ?? null,
      };
    })
    .sort((a, b) => byYear("first")(a.since, b.since));
}

/** The years in which sources that may be shown came into print, in order. */
export function printYears(graph: Graph): readonly number[] {
  const withheld = withheldIn(graph);
  const years = new Set([...graph.sources].flatMap(([key, { year }]) => (withheld(key) ? [] : (year ?? []))));
  return [...years].sort((a, b) => a - b);
}
