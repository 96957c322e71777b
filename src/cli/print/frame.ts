import type { Place } from "../../base/text/lines/place.ts";

/** The lines of a text round a place, with their numbers, and marks under what is meant. */
export function frameOf(text: string, at: Place, paint: (marks: string) => string): readonly string[] {
  const lines = text.split("\n");
  const wide = String(at.line + 1).length;
  const row = (number: number): string => {
    const line = (lines[number - 1] ?? "").replace(/\r$/, "").replace(/\t/g, " ");
    return `    ${String(number).padStart(wide)} ┆ ${clipped(line, at.column)}`;
  };
  const shown = at.line > 1 && (lines[at.line - 2] ?? "").trim() !== "" ? [row(at.line - 1)] : [];
  const ends = at.endLine === at.line ? at.endColumn : (lines[at.line - 1] ?? "").length + 1;
  const from = clippedColumn(at.column);
  const marks = "‾".repeat(Math.max(1, Math.min(ends - at.column, 60)));
  return [...shown, row(at.line), `    ${" ".repeat(wide)} ┆ ${" ".repeat(from - 1)}${paint(marks)}`];
}

const widest = 96;

/** A long line is shown from a little before the place that is meant. */
function clipped(line: string, column: number): string {
  const from = column > widest ? column - 20 : 0;
  return `${from > 0 ? "…" : ""}${line.slice(from, from + widest)}`;
}

function clippedColumn(column: number): number {
  return column > widest ? 22 : column;
}
