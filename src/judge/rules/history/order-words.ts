import { yearWords } from "../../../base/date/year-words.ts";
import { formatNumber } from "../../../base/quantity/quantity-print.ts";
import { count, first, row, say } from "../../../base/text/said/said.ts";
import type { Hole, Said as Sentence, Text } from "../../../base/text/said/said.ts";
import type { Graph } from "../../../link/graph.ts";
import { labelText } from "../../../link/names/label.ts";
import { boundsOf, zero } from "../../../base/date/differences.ts";
import type { Bounds } from "../../../base/date/differences.ts";
import type { Events } from "../../../derive/recorded/dates/events.ts";
import type { ImpossibleOrder } from "../../dates/impossible.ts";
import type { Said } from "../../../derive/recorded/dates/said.ts";
import type { Judgement } from "../../judge.ts";
import { chained, quoted } from "../../../base/text/said/rows.ts";
import { quotedLabel } from "../tell.ts";

/** What an impossible order is told with. */
export interface Telling {
  readonly graph: Graph;
  readonly judgement: Judgement;
  readonly events: Events;
}

/** An impossible order in a sentence, and what is loose about the dates it leans on. */
export function orderWords(telling: Telling, order: ImpossibleOrder): Hole {
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
  return chained([said, ...loose], (before, next) => say`${before} ${next}`);
}

/** What a statement is called where it is told with others. */
export function statementWords({ graph, judgement }: Telling, one: Said, order?: ImpossibleOrder): Hole {
  if (one.kind === "relation") return apartWords(graph, one);
  const name = quotedLabel(graph, one.record);
  if (one.kind === "claim")
    return judgement.standings.get(one.record) === "open"
      ? say`the open claim ${name}`
      : say`the claim ${name}`;
  const used = order?.steps.filter((step) => step.statement === one).map((step) => step.difference) ?? [];
  const when = used.flatMap(({ from, to, most }) =>
    to === zero
      ? [say`${yearWords(-most)} or later`]
      : from === zero
        ? [say`${yearWords(most - 1)} or earlier`]
        : [],
  );
  const what = one.kind === "date" ? dateWords(graph, one) : entryWords(graph, one);
  return when.length > 0 ? say`${what} (${row(when, "comma")})` : what;
}

function dateWords(graph: Graph, { record }: Said): Sentence {
  return say`the date of ${labelText(graph, record)}`;
}

function alone({ graph, events }: Telling, lead: Said, { steps }: ImpossibleOrder): Sentence {
  const name = quotedLabel(graph, lead.record);
  const round = steps.length === 1 ? steps[0]?.difference : undefined;
  return round !== undefined
    ? say`${name} puts ${eventWords(graph, events, round.from)} before itself, expected two things or events.`
    : say`${name} contradicts itself, expected dates that fit together.`;
}

function beforeMaking({ graph, events }: Telling, lead: Said, others: readonly Said[]): Sentence {
  const record = graph.records.get(lead.record);
  const entry = record?.list === "artefacts" ? record.values.history?.[lead.place ?? 0] : undefined;
  const earliest = boundsOf(others)?.get(events.made(lead.record))?.low ?? 0;
  return say`${labelText(graph, lead.record)}: ${quoted(entry?.what ?? "")} is dated ${entry?.when ?? ""}, before the thing was made, expected ${yearWords(earliest)} or later.`;
}

/** A relation against what the dates of two events allow. */
function against(telling: Telling, lead: Said, others: readonly Said[], order: ImpossibleOrder): Sentence {
  const { graph, events } = telling;
  const step = order.steps.find(({ statement }) => statement === lead)?.difference;
  const bounds = boundsOf(others);
  const [low, high] = [bounds?.get(step?.to ?? "")?.low ?? null, lastYear(bounds?.get(step?.from ?? ""))];
  if (step === undefined || low === null || high === null) return together(telling, order);
  const name = quotedLabel(graph, lead.record);
  const later = say`${eventWords(graph, events, step.to)}, of ${yearWords(low)} or later,`;
  const earlier = say`${eventWords(graph, events, step.from)}, of ${yearWords(high)} or earlier,`;
  const record = graph.records.get(lead.record);
  const sameTime = record?.list === "relations" && record.values["same-time"] !== undefined;
  if (sameTime)
    return step.most > 0
      ? say`${name} puts ${later} within ${years(step.most)} of ${earlier} expected dates that meet.`
      : say`${name} puts ${later} at the time of ${earlier} expected dates that meet.`;
  if (step.most > 0)
    return say`${name} puts ${earlier} at most ${years(step.most)} before ${later} expected dates nearer together.`;
  return step.most < 0
    ? say`${name} puts ${later} at least ${years(-step.most)} before ${earlier} expected dates in that order.`
    : say`${name} puts ${later} before ${earlier} expected dates in that order.`;
}

function together(telling: Telling, order: ImpossibleOrder): Sentence {
  const names = order.statements.map((one) => statementWords(telling, one, order));
  const cannot =
    names.length === 2 ? say`${row(names)} cannot both be true` : say`${row(names)} cannot all be true`;
  const throughYears = order.steps.some(({ difference }) => difference.from === zero);
  const sum = order.steps.reduce((total, { difference }) => total + difference.most, 0);
  const short = throughYears ? 1 - sum : -sum;
  return first(
    short <= 0
      ? say`${cannot}, expected an order that ends.`
      : say`${cannot}: they miss by ${years(short)}, expected dates that fit together.`,
  );
}

/** A relation by its name, with how far apart it puts its two. */
function apartWords(graph: Graph, { record }: Said): Hole {
  const name = quotedLabel(graph, record);
  const relation = graph.records.get(record);
  if (relation?.list !== "relations") return name;
  const { "at-least": least, "at-most": most } = relation.values;
  if (least === undefined && most === undefined) return name;
  const distances = [
    ...(least === undefined ? [] : [say`at least ${years(least)}`]),
    ...(most === undefined ? [] : [say`at most ${years(most)}`]),
  ];
  return say`${name} (${row(distances, "comma")})`;
}

function looseWords(graph: Graph, one: Said): Sentence {
  const whose = one.kind === "history" ? entryWords(graph, one) : labelText(graph, one.record);
  return say`The date of ${whose} is given as approximate or uncertain.`;
}

function entryWords(graph: Graph, { record, place }: Said): Hole {
  const artefact = graph.records.get(record);
  const entry = artefact?.list === "artefacts" ? artefact.values.history?.[place ?? 0] : undefined;
  return quoted(entry?.what ?? "");
}

function eventWords(graph: Graph, events: Events, event: string): Text {
  const { record, text } = events.described(event);
  return record !== null && text === "" ? labelText(graph, record) : events.labelOf(event);
}

/** The last year in which an event may be. */
function lastYear(bounds: Bounds | undefined): number | null {
  if (bounds === undefined || bounds.high === null) return null;
  return bounds.highStrict ? Math.ceil(bounds.high) - 1 : Math.floor(bounds.high);
}

function years(n: number): Sentence {
  if (n === 1) return say`1 year`;
  const figure = formatNumber(n);
  return figure === String(n) ? say`${count(n)} years` : say`${figure} ${say`years`}`;
}
