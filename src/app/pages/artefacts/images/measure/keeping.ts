import { useCallback, useEffect, useRef, useState } from "react";
import { pointsOf } from "../../../../../show/artefacts/picture/points.ts";
import { send } from "../../../../model/corpus.ts";
import type { Draft } from "./draft.ts";

const stored = (image: string): string => `variorum picture ${image}`;

/** The name under which the desk keeps what is measured on a picture; null where that would be none it takes. */
function deskName(image: string): string | null {
  const name = `picture-${image.replaceAll("/", "_")}`;
  return name.length <= 100 && /^[a-z0-9_-]+$/.test(name) ? name : null;
}

/** What is being measured on a picture, kept over a reload in this tab and at the desk; null begins afresh. */
export function useKept(
  image: string,
  fresh: Draft,
  atDesk: boolean,
): { readonly draft: Draft; readonly put: (draft: Draft | null) => void; readonly restored: boolean } {
  const [draft, setDraft] = useState(() => inTab(image) ?? fresh);
  const [restored, setRestored] = useState(() => inTab(image) !== null);
  const touched = useRef(restored);
  useEffect(() => {
    const name = deskName(image);
    if (!atDesk || name === null || touched.current) return;
    void send("drafts", undefined, "GET").then(async ({ status, text }) => {
      const kept = status === 200 ? (JSON.parse(text) as { readonly drafts: readonly string[] }).drafts : [];
      const answer = kept.includes(name) ? await send(`drafts/${name}`, undefined, "GET") : null;
      const found = answer?.status === 200 ? draftIn(answer.text) : null;
      if (!found || touched.current) return;
      setDraft(found);
      setRestored(true);
    });
  }, [image, atDesk]);
  const put = useCallback(
    (next: Draft | null): void => {
      touched.current = true;
      setDraft(next ?? fresh);
      keepInTab(image, next);
      const name = deskName(image);
      if (atDesk && name !== null) keepAtDesk(name, next);
    },
    [image, fresh, atDesk],
  );
  return { draft, put, restored };
}

function inTab(image: string): Draft | null {
  try {
    return draftIn(sessionStorage.getItem(stored(image)));
  } catch {
    return null;
  }
}

function keepInTab(image: string, draft: Draft | null): void {
  try {
    if (draft) sessionStorage.setItem(stored(image), JSON.stringify(draft));
    else sessionStorage.removeItem(stored(image));
  } catch {
    // A tab without storage still has the desk.
  }
}

const waiting = new Map<string, Draft | null>();
let writing = false;

/** Writes one draft after the other, of each its latest state alone. */
function keepAtDesk(name: string, draft: Draft | null): void {
  waiting.set(name, draft);
  if (writing) return;
  writing = true;
  const round = async (): Promise<void> => {
    for (let [next] = waiting; next; [next] = waiting) {
      const [of, kept] = next;
      waiting.delete(of);
      await (kept ? send(`drafts/${of}`, kept, "PUT") : send(`drafts/${of}`, undefined, "DELETE"));
    }
  };
  void round().finally(() => {
    writing = false;
  });
}

/** A draft from its text; null for anything that is none: neither the tab nor the folder is only ours. */
function draftIn(text: string | null): Draft | null {
  if (text === null) return null;
  try {
    const draft = JSON.parse(text) as Draft;
    const { scale, taken, readings, of, by } = draft;
    const words = [draft.halfWidth, draft.dimension, draft.between, draft.unit, draft.basis, draft.year];
    const scaleWords = [scale.length, scale.ratio, scale.perInch, scale.within];
    const good =
      [...words, ...scaleWords].every((one) => typeof one === "string") &&
      [of, by, scale.known].every((one) => one === null || typeof one === "string") &&
      Object.hasOwn(pointsOf, taken) &&
      ["bar", "known", "printed"].includes(scale.way) &&
      arePoints(readings, pointsOf[taken]) &&
      arePoints(scale.readings, 2);
    return good ? draft : null;
  } catch {
    return null;
  }
}

function arePoints(readings: unknown, most: number): boolean {
  const isPoint = (one: unknown): boolean =>
    typeof one === "object" &&
    one !== null &&
    Number.isFinite((one as { readonly x?: unknown }).x) &&
    Number.isFinite((one as { readonly y?: unknown }).y);
  return (
    Array.isArray(readings) &&
    readings.every((one) => Array.isArray(one) && one.length <= most && one.every(isPoint))
  );
}
