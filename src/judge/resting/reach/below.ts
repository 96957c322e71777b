import type { Id } from "../../../base/finding.ts";
import { gathered } from "../../../base/lists/gathered.ts";
import type { Graph } from "../../../link/graph.ts";
import type { Compiled } from "../../compile.ts";
import { inputsIn } from "./inputs.ts";

/**
 * Everything that bears on a claim, or could under some losses: premises, inputs, whatever attacks or defends them, and
 * numbers and positions that are not arguments now, all the way down.
 */
export function below(claim: Id, graph: Graph, compiled: Compiled): ReadonlySet<Id> {
  const seen = new Set<Id>([claim]);
  const speakers = speakersIn(graph, compiled);
  const inputs = inputsIn(graph);
  // What is visited while it is gone through is gone through in its turn.
  for (const at of seen) {
    for (const one of [...(compiled.pro.get(at) ?? []), ...(compiled.contra.get(at) ?? [])])
      seen.add(compiled.arguments[one]?.id ?? at);
    const record = graph.records.get(at);
    if (record?.list === "claims") {
      for (const { id } of speakers(at)) seen.add(id);
      for (const id of graph.rivalsOf(at)) seen.add(id);
    } else if (record?.list === "derivations") {
      const { records, derivations } = inputs(at);
      for (const id of [...records, ...derivations]) seen.add(id);
    }
    const place = compiled.named.placeOf(at);
    const argument = compiled.arguments[place];
    if (argument === undefined) continue;
    for (const id of [...argument.because, argument.from]) seen.add(id);
    for (const attacker of compiled.attackers[place] ?? []) seen.add(compiled.arguments[attacker]?.id ?? at);
    // Whatever comes to speak of what it argues for or against may conflict with it.
    for (const target of argument.therefore === null ? argument.against : [argument.therefore])
      if (graph.records.get(target)?.list === "claims") seen.add(target);
  }
  return seen;
}

type Speakers = (claim: Id) => readonly { readonly id: Id }[];

const known = new WeakMap<Compiled, Speakers>();

/** Derivations that say something of each claim, and positions on it where these count. */
function speakersIn(graph: Graph, compiled: Compiled): Speakers {
  const had = known.get(compiled);
  if (had) return had;
  const positions = graph.settings.testimony ? graph.list("positions") : [];
  const speakers = gathered([...graph.list("derivations"), ...positions], (one) =>
    one.list === "positions" ? [one.values.claim] : (one.values["bears-on"] ?? []).map(({ claim }) => claim),
  );
  known.set(compiled, speakers);
  return speakers;
}
