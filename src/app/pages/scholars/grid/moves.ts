import { alongLines } from "../../../words/reader/language.ts";

/** A place in the grid: row 0 holds the scholars' names, column 0 the claims. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

/** The grid as the keys see it: how many columns, and which rows are the heading of a group alone. */
export interface Extent {
  readonly columns: number;
  readonly headings: readonly boolean[];
}

/** Where a key leads from a place; null for a key that leads nowhere. */
export function moved(from: Place, key: string, ctrl: boolean, extent: Extent): Place | null {
  const lastRow = extent.headings.length - 1;
  const { row, column } = from;
  switch (alongLines(key)) {
    case "ArrowUp":
      return upright(from, -1, extent);
    case "ArrowDown":
      return upright(from, 1, extent);
    case "ArrowLeft":
      return within({ row, column: column - 1 }, extent);
    case "ArrowRight":
      return within({ row, column: column + 1 }, extent);
    case "Home":
      return within({ row: ctrl ? 0 : row, column: 0 }, extent);
    case "End":
      return within({ row: ctrl ? lastRow : row, column: extent.columns }, extent);
    case "PageUp":
      return upright({ row: Math.max(2, row - 9), column }, -1, extent);
    case "PageDown":
      return upright({ row: Math.min(lastRow - 1, row + 9), column }, 1, extent);
    default:
      return null;
  }
}

/** A step up or down; a heading of a group is stopped at in the first column alone. */
function upright({ row, column }: Place, step: number, extent: Extent): Place {
  const lastRow = extent.headings.length - 1;
  let next = Math.max(0, Math.min(lastRow, row + step));
  while (column > 0 && extent.headings[next] === true && next + step >= 0 && next + step <= lastRow)
    next += step;
  return within({ row: next, column }, extent);
}

/** The nearest place there is: the corner is empty, and a heading of a group has one column. */
function within({ row, column }: Place, extent: Extent): Place {
  const inside = Math.max(0, Math.min(extent.columns, column));
  if (row === 0) return { row, column: Math.max(1, inside) };
  return { row, column: extent.headings[row] === true ? 0 : inside };
}
