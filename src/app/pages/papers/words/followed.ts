import { useEffect, useLayoutEffect, useRef } from "react";
import type { Id } from "../../../../base/finding.ts";
import type { useAddress } from "../../../address.ts";
import type { Marked, PageMark } from "./marked.ts";

/** How long one stays at a page before the address tells it, in milliseconds. */
const stay = 400;

interface Given {
  readonly address: ReturnType<typeof useAddress>;
  /** The page that is looked at, from 0. */
  readonly page: number;
  readonly marked: readonly Marked[];
  /** All pages are read: what is not found by now is not there. */
  readonly isRead: boolean;
  readonly reach: (mark: PageMark) => void;
  readonly go: (page: number) => void;
}

/** The page from 0 that an address asks for; the first where it asks for none. */
export function pageIn(query: URLSearchParams): number {
  const asked = query.get("page") ?? "";
  return /^[1-9]\d{0,5}$/.test(asked) ? Number(asked) - 1 : 0;
}

/** Follows the address to the passage that it names, and has it tell the page that is looked at; says whether a passage is no longer found. */
export function useFollowed({ address, page, marked, isRead, reach, go }: Given): boolean {
  const { query, toLook } = address;
  const passage = query.get("passage");
  const mark = marked.find((one) => one.id === passage)?.marks[0] ?? null;
  const reached = useRef<Id | null>(null);
  useEffect(() => {
    if (passage === null) reached.current = null;
    if (passage === null || reached.current === passage || !mark) return;
    reached.current = passage;
    reach(mark);
  }, [passage, mark, reach]);
  const asked = pageIn(query);
  const latest = useRef(toLook);
  useLayoutEffect(() => {
    latest.current = toLook;
  });
  const looked = useRef(page);
  useLayoutEffect(() => {
    looked.current = page;
  });
  useEffect(() => {
    if (query.has("page") && asked !== looked.current && !query.has("passage")) go(asked);
  }, [asked, query, go]);
  useEffect(() => {
    if (page === asked) return undefined;
    const now = { page: String(page + 1), printed: null };
    const timer = setTimeout(() => latest.current(now, "replace"), stay);
    return () => clearTimeout(timer);
  }, [page, asked]);
  return passage !== null && isRead && !mark;
}
