import type { Text } from "../../../../base/text/said/said.ts";
import type { Edit } from "../../../../base/finding.ts";

/** A field of an entry as it is written. Offsets are UTF-16 units of the whole file. */
export interface Field {
  /** As the format names it: `title`, `AU`, `container-title`. */
  readonly name: string;
  /** What stands between its braces or quotes, or the whole of what is no such text. */
  readonly text: string;
  /** Where that begins and ends. */
  readonly start: number;
  readonly end: number;
  /** What goes when the field is taken out, its line and its comma with it. */
  readonly whole: { readonly start: number; readonly end: number };
  /** How it is written: in braces or quotes, or as it stands (a number, an abbreviation, a list of JSON). */
  readonly is: "braces" | "quotes" | "bare";
}

/** Why a field cannot be written so. */
export interface CannotWrite {
  readonly problem: Text;
}

/** How one format writes the fields of an entry that stands in a file from `start` to `end`. */
export interface Hand {
  readonly fields: (text: string, start: number, end: number) => readonly Field[];
  /** What is put in place of a field's text. */
  readonly set: (field: Field, text: string) => string | CannotWrite;
  /** New fields, one a line, in the manner of those that stand there; each text as a form shows it. */
  readonly add: (
    text: string,
    at: { readonly start: number; readonly end: number },
    fresh: readonly Fresh[],
  ) => Omit<Edit, "file"> | CannotWrite;
}

/** A field to be written: `bare` where it is no text in braces or quotes. */
export interface Fresh {
  readonly name: string;
  readonly text: string;
  readonly bare?: boolean;
}

/** A field that an entry of the corpus lacks, or that says something else in what came in. */
export interface MergeField {
  /** As the corpus's entry names it, or would. */
  readonly name: string;
  /** What the corpus's entry says; null where it says nothing. */
  readonly here: string | null;
  readonly theirs: string;
  /** What is written where it is taken. */
  readonly write: readonly Fresh[];
  /** Fields of the corpus's entry that give way to it. */
  readonly drop: readonly string[];
}

/** The line end of a text: that of its first line. */
export function lineEndIn(text: string): "\n" | "\r\n" {
  return /^[^\n]*\r\n/.test(text) ? "\r\n" : "\n";
}

/** The white space at the beginning of the line that a place is in; null where something else stands before the place. */
export function indentAt(text: string, at: number): string | null {
  const from = text.lastIndexOf("\n", at - 1) + 1;
  const lead = text.slice(from, at);
  return /^[ \t]*$/.test(lead) ? lead : null;
}
