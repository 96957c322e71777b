import { yearText } from "../../../base/date/year.ts";
import { formatNumber } from "../../../base/quantity/quantity-print.ts";
import type { Graph } from "../../../link/graph.ts";
import { labelOf } from "../../../link/names/label.ts";
import { boundsOf, zero } from "../../../base/date/differences.ts";
import type { Bounds } from "../../../base/date/differences.ts";
import type { Events } from "../../../derive/recorded/dates/events.ts";
import type { ImpossibleOrder } from "../../dates/impossible.ts";
import type { Said } from "../../../derive/recorded/dates/said.ts";
import type { Judgement } from "../../judge.ts";
import { inWords } from "../tell.ts";

/** What an impossible order is told with. */
export interface Telling {
  readonly graph: Graph;
  readonly judgement: Judgement;
  readonly events: Events;
}

/** An impossible order in a sentence, and what is loose about the dates it leans on. */
export function orderWords(telling: Telling, order: ImpossibleOrder): string {
  const { graph } = telling;
  const [lead, ...others] = order.statements;
  if (lead === undefined) return "";
  const loose = order.statements.filter((one) => one.loose).map((one) => looseWords(graph, one));
  const said =
    others.length === 0
      ? alone(telling, lead, order)
      : lead.kind === "history"
        ? beforeMaking(telling, lead, others)
        : lead.kind === "relation" && others.every((one) => one.kind === "date" || one.kind === "history")
          ? against(telling, lead, others, order)
          : together(telling, order);
  return [said, ...loose].join(" ");
}

/** What a statement is called where it is told with others. */
export function statementWords({ graph, judgement }: Telling, one: Said, order?: ImpossibleOrder): string {
  const label = labelOf(graph, one.record);
  if (one.kind === "relation") return `“${label}”${distanceWords(graph, one)}`;
  if (one.kind === "claim")
    return `the ${judgement.standings.get(one.record) === "open" ? "open claim" : "claim"} “${label}”`;
  const used = order?.steps.filter((step) => step.statement === one).map((step) => step.difference) ?? [];
  const years = used.flatMap(({ from, to, most }) =>
    to === zero ? [`${yearText(-most)} or later`] : from === zero ? [`${yearText(most - 1)} or earlier`] : [],
  );
  const when = years.length > 0 ? ` (${years.join(", ")})` : "";
  return one.kind === "date" ? `the date of ${label}${when}` : `“${what(graph, one)}”${when}`;
}

function alone({ graph, events }: Telling, lead: Said, { steps }: ImpossibleOrder): string {
  const label = `“${labelOf(graph, lead.record)}”`;
  const round = steps.length === 1 ? steps[0]?.difference : undefined;
  return round !== undefined
    ? `${label} puts ${events.labelOf(round.from)} before itself, expected two things or events.`
    : `${label} contradicts itself, expected dates that fit together.`;
}

function beforeMaking({ graph, events }: Telling, lead: Said, others: readonly Said[]): string {
  const record = graph.records.get(lead.record);
  const entry = record?.list === "artefacts" ? record.values.history?.[lead.place ?? 0] : undefined;
  const earliest = boundsOf(others)?.get(events.made(lead.record))?.low ?? 0;
  return `${labelOf(graph, lead.record)}: “${entry?.what ?? ""}” is dated ${entry?.when ?? ""}, before the thing was made, expected ${yearText(earliest)} or later.`;
}

/** A relation against what the dates of two events allow. */
function against(telling: Telling, lead: Said, others: readonly Said[], order: ImpossibleOrder): string {
  const { graph, events } = telling;
  const step = order.steps.find(({ statement }) => statement === lead)?.difference;
  const bounds = boundsOf(others);
  const [low, high] = [bounds?.get(step?.to ?? "")?.low ?? null, lastYear(bounds?.get(step?.from ?? ""))];
  if (step === undefined || low === null || high === null) return together(telling, order);
  const later = `${events.labelOf(step.to)}, of ${yearText(low)} or later,`;
  const earlier = `${events.labelOf(step.from)}, of ${yearText(high)} or earlier,`;
  const puts = `“${labelOf(graph, lead.record)}” puts`;
  const record = graph.records.get(lead.record);
  const sameTime = record?.list === "relations" && record.values["same-time"] !== undefined;
  if (sameTime) {
    const near = step.most > 0 ? `within ${years(step.most)} of` : "at the time of";
    return `${puts} ${later} ${near} ${earlier} expected dates that meet.`;
  }
  if (step.most > 0)
    return `${puts} ${earlier} at most ${years(step.most)} before ${later} expected dates nearer together.`;
  const least = step.most < 0 ? `at least ${years(-step.most)} ` : "";
  return `${puts} ${later} ${least}before ${earlier} expected dates in that order.`;
}

function together(telling: Telling, order: ImpossibleOrder): string {
  const names = order.statements.map((one) => statementWords(telling, one, order));
  const cannot = `${capital(inWords(names))} cannot ${names.length === 2 ? "both" : "all"} be true`;
  const throughYears = order.steps.some(({ difference }) => difference.from === zero);
  const sum = order.steps.reduce((total, { difference }) => total + difference.most, 0);
  const short = throughYears ? 1 - sum : -sum;
  return short <= 0
    ? `${cannot}, expected an order that ends.`
    : `${cannot}: they miss by ${years(short)}, expected dates that fit together.`;
}

function distanceWords(graph: Graph, { record }: Said): string {
  const relation = graph.records.get(record);
  if (relation?.list !== "relations") return "";
  const { "at-least": least, "at-most": most } = relation.values;
  const words = [
    ...(least === undefined ? [] : [`at least ${years(least)}`]),
    ...(most === undefined ? [] : [`at most ${years(most)}`]),
  ];
  return words.length === 0 ? "" : ` (${words.join(", ")})`;
}

function looseWords(graph: Graph, one: Said): string {
  const whose = one.kind === "history" ? `“${what(graph, one)}”` : labelOf(graph, one.record);
  return `The date of ${whose} is given as approximate or uncertain.`;
}

function what(graph: Graph, { record, place }: Said): string {
  const artefact = graph.records.get(record);
  return (artefact?.list === "artefacts" ? artefact.values.history?.[place ?? 0]?.what : undefined) ?? "";
}

/** The last year in which an event may be. */
function lastYear(bounds: Bounds | undefined): number | null {
  if (bounds === undefined || bounds.high === null) return null;
  return bounds.highStrict ? Math.ceil(bounds.high) - 1 : Math.floor(bounds.high);
}

function years(count: number): string {
  return count === 1 ? "1 year" : `${formatNumber(count)} years`;
}

function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
