import { useEffect, useMemo, useRef, useState } from "react";
import { opened } from "./open.ts";
import type { Bundle } from "./open.ts";
import type { OpenPaper, Refusal, Shape } from "./paper.ts";

/** A paper that is opened: `opening`, what reads it, or why it cannot be read. */
export type Opened = "opening" | OpenPaper | Refusal;

/** Opens the bundle that is looked at, and closes it when another is. */
export function usePaper(bundle: Bundle): Opened {
  const name = [bundle.file, ...(bundle.pictures ?? [])].join("\n");
  const [state, setState] = useState<{ readonly name: string; readonly is: Opened }>({ name, is: "opening" });
  useEffect(() => {
    let isOver = false;
    let paper: OpenPaper | null = null;
    const [file = "", ...pictures] = name.split("\n");
    void opened({ file, pictures: pictures.length > 0 ? pictures : null }).then((is) => {
      if (typeof is === "object") paper = is;
      if (isOver) paper?.close();
      else setState({ name, is });
    });
    return () => {
      isOver = true;
      paper?.close();
    };
  }, [name]);
  return state.name === name ? state.is : "opening";
}

/** What is read of a paper's pages while they are looked at: texts and shapes, in their order. */
export interface Read {
  /** The text of each page, empty for one that was not read yet. */
  readonly texts: readonly string[];
  readonly shapes: readonly Shape[];
  /** How many pages are read. */
  readonly done: number;
}

/** How many pages are read before they are told, after the first. */
const some = 40;

/** Reads the text of all pages, a page at a time, beginning with the one that is looked at. */
export function useRead(paper: OpenPaper | null, looked: number): Read {
  const first = useRef(looked);
  const unread = useMemo(() => unreadOf(paper), [paper]);
  const [read, setRead] = useState<{ readonly of: OpenPaper | null; readonly is: Read }>({
    of: paper,
    is: unread,
  });
  useEffect(() => {
    first.current = looked;
  });
  useEffect(() => {
    if (!paper) return;
    let isOver = false;
    const { texts, shapes } = unreadOf(paper);
    const [known, sizes] = [[...texts], [...shapes]];
    const begin = Math.min(first.current, paper.count - 1);
    const order = [begin, ...[...known.keys()].filter((page) => page !== begin)];
    const readAll = async (): Promise<void> => {
      for (const [n, page] of order.entries()) {
        // A page that cannot be read has no text, and the shape of the first.
        known[page] = await paper.textOf(page).catch(() => "");
        sizes[page] = await paper.shapeOf(page).catch(() => paper.first);
        if (isOver) return;
        const done = n + 1;
        if (done === 1 || done === order.length || done % some === 0)
          setRead({ of: paper, is: { texts: [...known], shapes: [...sizes], done } });
      }
    };
    void readAll();
    return () => {
      isOver = true;
    };
  }, [paper]);
  return read.of === paper ? read.is : unread;
}

function unreadOf(paper: OpenPaper | null): Read {
  const count = paper?.count ?? 0;
  return {
    texts: Array.from({ length: count }, () => ""),
    shapes: paper ? Array.from({ length: count }, () => paper.first) : [],
    done: 0,
  };
}
