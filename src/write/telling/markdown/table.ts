import type { SetTable } from "../set/set-text.ts";
import { cellOf } from "./line.ts";

/** The widest that a column says it is: pandoc shares the page among columns by their dashes where a row is long. */
const widest = 40;

/** A table with bars between its cells; figures stand to the right. */
export function tableText({ head, rows, figures }: SetTable): string {
  const columns = Math.max(head.length, ...rows.map((row) => row.length), 1);
  const cells = [head, ...rows].map((row) =>
    Array.from({ length: columns }, (_, place) => cellOf(row[place] ?? [])),
  );
  const dashes = Array.from({ length: columns }, (_, place) => {
    const longest = Math.max(...cells.map((row) => [...(row[place] ?? "")].length));
    const line = "-".repeat(Math.max(3, Math.min(widest, longest)));
    return figures.includes(place) ? `${line.slice(1)}:` : line;
  });
  const [first = [], ...others] = cells;
  return [first, dashes, ...others].map((row) => `| ${row.join(" | ")} |`).join("\n");
}
