import type { Finding, Id } from "../../base/finding.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import { objectionsIn } from "../../judge/rules/claims/unanswered.ts";
import type { Graph } from "../../link/graph.ts";
import { say } from "../../base/text/said/said.ts";
import { authorOrCorpus, labelOf } from "../../link/names/label.ts";
import { findingLines } from "../pages/findings.ts";
import { printYears } from "../pages/question.ts";
import type { FindingLine } from "../pages/findings.ts";
import type { Reported } from "../report/report.ts";
import { shownFindings, withheldIn } from "../withhold.ts";
import { activeYears } from "./active.ts";
import type { Years } from "./active.ts";
import { datedLine } from "./line.ts";
import type { DatedLine } from "./line.ts";
import { lookedAt } from "./looked.ts";
import type { Looked } from "./looked.ts";
import { namedIn } from "./named.ts";
import type { Named } from "./named.ts";
import { stepsOf } from "./reliance.ts";
import type { Step } from "./reliance.ts";
import { takenIn } from "./taken.ts";

/** An argument in print against what a scholar holds, to which no reply of theirs is recorded. */
export interface Unanswered {
  readonly argument: Named;
  readonly year: number;
  readonly against: readonly Named[];
  /** Who else replied to it, by their arguments against it. */
  readonly others: readonly Named[];
}

/** One scholar: names, positions over time, what they rely on, what is open between them and others. */
export interface ScholarPage {
  readonly id: Id;
  readonly name: string;
  readonly knownAs: readonly string[];
  readonly orcid: string | null;
  readonly note: string | null;
  readonly years: Years | null;
  readonly line: DatedLine;
  readonly steps: readonly Step[];
  readonly looked: readonly Looked[];
  readonly unanswered: readonly Unanswered[];
  readonly changes: readonly FindingLine[];
  /** Years in which sources came into print, for the rod. */
  readonly printYears: readonly number[];
}

/** The page of one scholar under the model's lens; null where there is none of that name. */
export function scholarPage(
  model: Reported,
  findings: readonly Finding[],
  texts: ReadonlyMap<string, string>,
  id: Id,
): ScholarPage | null {
  const { graph, judgement, lens } = model;
  const record = graph.records.get(id);
  if (record?.list !== "scholars" || withheldIn(graph)(id)) return null;
  const taken = takenIn(graph, judgement);
  const inPrint = printYears(graph);
  return {
    id,
    name: record.values.name,
    knownAs: record.values["known-as"] ?? [],
    orcid: record.values.orcid ?? null,
    note: record.values.note ?? null,
    years: activeYears(graph, judgement, lens, taken).get(id) ?? null,
    line: datedLine(
      model,
      taken.filter((one) => one.scholar === id),
      lens.asOf ?? inPrint.at(-1) ?? null,
    ),
    steps: stepsOf(model, id),
    looked: lookedAt(model, id),
    unanswered: unansweredBy(model, id),
    changes: findingLines(graph, aboutChanges(graph, findings, id), texts),
    printYears: inPrint,
  };
}

function unansweredBy(model: Reported, scholar: Id): readonly Unanswered[] {
  const { graph, judgement } = model;
  const withheld = withheldIn(graph);
  const name = (id: Id): Named => namedIn(model, id);
  const own = new Set(
    takenIn(graph, judgement)
      .filter((one) => one.scholar === scholar && one.stance === "holds" && one.left === null)
      .map((one) => one.claim),
  );
  return objectionsIn(graph, judgement)
    .flatMap(({ argument, year, against, holders, replies }): readonly Unanswered[] => {
      const held = against.filter((claim) => own.has(claim));
      const from = argument.from;
      if (!holders.includes(scholar) || held.length === 0 || withheld(from)) return [];
      if (replies.some((reply) => graph.provenance(reply.from).scholars.includes(scholar))) return [];
      const record = graph.records.get(from);
      const said = record?.list === "arguments" ? record.values.text : undefined;
      const shown = replies.filter((reply) => !withheld(reply.from));
      return [
        {
          argument:
            said === undefined
              ? name(from)
              : { ...name(from), text: say`${authorOrCorpus(graph, from)}: ${said}` },
          year,
          against: held.map(name),
          others: shown.map((reply) => ({ ...name(reply.from), text: authorOrCorpus(graph, reply.from) })),
        },
      ];
    })
    .toSorted((a, b) => a.year - b.year);
}

const ofChange: readonly string[] = ["self-contradiction", "changed-position"];

/** Findings about the scholar's own positions that do not go together, or not any more; they begin with the name. */
function aboutChanges(graph: Graph, findings: readonly Finding[], scholar: Id): readonly Finding[] {
  const own = (id: Id): boolean => {
    const position = graph.records.get(id);
    return position?.list === "positions" && position.values.who.includes(scholar);
  };
  return shownFindings(graph, findings).filter(
    (one) =>
      ofChange.includes(one.rule) &&
      one.about.every(own) &&
      inEnglish(one.message).startsWith(`${labelOf(graph, scholar)} `),
  );
}
