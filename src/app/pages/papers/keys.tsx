import type { RefObject } from "react";
import { useActions } from "../../parts/actions.tsx";
import { paperWords as words } from "../../words/reading/papers.ts";
import type { PaperSearch } from "./search.tsx";
import type { Size } from "./tools.tsx";
import type { Keyed } from "./words/keyed.ts";
import type { Taking } from "./words/taking.ts";

interface Props {
  readonly pageField: RefObject<HTMLInputElement | null>;
  readonly searchField: RefObject<HTMLInputElement | null>;
  readonly size: Size;
  readonly search: PaperSearch;
  readonly keyed: Keyed;
  readonly taking: Taking;
  readonly canTake: boolean;
  readonly isScan: boolean;
  /** Begins to select words by keys. */
  readonly onSelect: () => void;
  /** Marks a part of the page, or leaves the one that is marked. */
  readonly onRegion: () => void;
}

/** What can be taken from a paper now, said and done; with all that is done on its page by keys. */
export function PaperKeys(props: Props) {
  const { pageField, searchField, size, search, keyed, taking, canTake, isScan, onSelect, onRegion } = props;
  const { ready, take, part } = taking;
  useActions(words.paper, [
    ...(canTake && ready !== null ? [{ name: words.take, key: "c", run: take }] : []),
    ...(isScan ? [] : [{ name: words.select, key: "s", run: onSelect }]),
    ...(canTake ? [{ name: part ? words.leaveRegion : words.region, key: "r", run: onRegion }] : []),
    ...(isScan ? [] : [{ name: words.search, key: "f", run: () => searchField.current?.focus() }]),
    ...(search.hits.length > 0
      ? [
          { name: words.next, key: "n", run: () => search.step(1) },
          { name: words.before, key: "N", run: () => search.step(-1) },
        ]
      : []),
    { name: words.toPage, key: "g", run: () => pageField.current?.focus() },
    { name: words.larger, key: "+", run: size.larger },
    { name: words.smaller, key: "-", run: size.smaller },
    { name: words.fit, key: "0", run: size.fit },
  ]);
  if (!canTake) return <p className="quiet paper-hint">{words.readOnlyHint}</p>;
  if (ready !== null)
    return (
      <button
        type="button"
        className="paper-take"
        aria-keyshortcuts="c"
        // A press would otherwise take the selection away before it is taken.
        onPointerDown={(event) => event.preventDefault()}
        onClick={take}
      >
        {ready === "part" ? words.takeRegion : words.take}
      </button>
    );
  const hint = keyed.isOn ? words.selecting : isScan ? words.scanHint : words.takeHint;
  return <p className="quiet paper-hint">{hint}</p>;
}
