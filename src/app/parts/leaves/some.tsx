import { useState } from "react";
import type { ReactNode } from "react";
import { openingWords } from "../../words/shown/opening.ts";

/** So many rows of a list are shown before the rest is asked for. */
const most = 200;

/**
 * The first of a long list, and what tells how many there are beside them, with the way to more: each time as many again as
 * are shown. A list that is not long is shown whole, with nothing beside it.
 */
export function useSome<T>(all: readonly T[], first: number = most): readonly [readonly T[], ReactNode] {
  const [wanted, setWanted] = useState(first);
  // One row more than that is no reason to ask for it.
  if (all.length <= wanted + first / 10) return [all, null];
  const more = Math.min(wanted, all.length - wanted);
  return [
    all.slice(0, wanted),
    <p key="more" className="quiet more">
      {openingWords.shown(wanted, all.length)}{" "}
      <button type="button" onClick={() => setWanted(wanted + more)}>
        {openingWords.more(more)}
      </button>
    </p>,
  ];
}
