import lunr from "lunr";
import { byText } from "../../../base/order.ts";
import type { SearchDocument, SearchText, Weight } from "../../../show/search/document.ts";
import { isTitle } from "../../../show/search/excerpt.ts";
import { forgives, likeness, slipped } from "../../../show/search/query.ts";
import type { Query, Sought } from "../../../show/search/query.ts";
import { indexed, stemOf, tokenizer, unicodeTrimmer, unindexed } from "./terms.ts";

/** Some documents of one kind with their index. */
export interface Shard {
  readonly documents: readonly SearchDocument[];
  readonly index: lunr.Index;
  /** For each word of the index the places of the documents that have it, by field. */
  readonly postings: Postings;
  /** The words of the index, in the order of their text. */
  readonly terms: readonly string[];
  /** Of the words that stand in many documents, where they do. */
  readonly often: ReadonlyMap<string, Seats>;
}

/** The places of the documents that have a word, each with the weight of the field where it stands. */
interface Seats {
  readonly places: Uint32Array;
  readonly weights: Uint8Array;
}

type Field = "name" | "says" | "tie";
type Postings = Readonly<Record<string, Readonly<Record<Field, Readonly<Record<string, object>>>>>>;

/** What the whole of a number or id counts for each of the words, wherever it stands. */
const exactly = 6;

/** A document that was found. */
export interface Match {
  readonly document: SearchDocument;
  /** How many of the words it has. */
  readonly words: number;
  /** One of them it has with a slip in it. */
  readonly slip: boolean;
  readonly rank: number;
}

/** A field counts so much: what a record is called, what it says, what it is tied to. */
const weights: Readonly<Record<Field, number>> = { name: 4, says: 2, tie: 1 };
const fields = Object.keys(weights) as readonly Field[];
const fieldOf: Readonly<Record<Weight, Field>> = {
  name: "name",
  number: "name",
  says: "says",
  key: "tie",
  tie: "tie",
};

/** Builds the index of some documents; it cannot be changed afterwards, only built again. */
export function shardOf(documents: readonly SearchDocument[]): Shard {
  const builder = new lunr.Builder();
  builder.tokenizer = tokenizer as typeof lunr.tokenizer;
  builder.pipeline.add(unicodeTrimmer);
  builder.searchPipeline.add(unicodeTrimmer);
  builder.ref("place");
  for (const field of fields) builder.field(field, { boost: weights[field] });
  documents.forEach((document, place) => {
    const texts = searchedTexts(document);
    const byField = fields.map((field) => [field, texts.filter((one) => fieldOf[one.weight] === field)]);
    builder.add({ place, ...Object.fromEntries(byField) });
  });
  const index = builder.build();
  const postings = builder.invertedIndex as Postings;
  const terms = Object.keys(postings).sort(byText);
  const limit = limitOf(documents);
  const often = new Map(
    terms
      .filter((term) => standsOften(postings, term, limit))
      .map((term) => [term, seatsOf(postings, term)] as const),
  );
  return { documents, index, postings, terms, often };
}

/** The texts with the title among them: the one that says it, or one more. */
function searchedTexts(document: SearchDocument): readonly SearchText[] {
  const { title, texts, line } = document;
  if (texts.some((one) => isTitle(one, title)))
    return texts.map((one) => (isTitle(one, title) ? { ...one, weight: "name" } : one));
  const lang = texts.find((one) => one.weight === "says")?.lang ?? null;
  return [...texts, { field: "title", text: title, lang, weight: "name", line, breaks: [] }];
}

/** Share of a shard's documents beyond which a word says so little that weighing it is not worth its cost. */
const common = 0.1;

function limitOf(documents: readonly SearchDocument[]): number {
  return Math.max(20, documents.length * common);
}

/** The documents of a shard that have all of the words, or any of them; in no order. */
export function matchesIn(shard: Shard, query: Query, need: "all" | "any"): readonly Match[] {
  if (query.words.length === 0) return [];
  const { documents } = shard;
  const count = documents.length;
  const marks = query.words.map(() => new Float32Array(count));
  const sure = query.words.map(() => new Uint8Array(count));
  const scores = new Float32Array(count);
  const least = need === "all" ? query.words.length : 1;
  const here = query.words.map((word) => termsHere(shard, word));
  const absent = query.words.some((word, at) => here[at]?.size === 0 && !forgives(word));
  if (absent && need === "all" && query.whole === null) return [];
  const often = here.map(({ size }) => size > limitOf(documents));
  for (const [at, { terms }] of here.entries()) {
    if (often[at] !== true) continue;
    for (const [term, like] of terms)
      mark(shard.often.get(term) ?? seatsOf(shard.postings, term), like, marks[at], sure[at]);
  }
  const rare = query.words.filter((_, at) => often[at] === false);
  const meaning = meaningOf(query, often);
  for (const { ref, score, matchData } of weighed(shard, query, rare)) {
    const place = Number(ref);
    scores[place] = score;
    for (const [term, inFields] of Object.entries(matchData.metadata as Record<string, object>)) {
      const weight = Math.max(...Object.keys(inFields).map((field) => weights[field as Field]));
      for (const [at, like] of meaning(term)) {
        raise(marks[at], place, like * weight);
        if (like > slipped) raise(sure[at], place, 1);
      }
    }
  }
  const found: Match[] = [];
  for (const [place, document] of documents.entries()) {
    let words = 0;
    let rank = 0;
    for (const mark of marks) {
      const worth = mark[place] ?? 0;
      if (worth > 0) words++;
      rank += worth;
    }
    if (words < least) continue;
    const score = scores[place] ?? 0;
    const slip = sure.filter((one) => one[place] === 1).length < words;
    found.push({ document, words, slip, rank: rank + score / (1 + score) });
  }
  return found;
}

