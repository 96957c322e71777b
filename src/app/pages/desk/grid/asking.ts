import { useEffect, useRef, useState } from "react";
import type { GridDraft } from "../../../../show/desk/grid/draft.ts";
import type { RowWeighed } from "../../../../show/desk/grid/weighed.ts";
import { doorTo } from "../../../model/door/asking.ts";
import type { GridQuestions, GridTold } from "./serving.ts";

const door = doorTo<GridQuestions>("grid");

/** Opens a door for the grid to the worker that holds the model. */
export const gridIn = door.open;

/** Asks the model something about the grid; null where the corpus cannot be read. */
export const askGrid = door.ask;

/** How long nothing is typed before the rows are weighed among what is recorded, in milliseconds. */
const pause = 250;

/** What is known of the rows of a grid, by their keys; what did not change stays the same object. */
export interface GridKnown {
  readonly told: GridTold | null;
  readonly reads: ReadonlyMap<number, GridTold["rows"][number]>;
  readonly weighed: ReadonlyMap<number, RowWeighed>;
}

/** How a grid is read and what its rows come to; while one answer is under way only the latest state waits for the next. */
export function useKnown(draft: GridDraft, corpus: unknown): GridKnown {
  const [told, setTold] = useState<GridTold | null>(null);
  const [reads, setReads] = useState<GridKnown["reads"]>(new Map());
  const [weighed, setWeighed] = useState<GridKnown["weighed"]>(new Map());
  const reading = useLatest(read, (answer) => {
    setTold(answer);
    setReads((before) => kept(before, answer.rows));
  });
  const weighing = useLatest(weigh, (answer) => setWeighed((before) => kept(before, answer)));
  useEffect(() => {
    reading(draft);
    const later = setTimeout(() => weighing(draft), pause);
    return () => clearTimeout(later);
    // The rows are read again, too, when the corpus is another.
  }, [draft, corpus, reading, weighing]);
  return { told, reads, weighed };
}

const read = (draft: GridDraft): Promise<GridTold | null> => askGrid("read", draft);
const weigh = (draft: GridDraft): Promise<readonly RowWeighed[] | null> => askGrid("weigh", draft);

/** Asks of the latest state of a grid whenever the answer before is there; `ask` stays the same. */
function useLatest<T>(
  ask: (draft: GridDraft) => Promise<T | null>,
  take: (answer: T) => void,
): (draft: GridDraft) => void {
  const next = useRef<GridDraft | null>(null);
  const busy = useRef(false);
  const taking = useRef(take);
  useEffect(() => {
    taking.current = take;
  });
  const [run] = useState(() => (draft: GridDraft): void => {
    next.current = draft;
    if (busy.current) return;
    busy.current = true;
    const round = async (): Promise<void> => {
      for (let one = next.current; one; one = next.current) {
        next.current = null;
        const answer = await ask(one);
        if (answer) taking.current(answer);
      }
      busy.current = false;
    };
    void round();
  });
  return run;
}

/** Rows by their keys, each the same object as before where it says the same. */
function kept<Row extends { readonly key: number }>(
  before: ReadonlyMap<number, Row>,
  rows: readonly Row[],
): ReadonlyMap<number, Row> {
  return new Map(
    rows.map((row) => {
      const had = before.get(row.key);
      return [row.key, had && JSON.stringify(had) === JSON.stringify(row) ? had : row];
    }),
  );
}
