import type { Statement } from "../../../base/date/differences.ts";
import type { Id } from "../../../base/finding.ts";
import type { Linked } from "../../../link/graph.ts";
import type { Citation } from "../../../read/grammar/field.ts";
import type { Events } from "./events.ts";
import { atMost, between, isLoose, precedes, spanIn, within } from "./years.ts";

/** What a record says of dates, as differences of years. */
export interface Said extends Statement {
  readonly kind: "claim" | "relation" | "history" | "date";
  readonly record: Id;
  /** Which entry of the history. */
  readonly place: number | null;
  /** Whether a date it gives is only approximate or uncertain. */
  readonly loose: boolean;
}

/** What a relation says: one before the other, so far apart, or at one time. */
export function related({ id, values }: Linked<"relations">, events: Events): Said {
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

/** What the history of an artefact says: when each entry was, and that the thing was made by then. */
export function historyOf(
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

/** When an artefact was made: from the first year that any date given of an artefact allows to the last. */
export function dateOf(
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
