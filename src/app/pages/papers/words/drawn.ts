import type { Hit } from "../../../../show/desk/papers/searching.ts";
import type { Drawn } from "../leaf/marks.tsx";
import type { Marked, PageMark } from "./marked.ts";

/** What is to be marked on each page. */
export type DrawnPages = ReadonlyMap<number, readonly Drawn[]>;

/** Puts together what is marked on each page: passages with their numbers, what is being taken, and places that were found. */
export function drawnPages(
  marked: readonly Marked[],
  taken: readonly PageMark[],
  hits: readonly Hit[],
  at: number,
): DrawnPages {
  const pages = new Map<number, Drawn[]>();
  const add = (page: number, one: Drawn): void => {
    const all = pages.get(page) ?? [];
    pages.set(page, all);
    all.push(one);
  };
  for (const { id, number, at: printed, marks } of marked) {
    for (const [n, mark] of marks.entries()) {
      const key = `${id}\n${n}`;
      const numbered = n === 0 ? { passage: { id, number, at: printed } } : {};
      add(mark.page, { key, as: "passage", mark, ...numbered });
    }
  }
  for (const [n, mark] of taken.entries()) add(mark.page, { key: `taken\n${n}`, as: "taken", mark });
  for (const [n, { page, start, end }] of hits.entries()) {
    const mark = { page, words: { start, end }, region: null };
    add(page, { key: `found\n${n}`, as: n === at ? "now" : "found", mark });
  }
  return pages;
}
