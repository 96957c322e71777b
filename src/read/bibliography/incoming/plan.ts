import type { Id } from "../../../base/finding.ts";
import { yearOf } from "../date.ts";
import { madeId } from "../ris.ts";
import { emptyIndex } from "./alike/alike.ts";
import type { Likeness } from "./alike/alike.ts";
import { freeKeys } from "./alike/free-key.ts";
import type { Arrived, Entry } from "./arrived.ts";
import { mergeOf } from "./fields/merge.ts";
import type { Merge } from "./fields/merge.ts";
import { comingAlong } from "./relatives.ts";
import type { Along } from "./relatives.ts";
import type { Held, Shelf } from "./shelf.ts";

/** What becomes of an entry; of a merge, the fields that differ and are taken from what came in. */
export type Choice =
  | { readonly do: "add" }
  | { readonly do: "leave" }
  | { readonly do: "merge"; readonly take: readonly string[] };

/** An entry that another is like: one of the corpus, or one that came in before it. */
export type Twin =
  | { readonly of: "corpus"; readonly held: Held; readonly why: readonly Likeness[] }
  | { readonly of: "file"; readonly place: number; readonly why: readonly Likeness[] };

/** What becomes of one entry that came in. */
export interface Outcome {
  /** Among all entries that came in, from 0. */
  readonly place: number;
  readonly arrived: Arrived;
  readonly entry: Entry;
  /** What it is taken for, the most like first. */
  readonly twins: readonly Twin[];
  /** It is like something that nothing may be told of, and is left alone. */
  readonly hidden: boolean;
  readonly choice: Choice;
  /** The key that it has in the corpus; null where it is not added. */
  readonly key: Id | null;
  /** Whether that is its own, one made for it, or another since its own is taken. */
  readonly keyIs: "own" | "made" | "freed";
  /** The key of an entry that lends it fields, so that it comes along unasked; null otherwise. */
  readonly for: Id | null;
  /** What merging it into the corpus's entry comes to; null where there is none to merge it into. */
  readonly merge: Merge | null;
}

/** All that came in, and what becomes of each. */
export interface Plan {
  readonly shelf: Shelf;
  readonly arrived: readonly Arrived[];
  readonly outcomes: readonly Outcome[];
  /** Lenders of BibTeX that are no sources and come along. */
  readonly along: readonly Along[];
}

/** What is asked of an import: choices by place, what to do with what is there already, and what may not be told of. */
export interface Asked {
  readonly choices: ReadonlyMap<number, Choice>;
  readonly duplicates: "leave" | "merge";
  readonly isHidden: (key: Id) => boolean;
  /** Places of entries that cannot come in, whatever was chosen: they are left out, and bring none along. */
  readonly refused?: ReadonlySet<number>;
}

/** Plans an import: what is like a source of the corpus, or like an entry before it, is left alone unless it was asked for otherwise. */
export function planned(shelf: Shelf, arrived: readonly Arrived[], asked: Asked): Plan {
  const before = emptyIndex<number>();
  const entries = arrived.flatMap((one) => one.entries.map((entry) => ({ arrived: one, entry })));
  const unseen = new Set<number>();
  const drafts = entries.map(({ arrived: file, entry }, place) => {
    const twins = twinsOf(shelf, before, entry);
    before.add(entry.source, place);
    const held = twins.find((one) => one.of === "corpus")?.held ?? null;
    const named = !entry.keyless && asked.isHidden(entry.source.key);
    const hidden =
      named ||
      twins.some((one) =>
        one.of === "corpus" ? asked.isHidden(one.held.source.key) : unseen.has(one.place),
      );
    if (hidden) unseen.add(place);
    const merge = held && !hidden ? mergeOf(held, file, entry) : null;
    const own = twins.filter((one) => !besideIt(one, entry, file, entries));
    const choice = hidden || asked.refused?.has(place) ? leave : chosen(asked, place, own, merge);
    return { place, arrived: file, entry, twins, hidden, choice, merge };
  });
  const wanted = new Set(drafts.filter((one) => one.choice.do === "add").map((one) => one.place));
  const along = comingAlong(shelf, entries, wanted, asked.refused);
  const added = drafts.filter((one) => wanted.has(one.place) || along.sources.has(one.place));
  const keys = keysFor(
    shelf,
    added.map(({ place, entry }) => ({ place, wanted: wantedKey(entry) })),
    along.lenders,
  );
  const outcomes = drafts.map((one): Outcome => {
    const key = keys.sources.get(one.place) ?? null;
    const keyIs = key === null || key === one.entry.source.key ? "own" : "freed";
    return {
      ...one,
      key,
      keyIs: one.entry.keyless && (keyIs === "own" || key === wantedKey(one.entry)) ? "made" : keyIs,
      for: wanted.has(one.place) ? null : (along.sources.get(one.place) ?? null),
    };
  });
  const lenders = along.lenders.map((one, n): Along => ({ ...one, key: keys.lenders[n] ?? one.key }));
  return { shelf, arrived, outcomes, along: lenders };
}

const leave: Choice = { do: "leave" };

function chosen(asked: Asked, place: number, twins: readonly Twin[], merge: Merge | null): Choice {
  const choice = asked.choices.get(place);
  if (choice && (choice.do !== "merge" || merge)) return choice;
  if (twins.length === 0) return { do: "add" };
  return merge && asked.duplicates === "merge" ? { do: "merge", take: [] } : leave;
}

/** Whether a twin stands in the same file under a key of its own: somebody wanted both. */
function besideIt(
  twin: Twin,
  entry: Entry,
  file: Arrived,
  entries: readonly { readonly arrived: Arrived; readonly entry: Entry }[],
): boolean {
  const other = twin.of === "file" ? entries[twin.place] : undefined;
  if (!other || other.arrived !== file || entry.keyless || other.entry.keyless) return false;
  return other.entry.source.key !== entry.source.key;
}

function twinsOf(shelf: Shelf, before: ReturnType<typeof emptyIndex<number>>, entry: Entry): readonly Twin[] {
  const { source, keyless } = entry;
  return [
    ...shelf.index.like(source, !keyless).map(({ as, why }): Twin => ({ of: "corpus", held: as, why })),
    ...before.like(source, !keyless).map(({ as, why }): Twin => ({ of: "file", place: as, why })),
  ];
}

function wantedKey({ source, keyless, bib, text }: Entry): Id {
  const placeholder = keyless && (bib !== null || text.startsWith("{"));
  return placeholder ? madeId(source.csl, source.year ?? yearOf(source.csl.issued)) : source.key;
}

interface Keys {
  readonly sources: ReadonlyMap<number, Id>;
  readonly lenders: readonly Id[];
}

/** Keys for what is added: those that are free are kept before any other is made, so that none takes another's. */
function keysFor(
  shelf: Shelf,
  sources: readonly { readonly place: number; readonly wanted: Id }[],
  lenders: readonly Along[],
): Keys {
  const keys = freeKeys(shelf.taken);
  const given = new Map<number, Id>();
  for (const { place, wanted } of sources) if (keys.isFree(wanted)) given.set(place, keys.take(wanted));
  for (const { place, wanted } of sources) if (!given.has(place)) given.set(place, keys.take(wanted));
  return { sources: given, lenders: lenders.map((one) => keys.take(one.key)) };
}
