import { parseEdtf } from "../../base/date/edtf.ts";
import type { DateSpan } from "../../base/date/edtf.ts";
import type { Id } from "../../base/finding.ts";
import type { Graph, Linked } from "../../link/graph.ts";
import type { Citation } from "../../read/grammar/field.ts";
import type { Judgement } from "../judge.ts";
import { zero } from "./differences.ts";
import type { Difference, Statement } from "./differences.ts";
import type { Events } from "./events.ts";

/** What a record says of dates, as differences of years. */
export interface Said extends Statement {
  readonly kind: "claim" | "relation" | "history" | "date";
  readonly record: Id;
  /** Which entry of the history. */
  readonly place: number | null;
  /** Whether a date it gives is only approximate or uncertain. */
  readonly loose: boolean;
}

/**
 * All that is said of dates under a judgement: relations that do not fall, claims that stand or are open, the dates
 * of artefacts and their histories, as far as they are in print. Of several dates of one artefact any may be right.
 */
export function datesSaid(
  graph: Graph,
  { counts, standings }: Judgement,
  events: Events,
  asOf: number | undefined,
): readonly Said[] {
  const inPrint = (citations: readonly Citation[] | undefined): boolean =>
    asOf === undefined || yearOf(graph, citations ?? []) <= asOf;
  const artefacts = graph.list("artefacts").filter((one) => counts(one.id));
  const assumed = (id: Id): boolean => ["stands", "open"].includes(standings.get(id) ?? "");
  return [
    ...graph
      .list("claims")
      .filter(({ id }) => counts(id) && assumed(id))
      .flatMap((one) => claimed(graph, one, events)),
    ...graph
      .list("relations")
      .filter(({ id }) => counts(id) && standings.get(id) !== "falls")
      .map((one) => related(one, events)),
    ...artefacts.flatMap((one) => historyOf(one, events, inPrint)),
    ...artefacts.flatMap((one) => dateOf(one, events, inPrint)),
  ];
}

/** Since when all of these are in print. */
function yearOf(graph: Graph, citations: readonly Citation[]): number {
  const years = citations.map(({ key }) => graph.sources.get(key)?.year ?? graph.provenance(key).year);
  return Math.max(-Infinity, ...years.map((year) => year ?? -Infinity));
}

function claimed(graph: Graph, { id, values }: Linked<"claims">, events: Events): readonly Said[] {
  let loose = false;
  const says = (values.dates ?? []).flatMap(({ event, is, after, before }): readonly Difference[] => {
    const at = events.meant(event);
    const bound = (
      text: string | undefined,
      years: Years,
      other: (event: string) => readonly Difference[],
    ) => {
      if (text === undefined) return [];
      const list = graph.records.get(text)?.list;
      if (list === "claims") return other(events.claimed(text));
      if (list === "artefacts") return other(events.made(text));
      const span = spanIn(text);
      if (span !== null && isLoose(span)) loose = true;
      return span === null ? [] : years(at, span);
    };
    return [
      ...bound(is, within, (other) => [atMost(at, other, 0), atMost(other, at, 0)]),
      ...bound(after, notBefore, (other) => [precedes(other, at)]),
      ...bound(before, notAfter, (other) => [precedes(at, other)]),
    ];
  });
  return says.length === 0
    ? []
    : [{ id: `claim: ${id}`, kind: "claim", record: id, place: null, loose, says }];
}

function related({ id, values }: Linked<"relations">, events: Events): Said {
  const said = { id: `relation: ${id}`, kind: "relation", record: id, place: null, loose: false } as const;
  const { earlier, later } = values;
  const most = values["at-most"];
  if (earlier !== undefined && later !== undefined) {
    const [first, second] = [events.meant(earlier), events.meant(later)];
    const apart = most === undefined ? [] : [atMost(first, second, most)];
    return { ...said, says: [precedes(first, second, values["at-least"] ?? 0), ...apart] };
  }
  const [one, ...others] = (values["same-time"] ?? []).map(events.meant);
  const says = others.flatMap((other) => [
    atMost(one ?? other, other, most ?? 0),
    atMost(other, one ?? other, most ?? 0),
  ]);
  return { ...said, says };
}

function historyOf(
  { id, values }: Linked<"artefacts">,
  events: Events,
  inPrint: (from: readonly Citation[] | undefined) => boolean,
): readonly Said[] {
  return (values.history ?? []).flatMap(({ when, from }, place): readonly Said[] => {
    const span = spanIn(when);
    if (span === null || !inPrint(from)) return [];
    const event = events.entry(id, place);
    const says = [...within(event, span), atMost(event, events.made(id), 0)];
    return [
      { id: `history: ${id} ${place}`, kind: "history", record: id, place, loose: isLoose(span), says },
    ];
  });
}

/** From the first year that any date given of an artefact allows to the last. */
function dateOf(
  { id, values }: Linked<"artefacts">,
  events: Events,
  inPrint: (from: readonly Citation[] | undefined) => boolean,
): readonly Said[] {
  const dates = (values.date ?? []).filter(({ from }) => inPrint(from));
  const spans = dates.flatMap(({ is }) => spanIn(is) ?? []);
  if (spans.length === 0 || spans.length < dates.length) return [];
  const lows = spans.map(({ low }) => low ?? -Infinity);
  const highs = spans.map(({ high }) => high ?? Infinity);
  const says = between(events.made(id), Math.min(...lows), Math.max(...highs));
  const loose = spans.some(isLoose);
  return [{ id: `date: ${id}`, kind: "date", record: id, place: null, loose, says }];
}

type Years = (event: string, span: DateSpan) => readonly Difference[];

const within: Years = (event, { low, high }) => between(event, low ?? -Infinity, high ?? Infinity);
const notBefore: Years = (event, { low }) => between(event, low ?? -Infinity, Infinity);
const notAfter: Years = (event, { high }) => between(event, -Infinity, high ?? Infinity);

/** A year is a stretch: what is of 1850 came before the beginning of 1851. */
function between(event: string, low: number, high: number): readonly Difference[] {
  return [
    ...(low === -Infinity ? [] : [atMost(event, zero, -low)]),
    ...(high === Infinity ? [] : [{ from: zero, to: event, most: high + 1, strict: true }]),
  ];
}

function atMost(from: string, to: string, most: number): Difference {
  return { from, to, most };
}

/** One came before the other, by so many years at least; by none given, before it all the same, in one year or not. */
function precedes(first: string, second: string, atLeast = 0): Difference {
  return { from: second, to: first, most: -Math.max(0, atLeast), strict: atLeast <= 0 };
}

function spanIn(text: string): DateSpan | null {
  const span = parseEdtf(text);
  return "ok" in span ? span.ok : null;
}

function isLoose({ approximate, uncertain }: DateSpan): boolean {
  return approximate || uncertain;
}
