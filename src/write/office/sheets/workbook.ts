import type { Cell, Column, DataTable } from "../../../show/telling/tables/table.ts";
import { undated } from "../undated.ts";

/** The longest text of a cell that the format has room for. */
const longest = 32767;

/** Tables as one workbook (.xlsx): a sheet for each, its head line kept in sight; texts are texts and run as no formula. */
export async function workbookOf(tables: readonly DataTable[]): Promise<Uint8Array> {
  const { default: write } = await import("write-excel-file/universal");
  const sheets = tables.map(({ name, columns, rows }) => ({
    sheet: name,
    stickyRowsCount: 1,
    columns: columns.map((column, place) => ({ width: widthOf(column, rows, place) })),
    data: [
      columns.map((one) => ({ value: one.name, type: String, fontWeight: "bold" as const })),
      ...rows.map((cells) => cells.map(cellOf)),
    ],
  }));
  const blob = await write(sheets, { fontFamily: "Calibri", fontSize: 11 }).toBlob();
  return undated(new Uint8Array(await blob.arrayBuffer()));
}

function cellOf(cell: Cell) {
  if (cell === null) return null;
  if (typeof cell === "number") return { value: cell, type: Number };
  if (typeof cell === "boolean") return { value: cell, type: Boolean };
  return { value: cut(cell), type: String };
}

function cut(text: string): string {
  return text.length <= longest ? text : `${text.slice(0, longest - 1)}…`;
}

/** Wide enough for the head and most texts, in signs; a sentence is wider than the screen in any case. */
function widthOf({ name }: Column, rows: DataTable["rows"], place: number): number {
  const lengths = rows.map((cells) => String(cells[place] ?? "").length).toSorted((a, b) => a - b);
  const usual = lengths[Math.floor(lengths.length * 0.9)] ?? 0;
  return Math.min(60, Math.max(name.length, usual) + 2);
}
