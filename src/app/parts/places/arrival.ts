import { useLayoutEffect, useRef } from "react";
import type { RefObject } from "react";

/** Where one was on a page: how far down, in px, and what had the focus, told so that it is found when the page is made anew. */
interface Place {
  readonly down: number;
  readonly stop: { readonly name: string; readonly nth: number } | null;
}

/** How long to wait for what comes late to a page, in ms. */
const patience = 15_000;

/** Takes the focus to each page that is arrived at; back and forward lead to the link that was followed from there. */
export function useArrival(main: RefObject<HTMLElement | null>, path: string, waiting: boolean): void {
  const places = useRef(new Map<string, Place>());
  const shown = useRef(path);
  const gone = useRef(path);
  /** Another page was asked for since one was last arrived at. */
  const away = useRef(false);
  /** What on the page had the focus last. */
  const last = useRef<HTMLElement | null>(null);
  /** The address that back or forward led to. */
  const returned = useRef<string | null>(null);

  // Before the router listens, which shows a page that is still there as soon as it hears of the way back.
  useLayoutEffect(() => {
    const keep = (change: Partial<Place>): void => {
      // Between two pages neither focus nor scroll is of the one or the other.
      if (gone.current !== shown.current) return;
      const before = places.current.get(shown.current) ?? { down: 0, stop: null };
      places.current.set(shown.current, { ...before, ...change });
    };
    const onFocus = (event: FocusEvent): void => {
      const { target } = event;
      const page = main.current;
      if (!page || !(target instanceof HTMLElement) || target === page || !page.contains(target)) return;
      last.current = target;
      keep({ stop: stopOf(page, target) });
    };
    const onScroll = (): void => keep({ down: window.scrollY });
    const onReturn = (): void => {
      returned.current = window.location.href;
    };
    document.addEventListener("focusin", onFocus);
    window.addEventListener("scroll", onScroll, { passive: true });
    window.addEventListener("popstate", onReturn);
    return () => {
      document.removeEventListener("focusin", onFocus);
      window.removeEventListener("scroll", onScroll);
      window.removeEventListener("popstate", onReturn);
    };
  }, [main]);

  useLayoutEffect(() => {
    if (gone.current === path) return;
    gone.current = path;
    away.current = true;
    main.current?.focus({ preventScroll: true });
  }, [main, path]);

  useLayoutEffect(() => {
    if (waiting || !away.current) return undefined;
    away.current = false;
    shown.current = path;
    const back = returned.current === window.location.href;
    returned.current = null;
    const place = back ? places.current.get(path) : undefined;
    if (place && main.current) return restore(main.current, place);
    window.scrollTo(0, 0);
    return undefined;
  }, [main, path, waiting]);

  useLayoutEffect(() => {
    // What had the focus may have gone with what it did, on one and the same page.
    if (last.current?.isConnected !== false) return;
    last.current = null;
    if (document.activeElement === document.body) main.current?.focus({ preventScroll: true });
  });
}

/** Puts focus and scroll back, at once or when what had the focus has come; gives back a way to stop waiting. */
function restore(main: HTMLElement, { down, stop }: Place): () => void {
  const found = (): boolean => {
    const element = stop === null ? null : stopsOf(main, stop.name)[stop.nth];
    if (!element) return false;
    for (let fold = element.closest("details:not([open])"); fold; fold = fold.closest("details:not([open])"))
      fold.setAttribute("open", "");
    element.focus({ preventScroll: true });
    window.scrollTo(0, down);
    return true;
  };
  if (found() || stop === null) return () => undefined;
  const watch = new MutationObserver(() => {
    if (found()) end();
  });
  const late = setTimeout(() => end(), patience);
  const ends = ["keydown", "pointerdown", "wheel"] as const;
  function end(): void {
    watch.disconnect();
    clearTimeout(late);
    for (const what of ends) document.removeEventListener(what, end, true);
  }
  watch.observe(main, { childList: true, subtree: true });
  for (const what of ends) document.addEventListener(what, end, true);
  return end;
}

const stops = "a[href], button, input, select, textarea, summary, [tabindex]";

function nameOf(element: HTMLElement): string {
  const told =
    element.getAttribute("href") ??
    (element.id || element.getAttribute("aria-label") || element.textContent.trim());
  return `${element.tagName} ${told}`;
}

function stopsOf(main: HTMLElement, name: string): readonly HTMLElement[] {
  return [...main.querySelectorAll<HTMLElement>(stops)].filter((one) => nameOf(one) === name);
}

function stopOf(main: HTMLElement, element: HTMLElement): Place["stop"] {
  const name = nameOf(element);
  return { name, nth: Math.max(0, stopsOf(main, name).indexOf(element)) };
}
