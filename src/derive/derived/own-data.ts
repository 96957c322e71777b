import type { Id } from "../../base/finding.ts";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { DerivationRecord, Graph } from "../../link/graph.ts";
import type { Plugin } from "../../plugin.ts";
import { foundInTheseData } from "../prepare/settings.ts";
import type { Prepared } from "../prepare/prepare.ts";

/** Why a derivation may not test what it was given on these data: it was found in them, as a unit or by another derivation. */
export function testedOnItself(
  graph: Graph,
  plugin: Plugin | undefined,
  { values }: DerivationRecord,
  { units, used }: Pick<Prepared, "units" | "used">,
  usedBy: (derivation: Id) => readonly Id[],
): Text | null {
  return (
    unitFromTheseData(graph, units, used) ??
    foundInTheseData(plugin, values.parameters, used, { usedBy, dataOf: (id) => dataOf(graph, id) })
  );
}

/** Why one of some units may not be tested on these data: it was found in them, or named by a source that measured them. */
export function unitFromTheseData(graph: Graph, units: readonly string[], used: readonly Id[]): Text | null {
  for (const unit of graph.settings.units.filter((one) => units.includes(one.name))) {
    const found = new Set(unit.foundIn.flatMap((thing) => graph.withParts(thing)));
    const overlapping = used.some((id) => {
      const record = graph.records.get(id);
      const thing = record?.list === "measurements" ? record.values.of : id;
      return found.has(thing) || graph.provenance(id).sources.some((source) => unit.from.includes(source));
    });
    if (overlapping) return say`The unit ${unit.name} was found in these data, expected one known beforehand`;
  }
  return null;
}

/** What is measured, whoever measured it; any other evidence by its id. */
function dataOf(graph: Graph, id: Id): string {
  const record = graph.records.get(id);
  if (record?.list !== "measurements") return id;
  const { of, dimension, between } = record.values;
  return [of, graph.dimensionName(dimension), between ?? ""].join("\n");
}
