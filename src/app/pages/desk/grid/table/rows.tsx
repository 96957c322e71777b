import { memo } from "react";
import type { Cells } from "../../../../../show/desk/grid/draft.ts";
import type { GridColumn } from "../../../../../show/desk/grid/page.ts";
import type { RowRead } from "../../../../../show/desk/grid/read.ts";
import type { ThereRow } from "../../../../../show/desk/grid/there.ts";
import type { RowWeighed } from "../../../../../show/desk/grid/weighed.ts";
import { fieldWord } from "../../../../words/index.ts";
import { gridWords as words } from "../../../../words/recording/grid.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { CellEditor } from "./editor.tsx";
import { toldColumns } from "../state.ts";

/** What a row of the grid is shown with. */
export interface RowProps {
  /** Its place in the draft; below 0 of what holds for every row (-1) and of what is recorded. */
  readonly row: number;
  readonly name: string;
  /** Its place among all rows of the grid, from 2 on behind the head. */
  readonly index: number;
  readonly columns: readonly string[];
  readonly known: readonly GridColumn[];
  readonly cells: Cells;
  readonly every: Cells;
  readonly read: RowRead | null;
  readonly weighed: RowWeighed | null;
  /** What is told of what holds for every row, by column. */
  readonly wrong: readonly string[];
  readonly there: ThereRow | null;
  /** The column of the cell with the focus; null where that is in another row. */
  readonly here: string | null;
  readonly selected: readonly string[];
  readonly typed: string | null;
  readonly onType: (text: string) => void;
}

/** Of a cell of a grid into which nothing can be typed. */
const readOnly = { "aria-readonly": true } as const;

/** What a column is called, in the reader's language. */
export function columnWord(name: string): string {
  const own: Readonly<Record<string, string>> = { of: words.thing, at: words.place };
  return own[name] ?? (name.startsWith("x-") ? name : fieldWord(name));
}

/** One row of the grid; it is drawn again only where something of it is another. */
export const GridRowLine = memo(function GridRowLine(props: RowProps) {
  const { row, name, index, columns, here, selected, there, read, weighed } = props;
  const kind = row === -1 ? "every" : there ? "there" : (read?.troubles.length ?? 0) > 0 ? "bad" : undefined;
  return (
    <tr aria-rowindex={index} className={kind}>
      <th scope="row" className="nth">
        {name}
      </th>
      {columns.map((column, place) => (
        <GridCell key={column} {...props} column={column} place={place} />
      ))}
      {toldColumns.map((column, place) => (
        <td
          key={column}
          aria-colindex={columns.length + place + 2}
          {...readOnly}
          aria-selected={selected.includes(column) || here === column}
          tabIndex={here === column ? 0 : -1}
          data-row={row}
          data-column={column}
          className={column === "#read" ? "figures" : "beside"}
        >
          {column === "#read" ? (
            <bdi>{there ? there.si : readWords(read, props.cells)}</bdi>
          ) : there ? (
            <bdi>{inReadersWords(there.who)}</bdi>
          ) : (
            <Beside read={read} weighed={weighed} />
          )}
        </td>
      ))}
    </tr>
  );
});

function readWords(read: RowRead | null, cells: Cells): string {
  if (read === null || (cells["value"] ?? "").trim() === "") return "";
  return read.si ?? words.cannot;
}

/** How a row lies among the other readings, in a word. */
function Beside({ read, weighed }: Pick<RowProps, "read" | "weighed">) {
  if (read === null || read.troubles.length > 0) return null;
  if (read.fresh) return <span className="quiet">{words.isNew}</span>;
  if (weighed === null) return null;
  if (weighed.against.length > 0)
    return (
      <span className="clash-word">
        <svg className="dots" width="20" height="8" viewBox="0 0 20 8" aria-hidden="true">
          <path d="M3 4H18" />
        </svg>
        {words.differs}
      </span>
    );
  if (weighed.twins.length > 0) return <strong>{words.twin}</strong>;
  return <span className="quiet">{weighed.agrees > 0 ? words.agrees(weighed.agrees) : words.alone}</span>;
}

function GridCell({
  column,
  place,
  ...props
}: RowProps & { readonly column: string; readonly place: number }) {
  const { row, name, cells, every, read, there, here, selected, typed, known, wrong } = props;
  const own = cells[column] ?? "";
  const taken = row >= 0 && column !== "value" ? (every[column] ?? "") : "";
  const told = read?.troubles.some((one) => one.column === column) ?? wrong.includes(column);
  const noted = read?.notes.some((one) => one.column === column) ?? false;
  const isHere = here === column;
  const hint = row === -1 && column === "value" && own === "" ? words.everyValue : "";
  const called = column === "of" ? (there?.name ?? read?.of?.name ?? null) : null;
  const calledWords = called === null ? "" : inReadersWords(called);
  const text = own !== "" ? own : taken;
  return (
    <td
      aria-colindex={place + 2}
      {...(there ? readOnly : {})}
      aria-selected={isHere || selected.includes(column)}
      aria-invalid={told || undefined}
      aria-describedby={isHere ? "grid-cell-told" : undefined}
      tabIndex={isHere && typed === null ? 0 : -1}
      data-row={row}
      data-column={column}
      className={[column === "value" ? "figures" : "", own === "" ? "taken" : "", noted ? "noted" : ""]
        .filter((one) => one !== "")
        .join(" ")}
    >
      {isHere && typed !== null ? (
        <CellEditor
          label={words.edit(columnWord(column), name)}
          column={known.find((one) => one.name === column) ?? null}
          text={typed}
          onType={props.onType}
        />
      ) : (
        <>
          <span className="text" dir="auto">
            {text === "" ? hint : text}
          </span>
          {calledWords !== "" && calledWords !== text && (
            <span className="called" dir="auto">
              {calledWords}
            </span>
          )}
        </>
      )}
    </td>
  );
}
