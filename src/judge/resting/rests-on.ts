import type { Id } from "../../base/finding.ts";
import { derive } from "../../derive/derive.ts";
import type { Derivations } from "../../derive/derive.ts";
import { countsUnder, ofThings } from "../../derive/lens.ts";
import type { Lens } from "../../derive/lens.ts";
import type { ComputeMemo, Run } from "../../derive/run.ts";
import type { Graph } from "../../link/graph.ts";
import type { Plugin } from "../../plugin.ts";
import { judge } from "../judge.ts";
import type { Judgement } from "../judge.ts";
import { TRUE, wellFounded } from "../solver/well-founded.ts";

/** For each claim asked about, the artefacts, sources and scholars without which it would not stand. */
export interface Resting {
  readonly restsOn: ReadonlyMap<Id, readonly Id[]>;
  /** Runs that single losses ask for and the memo does not have; until they are there the lists are short. */
  readonly missing: readonly Run[];
}

/** Tries every single loss that could matter to a claim that stands; a claim that does not rests on nothing. */
export function restsOn(
  graph: Graph,
  plugins: readonly Plugin[],
  memo: ComputeMemo,
  lens: Lens,
  present: { readonly derivations: Derivations; readonly judgement: Judgement },
  claims: readonly Id[],
): Resting {
  const { derivations, judgement } = present;
  const standing = claims.filter((claim) => judgement.standings.get(claim) === "stands");
  const wanted = new Map<Id, { readonly claims: Id[]; readonly bearing: Set<Id> }>();
  for (const claim of standing) {
    const cone = below(claim, graph, judgement);
    for (const loss of origins(graph, cone)) {
      const entry = wanted.get(loss) ?? { claims: [], bearing: new Set<Id>() };
      entry.claims.push(claim);
      for (const id of cone) entry.bearing.add(id);
      wanted.set(loss, entry);
    }
  }
  const feeding = feedingOrigins(graph, derivations);
  const found = new Map<Id, Id[]>(claims.map((claim) => [claim, []]));
  const missing = new Map<string, Run>();
  for (const [loss, { claims: concerned, bearing }] of wanted) {
    const under: Lens = { ...lens, without: [...(lens.without ?? []), loss] };
    const touched = [...derivations.byId.keys()].some((id) => bearing.has(id) && feeding.get(id)?.has(loss));
    const left = touched ? derive(graph, plugins, memo, under, (id) => bearing.has(id)) : derivations;
    for (const run of left.missing) if (touched) missing.set(run.key, run);
    if (touched && left.missing.length > 0) continue;
    const stands =
      touched || graph.settings.testimony
        ? standingIn(judge(graph, left, under))
        : standingWithout(graph, judgement, countsUnder(graph, under));
    for (const claim of concerned) if (!stands(claim)) found.get(claim)?.push(loss);
  }
  const restsOn = new Map([...found].map(([claim, losses]) => [claim, partsBeforeWholes(losses, graph)]));
  return { restsOn, missing: [...missing.values()] };
}

const standingIn =
  ({ standings }: Judgement) =>
  (claim: Id): boolean =>
    standings.get(claim) === "stands";

/** Which claims stand when records go and no number changes: the same program, with their atoms held false. */
function standingWithout(
  graph: Graph,
  { compiled }: Judgement,
  counts: (id: Id) => boolean,
): (claim: Id) => boolean {
  const without = new Uint8Array(compiled.program.atomCount);
  for (const [id, atom] of compiled.atoms) {
    const record = graph.records.get(id);
    if (record && record.list !== "claims" && !counts(id)) without[atom] = 1;
  }
  const model = wellFounded(compiled.program, { without });
  return (claim) => model[compiled.atoms.get(claim) ?? -1] === TRUE;
}

