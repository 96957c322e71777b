import type { Id } from "../../base/finding.ts";
import type { Standing } from "../../judge/judge.ts";
import type { Graph } from "../../link/graph.ts";
import type { Text } from "../../base/text/said/said.ts";
import { labelOf, labelText } from "../../link/names/label.ts";
import { claimText } from "../pages/question.ts";
import type { Reported } from "../report/report.ts";
import { claimsByQuestion } from "./rows.ts";
import type { Left, StanceName, Taken } from "./taken.ts";

/** One scholar's present stance on one claim, and the stances before it with their years. */
export interface Cell {
  readonly scholar: Id;
  readonly position: Id;
  readonly stance: StanceName;
  readonly since: number | null;
  readonly changed: boolean;
  readonly left: Left | null;
  readonly before: readonly { readonly stance: StanceName; readonly year: number | null }[];
}

/** A claim with what each scholar makes of it, in the order of the columns; null where nothing is recorded. */
export interface Row {
  readonly claim: Id;
  readonly short: Text;
  readonly text: string;
  readonly standing: Standing;
  /** It cannot be right together with the claim of the row above. */
  readonly rival: boolean;
  readonly cells: readonly (Cell | null)[];
}

/** The rows of one question; without a question, of claims that bear on none. */
export interface RowGroup {
  readonly question: { readonly id: Id; readonly text: string } | null;
  readonly rows: readonly Row[];
}

/** Claims by scholars: what everybody makes of everything under the lens. */
export interface Matrix {
  readonly groups: readonly RowGroup[];
  /** The scholars of the cells, in their order: where more would be told, those who say something of what is. */
  readonly columns: readonly Id[];
  /** Listed claims without a row: they answer no question and no stance on them is recorded. */
  readonly without: number;
  /** Questions, and the claims that bear on none, that would be told after these; 0 where all are told. */
  readonly more: number;
}

/** How much of a matrix is told: so many questions, or as many as come to so many cells, but one. */
export type Most = { readonly questions: number } | { readonly cells: number };

/** The matrix for scholars in the order given; answers always have a row, other claims when a stance is recorded. */
export function matrixOf(
  model: Reported,
  scholars: readonly Id[],
  taken: readonly Taken[],
  most: Most = { questions: Infinity },
): Matrix {
  const { graph, judgement } = model;
  const columns = new Set(scholars);
  const speakers = new Map<Id, Id[]>();
  for (const { scholar, claim } of taken) {
    if (!columns.has(scholar)) continue;
    const those = speakers.get(claim);
    if (those) those.push(scholar);
    else speakers.set(claim, [scholar]);
  }
  let without = 0;
  let more = 0;
  let rows = 0;
  let speaking: ReadonlySet<Id> = new Set();
  const told: { readonly question: Id | null; readonly claims: readonly Id[] }[] = [];
  for (const { question, claims: all } of claimsByQuestion(graph, judgement)) {
    const answers = answersOf(graph, question);
    const claims = all.filter((claim) => answers.includes(claim) || speakers.has(claim));
    without += all.length - claims.length;
    if (claims.length === 0) continue;
    const joined = new Set([...speaking, ...claims.flatMap((claim) => speakers.get(claim) ?? [])]);
    const isFull =
      "questions" in most
        ? told.length >= most.questions
        : told.length > 0 && (rows + claims.length) * joined.size > most.cells;
    if (more > 0 || isFull) {
      more++;
      continue;
    }
    told.push({ question, claims });
    rows += claims.length;
    speaking = joined;
  }
  const shown = more === 0 || speaking.size === 0 ? scholars : scholars.filter((one) => speaking.has(one));
  const groups = rowGroups(model, shown, taken, told);
  return { groups, columns: shown, without, more };
}

function rowGroups(
  { graph, judgement }: Reported,
  scholars: readonly Id[],
  taken: readonly Taken[],
  told: readonly { readonly question: Id | null; readonly claims: readonly Id[] }[],
): readonly RowGroup[] {
  const cells = new Map(taken.map((one) => [`${one.scholar}\n${one.claim}`, one]));
  const cellAt = (scholar: Id, claim: Id): Cell | null => {
    const one = cells.get(`${scholar}\n${claim}`);
    return one ? cellOf(one) : null;
  };
  return told.map(({ question, claims }) => ({
    question: question === null ? null : { id: question, text: questionText(graph, question) },
    rows: claims.map((claim, place): Row => {
      const above = claims[place - 1];
      return {
        claim,
        short: labelText(graph, claim),
        text: claimText(graph, claim),
        standing: judgement.standings.get(claim) ?? "unsupported",
        rival: above !== undefined && graph.rivalsOf(claim).includes(above),
        cells: scholars.map((scholar) => cellAt(scholar, claim)),
      };
    }),
  }));
}

function cellOf({ scholar, stances, stance, since, changed, left }: Taken): Cell {
  const last = stances.findLastIndex((one) => one.stance !== stance);
  const before = stances.slice(0, last + 1).map((one) => ({ stance: one.stance, year: one.year }));
  const position = stances.at(-1)?.position ?? "";
  return { scholar, position, stance, since, changed, left, before };
}

function answersOf(graph: Graph, question: Id | null): readonly Id[] {
  const record = question === null ? undefined : graph.records.get(question);
  return record?.list === "questions" ? record.values.answers : [];
}

function questionText(graph: Graph, question: Id): string {
  const record = graph.records.get(question);
  return record?.list === "questions" ? record.values.text : labelOf(graph, question);
}
