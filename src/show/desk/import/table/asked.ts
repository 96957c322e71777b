import { say } from "../../../../base/text/said/said.ts";
import type { Graph } from "../../../../link/graph.ts";
import { likelyList, matched } from "../../grid/columns/matched.ts";
import type { ColumnMatch } from "../../grid/columns/matched.ts";
import type { Meaning, TableList } from "../../grid/columns/meaning.ts";
import type { ComingTable } from "./coming.ts";

/** What becomes of a row whose artefact is there already; `take` names fields that differ and are to be as in the table. */
export type RowChoice =
  { readonly do: "add" | "leave" } | { readonly do: "merge"; readonly take: readonly string[] };

/** How a table is to come in. */
export interface TableAsked {
  /** What its rows are; null for what they look like. */
  readonly list: TableList | null;
  /** Columns, counted from 0, that are something else than they look like. */
  readonly meanings: ReadonlyMap<number, Meaning>;
  readonly decimal: "point" | "comma";
  /** Fields that every row gets which has none of its own. */
  readonly all: Readonly<Record<string, string>>;
  /** As records among the others, or as a table of its own that `corpus.yaml` names. */
  readonly as: "records" | "table";
  /** By the place of the row, from 0. */
  readonly choices: ReadonlyMap<number, RowChoice>;
  /** What becomes of artefacts that are there already where nothing is chosen. */
  readonly duplicates: "leave" | "merge";
}

/** A table with what was asked about it. */
export interface Asked extends TableAsked {
  readonly graph: Graph;
  readonly coming: ComingTable;
  readonly list: TableList;
  readonly columns: readonly ColumnMatch[];
  /** One column for each dimension, so that a row has several figures. */
  readonly wide: boolean;
}

/** What the columns of a table are, by their heads and by what was chosen. */
export function askedOf(graph: Graph, coming: ComingTable, asked: TableAsked): Asked {
  const list = asked.list ?? likelyList(graph, coming.head);
  const columns = matched(graph, coming.head, list).map((one, place): ColumnMatch => {
    const meaning = asked.meanings.get(place);
    return meaning === undefined ? one : { ...one, meaning, why: say`as it was chosen`, unsure: false };
  });
  const wide = list === "measurements" && columns.some(({ meaning }) => meaning.is === "dimension");
  return { ...asked, graph, coming, list, columns, wide };
}
