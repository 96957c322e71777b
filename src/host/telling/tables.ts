import { textsOf } from "../../read/source-file.ts";
import { dataTables } from "../../show/telling/tables/tables.ts";
import { csvOf } from "../../write/tables/csv.ts";
import type { Kind } from "./kind.ts";

/** Measurements, positions, claims and findings as rows, with what each column holds. */
export const tables: Kind = {
  doc: "measurements, positions, claims and findings as rows, with what each column holds",
  formats: ["csv", "xlsx"],
  options: [],
  several: true,
  reach: {},
  make: async ({ model, findings, files }, format, name) => {
    const texts = textsOf(files);
    const made = dataTables(model, findings, texts);
    if (format === "csv") return made.map((one) => ({ path: `${one.name}.csv`, content: csvOf(one) }));
    const { workbookOf } = await import("../../write/office/sheets/workbook.ts");
    return [{ path: `${name}.xlsx`, content: await workbookOf(made) }];
  },
};
