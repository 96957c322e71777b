import { editDistance } from "../../base/nearest.ts";
import { compact, tokensOf } from "./fold.ts";

/** One word that is looked for. */
export interface Sought {
  readonly folded: string;
  readonly typed: string;
  /** It may go on: it is the last, has three letters, and is still being typed. */
  readonly open: boolean;
}

/** What is looked for: distinct words, in the order typed. */
export interface Query {
  readonly words: readonly Sought[];
  /** All of it as one number or name, where it has several parts; else null. */
  readonly whole: string | null;
  /** There were more words than are looked for. */
  readonly cut: boolean;
}

/** As many words as are looked for, and as much of a text as is read for them. */
const mostWords = 12;
const mostText = 1000;

/** The query that any text means; nothing in it is a command. */
export function queryOf(text: string): Query {
  const tokens = tokensOf(text.slice(0, mostText));
  const distinct = [...new Map(tokens.map((token) => [token.folded, token])).values()];
  const last = tokens.at(-1);
  return {
    words: distinct.slice(0, mostWords).map(({ folded, start, end }) => ({
      folded,
      typed: text.slice(start, end),
      open: folded === last?.folded && last.end === text.length && folded.length > 2,
    })),
    whole: tokens.length > 1 && tokens.length <= mostWords ? compact(tokens) : null,
    cut: distinct.length > mostWords || text.length > mostText,
  };
}

/** Words as long as this may be mistyped by one letter; figures never. */
const longEnough = 5;

/** Whether one slip in a word is forgiven. */
export function forgives(word: Sought): boolean {
  return word.folded.length >= longEnough && !/\p{N}/u.test(word.folded);
}

/** How like a word is that is a slip away: less than any that is not. */
export const slipped = 0.3;

/** How like a word of the index is to one that is looked for, 0 to 1: the same, of the same stem, beginning so, a slip away. */
export function likeness(term: string, word: Sought, stem: string): number {
  if (term === word.folded) return 1;
  if (term === stem) return 0.8;
  if (word.open && term.startsWith(word.folded)) return 0.6;
  return forgives(word) && editDistance(term, word.folded, 1) <= 1 ? slipped : 0;
}
