import type { Id } from "../../../base/finding.ts";
import { byText, byYear } from "../../../base/order.ts";
import { parseEdtf } from "../../../base/date/edtf.ts";
import { altering, wholesOf } from "../../../judge/rules/measurements/compare.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { labelText } from "../../../link/names/label.ts";
import { dateWords } from "../../pages/date-words.ts";
import { citedPieces } from "../../pages/fields.ts";
import type { Piece } from "../../pages/pieces.ts";
import type { Citation } from "../../../read/grammar/field.ts";
import type { Reported } from "../../report/report.ts";
import { citableUnder, shownUnder } from "../../withhold.ts";

/** What may happen to a thing after it was made. */
export type EventKind = "excavation" | "conservation" | "restoration" | "move" | "sampling" | "loss";

/** Something that happened to a thing, to what it is part of, or to a part of it. */
export interface Event {
  readonly kind: EventKind;
  readonly what: string;
  readonly when: Text;
  /** First and last year it can be, astronomical; null where that end is open. */
  readonly low: number | null;
  readonly high: number | null;
  /** The year is given as about or as doubtful. */
  readonly vague: boolean;
  /** The things it befell, where that is not just the thing itself. */
  readonly befell: readonly { readonly id: Id; readonly name: Text }[];
  readonly from: readonly Piece[];
  /** After it the thing itself is not as it was left. */
  readonly alters: boolean;
}

/**
 * The history of a thing with that of its wholes and its parts, in order; what befell several at once is told once, with
 * everybody who tells it. Under a year nothing that only later sources tell, and without a source nothing later.
 */
export function eventsOfThing(model: Reported, id: Id): readonly Event[] {
  const { graph, lens } = model;
  const citable = citableUnder(model);
  const wholes = wholesOf(id, graph);
  const things = [...new Set([...wholes, ...graph.withParts(id)])].filter(shownUnder(model));
  const events = new Map<string, Told>();
  for (const thing of things) {
    const record = graph.records.get(thing);
    if (record?.list !== "artefacts") continue;
    for (const { when, what, kind, from = [] } of record.values.history ?? []) {
      const read = parseEdtf(when);
      if (!("ok" in read)) continue;
      const { low, high } = read.ok;
      const cited = from.filter((one) => citable(one.key));
      if (from.length > 0 ? cited.length === 0 : (low ?? high ?? -Infinity) > (lens.asOf ?? Infinity))
        continue;
      const key = [when, kind, what].join("\n");
      const before = events.get(key);
      const befell = [...(before?.befell ?? []), { id: thing, name: labelText(graph, thing) }];
      events.set(key, {
        kind,
        what,
        when: dateWords(when),
        low,
        high,
        vague: read.ok.approximate || read.ok.uncertain,
        befell,
        cited: [...(before?.cited ?? []), ...cited],
        alters: altering.includes(kind) && befell.some((one) => wholes.includes(one.id)),
      });
    }
  }
  // In one year the months and days are in order by how they are written, with which the key begins.
  return [...events]
    .sort(
      ([a, one], [b, other]) => byYear("first")(one.low ?? one.high, other.low ?? other.high) || byText(a, b),
    )
    .map(([, { cited, befell, ...event }]): Event => {
      const itself = befell.length === 1 && befell[0]?.id === id;
      const from = citedPieces(graph, [...new Map(cited.map((one) => [placeOf(one), one])).values()]);
      return { ...event, befell: itself ? [] : befell, from };
    });
}

interface Told extends Omit<Event, "from"> {
  readonly cited: readonly Citation[];
}

function placeOf({ key, locator }: Citation): string {
  return `${key} ${locator ?? ""}`;
}
