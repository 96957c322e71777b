import type { Id } from "../../../../base/finding.ts";
import { foundIn, inPercent } from "../../../../show/desk/papers/find.ts";
import type { Found } from "../../../../show/desk/papers/find.ts";
import type { PassageLine } from "../../../../show/desk/papers/page.ts";
import { printedPage } from "../../../../show/desk/papers/printed.ts";
import { pageAsked } from "../../../../show/desk/papers/printing.ts";
import type { Region } from "../../../../show/desk/papers/selector.ts";
import type { OpenPaper, Shape } from "../reader/paper.ts";
import type { Read } from "../reader/use-paper.ts";

/** What is marked on one page: words of its text, or a part of it in percent; neither for the page as a whole. */
export interface PageMark {
  readonly page: number;
  readonly words: { readonly start: number; readonly end: number } | null;
  readonly region: Region | null;
}

/** A passage that was found in the paper: its number in order of place, and what of each page it takes. */
export interface Marked {
  readonly id: Id;
  readonly at: string;
  readonly number: number;
  readonly marks: readonly PageMark[];
}

/** The passages of a source that are in the paper that is open, in order of place. */
export function markedIn(
  paper: OpenPaper,
  { texts, shapes }: Read,
  passages: readonly PassageLine[],
  printed: (page: number) => string | null,
): readonly Marked[] {
  const found = passages.flatMap((one) => {
    const { id, at, file } = one;
    const marks = marksOf(paper, texts, shapes, one.selector ?? byQuote(one, paper.count, printed), file);
    return marks.length === 0 ? [] : [{ id, at, marks }];
  });
  return found
    .toSorted((a, b) => inPlace(a.marks[0], b.marks[0]))
    .map((one, n) => ({ ...one, number: n + 1 }));
}

/** What finds a passage that was written down by hand: its words, first on the page that bears its number. */
function byQuote(
  { at, quote }: PassageLine,
  count: number,
  printed: (page: number) => string | null,
): unknown {
  if (quote === null) return null;
  const words = { type: "TextQuoteSelector", exact: quote };
  const number = printedPage(at);
  const page = number === null ? null : pageAsked(String(number), count, printed);
  return page === null ? words : { type: "FragmentSelector", value: `page=${page + 1}`, refinedBy: words };
}

/** What a selector means of each page of a paper; nothing where it is of another file, or its words are gone. */
export function marksOf(
  paper: OpenPaper,
  texts: readonly string[],
  shapes: readonly Shape[],
  selector: unknown,
  file: string | null,
): readonly PageMark[] {
  if (paper.kind === "pictures") {
    const page = file === null ? 0 : texts.findIndex((_, one) => paper.fileOf(one) === file);
    const found = page < 0 ? null : foundIn([""], selector);
    return found === null || !("region" in found) ? [] : [ofRegion({ ...found, page }, shapes)];
  }
  if (file !== null && file !== paper.fileOf(0)) return [];
  const found = foundIn(texts, selector);
  if (found === null) return [];
  return "region" in found ? [ofRegion(found, shapes)] : ofWords(found, texts);
}

function ofRegion(
  { page, region }: Extract<Found, { readonly region: unknown }>,
  shapes: readonly Shape[],
): PageMark {
  const shape = shapes[page];
  return { page, words: null, region: region && shape ? inPercent(region, shape) : null };
}

function ofWords(
  { page, start, end, onto }: Extract<Found, { readonly start: number }>,
  texts: readonly string[],
): readonly PageMark[] {
  const marks: PageMark[] = [{ page, words: { start, end }, region: null }];
  for (let next = page + 1; onto && next <= onto.page; next++) {
    const to = next === onto.page ? onto.end : (texts[next]?.length ?? 0);
    marks.push({ page: next, words: { start: 0, end: to }, region: null });
  }
  return marks;
}

function inPlace(a: PageMark | undefined, b: PageMark | undefined): number {
  const at = (one: PageMark | undefined): number => one?.words?.start ?? (one?.region?.y ?? 0) * 100;
  return (a?.page ?? 0) - (b?.page ?? 0) || at(a) - at(b);
}
