import type { Id } from "../../../base/finding.ts";
import { byText, byYear } from "../../../base/order.ts";
import type { RecordAction, Together } from "../../../link/edit/action.ts";
import type { AnyLinked, Graph, Linked } from "../../../link/graph.ts";
import { ownWritten } from "../../../read/edit/head.ts";
import type { WrittenMap } from "../../../read/edit/written.ts";
import { withheldIn } from "../../withhold.ts";

/** What became of a source; null where nobody has said so. */
export type Status = Linked<"readings">["values"]["status"];

/** The statuses in the order of the work. */
export const statuses: readonly Status[] = ["to-read", "read", "nothing-in-it", "not-found"];

/** Kinds of records that are taken from what is read. */
export const takenKinds = ["passages", "positions", "observations", "measurements"] as const;

/** Something about a source that does not go together. */
export type Odd =
  /** Records were taken from it at first hand, though it is not said to have been read. */
  | "taken-unread"
  /** Records were taken from it, though there is said to be nothing in it. */
  | "taken-from-nothing"
  /** It is said to have been read, and nothing was taken from it. */
  | "read-for-nothing";

/** A reading as it is written. */
export interface Reading {
  readonly id: Id;
  readonly seen: WrittenMap;
}

/** One source of the reading list. */
export interface ReadingLine {
  readonly key: Id;
  readonly label: string;
  readonly title: string;
  readonly year: number | null;
  readonly status: Status | null;
  /** The day of the status and its note, as they are written. */
  readonly when: string | null;
  readonly note: string | null;
  /** The reading that says so, as it is written; null where there is none. */
  readonly reading: Reading | null;
  /** Other readings of it, which say what was so before, or the same. */
  readonly others: readonly Reading[];
  /** How many records of each kind were taken from it at first hand. */
  readonly taken: readonly (readonly [kind: (typeof takenKinds)[number], count: number])[];
  /** How many records know it only through another source. */
  readonly secondHand: number;
  readonly odd: Odd | null;
}

const known = new WeakMap<Graph, readonly ReadingLine[]>();

/** All sources by the year in which they came into print, with what became of each. */
export function readingList(graph: Graph): readonly ReadingLine[] {
  const list = known.get(graph) ?? linesIn(graph);
  known.set(graph, list);
  return list;
}

function linesIn(graph: Graph): readonly ReadingLine[] {
  const withheld = withheldIn(graph);
  const readings = readingsOf(graph.list("readings").filter(({ id }) => !withheld(id)));
  const { firstHand, secondHand } = takenFrom(graph, withheld);
  return [...graph.sources.values()]
    .filter(({ key }) => !withheld(key))
    .map((source): ReadingLine => {
      const { key, label, year, csl } = source;
      const [reading = null, ...others] = readings.get(key) ?? [];
      const written = reading === null ? {} : ownWritten(reading);
      const own = firstHand.get(key) ?? new Map<string, number>();
      const taken = takenKinds.flatMap((kind) => {
        const count = own.get(kind) ?? 0;
        return count > 0 ? [[kind, count] as const] : [];
      });
      const status = reading?.values.status ?? null;
      return {
        key,
        label,
        title: csl.title ?? "",
        year,
        status,
        when: textOf(written["when"]),
        note: textOf(written["note"]),
        reading: reading && { id: reading.id, seen: written },
        others: others.map((one) => ({ id: one.id, seen: ownWritten(one) })),
        taken,
        secondHand: secondHand.get(key) ?? 0,
        odd: oddOf(status, taken.length > 0),
      };
    })
    .toSorted((a, b) => byYear("last")(a.year, b.year) || byText(a.label, b.label));
}

const textOf = (written: unknown): string | null =>
  typeof written === "string" && written !== "" ? written : null;

function oddOf(status: Status | null, isTaken: boolean): Odd | null {
  if (isTaken && (status === "to-read" || status === "not-found")) return "taken-unread";
  if (isTaken && status === "nothing-in-it") return "taken-from-nothing";
  return !isTaken && status === "read" ? "read-for-nothing" : null;
}

/** The readings of each source, the present one first: that with the latest day, of equals the last in the corpus. */
function readingsOf(readings: readonly Linked<"readings">[]): ReadonlyMap<Id, readonly Linked<"readings">[]> {
  const all = new Map<Id, Linked<"readings">[]>();
  for (const reading of readings)
    for (const key of new Set(reading.values.from.map((one) => one.key)))
      all.set(key, [reading, ...(all.get(key) ?? [])]);
  const day = (one: Linked<"readings">): string => textOf(ownWritten(one)["when"]) ?? "";
  return new Map([...all].map(([key, of]) => [key, of.toSorted((a, b) => byText(day(b), day(a)))]));
}

function takenFrom(graph: Graph, withheld: (id: Id) => boolean) {
  const firstHand = new Map<Id, Map<string, number>>();
  const secondHand = new Map<Id, number>();
  const count = ({ id, list }: AnyLinked): void => {
    const { sources, via } = graph.provenance(id);
    for (const key of new Set(sources)) {
      if (via.length > 0) secondHand.set(key, (secondHand.get(key) ?? 0) + 1);
      else {
        const kinds = firstHand.get(key) ?? new Map<string, number>();
        firstHand.set(key, kinds.set(list, (kinds.get(list) ?? 0) + 1));
      }
    }
  };
  for (const kind of takenKinds)
    for (const record of graph.list(kind)) if (!withheld(record.id)) count(record);
  return { firstHand, secondHand };
}

/**
 * Has sources said to have a status since a day; null takes what was said away. A reading that several sources share is
 * changed only where all of them are meant, and else goes on for the others, with a reading more for those that are.
 */
export function statusAction(lines: readonly ReadingLine[], status: Status | null, when: string): Together {
  const meant = new Set(lines.map((line) => line.key));
  const fresh: Id[] = [];
  const changed = new Map<Id, RecordAction>();
  for (const { key, reading, others: before } of lines) {
    if (reading === null) fresh.push(key);
    // What is said of a source is in its latest reading; to say nothing of it takes all of them away.
    for (const { id, seen } of reading === null ? [] : status === null ? [reading, ...before] : [reading]) {
      const others = namedBy(seen).filter((one) => !meant.has(one));
      if (others.length === 0) {
        const values = status === null ? null : { ...seen, status, when };
        changed.set(id, values ? { do: "change", id, seen, values } : { do: "take", ids: [id], seen });
      } else if (status === null) {
        changed.set(id, { do: "change", id, seen, values: { ...seen, from: others } });
      } else fresh.push(key);
    }
  }
  const records = status === null ? [] : fresh.map((from) => ({ from, status, when }));
  const added: readonly RecordAction[] = records.length > 0 ? [{ do: "add", list: "readings", records }] : [];
  return { do: "together", actions: [...changed.values(), ...added] };
}

/** The sources that a reading names itself; none where it has its source from the head of its file. */
function namedBy({ from }: WrittenMap): readonly Id[] {
  const named = from === undefined ? [] : Array.isArray(from) ? from : [from];
  return named.flatMap((one) => (typeof one === "string" ? [one.split(/\s/u)[0] ?? ""] : []));
}
