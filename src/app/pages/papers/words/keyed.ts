import { useLayoutEffect, useRef, useState } from "react";
import { isTyping } from "../../../parts/actions.tsx";
import { movedBy, wordsIn } from "./by-words.ts";
import type { Span } from "./by-words.ts";

/** Words of a page that are selected by keys. */
export interface KeyedWords {
  readonly page: number;
  readonly start: number;
  readonly end: number;
}

/** Selecting words by keys: whether one is at it, how to begin at a page and a place in its text, and how to leave. */
export interface Keyed {
  readonly isOn: boolean;
  readonly begin: (page: number, at: number) => void;
  readonly leave: () => void;
}

interface State extends Span {
  readonly page: number;
}

/** Selects words of a paper by keys; `show` is told what is selected, null when it is left. */
export function useKeyed(texts: readonly string[], show: (words: KeyedWords | null) => void): Keyed {
  const [state, setState] = useState<State | null>(null);
  const to = (next: State): void => {
    const words = wordsIn(texts[next.page] ?? "");
    const [from, last] = [Math.min(next.fixed, next.moved), Math.max(next.fixed, next.moved)];
    const [first, end] = [words[from], words[last]];
    if (!first || !end) return;
    setState(next);
    show({ page: next.page, start: first.start, end: end.end });
  };
  const leave = (): void => {
    setState(null);
    show(null);
  };
  const hear = (event: KeyboardEvent): void => {
    if (!state || event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return;
    const next = event.key === "Escape" ? null : followed(texts, state, event.key, event.shiftKey);
    if (event.key === "Escape") leave();
    else if (next) to(next);
    else return;
    event.preventDefault();
  };
  const hearing = useRef(hear);
  useLayoutEffect(() => {
    hearing.current = hear;
  });
  const isOn = state !== null;
  useLayoutEffect(() => {
    if (!isOn) return undefined;
    const onKey = (event: KeyboardEvent): void => hearing.current(event);
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, [isOn]);
  return {
    isOn,
    begin: (page, at) => {
      const word = Math.max(
        0,
        wordsIn(texts[page] ?? "").findLastIndex((one) => one.start <= at),
      );
      to({ page, fixed: word, moved: word });
    },
    leave,
  };
}

const rightToLeft = /[\u0590-\u08ff\ufb1d-\ufefc]/u;
const turned: Readonly<Record<string, string>> = { ArrowLeft: "ArrowRight", ArrowRight: "ArrowLeft" };

/** Where a key leads: along the words as they are written, over the end of a page to the next with text. */
function followed(texts: readonly string[], state: State, key: string, more: boolean): State | null {
  const text = texts[state.page] ?? "";
  const words = wordsIn(text);
  const at = words[state.moved];
  const isTurned = at !== undefined && rightToLeft.test(text.slice(at.start, at.end));
  const meant = isTurned ? (turned[key] ?? key) : key;
  const next = movedBy(words, state, meant, more);
  if (!next) return null;
  if (more || next.moved !== state.moved) return { page: state.page, ...next };
  const step = meant === "ArrowRight" || meant === "ArrowDown" ? 1 : meant.startsWith("Arrow") ? -1 : 0;
  for (let page = state.page + step; step !== 0 && page >= 0 && page < texts.length; page += step) {
    const there = wordsIn(texts[page] ?? "");
    const first = step > 0 ? 0 : there.length - 1;
    if (there.length > 0) return { page, fixed: first, moved: first };
  }
  return { page: state.page, ...next };
}
