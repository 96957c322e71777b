import { useDeferredValue, useLayoutEffect, useMemo, useRef, useState } from "react";
import type { RefObject } from "react";
import { mostHits, searching } from "../../../show/desk/papers/searching.ts";
import type { Hit } from "../../../show/desk/papers/searching.ts";
import { paperWords as words } from "../../words/reading/papers.ts";
import type { Read } from "./reader/use-paper.ts";

/** A search inside a paper: what is sought, the places, the one that is looked at, and the ways to others. */
export interface PaperSearch {
  readonly text: string;
  readonly setText: (text: string) => void;
  readonly hits: readonly Hit[];
  /** Which of the places is looked at, from 0; -1 for none. */
  readonly at: number;
  readonly step: (by: 1 | -1) => void;
}

/** Searches a paper as far as it is read; the first place from the page that is looked at is gone to at once. */
export function usePaperSearch(
  texts: readonly string[],
  page: number,
  reach: (hit: Hit) => void,
): PaperSearch {
  const [text, setText] = useState("");
  const sought = useDeferredValue(text);
  const search = useMemo(() => searching(), []);
  const hits = useMemo(() => search(texts, sought), [search, texts, sought]);
  const [now, setNow] = useState<{ readonly page: number; readonly start: number } | null>(null);
  const at = now === null ? -1 : hits.findIndex((one) => one.page === now.page && one.start === now.start);
  const gone = useRef("");
  const looked = useRef(page);
  const reached = useRef(reach);
  useLayoutEffect(() => {
    looked.current = page;
    reached.current = reach;
  });
  useLayoutEffect(() => {
    const first = hits.find((one) => one.page >= looked.current) ?? hits[0];
    if (gone.current === sought || (!first && sought !== "")) return;
    gone.current = sought;
    setNow(first ?? null);
    if (first) reached.current(first);
  }, [hits, sought]);
  const step = (by: 1 | -1): void => {
    const next = hits[at < 0 ? (by > 0 ? 0 : hits.length - 1) : (at + by + hits.length) % hits.length];
    if (!next) return;
    setNow(next);
    reach(next);
  };
  return { text, setText, hits, at, step };
}

interface Props {
  readonly search: PaperSearch;
  readonly read: Read;
  readonly field: RefObject<HTMLInputElement | null>;
  /** Leaves the field for the paper, with the place that was found selected. */
  readonly onLeave: () => void;
}

/** The field that searches inside a paper, with how many places there are and the ways through them. */
export function SearchInPaper({ search, read, field, onLeave }: Props) {
  const { text, setText, hits, at, step } = search;
  const count = read.texts.length;
  return (
    <form
      className="paper-search"
      onSubmit={(event) => {
        event.preventDefault();
        step(1);
      }}
    >
      <input
        ref={field}
        type="search"
        aria-label={words.search}
        placeholder={words.search}
        aria-keyshortcuts="f"
        autoComplete="off"
        dir="auto"
        value={text}
        onChange={(event) => setText(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === "Enter" && event.shiftKey) step(-1);
          else if (event.key === "Escape") onLeave();
          else return;
          event.preventDefault();
        }}
      />
      {hits.length > 0 && (
        <>
          <button type="button" aria-label={words.before} aria-keyshortcuts="N" onClick={() => step(-1)}>
            ↑
          </button>
          <button type="button" aria-label={words.next} aria-keyshortcuts="n" onClick={() => step(1)}>
            ↓
          </button>
        </>
      )}
      <output className="quiet">{text.trim() === "" ? "" : foundText(hits.length, at)}</output>
      {text.trim() !== "" && read.done < count && (
        <span className="quiet">{words.soFar(read.done, count)}</span>
      )}
    </form>
  );
}

function foundText(count: number, at: number): string {
  if (count === 0) return words.noHits;
  if (count >= mostHits) return words.manyHits(count);
  return at < 0 ? words.hits(count) : words.hit(at + 1, count);
}
