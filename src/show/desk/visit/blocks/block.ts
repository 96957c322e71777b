import type { Text } from "../../../../base/text/said/said.ts";

/** The way to a value in what is filled in: `["measured", KEY, "readings", 0]`. */
export type Path = readonly (string | number)[];

/** Something to be written on a sheet. */
export interface Field {
  readonly at: Path;
  readonly label: Text;
  readonly is: "line" | "figure" | "day" | "choice";
  /** Of a choice, with the value for none first; of a line, what may be written. */
  readonly choices: readonly { readonly value: string; readonly text: Text }[];
  /** What stands in it from the beginning. */
  readonly value: string;
}

/** One row of a sheet: what it is about, what is to be written, and what is told only afterwards. */
export interface FieldRow {
  readonly name: Text;
  /** What it is about more exactly, and how it is done. */
  readonly says: readonly Text[];
  readonly fields: readonly Field[];
  /** Earlier values: told once so many of the row's fields are written. */
  readonly after: { readonly told: readonly Text[]; readonly fields: number } | null;
}

/** A piece of a visit sheet: what it says, not how it looks. */
export type Block =
  | { readonly is: "title"; readonly text: Text; readonly lead: Text }
  /** `apart`: on a leaf of its own, which is not looked at before the rest is done. */
  | { readonly is: "heading"; readonly text: Text; readonly level: 2 | 3; readonly apart: boolean }
  | { readonly is: "text"; readonly text: Text; readonly strong: boolean }
  | { readonly is: "terms"; readonly rows: readonly (readonly [name: Text, value: Text])[] }
  | { readonly is: "list"; readonly items: readonly Text[] }
  | { readonly is: "row"; readonly row: FieldRow }
  /** Room to write by hand. */
  | { readonly is: "room"; readonly lines: number };

/** A heading in the run of the sheet. */
export const heading = (text: Text, level: 2 | 3 = 2): Block => ({
  is: "heading",
  text,
  level,
  apart: false,
});
/** A sentence. */
export const sentence = (text: Text, strong = false): Block => ({ is: "text", text, strong });
/** Several sentences below each other; nothing for none. */
export const listed = (items: readonly Text[]): readonly Block[] =>
  items.length === 0 ? [] : [{ is: "list", items }];

/** A line to write on. */
export const line = (at: Path, label: Text, value = ""): Field => ({
  at,
  label,
  is: "line",
  choices: [],
  value,
});
