import { isOne } from "./document.ts";
import type { SearchDocument, SearchText } from "./document.ts";
import { withoutStop } from "../../link/names/label.ts";
import { entriesOf } from "./fold.ts";
import type { Token } from "./fold.ts";
import type { Excerpt, Hit, Stretch } from "./found.ts";

/** Which of the words looked for a word of the index means, and how like it is (0 to 1); null where it means none. */
export type Meant = (term: string) => { readonly word: number; readonly likeness: number } | null;

/** How the words of texts stand in the index, and what was looked for. */
export interface Sight {
  readonly meant: Meant;
  /** The words of the index under which a word of a text stands, by the text's language. */
  readonly termsOf: (folded: string, lang: string | null) => readonly string[];
}

/** About as many UTF-16 units of a text are shown around a word. */
const width = 170;

/** A found document as it is shown: its title, and the words where they stand. */
export function hitOf(document: SearchDocument, sight: Sight): Hit {
  const { id, year, file, title, said } = document;
  const best = bestText(document, sight);
  const marks = marksIn(title, titleLang(document), false, sight);
  const base = { id, title: stretchesOf(title, marks, 0, title.length), ...(said && { said }), year, file };
  if (!best) return { ...base, excerpt: null, line: document.line };
  const named = ["name", "key", "tie"].includes(best.text.weight) && worthOf(marks) >= worthOf(best.marks);
  const same = named || isTitle(best.text, title);
  return {
    ...base,
    excerpt: same ? null : excerptOf(best.text, best.marks),
    line: lineOf(best.text, best.marks[0]?.start ?? 0),
  };
}

interface Mark extends Token {
  /** Which of the words it is, and how like it. */
  readonly word: number;
  readonly likeness: number;
}

function titleLang(document: SearchDocument): string | null {
  return document.texts.find((one) => one.weight === "says" && one.lang !== null)?.lang ?? null;
}

/** Whether a text is the title itself; they may differ in the stop at the end. */
export function isTitle({ text }: SearchText, title: string): boolean {
  return withoutStop(text.trim()) === withoutStop(title.trim());
}

/** What decides between texts that have the same words. */
const preference = { says: 0.05, number: 0.04, name: 0.03, key: 0.02, tie: 0.01 } as const;

interface Best {
  readonly text: SearchText;
  readonly marks: readonly Mark[];
}

/** The text that has most of the words, and has them most truly; of equals what the record says, then the first. */
function bestText(document: SearchDocument, sight: Sight): Best | null {
  let best: Best | null = null;
  let most = 0;
  for (const text of document.texts) {
    const marks = marksIn(text.text, text.lang, isOne(text.weight), sight);
    const worth = worthOf(marks) + preference[text.weight];
    if (marks.length > 0 && worth > most) [best, most] = [{ text, marks }, worth];
  }
  return best;
}

/** How many of the words there are, the truest of each counted. */
function worthOf(marks: readonly Mark[]): number {
  const byWord = new Map<number, number>();
  for (const { word, likeness } of marks) byWord.set(word, Math.max(byWord.get(word) ?? 0, likeness));
  return [...byWord.values()].reduce((sum, one) => sum + one, 0);
}

/** What is meant in a text, in its order, nothing twice. */
function marksIn(text: string, lang: string | null, isKey: boolean, sight: Sight): readonly Mark[] {
  const all = entriesOf(text, isKey).flatMap((token) => {
    const meant = sight
      .termsOf(token.folded, lang)
      .flatMap((term) => sight.meant(term) ?? [])
      .toSorted((a, b) => b.likeness - a.likeness)[0];
    return meant ? [{ ...token, ...meant }] : [];
  });
  const kept: Mark[] = [];
  for (const mark of all) {
    if (!kept.some((one) => mark.start < one.end && one.start < mark.end)) kept.push(mark);
  }
  return kept.sort((a, b) => a.start - b.start);
}

function excerptOf(text: SearchText, marks: readonly Mark[]): Excerpt {
  const whole = text.text;
  const [from, to] = windowOf(whole, marks);
  return {
    field: text.field,
    lang: text.lang,
    stretches: stretchesOf(whole, marks, from, to),
    before: from > 0,
    after: to < whole.length,
  };
}

/** The window that holds the most words, cut at spaces. */
function windowOf(text: string, marks: readonly Mark[]): readonly [number, number] {
  if (text.length <= width * 1.3) return [0, text.length];
  let first = 0;
  let most = 0;
  marks.forEach((mark, place) => {
    const near = marks.slice(place, place + 40).filter((other) => other.end - mark.start <= width * 0.8);
    const worth = worthOf(near);
    if (worth > most) [first, most] = [place, worth];
  });
  const start = marks[first]?.start ?? 0;
  const end = marks[first]?.end ?? start;
  const lead = Math.max(0, start - Math.floor(width / 3));
  const space = text.lastIndexOf(" ", lead);
  const from = lead === 0 ? 0 : lead - space < 30 ? space + 1 : lead;
  const until = Math.max(end, Math.min(text.length, from + width));
  const next = text.indexOf(" ", until);
  const to = text.length - until < 20 ? text.length : next >= 0 && next - until < 30 ? next : until;
  return [from, to];
}

function stretchesOf(text: string, marks: readonly Mark[], from: number, to: number): readonly Stretch[] {
  const stretches: Stretch[] = [];
  let at = from;
  for (const { start, end } of marks) {
    if (start < from || end > to) continue;
    if (start > at) stretches.push({ text: text.slice(at, start), marked: false });
    stretches.push({ text: text.slice(start, end), marked: true });
    at = end;
  }
  if (at < to) stretches.push({ text: text.slice(at, to), marked: false });
  return stretches;
}

function lineOf(text: SearchText, at: number): number {
  return text.line + text.breaks.filter((start) => start <= at).length;
}
