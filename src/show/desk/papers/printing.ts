import { printedPage } from "./printed.ts";

/** What tells which page of a file bears which printed number. */
export interface Printing {
  /** How many pages the file has. */
  readonly count: number;
  /** The pages' names as the file gives them; null where it gives none. */
  readonly labels: readonly string[] | null;
  /** The pages of the source as its bibliography entry has them, `211–230`. */
  readonly pages: string | null;
  /** Passages already taken from the file: its page, from 0, and what was written down as printed on it. */
  readonly passages: readonly { readonly at: string; readonly page: number | null }[];
}

/** Tells of each page of a file, from 0, the number printed on it; null where nothing tells. */
export function printedPages(printing: Printing): (page: number) => string | null {
  const { labels, count } = printing;
  if (labels !== null && !areCounted(labels)) return (page) => labels[page]?.trim() || null;
  const shift = shiftOf(printing);
  return (page) => {
    const number = shift === null || page < 0 || page >= count ? 0 : page + 1 + shift;
    return number > 0 ? String(number) : null;
  };
}

/** Names that only count the pages of the file say nothing of what is printed on them. */
function areCounted(labels: readonly string[]): boolean {
  return labels.every((label, page) => label.trim() === "" || label.trim() === String(page + 1));
}

/** How far the printed numbers are ahead of the file's: what most passages say, else the entry where its pages are as many. */
function shiftOf({ count, pages, passages }: Printing): number | null {
  const votes = new Map<number, number>();
  for (const { at, page } of passages) {
    const number = printedPage(at);
    if (page === null || number === null) continue;
    const shift = number - page - 1;
    votes.set(shift, (votes.get(shift) ?? 0) + 1);
  }
  const [most] = [...votes].toSorted(([a, n], [b, m]) => m - n || a - b);
  if (most) return most[0];
  const [, first, last] = /^\s*(\d{1,6})\s*[-–—]+\s*(\d{1,6})\s*$/u.exec(pages ?? "") ?? [];
  if (first === undefined || last === undefined) return null;
  // `211–30` is 211 to 230.
  const end = last.length < first.length ? first.slice(0, first.length - last.length) + last : last;
  return Number(end) - Number(first) + 1 === count ? Number(first) - 1 : null;
}

/** The page that somebody asks for by its printed number, else by its place in the file; null for none. */
export function pageAsked(
  text: string,
  count: number,
  printed: (page: number) => string | null,
): number | null {
  const asked = text.trim().toLowerCase();
  for (let page = 0; page < count; page++) if (printed(page)?.toLowerCase() === asked) return page;
  const place = /^\d{1,6}$/.test(asked) ? Number(asked) - 1 : -1;
  return place >= 0 && place < count ? place : null;
}
