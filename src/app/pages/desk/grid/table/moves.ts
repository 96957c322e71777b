import type { GridDraft, Place } from "../../../../../show/desk/grid/draft.ts";
import { toldColumns } from "../state.ts";

/** The rows of a grid from top to bottom: what holds for all (-1), what is recorded (from -2 down), the rows, one more. */
export function linesOf(draft: GridDraft, recorded: number): readonly number[] {
  return [
    -1,
    ...Array.from({ length: recorded }, (_, place) => -2 - place),
    ...draft.rows.map((_, place) => place),
    draft.rows.length,
  ];
}

/** The columns of a grid from its beginning to its end, those of what is told among them. */
export function acrossOf({ columns }: GridDraft): readonly string[] {
  return [...columns, ...toldColumns];
}

/** Where a key leads from a place, by so many rows and columns; it stops at the edges. */
export function movedBy(
  place: Place,
  by: { readonly down?: number; readonly on?: number },
  { lines, across }: { readonly lines: readonly number[]; readonly across: readonly string[] },
): Place {
  const within = (at: number, length: number): number => Math.min(Math.max(at, 0), length - 1);
  const row = lines[within(lines.indexOf(place.row) + (by.down ?? 0), lines.length)];
  const column = across[within(across.indexOf(place.column) + (by.on ?? 0), across.length)];
  return { row: row ?? place.row, column: column ?? place.column };
}

/** The next cell to type in, at the end of a row that of the row below; null past the last. */
export function nextCell(place: Place, by: 1 | -1, draft: GridDraft): Place | null {
  const { columns, rows } = draft;
  const at = columns.indexOf(place.column) + by;
  const beyond = columns.indexOf(place.column) < 0 ? by > 0 : at >= columns.length;
  if (place.row < -1) return null;
  if (!beyond && at >= 0) return { row: place.row, column: columns[at] ?? place.column };
  if (columns.indexOf(place.column) < 0 && by < 0)
    return { row: place.row, column: columns.at(-1) ?? place.column };
  const row = place.row + by;
  const last = place.row >= rows.length;
  if (row < -1 || (by > 0 && last)) return null;
  return { row, column: (by > 0 ? columns[0] : columns.at(-1)) ?? place.column };
}

/** Cells as they are put on the clipboard: lines with tabs between the cells, in quotes where a cell needs them. */
export function copied(texts: readonly (readonly string[])[]): string {
  return texts
    .map((line) =>
      line.map((cell) => (/[\t\r\n]|^"/u.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join("\t"),
    )
    .join("\n");
}
