import type { Computation, Figure, Json } from "../../src/plugin.ts";

/** A dimension's ratio as the figure and the sentence read it. */
export interface Row {
  readonly name: string;
  readonly ratio: number;
  readonly u: number;
  readonly departs: boolean;
}

/** The rows of a computation's plot data. */
export function rowsOf(computation: Computation): readonly Row[] {
  const rows = fieldsOf(computation.data)["rows"];
  return (Array.isArray(rows) ? (rows as readonly Json[]) : []).map(fieldsOf).map((row) => ({
    name: typeof row["name"] === "string" ? row["name"] : "",
    ratio: typeof row["ratio"] === "number" ? row["ratio"] : 0,
    u: typeof row["u"] === "number" ? row["u"] : 0,
    departs: row["departs"] === true,
  }));
}

/** The ratio of each homologous dimension with its 95 % interval, and the common factor through them. */
export function scalingFigure(computation: Computation): Figure {
  const rows = rowsOf(computation);
  const labels = rows.map((row) => (row.departs ? `${row.name} (departs)` : row.name));
  return {
    title: "Homologous dimensions and their common factor",
    x: { label: "dimension", unit: "1" },
    y: { label: "ratio", unit: "1" },
    marks: [
      {
        mark: "bars",
        bars: rows.map((row, at) => ({
          at,
          low: row.ratio * Math.exp(-1.96 * row.u),
          high: row.ratio * Math.exp(1.96 * row.u),
          label: labels[at] ?? "",
        })),
      },
      { mark: "dots", points: rows.map((row, at) => [at, row.ratio] as const), labels },
      { mark: "rule", axis: "y", at: computation.numbers["k"]?.value ?? 0, label: "the common factor" },
    ],
  };
}

function fieldsOf(value: Json | undefined): { readonly [key: string]: Json } {
  return value !== null && typeof value === "object" && !Array.isArray(value)
    ? (value as { readonly [key: string]: Json })
    : {};
}
