import type { Id } from "../../base/finding.ts";
import { byYear } from "../../base/order.ts";
import type { Standing } from "../../judge/judge.ts";
import type { Text } from "../../base/text/said/said.ts";
import { labelText } from "../../link/names/label.ts";
import { printYears } from "../pages/question.ts";
import type { Reported } from "../report/report.ts";
import { withheldIn } from "../withhold.ts";
import { activeYears } from "./active.ts";
import type { Years } from "./active.ts";
import { matrixOf } from "./matrix.ts";
import type { Matrix, Most } from "./matrix.ts";
import { takenIn } from "./taken.ts";
import type { Taken } from "./taken.ts";

/** A claim that a scholar holds at present. */
export interface HeldNow {
  readonly claim: Id;
  readonly text: Text;
  readonly standing: Standing;
  readonly since: number | null;
}

/** One scholar in the list. */
export interface ScholarLine {
  readonly id: Id;
  readonly name: Text;
  /** Null when nothing of theirs has a year. */
  readonly years: Years | null;
  readonly holds: readonly HeldNow[];
  /** Claims on which a stance of theirs is recorded. */
  readonly claims: number;
  /** Claims on which they changed their stance, or which they left for a rival. */
  readonly changed: number;
}

/** Everybody who is in print by the year of the lens, with what each makes of each claim. */
export interface ScholarsPage {
  readonly scholars: readonly ScholarLine[];
  /** Scholars of the corpus of whom nothing is in print yet. */
  readonly later: number;
  readonly matrix: Matrix;
  /** Years in which sources came into print, for the rod. */
  readonly years: readonly number[];
}

/** The page of all scholars, in the order in which they came into print; the matrix has as much as is asked for. */
export function scholarsPage(model: Reported, most?: Most): ScholarsPage {
  const { graph, judgement } = model;
  const taken = takenIn(graph, judgement);
  const { lines, later } = scholarLines(model, taken);
  const columns = lines.filter((line) => line.claims > 0).map((line) => line.id);
  return {
    scholars: lines,
    later,
    matrix: matrixOf(model, columns, taken, most),
    years: printYears(graph),
  };
}

/** All scholars in print by the year of the lens, in the order in which they came into it, and how many come later. */
export function scholarLines(
  model: Reported,
  taken: readonly Taken[],
): { readonly lines: readonly ScholarLine[]; readonly later: number } {
  const { graph, judgement, lens } = model;
  const withheld = withheldIn(graph);
  const byScholar = new Map<Id, Taken[]>();
  for (const one of taken) {
    const own = byScholar.get(one.scholar);
    if (own) own.push(one);
    else byScholar.set(one.scholar, [one]);
  }
  const years = activeYears(graph, judgement, lens, taken);
  const all = graph.list("scholars").filter(({ id }) => !withheld(id));
  // Somebody of whom nothing is dated counts in every year, as their records do.
  const shown = all.filter(({ id }) => years.has(id) || lens.asOf === undefined || byScholar.has(id));
  const lines = shown
    .map(({ id }) => lineOf(model, id, years.get(id) ?? null, byScholar.get(id) ?? []))
    .toSorted((a, b) => byYear("last")(a.years?.first ?? null, b.years?.first ?? null));
  return { lines, later: all.length - shown.length };
}

function lineOf(model: Reported, id: Id, years: Years | null, own: readonly Taken[]): ScholarLine {
  const { graph, judgement } = model;
  return {
    id,
    name: labelText(graph, id),
    years,
    holds: own
      .filter((one) => one.stance === "holds" && one.left === null)
      .map(({ claim, since }) => ({
        claim,
        text: labelText(graph, claim),
        standing: judgement.standings.get(claim) ?? "unsupported",
        since,
      })),
    claims: own.length,
    changed: own.filter((one) => one.changed || one.left !== null).length,
  };
}
