import { useRef, useState } from "react";
import type { FocusEvent, KeyboardEvent, MouseEvent } from "react";
import type { Matrix, Row, RowGroup } from "../../../../show/scholars/matrix.ts";
import type { ScholarLine } from "../../../../show/scholars/scholars.ts";
import { heldWord, scholarWords as words } from "../../../words/shown/scholars.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { cellWord, cellYears } from "../stance.ts";
import { moved } from "./moves.ts";
import type { Place } from "./moves.ts";
import { ColumnHeads, RowCells, GroupHead } from "./parts.tsx";

interface Props {
  readonly matrix: Matrix;
  readonly columns: readonly ScholarLine[];
  readonly asOf: number | null;
}

/** No place of the grid: nothing was pointed at or moved to yet. */
const nowhere: Place = { row: -1, column: -1 };

type Line = { readonly group: RowGroup } | { readonly row: Row };

/** Claims by scholars as a grid: arrow keys move, headings stay in sight, and one line reads out the present cell. */
export function MatrixGrid({ matrix, columns, asOf }: Props) {
  const lines = matrix.groups.flatMap((group): readonly Line[] => [
    { group },
    ...group.rows.map((row) => ({ row })),
  ]);
  const headings = [false, ...lines.map((line) => "group" in line)];
  const [wanted, setAt] = useState<Place>({ row: 2, column: 1 });
  const [touched, setTouched] = useState(false);
  const [pointed, setPointed] = useState<Place | null>(null);
  const at: Place = {
    row: Math.min(wanted.row, lines.length),
    column: Math.min(wanted.column, columns.length),
  };
  const grid = useRef<HTMLTableElement>(null);

  const onKey = (event: KeyboardEvent): void => {
    const to = moved(at, event.key, event.ctrlKey, { columns: columns.length, headings });
    if (to === null) return;
    event.preventDefault();
    setAt(to);
    grid.current?.querySelector<HTMLElement>(`[data-at="${to.row},${to.column}"]`)?.focus();
  };
  const onFocus = (event: FocusEvent): void => {
    const place = placeOf(event.target);
    if (place) setAt(place);
    setTouched(true);
  };
  const onPoint = (event: MouseEvent): void => setPointed(placeOf(event.target));
  const focusedAt = (row: number, column: number): 0 | -1 =>
    at.row === row && at.column === column ? 0 : -1;
  const shown = pointed ?? (touched ? at : nowhere);

  return (
    <>
      <Legend />
      <p className="reading">{readingOf(lines, columns, shown) ?? words.pointAt}</p>
      <div className="matrix">
        <table
          ref={grid}
          role="grid"
          aria-label={words.matrix}
          onKeyDown={onKey}
          onFocus={onFocus}
          onMouseOver={onPoint}
          onMouseLeave={() => setPointed(null)}
        >
          <ColumnHeads columns={columns} asOf={asOf} here={shown.column} focusedAt={focusedAt} />
          <tbody>
            {lines.map((line, place) =>
              "group" in line ? (
                <GroupHead
                  key={line.group.question?.id ?? ""}
                  group={line.group}
                  row={place + 1}
                  width={columns.length + 1}
                  asOf={asOf}
                  focusedAt={focusedAt}
                />
              ) : (
                <RowCells
                  key={`${place} ${line.row.claim}`}
                  line={line.row}
                  row={place + 1}
                  here={shown.row === place + 1}
                  asOf={asOf}
                  focusedAt={focusedAt}
                />
              ),
            )}
          </tbody>
        </table>
      </div>
    </>
  );
}

function Legend() {
  return (
    <p className="legend quiet">
      {words.legend} <b>{words.changed}</b> {words.changedMeans}. <b>{heldWord}</b>
      {words.heldMeans}. <b>{words.or}</b>
      {words.orLegend}. <span className="help">{words.keys}</span>
    </p>
  );
}

/** The place that an element of the grid stands at, or stands in. */
function placeOf(target: EventTarget): Place | null {
  if (!(target instanceof Element)) return null;
  const seat = target.closest("[data-at]") ?? target.closest("td, th")?.querySelector("[data-at]");
  const [row, column] = (seat?.getAttribute("data-at") ?? "").split(",").map(Number);
  return row === undefined || column === undefined || Number.isNaN(row) ? null : { row, column };
}

/** Who makes what of which claim since when, in one line. */
function readingOf(
  lines: readonly Line[],
  columns: readonly ScholarLine[],
  { row, column }: Place,
): string | null {
  const line = lines[row - 1];
  const who = columns[column - 1];
  if (!line || "group" in line || !who) return null;
  const cell = line.row.cells[column - 1];
  const claim = line.row.text.replace(/[.。]$/u, "");
  const name = inReadersWords(who.name);
  return cell ? words.ofCell(name, cellWord(cell), claim, cellYears(cell)) : words.emptyCell(name, claim);
}
