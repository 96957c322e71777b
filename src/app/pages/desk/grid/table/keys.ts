import type { KeyboardEvent } from "react";
import { cellAt } from "../../../../../show/desk/grid/draft.ts";
import type { Place } from "../../../../../show/desk/grid/draft.ts";
import { acrossOf, linesOf, movedBy, nextCell } from "./moves.ts";
import type { Filled } from "../state.ts";

/** What the keys of the grid work on. */
export interface Hands {
  readonly filled: Filled;
  /** How many recorded rows stand in the grid. */
  readonly recorded: number;
  /** Escape was pressed: the next Tab leaves the grid. */
  readonly leaving: { current: boolean };
  /** Brings the focus to the cell that is looked at, once it is drawn. */
  readonly toCell: () => void;
  readonly clear: () => void;
  readonly fillDown: () => void;
  readonly takeOffer: () => void;
  readonly putIn: () => void;
  readonly takeOut: () => void;
  readonly save: () => void;
  /** Puts what was typed into the cell; gives the draft with it. */
  readonly commit: () => void;
}

/** Whether something can be typed at a place: neither into what is recorded nor into what is told. */
export function isOpen(place: Place): boolean {
  return place.row >= -1 && !place.column.startsWith("#");
}

/** Hears a key in the grid; what is typed begins to write over the cell. */
export function onGridKey(event: KeyboardEvent, hands: Hands): void {
  if (event.nativeEvent.isComposing) return;
  const done = hands.filled.at.typed === null ? lookingKey(event, hands) : typingKey(event, hands);
  if (event.key !== "Escape" && event.key !== "Tab" && event.key !== "Shift") hands.leaving.current = false;
  if (!done) return;
  event.preventDefault();
  event.stopPropagation();
}

function isCommand(event: KeyboardEvent): boolean {
  return event.ctrlKey || event.metaKey;
}

function typingKey(event: KeyboardEvent, hands: Hands): boolean {
  const { filled, commit, toCell } = hands;
  switch (event.key) {
    case "Escape":
      filled.setAt({ typed: null });
      toCell();
      return true;
    case "Enter":
      commit();
      if (isCommand(event)) {
        hands.save();
        return true;
      }
      below(hands, event.shiftKey ? -1 : 1);
      return true;
    case "Tab":
      commit();
      return tab(event, hands, true);
    case "F8":
      hands.takeOffer();
      return true;
    default:
      return false;
  }
}

function lookingKey(event: KeyboardEvent, hands: Hands): boolean {
  const { filled, leaving } = hands;
  const { at, draft, setAt } = filled;
  const { key } = event;
  if (isCommand(event)) return commandKey(event, hands);
  if (event.altKey) return false;
  if (key === "Tab") return tab(event, hands, false);
  const moved = movesTo(event, hands);
  if (moved) {
    go(hands, moved, event.shiftKey && moved.row >= 0 && at.anchor.row >= 0);
    return true;
  }
  switch (key) {
    case "Escape":
      leaving.current = true;
      setAt({ anchor: at.here });
      return true;
    case "Enter":
      below(hands, event.shiftKey ? -1 : 1);
      return true;
    case "F2":
      if (isOpen(at.here)) setAt({ typed: cellAt(draft, at.here), anchor: at.here });
      return true;
    case "F8":
      hands.takeOffer();
      return true;
    case "Insert":
      if (event.shiftKey) return false;
      hands.putIn();
      return true;
    case "Delete":
    case "Backspace":
      if (key === "Delete" && event.shiftKey) hands.takeOut();
      else hands.clear();
      return true;
  }
  if (key.length !== 1 && !/^\p{L}\p{M}*$/u.test(key)) return false;
  if (!isOpen(at.here)) return false;
  setAt({ typed: key, anchor: at.here });
  return true;
}

