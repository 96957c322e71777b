import { useEffect, useSyncExternalStore } from "react";
import { draftIn, isEmpty, nothingInHand } from "../../../show/map/arguing/draft.ts";
import type { ArgumentDraft } from "../../../show/map/arguing/draft.ts";
import type { Turned } from "../../../show/map/arguing/told.ts";
import { keepAtDesk, newDraftName } from "../../desk/drafts.ts";

/** How names of arguments begin that the desk keeps unfinished. */
export const beginning = "argument-";

/** The argument in hand, and the name under which the desk keeps it. */
export interface Hand {
  readonly name: string;
  readonly draft: ArgumentDraft;
  /** What an argument of the corpus said when it was taken in hand; null for a new one. */
  readonly begun?: ArgumentDraft | null;
}

const stored = "argument in hand";
let hand: Hand | null = inTab();
let turned: readonly Turned[] | null = null;
/** Whether the corpus has a desk that keeps what is unfinished. */
let atDesk = false;
const listeners = new Set<() => void>();

function tell(): void {
  for (const listener of listeners) listener();
}

function follow(listener: () => void): () => void {
  listeners.add(listener);
  return () => void listeners.delete(listener);
}

function inTab(): Hand | null {
  try {
    const kept = JSON.parse(sessionStorage.getItem(stored) ?? "null") as Partial<Hand> | null;
    const draft = draftIn(kept?.draft);
    return draft && typeof kept?.name === "string" ? { name: kept.name, draft } : null;
  } catch {
    return null;
  }
}

function put(next: Hand | null): void {
  hand = next;
  if (next === null) turned = null;
  try {
    if (next) sessionStorage.setItem(stored, JSON.stringify(next));
    else sessionStorage.removeItem(stored);
  } catch {
    // A tab without storage still has the desk.
  }
  if (atDesk && next && saysSomething(next)) keepAtDesk(next.name, next.draft);
  tell();
}

/** Whether something would be lost with it: an argument that was only looked at says nothing new. */
function saysSomething({ draft, begun = null }: Hand): boolean {
  return !isEmpty(draft) && JSON.stringify(draft) !== JSON.stringify(begun);
}

/** The argument in hand now; null where there is none. */
export function inHand(): Hand | null {
  return hand;
}

/** The argument in hand, told anew when it changes. */
export function useInHand(): Hand | null {
  return useSyncExternalStore(follow, inHand);
}

/** Takes an argument in hand; the one before is put away. */
export function takeInHand(
  draft: ArgumentDraft,
  name: string = newDraftName(beginning),
  begun: ArgumentDraft | null = null,
): void {
  put({ name, draft, begun });
}

/** Changes the argument in hand, or begins one where there is none. */
export function changeInHand(how: (draft: ArgumentDraft) => ArgumentDraft): void {
  const next = how(hand?.draft ?? nothingInHand);
  put({ name: hand?.name ?? newDraftName(beginning), draft: next, begun: hand?.begun ?? null });
}

/** Lays the argument in hand aside: the desk keeps it, unless nothing was said in it. */
export function putAway(): void {
  put(null);
}

/** Lets the argument in hand go for good, once it is saved or not wanted any more. */
export function letGo(): void {
  if (hand && atDesk) keepAtDesk(hand.name, null);
  put(null);
}

/** On a small screen only the state of the argument in hand is told, until it is opened. */
let folded = typeof matchMedia !== "undefined" && matchMedia("(max-width: 1000px)").matches;

/** Opens the argument in hand, or folds it up to its state. */
export function setFolded(now: boolean): void {
  folded = now;
  tell();
}

/** Whether only its state is told. */
export function useFolded(): boolean {
  return useSyncExternalStore(follow, () => folded);
}

/** Has what is unfinished kept at the desk, where there is one. */
export function useDeskKeeps(writable: boolean): void {
  useEffect(() => {
    atDesk = writable;
    if (writable && hand && saysSomething(hand)) keepAtDesk(hand.name, hand.draft);
  }, [writable]);
}

/** Tells the map what would stand otherwise. */
export function tellTurned(now: readonly Turned[] | null): void {
  // An answer may come after the argument was put away.
  if (turned === now || (now !== null && hand === null)) return;
  turned = now;
  tell();
}

/** What would stand otherwise with the argument in hand; null while that is not known. */
export function useTurned(): readonly Turned[] | null {
  return useSyncExternalStore(follow, () => turned);
}
