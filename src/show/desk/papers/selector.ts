import { wordsBetween } from "./layer.ts";

/** The words of a place and what stands about them (W3C Web Annotation Data Model, 4.2.4). */
export type TextQuote = {
  readonly type: "TextQuoteSelector";
  readonly exact: string;
  readonly prefix?: string;
  readonly suffix?: string;
};

/** A page of a PDF file, counted from 1 as the file has it, or a part of an image. */
export type FragmentSelector = {
  readonly type: "FragmentSelector";
  readonly conformsTo: string;
  readonly value: string;
  readonly refinedBy?: TextQuote;
};

/** From the beginning of one place to the beginning of another (W3C Web Annotation Data Model, 4.2.9). */
export type RangeSelector = {
  readonly type: "RangeSelector";
  readonly startSelector: FragmentSelector;
  readonly endSelector: FragmentSelector;
};

/** A place in one page of a paper, or from one page to another. */
export type PlaceSelector = FragmentSelector | RangeSelector;

/** A place in one of several papers of a source; `source` is the file below the corpus's folder. */
export type SpecificResource = {
  readonly type: "SpecificResource";
  readonly source: string;
  readonly selector: PlaceSelector;
};

/** A part of a page in percent of its width and height, from its upper left corner as it is looked at. */
export interface Region {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** How large a page is, in points (1/72 inch), as it is looked at. */
export interface PageSize {
  readonly width: number;
  readonly height: number;
}

/** What the Web Annotation Data Model names for parts of a PDF file, though RFC 8118 has followed it. */
export const pdfFragments = "http://tools.ietf.org/rfc/rfc3778";
/** Media Fragments URI 1.0. */
export const mediaFragments = "http://www.w3.org/TR/media-frags/";

/** How much of what stands about some words is written with them, in signs. */
const context = 32;

/** The selector of some words of a page: `start` and `end` are places in its text. */
export function selectorFor(pageIndex: number, pageText: string, start: number, end: number): PlaceSelector {
  return onPage(pageIndex, {
    type: "TextQuoteSelector",
    exact: wordsBetween(pageText, start, end),
    ...about(pageText, start, end),
  });
}

/** A place in the text of a page. */
export interface InText {
  readonly pageIndex: number;
  readonly pageText: string;
  readonly at: number;
}

/** The selector of words that go on over pages: from where they begin to where what follows them begins. */
export function selectorOver(from: InText, to: InText): PlaceSelector {
  if (from.pageIndex === to.pageIndex) return selectorFor(from.pageIndex, from.pageText, from.at, to.at);
  return { type: "RangeSelector", startSelector: beginningAt(from), endSelector: beginningAt(to) };
}

/** The first words from a place on; where its page has none, the page after it. */
function beginningAt({ pageIndex, pageText, at }: InText): FragmentSelector {
  const start = at + (/\S/u.exec(pageText.slice(at))?.index ?? 0);
  const signs = Array.from(pageText.slice(start, start + 4 * context))
    .slice(0, context)
    .join("");
  const goesOn = /^\S/u.test(pageText.slice(start + signs.length));
  const words = (goesOn ? signs.replace(/(?<=\S)\s+\S*$/u, "") : signs).trimEnd();
  if (words === "") return onPage(pageIndex + 1);
  const end = start + words.length;
  const exact = wordsBetween(pageText, start, end);
  return onPage(pageIndex, { type: "TextQuoteSelector", exact, ...about(pageText, start, end) });
}

/** The selector of a part of a page of a PDF file: a rectangle in points. */
export function regionSelector(pageIndex: number, region: Region, size: PageSize): FragmentSelector {
  const part = (percent: number, of: number): string => figure((percent * of) / 100, 10);
  const sides = [
    part(region.x, size.width),
    part(region.y, size.height),
    part(region.w, size.width),
    part(region.h, size.height),
  ];
  return { ...onPage(pageIndex), value: `page=${pageIndex + 1}&viewrect=${sides.join(",")}` };
}

/** The selector of a part of an image. */
export function imageSelector({ x, y, w, h }: Region): FragmentSelector {
  const sides = [x, y, w, h].map((side) => figure(side, 100));
  return {
    type: "FragmentSelector",
    conformsTo: mediaFragments,
    value: `xywh=percent:${sides.join(",")}`,
  };
}

/** A selector as a record has it: with the name of its file where the source has several. */
export function inPaper(
  selector: PlaceSelector,
  file: string,
  papers: readonly string[],
): PlaceSelector | SpecificResource {
  return papers.length > 1 ? { type: "SpecificResource", source: file, selector } : selector;
}

function onPage(pageIndex: number, refinedBy?: TextQuote): FragmentSelector {
  return {
    type: "FragmentSelector",
    conformsTo: pdfFragments,
    value: `page=${pageIndex + 1}`,
    ...(refinedBy === undefined ? {} : { refinedBy }),
  };
}

/** What stands before and after, from and to the edge of a word; left out where nothing does. */
function about(text: string, start: number, end: number): Pick<TextQuote, "prefix" | "suffix"> {
  // More than is kept: white space may be most of it.
  const before = [...wordsBetween(text, Math.max(0, start - 4 * context), start, true)];
  const after = [...wordsBetween(text, end, Math.min(text.length, end + 4 * context), true)];
  const prefix = before.slice(-context).join("");
  const suffix = after.slice(0, context).join("");
  const from = before.length > context ? prefix.replace(/^\S*\s+(?=\S)/u, "") : prefix.trimStart();
  const to = after.length > context ? suffix.replace(/(?<=\S)\s+\S*$/u, "") : suffix.trimEnd();
  return { ...(from === "" ? {} : { prefix: from }), ...(to === "" ? {} : { suffix: to }) };
}

function figure(value: number, parts: number): string {
  return String(Math.round(value * parts) / parts);
}
