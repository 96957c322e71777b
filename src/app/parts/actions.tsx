import { useLayoutEffect, useRef, useSyncExternalStore } from "react";

/** Something that can be done on a page: what it is called, the key that does it, and the doing. */
export interface Action {
  readonly name: string;
  /** As the browser names keys (`/`, `f`, `[`, `ArrowUp`), or several told as one (`Arrow keys`); null for none. */
  readonly key: string | null;
  /** Null where only the key does it, at the place that has the focus: told in the keyboard map, not run from a list. */
  readonly run: (() => void) | null;
  /** The part that declares the action hears its key by itself, while it has the focus. */
  readonly own?: true;
}

/** Actions under one heading. */
export interface ActionGroup {
  readonly title: string;
  readonly actions: readonly Action[];
}

type Actions = readonly Action[] | (() => readonly Action[]);
/** Where actions are to be had: on the page that declares them, or on every page. */
type Reach = "page" | "everywhere";
type Seat = { readonly title: string; readonly reach: Reach; readonly actions: () => readonly Action[] };

const seats = new Set<Seat>();

/** Declares the actions of a page or a part of one, under a heading, as long as it is shown. */
export function useActions(title: string, actions: Actions, reach: Reach = "page"): void {
  const latest = useRef(actions);
  useLayoutEffect(() => {
    latest.current = actions;
  });
  useLayoutEffect(() => {
    const seat: Seat = {
      title,
      reach,
      actions: () => (typeof latest.current === "function" ? latest.current() : latest.current),
    };
    seats.add(seat);
    return () => void seats.delete(seat);
  }, [title, reach]);
}

/** All that can be done now: what the page declares, then what can be done everywhere; equal headings are one. */
export function declaredActions(): readonly ActionGroup[] {
  const groups = new Map<string, readonly Action[]>();
  const there = [...seats];
  const inOrder = [
    ...there.filter((seat) => seat.reach === "page"),
    ...there.filter((seat) => seat.reach === "everywhere"),
  ];
  for (const seat of inOrder) groups.set(seat.title, [...(groups.get(seat.title) ?? []), ...seat.actions()]);
  return [...groups].map(([title, actions]) => ({ title, actions })).filter((one) => one.actions.length > 0);
}

const stored = "single-keys";
const listeners = new Set<() => void>();

/** Whether keys that are one letter or sign do something; the browser remembers it. */
export function singleKeysWork(): boolean {
  try {
    return localStorage.getItem(stored) !== "off";
  } catch {
    return true;
  }
}

/** Turns single keys on or off. */
export function setSingleKeys(on: boolean): void {
  try {
    localStorage.setItem(stored, on ? "on" : "off");
  } catch {
    return;
  }
  for (const listener of listeners) listener();
}

/** Whether single keys work, told anew when it is changed. */
export function useSingleKeys(): boolean {
  return useSyncExternalStore((listener) => {
    listeners.add(listener);
    return () => void listeners.delete(listener);
  }, singleKeysWork);
}

/** Whether a key press is meant for what has the focus: a field that takes text, or a choice that letters move. */
export function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target.isContentEditable || target.matches("textarea, select")) return true;
  return (
    target instanceof HTMLInputElement &&
    !/^(?:checkbox|radio|button|submit|reset|range|file)$/.test(target.type)
  );
}

/** Hears the keys of all declared actions, all over the app; the frame calls it once. */
export function useActionKeys(): void {
  useLayoutEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || event.isComposing)
        return;
      if (isTyping(event.target) || document.querySelector("dialog[open]") !== null) return;
      if (event.key.length === 1 && !singleKeysWork()) return;
      const action = declaredActions()
        .flatMap((group) => group.actions)
        .find((one) => one.key === event.key && one.own !== true && one.run !== null);
      if (!action) return;
      event.preventDefault();
      action.run?.();
    };
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, []);
}
