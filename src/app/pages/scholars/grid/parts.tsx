import { Link } from "wouter";
import type { Cell, Row, RowGroup } from "../../../../show/scholars/matrix.ts";
import type { ScholarLine } from "../../../../show/scholars/scholars.ts";
import { pathOf, questionPath, recordPath, underLens } from "../../../address.ts";
import { StandingMark } from "../../../parts/standing.tsx";
import { marks } from "../../../words/reader/marks.ts";
import { scholarWords as words } from "../../../words/shown/scholars.ts";
import { yearIn } from "../../../words/index.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { cellWord, cellYears } from "../stance.ts";

interface Seat {
  readonly asOf: number | null;
  /** 0 for the one place of the grid that the Tab key reaches, else −1. */
  readonly focusedAt: (row: number, column: number) => 0 | -1;
}

/** The scholars' names, upright, each over the year in which they first came into print. */
export function ColumnHeads({
  columns,
  here,
  asOf,
  focusedAt,
}: Seat & { readonly columns: readonly ScholarLine[]; readonly here: number }) {
  return (
    <thead>
      <tr>
        <th scope="col" className="corner">
          {words.claim}
        </th>
        {columns.map((one, place) => (
          <th key={one.id} scope="col" className={place + 1 === here ? "who here" : "who"}>
            <NameLink one={one} column={place + 1} asOf={asOf} focusedAt={focusedAt} />
          </th>
        ))}
      </tr>
    </thead>
  );
}

function NameLink({
  one,
  column,
  asOf,
  focusedAt,
}: Seat & { readonly one: ScholarLine; readonly column: number }) {
  return (
    <Link
      href={underLens(pathOf("scholar", one.id), asOf)}
      data-at={`0,${column}`}
      tabIndex={focusedAt(0, column)}
    >
      <span className="upright" dir="auto">
        {inReadersWords(one.name)}
      </span>
      <span className="first">{one.years === null ? "" : yearIn(one.years.first)}</span>
    </Link>
  );
}

/** The question whose rows follow. */
export function GroupHead({
  group,
  row,
  width,
  asOf,
  focusedAt,
}: Seat & { readonly group: RowGroup; readonly row: number; readonly width: number }) {
  return (
    <tr className="group">
      <th colSpan={width} scope="rowgroup">
        {group.question === null ? (
          <span className="pinned" data-at={`${row},0`} tabIndex={focusedAt(row, 0)}>
            {words.other}
          </span>
        ) : (
          <Link
            className="pinned"
            href={underLens(questionPath(group.question.id), asOf)}
            data-at={`${row},0`}
            tabIndex={focusedAt(row, 0)}
            dir="auto"
          >
            {group.question.text}
          </Link>
        )}
      </th>
    </tr>
  );
}

/** One claim with its standing, and what each scholar makes of it. */
export function RowCells({
  line,
  row,
  here,
  asOf,
  focusedAt,
}: Seat & { readonly line: Row; readonly row: number; readonly here: boolean }) {
  return (
    <tr className={here ? "here" : undefined}>
      <th scope="row">
        <span className="claim-cell">
          <StandingMark standing={line.standing} bare />
          {line.rival && <span className="or">{words.or}</span>}
          <Link
            href={underLens(recordPath(line.claim), asOf)}
            data-at={`${row},0`}
            tabIndex={focusedAt(row, 0)}
            dir="auto"
          >
            {inReadersWords(line.short)}
          </Link>
        </span>
      </th>
      {line.cells.map((cell, place) => (
        <td key={place}>
          {cell === null ? (
            <span className="nothing" data-at={`${row},${place + 1}`} tabIndex={focusedAt(row, place + 1)}>
              <span className="unseen">{words.nothingRecorded}</span>
            </span>
          ) : (
            <StanceLink
              cell={cell}
              at={`${row},${place + 1}`}
              asOf={asOf}
              tabIndex={focusedAt(row, place + 1)}
            />
          )}
        </td>
      ))}
    </tr>
  );
}

function StanceLink({
  cell,
  at,
  asOf,
  tabIndex,
}: {
  readonly cell: Cell;
  readonly at: string;
  readonly asOf: number | null;
  readonly tabIndex: 0 | -1;
}) {
  return (
    <Link
      href={underLens(recordPath(cell.position), asOf)}
      className={`stance ${cell.left === null ? cell.stance : "left"}`}
      data-at={at}
      tabIndex={tabIndex}
    >
      {cell.changed && (
        <span className="turn" aria-hidden="true">
          {words.changed}
        </span>
      )}
      {cellWord(cell)}
      <span className="unseen">
        {marks.comma}
        {cellYears(cell)}
      </span>
    </Link>
  );
}
