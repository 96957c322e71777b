import type { Id } from "../../../base/finding.ts";
import { parseEdtf } from "../../../base/date/edtf.ts";
import { wholesOf } from "../../../judge/rules/measurements/compare.ts";
import { labelOf } from "../../../link/label.ts";
import { dateWords } from "../../pages/date-words.ts";
import { citationPieces } from "../../pages/fields.ts";
import { joined } from "../../pages/pieces.ts";
import type { Piece } from "../../pages/pieces.ts";
import type { Reported } from "../../report/report.ts";
import { withheldIn } from "../../withhold.ts";

/** What may happen to a thing after it was made. */
export type EventKind = "excavation" | "conservation" | "restoration" | "move" | "sampling" | "loss";

/** Something that happened to a thing, to what it is part of, or to a part of it. */
export interface Event {
  readonly kind: EventKind;
  readonly what: string;
  readonly when: string;
  /** First and last year it can be, astronomical; null where that end is open. */
  readonly low: number | null;
  readonly high: number | null;
  /** The year is given as about or as doubtful. */
  readonly vague: boolean;
  /** The things it befell, where that is not just the thing itself. */
  readonly befell: readonly { readonly id: Id; readonly name: string }[];
  readonly from: readonly Piece[];
  /** After it the thing itself is not as it was left. */
  readonly alters: boolean;
}

/** Kinds of events after which a thing is not the same to look at (format.md 6). */
export const altering: readonly EventKind[] = ["loss", "restoration", "conservation", "sampling"];

/** The history of a thing with that of its wholes and its parts, in order; what befell several at once is told once. */
export function eventsOfThing({ graph, judgement, lens }: Reported, id: Id): readonly Event[] {
  const withheld = withheldIn(graph);
  const wholes = wholesOf(id, graph);
  const things = [...new Set([...wholes, ...graph.withParts(id)])].filter(
    (one) => judgement.counts(one) && !withheld(one),
  );
  const events = new Map<string, Event>();
  for (const thing of things) {
    const record = graph.records.get(thing);
    if (record?.list !== "artefacts") continue;
    for (const { when, what, kind, from = [] } of record.values.history ?? []) {
      const read = parseEdtf(when);
      if (!("ok" in read)) continue;
      const cited = from.filter((one) => inPrint(one.key));
      if (from.length > 0 && cited.length === 0) continue;
      const key = [when, kind, what].join("\n");
      const before = events.get(key);
      const befell = [...(before?.befell ?? []), { id: thing, name: labelOf(graph, thing) }];
      events.set(key, {
        kind,
        what,
        when: dateWords(when),
        low: read.ok.low,
        high: read.ok.high,
        vague: read.ok.approximate || read.ok.uncertain,
        befell,
        from: joined(
          cited.map((one) => citationPieces(graph, one)),
          "; ",
        ),
        alters: altering.includes(kind) && befell.some((one) => wholes.includes(one.id)),
      });
    }
  }
  const own = (event: Event): Event =>
    event.befell.length === 1 && event.befell[0]?.id === id ? { ...event, befell: [] } : event;
  return [...events.values()].map(own).sort((a, b) => yearOf(a) - yearOf(b));

  /** What a source not yet in print, or withheld, tells is not told. */
  function inPrint(key: Id): boolean {
    const passage = graph.records.get(key)?.list === "passages";
    const year = passage ? graph.provenance(key).year : (graph.sources.get(key)?.year ?? null);
    return !withheld(key) && (lens.asOf === undefined || year === null || year <= lens.asOf);
  }
}

function yearOf({ low, high }: Event): number {
  return low ?? high ?? -Infinity;
}
