import { useCallback, useLayoutEffect, useRef, useState } from "react";
import type { RefObject } from "react";
import type { Shape } from "../reader/paper.ts";

/** Where one is in a paper: a page, and how much of it is above the window, in parts of its height. */
interface Place {
  readonly page: number;
  readonly part: number;
}

/** How a paper is looked at: the page at the top of the window, those near it, and a way to another place. */
export interface Looked {
  readonly page: number;
  readonly near: ReadonlySet<number>;
  /** Goes to a place in a page, in parts of its height, with so much above it, in parts of the window's height. */
  readonly go: (page: number, part?: number, above?: number) => void;
}

/** Pixels above a page in the window. */
const margin = 12;

/** How wide an element is inside, in pixels; 0 before it is known. */
export function useWidth(seat: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const { current } = seat;
    if (!current) return;
    const observer = new ResizeObserver(() => setWidth(current.clientWidth));
    observer.observe(current);
    return () => observer.disconnect();
  }, [seat]);
  return width;
}

/** Follows how a paper's pages move through their window; a change of their sizes moves nothing of what is read. */
export function useLooked(
  seat: RefObject<HTMLElement | null>,
  first: number,
  scale: number,
  shapes: readonly Shape[],
): Looked {
  const place = useRef<Place>({ page: first, part: 0 });
  const [page, setPage] = useState(first);
  const [near, setNear] = useState<ReadonlySet<number>>(() => new Set([first]));

  const look = useCallback((): void => {
    const { current } = seat;
    if (!current) return;
    const sheets = sheetsIn(current);
    const { scrollTop: top, clientHeight: high } = current;
    const shown = sheets.findIndex((one) => bottomOf(one) - top > Math.min(high / 3, one.offsetHeight / 2));
    const at = shown < 0 ? sheets.length - 1 : shown;
    const sheet = sheets[at];
    if (!sheet) return;
    place.current = { page: at, part: (top - sheet.offsetTop + margin) / Math.max(1, sheet.offsetHeight) };
    setPage(at);
    const reach = high * 0.8;
    const close = sheets.flatMap((one, n) =>
      bottomOf(one) > top - reach && one.offsetTop < top + high + reach ? [n] : [],
    );
    setNear((before) =>
      close.length === before.size && close.every((n) => before.has(n)) ? before : new Set(close),
    );
  }, [seat]);

  const go = useCallback(
    (to: number, part = 0, above = 0): void => {
      const { current } = seat;
      const sheet = current && sheetsIn(current)[to];
      if (!current || !sheet) return;
      place.current = { page: to, part };
      const top = sheet.offsetTop - margin + part * sheet.offsetHeight;
      current.scrollTo({ top: top - above * current.clientHeight, behavior: "instant" });
      look();
    },
    [seat, look],
  );

  useLayoutEffect(() => {
    const { current } = seat;
    if (!current) return;
    let frame = 0;
    const onScroll = (): void => {
      cancelAnimationFrame(frame);
      frame = requestAnimationFrame(look);
    };
    current.addEventListener("scroll", onScroll, { passive: true });
    return () => {
      cancelAnimationFrame(frame);
      current.removeEventListener("scroll", onScroll);
    };
  }, [seat, look]);

  // Whatever made the pages larger or smaller, the same words stay at the top.
  useLayoutEffect(() => {
    const { page: at, part } = place.current;
    if (at < shapes.length) go(at, part);
  }, [scale, shapes, go]);

  return { page, near, go };
}

function sheetsIn(seat: HTMLElement): readonly HTMLElement[] {
  return [...seat.querySelectorAll<HTMLElement>("[data-sheet]")];
}

const bottomOf = (sheet: HTMLElement): number => sheet.offsetTop + sheet.offsetHeight;
