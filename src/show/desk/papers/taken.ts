import { quotation, wordsOf } from "./capture/quotation.ts";
import type { Quotation } from "./capture/quotation.ts";
import { imageSelector, regionSelector, selectorOver } from "./selector.ts";
import type { PageSize, PlaceSelector, Region } from "./selector.ts";

/** What was taken from a paper that is open: words, or a part of a page. */
export interface Taken {
  /** The page on which it begins, from 0. */
  readonly pageIndex: number;
  /** The page on which it ends. */
  readonly lastIndex: number;
  /** The words as a scholar would write them; null for a part of a page. */
  readonly quote: Quotation | null;
  readonly selector: PlaceSelector;
}

/** A place in the text of one of the pages. */
export interface TextPlace {
  readonly pageIndex: number;
  readonly at: number;
}

/** Takes the words from one place to another; null where there are none between them. */
export function takenWords(pageTexts: readonly string[], one: TextPlace, other: TextPlace): Taken | null {
  const [from, to] = inOrder(one, other) ? [one, other] : [other, one];
  const parts: {
    readonly pageIndex: number;
    readonly text: string;
    readonly start: number;
    readonly end: number;
  }[] = [];
  for (let pageIndex = from.pageIndex; pageIndex <= to.pageIndex; pageIndex++) {
    const text = pageTexts[pageIndex] ?? "";
    const start = pageIndex === from.pageIndex ? from.at : 0;
    const end = pageIndex === to.pageIndex ? to.at : text.length;
    const own = text.slice(start, end);
    // A selection often reaches over the edge of a page and takes nothing there.
    if (own.trim() !== "")
      parts.push({
        pageIndex,
        text,
        start: start + own.length - own.trimStart().length,
        end: start + own.trimEnd().length,
      });
  }
  const first = parts[0];
  const last = parts.at(-1);
  if (!first || !last) return null;
  const raw = parts.map(({ text, start, end }) => text.slice(start, end)).join("\n");
  return {
    pageIndex: first.pageIndex,
    lastIndex: last.pageIndex,
    quote: quotation(raw, wordsOf(pageTexts)),
    selector: selectorOver(
      { pageIndex: first.pageIndex, pageText: first.text, at: first.start },
      { pageIndex: last.pageIndex, pageText: last.text, at: last.end },
    ),
  };
}

/** Takes a part of a page of a PDF file, whose size is given, or of an image. */
export function takenRegion(pageIndex: number, region: Region, size: PageSize | null): Taken {
  const selector = size === null ? imageSelector(region) : regionSelector(pageIndex, region, size);
  return { pageIndex, lastIndex: pageIndex, quote: null, selector };
}

function inOrder(a: TextPlace, b: TextPlace): boolean {
  return a.pageIndex < b.pageIndex || (a.pageIndex === b.pageIndex && a.at <= b.at);
}
