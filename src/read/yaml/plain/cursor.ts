/** Where a scan of a text stands. */
export interface Cursor {
  readonly text: string;
  /** The place looked at next: once a value is read, that of the next thing said below it. */
  at: number;
  /** How far in its line that thing begins; -1 at the end of the text. */
  column: number;
  /** Where the value read last ends, the rest of its line with it. */
  ended: number;
  /** How many lines without a word lie between that line and the next thing said. */
  blank: number;
  /** How many lines of comments. */
  comments: number;
  /** How deep the value that is being read lies in others. */
  depth: number;
}

/** A cursor at the beginning of a text. */
export function cursorOf(text: string): Cursor {
  return { text, at: 0, column: 0, ended: 0, blank: 0, comments: 0, depth: 0 };
}

const [lineFeed, carriageReturn, space, exclamation, hash] = [10, 13, 32, 33, 35];

/** Passes over spaces. */
export function passSpaces(cursor: Cursor): void {
  let at = cursor.at;
  while (cursor.text.charCodeAt(at) === space) at++;
  cursor.at = at;
}

/** Goes from behind a value to the next thing said; false where something stands there that is not plain. */
export function goOn(cursor: Cursor): boolean {
  return endLine(cursor) && nextLine(cursor);
}

/** Passes over the end of a line, a comment before it. Of a comment that may be part of what was said it knows nothing. */
function endLine(cursor: Cursor): boolean {
  const { text } = cursor;
  const from = cursor.at;
  passSpaces(cursor);
  if (text.charCodeAt(cursor.at) === hash) {
    const next = text.charCodeAt(cursor.at + 1);
    const isApart = cursor.at > from && (next === space || isLineEnd(next));
    if (!isApart || !passComment(cursor)) return false;
  }
  const end = afterLineEnd(text, cursor.at);
  if (end < 0) return false;
  cursor.at = end;
  cursor.ended = end;
  return true;
}

/** From the beginning of a line to the next thing said, over lines that say nothing. */
export function nextLine(cursor: Cursor): boolean {
  const { text } = cursor;
  let deepest = 0;
  cursor.blank = 0;
  cursor.comments = 0;
  while (cursor.at < text.length) {
    const start = cursor.at;
    passSpaces(cursor);
    const code = text.charCodeAt(cursor.at);
    if (code === hash) {
      cursor.comments++;
      deepest = Math.max(deepest, cursor.at - start);
      if (!passComment(cursor)) return false;
    } else if (!isLineEnd(code)) {
      cursor.column = cursor.at - start;
      // What ends below a comment further in than itself ends there, and not before.
      return deepest <= cursor.column;
    } else cursor.blank++;
    const end = afterLineEnd(text, cursor.at);
    if (end < 0 || cursor.at === text.length) {
      if (end < 0 || cursor.at > start) return false;
      break;
    }
    cursor.at = end;
  }
  cursor.column = -1;
  return deepest === 0;
}

/** To the end of a line in which a comment stands. */
function passComment(cursor: Cursor): boolean {
  const { text } = cursor;
  let at = cursor.at;
  for (; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (isLineEnd(code)) break;
    // A comment's last word may look like a tag of what follows it.
    if (code < space || code === 127 || code === exclamation) return false;
  }
  cursor.at = at;
  return true;
}

/** Whether a line ends with this code unit; so does one behind the end of the text. */
export function isLineEnd(code: number): boolean {
  return code === lineFeed || code === carriageReturn || Number.isNaN(code);
}

/** Behind the line end at a place, or the end of the text; -1 where neither is. */
export function afterLineEnd(text: string, at: number): number {
  const code = text.charCodeAt(at);
  if (code === lineFeed) return at + 1;
  if (at >= text.length) return text.length;
  return code === carriageReturn && text.charCodeAt(at + 1) === lineFeed ? at + 2 : -1;
}
