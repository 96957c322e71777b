import { measuredOf } from "../../../derive/prepare/select.ts";
import type { Quantity, QuantityKind } from "../../../base/quantity.ts";
import type { MeasurementRecord } from "../../../link/graph.ts";
import { labelOf } from "../../../link/names/label.ts";
import { wholeU } from "../../artefacts/si-words.ts";
import type { Reported } from "../../report/report.ts";
import { shownUnder, withheldIn } from "../../withhold.ts";
import { namesOf, sourceColumns, yearIn } from "./sources.ts";
import { tableOf } from "./table.ts";
import type { ColumnOf, DataTable } from "./table.ts";

/** The signs of the SI units that values are given in. */
const signs: Readonly<Record<QuantityKind, string>> = {
  length: "m",
  mass: "kg",
  angle: "rad",
  time: "s",
  area: "m2",
  volume: "m3",
  count: "1",
  number: "1",
};

interface Row extends MeasurementRecord {
  readonly si: Quantity;
}

/** Every measurement that may be shown: as printed, and in SI as a computation takes it. */
export function measurementTable(model: Reported): DataTable {
  const { graph } = model;
  const shown = shownUnder(model);
  const rows = graph
    .list("measurements")
    .filter(({ id }) => shown(id))
    .map((record): Row => ({ ...record, si: measuredOf(record, graph).quantity }));
  return tableOf(
    { name: "measurements", doc: "One row for each measurement, as it was printed and in SI units." },
    [...thing(model), ...figure, ...taking(model)],
    rows,
  );
}

function thing({ graph, judgement }: Reported): readonly ColumnOf<Row>[] {
  return [
    { name: "id", holds: "text", doc: "The name of the record in the corpus.", cell: ({ id }) => id },
    {
      name: "artefact",
      holds: "text",
      doc: "The id of the thing measured.",
      cell: ({ values }) => values.of,
    },
    {
      name: "artefact-name",
      holds: "text",
      doc: "What the thing is called.",
      cell: ({ values }) => labelOf(graph, values.of),
    },
    {
      name: "dimension",
      holds: "text",
      doc: "What was measured, by one name for all its spellings.",
      cell: ({ values }) => graph.dimensionName(values.dimension),
    },
    {
      name: "between",
      holds: "text",
      doc: "The landmarks it was measured between.",
      cell: ({ values }) => values.between ?? null,
    },
    {
      name: "standing",
      holds: "text",
      doc: "What follows of it from the record: stands, open or falls.",
      cell: ({ id }) => judgement.standings.get(id) ?? null,
    },
  ];
}

const figure: readonly ColumnOf<Row>[] = [
  {
    name: "original",
    holds: "text",
    doc: "The figure with its unit, letter for letter as recorded; in CSV, as any text, after an apostrophe where a spreadsheet would take it for a formula.",
    cell: ({ values }) => values.value.text,
  },
  {
    name: "original-unit",
    holds: "text",
    doc: "The unit of that figure; 1 for counts and pure numbers.",
    cell: ({ values }) => values.value.unit,
  },
  {
    name: "form",
    holds: "text",
    doc: "value, approximate, range, at-least or at-most; a preserved size is an at-least, and where it is an at-most itself it bounds what is left and not the original; a bound is never a value.",
    cell: ({ si }) => si.form,
  },
  {
    name: "value",
    holds: "number",
    doc: "The figure in the SI unit of its kind: the value, the middle of a range, or the bound.",
    unit: "as si-unit says",
    cell: ({ si }) => si.value,
  },
  {
    name: "si-unit",
    holds: "text",
    doc: "m, kg, rad, s, m2, m3, or 1 for counts and pure numbers.",
    cell: ({ si }) => signs[si.kind],
  },
  {
    name: "standard-uncertainty",
    holds: "number",
    doc: "One standard uncertainty of the value, errors that it shares with others among it; empty for a bound, and for a spread, whose ends are no error.",
    unit: "as si-unit says",
    cell: ({ si, values }) => (values.spread === true ? null : wholeU(si)),
  },
  {
    name: "low",
    holds: "number",
    doc: "The lower limit that the figure itself states; empty where it is open.",
    unit: "as si-unit says",
    cell: ({ si }) => si.low,
  },
  {
    name: "high",
    holds: "number",
    doc: "The upper limit that the figure itself states; empty where it is open.",
    unit: "as si-unit says",
    cell: ({ si }) => si.high,
  },
];

function taking({ graph }: Reported): readonly ColumnOf<Row>[] {
  const withheld = withheldIn(graph);
  return [
    {
      name: "state",
      holds: "text",
      doc: "complete, preserved (of the original at least so much is left) or reconstructed.",
      cell: ({ values }) => values.state ?? "complete",
    },
    {
      name: "basis",
      holds: "text",
      doc: "What it was taken from: autopsy, cast, replica, scan, photograph, drawing or report.",
      cell: ({ values }) => values.basis ?? null,
    },
    {
      name: "instrument",
      holds: "text",
      doc: "What it was measured with.",
      cell: ({ values }) => values.instrument ?? null,
    },
    {
      name: "n",
      holds: "number",
      doc: "How many things or readings it sums up.",
      cell: ({ values }) => values.n ?? null,
    },
    {
      name: "spread",
      holds: "truth",
      doc: "Whether it spans smallest to largest of several things, and is no error of one.",
      cell: ({ values }) => values.spread ?? false,
    },
    {
      name: "repeats",
      holds: "text",
      doc: "The source or the measurement that it copies; it then counts for nothing of its own.",
      cell: ({ values: { repeats } }) => (repeats === undefined || withheld(repeats) ? null : repeats),
    },
    {
      name: "by",
      holds: "text",
      doc: "Who measured.",
      cell: ({ id }) => namesOf(graph, graph.provenance(id).scholars),
    },
    {
      name: "year",
      holds: "text",
      doc: "When it was measured, else when it was in print, in EDTF: -0479 is 480 BC.",
      cell: ({ id, values }) => yearIn(values.year ?? graph.provenance(id).year),
    },
    ...sourceColumns(graph),
  ];
}
