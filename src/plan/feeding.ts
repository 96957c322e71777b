import type { Id } from "../base/finding.ts";
import type { Json } from "../base/json.ts";
import { folded } from "../link/dimension.ts";
import type { DerivationRecord, Graph } from "../link/graph.ts";
import type { Examination, SupposedOutcome } from "../link/suppose/examination.ts";
import type { Plugin } from "../plugin.ts";

/** Tells the derivations that what an outcome sees or measures could enter, and those that lean on them. */
export type Feeding = (examination: Examination, outcome: SupposedOutcome) => ReadonlySet<Id>;

/** Prepared once for a graph: which derivations select from which artefacts, and which take whose numbers. */
export function feedingIn(graph: Graph, plugins: readonly Plugin[]): Feeding {
  const selecting = new Map<Id, Id[]>();
  const leaning = new Map<Id, Id[]>();
  const fromAnywhere: Id[] = [];
  const seeing = new Set<Id>();
  const dimensions = new Map<Id, ReadonlySet<string>>();
  for (const derivation of graph.list("derivations")) {
    const observing = inputsOfObservations(derivation, plugins);
    if (observing.length > 0) seeing.add(derivation.id);
    if (observing.some((input) => isSelection(input) && !("of" in input))) fromAnywhere.push(derivation.id);
    dimensions.set(derivation.id, dimensionsIn(graph, derivation.values.inputs));
    for (const text of textsIn([derivation.values.inputs, derivation.values.parameters ?? null])) {
      const list = graph.records.get(text)?.list;
      if (list === "artefacts") append(selecting, text, derivation.id);
      const other = text.slice(0, Math.max(0, text.lastIndexOf(".")));
      if (graph.records.get(other)?.list === "derivations") append(leaning, other, derivation.id);
    }
  }
  const takenFrom = (thing: Id): readonly Id[] => {
    const found: Id[] = [];
    for (let at: Id | undefined = thing; at !== undefined; at = graph.wholeOf.get(at))
      found.push(...(selecting.get(at) ?? []));
    return found;
  };
  return (examination, outcome) => {
    const fed = new Set<Id>();
    for (const { of, dimension } of outcome.measures) {
      const name = folded(graph.dimensionName(dimension));
      for (const id of takenFrom(of)) {
        const asked = dimensions.get(id);
        if (!asked || asked.size === 0 || asked.has(name)) fed.add(id);
      }
    }
    if (outcome.sees.length > 0) {
      for (const id of [...examination.of.flatMap(takenFrom), ...fromAnywhere])
        if (seeing.has(id)) fed.add(id);
    }
    const waiting = [...fed];
    for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
      for (const id of leaning.get(at) ?? []) {
        if (fed.has(id)) continue;
        fed.add(id);
        waiting.push(id);
      }
    }
    return fed;
  };
}

function inputsOfObservations(derivation: DerivationRecord, plugins: readonly Plugin[]): readonly Json[] {
  const plugin = plugins.find((one) => one.id === derivation.values.plugin);
  const given = derivation.values.inputs;
  if (!plugin || !isSelection(given)) return [];
  const names = plugin.inputs.filter((input) => input.kind === "observations").map((input) => input.name);
  return names.flatMap((name) => given[name] ?? []);
}

/** The dimensions that selections ask for, folded; none where one asks for any. */
function dimensionsIn(graph: Graph, inputs: Json): ReadonlySet<string> {
  if (!isSelection(inputs)) return new Set();
  const selections = Object.values(inputs).filter(isSelection);
  const asked = selections.map((one) => [...textsIn(one["dimension"] ?? null)]);
  if (asked.some((names) => names.length === 0)) return new Set();
  return new Set(asked.flat().map((name) => folded(graph.dimensionName(name))));
}

function isSelection(value: Json): value is { readonly [key: string]: Json } {
  return value !== null && typeof value === "object" && !Array.isArray(value);
}

/** Every text in a value, however deep. */
function textsIn(value: Json): ReadonlySet<string> {
  const found = new Set<string>();
  const visit = (one: Json): void => {
    if (typeof one === "string") found.add(one);
    else if (one !== null && typeof one === "object") for (const part of Object.values(one)) visit(part);
  };
  visit(value);
  return found;
}

function append(lists: Map<Id, Id[]>, key: Id, id: Id): void {
  const list = lists.get(key);
  if (list) list.push(id);
  else lists.set(key, [id]);
}
