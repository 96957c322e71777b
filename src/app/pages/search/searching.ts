import { useEffect, useState } from "react";
import type { Asked } from "../../worker/messages.ts";
import type { SearchAsked, SearchTold } from "../../worker/search/messages.ts";

let model: Worker | null = null;
let thread: Worker | null = null;
let number = 0;
const listeners = new Set<(told: SearchTold) => void>();

/** Tells which worker holds the model: the corpus comes from it straight to the worker that searches. */
export function searchIn(holder: Worker): void {
  model = holder;
  if (thread) join(holder, thread);
}

/** Begins to index the corpus, unless that is done already: nothing is indexed before somebody wants to search. */
export function beginSearch(): Worker {
  if (thread) return thread;
  thread = new Worker(new URL("../../worker/search-worker.ts", import.meta.url), { type: "module" });
  thread.onmessage = ({ data }: MessageEvent<SearchTold>) => {
    for (const listener of listeners) listener(data);
  };
  if (model) join(model, thread);
  return thread;
}

function join(holder: Worker, searcher: Worker): void {
  const { port1, port2 } = new MessageChannel();
  const lend: Asked = { ask: "search", port: port1 };
  const take: SearchAsked = { ask: "corpus", port: port2 };
  holder.postMessage(lend, [port1]);
  searcher.postMessage(take, [port2]);
}

/** What is found for a text, told anew as the corpus is indexed or changed; an earlier text's until this one's is there. */
export function useFound(text: string, most: number, kind: string | null): SearchTold | null {
  const [told, setTold] = useState<SearchTold | null>(null);
  useEffect(() => {
    const searcher = beginSearch();
    number += 1;
    const mine = number;
    const hear = (one: SearchTold): void => {
      if (one.number === mine) setTold(one);
    };
    listeners.add(hear);
    const asked: SearchAsked = { ask: "find", number: mine, text, most, kind };
    searcher.postMessage(asked);
    return () => void listeners.delete(hear);
  }, [text, most, kind]);
  return told;
}
