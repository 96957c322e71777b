import type { Difference } from "../../base/date/differences.ts";
import type { Id } from "../../base/finding.ts";
import type { Events } from "../../derive/recorded/dates/events.ts";
import { dateOf, historyOf, related } from "../../derive/recorded/dates/said.ts";
import type { Said } from "../../derive/recorded/dates/said.ts";
import {
  atMost,
  isLoose,
  notAfter,
  notBefore,
  precedes,
  spanIn,
  within,
} from "../../derive/recorded/dates/years.ts";
import type { Years } from "../../derive/recorded/dates/years.ts";
import type { Graph, Linked } from "../../link/graph.ts";
import type { Citation } from "../../read/grammar/field.ts";
import type { Judgement } from "../judge.ts";

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
