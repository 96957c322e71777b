import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { cellAt, isBlank, withTexts } from "../../../../show/desk/grid/draft.ts";
import type { GridDraft, Place } from "../../../../show/desk/grid/draft.ts";
import type { GridPage } from "../../../../show/desk/grid/page.ts";
import { gridInTab, gridsAtDesk, keepGrid } from "./keeping.ts";

/** Columns of what is told of a row; nothing is typed there. */
export const toldColumns = ["#read", "#beside"] as const;

/** The part of the grid that is worked on: the cell with the focus, and the one from which a selection reaches to it. */
export interface At {
  readonly here: Place;
  readonly anchor: Place;
  /** What stands in the cell while it is changed; null while it is only looked at. */
  readonly typed: string | null;
  /** Where the run of cells began from which Enter goes on below. */
  readonly run: string;
}

/** What was last done with the whole grid, or what stands against it. */
export type Said = { readonly text: string; readonly trouble: boolean } | null;

/** A grid that is being filled in. */
export interface Filled {
  readonly draft: GridDraft;
  /** With what is just being typed. */
  readonly shown: GridDraft;
  readonly at: At;
  readonly setAt: (at: Partial<At>) => void;
  /** Puts another draft in the place of the one before, which can be taken back. */
  readonly change: (next: GridDraft) => void;
  readonly undo: () => boolean;
  readonly redo: () => boolean;
  /** Begins anew with a draft: what was before cannot be taken back here. */
  readonly restart: (next: GridDraft) => void;
  readonly restored: boolean;
}

/** Whether something stands in a grid that would be missed. */
export function isBegun({ rows }: GridDraft): boolean {
  return rows.some((row) => !isBlank(row));
}

/** Rows in the selection, from and to; what is recorded and what holds for all is never part of one of several. */
export function selectedRows({ here, anchor }: At): readonly [from: number, to: number] {
  if (here.row < 0 || anchor.row < 0) return [here.row, here.row];
  return [Math.min(here.row, anchor.row), Math.max(here.row, anchor.row)];
}

/** Columns in the selection, in the order of the grid. */
export function selectedColumns({ columns }: GridDraft, { here, anchor }: At): readonly string[] {
  const [a, b] = [columns.indexOf(here.column), columns.indexOf(anchor.column)];
  return a < 0 || b < 0 ? [] : columns.slice(Math.min(a, b), Math.max(a, b) + 1);
}

/** Keeps a grid at an address, over reloads and in the desk's drafts. */
export function useFilledGrid(page: GridPage, path: string, writable: boolean): Filled {
  const [kept] = useState(() => gridInTab(path));
  const [draft, setDraft] = useState(() => kept ?? page.begun);
  const [restored, setRestored] = useState(kept !== null && isBegun(kept));
  const [at, setWhere] = useState<At>(() => beginning(draft));
  const past = useRef<readonly GridDraft[]>([]);
  const future = useRef<readonly GridDraft[]>([]);
  const touched = useRef(kept !== null);

  const put = useCallback(
    (next: GridDraft): void => {
      touched.current = true;
      setDraft(next);
      keepGrid(path, isBegun(next) ? next : null, writable);
    },
    [path, writable],
  );
  useEffect(() => {
    let stale = kept !== null;
    if (!stale)
      void gridsAtDesk().then((all) => {
        const found = all.find((one) => one.at === path);
        // What is being typed already is newer than what was kept.
        if (stale || !found || touched.current) return;
        setDraft(found.grid);
        setRestored(true);
      });
    return () => void (stale = true);
  }, [path, kept]);

  const change = useCallback(
    (next: GridDraft): void => {
      past.current = [...past.current.slice(-199), draft];
      future.current = [];
      put(next);
    },
    [put, draft],
  );
  const step = (from: typeof past, to: typeof past): boolean => {
    const next = from.current.at(-1);
    if (!next) return false;
    from.current = from.current.slice(0, -1);
    to.current = [...to.current, draft];
    put(next);
    return true;
  };
  const setAt = useCallback((next: Partial<At>) => setWhere((before) => ({ ...before, ...next })), []);
  const shown = useMemo(
    () =>
      at.typed === null || at.typed === cellAt(draft, at.here)
        ? draft
        : withTexts(draft, at.here, [[at.typed]]),
    [draft, at],
  );
  return {
    draft,
    shown,
    at,
    setAt,
    change,
    undo: () => step(past, future),
    redo: () => step(future, past),
    restart: (next) => {
      past.current = [];
      future.current = [];
      put(next);
      setRestored(false);
    },
    restored,
  };
}

/** The first cell to be filled in: that of the first column for which nothing is known yet. */
function beginning({ columns, every, rows }: GridDraft): At {
  const column = columns.find((one) => (every[one] ?? "") === "") ?? columns[0] ?? "value";
  const here = { row: rows.length, column };
  return { here, anchor: here, typed: null, run: column };
}