/** The words of a shard that are a word that is looked for, of its stem, or begin so where it may go on; and how often they stand. */
function termsHere(
  shard: Shard,
  word: Sought,
): { readonly terms: readonly (readonly [string, number])[]; readonly size: number } {
  const stem = stemOf(word.folded);
  const beginning = word.open ? startingWith(shard.terms, indexed(word.folded)) : [];
  const terms = [...new Set([indexed(word.folded), indexed(stem), ...beginning])];
  return {
    terms: terms.map((term) => [term, likeness(unindexed(term), word, stem)] as const),
    size: terms.reduce((sum, term) => sum + sizeOf(shard, term), 0),
  };
}

/** Which of the words worth weighing a word of the index means; the whole of a number means all of them. */
function meaningOf(
  query: Query,
  often: readonly boolean[],
): (term: string) => readonly (readonly [number, number])[] {
  const known = new Map<string, readonly (readonly [number, number])[]>();
  return (inIndex) => {
    const before = known.get(inIndex);
    if (before) return before;
    const term = unindexed(inIndex);
    const fresh = query.words.flatMap((word, at) => {
      if (term === query.whole) return [[at, exactly] as const];
      const like = often[at] === false ? likeness(term, word, stemOf(word.folded)) : 0;
      return like > 0 ? [[at, like] as const] : [];
    });
    known.set(inIndex, fresh);
    return fresh;
  };
}

/** What the library finds of the words that are worth weighing, each with all that is like it. */
function weighed(shard: Shard, query: Query, words: readonly Sought[]): readonly lunr.Index.Result[] {
  if (words.length === 0 && query.whole === null) return [];
  return shard.index.query((q) => {
    for (const word of words) {
      const folded = indexed(word.folded);
      const stem = stemOf(word.folded);
      q.term(folded, { usePipeline: false, boost: 4 });
      if (stem !== word.folded) q.term(indexed(stem), { usePipeline: false, boost: 3 });
      if (word.open) q.term(folded, { usePipeline: false, boost: 2, wildcard: lunr.Query.wildcard.TRAILING });
      if (forgives(word)) q.term(folded, { usePipeline: false, boost: 1, editDistance: 1 });
    }
    if (query.whole !== null) q.term(indexed(query.whole), { usePipeline: false, boost: 8 });
  });
}

/** Whether a word stands in more fields of documents than that; of most it is known after one or two. */
function standsOften(postings: Postings, term: string, limit: number): boolean {
  let count = 0;
  for (const field of fields) {
    for (const _ in postings[term]?.[field]) if (++count > limit) return true;
  }
  return false;
}

function seatsOf(postings: Postings, term: string): Seats {
  const posting = postings[term];
  const places: number[] = [];
  const worth: number[] = [];
  for (const field of posting ? fields : []) {
    for (const ref in posting?.[field]) {
      places.push(Number(ref));
      worth.push(weights[field]);
    }
  }
  return { places: Uint32Array.from(places), weights: Uint8Array.from(worth) };
}

function mark(seats: Seats, like: number, marks?: Float32Array, sure?: Uint8Array): void {
  seats.places.forEach((place, at) => {
    raise(marks, place, like * (seats.weights[at] ?? 0));
    raise(sure, place, 1);
  });
}

function raise(mark: Float32Array | Uint8Array | undefined, place: number, worth: number): void {
  if (mark && worth > (mark[place] ?? 0)) mark[place] = worth;
}

/** In how many fields of documents a word of the index stands. */
function sizeOf({ postings, often }: Shard, term: string): number {
  const known = often.get(term);
  if (known) return known.places.length;
  const posting = postings[term];
  return posting ? fields.reduce((sum, field) => sum + Object.keys(posting[field]).length, 0) : 0;
}

/** The words that begin so, out of a sorted list. */
function startingWith(terms: readonly string[], beginning: string): readonly string[] {
  let low = 0;
  let high = terms.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((terms[middle] ?? "") < beginning) low = middle + 1;
    else high = middle;
  }
  let end = low;
  while (terms[end]?.startsWith(beginning)) end++;
  return terms.slice(low, end);
}