/** Where all came from that a derivation could use: only such a loss can change its number. */
function feedingOrigins(graph: Graph, derivations: Derivations): ReadonlyMap<Id, ReadonlySet<Id>> {
  const known = new Map<Id, ReadonlySet<Id>>();
  const of = (id: Id): ReadonlySet<Id> => {
    const had = known.get(id);
    if (had) return had;
    known.set(id, new Set());
    const used = usedBy(id, graph);
    const all = new Set(origins(graph, new Set(used)));
    for (const other of used) {
      if (graph.records.get(other)?.list === "derivations") for (const origin of of(other)) all.add(origin);
    }
    known.set(id, all);
    return all;
  };
  return new Map([...derivations.byId.keys()].map((id) => [id, of(id)]));
}

/** Everything that bears on a claim: premises, inputs, and whatever attacks or defends them, all the way down. */
function below(claim: Id, graph: Graph, { compiled }: Judgement): ReadonlySet<Id> {
  const seen = new Set<Id>([claim]);
  const waiting = [claim];
  const visit = (id: Id): void => {
    if (seen.has(id)) return;
    seen.add(id);
    waiting.push(id);
  };
  const place = new Map(compiled.arguments.map((argument, at) => [argument.id, at]));
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    for (const one of [...(compiled.pro.get(at) ?? []), ...(compiled.contra.get(at) ?? [])]) {
      visit(compiled.arguments[one]?.id ?? at);
    }
    const argued = place.get(at);
    if (argued !== undefined) {
      const argument = compiled.arguments[argued];
      for (const premise of argument?.because ?? []) visit(premise);
      if (argument) visit(argument.from);
      for (const attacker of compiled.attackers[argued] ?? []) visit(compiled.arguments[attacker]?.id ?? at);
    }
    const record = graph.records.get(at);
    if (record?.list === "derivations") for (const id of usedBy(at, graph)) visit(id);
  }
  return seen;
}

/** Every measurement or derivation that a derivation could use, whatever the lens. */
function usedBy(derivation: Id, graph: Graph): readonly Id[] {
  const record = graph.records.get(derivation);
  if (record?.list !== "derivations") return [];
  const named = JSON.stringify([record.values.inputs, record.values.parameters ?? null]);
  const things = new Set<Id>();
  for (const match of named.matchAll(/"([^"]+)"/g)) {
    const id = match[1] ?? "";
    const list = graph.records.get(id)?.list;
    if (list === "artefacts") for (const part of graph.withParts(id)) things.add(part);
    else if (list === "measurements" || list === "observations") things.add(id);
    else {
      const other = id.slice(0, Math.max(0, id.lastIndexOf(".")));
      if (graph.records.get(other)?.list === "derivations") things.add(other);
    }
  }
  const measurements = graph
    .list("measurements")
    .filter((one) => things.has(one.values.of) || things.has(one.id));
  const units = graph.settings.units.filter((unit) => named.includes(JSON.stringify(unit.name)));
  return [
    ...measurements.map((one) => one.id),
    ...[...things].filter((id) => graph.records.get(id)?.list === "derivations"),
    ...units.flatMap((unit) => unit.from),
  ];
}

/** Where the records among these came from. */
function origins(graph: Graph, ids: ReadonlySet<Id>): readonly Id[] {
  const found = new Set<Id>();
  for (const id of ids) {
    if (graph.sources.has(id)) found.add(id);
    const record = graph.records.get(id);
    if (!record || record.list === "claims") continue;
    for (const thing of ofThings(record)) {
      for (let at: Id | undefined = thing; at !== undefined; at = graph.wholeOf.get(at)) found.add(at);
    }
    const said = graph.provenance(id);
    for (const origin of [...said.sources, ...said.via, ...said.scholars]) found.add(origin);
  }
  return [...found].filter((id) => graph.records.has(id) || graph.sources.has(id));
}

/** Where a part and its whole would both be named, only the part is. */
function partsBeforeWholes(losses: readonly Id[], graph: Graph): readonly Id[] {
  const wholes = new Set<Id>();
  for (const loss of losses) {
    for (let at = graph.wholeOf.get(loss); at !== undefined; at = graph.wholeOf.get(at)) wholes.add(at);
  }
  return losses.filter((loss) => !wholes.has(loss)).sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
}
