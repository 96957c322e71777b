import type { TextNode } from "../tree.ts";
import { goOn, isLineEnd } from "./cursor.ts";
import type { Cursor } from "./cursor.ts";
import { canBegin, isBracket, isPrinted } from "./signs.ts";

const [space, quote, hash, apostrophe, dash, colon, backslash] = [32, 34, 35, 39, 45, 58, 92];

/**
 * Passes over a text without quotes, up to the colon behind a key, a comment or the end of the line, in brackets also to
 * what parts it there. Where the text ends, spaces behind it left out; -1 where it is no such text.
 */
export function plainEnd(cursor: Cursor, inBrackets: boolean): number {
  const { text } = cursor;
  let at = cursor.at;
  if (!beginsPlain(text, at)) return -1;
  let end = at;
  for (; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === space) {
      if (text.charCodeAt(at + 1) === hash) break;
    } else if (code === colon) {
      const next = text.charCodeAt(at + 1);
      if (next === space || isLineEnd(next)) break;
      if (inBrackets && isBracket(next)) return -1;
      end = at + 1;
    } else if (inBrackets && isBracket(code)) break;
    else if (isPrinted(code)) end = at + 1;
    else if (isLineEnd(code)) break;
    else return -1;
  }
  cursor.at = at;
  return end;
}

function beginsPlain(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  if (code !== dash) return canBegin(code);
  const next = text.charCodeAt(at + 1);
  return next !== dash && canBegin(next);
}

/** A text without quotes in brackets; null where it is none. */
export function plainInBrackets(cursor: Cursor): TextNode | null {
  const start = cursor.at;
  const end = plainEnd(cursor, true);
  if (end < 0 || !isBracket(cursor.text.charCodeAt(cursor.at))) return null;
  return { is: "text", text: cursor.text.slice(start, end), plain: true, start, end };
}

/** A text without quotes to the end of its line, or over several lines that stand further in than `column`. */
export function plainText(cursor: Cursor, column: number): TextNode | null {
  const { text } = cursor;
  const start = cursor.at;
  let end = plainEnd(cursor, false);
  let stop = text.charCodeAt(cursor.at);
  if (end < 0 || stop === colon || !goOn(cursor)) return null;
  const said = [text.slice(start, end)];
  while (cursor.column > column) {
    // It stops at a space before a comment alone.
    if (stop === space || cursor.comments > 0) return null;
    const parting = cursor.blank === 0 ? " " : "\n".repeat(cursor.blank);
    const from = cursor.at;
    end = plainEnd(cursor, false);
    stop = text.charCodeAt(cursor.at);
    if (end < 0 || stop === colon || !goOn(cursor)) return null;
    said.push(parting, text.slice(from, end));
  }
  return { is: "text", text: said.length === 1 ? (said[0] ?? "") : said.join(""), plain: true, start, end };
}

/** A text in quotes on one line, the place behind its last quote next; null where more than a quote is set off in it. */
export function quotedText(cursor: Cursor): TextNode | null {
  const { text, at: start } = cursor;
  return text.charCodeAt(start) === quote ? doubled(cursor, text, start) : single(cursor, text, start);
}

function doubled(cursor: Cursor, text: string, start: number): TextNode | null {
  let isSetOff = false;
  let at = start + 1;
  for (; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === quote) break;
    if (code === backslash) {
      const next = text.charCodeAt(++at);
      if (next !== quote && next !== backslash) return null;
      isSetOff = true;
    } else if (!isPrinted(code)) return null;
  }
  if (at >= text.length) return null;
  cursor.at = at + 1;
  const inside = text.slice(start + 1, at);
  const said = isSetOff ? inside.replace(/\\(["\\])/gu, "$1") : inside;
  return { is: "text", text: said, plain: false, start, end: at + 1 };
}

function single(cursor: Cursor, text: string, start: number): TextNode | null {
  let isSetOff = false;
  let at = start + 1;
  for (; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === apostrophe) {
      if (text.charCodeAt(at + 1) !== apostrophe) break;
      isSetOff = true;
      at++;
    } else if (!isPrinted(code)) return null;
  }
  if (at >= text.length) return null;
  cursor.at = at + 1;
  const inside = text.slice(start + 1, at);
  return {
    is: "text",
    text: isSetOff ? inside.replaceAll("''", "'") : inside,
    plain: false,
    start,
    end: at + 1,
  };
}
