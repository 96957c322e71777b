/** What stands in a cell: a text, a number as it is, whether something is so, or nothing. */
export type Cell = string | number | boolean | null;

/** A column: its name in kebab-case, what it holds, and the unit of its numbers where they have one. */
export interface Column {
  readonly name: string;
  readonly holds: "text" | "number" | "truth";
  readonly doc: string;
  readonly unit?: string;
}

/** Rows of data for others to compute on; a cell for each column. */
export interface DataTable {
  readonly name: string;
  readonly doc: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
}

/** A column with what it has of one thing. */
export type ColumnOf<T> = Column & { readonly cell: (one: T) => Cell };

/** The table of things, in their order. */
export function tableOf<T>(
  about: Pick<DataTable, "name" | "doc">,
  columns: readonly ColumnOf<T>[],
  things: readonly T[],
): DataTable {
  return {
    ...about,
    columns: columns.map(({ name, holds, doc, unit }) => ({
      name,
      holds,
      doc,
      ...(unit === undefined ? {} : { unit }),
    })),
    rows: things.map((one) => columns.map((column) => column.cell(one))),
  };
}

/** Several in one cell. */
export function listed(texts: readonly string[]): string | null {
  return texts.length === 0 ? null : texts.join("; ");
}
