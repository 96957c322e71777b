import { useLayoutEffect, useRef } from "react";
import { singleKeysWork, useActions } from "../../../parts/actions.tsx";
import { alongLines } from "../../../words/reader/language.ts";
import { talkWords as words } from "../../../words/telling/talk.ts";

/** What keys and a clicker do in a hall. */
export interface Presenting {
  readonly on: () => void;
  readonly back: () => void;
  readonly first: () => void;
  readonly last: () => void;
  readonly dark: () => void;
  readonly full: () => void;
  readonly notes: (() => void) | null;
  readonly end: (() => void) | null;
}

/** The keys of presenting (those that clickers send are common practice: Page up and Page down, b or a full stop for a dark screen). */
export function usePresentingKeys(presenting: Presenting): void {
  const latest = useRef(presenting);
  useLayoutEffect(() => {
    latest.current = presenting;
  });
  useLayoutEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented) return;
      const { target } = event;
      const onControl = target instanceof HTMLElement && target.closest("button, input, a[href]") !== null;
      if (onControl && (event.key === " " || event.key === "Enter")) return;
      if (target instanceof HTMLInputElement) return;
      const act = actOf(event, latest.current);
      if (act === null) return;
      event.preventDefault();
      event.stopPropagation();
      act();
    };
    document.addEventListener("keydown", onKey, true);
    return () => document.removeEventListener("keydown", onKey, true);
  }, []);
  const own = { own: true as const };
  useActions(words.actions, [
    { name: words.on, key: "PageDown", run: presenting.on, ...own },
    { name: words.back, key: "PageUp", run: presenting.back, ...own },
    { name: words.first, key: "Home", run: presenting.first, ...own },
    { name: words.last, key: "End", run: presenting.last, ...own },
    { name: words.dark, key: "b", run: presenting.dark, ...own },
    { name: words.full, key: "f", run: presenting.full, ...own },
    ...(presenting.notes ? [{ name: words.notes, key: "n", run: presenting.notes, ...own }] : []),
    ...(presenting.end ? [{ name: words.end, key: "Escape", run: presenting.end, ...own }] : []),
  ]);
}

function actOf(event: KeyboardEvent, now: Presenting): (() => void) | null {
  if (event.key === " ") return event.shiftKey ? now.back : now.on;
  switch (alongLines(event.key)) {
    case "ArrowRight":
    case "ArrowDown":
    case "PageDown":
    case "Enter":
      return now.on;
    case "ArrowLeft":
    case "ArrowUp":
    case "PageUp":
    case "Backspace":
      return now.back;
    case "Home":
      return now.first;
    case "End":
      return now.last;
    case "Escape":
      return now.end;
  }
  if (!singleKeysWork()) return null;
  const letter = event.key.toLowerCase();
  if (letter === "b" || letter === ".") return now.dark;
  if (letter === "f") return now.full;
  return letter === "n" ? now.notes : null;
}
