import { useCallback, useLayoutEffect, useRef } from "react";
import type { ClipboardEvent, FocusEvent, KeyboardEvent, MouseEvent } from "react";
import { cellAt } from "../../../../../show/desk/grid/draft.ts";
import { pastedFrom } from "../../../../../show/desk/grid/pasted.ts";
import type { Pasted } from "../../../../../show/desk/grid/pasted.ts";
import { tableInHtml } from "../../../../../show/desk/grid/html-table.ts";
import type { GridPage } from "../../../../../show/desk/grid/page.ts";
import type { ThereRow } from "../../../../../show/desk/grid/there.ts";
import { gridWords as words } from "../../../../words/recording/grid.ts";
import type { GridKnown } from "../asking.ts";
import { isOpen, onGridKey } from "./keys.ts";
import type { Hands } from "./keys.ts";
import { copied } from "./moves.ts";
import { columnWord, GridRowLine } from "./rows.tsx";
import { selectedColumns, selectedRows } from "../state.ts";

interface Props {
  readonly page: GridPage;
  readonly hands: Omit<Hands, "toCell" | "leaving" | "recorded">;
  readonly known: GridKnown;
  readonly recorded: readonly ThereRow[];
  readonly onPaste: (pasted: Pasted) => void;
}

/** A table whose cells are gone through by keys, one of them with the focus (WAI-ARIA `grid`); its native cells are cells of it. */
const asGrid = { role: "grid" } as const;
const nothing = {};
const none: readonly string[] = [];

/** The grid itself: what holds for all, what is recorded, the rows, and one more to go on in. */
export function GridTable({ page, hands: given, known, recorded, onPaste }: Props) {
  const { filled, clear, commit } = given;
  const { draft, shown, at, setAt } = filled;
  const table = useRef<HTMLTableElement>(null);
  const wanted = useRef(false);
  const leaving = useRef(false);
  const toCell = (): void => void (wanted.current = true);
  const hands: Hands = { ...given, recorded: recorded.length, leaving, toCell };
  const { here, typed } = at;
  useLayoutEffect(() => {
    if (!wanted.current || typed !== null) return;
    wanted.current = false;
    const cell = table.current?.querySelector<HTMLElement>("td[tabindex='0']");
    cell?.focus();
    cell?.scrollIntoView({ block: "nearest", inline: "nearest" });
  });
  const type = useCallback((text: string): void => setAt({ typed: text }), [setAt]);

  const placeAt = (event: MouseEvent): { readonly row: number; readonly column: string } | null => {
    const cell = (event.target as HTMLElement).closest("td");
    const { row, column } = cell?.dataset ?? {};
    return row === undefined || column === undefined ? null : { row: Number(row), column };
  };
  const onMouseDown = (event: MouseEvent): void => {
    const place = placeAt(event);
    if (!place || event.button !== 0) return;
    const same = place.row === here.row && place.column === here.column;
    if (same && typed !== null) return;
    event.preventDefault();
    if (typed !== null) commit();
    // A second tap on a cell opens it, as F2 does.
    if (same && isOpen(place) && event.detail >= 1 && table.current?.contains(document.activeElement))
      return setAt({ typed: cellAt(draft, place), anchor: place });
    const wide = event.shiftKey && place.row >= 0 && at.anchor.row >= 0;
    setAt({ here: place, typed: null, run: place.column, ...(wide ? {} : { anchor: place }) });
    toCell();
  };
  const paste = (event: ClipboardEvent): void => {
    const clip = {
      text: event.clipboardData.getData("text/plain"),
      html: event.clipboardData.getData("text/html"),
    };
    const pasted = pastedFrom(clip, tableInHtml);
    const single = pasted.block.length <= 1 && (pasted.block[0]?.length ?? 0) <= 1;
    if ((typed !== null && single) || !isOpen(here)) return;
    event.preventDefault();
    onPaste(pasted);
  };
  const copy = (event: ClipboardEvent, cut: boolean): void => {
    if (typed !== null) return;
    const [from, to] = selectedRows(at);
    const columns = selectedColumns(draft, at);
    if (columns.length === 0 || from < -1) return;
    const lines = Array.from({ length: to - from + 1 }, (_, place) =>
      columns.map((column) => cellAt(draft, { row: from + place, column })),
    );
    event.clipboardData.setData("text/plain", copied(lines));
    event.preventDefault();
    if (cut) clear();
  };

  const hearing = {
    onKeyDown: (event: KeyboardEvent<HTMLTableElement>) => onGridKey(event, hands),
    onMouseDown,
    onPaste: paste,
    onCopy: (event: ClipboardEvent) => copy(event, false),
    onCut: (event: ClipboardEvent) => copy(event, true),
    onBlur: (event: FocusEvent<HTMLTableElement>) => {
      const { relatedTarget, currentTarget } = event;
      if (typed !== null && relatedTarget !== null && !currentTarget.contains(relatedTarget)) commit();
    },
  };
  const [from, to] = selectedRows(at);
  const columnsIn = selectedColumns(draft, at);
  const many = from !== to || columnsIn.length > 1;
  const wrong = known.told?.every[0] ? ["value"] : none;
  const total = 3 + recorded.length + shown.rows.length;
  const line = (row: number) => ({
    row,
    columns: draft.columns,
    known: page.columns,
    every: shown.every,
    here: here.row === row ? here.column : null,
    typed: here.row === row ? typed : null,
    selected: many && row >= from && row <= to ? columnsIn : none,
    onType: type,
  });
  const next = shown.rows.reduce((most, { key }) => Math.max(most, key), 0) + 1;
  const rows = [...shown.rows, { key: next, cells: nothing }];
  return (
    <div className="grid-frame">
      <table
        ref={table}
        {...asGrid}
        className="entry-grid"
        aria-label={words.grid}
        aria-rowcount={total}
        aria-colcount={draft.columns.length + 3}
        aria-multiselectable="true"
        aria-describedby="grid-hint"
        {...hearing}
      >
        <thead>
          <tr aria-rowindex={1}>
            <th className="nth" scope="col">
              <span className="unseen">{words.grid}</span>
            </th>
            {draft.columns.map((column) => (
              <th key={column} scope="col" dir="auto">
                {columnWord(column)}
              </th>
            ))}
            <th scope="col">{words.readAs}</th>
            <th scope="col">{words.beside}</th>
          </tr>
        </thead>
        <tbody>
          <GridRowLine
            {...line(-1)}
            index={2}
            name={words.every}
            cells={shown.every}
            read={null}
            weighed={null}
            wrong={wrong}
            there={null}
          />
          {recorded.map((there, place) => (
            <GridRowLine
              key={`${there.of} ${place}`}
              {...line(-2 - place)}
              index={3 + place}
              name={words.recorded}
              cells={there.cells}
              read={null}
              weighed={null}
              wrong={none}
              there={there}
            />
          ))}
          {rows.map(({ key, cells }, place) => (
            <GridRowLine
              key={key}
              {...line(place)}
              index={3 + recorded.length + place}
              name={String(place + 1)}
              cells={cells}
              read={known.reads.get(key) ?? null}
              weighed={known.weighed.get(key) ?? null}
              wrong={none}
              there={null}
            />
          ))}
        </tbody>
      </table>
    </div>
  );
}
