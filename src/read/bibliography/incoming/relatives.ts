import type { Id } from "../../../base/finding.ts";
import type { BibEntry } from "../bibtex/lexer.ts";
import type { Source } from "../source.ts";
import { saidBy } from "./alike/alike.ts";
import type { Arrived, Entry } from "./arrived.ts";
import { goalFor } from "./shelf.ts";
import type { Holding, Shelf } from "./shelf.ts";

/** A lender of fields that is no source and comes along, with the key that it gets. */
export interface Along {
  readonly arrived: Arrived;
  readonly bib: BibEntry;
  readonly key: Id;
}

/** Fields by which an entry needs others of its file: it has fields or members from them (biblatex manual, 2.2.3). */
const needs: ReadonlySet<string> = new Set(["crossref", "xdata", "entryset"]);

/** Fields that name other entries of the file. */
export const naming: ReadonlySet<string> = new Set([...needs, "xref", "related"]);

interface Came {
  readonly arrived: Arrived;
  readonly entry: Entry;
}

/** What must come along for entries that are added: sources by place with the key of what needs them, and lenders that are none. */
export function comingAlong(
  shelf: Shelf,
  entries: readonly Came[],
  wanted: ReadonlySet<number>,
  refused: ReadonlySet<number> = new Set(),
): { readonly sources: ReadonlyMap<number, Id>; readonly lenders: readonly Along[] } {
  const sources = new Map<number, Id>();
  const lenders = new Map<BibEntry, Along>();
  const { holding } = goalFor(shelf, "bib");
  const ways = waysIn(entries);
  const open: { readonly arrived: Arrived; readonly bib: BibEntry }[] = [];
  for (const place of wanted) {
    const came = entries[place];
    if (came?.entry.bib) open.push({ arrived: came.arrived, bib: came.entry.bib });
  }
  for (let one = open.pop(); one; one = open.pop()) {
    const { arrived, bib } = one;
    for (const key of neededBy(bib)) {
      const place = ways.get(arrived)?.get(key);
      const came = place === undefined ? undefined : entries[place];
      if (place !== undefined && came?.entry.bib) {
        if (wanted.has(place) || sources.has(place) || refused.has(place)) continue;
        if (sameSource(holding, came.entry)) continue;
        sources.set(place, bib.key);
        open.push({ arrived, bib: came.entry.bib });
        continue;
      }
      const lender = arrived.lenders.find((other) => other.key === key);
      if (!lender || lenders.has(lender) || sameLender(holding, lender)) continue;
      lenders.set(lender, { arrived, bib: lender, key });
      open.push({ arrived, bib: lender });
    }
  }
  const inOrder = [...lenders.values()].toSorted((a, b) => a.bib.span.start - b.bib.span.start);
  return { sources, lenders: inOrder };
}

function waysIn(entries: readonly Came[]): ReadonlyMap<Arrived, ReadonlyMap<Id, number>> {
  const ways = new Map<Arrived, Map<Id, number>>();
  entries.forEach(({ arrived, entry }, place) => {
    const own = ways.get(arrived) ?? new Map<Id, number>();
    ways.set(arrived, own);
    if (!own.has(entry.source.key)) own.set(entry.source.key, place);
  });
  return ways;
}

function neededBy(bib: BibEntry): readonly Id[] {
  return bib.fields
    .filter((field) => needs.has(field.name))
    .flatMap((field) => field.text.split(","))
    .map((key) => key.trim())
    .filter((key) => key !== "");
}

const known = new WeakMap<Holding, ReadonlyMap<string, readonly Id[]>>();

/** The source of a bibliography that says the same throughout as an entry; undefined where there is none. */
export function sameSource(holding: Holding | null, entry: Entry): Id | undefined {
  if (!holding) return undefined;
  const all = known.get(holding) ?? keysBySaid(holding);
  known.set(holding, all);
  const same = all.get(saidWith(entry.source)) ?? [];
  return same.includes(entry.source.key) ? entry.source.key : same[0];
}

function keysBySaid({ sources }: Holding): ReadonlyMap<string, readonly Id[]> {
  const keys = new Map<string, Id[]>();
  for (const source of sources) {
    const said = saidWith(source);
    const list = keys.get(said);
    if (list) list.push(source.key);
    else keys.set(said, [source.key]);
  }
  return keys;
}

const saidWith = (source: Source): string => `${source.members.length} ${saidBy(source)}`;

/** The lender of a bibliography that lends the same as one that came in; undefined where there is none. */
export function sameLender(holding: Holding | null, lender: BibEntry): Id | undefined {
  const said = fieldsText(lender);
  return holding?.lexed.find((one) => one.type === "xdata" && fieldsText(one) === said)?.key;
}

function fieldsText(bib: BibEntry): string {
  return JSON.stringify(bib.fields.map(({ name, text }) => [name, text]));
}
