import type { Entry, MapNode, Node } from "../tree.ts";
import { blockText } from "./block.ts";
import { bracketed, deepest } from "./brackets.ts";
import { cursorOf, goOn, isLineEnd, nextLine, passSpaces } from "./cursor.ts";
import type { Cursor } from "./cursor.ts";
import { hasKey, keyAt } from "./key.ts";
import { plainText, quotedText } from "./scalars.ts";

const [carriageReturn, space, quote, hash, apostrophe, dash] = [13, 32, 34, 35, 39, 45];
const [greater, openList, openMap, bar] = [62, 91, 123, 124];

/**
 * The map of a text that is written in the plain part of YAML, as `yaml` reads it, its places with it: maps and lists one under
 * another or in brackets on one line, texts plain or in quotes. Null for any other, and for one of which there is something to tell.
 */
export function plainTree(text: string): MapNode | null {
  const cursor = cursorOf(text);
  if (!nextLine(cursor) || cursor.column !== 0) return null;
  const root = mapAt(cursor, 0);
  return root !== null && cursor.column < 0 ? root : null;
}

/** The map whose keys stand in a column, the first of them next. */
function mapAt(cursor: Cursor, column: number): MapNode | null {
  if (++cursor.depth >= deepest) return null;
  const entries: Entry[] = [];
  const start = cursor.at;
  do {
    const keyStart = cursor.at;
    const key = keyAt(cursor);
    if (key === null || hasKey(entries, key)) return null;
    const keyEnd = cursor.at++;
    const value = valueAt(cursor, column);
    if (value === null) return null;
    entries.push({ key, keyStart, keyEnd, value });
  } while (cursor.column === column);
  if (cursor.column > column) return null;
  cursor.depth--;
  return { is: "map", entries, start, end: cursor.ended, parting: partingAt(cursor.text, start, column) };
}

/** What stands behind the colon of a key in a column, or under it. */
function valueAt(cursor: Cursor, column: number): Node | null {
  passSpaces(cursor);
  const { at } = cursor;
  const code = cursor.text.charCodeAt(at);
  if (!isLineEnd(code) && code !== hash) return onLine(cursor, column);
  if (!goOn(cursor)) return null;
  if (cursor.column > column)
    return isDash(cursor) ? listAt(cursor, cursor.column) : mapAt(cursor, cursor.column);
  if (cursor.column === column && isDash(cursor)) return listAt(cursor, column);
  if (code === hash || cursor.comments > 0) return null;
  cursor.ended = at;
  return { is: "text", text: "", plain: true, start: at, end: at };
}

/** The list whose dashes stand in a column, the first of them next. */
function listAt(cursor: Cursor, column: number): Node | null {
  if (++cursor.depth >= deepest) return null;
  const items: Node[] = [];
  const start = cursor.at;
  do {
    const item = itemAt(cursor, column);
    if (item === null) return null;
    items.push(item);
  } while (cursor.column === column && isDash(cursor));
  if (cursor.column > column) return null;
  cursor.depth--;
  return { is: "list", items, start, end: cursor.ended };
}

function itemAt(cursor: Cursor, column: number): Node | null {
  const { text, at } = cursor;
  cursor.at++;
  passSpaces(cursor);
  const [start, further] = [cursor.at, column + cursor.at - at];
  if (keyAt(cursor) !== null) {
    cursor.at = start;
    return mapAt(cursor, further);
  }
  cursor.at = start;
  const code = text.charCodeAt(start);
  if (code === bar || code === greater || isLineEnd(code)) return null;
  return onLine(cursor, column);
}

/** A value that begins in the line that is being read, below something that stands in a column. */
function onLine(cursor: Cursor, column: number): Node | null {
  switch (cursor.text.charCodeAt(cursor.at)) {
    case openList:
    case openMap:
      return atLineEnd(cursor, bracketed(cursor));
    case quote:
    case apostrophe:
      return atLineEnd(cursor, quotedText(cursor));
    case bar:
    case greater:
      return blockText(cursor, column);
    default:
      return plainText(cursor, column);
  }
}

function atLineEnd<N extends Node>(cursor: Cursor, read: N | null): N | null {
  return read !== null && goOn(cursor) ? read : null;
}

function isDash({ text, at }: Cursor): boolean {
  return text.charCodeAt(at) === dash && text.charCodeAt(at + 1) === space;
}

const partings: readonly string[] = Array.from({ length: 80 }, (_, column) => `\n${" ".repeat(column)}`);

/** What parts two keys in a column: the end of a line as that of the first has it, and spaces. */
function partingAt(text: string, start: number, column: number): string {
  const next = text.indexOf("\n", start);
  const mark = next < 0 ? text.lastIndexOf("\n", start) : next;
  return mark > 0 && text.charCodeAt(mark - 1) === carriageReturn
    ? `\r\n${" ".repeat(column)}`
    : (partings[column] ?? `\n${" ".repeat(column)}`);
}
