import type { Finding, Id } from "../../../base/finding.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Said } from "../../../base/text/said/said.ts";
import type { ComputeMemo } from "../../../derive/run.ts";
import { evaluationOf } from "../../../judge/explain/evaluation.ts";
import type { Graph } from "../../../link/graph.ts";
import type { Plan } from "../../../plan/plan.ts";
import type { Plugin } from "../../../plugin.ts";
import type { History } from "../../judged/history/history.ts";
import type { Reported } from "../../report/report.ts";
import { claimsByQuestion } from "../../scholars/rows.ts";
import { citableUnder, listedUnder, shownUnder, withheldIn } from "../../withhold.ts";
import { commonWords } from "./pieces/embedded.ts";

/** What a review is made from: a judged corpus with its plug-ins and the outcomes of their runs. */
export interface ReviewDesk {
  readonly model: Reported & {
    /** Null where it was not asked for: it is then made from what the memo has. */
    readonly history: History | null;
    /** Null where it was not asked for: nothing is then said of what to examine next. */
    readonly plan: Plan | null;
  };
  readonly findings: readonly Finding[];
  readonly plugins: readonly Plugin[];
  readonly memo: ComputeMemo;
}

/** The desk with what of it a review of these questions may tell. */
export interface Sight extends ReviewDesk {
  readonly graph: Graph;
  /** The language of the corpus's own sentences. */
  readonly language: string;
  /** The questions of the review, each with its answers and the claims that bear on them. */
  readonly groups: readonly Group[];
  readonly withheld: (id: Id) => boolean;
  /** What counts under the lens, is not withheld, and bears on the questions. */
  readonly shown: (id: Id) => boolean;
  /** Claims that may be named under the lens and bear on the questions. */
  readonly listed: (claim: Id) => boolean;
  /** Sources and passages that may be cited: in print by the year of the lens, and not withheld. */
  readonly citable: (key: Id) => boolean;
  /** Words of the corpus that are no names: those it writes small somewhere. */
  readonly common: ReadonlySet<string>;
  /** What calls the text itself, whose arguments are those without a source or a scholar. */
  readonly itself: Said;
}

/** A question with its answers, and the claims on the way to them; no question for claims that bear on none. */
export interface Group {
  readonly question: Id | null;
  readonly text: string;
  readonly exclusive: boolean;
  readonly answers: readonly Id[];
  readonly below: readonly Id[];
}

/** Looks at a desk for one question, or for all of them. */
export function sightOf(desk: ReviewDesk, question: Id | null): Sight {
  const { model } = desk;
  const { graph } = model;
  const withheld = withheldFrom(graph);
  const inPrint = shownUnder(model);
  const counts = (id: Id): boolean => inPrint(id) && !withheld(id);
  const isListed = listedUnder(model);
  const asked = question === null ? null : graph.records.get(question);
  const reached =
    asked?.list === "questions" && !withheld(asked.id) ? reachedFrom(model, asked.values.answers) : null;
  const within = (id: Id): boolean => reached === null || reached.has(id);
  const shown = (id: Id): boolean => counts(id) && within(id);
  const listed = (claim: Id): boolean => isListed(claim) && within(claim);
  const groups = reached === null ? groupsOf(desk) : oneGroup(desk, asked?.id ?? "", listed);
  const { language } = graph.settings;
  return {
    ...desk,
    graph,
    language,
    groups,
    withheld,
    shown,
    listed,
    citable: citableUnder(model),
    common: commonWords(graph, counts),
    itself: say`the present review`,
  };
}

/** What comes from nobody and nowhere but what is withheld is told as little as that itself. */
const ofSources: readonly string[] = [
  "positions",
  "arguments",
  "observations",
  "measurements",
  "relations",
  "passages",
];

/** Tells what may not be told: what is withheld, and what only withheld sources or scholars say. */
function withheldFrom(graph: Graph): (id: Id) => boolean {
  const ids = withheldIn(graph);
  if (graph.settings.withhold.length === 0) return ids;
  const all = (those: readonly Id[]): boolean => those.length > 0 && those.every(ids);
  return (id) => {
    if (ids(id)) return true;
    if (!ofSources.includes(graph.records.get(id)?.list ?? "")) return false;
    const { sources, scholars } = graph.provenance(id);
    return all(sources) || all(scholars);
  };
}

function groupsOf({ model }: ReviewDesk): readonly Group[] {
  const { graph, judgement } = model;
  return claimsByQuestion(graph, judgement).map(({ question, claims }) => groupOf(graph, question, claims));
}

/** The group of one question: claims that bear on it stand with it, though they bear on others too. */
function oneGroup({ model }: ReviewDesk, question: Id, listed: (claim: Id) => boolean): readonly Group[] {
  const { graph, judgement } = model;
  const all = claimsByQuestion(graph, judgement).flatMap(({ claims }) => claims);
  const record = graph.records.get(question);
  const answers = record?.list === "questions" ? record.values.answers : [];
  return [groupOf(graph, question, [...new Set([...answers, ...all])].filter(listed))];
}

function groupOf(graph: Graph, question: Id | null, claims: readonly Id[]): Group {
  const record = question === null ? undefined : graph.records.get(question);
  if (record?.list !== "questions")
    return { question: null, text: "", exclusive: false, answers: [], below: claims };
  const { text, answers, exclusive = true } = record.values;
  return {
    question,
    text,
    exclusive,
    answers: claims.filter((claim) => answers.includes(claim)),
    below: claims.filter((claim) => !answers.includes(claim)),
  };
}

/** All that bears on some claims: arguments for and against them, what these lean on, and what is against that. */
function reachedFrom({ graph, judgement, derivations }: Reported, claims: readonly Id[]): ReadonlySet<Id> {
  const { argumentsFor, attackersOf, argument } = evaluationOf(judgement);
  const reached = new Set<Id>(claims);
  // A set that grows while it is gone through is gone through to its end.
  for (const id of reached) {
    const step = argument(id);
    const rivals = graph.records.get(id)?.list === "claims" ? graph.rivalsOf(id) : [];
    const used = derivations.byId.get(id)?.used ?? [];
    const around = [...argumentsFor(id), ...attackersOf(id)].flatMap((one) => [one.id, one.from]);
    for (const next of [...around, ...(step?.because ?? []), ...rivals, ...used]) reached.add(next);
  }
  for (const { id, values } of graph.list("derivations"))
    if ((values["bears-on"] ?? []).some((entry) => reached.has(entry.claim))) {
      reached.add(id);
      for (const used of derivations.byId.get(id)?.used ?? []) reached.add(used);
    }
  for (const { id, values } of graph.list("positions")) if (reached.has(values.claim)) reached.add(id);
  return reached;
}
