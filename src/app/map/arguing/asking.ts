import { useEffect, useRef, useState } from "react";
import type { Id } from "../../../base/finding.ts";
import type { ArgumentDraft } from "../../../show/map/arguing/draft.ts";
import type { InHandTold, Named } from "../../../show/map/arguing/told.ts";
import type { Asked } from "../../worker/messages.ts";
import { tellTurned } from "./hand.ts";
import type { ArguingAnswer, ArguingAsked, ArguingQuestions } from "./serving.ts";

let door: MessagePort | null = null;
let number = 0;
const waiting = new Map<number, (told: ArguingAnswer["told"]) => void>();

/** Opens a door for arguments in hand to the worker that holds the model. */
export function argueIn(holder: Worker): void {
  const { port1, port2 } = new MessageChannel();
  door = port2;
  port2.onmessage = ({ data }: MessageEvent<ArguingAnswer>) => {
    waiting.get(data.number)?.(data.told);
    waiting.delete(data.number);
  };
  const lend: Asked = { ask: "arguing", port: port1 };
  holder.postMessage(lend, [port1]);
}

/** Asks the model something about an argument; null where the corpus cannot be read, or has nothing to answer. */
export function askArguing<A extends keyof ArguingQuestions>(
  ask: A,
  given: Parameters<ArguingQuestions[A]>[0],
): Promise<ReturnType<ArguingQuestions[A]> | null> {
  return new Promise((resolve) => {
    number += 1;
    waiting.set(number, (told) => resolve(told as ReturnType<ArguingQuestions[A]> | null));
    const message: ArguingAsked = { number, ask, given };
    door?.postMessage(message);
  });
}

/** What records are called; null until that is known. */
export function useNames(ids: readonly Id[]): Readonly<Record<Id, Named>> | null {
  const [names, setNames] = useState<Readonly<Record<Id, Named>> | null>(null);
  const asking = JSON.stringify(ids);
  useEffect(() => {
    let left = false;
    const given = JSON.parse(asking) as readonly Id[];
    if (given.length > 0)
      void askArguing("names", given).then((told) => {
        if (!left) setNames(told);
      });
    return () => void (left = true);
  }, [asking]);
  return names;
}

/** How long a pause in typing is before an argument is tried, in ms. */
const pause = 150;

/**
 * What there is to say of an argument in hand, asked again whenever it or the corpus is another; while one answer is
 * under way only the latest state waits. What was said before stays until then.
 */
export function useTold(draft: ArgumentDraft, corpus: unknown): InHandTold | null {
  const [told, setTold] = useState<InHandTold | null>(null);
  const next = useRef<ArgumentDraft | null>(null);
  const busy = useRef(false);
  useEffect(() => {
    next.current = draft;
    const timer = setTimeout(() => {
      if (busy.current) return;
      busy.current = true;
      const round = async (): Promise<void> => {
        for (let one = next.current; one; one = next.current) {
          next.current = null;
          const answer = await askArguing("tell", one);
          setTold(answer);
          tellTurned(answer?.turned ?? null);
        }
        busy.current = false;
      };
      void round();
    }, pause);
    return () => clearTimeout(timer);
  }, [draft, corpus]);
  useEffect(() => () => void (next.current = null), []);
  return told;
}
