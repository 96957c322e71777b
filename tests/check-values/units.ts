import { fromSI, toSI, type Unit } from "../../src/base/unit/unit.ts";
import { unitTable } from "../../src/base/unit/unit-table.ts";
import { unitById } from "../../src/base/unit/units-builtin.ts";
import type { Methods } from "./case.ts";

/** The names that the case files have for SI units; a kind that is not here has none of its own. */
const siUnits: Readonly<Record<string, string>> = {
  length: "m",
  mass: "kg",
  angle: "radian",
  time: "s",
  area: "m^2",
  volume: "m^3",
};
const table = unitTable([]);

/** The case files name units by the identifiers of the published table, else by symbol or name. */
function unitOf(text: string): Unit | undefined {
  return unitById(text) ?? table.find(text) ?? undefined;
}

/** `units.toSI`: the size of each unit in SI; a unit that the program does not know has an error in its place. */
function sizes(input: unknown): unknown {
  const { units: names } = input as { units: readonly string[] };
  return {
    values: names.map((name) => {
      const unit = unitOf(name);
      if (unit === undefined) return { unit: name, error: "unknown-unit" };
      return { unit: name, si: toSI(1, unit), siUnit: siUnits[unit.kind] };
    }),
  };
}

/** `units.convert`: a sum such as `11 romanfoot + 7 romandigit` in another unit of the same kind. */
function convert(input: unknown): unknown {
  const { expression, to } = input as { expression: string; to: string };
  const target = unitOf(to);
  if (target === undefined) return { error: "unknown-unit", unit: to };
  let sum = 0;
  for (const term of expression.split("+")) {
    const [, number, name = ""] = /^\s*(\S+)\s+(.+?)\s*$/.exec(term) ?? [];
    const unit = unitOf(name);
    if (unit === undefined) return { error: "unknown-unit", unit: name };
    if (unit.kind !== target.kind) return { error: "mixed-dimensions" };
    sum += toSI(Number(number), unit);
  }
  return { value: fromSI(sum, target) };
}

/** The methods of units. */
export const units: Methods = { "units.toSI": sizes, "units.convert": convert };