function commandKey(event: KeyboardEvent, hands: Hands): boolean {
  const { filled } = hands;
  const { at, draft, setAt } = filled;
  const { lines, across } = fieldOf(hands);
  switch (event.key.toLowerCase()) {
    case "z":
      return event.shiftKey ? filled.redo() : filled.undo();
    case "y":
      return filled.redo();
    case "d":
      hands.fillDown();
      return true;
    case "a":
      setAt({
        anchor: { row: 0, column: draft.columns[0] ?? at.here.column },
        here: { row: Math.max(draft.rows.length - 1, 0), column: draft.columns.at(-1) ?? at.here.column },
      });
      hands.toCell();
      return true;
    case "enter":
      hands.save();
      return true;
    case "home":
      go(hands, { row: 0, column: draft.columns[0] ?? at.here.column }, event.shiftKey);
      return true;
    case "end":
      go(hands, { row: draft.rows.length, column: draft.columns.at(-1) ?? at.here.column }, event.shiftKey);
      return true;
    case "arrowdown":
      go(hands, { row: lines.at(-1) ?? 0, column: at.here.column }, event.shiftKey);
      return true;
    case "arrowup":
      go(hands, { row: 0, column: at.here.column }, event.shiftKey);
      return true;
    case "arrowright":
    case "arrowleft": {
      const last = event.key === (isMirrored(event) ? "ArrowLeft" : "ArrowRight");
      go(
        hands,
        { row: at.here.row, column: (last ? across.at(-1) : across[0]) ?? at.here.column },
        event.shiftKey,
      );
      return true;
    }
    default:
      return false;
  }
}

function isMirrored(event: KeyboardEvent): boolean {
  return event.currentTarget.ownerDocument.documentElement.dir === "rtl";
}

function fieldOf({ filled: { draft }, recorded }: Hands): {
  readonly lines: readonly number[];
  readonly across: readonly string[];
} {
  return { lines: linesOf(draft, recorded), across: acrossOf(draft) };
}

function movesTo(event: KeyboardEvent, hands: Hands): Place | null {
  const { here } = hands.filled.at;
  const field = fieldOf(hands);
  const on = isMirrored(event) ? -1 : 1;
  switch (event.key) {
    case "ArrowDown":
      return movedBy(here, { down: 1 }, field);
    case "ArrowUp":
      return movedBy(here, { down: -1 }, field);
    case "ArrowRight":
      return movedBy(here, { on }, field);
    case "ArrowLeft":
      return movedBy(here, { on: -on }, field);
    case "PageDown":
      return movedBy(here, { down: 12 }, field);
    case "PageUp":
      return movedBy(here, { down: -12 }, field);
    case "Home":
      return { row: here.row, column: field.across[0] ?? here.column };
    case "End":
      return { row: here.row, column: field.across.at(-1) ?? here.column };
    default:
      return null;
  }
}

function go({ filled, toCell }: Hands, to: Place, extends_: boolean): void {
  filled.setAt({ here: to, typed: null, run: to.column, ...(extends_ ? {} : { anchor: to }) });
  toCell();
}

/** To the next row, at the column where the run of cells began. */
function below(hands: Hands, by: 1 | -1): void {
  const { at } = hands.filled;
  const { lines, across } = fieldOf(hands);
  // What was typed into the last row makes one more.
  const here =
    by > 0 && at.typed !== null && at.here.row === lines.at(-1) ? [...lines, at.here.row + 1] : lines;
  const to = movedBy({ row: at.here.row, column: at.run }, { down: by }, { lines: here, across });
  hands.filled.setAt({ here: to, anchor: to, typed: null });
  hands.toCell();
}

/** To the next cell, or out of the grid: after Escape, and past its first and last cell. */
function tab(event: KeyboardEvent, hands: Hands, typed: boolean): boolean {
  const { filled, leaving } = hands;
  const { at, draft } = filled;
  const grown =
    typed && at.here.row === draft.rows.length
      ? { ...draft, rows: [...draft.rows, { key: 0, cells: {} }] }
      : draft;
  const to = leaving.current ? null : nextCell(at.here, event.shiftKey ? -1 : 1, grown);
  leaving.current = false;
  if (to === null) {
    if (typed) filled.setAt({ typed: null });
    if (typed) hands.toCell();
    return typed;
  }
  filled.setAt({ here: to, anchor: to, typed: null, run: to.row === at.here.row ? at.run : to.column });
  hands.toCell();
  return true;
}
