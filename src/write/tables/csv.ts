import { storable } from "../../base/text/steering.ts";
import type { Cell, DataTable } from "../../show/telling/tables/table.ts";

/** A table as comma-separated values (RFC 4180): a head line of column names, CRLF at the end of each line. */
export function csvOf({ columns, rows }: DataTable): string {
  const lines = [columns.map((one) => one.name), ...rows];
  return lines.map((cells) => `${cells.map(fieldOf).join(",")}\r\n`).join("");
}

/**
 * A number as it is, in as many digits as tell it from every other; nothing for what is empty. A text that a spreadsheet would
 * take for a formula has an apostrophe before it, as is common practice.
 */
function fieldOf(cell: Cell): string {
  if (cell === null) return "";
  if (typeof cell !== "string") return String(cell);
  const words = storable(cell);
  const text = /^[=+@\t\r]|^-(?![\d.]+$)/.test(words) ? `'${words}` : words;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
