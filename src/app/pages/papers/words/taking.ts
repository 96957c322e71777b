import { useLayoutEffect, useState } from "react";
import type { RefObject } from "react";
import type { Region } from "../../../../show/desk/papers/selector.ts";
import { takenRegion, takenWords } from "../../../../show/desk/papers/taken.ts";
import type { Taken, TextPlace } from "../../../../show/desk/papers/taken.ts";
import { selectedIn } from "../leaf/layers.ts";
import type { Layers } from "../leaf/layers.ts";
import type { OpenPaper } from "../reader/paper.ts";
import type { Read } from "../reader/use-paper.ts";

/** A part of a page that is marked to be taken. */
export interface MarkedPart {
  readonly page: number;
  readonly region: Region | null;
}

/** What can be taken from a paper now, and what is. */
export interface Taking {
  /** What was taken and is being written down. */
  readonly taken: Taken | null;
  /** Whether words are selected, or a part of a page. */
  readonly ready: "words" | "part" | null;
  readonly take: () => void;
  readonly done: () => void;
  /** The part that is marked; null where parts are not being marked. */
  readonly part: MarkedPart | null;
  readonly mark: (part: MarkedPart | null) => void;
}

/** Takes selected words, or a part of a page, out of a paper. */
export function useTaking(
  paper: OpenPaper,
  { texts, shapes }: Read,
  seat: RefObject<HTMLElement | null>,
  layers: Layers,
): Taking {
  const [taken, setTaken] = useState<Taken | null>(null);
  const [part, mark] = useState<MarkedPart | null>(null);
  const [isSelected, setSelected] = useState(false);
  useLayoutEffect(() => {
    const look = (): void => setSelected(seat.current !== null && selectedIn(layers, seat.current) !== null);
    document.addEventListener("selectionchange", look);
    return () => document.removeEventListener("selectionchange", look);
  }, [seat, layers]);
  const region = part?.region ?? null;
  const take = (): void => {
    if (part && region) {
      const shape = paper.kind === "pdf" ? (shapes[part.page] ?? null) : null;
      setTaken(takenRegion(part.page, region, shape));
      return mark(null);
    }
    const places = seat.current && selectedIn(layers, seat.current);
    if (places) void wholeTexts(paper, texts, places).then((all) => setTaken(takenWords(all, ...places)));
  };
  return {
    taken,
    ready: region ? "part" : isSelected ? "words" : null,
    take,
    done: () => setTaken(null),
    part,
    mark,
  };
}

/** The texts, with those of the pages that something is taken from though they were not read yet. */
async function wholeTexts(
  paper: OpenPaper,
  texts: readonly string[],
  [one, other]: readonly [TextPlace, TextPlace],
): Promise<readonly string[]> {
  const pages = [one.pageIndex, other.pageIndex];
  const [first, last] = [Math.min(...pages), Math.max(...pages)];
  const missing = texts.flatMap((text, page) => (page >= first && page <= last && text === "" ? [page] : []));
  if (missing.length === 0) return texts;
  const all = [...texts];
  for (const page of missing) all[page] = await paper.textOf(page);
  return all;
}
