import type { Entry, Node } from "../tree.ts";
import { passSpaces } from "./cursor.ts";
import type { Cursor } from "./cursor.ts";
import { hasKey, keyAt } from "./key.ts";
import { plainInBrackets, quotedText } from "./scalars.ts";

const [quote, apostrophe, comma, openList, closeList, openMap, closeMap] = [34, 39, 44, 91, 93, 123, 125];

/** Values may lie so deep in one another; the other reader takes what lies deeper. */
export const deepest = 24;

/** A list or map in brackets on one line, the place behind it next; null where it is not plain. */
export function bracketed(cursor: Cursor): Node | null {
  if (cursor.depth >= deepest) return null;
  cursor.depth++;
  const isMap = cursor.text.charCodeAt(cursor.at) === openMap;
  const read = isMap ? mapIn(cursor) : listIn(cursor);
  cursor.depth--;
  return read;
}

function listIn(cursor: Cursor): Node | null {
  const start = cursor.at++;
  const items: Node[] = [];
  passSpaces(cursor);
  if (cursor.text.charCodeAt(cursor.at) === closeList) cursor.at++;
  else {
    do {
      passSpaces(cursor);
      const item = valueIn(cursor);
      if (!item) return null;
      items.push(item);
      passSpaces(cursor);
    } while (cursor.text.charCodeAt(cursor.at++) === comma);
    if (cursor.text.charCodeAt(cursor.at - 1) !== closeList) return null;
  }
  return { is: "list", items, start, end: cursor.at };
}

function mapIn(cursor: Cursor): Node | null {
  const start = cursor.at++;
  const entries: Entry[] = [];
  passSpaces(cursor);
  if (cursor.text.charCodeAt(cursor.at) === closeMap) cursor.at++;
  else {
    do {
      passSpaces(cursor);
      const keyStart = cursor.at;
      const key = keyAt(cursor);
      if (key === null || hasKey(entries, key)) return null;
      const keyEnd = cursor.at++;
      passSpaces(cursor);
      const value = valueIn(cursor);
      if (!value) return null;
      entries.push({ key, keyStart, keyEnd, value });
      passSpaces(cursor);
    } while (cursor.text.charCodeAt(cursor.at++) === comma);
    if (cursor.text.charCodeAt(cursor.at - 1) !== closeMap) return null;
  }
  return { is: "map", entries, start, end: cursor.at, parting: ", " };
}

function valueIn(cursor: Cursor): Node | null {
  const code = cursor.text.charCodeAt(cursor.at);
  if (code === openList || code === openMap) return bracketed(cursor);
  return code === quote || code === apostrophe ? quotedText(cursor) : plainInBrackets(cursor);
}
