import type { Table } from "../../table/csv.ts";

/** The head line of a table as new rows need it. */
export interface Head {
  readonly separator: string;
  /** The name of each column as it is read; null for one that counts for nothing, its name standing twice. */
  readonly columns: readonly (string | null)[];
}

/** Reads the separator and all columns off the head line. */
export function headOf(text: string, { head }: Table): Head {
  const [first] = head;
  if (!first) return { separator: ",", columns: [] };
  const separator = /^[ ]*([,;\t])/u.exec(text.slice(first.span.end))?.[1] ?? ",";
  const starts = [first.span.start];
  let quoted = false;
  for (let at = first.span.start; at < text.length; at++) {
    const sign = text[at];
    if (sign === '"') quoted = !quoted;
    else if (!quoted && (sign === "\n" || sign === "\r")) break;
    else if (!quoted && sign === separator) starts.push(at + 1);
  }
  return {
    separator,
    columns: starts.map((start) => head.find(({ span }) => span.start === start)?.text ?? null),
  };
}

/** A text as a cell (RFC 4180): in quotes where it holds what parts cells or rows, or where the old one stood in them. */
export function cellIn(text: string, separator: string, inQuotes: boolean): string {
  const must = text.includes(separator) || /["\r\n]/u.test(text) || (inQuotes && text !== "");
  return must ? `"${text.replaceAll('"', '""')}"` : text;
}

/** The line end behind a place, or else the last one before it. */
export function lineMarkAt(text: string, at: number): string {
  const behind = /^(?:\r\n|\r|\n)/u.exec(text.slice(at, at + 2));
  if (behind) return behind[0];
  return [...text.slice(0, at).matchAll(/\r\n|\r|\n/gu)].at(-1)?.[0] ?? "\n";
}
