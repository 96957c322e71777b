import { useEffect, useState } from "react";
import type { ReferenceOf } from "../../../../show/pages/sheet.ts";
import { referenceWords } from "../../../words/sheet/reference.ts";
import type { ReferenceAsked, ReferenceTold } from "./messages.ts";

/** How long a style may take for one reference, in milliseconds. */
const patience = 30_000;

let thread: Worker | null = null;
let number = 0;
const listeners = new Set<(told: ReferenceTold) => void>();

function tell(told: ReferenceTold): void {
  for (const listener of listeners) listener(told);
}

/** The thread that writes references, begun when the first is asked for: nothing of it is loaded before. */
function writer(): Worker {
  if (thread) return thread;
  thread = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
  thread.onmessage = ({ data }: MessageEvent<ReferenceTold>) => tell(data);
  thread.onerror = (event) => {
    event.preventDefault();
    end(event.message);
  };
  return thread;
}

/** Ends the thread at work; what was asked last gets no answer from it. */
function end(trouble: string): void {
  thread?.terminate();
  thread = null;
  tell({ number, trouble });
}

/** The reference of a source in the corpus's style; null until it is written. */
export function useReference(reference: ReferenceOf): ReferenceTold | null {
  const asking = JSON.stringify(reference);
  const [told, setTold] = useState<{ readonly of: string; readonly told: ReferenceTold } | null>(null);
  useEffect(() => {
    number += 1;
    const mine = number;
    const waiting = setTimeout(() => end(referenceWords.tooLong), patience);
    const hear = (one: ReferenceTold): void => {
      if (one.number !== mine) return;
      clearTimeout(waiting);
      setTold({ of: asking, told: one });
    };
    listeners.add(hear);
    const asked: ReferenceAsked = { number: mine, reference: JSON.parse(asking) as ReferenceOf };
    writer().postMessage(asked);
    return () => {
      clearTimeout(waiting);
      listeners.delete(hear);
    };
  }, [asking]);
  return told?.of === asking ? told.told : null;
}
