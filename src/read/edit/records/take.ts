import { refuseShared } from "../change/desk.ts";
import type { Desk } from "../change/desk.ts";
import { removeLines } from "../change/parts.ts";
import { setAt } from "../change/set.ts";
import { columnOf, lineAfter, lineEnd, lineStart } from "../hand/lines.ts";
import { endOf, isFlow, saidAt } from "../site/site.ts";
import type { Part } from "../site/site.ts";
import { isList } from "../written.ts";
import { commentsAbove, ownLines } from "./own-lines.ts";

/**
 * Takes a record out of its list. The comment lines directly above it, at its own indentation, go with it only where a
 * blank line, a comment or the end of the list follows: else they may speak of the records below as well, and stay.
 * Of the blank lines before and behind it one run stays. The line of a list that is left empty goes with it, unless a
 * comment stands by it.
 */
export function takeRecord(desk: Desk, list: Part, record: Part): void {
  const { text } = desk;
  refuseShared(desk, record.value, true);
  const { parts } = list.value;
  if (isFlow(list.value)) {
    const said = saidAt(list.value);
    const left = isList(said) ? said.filter((_, place) => parts[place] !== record) : said;
    const column = columnOf(text, list.from);
    const slot = {
      flow: false,
      item: false,
      column,
      taken: list.at + 1 - list.from,
      at: list.at,
      table: null,
    };
    return setAt(desk, list.value, left, slot);
  }
  const own = ownLines(text, record);
  const column = columnOf(text, record.from);
  const next = lineAfter(text, own.end);
  const follows = parts[parts.indexOf(record) + 1];
  const setOff = follows === undefined || lineStart(text, follows.from) !== next;
  const start = setOff ? commentsAbove(text, own.start, column) : own.start;
  if (parts.length === 1) return takeLast(desk, list, start, own.end);
  removeLines(desk, start, own.end, follows ? "below" : "above");
}

/** Takes the only record of a list, with the list's own line where nothing else belongs to it. */
function takeLast(desk: Desk, list: Part, start: number, end: number): void {
  const { text } = desk;
  const head = lineStart(text, list.from);
  const bare = text.slice(list.at, lineEnd(text, list.at)).trim() === "" && list.value.anchor === null;
  const alone = lineAfter(text, list.at) === start && commentsAbove(text, head, 0) === head;
  removeLines(desk, bare && alone && endOf(list) <= end ? head : start, end, "below");
}
