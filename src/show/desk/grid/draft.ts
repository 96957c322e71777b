import { kindOf } from "../../../read/grammar/kinds.ts";
import type { FormPage } from "../forms/page.ts";
import { fieldsIn } from "../forms/layout.ts";

/** What was typed into a row, by column; columns that were left empty are left out. */
export type Cells = Readonly<Record<string, string>>;

/** A row of the grid: one measurement that is being entered. */
export interface GridRow {
  /** Tells rows apart while they move and go. */
  readonly key: number;
  readonly cells: Cells;
}

/** Measurements that are being entered and are in no file yet. */
export interface GridDraft {
  readonly columns: readonly string[];
  /** What holds for every row that leaves its own cell empty; of the value, its unit and uncertainty. */
  readonly every: Cells;
  readonly rows: readonly GridRow[];
  /** Names, as they were typed, for each of which a new artefact is to be made. */
  readonly fresh: readonly string[];
}

/** A place in a grid; the row of what holds for every row is -1. */
export interface Place {
  readonly row: number;
  readonly column: string;
}

/** Where in its source a measurement is said, which is written behind the key. */
export const locator = "at";

const first = ["of", "dimension", "value"] as const;
const usual: readonly string[] = [
  ...first,
  "state",
  "basis",
  "between",
  "instrument",
  "year",
  "from",
  locator,
];

/** Columns that a grid may have, in the order in which they stand; what is a map of its own has no place in a cell. */
export const gridColumns: readonly string[] = [
  ...usual,
  ...Object.entries(fieldsIn("measurements")).flatMap(([name, { type }]) =>
    usual.includes(name) || type === "group" || type === "items" || type === "json" ? [] : [name],
  ),
];

/** Columns that a grid always has. */
export const fixedColumns: readonly string[] = first;

/** Columns of a list: several values in one cell stand apart by a semicolon. */
export function isSeveral(column: string): boolean {
  const { fields } = kindOf("measurements");
  const type = Object.hasOwn(fields, column) ? fields[column]?.type : undefined;
  return type === "citations" || type === "refs" || type === "quantities" || type === "texts";
}

/** A grid with nothing in it but what is known already. */
export function emptyGrid(presets: FormPage["presets"]): GridDraft {
  const known = presets.filter(([name, value]) => gridColumns.includes(name) && value.trim() !== "");
  const columns = ["of", "dimension", "value", "state", "basis", "from", locator];
  return {
    columns: ordered([...columns, ...known.map(([name]) => name)]),
    every: Object.fromEntries(known),
    rows: [],
    fresh: [],
  };
}

/** Columns in the order in which they stand in a grid, each once, the scholar's own last; those that it always has are among them. */
export function ordered(columns: readonly string[]): readonly string[] {
  const known = gridColumns.filter((one) => columns.includes(one) || fixedColumns.includes(one));
  return [...known, ...new Set(columns.filter(isOwnColumn))];
}

/** Whether a column is a field of the scholar's own. */
export function isOwnColumn(column: string): boolean {
  return /^x-[a-z0-9]/u.test(column) && column.length <= 60;
}

/** What was typed at a place; empty where nothing was. */
export function cellAt(draft: GridDraft, { row, column }: Place): string {
  const cells = row < 0 ? draft.every : (draft.rows[row]?.cells ?? {});
  return Object.hasOwn(cells, column) ? (cells[column] ?? "") : "";
}

/** What a row says in a column: its own, or what holds for every row. */
export function saidIn(draft: GridDraft, row: GridRow, column: string): string {
  const own = Object.hasOwn(row.cells, column) ? (row.cells[column] ?? "") : "";
  const every = Object.hasOwn(draft.every, column) ? (draft.every[column] ?? "") : "";
  return own.trim() !== "" || column === "value" ? own.trim() : every.trim();
}

/** Whether nothing was typed into a row. */
export function isBlank({ cells }: GridRow): boolean {
  return Object.values(cells).every((text) => text.trim() === "");
}

/** A grid with texts put in from a place on, to the right and down; rows that are not there yet are made. */
export function withTexts(draft: GridDraft, at: Place, texts: readonly (readonly string[])[]): GridDraft {
  const from = draft.columns.indexOf(at.column);
  if (from < 0) return draft;
  const put = (cells: Cells, line: readonly string[]): Cells => {
    const next: Record<string, string> = { ...cells };
    line.forEach((text, place) => {
      const column = draft.columns[from + place];
      if (column === undefined) return;
      if (text === "") delete next[column];
      else next[column] = text;
    });
    return next;
  };
  let { every } = draft;
  const rows = [...draft.rows];
  texts.forEach((line, place) => {
    const row = at.row + place;
    if (row < 0) every = put(every, line);
    else {
      while (rows.length <= row) rows.push({ key: nextKey(rows), cells: {} });
      const before = rows[row];
      if (before) rows[row] = { ...before, cells: put(before.cells, line) };
    }
  });
  return trimmed({ ...draft, every, rows });
}

/** A grid with rows put in before one of its rows, each with what stands in it. */
export function withRows(draft: GridDraft, before: number, cells: readonly Cells[]): GridDraft {
  const rows = [...draft.rows];
  const from = Math.min(Math.max(before, 0), rows.length);
  const next = nextKey(rows);
  rows.splice(from, 0, ...cells.map((one, place) => ({ key: next + place, cells: one })));
  return trimmed({ ...draft, rows });
}

/** A grid without the rows from one to another, both of them gone. */
export function withoutRows(draft: GridDraft, from: number, to: number): GridDraft {
  return trimmed({ ...draft, rows: draft.rows.filter((_, place) => place < from || place > to) });
}

/** A grid in which what stands in the first of some rows stands in all of them, in the columns given. */
export function filledDown(
  draft: GridDraft,
  rows: readonly [from: number, to: number],
  columns: readonly string[],
): GridDraft {
  const [from, to] = rows;
  return columns.reduce((before, column) => {
    const text = cellAt(before, { row: from, column });
    const texts = Array.from({ length: to - from }, () => [text]);
    return withTexts(before, { row: from + 1, column }, texts);
  }, draft);
}

function nextKey(rows: readonly GridRow[]): number {
  return rows.reduce((most, { key }) => Math.max(most, key), 0) + 1;
}

/** Without the empty rows at its end: there is always one more to go on in. */
function trimmed(draft: GridDraft): GridDraft {
  const last = draft.rows.findLastIndex((row) => !isBlank(row));
  return last === draft.rows.length - 1 ? draft : { ...draft, rows: draft.rows.slice(0, last + 1) };
}
