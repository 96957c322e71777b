import type { Span } from "../../finding.ts";
import { linesIn } from "./lines.ts";

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
  const lineOf = linesIn(texts);
  return ({ file, start, end }) => {
    const first = lineOf(file, start);
    const last = lineOf(file, end);
    return {
      file,
      line: first.line,
      column: start - first.start + 1,
      endLine: last.line,
      endColumn: end - last.start + 1,
    };
  };
}
