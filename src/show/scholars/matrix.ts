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
  const cells = new Map(taken.map((one) => [`${one.scholar}\n${one.claim}`, cellOf(one)]));
  const columns = new Set(scholars);
  const known = new Set(taken.flatMap(({ scholar, claim }) => (columns.has(scholar) ? [claim] : [])));
  let without = 0;
  let more = 0;
  let told = 0;
  let cellsTold = 0;
  const isFull = (rows: number): boolean =>
    "questions" in most
      ? told >= most.questions
      : told > 0 && cellsTold + rows * scholars.length > most.cells;
  const groups = claimsByQuestion(graph, judgement).flatMap((group): readonly RowGroup[] => {
    const answers = answersOf(graph, group.question);
    const rows: Row[] = [];
    const claims = group.claims.filter((claim) => answers.includes(claim) || known.has(claim));
    without += group.claims.length - claims.length;
    if (claims.length > 0 && (more > 0 || isFull(claims.length))) more++;
    else if (claims.length > 0) {
      told++;
      cellsTold += claims.length * scholars.length;
    }
    for (const claim of more > 0 ? [] : claims) {
      const row = scholars.map((scholar) => cells.get(`${scholar}\n${claim}`) ?? null);
      const above = rows.at(-1)?.claim;
      rows.push({
        claim,
        short: labelText(graph, claim),
        text: claimText(graph, claim),
        standing: judgement.standings.get(claim) ?? "unsupported",
        rival: above !== undefined && graph.rivalsOf(claim).includes(above),
        cells: row,
      });
    }
    const { question } = group;
    const head = question === null ? null : { id: question, text: questionText(graph, question) };
    return rows.length > 0 ? [{ question: head, rows }] : [];
  });
  return { groups, without, more };
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
