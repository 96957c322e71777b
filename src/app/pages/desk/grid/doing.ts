import { cellAt, filledDown, withoutRows, withRows, withTexts } from "../../../../show/desk/grid/draft.ts";
import type { CellTold } from "../../../../show/desk/grid/read.ts";
import { selectedColumns, selectedRows } from "./state.ts";
import type { Filled } from "./state.ts";

/** What can be done with the cells of a grid, from where it is worked on. */
export interface Doing {
  readonly commit: () => void;
  /** Puts a text into a column of the present row. */
  readonly take: (column: string, text: string) => void;
  readonly takeOffer: () => void;
  readonly clear: () => void;
  readonly fillDown: () => void;
  readonly putIn: () => void;
  readonly takeOut: () => void;
  /** Whether a new artefact is to be made of a name. */
  readonly make: (name: string, on: boolean) => void;
  readonly goTo: (row: number, column: string) => void;
}

/** What can be done now; `told` is what is said of the present row, `toGrid` brings the focus back to its cell. */
export function doingOn(filled: Filled, told: readonly CellTold[], toGrid: () => void): Doing {
  const { draft, shown, at, setAt, change } = filled;
  const [from, to] = selectedRows(at);
  const columns = selectedColumns(draft, at);
  const [first = ""] = columns;
  const take = (column: string, text: string): void => {
    change(withTexts(shown, { row: at.here.row, column }, [[text]]));
    setAt({ typed: null });
    toGrid();
  };
  return {
    take,
    commit: () => {
      if (at.typed === null) return;
      if (at.typed !== cellAt(draft, at.here)) change(withTexts(draft, at.here, [[at.typed.trim()]]));
      setAt({ typed: null });
    },
    takeOffer: () => {
      const offering = told.filter((one) => one.offered.length > 0);
      const found = offering.find((one) => one.column === at.here.column) ?? offering[0];
      const text = found?.offered[0];
      if (found && text !== undefined) take(found.column, text);
    },
    clear: () => {
      if (from < -1 || first === "") return;
      const empty = Array.from({ length: to - from + 1 }, () => columns.map(() => ""));
      change(withTexts(draft, { row: from, column: first }, empty));
    },
    fillDown: () => {
      if (from < 0 || first === "") return;
      // Of a single row, what stands above it comes down.
      const rows = from === to ? ([from - 1, to] as const) : ([from, to] as const);
      if (rows[0] >= 0) change(filledDown(draft, rows, columns));
    },
    putIn: () => {
      if (at.here.row >= 0) change(withRows(draft, at.here.row, [{}]));
    },
    takeOut: () => {
      if (from < 0) return;
      change(withoutRows(draft, from, to));
      const here = { row: from, column: at.here.column };
      setAt({ here, anchor: here });
      toGrid();
    },
    make: (name, on) => {
      const others = draft.fresh.filter((one) => one !== name);
      change({ ...draft, fresh: on ? [...others, name] : others });
      toGrid();
    },
    goTo: (row, column) => {
      const here = { row, column: draft.columns.includes(column) ? column : "value" };
      setAt({ here, anchor: here, typed: null, run: here.column });
      toGrid();
    },
  };
}
