import { useEffect, useSyncExternalStore } from "react";
import type { Draft } from "../../../../show/desk/workbench/draft/draft.ts";
import type { Typing } from "../../../../show/desk/workbench/typing.ts";
import type { Asked, Told } from "../../../worker/messages.ts";
import { draftsAtDesk, draftsInTab, keepAtDesk, keepInTab } from "./keeping.ts";

/** How long a pause in typing is before what was typed is read, in ms. */
const pause = 120;

const drafts = new Map<string | null, Draft>(draftsInTab().map((draft) => [draft.of, draft]));
let model: Worker | null = null;
/** Whether the corpus has a desk that keeps drafts, and whether it was asked for them. */
let atDesk = false;
/** What records are sought by: that stays until another text is typed. */
let seeking: Typing | null = null;
let waiting: ReturnType<typeof setTimeout> | undefined;

/** Tells which worker holds the model: drafts are tried there, those from before a reload too. */
export function workIn(holder: Worker): void {
  model = holder;
  for (const [of, draft] of drafts) send(of, draft, null);
  holder.addEventListener("message", ({ data }: MessageEvent<Told>) => {
    if (data.tell === "computing") hear(data.done);
    else if (data.tell === "page") hear(null);
  });
}

/** Puts a draft in the place of the one before; null takes it off the workbench. */
export function putDraft(of: string | null, draft: Draft | null): void {
  clearTimeout(waiting);
  if (draft === null) drafts.delete(of);
  else drafts.set(of, draft);
  keepInTab([...drafts.values()]);
  if (atDesk) keepAtDesk(of, draft);
  send(of, draft, seeking);
  tellListeners();
}

/** The draft that lies on the workbench now; null where none was begun. */
export function draftNow(of: string | null): Draft | null {
  return drafts.get(of) ?? null;
}

/** The draft on the workbench: the one that was begun, else the one that the page was made with. */
export function useDraft(of: string | null, shown: Draft): Draft {
  return useSyncExternalStore(follow, () => drafts.get(of)) ?? shown;
}

/** Has drafts kept at the desk too, where there is one; those it has from before are put on the workbench, once. */
export function useDeskDrafts(writable: boolean): void {
  useEffect(() => {
    if (!writable || atDesk) return;
    atDesk = true;
    void draftsAtDesk().then((found) => {
      for (const draft of found) {
        if (drafts.has(draft.of)) continue;
        drafts.set(draft.of, draft);
        send(draft.of, draft, null);
      }
      for (const [of, draft] of drafts) keepAtDesk(of, draft);
      tellListeners();
    });
  }, [writable]);
}

/** Has a text read while it is being typed, after a pause; the draft itself stays what it is. */
export function tellTyping(of: string | null, typing: Typing | null): void {
  clearTimeout(waiting);
  if (typing !== null) seeking = typing.at.startsWith("find.") ? typing : null;
  waiting = setTimeout(() => send(of, draftNow(of), typing), pause);
}

function send(of: string | null, draft: Draft | null, typing: Typing | null): void {
  const message: Asked = { ask: "bench", on: { of, draft, typing } };
  model?.postMessage(message);
}

let done: number | null = null;
const listeners = new Set<() => void>();

function hear(now: number | null): void {
  if (done === now) return;
  done = now;
  tellListeners();
}

function tellListeners(): void {
  for (const listener of listeners) listener();
}

/** How far the run is that is being computed, 0 to 1; null while nothing was said of one. */
export function useProgress(): number | null {
  return useSyncExternalStore(follow, () => done);
}

function follow(listener: () => void): () => void {
  listeners.add(listener);
  return () => void listeners.delete(listener);
}
