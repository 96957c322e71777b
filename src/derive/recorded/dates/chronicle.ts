import type { Chronicle, DatedEvent, DateStatement } from "../../../base/date/chronicle.ts";
import { zero } from "../../../base/date/differences.ts";
import type { Json } from "../../../base/json.ts";
import { nearest } from "../../../base/nearest.ts";
import { either } from "../../../base/text/said/either.ts";
import { coded, say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Id } from "../../../base/finding.ts";
import type { Graph } from "../../../link/graph.ts";
import { withheldIn } from "../../../link/withheld.ts";
import type { Citation } from "../../../read/grammar/field.ts";
import type { LeftOut } from "../../../plugin.ts";
import type { Lens } from "../../lens.ts";
import { leftOutFor } from "../left-out.ts";
import { texts } from "../../prepare/select.ts";
import type { Sight } from "../../prepare/select.ts";
import { asMap } from "../../prepare/settings.ts";
import { eventsIn } from "./events.ts";
import type { Events } from "./events.ts";
import { dateOf, historyOf, related } from "./said.ts";
import type { Said } from "./said.ts";

/** Tells whether a date that these give is in print under the lens and not lost. */
export type GivenBy = (citations: readonly Citation[] | undefined) => boolean;

/** What is said of the dates asked for, the relations that say it, and what is left out. */
export interface Chronicled {
  readonly chronicle: Chronicle;
  readonly used: readonly Id[];
  readonly leftOut: readonly LeftOut[];
}

/**
 * What relations, dates and histories say of some artefacts (their making) or events in words, and of whatever that
 * ties to them; claims say nothing here. `why` tells of an event that nothing names.
 */
export function chronicleOf(
  input: Json,
  sight: Sight,
  givenBy: GivenBy,
): Chronicled | { readonly why: Text } {
  const { graph } = sight;
  const withheld = withheldIn(graph);
  const selection = asMap(input);
  const asked = texts(selection["of"] ?? input).filter((name) => !withheld(name));
  const without = new Set([
    ...texts(selection["without"]),
    ...sight.choices.flatMap((choice) => choice.without ?? []),
  ]);
  const events = eventsIn(graph);
  const leftOut: LeftOut[] = [];
  const relations = graph.list("relations").filter(({ id }) => {
    const why = without.has(id) ? leftOutFor.byName : sight.counts(id) ? null : leftOutFor.notCounting;
    if (why !== null) leftOut.push({ id, why });
    return why === null;
  });
  const said = [
    ...relations.map((one) => related(one, events)),
    ...graph.list("artefacts").flatMap((one) => historyOf(one, events, givenBy)),
    ...graph.list("artefacts").flatMap((one) => dateOf(one, events, givenBy)),
  ];
  const named = new Set(graph.list("relations").flatMap((one) => eventsOf(related(one, events))));
  for (const one of said) for (const event of eventsOf(one)) named.add(event);
  const meant = asked.map((name) => events.meant(name));
  const unknown = asked.find((name, at) => !graph.records.has(name) && !named.has(meant[at] ?? ""));
  if (unknown !== undefined) return { why: unknownEvent(unknown, graph, named, events) };
  const tied = tiedTo(meant, said);
  const all = [...new Set([...meant, ...tied.flatMap(eventsOf)])];
  return {
    chronicle: {
      events: all.flatMap((event) => shownEvent(event, meant, tied, events, withheld)),
      statements: tied.flatMap(({ id, kind, record, loose, says }): readonly DateStatement[] =>
        kind === "claim" ? [] : [{ id, kind, record, loose, says }],
      ),
    },
    used: tied.filter((one) => one.kind === "relation").map((one) => one.record),
    leftOut,
  };
}

/** Whether a date is given by something in print by the year of the lens, of which nothing is lost. */
export function givenUnder(graph: Graph, { asOf, without }: Lens): GivenBy {
  const lost = new Set(without ?? []);
  return (citations = []) =>
    citations.every(({ key }) => {
      const { sources, via, scholars, year } = graph.provenance(key);
      const since = graph.sources.get(key)?.year ?? year;
      const origins = [key, ...sources, ...via, ...scholars];
      return (asOf === undefined || since === null || since <= asOf) && !origins.some((one) => lost.has(one));
    });
}

function eventsOf({ says }: Said): readonly string[] {
  return says.flatMap(({ from, to }) => [from, to]).filter((event) => event !== zero);
}

/** All that is said of some events, of the events that names besides, and so on. */
function tiedTo(events: readonly string[], said: readonly Said[]): readonly Said[] {
  const reached = new Set(events);
  const tied = new Set<Said>();
  for (let size = -1; size !== tied.size;) {
    size = tied.size;
    for (const one of said) {
      const own = eventsOf(one);
      if (tied.has(one) || !own.some((event) => reached.has(event))) continue;
      tied.add(one);
      for (const event of own) reached.add(event);
    }
  }
  return said.filter((one) => tied.has(one));
}

/** An event with its words; none for one that is withheld, or of which only something withheld tells. */
function shownEvent(
  event: string,
  asked: readonly string[],
  tied: readonly Said[],
  events: Events,
  withheld: (id: Id) => boolean,
): readonly DatedEvent[] {
  const { record, text } = events.described(event);
  const told = tied.some((one) => eventsOf(one).includes(event) && !withheld(one.record));
  const isAsked = asked.includes(event);
  if ((record !== null && withheld(record)) || (!isAsked && !told)) return [];
  return [{ event, record, text, asked: isAsked }];
}

function unknownEvent(name: string, graph: Graph, named: ReadonlySet<string>, events: Events): Text {
  const withheld = withheldIn(graph);
  const words = [...named].flatMap((event) => {
    const { record, text } = events.described(event);
    return record === null && text !== "" ? [text] : [];
  });
  const artefacts = graph.list("artefacts").flatMap(({ id }) => (withheld(id) ? [] : [id]));
  const near = nearest(name, [...artefacts, ...words]);
  return near.length > 0
    ? say`Unknown event \`${name}\`, expected an artefact, or an event that a relation or a history names such as ${either(near.map(coded))}`
    : say`Unknown event \`${name}\`, expected an artefact, or an event that a relation or a history names`;
}
