import type { Finding } from "../../../base/finding.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Reported } from "../../report/report.ts";
import { claimTable } from "./claims.ts";
import { findingTable } from "./findings.ts";
import { measurementTable } from "./measurements.ts";
import { positionTable } from "./positions.ts";
import { tableOf } from "./table.ts";
import type { DataTable } from "./table.ts";
import { withholdingSaid } from "../withholding.ts";

/** What of a corpus others may compute on, under its lens; the last table says what stands in the columns of the others. */
export function dataTables(
  model: Reported,
  findings: readonly Finding[],
  texts: ReadonlyMap<string, string>,
): readonly DataTable[] {
  const tables = [
    measurementTable(model),
    positionTable(model),
    claimTable(model),
    findingTable(model, findings, texts),
  ];
  return [...tables, dictionaryOf(tables, withholdingSaid(model.graph))];
}

interface Meaning {
  readonly table: string;
  readonly column: string | null;
  readonly holds: string | null;
  readonly unit: string | null;
  readonly meaning: string;
}

/** What stands in each column of each table, and at the end what is kept out of them all. */
function dictionaryOf(tables: readonly DataTable[], withheld: readonly Text[]): DataTable {
  const rows = [
    ...tables.flatMap(({ name: table, columns }) =>
      columns.map(({ name: column, holds, unit = null, doc: meaning }): Meaning => {
        return { table, column, holds, unit, meaning };
      }),
    ),
    ...withheld.map((text): Meaning => {
      return { table: "all", column: null, holds: null, unit: null, meaning: inEnglish(text) };
    }),
  ];
  return tableOf(
    { name: "dictionary", doc: "One row for each column of the other tables." },
    [
      {
        name: "table",
        holds: "text",
        doc: "The table; `all` where it is true of each.",
        cell: (one) => one.table,
      },
      { name: "column", holds: "text", doc: "The column.", cell: (one) => one.column },
      { name: "holds", holds: "text", doc: "text, number or truth.", cell: (one) => one.holds },
      { name: "unit", holds: "text", doc: "The unit of its numbers.", cell: (one) => one.unit },
      { name: "meaning", holds: "text", doc: "What stands in it.", cell: (one) => one.meaning },
    ],
    rows,
  );
}
