import { parseQuantity } from "../../base/quantity/quantity-text.ts";
import type { Quantity } from "../../base/quantity.ts";
import type { QuantityContext } from "../../base/quantity/quantity-text.ts";
import { unitTable } from "../../base/unit/unit-table.ts";
import type { UnitTable } from "../../base/unit/unit-table.ts";
import type { Graph, MeasurementRecord } from "../../link/graph.ts";
import type { Choice } from "../lens.ts";

type Written = NonNullable<Choice["written"]>;

const tables = new WeakMap<Written, UnitTable>();

/** The names of the units that a measurement is written in, as far as it is known. */
export function unitsOf({ values: { value } }: MeasurementRecord): readonly string[] {
  const shared = value.shared.flatMap(({ with: cause }) =>
    cause.startsWith("unit:") ? [cause.slice("unit:".length)] : [],
  );
  return [...new Set([value.unit, ...shared])];
}

/**
 * A measurement read anew, with what it was rounded to, by the sizes that choices give the unit it is written in; itself
 * where they give none.
 */
export function rereadIn(
  record: MeasurementRecord,
  graph: Graph,
  choices: readonly Choice[],
): MeasurementRecord {
  const written = choices.find((one) => one.written && unitsOf(record).includes(one.written.unit))?.written;
  if (written === undefined) return record;
  const { coverage, value, "to-nearest": nearest } = record.values;
  const context: QuantityContext = {
    ...graph.settings.quantities,
    units: tableWith(graph, written),
    ...(coverage === 1 || coverage === 2 ? { coverage } : {}),
    ...(record.file.endsWith(".csv") ? { decimal: graph.settings.decimal } : {}),
  };
  const again = (quantity: Quantity): Quantity => {
    const read = parseQuantity(quantity.text, context);
    return "ok" in read && read.ok.kind === quantity.kind ? read.ok : quantity;
  };
  const rounded = nearest === undefined ? {} : { "to-nearest": again(nearest) };
  return { ...record, values: { ...record.values, value: again(value), ...rounded } };
}

/** The units of the corpus, one of them of another size and under all its names. */
function tableWith(graph: Graph, written: Written): UnitTable {
  const known = tables.get(written);
  if (known) return known;
  const { unit, as } = written;
  const own = graph.settings.units;
  const table = unitTable([
    ...own.flatMap((one) => (one.name === unit ? [{ ...one, size: as.size, u: as.u }] : [])),
    ...own.filter((one) => one.name !== unit),
  ]);
  tables.set(written, table);
  return table;
}
