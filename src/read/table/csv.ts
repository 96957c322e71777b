import type { Finding, Span } from "../../base/finding.ts";
import { collector, lineSpan } from "../collector.ts";
import type { SourceFile } from "../source-file.ts";

/** One cell: its text, quotes taken off, and its place as written. */
export interface Cell {
  readonly text: string;
  readonly span: Span;
}

export interface Row {
  readonly cells: readonly Cell[];
  readonly span: Span;
}

export interface Table {
  readonly head: readonly Cell[];
  readonly rows: readonly Row[];
  readonly findings: readonly Finding[];
}

/** Reads a CSV table (RFC 4180); comma, semicolon or tab is told by the head line, the separator met most often. */
export function readTable(file: SourceFile): Table {
  const { text } = file;
  const found = collector();
  const start = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  const separator = separatorIn(text.slice(start, endOfLine(text, start)));
  const rows: Row[] = [];
  for (let at = start; at < text.length;) {
    const row = rowAt(at);
    at = row.next;
    if (row.cells.length > 1 || row.cells[0]?.text.trim() !== "") {
      rows.push({ cells: row.cells, span: { file: file.path, start: row.start, end: row.end } });
    }
  }
  const [head, ...body] = rows;
  if (!head) {
    found.bad("Missing head line, expected the names of the columns", lineSpan(file, 0), {
      rule: "unreadable-file",
    });
    return { head: [], rows: [], findings: found.all() };
  }
  const whole = body.filter((row) => {
    const surplus = row.cells.length - head.cells.length;
    if (surplus === 0) return true;
    const message = `Unexpected ${row.cells.length} cells, expected ${head.cells.length} as in the head line`;
    found.bad(message, row.span);
    return false;
  });
  return { head: head.cells.map(trimmed), rows: whole, findings: found.all() };

  function rowAt(from: number): { cells: readonly Cell[]; start: number; end: number; next: number } {
    const cells: Cell[] = [];
    for (let at = from; ;) {
      const cell = text[at] === '"' ? quotedAt(at) : bareAt(at);
      cells.push(cell.cell);
      if (text[cell.end] === separator) at = cell.end + 1;
      else {
        const next = text[cell.end] === "\r" && text[cell.end + 1] === "\n" ? cell.end + 2 : cell.end + 1;
        return { cells, start: from, end: cell.end, next };
      }
    }
  }

  function bareAt(from: number): { cell: Cell; end: number } {
    let end = from;
    while (end < text.length && text[end] !== separator && text[end] !== "\n" && text[end] !== "\r") end++;
    return { cell: { text: text.slice(from, end), span: { file: file.path, start: from, end } }, end };
  }

  function quotedAt(from: number): { cell: Cell; end: number } {
    let end = from + 1;
    const parts: string[] = [];
    for (;;) {
      const quote = text.indexOf('"', end);
      if (quote < 0) {
        found.bad('Unexpected `"` that is never closed, expected a closing one', lineSpan(file, from));
        return {
          cell: { text: text.slice(from + 1), span: { file: file.path, start: from, end: text.length } },
          end: text.length,
        };
      }
      parts.push(text.slice(end, quote));
      end = quote + 1;
      if (text[end] !== '"') break;
      parts.push('"');
      end++;
    }
    const after = bareAt(end);
    if (after.cell.text.trim() !== "") {
      found.bad("Unexpected text after a closing quote, expected a separator", after.cell.span);
    }
    return { cell: { text: parts.join(""), span: { file: file.path, start: from, end } }, end: after.end };
  }
}

/** A cell's number with a decimal point, where the corpus's tables write a comma. */
export function numberText(cell: Cell, decimal: "point" | "comma"): string {
  const text = cell.text.trim();
  return decimal === "comma" ? text.replace(/(\d),(\d)/g, "$1.$2") : text;
}

function trimmed(cell: Cell): Cell {
  return { ...cell, text: cell.text.trim() };
}

function endOfLine(text: string, from: number): number {
  const end = text.indexOf("\n", from);
  return end < 0 ? text.length : end;
}

function separatorIn(head: string): string {
  const count = (mark: string): number => head.split(mark).length;
  return [",", ";", "\t"].reduce((best, mark) => (count(mark) > count(best) ? mark : best));
}
