/** Cells of a table as they were copied: lines of equal length. */
export type Block = readonly (readonly string[])[];

/** What the clipboard holds. */
export interface Clip {
  readonly text: string;
  /** Empty where it holds none. */
  readonly html: string;
}

/** What was copied, and how it was taken apart: into cells that spreadsheets part, or by signs that may mean something else. */
export interface Pasted {
  readonly block: Block;
  readonly parted: "cells" | "signs";
}

/**
 * The cells of what was copied: a spreadsheet's own text, else a table in HTML, else lines parted by semicolons or commas.
 * A text that is no table is one cell.
 */
export function pastedFrom({ text, html }: Clip, tableIn: (html: string) => Block | null): Pasted {
  const plain = linesOf(text, "\t");
  const even = plain.every((line) => line.length === plain[0]?.length);
  const wide = (plain[0]?.length ?? 0) > 1;
  if (even && wide) return { block: plain, parted: "cells" };
  const table = html === "" ? null : (tableIn(html)?.map((line) => line.map(withoutControls)) ?? null);
  if (table && (table[0]?.length ?? 0) > 1) return { block: table, parted: "cells" };
  if (text.includes("\t")) return { block: padded(plain), parted: "cells" };
  const sign = [";", ","].find((one) => isParted(linesOf(text, one), one));
  return sign === undefined
    ? { block: padded(plain), parted: "cells" }
    : { block: linesOf(text, sign), parted: "signs" };
}

/** A text without control signs, which no cell needs and which mean something inside the program. */
const withoutControls = (text: string): string => text.replace(/[^\P{Cc}\s]/gu, "");

/** Lines that a sign parts into as many cells each; decimal commas in a single column part nothing. */
function isParted(lines: Block, sign: string): boolean {
  const [first] = lines;
  if (!first || lines.length < 2 || first.length < 2) return false;
  if (lines.some((line) => line.length !== first.length)) return false;
  const decimals = lines.every(([ahead = "", behind = ""]) => /\d$/u.test(ahead) && /^\d/u.test(behind));
  return sign !== "," || first.length > 2 || !decimals;
}

/** Lines of equal length: the shorter ones end in empty cells. */
export function padded(lines: Block): Block {
  const most = lines.reduce((known, line) => Math.max(known, line.length), 0);
  return lines.map((line) => [...line, ...Array.from({ length: most - line.length }, () => "")]);
}

/**
 * Lines of cells that a sign parts. A cell in quotes may hold the sign and line ends, with its own quotes doubled; a quote
 * that is never closed, or with something behind it, is a sign like any other (5" is no quotation).
 */
function linesOf(text: string, sign: string): Block {
  const lines: string[][] = [];
  let line: string[] = [];
  const said = withoutControls(text.replace(/^\ufeff/u, ""));
  for (let at = 0; at <= said.length;) {
    const { cell, next } = cellFrom(said, at, sign);
    line.push(cell);
    if (said[next] === sign) {
      at = next + 1;
      continue;
    }
    lines.push(line);
    line = [];
    at = next + (said.startsWith("\r\n", next) ? 2 : 1);
    if (at >= said.length) break;
  }
  return lines;
}

function cellFrom(
  text: string,
  from: number,
  sign: string,
): { readonly cell: string; readonly next: number } {
  const quoted = text[from] === '"' ? closed(text, from) : null;
  const isEnd = (at: number): boolean =>
    at >= text.length || text[at] === sign || /[\r\n]/u.test(text[at] ?? "");
  if (quoted && isEnd(quoted.next)) return quoted;
  let next = from;
  while (!isEnd(next)) next++;
  return { cell: text.slice(from, next), next };
}

function closed(text: string, from: number): { readonly cell: string; readonly next: number } | null {
  for (let at = from + 1; ;) {
    const quote = text.indexOf('"', at);
    if (quote < 0) return null;
    if (text[quote + 1] !== '"')
      return { cell: text.slice(from + 1, quote).replaceAll('""', '"'), next: quote + 1 };
    at = quote + 2;
  }
}
