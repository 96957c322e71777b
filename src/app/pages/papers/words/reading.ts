import { useCallback, useMemo, useState } from "react";
import type { RefObject } from "react";
import type { Id } from "../../../../base/finding.ts";
import type { PaperData } from "../../../../show/desk/papers/page.ts";
import { printedPages } from "../../../../show/desk/papers/printing.ts";
import type { useAddress } from "../../../address.ts";
import { selectWords } from "../leaf/layers.ts";
import type { Layers } from "../leaf/layers.ts";
import { useLooked, useWidth } from "../leaf/place.ts";
import type { Looked } from "../leaf/place.ts";
import { useReach } from "../leaf/reach.ts";
import type { Reaching } from "../leaf/reach.ts";
import { useZoom } from "../leaf/zoom.ts";
import type { OpenPaper } from "../reader/paper.ts";
import { useRead } from "../reader/use-paper.ts";
import type { Read } from "../reader/use-paper.ts";
import { usePaperSearch } from "../search.tsx";
import type { PaperSearch } from "../search.tsx";
import { drawnPages } from "./drawn.ts";
import type { DrawnPages } from "./drawn.ts";
import { pageIn, useFollowed } from "./followed.ts";
import { useKeyed } from "./keyed.ts";
import type { Keyed } from "./keyed.ts";
import { markedIn, marksOf } from "./marked.ts";
import type { Marked } from "./marked.ts";
import { useTaking } from "./taking.ts";
import type { Taking } from "./taking.ts";

/** A paper that is being read: where one is in it, what is marked on it, and what can be done. */
export interface Reading extends Looked, Reaching, ReturnType<typeof useZoom> {
  readonly layers: Layers;
  readonly read: Read;
  /** All of it is read, and it has no text. */
  readonly isScan: boolean;
  readonly printed: (page: number) => string | null;
  readonly marked: readonly Marked[];
  /** The passage that the address names, where its words are not found; null for none. */
  readonly gone: Id | null;
  readonly drawn: DrawnPages;
  readonly taking: Taking;
  readonly search: PaperSearch;
  readonly keyed: Keyed;
  /** Selects the place of the search that is looked at, if there is one. */
  readonly selectHit: () => void;
}

/** Reads a paper that is open, in the window that is given for its pages. */
export function useReading(
  { passages, pages }: PaperData,
  paper: OpenPaper,
  seat: RefObject<HTMLElement | null>,
  address: ReturnType<typeof useAddress>,
): Reading {
  const { query } = address;
  const [layers] = useState<Layers>(() => new Map());
  const printed = useMemo(() => {
    const own = passages.map(({ at, page: told, file }) => ({ at, page: pageOf(paper, told, file) }));
    return printedPages({ count: paper.count, labels: paper.labels, pages, passages: own });
  }, [paper, pages, passages]);
  const [first] = useState(() => firstPage(query, paper, passages, printed));
  const zoom = useZoom(useWidth(seat), paper.first);
  const read = useRead(paper, first);
  const looked = useLooked(seat, first, zoom.scale, read.shapes);
  const { page, go } = looked;
  const reaching = useReach(seat, layers, go);
  const { reach } = reaching;
  const marked = useMemo(() => markedIn(paper, read, passages, printed), [paper, read, passages, printed]);
  const isRead = read.done === paper.count;
  const isGone = useFollowed({ address, page, marked, isRead, reach, go });
  const taking = useTaking(paper, read, seat, layers);
  const { taken } = taking;
  const search = usePaperSearch(read.texts, page, (hit) =>
    reach({ page: hit.page, words: hit, region: null }),
  );
  const select = useSelecting(layers, reach);
  const drawn = useMemo(() => {
    const now = taken ? marksOf(paper, read.texts, read.shapes, taken.selector, null) : [];
    return drawnPages(marked, placed(paper, now, taken?.pageIndex), search.hits, search.at);
  }, [paper, read, marked, taken, search.hits, search.at]);
  return {
    ...looked,
    ...zoom,
    ...reaching,
    layers,
    read,
    isScan: isRead && read.texts.every((text) => text.trim() === ""),
    printed,
    marked,
    gone: isGone ? query.get("passage") : null,
    drawn,
    taking,
    search,
    keyed: useKeyed(read.texts, select),
    selectHit: () => {
      const hit = search.hits[search.at];
      if (hit) select(hit);
    },
  };
}

type Words = { readonly page: number; readonly start: number; readonly end: number };

/** Selects words and brings them into sight; null leaves what is selected. */
function useSelecting(layers: Layers, reach: Reaching["reach"]): (words: Words | null) => void {
  return useCallback(
    (words) => {
      if (!words) return window.getSelection()?.removeAllRanges();
      const pieces = layers.get(words.page);
      if (pieces) selectWords(pieces, words.start, words.end);
      reach({ page: words.page, words, region: null }, true);
    },
    [layers, reach],
  );
}

/** The page that is opened at: of the address, by its place or its printed number, else that of the passage it names. */
function firstPage(
  query: URLSearchParams,
  paper: OpenPaper,
  passages: PaperData["passages"],
  printed: (page: number) => string | null,
): number {
  const one = passages.find(({ id }) => id === query.get("passage"));
  const number = query.get("printed");
  const bearing = Array.from({ length: paper.count }, (_, page) => printed(page)).indexOf(number);
  const asked = query.has("page") ? pageIn(query) : number === null ? (one?.page ?? 0) : Math.max(0, bearing);
  return Math.min(asked, paper.count - 1);
}

/** The page of a paper, from 0, that a passage tells of; null where it tells of none, or of another file. */
function pageOf(paper: OpenPaper, told: number | null, file: string | null): number | null {
  if (paper.kind === "pdf") return file === null || file === paper.fileOf(0) ? told : null;
  if (file === null) return 0;
  const place = Array.from({ length: paper.count }, (_, page) => paper.fileOf(page)).indexOf(file);
  return place < 0 ? null : place;
}

/** What is taken from a picture says nothing of its place among others. */
function placed<T extends { readonly page: number }>(
  paper: OpenPaper,
  marks: readonly T[],
  page: number | undefined,
): readonly T[] {
  return paper.kind === "pictures" && page !== undefined ? marks.map((one) => ({ ...one, page })) : marks;
}
