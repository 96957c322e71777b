import type { Finding, Id } from "../../../../base/finding.ts";
import { dimensionKinds, namesOf, valueTrouble } from "../../../../link/dimension.ts";
import type { AnyLinked, Graph, Linked } from "../../../../link/graph.ts";
import { inputReferences } from "../../../../link/inputs.ts";
import { nameRecords } from "../../../../link/names/name.ts";
import { partsOf } from "../../../../link/parts.ts";
import { checkReferences } from "../../../../link/references/check.ts";
import type { AnyRecord } from "../../../../read/record.ts";

/**
 * What tying a record to the corpus says about it: what the whole corpus would say once it is among the others, or in the
 * place of one of them, without tying all the others anew.
 */
export function tiedFindings(graph: Graph, record: AnyRecord, instead: Id | null): readonly Finding[] {
  const { sources, spoilt = [], leftOut } = graph;
  const namesake = record.id === null || record.id === instead ? undefined : graph.records.get(record.id);
  const lost = leftOut.filter((one) => one.id === record.id && one.id !== instead);
  const names = nameRecords([...(namesake ? [namesake] : lost), record], sources, spoilt);
  const findings: Finding[] = [...names.findings];
  const linked = [...names.records.values()].find((one) => one.node === record.node);
  if (!linked) return findings;
  const others = [...graph.records.values()].filter((one) => one.id !== instead);
  const all = new Map<Id, AnyLinked>(
    [...others, ...leftOut.filter((one) => one.id !== instead), linked].map((one) => [one.id, one]),
  );
  const known = {
    names: { ...names, records: all },
    sources,
    lost: new Set(leftOut.map((one) => one.id).filter((id) => id !== instead)),
  };
  const checked = checkReferences(linked, known, findings);
  if (checked?.list === "derivations") inputReferences(checked, known, findings);
  if (checked?.list === "measurements") findings.push(...ofValue(graph, checked, instead));
  if (checked?.list === "artefacts") {
    const things = graph.list("artefacts").map((one) => (one.id === instead ? checked : one));
    partsOf(things.includes(checked) ? things : [...things, checked], findings);
  }
  return findings;
}

/** What is wrong with a measurement's value among the others of its dimension. */
function ofValue(graph: Graph, record: Linked<"measurements">, instead: Id | null): readonly Finding[] {
  const { dimensions } = graph.settings;
  const met = graph.list("measurements").map((one) => (one.id === instead ? record : one));
  const all = met.includes(record) ? met : [...met, record];
  const nameOf = namesOf(
    dimensions,
    all.map((one) => one.values.dimension),
  );
  const name = nameOf(record.values.dimension);
  const same = all.filter((one) => nameOf(one.values.dimension) === name);
  const anySign = dimensions.some((one) => one.anySign && one.name === name);
  return [
    valueTrouble(record, name, dimensionKinds(dimensions, same, nameOf).get(name), anySign) ?? [],
  ].flat();
}
