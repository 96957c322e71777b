import { afterLineEnd, nextLine } from "./cursor.ts";
import type { Cursor } from "./cursor.ts";
import type { TextNode } from "../tree.ts";

const [lineFeed, space, bar, minus] = [10, 32, 124, 45];

/** A text under its key, `|` or `>` with or without `-`, whose lines all begin in one column; null where it is another. */
export function blockText(cursor: Cursor, column: number): TextNode | null {
  const { text, at: start } = cursor;
  const isFolded = text.charCodeAt(start) !== bar;
  const isStripped = text.charCodeAt(start + 1) === minus;
  let at = start + (isStripped ? 2 : 1);
  if (text.charCodeAt(at) !== lineFeed) return null;
  at++;
  let depth = at;
  while (text.charCodeAt(depth) === space) depth++;
  depth -= at;
  if (depth <= column) return null;
  const found = linesFrom(text, at, depth, column);
  if (!found) return null;
  const { lines, end } = found;
  const said = isFolded ? folded(lines) : lines.join("\n");
  cursor.at = end;
  cursor.ended = end;
  if (!nextLine(cursor)) return null;
  const last = start + text.slice(start, end).trimEnd().length;
  return { is: "text", text: isStripped ? said : `${said}\n`, plain: false, start, end: last };
}

/** The lines that stand in a column, empty ones between them too; null where one stands in another or has strange signs. */
function linesFrom(
  text: string,
  from: number,
  depth: number,
  column: number,
): { readonly lines: readonly string[]; readonly end: number } | null {
  const lines: string[] = [];
  let end = from;
  for (let at = from, empty = 0; at < text.length;) {
    const mark = text.indexOf("\n", at);
    const stop = mark < 0 ? text.length : mark;
    if (stop === at) empty++;
    else {
      let lead = 0;
      while (lead <= depth && text.charCodeAt(at + lead) === space) lead++;
      if (lead <= column) break;
      if (lead !== depth || at + lead === stop || strange.test(text.slice(at, stop))) return null;
      for (; empty > 0; empty--) lines.push("");
      lines.push(text.slice(at + depth, stop));
      end = afterLineEnd(text, stop);
    }
    at = stop + 1;
  }
  return { lines, end };
}

const strange = /[\u0000-\u001f\u007f]/u;

/** Lines as one, empty lines between them as line ends. */
function folded(lines: readonly string[]): string {
  // Joined at the end: a text that is added to is a chain of its pieces.
  const said: string[] = [];
  let parting = "";
  for (const line of lines) {
    if (line === "") parting = parting === " " ? "\n" : `${parting}\n`;
    else {
      said.push(parting, line);
      parting = " ";
    }
  }
  return said.join("");
}
