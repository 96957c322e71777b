import type { Id } from "../../base/finding.ts";
import { first } from "../../base/text/said/said.ts";
import { withoutStop } from "../../link/names/label.ts";
import { byGainPerCost } from "../../plan/rank.ts";
import type { Plan, Planned, Reason } from "../../plan/plan.ts";
import type { Plugin } from "../../plugin.ts";
import { named } from "../judged/standpoints/named.ts";
import type { Named } from "../judged/standpoints/named.ts";
import { printYears } from "../pages/question.ts";
import type { Reported } from "../report/report.ts";
import { listedUnder, withheldIn } from "../withhold.ts";
import { examinationLine } from "./line.ts";
import type { ExaminationLine, Lines } from "./line.ts";
import { contestLines } from "./contest.ts";
import type { ContestLines } from "./contest.ts";
import { tripTables } from "./trip.ts";
import type { TripTable } from "./trip.ts";
import { suggestionOrder } from "./wording.ts";

/** What to look at next, and what each outcome would decide. */
export interface ExaminationsPage {
  readonly costsIn: string;
  /** Years in which something came into print. */
  readonly years: readonly number[];
  /** How many examinations are recorded and may be shown. */
  readonly recorded: number;
  readonly plan: PlanLines | null;
}

/** A plan as it is read. */
export interface PlanLines {
  readonly contest: ContestLines;
  readonly recorded: readonly ExaminationLine[];
  readonly suggested: readonly Suggested[];
  /** How many more could be suggested and were not looked at. */
  readonly passedOver: number;
  readonly trips: readonly TripTable[];
  /** Outcomes of which a number is still to be computed. */
  readonly pending: number;
}

/** What the record itself suggests for one reason. */
export interface Suggested {
  readonly kind: Reason["kind"];
  readonly lines: readonly (ExaminationLine & {
    /** The evidence that is disputed; null where the reason is another one. */
    readonly evidence: Named | null;
    /** The records that show the reason. */
    readonly about: readonly Named[];
  })[];
}

/** The page of a plan that is made, or of one that is still being made. */
export function examinationsPage(
  model: Reported,
  plugins: readonly Plugin[],
  plan: Plan | null,
): ExaminationsPage {
  const { graph } = model;
  const withheld = withheldIn(graph);
  return {
    costsIn: graph.settings.costsIn,
    years: printYears(graph),
    recorded: graph.list("examinations").filter(({ id }) => !withheld(id)).length,
    plan: plan && planLines(linesOf(model, plugins, plan), plan),
  };
}

/** What the lines of a plan are told with, under a model. */
export function linesOf(model: Reported, plugins: readonly Plugin[], plan: Plan): Lines {
  const { graph } = model;
  const answered = new Map<Id, Id[]>();
  for (const { id, values } of graph.list("questions"))
    for (const answer of values.answers) answered.set(answer, [...(answered.get(answer) ?? []), id]);
  const methods = new Map(
    [...plan.recorded, ...plan.proposed].map(({ examination }) => [examination.id, examination.method]),
  );
  const places = new Map([...answered.keys()].map((claim, at) => [claim, at]));
  const withheld = withheldIn(graph);
  return {
    graph,
    plugins,
    listed: listedUnder(model),
    questionsOf: (claim) => (answered.get(claim) ?? []).filter((id) => !withheld(id)),
    placeOf: (claim) => places.get(claim) ?? Infinity,
    costsIn: graph.settings.costsIn,
    methodOf: (id) => {
      const method = methods.get(id) ?? "";
      return typeof method === "string" ? upper(withoutStop(method)) : first(method);
    },
  };
}

function planLines(lines: Lines, plan: Plan): PlanLines {
  const order = plan.recorded
    .filter((one) => one.gainPerCost !== null)
    .toSorted(byGainPerCost)
    .map((one) => one.examination.id);
  const placeOf = ({ examination: { id } }: Planned): number | null =>
    order.includes(id) ? order.indexOf(id) + 1 : null;
  const outcomes = [...plan.recorded, ...plan.proposed].flatMap((one) => one.outcomes);
  return {
    contest: contestLines(lines, plan),
    recorded: plan.recorded.map((one) => examinationLine(lines, one, placeOf(one))),
    suggested: suggestionOrder.flatMap((kind) => suggestedFor(lines, plan, kind)),
    passedOver: plan.passedOver,
    trips: tripTables(lines, plan),
    pending: outcomes.filter((one) => one.pending.length > 0).length,
  };
}

function suggestedFor(lines: Lines, plan: Plan, kind: Reason["kind"]): readonly Suggested[] {
  const { graph } = lines;
  const those = plan.proposed.flatMap((one) => {
    if (one.reason?.kind !== kind) return [];
    const { id, origin } = one.examination;
    const evidence = kind === "attacked" ? named(graph, id.slice(origin.length + 1)) : null;
    const about = one.reason.about.map((other) => named(graph, other));
    return [{ ...examinationLine(lines, one, null), evidence, about }];
  });
  return those.length === 0 ? [] : [{ kind, lines: those }];
}

function upper(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
