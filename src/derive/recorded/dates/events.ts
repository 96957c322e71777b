import type { Id } from "../../../base/finding.ts";
import { folded } from "../../../link/dimension.ts";
import type { Graph } from "../../../link/graph.ts";
import { labelOf } from "../../../link/names/label.ts";

/** Something that happened: the making of an artefact, an entry of its history, or an event in words. */
export interface Events {
  /** The event that a relation or claim means: the making of an artefact it names, or what happened in its words. */
  readonly meant: (written: string) => string;
  readonly made: (artefact: Id) => string;
  readonly entry: (artefact: Id, place: number) => string;
  /** The event a claim dates, where it dates only one; else one of its own. */
  readonly claimed: (claim: Id) => string;
  readonly labelOf: (event: string) => string;
  /** The artefact an event is about, where it is about one, and what happened; empty for the making of the artefact. */
  readonly described: (event: string) => { readonly record: Id | null; readonly text: string };
}

/**
 * The events of a corpus. Texts are one event where they are equal in NFC without regard to case and spaces; an entry
 * of a history is the event of its text only when no other entry says the same, for many things are restored.
 */
export function eventsIn(graph: Graph): Events {
  const texts = new Map<string, string>();
  const records = new Map<string, Id>();
  const named = (event: string, text: string): string => {
    if (!texts.has(event)) texts.set(event, text);
    return event;
  };
  const recorded = (event: string, id: Id): string => {
    records.set(event, id);
    return event;
  };
  const entries = new Map<string, string | null>();
  const histories = new Map<string, { readonly record: Id; readonly text: string }>();
  const made = (artefact: Id): string => recorded(`made: ${artefact}`, artefact);
  const entry = (artefact: Id, place: number): string => `history: ${artefact} ${place}`;
  for (const { id, values } of graph.list("artefacts")) {
    (values.history ?? []).forEach(({ what }, place) => {
      const text = folded(what);
      histories.set(entry(id, place), { record: id, text: what });
      entries.set(text, entries.has(text) ? null : named(entry(id, place), what));
    });
  }
  const meant = (written: string): string => {
    if (graph.records.get(written)?.list === "artefacts") return made(written);
    const text = folded(written);
    return entries.get(text) ?? named(`event: ${text}`, written);
  };
  const claimed = (claim: Id): string => {
    const record = graph.records.get(claim);
    const dated = record?.list === "claims" ? (record.values.dates ?? []) : [];
    const dates = new Set(dated.map(({ event }) => meant(event)));
    const [only] = dates;
    return only !== undefined && dates.size === 1 ? only : recorded(`claim: ${claim}`, claim);
  };
  const label = (event: string): string => {
    const record = records.get(event);
    return record === undefined ? (texts.get(event) ?? event) : labelOf(graph, record);
  };
  const described = (event: string): ReturnType<Events["described"]> =>
    histories.get(event) ?? { record: records.get(event) ?? null, text: texts.get(event) ?? "" };
  return { meant, made, entry, claimed, labelOf: label, described };
}
