import type { Id } from "../../../base/finding.ts";
import { byText, distinct } from "../../../base/order.ts";
import { lostWith } from "../../../derive/lens.ts";
import type { Graph } from "../../../link/graph.ts";
import { inputsIn } from "./inputs.ts";

/** Losses that take the same from what bears on a claim: whichever is suffered, the same is left. */
export interface Loss {
  /** Artefacts, sources and scholars, in order. */
  readonly alike: readonly Id[];
  /** The records that go with it. */
  readonly records: readonly Id[];
  /** The names of the units that go with it. */
  readonly units: readonly string[];
}

/** Every loss that takes anything of these records, those alike together, in the order of their first id. */
export function lossesAmong(
  graph: Graph,
  ids: ReadonlySet<Id>,
  counts: (id: Id) => boolean,
): readonly Loss[] {
  const inputs = inputsIn(graph);
  const taken = new Map<Id, { readonly records: Set<Id>; readonly units: Set<string> }>();
  const takes = (origin: Id): { readonly records: Set<Id>; readonly units: Set<string> } => {
    const had = taken.get(origin) ?? { records: new Set<Id>(), units: new Set<string>() };
    taken.set(origin, had);
    return had;
  };
  for (const id of ids) {
    if (!counts(id)) continue;
    const record = graph.records.get(id);
    if (record?.list === "derivations") {
      for (const [unit, sources] of inputs(id).units)
        for (const source of sources) takes(source).units.add(unit);
    }
    if (record) for (const origin of lostWith(graph, record)) takes(origin).records.add(id);
  }
  const alike = new Map<
    string,
    { readonly ids: Id[]; readonly records: readonly Id[]; readonly units: readonly string[] }
  >();
  for (const [origin, { records, units }] of taken) {
    if (!graph.records.has(origin) && !graph.sources.has(origin)) continue;
    const all = { records: distinct(records), units: distinct(units) };
    const key = JSON.stringify(all);
    const had = alike.get(key);
    if (had) had.ids.push(origin);
    else alike.set(key, { ids: [origin], ...all });
  }
  return [...alike.values()]
    .map(({ ids: those, records, units }) => ({ alike: those.toSorted(byText), records, units }))
    .sort((a, b) => byText(a.alike[0] ?? "", b.alike[0] ?? ""));
}
