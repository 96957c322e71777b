import type { FileChange } from "../../../../../base/text/edit.ts";
import type { Graph } from "../../../../../link/graph.ts";
import type { Meaning, TableList } from "../../../grid/columns/meaning.ts";
import type { Some } from "../../page.ts";
import { askedOf } from "../asked.ts";
import type { RowChoice } from "../asked.ts";
import type { ComingTable } from "../coming.ts";
import { meaningOptions } from "./options.ts";
import type { MeaningOption } from "./options.ts";
import { tableTold } from "./told.ts";
import type { FailureTold, FreshTold, TableTold, TwinTold } from "./told.ts";

/** How a table is to come in, as plain data that can be kept. */
export interface TableChoices {
  readonly list: TableList | null;
  readonly meanings: readonly (readonly [column: number, meaning: Meaning])[];
  readonly decimal: "point" | "comma";
  readonly all: Readonly<Record<string, string>>;
  readonly as: "records" | "table";
  readonly choices: readonly (readonly [row: number, choice: RowChoice])[];
  readonly duplicates: "leave" | "merge";
}

/** A table as the page of an import shows it: the first of each list, and how many there are in all. */
export interface TablePage extends Pick<
  TableTold,
  "list" | "wide" | "columns" | "rows" | "commas" | "points" | "without" | "files" | "problem"
> {
  readonly fresh: Some<FreshTold>;
  readonly there: number;
  readonly hidden: number;
  readonly twins: Some<TwinTold>;
  readonly failures: Some<FailureTold>;
  readonly merged: number;
  readonly left: number;
  readonly options: readonly MeaningOption[];
}

/** The page of one table, with at most so many rows in each list, and the changes of files that bring it in. */
export function tablePage(
  graph: Graph,
  coming: ComingTable,
  chosen: TableChoices,
  files: ReadonlyMap<string, string>,
  most: number,
): { readonly page: TablePage; readonly changes: readonly FileChange[] } {
  const given = { ...chosen, meanings: new Map(chosen.meanings), choices: new Map(chosen.choices) };
  const told = tableTold(graph, coming, given, files);
  const { columns } = askedOf(graph, coming, given);
  const some = <T>(list: readonly T[]): Some<T> => ({ shown: list.slice(0, most), all: list.length });
  const merged = told.twins.filter(
    ({ does, missing, differing }) =>
      does === "merge" && (missing.length > 0 || differing.some(({ taken }) => taken)),
  ).length;
  const added = told.twins.filter(({ does }) => does === "add").length;
  return {
    page: {
      list: told.list,
      wide: told.wide,
      columns: told.columns,
      rows: told.rows,
      commas: told.commas,
      points: told.points,
      without: told.without,
      files: told.files,
      problem: told.problem,
      fresh: some(told.fresh),
      there: told.there.length,
      hidden: told.hidden.length,
      twins: some(told.twins),
      failures: some(told.failures),
      merged,
      left: told.there.length + told.hidden.length + told.twins.length - merged - added,
      options: meaningOptions(graph, told.list, columns),
    },
    changes: told.changes,
  };
}
