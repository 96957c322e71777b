import { count, say } from "../../../../base/text/said/said.ts";
import type { Columns, Line, Worded } from "../slides.ts";
import type { Room } from "./column.ts";
import type { Box, GridRow, Paragraph } from "./leaf.ts";
import { linesIn, paragraph } from "./measured.ts";
import type { Setup } from "./measured.ts";
import { smallest } from "./room.ts";
import { ownRun, remarkLines, standingSaid, wordsRun } from "./words.ts";

/** On how many slides a table goes on; what is left then is told by its number. */
const mostLeaves = 2;
/** What is free at the sides of a cell, and above and below its words, in points. */
export const cellInset = { across: 6, down: 5 } as const;
/** The line of a standing in a table, and what is free behind it. */
export const standingMark = { width: 36, gap: 8 } as const;
const standingWidth = 200;

/** A table in rooms of one size: the boxes of each slide that it takes. */
export function gridIn(setup: Setup, table: Columns, room: Room): readonly (readonly Box[])[] {
  const hasStandings = table.rows.some((row) => row.standing !== null);
  const columns = widthsOf(table, room.width, hasStandings);
  const standings = hasStandings ? 1 : null;
  const rowOf = (line: Line | null, cells: readonly Paragraph[]): GridRow => ({
    cells,
    standing: line?.standing ?? null,
    height: Math.max(
      ...cells.map((cell, at) => {
        const marked = at === standings ? standingMark.width + standingMark.gap : 0;
        const width = (columns[at] ?? 60) - 2 * cellInset.across - marked;
        const lines = linesIn(setup, cell, width);
        return lines * cell.leading + 2 * cellInset.down;
      }),
      smallest * 1.28 + 2 * cellInset.down,
    ),
  });
  const head = rowOf(
    null,
    withStanding(
      table.head.map((text, at) =>
        paragraph([ownRun(setup, text, "soft", 600)], smallest, alignOf(table, at)),
      ),
      hasStandings ? paragraph([ownRun(setup, say`Standing`, "soft", 600)], smallest) : null,
    ),
  );
  const rows = table.rows.map((line) =>
    rowOf(
      line,
      withStanding(
        line.cells.map((cell, at) => cellOf(setup, table, cell, at)),
        hasStandings
          ? paragraph(
              line.standing === null ? [] : [ownRun(setup, standingSaid[line.standing], line.standing, 600)],
              smallest,
            )
          : null,
      ),
    ),
  );
  const last = paragraph([], smallest).leading + 12;
  const leaves: Box[][] = [];
  let rest = rows;
  while (rest.length > 0 && leaves.length < mostLeaves) {
    const isLast = leaves.length + 1 === mostLeaves;
    const all = fitting(rest, room.height - head.height);
    const taken = all < rest.length && isLast ? fitting(rest, room.height - head.height - last) : all;
    const fits = leaves.length === 0 && !isLast ? evenly(rest, taken, room.height - head.height) : taken;
    const shown = rest.slice(0, Math.max(1, fits));
    rest = rest.slice(shown.length);
    const height = head.height + shown.reduce((sum, row) => sum + row.height, 0);
    const grid: Box = {
      is: "grid",
      caption: setup.told(table.caption),
      columns,
      figures: table.figures.map((at) => (hasStandings && at > 0 ? at + 1 : at)),
      standings,
      head,
      rows: shown,
      x: room.x,
      y: room.y,
      width: room.width,
      height,
    };
    const more = isLast && rest.length > 0 ? [moreBox(setup, rest.length, room, height + 12)] : [];
    leaves.push([grid, ...more]);
  }
  return leaves;
}

/** How many rows the first of two slides takes: about half of them where the second holds the others, else as many as fit. */
function evenly(rows: readonly GridRow[], most: number, height: number): number {
  if (most >= rows.length) return most;
  const half = Math.ceil(rows.length / 2);
  return half <= most && fitting(rows.slice(half), height) === rows.length - half ? half : most;
}

function moreBox(setup: Setup, left: number, room: Room, below: number): Box {
  const lines = remarkLines(
    setup,
    { is: "remark", tells: "left-out", text: say`and ${count(left)} more` },
    smallest,
  );
  const height = lines.reduce((sum, one) => sum + one.leading, 0);
  return { is: "text", role: "body", lines, x: room.x, y: room.y + below, width: room.width, height };
}

function fitting(rows: readonly GridRow[], height: number): number {
  let sum = 0;
  const over = rows.findIndex((row) => (sum += row.height) > height);
  return over < 0 ? rows.length : over;
}

function widthsOf({ shares }: Columns, width: number, hasStandings: boolean): readonly number[] {
  const room = width - (hasStandings ? standingWidth : 0);
  const sum = shares.reduce((before, share) => before + share, 0);
  const [first = room, ...others] = shares.map((share) => (room * share) / sum);
  return hasStandings ? [first, standingWidth, ...others] : [first, ...others];
}

function withStanding(cells: readonly Paragraph[], standing: Paragraph | null): readonly Paragraph[] {
  return standing === null ? cells : [...cells.slice(0, 1), standing, ...cells.slice(1)];
}

function alignOf(table: Columns, at: number): Pick<Paragraph, "align"> {
  return { align: table.figures.includes(at) ? "end" : "start" };
}

function cellOf(setup: Setup, table: Columns, cell: Worded, at: number): Paragraph {
  const run = wordsRun(setup, cell);
  const isFigure = table.figures.includes(at);
  return paragraph([isFigure ? { ...run, face: "sans" } : run], smallest, alignOf(table, at));
}
