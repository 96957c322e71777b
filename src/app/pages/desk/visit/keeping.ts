import { useCallback, useEffect, useRef, useState } from "react";
import { hashOf } from "../../../../base/text/hash.ts";
import type { VisitAsked } from "../../../../show/desk/visit/asked.ts";
import { filledIn, nothingFilled } from "../../../../show/desk/visit/filled/filled.ts";
import type { Filled } from "../../../../show/desk/visit/filled/filled.ts";
import { send } from "../../../model/corpus.ts";

/** Where what is written is kept by now: at the desk, in this browser alone while the program does not answer, or nowhere. */
export type Kept = "desk" | "browser" | "alone" | "nowhere";

interface Draft {
  /** When it was written, in milliseconds. */
  readonly at: number;
  readonly filled: Filled;
}

const again = 3000;

/** What is written on the sheet of a visit, kept at once in this browser and soon at the desk; it outlives a reload and the program. */
export function useFilled(
  corpus: string,
  asked: VisitAsked,
  atDesk: boolean,
): readonly [Filled, (change: (filled: Filled) => Filled) => void, Kept | null, () => void] {
  const place = placeOf(corpus, asked);
  const [draft, setDraft] = useState<Draft>(() => inBrowser(place) ?? { at: 0, filled: nothingFilled });
  const [kept, setKept] = useState<Kept | null>(null);
  const waiting = useRef<Draft | null>(null);
  const busy = useRef(false);

  const send = useCallback(async (): Promise<void> => {
    if (busy.current) return;
    busy.current = true;
    for (let next = waiting.current; next; next = waiting.current) {
      const what = await writtenAtDesk(place, next);
      if (what === "gone") {
        setKept((before) => (before === "nowhere" ? before : "alone"));
        break;
      }
      if (waiting.current !== next) continue;
      waiting.current = null;
      setKept((before) => (what === "written" ? "desk" : before === "alone" ? "browser" : before));
    }
    busy.current = false;
  }, [place]);

  // While the program does not answer, what waits is tried again until it does.
  useEffect(() => {
    const timer = setInterval(() => {
      if (waiting.current) void send();
    }, again);
    return () => clearInterval(timer);
  }, [send]);

  useEffect(() => {
    let left = false;
    void fromDesk(place).then((found) => {
      if (!left && found) setDraft((now) => (found.at > now.at ? found : now));
    });
    return () => void (left = true);
  }, [place]);

  const keep = (next: Draft): void => {
    setKept(storedInBrowser(place, next) ? "browser" : "nowhere");
    if (!atDesk) return;
    waiting.current = next;
    void send();
  };
  const change = (how: (filled: Filled) => Filled): void => {
    const next = { at: Date.now(), filled: how(draft.filled) };
    setDraft(next);
    keep(next);
  };
  const clear = (): void => {
    const next = { at: Date.now(), filled: nothingFilled };
    setDraft(next);
    keep(next);
    setKept(null);
  };
  return [draft.filled, change, kept, clear];
}

/** Puts what a file brought back where the sheet that it is of will find it. */
export function keepReturned(corpus: string, asked: VisitAsked, filled: Filled): void {
  storedInBrowser(placeOf(corpus, asked), { at: Date.now(), filled });
}

/** What this browser has of a sheet already. */
export function writtenOn(corpus: string, asked: VisitAsked): Filled | null {
  return inBrowser(placeOf(corpus, asked))?.filled ?? null;
}

/** Whether nothing is written on a sheet. */
export function isBlank(filled: Filled): boolean {
  return JSON.stringify(filled) === JSON.stringify(nothingFilled);
}

const placeOf = (corpus: string, { examination, keeper }: VisitAsked): string =>
  `variorum visit ${JSON.stringify([corpus, examination, keeper])}`;

function inBrowser(place: string): Draft | null {
  try {
    return draftIn(localStorage.getItem(place));
  } catch {
    return null;
  }
}

function storedInBrowser(place: string, draft: Draft): boolean {
  try {
    localStorage.setItem(place, JSON.stringify(draft));
    return true;
  } catch {
    return false;
  }
}

const nameAtDesk = (place: string): string => `drafts/visit-${hashOf(place).slice(0, 16)}`;

async function writtenAtDesk(place: string, draft: Draft): Promise<"written" | "refused" | "gone"> {
  const { status } = isBlank(draft.filled)
    ? await send(nameAtDesk(place), undefined, "DELETE")
    : await send(nameAtDesk(place), draft, "PUT");
  if (status === 0) return "gone";
  // What the desk refuses it will refuse again: it stays in the browser.
  return status >= 200 && status < 300 ? "written" : "refused";
}

async function fromDesk(place: string): Promise<Draft | null> {
  const { status, text } = await send("drafts", undefined, "GET");
  const { drafts = [] } = status === 200 ? (JSON.parse(text) as { readonly drafts?: readonly string[] }) : {};
  if (!drafts.includes(nameAtDesk(place).slice("drafts/".length))) return null;
  const answer = await send(nameAtDesk(place), undefined, "GET");
  return answer.status === 200 ? draftIn(answer.text) : null;
}

function draftIn(text: string | null): Draft | null {
  if (text === null) return null;
  try {
    const { at, filled } = JSON.parse(text) as Partial<Record<keyof Draft, unknown>>;
    const read = filledIn(filled);
    return typeof at === "number" && read ? { at, filled: read } : null;
  } catch {
    return null;
  }
}
