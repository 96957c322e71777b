import type { Finding, Span } from "../../base/finding.ts";
import { count, say } from "../../base/text/said/said.ts";
import { collector, lineSpan, quoted } from "../decode/collector.ts";
import type { Collector } from "../decode/collector.ts";
import type { SourceFile } from "../source-file.ts";

/** One cell: its text, quotes taken off, and its place as written. */
export interface Cell {
  readonly text: string;
  readonly span: Span;
}

/** One row of a table, with its place. */
export interface Row {
  readonly cells: readonly Cell[];
  readonly span: Span;
}

/** A table: its head, its rows, and what was wrong with it. */
export interface Table {
  readonly head: readonly Cell[];
  readonly rows: readonly Row[];
  readonly findings: readonly Finding[];
}

const mostCells = 2_000_000;

/**
 * Reads a CSV table (RFC 4180); comma, semicolon or tab is told by the head line, the separator met most often. A row that
 * is not as long as the head, or whose quotes are amiss, costs itself; a column named twice counts once (with `columns: "all"`
 * each time), a row without any text not at all.
 */
export function readTable(file: SourceFile, columns: "named once" | "all" = "named once"): Table {
  const { text } = file;
  const found = collector();
  const start = afterComments(file, found);
  const separator = separatorIn(text.slice(start, lineAt(text, start).end));
  const rows: RawRow[] = [];
  let cells = 0;
  for (let at = start; at < text.length;) {
    const row = rowAt(file, at, separator, found);
    at = row.next;
    cells += row.cells.length;
    if (cells > mostCells) {
      const message = say`Unexpected number of more than ${count(mostCells)} cells, expected them divided among several tables`;
      found.bad(message, lineSpan(file, row.span.start), { rule: "unreadable-file" });
      break;
    }
    if (row.spoilt || row.cells.some((cell) => cell.text.trim() !== "")) rows.push(row);
  }
  const [top, ...body] = rows;
  if (!top) {
    const message = say`Missing head line, expected the names of the columns`;
    found.bad(message, lineSpan(file, start), { rule: "unreadable-file" });
    return { head: [], rows: [], findings: found.all() };
  }
  const head = top.cells.map((cell) => ({ ...cell, text: cell.text.trim() }));
  const names = new Set<string>();
  const counted = head.map(({ text: name, span }) => {
    if (columns === "all" || name === "" || !names.has(name)) {
      names.add(name);
      return true;
    }
    found.bad(say`Duplicate column \`${quoted(name)}\`, expected it once; the first is kept`, span, {
      rule: "duplicate-key",
    });
    return false;
  });
  const whole = body.filter((row) => {
    if (row.spoilt) return false;
    if (row.cells.length === head.length) return true;
    const [met, due] = [row.cells.length, String(head.length)];
    found.bad(
      met === 1
        ? say`Unexpected 1 cell, expected ${due} as in the head line`
        : say`Unexpected ${count(met)} cells, expected ${due} as in the head line`,
      row.span,
    );
    return false;
  });
  const kept = (cells: readonly Cell[]): readonly Cell[] => cells.filter((_, column) => counted[column]);
  return {
    head: kept(head),
    rows: whole.map((row) => ({ cells: kept(row.cells), span: row.span })),
    findings: found.all(),
  };
}

interface RawRow extends Row {
  readonly spoilt: boolean;
  /** Where the next row begins. */
  readonly next: number;
}

function rowAt(file: SourceFile, from: number, separator: string, found: Collector): RawRow {
  const { text } = file;
  const cells: Cell[] = [];
  let spoilt = false;
  for (let at = from; ;) {
    const cell = text[at] === '"' ? quotedAt(file, at, separator, found) : bareAt(file, at, separator);
    cells.push(cell);
    spoilt ||= cell.spoilt;
    if (text[cell.next] === separator && cells.length <= mostCells) {
      at = cell.next + 1;
      continue;
    }
    const next = text.startsWith("\r\n", cell.next) ? cell.next + 2 : cell.next + 1;
    const shown = cells.map(({ text: said, span }) => ({ text: said, span }));
    return { cells: shown, span: { file: file.path, start: from, end: cell.next }, spoilt, next };
  }
}

interface RawCell extends Cell {
  readonly spoilt: boolean;
  /** Where the separator or the end of the line stands. */
  readonly next: number;
}

function bareAt(file: SourceFile, from: number, separator: string): RawCell {
  const { text, path } = file;
  let end = from;
  while (end < text.length && text[end] !== separator && text[end] !== "\n" && text[end] !== "\r") end++;
  return { text: text.slice(from, end), span: { file: path, start: from, end }, spoilt: false, next: end };
}

function quotedAt(file: SourceFile, from: number, separator: string, found: Collector): RawCell {
  const { text, path } = file;
  const parts: string[] = [];
  let end = from + 1;
  for (;;) {
    const quote = text.indexOf('"', end);
    if (quote < 0) {
      found.bad(say`Unexpected \`"\` that is never closed, expected a closing one`, lineSpan(file, from));
      return { ...bareAt(file, from, separator), spoilt: true };
    }
    parts.push(text.slice(end, quote));
    end = quote + 1;
    if (text[end] !== '"') break;
    parts.push('"');
    end++;
  }
  const after = bareAt(file, end, separator);
  const spoilt = after.text.trim() !== "";
  if (spoilt)
    found.bad(say`Unexpected text after a closing quote, expected a separator`, lineSpan(file, end));
  return { text: parts.join(""), span: { file: path, start: from, end }, spoilt, next: after.next };
}

/** Where the head line begins: after a byte-order mark and lines of comment, which CSV does not have and which are told. */
function afterComments(file: SourceFile, found: Collector): number {
  const { text } = file;
  let at = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  while (/^#[^,;\t"\r\n]/.test(text.slice(at, at + 2))) {
    const line = lineSpan(file, at);
    const said = quoted(text.slice(line.start, line.end));
    found.bad(say`Unexpected comment \`${said}\`, expected a table that begins with its head line`, line);
    at = lineAt(text, at).next;
  }
  return at;
}

function lineAt(text: string, from: number): { readonly end: number; readonly next: number } {
  const mark = /\r\n|\r|\n/g;
  mark.lastIndex = from;
  const found = mark.exec(text);
  const end = found?.index ?? text.length;
  return { end, next: end + (found?.[0].length ?? 0) };
}

function separatorIn(head: string): string {
  const bare = head.replace(/"[^"]*"/g, "");
  const count = (mark: string): number => bare.split(mark).length;
  return [",", ";", "\t"].reduce((best, mark) => (count(mark) > count(best) ? mark : best));
}
