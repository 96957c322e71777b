import { compared, pastMarks } from "./layer.ts";
import type { Compared } from "./layer.ts";
import type { PageSize, Region } from "./selector.ts";
import { soughtBy } from "./sought.ts";
import type { Sought, SoughtWords } from "./sought.ts";

/** Where a place is in a paper that is open: pages are counted from 0, text in UTF-16 units of its page. */
export type Found =
  | {
      readonly page: number;
      readonly start: number;
      readonly end: number;
      /** The page on which it ends and where, if that is another: it has the rest of its first page, and all pages between. */
      readonly onto?: { readonly page: number; readonly end: number };
    }
  /** A part of a page, or the whole of it where the place is no nearer known. */
  | { readonly page: number; readonly region: (Region & { readonly in: "points" | "percent" }) | null };

/** A text in the pages, and how much of what stands about it is as it was written, in signs. */
interface Candidate {
  readonly page: number;
  readonly start: number;
  readonly end: number;
  readonly fit: number;
}

/**
 * Finds a place again: its words on the page that it names, and on every other where they are not there with all that stood
 * about them; the place that fits best, of equals the one nearest to the page that is named. Null where the words are gone.
 */
export function foundIn(pageTexts: readonly string[], selector: unknown): Found | null {
  const sought = soughtBy(selector);
  if (sought === null) return null;
  if (sought.words === null) return ofPage(pageTexts, sought);
  const found = bestOf(pageTexts, sought.words, sought.page, 0);
  if (found === null) return null;
  const { page, start, end } = found;
  if (sought.until === null) return { page, start, end };
  const end_ = endOf(pageTexts, sought.until, sought.page, page);
  if (end_ === null) return null;
  return end_.page === page
    ? { page, start, end: Math.max(end, end_.end) }
    : { page, start, end: pageTexts[page]?.length ?? end, onto: end_ };
}

/** A part of a page in percent, whatever it was written in. */
export function inPercent(
  { in: unit, ...sides }: Region & { readonly in: "points" | "percent" },
  size: PageSize,
): Region {
  if (unit === "percent") return sides;
  const { width, height } = size;
  return {
    x: (100 * sides.x) / width,
    y: (100 * sides.y) / height,
    w: (100 * sides.w) / width,
    h: (100 * sides.h) / height,
  };
}

function ofPage(pageTexts: readonly string[], { page, region }: Sought): Found | null {
  // A part of an image is on the only page there is.
  const at = page ?? 0;
  return at < pageTexts.length ? { page: at, region } : null;
}

/** Where a place ends that goes on over pages: before what was written to follow it. */
function endOf(
  pageTexts: readonly string[],
  until: NonNullable<Sought["until"]>,
  named: number | null,
  page: number,
): { readonly page: number; readonly end: number } | null {
  // Where the beginning has moved by some pages, so has the end.
  const expected = until.page === null ? null : until.page + page - (named ?? page);
  if (until.words === null) {
    const last = (expected ?? page + 1) - 1;
    const text = pageTexts[last];
    return text === undefined || last < page ? null : { page: last, end: text.length };
  }
  const next = bestOf(pageTexts, until.words, expected, page);
  if (next === null) return null;
  const before = (pageTexts[next.page] ?? "").slice(0, next.start).trimEnd();
  return before === "" && next.page > page
    ? { page: next.page - 1, end: pageTexts[next.page - 1]?.length ?? 0 }
    : { page: next.page, end: before.length };
}

function bestOf(
  pageTexts: readonly string[],
  words: SoughtWords,
  named: number | null,
  first: number,
): Candidate | null {
  const pages = comparedPages(pageTexts);
  const wanted = wantedIn(words);
  const whole = wanted.prefix.length + wanted.suffix.length;
  const on = (page: number): readonly Candidate[] =>
    page < first ? [] : candidates(page, pageTexts[page] ?? "", pages(page), wanted);
  const there = named !== null && named < pageTexts.length ? best(on(named)) : null;
  if (there !== null && there.fit === whole) return there;
  const away = (page: number): number => (named === null ? page : Math.abs(page - named));
  const others = pageTexts.map((_, page) => page).filter((page) => page !== named);
  const nearest = others.toSorted((a, b) => away(a) - away(b));
  return best([...(there === null ? [] : [there]), ...nearest.flatMap(on)]);
}

/** The first of those that fit best. */
function best(all: readonly Candidate[]): Candidate | null {
  return all.reduce<Candidate | null>((known, one) => (known && known.fit >= one.fit ? known : one), null);
}

function wantedIn(words: SoughtWords): SoughtWords {
  const [exact = "", prefix = "", suffix = ""] = [words.exact, words.prefix, words.suffix].map(
    (text) => compared(text).signs,
  );
  return { exact, prefix: prefix.slice(-about), suffix: suffix.slice(0, about) };
}

/** As many signs of what stands about some words as are compared: more tell no more, and can be any number. */
const about = 64;

/** The place of a page that fits best, the first of equals; none where the words are not on it. */
function candidates(
  page: number,
  text: string,
  { signs, at }: Compared,
  wanted: SoughtWords,
): readonly Candidate[] {
  if (wanted.exact === "") return [];
  let [place, most] = [-1, -1];
  for (let from = signs.indexOf(wanted.exact); from >= 0; from = signs.indexOf(wanted.exact, from + 1)) {
    const to = from + wanted.exact.length;
    const fit = sameBefore(signs, from, wanted.prefix) + sameAfter(signs, to, wanted.suffix);
    if (fit > most) [place, most] = [from, fit];
    if (most === wanted.prefix.length + wanted.suffix.length) break;
  }
  if (place < 0) return [];
  const end = pastMarks(text, at[place + wanted.exact.length - 1] ?? 0);
  return [{ page, start: at[place] ?? 0, end, fit: most }];
}

function sameBefore(signs: string, from: number, prefix: string): number {
  let n = 0;
  while (n < prefix.length && n < from && signs[from - 1 - n] === prefix[prefix.length - 1 - n]) n++;
  return n;
}

function sameAfter(signs: string, to: number, suffix: string): number {
  let n = 0;
  while (n < suffix.length && signs[to + n] === suffix[n]) n++;
  return n;
}

const known = new WeakMap<readonly string[], Map<number, Compared>>();

/** Each page as it is compared, once for each list of texts and only when it is looked at. */
function comparedPages(pageTexts: readonly string[]): (page: number) => Compared {
  const pages = known.get(pageTexts) ?? new Map<number, Compared>();
  known.set(pageTexts, pages);
  return (page) => {
    const before = pages.get(page);
    if (before !== undefined) return before;
    const now = compared(pageTexts[page] ?? "");
    pages.set(page, now);
    return now;
  };
}
