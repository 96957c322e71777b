import type { Span } from "../base/finding.ts";

/** A span as people count: lines and columns from 1, columns in UTF-16 units; the end is exclusive. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

/** Tells places in the given texts; each text's lines are counted once. */
export function placesIn(texts: ReadonlyMap<string, string>): (span: Span) => Place {
  const starts = new Map<string, readonly number[]>();
  const linesOf = (file: string): readonly number[] => {
    const known = starts.get(file);
    if (known) return known;
    const lines = [0];
    const text = texts.get(file) ?? "";
    for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) lines.push(at + 1);
    starts.set(file, lines);
    return lines;
  };
  return ({ file, start, end }) => {
    const lines = linesOf(file);
    const line = lineAt(lines, start);
    const endLine = lineAt(lines, end);
    return {
      file,
      line: line + 1,
      column: start - (lines[line] ?? 0) + 1,
      endLine: endLine + 1,
      endColumn: end - (lines[endLine] ?? 0) + 1,
    };
  };
}

function lineAt(starts: readonly number[], offset: number): number {
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((starts[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
}
