import { useEffect, useRef, useState } from "react";
import type { Id } from "../../../base/finding.ts";
import type { ArgumentDraft } from "../../../show/map/arguing/draft.ts";
import type { InHandTold, Named } from "../../../show/map/arguing/told.ts";
import { doorTo } from "../../model/door/asking.ts";
import { tellTurned } from "./hand.ts";
import type { ArguingQuestions } from "./serving.ts";

const door = doorTo<ArguingQuestions>("arguing");

/** Opens a door for arguments in hand to the worker that holds the model. */
export const argueIn = door.open;

/** Asks the model something about an argument; null where the corpus cannot be read, or has nothing to answer. */
export const askArguing = door.ask;

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
