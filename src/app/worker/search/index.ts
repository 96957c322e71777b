import { nearest } from "../../../base/nearest.ts";
import { byText } from "../../../base/order.ts";
import type { SearchDocument } from "../../../show/search/document.ts";
import { hitOf } from "../../../show/search/excerpt.ts";
import type { Sight } from "../../../show/search/excerpt.ts";
import type { Found, HitGroup } from "../../../show/search/found.ts";
import { tokensOf } from "../../../show/search/fold.ts";
import { likeness, queryOf } from "../../../show/search/query.ts";
import type { Query, Sought } from "../../../show/search/query.ts";
import { matchesIn, shardOf } from "./shard.ts";
import type { Match, Shard } from "./shard.ts";
import { shelvesOf } from "./shelves.ts";
import type { Shelf } from "./shelves.ts";
import { indexed, stemOf, termsOf, unindexed } from "./terms.ts";

/** The whole corpus's index, in shards of which only those are built again whose texts changed. */
export interface SearchIndex {
  /** Takes the corpus as it is now; until what changed is built, it answers with the rest. */
  readonly take: (documents: readonly SearchDocument[]) => void;
  /** Builds one shard; false where nothing is left to build. */
  readonly step: () => boolean;
  /** How many of the shards are built, and of how many. */
  readonly built: () => { readonly done: number; readonly of: number };
  /** At most `most` hits of each kind, or of one kind alone. */
  readonly find: (text: string, most: number, kind?: string | null) => Found;
}

interface Slot {
  readonly shelf: Shelf;
  /** The index that answers; its documents are of an earlier state while the shelf waits to be built. */
  readonly shard: Shard | null;
  readonly waits: boolean;
}

/** An empty index. */
export function searchIndex(): SearchIndex {
  let slots: readonly Slot[] = [];
  let current: ReadonlyMap<string, SearchDocument> = new Map();

  const take = (documents: readonly SearchDocument[]): void => {
    const before = new Map(slots.map((slot) => [slot.shelf.name, slot]));
    current = new Map(documents.map((document) => [document.id, document]));
    slots = shelvesOf(documents).map((shelf) => {
      const old = before.get(shelf.name);
      const same = old !== undefined && !old.waits && sameTexts(old.shelf, shelf);
      return { shelf, shard: old?.shard ?? null, waits: !same };
    });
  };
  const step = (): boolean => {
    const place = slots.findIndex((slot) => slot.waits);
    const slot = slots[place];
    if (!slot) return false;
    const built = { shelf: slot.shelf, shard: shardOf(slot.shelf.documents), waits: false };
    slots = slots.with(place, built);
    return slots.some((one) => one.waits);
  };
  /** What was found, as it is now: a document that is gone or was changed since it was indexed is not told. */
  const matches = (query: Query, need: "all" | "any"): readonly Match[] =>
    slots
      .flatMap((slot) => (slot.shard ? matchesIn(slot.shard, query, need) : []))
      .flatMap((match) => {
        const document = current.get(match.document.id);
        if (!document || !sameText(match.document, document)) return [];
        return document === match.document ? [match] : [{ ...match, document }];
      });
  const shards = (): readonly Shard[] => slots.flatMap((slot) => slot.shard ?? []);
  return {
    take,
    step,
    built: () => ({ done: slots.filter((slot) => !slot.waits).length, of: slots.length }),
    find: (text, most, kind = null) => {
      const query = queryOf(text);
      const whole = matches(query, "all");
      const some = whole.length > 0 || query.words.length < 2 ? [] : matches(query, "any");
      const match = whole.length > 0 ? "all" : some.length > 0 ? "some" : "none";
      const unknown = match === "all" ? [] : unknownWords(query.words, shards());
      const kept = match === "all" ? whole : some;
      const groups = groupsOf(kept, sightOf(query.words), most, kind);
      const slips = kept.filter((one) => one.slip).length;
      return { text, match, count: kept.length, slips, groups, unknown, cut: query.cut };
    },
  };
}

function sameTexts(a: Shelf, b: Shelf): boolean {
  return (
    a.documents.length === b.documents.length &&
    a.documents.every((one, place) => {
      const other = b.documents[place];
      return other !== undefined && sameText(one, other);
    })
  );
}

/** Whether two documents are found by the same words; they may stand on other lines. */
function sameText(one: SearchDocument, other: SearchDocument): boolean {
  return (
    one === other ||
    (one.id === other.id &&
      one.title === other.title &&
      one.texts.length === other.texts.length &&
      one.texts.every((text, at) => {
        const same = other.texts[at];
        return same?.text === text.text && same.lang === text.lang && same.weight === text.weight;
      }))
  );
}

function groupsOf(
  matches: readonly Match[],
  sight: Sight,
  most: number,
  only: string | null,
): readonly HitGroup[] {
  const byKind = new Map<string, Match[]>();
  for (const match of matches.toSorted(bestFirst)) {
    const those = byKind.get(match.document.kind);
    if (those) those.push(match);
    else byKind.set(match.document.kind, [match]);
  }
  return [...byKind].map(([kind, those]) => {
    const shown = those.slice(0, only === null || only === kind ? most : 0);
    return { kind, count: those.length, hits: shown.map((one) => hitOf(one.document, sight)) };
  });
}

function bestFirst(a: Match, b: Match): number {
  return (
    b.words - a.words ||
    Number(a.slip) - Number(b.slip) ||
    b.rank - a.rank ||
    byText(a.document.id, b.document.id)
  );
}

function sightOf(words: readonly Sought[]): Sight {
  const known = new Map<string, ReturnType<Sight["meant"]>>();
  const meant = (term: string): ReturnType<Sight["meant"]> => {
    let best: ReturnType<Sight["meant"]> = null;
    words.forEach((word, place) => {
      const like = likeness(term, word, stemOf(word.folded));
      if (like > (best?.likeness ?? 0)) best = { word: place, likeness: like };
    });
    return best;
  };
  return {
    termsOf,
    meant: (term) => {
      const before = known.get(term);
      if (before !== undefined) return before;
      const fresh = meant(term);
      known.set(term, fresh);
      return fresh;
    },
  };
}

/** The words that stand nowhere, each with those of the corpus most like it, as they are written there. */
function unknownWords(words: readonly Sought[], shards: readonly Shard[]): Found["unknown"] {
  const nowhere = words.filter((word) => {
    const terms = [indexed(word.folded), indexed(stemOf(word.folded))];
    return !shards.some((shard) => terms.some((term) => term in shard.postings));
  });
  if (nowhere.length === 0) return [];
  // Figures are not guessed at.
  const vocabulary = new Set(shards.flatMap(({ terms }) => terms.filter((term) => unindexed(term) === term)));
  return nowhere.map((word) => ({
    word: word.typed,
    nearest: nearest(word.folded, vocabulary, 6)
      .flatMap((term) => writtenAs(term, shards) ?? [])
      .slice(0, 3),
  }));
}

/** A word of the index as a text writes it; null for one that only the index has, such as a stem. */
function writtenAs(term: string, shards: readonly Shard[]): string | null {
  for (const { documents, postings } of shards) {
    for (const place of Object.values(postings[indexed(term)] ?? {}).flatMap((refs) => Object.keys(refs))) {
      for (const { text } of documents[Number(place)]?.texts ?? []) {
        const token = tokensOf(text).find((one) => one.folded === term);
        if (token) return text.slice(token.start, token.end);
      }
    }
  }
  return null;
}
