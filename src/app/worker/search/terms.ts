import lunr from "lunr";
import { isOne } from "../../../show/search/document.ts";
import type { SearchText } from "../../../show/search/document.ts";
import { entriesOf, folded } from "../../../show/search/fold.ts";

const stems = new Map<string, string>();

/** The stem of an English word, which may be the word itself. */
export function stemOf(word: string): string {
  const known = stems.get(word);
  if (known !== undefined) return known;
  const stem = /^[a-z]+$/.test(word) ? lunr.stemmer(new lunr.Token(word, {})).toString() : word;
  stems.set(word, stem);
  return stem;
}

const isEnglish = (lang: string | null): boolean => lang !== null && /^en(?:-|$)/i.test(lang);

/** The words of the index under which a word of a text stands: itself, and its stem where the text is English. */
export function termsOf(word: string, lang: string | null): readonly string[] {
  const stem = isEnglish(lang) ? stemOf(word) : word;
  return stem === word ? [word] : [word, stem];
}

/** Signs that stand for the figures 0 to 9 in the index, from a range that no text uses. */
const figures = 0xe000;

/**
 * A word as the index has it. The library tells the letters of its sets of words from its own numbers for their nodes by
 * nothing: with figures among them it mixes words up, and loses some. So figures are written with other signs.
 */
export function indexed(word: string): string {
  return word.replace(/[0-9]/g, (figure) => String.fromCharCode(figures + Number(figure)));
}

/** A word of the index with its figures as they are. */
export function unindexed(term: string): string {
  return term.replace(/[\uE000-\uE009]/g, (sign) => String(sign.charCodeAt(0) - figures));
}

/** In place of the library's trimmer, which takes every letter off that is not ASCII. */
export function unicodeTrimmer(token: lunr.Token): lunr.Token {
  return token.update((word) => indexed(folded(word)));
}
lunr.Pipeline.registerFunction(unicodeTrimmer, "unicodeTrimmer");

/** Texts as the builder takes them: each cut into the words under which it is found. */
export function tokenizer(texts: unknown): lunr.Token[] {
  return ((texts ?? []) as readonly SearchText[]).flatMap((text) =>
    entriesOf(text.text, isOne(text.weight)).flatMap((entry) =>
      termsOf(entry.folded, text.lang).map((term) => new lunr.Token(term, {})),
    ),
  );
}
