import type { Id } from "../../../base/finding.ts";
import { isList } from "../../../base/json.ts";
import type { Json } from "../../../base/json.ts";
import { remembered } from "../../../base/text/remembered.ts";
import { texts } from "../../../derive/prepare/select.ts";
import { asMap } from "../../../derive/prepare/settings.ts";
import { folded } from "../../../link/dimension.ts";
import type { DerivationRecord, Graph } from "../../../link/graph.ts";
import { derivationOf } from "../../../link/inputs.ts";

/** All that a derivation could use under any losses: never too little. */
export interface Inputs {
  /** Measurements, observations and relations. */
  readonly records: readonly Id[];
  readonly derivations: readonly Id[];
  /** Sources that gave the units it is computed with, by the name of the unit. */
  readonly units: ReadonlyMap<string, readonly Id[]>;
}

const known = new WeakMap<Graph, (derivation: Id) => Inputs>();

/** What the derivations of a graph could use. */
export function inputsIn(graph: Graph): (derivation: Id) => Inputs {
  const had = known.get(graph);
  if (had) return had;
  const about = aboutIn(graph);
  const made = remembered((id) => {
    const record = graph.records.get(id);
    return record?.list === "derivations"
      ? inputsOf(record, graph, about)
      : { records: [], derivations: [], units: new Map() };
  });
  known.set(graph, made);
  return made;
}

/** What is measured, seen or dated of each artefact. */
interface About {
  readonly measured: (thing: Id) => readonly { readonly id: Id; readonly dimension: string }[];
  readonly others: (thing: Id) => readonly Id[];
}

function aboutIn(graph: Graph): About {
  const nameOf = remembered((written) => folded(graph.dimensionName(written)));
  const measured = new Map<Id, { readonly id: Id; readonly dimension: string }[]>();
  const others = new Map<Id, Id[]>();
  for (const { id, values } of graph.list("measurements")) {
    const one = { id, dimension: nameOf(values.dimension) };
    measured.set(values.of, [...(measured.get(values.of) ?? []), one]);
  }
  for (const { id, values } of graph.list("observations"))
    for (const thing of values.of) others.set(thing, [...(others.get(thing) ?? []), id]);
  for (const { id, values } of graph.list("relations"))
    for (const end of [values.earlier, values.later, ...(values["same-time"] ?? [])])
      if (end !== undefined) others.set(end, [...(others.get(end) ?? []), id]);
  return { measured: (thing) => measured.get(thing) ?? [], others: (thing) => others.get(thing) ?? [] };
}

function inputsOf({ values }: DerivationRecord, graph: Graph, about: About): Inputs {
  const records = new Set<Id>();
  const derivations = new Set<Id>();
  const settings = Object.values(asMap(values.parameters));
  // A dimension may also be named by a setting.
  const named = settings.flatMap((value) => (typeof value === "string" ? [value] : []));
  const number = (value: Json): void => {
    const reference = asMap(value)["number"];
    if (typeof reference === "string") derivations.add(derivationOf(reference));
  };
  const take = (ids: readonly Id[]): void => {
    for (const id of ids) if (graph.records.has(id)) records.add(id);
  };
  for (const value of settings) number(value);
  for (const value of Object.values(asMap(values.inputs))) {
    number(value);
    if (typeof value === "string") take([value]);
    else if (isList(value)) take(value.flatMap(texts));
    else selected(asMap(value));
  }
  if (values.plugin === "chronology") take(graph.list("relations").map(({ id }) => id));

  function selected(selection: { readonly [key: string]: Json }): void {
    const wholes = texts(selection["of"]);
    const asked = texts(selection["dimension"]);
    const dimensions = [...asked, ...named].map((name) => folded(graph.dimensionName(name)));
    if (wholes.length === 0 && asked.length === 0) take(graph.list("observations").map(({ id }) => id));
    for (const whole of wholes) {
      for (const thing of graph.withParts(whole)) {
        if (asked.length === 0 || "feature" in selection) take(about.others(thing));
        const fitting = about.measured(thing);
        take(
          fitting
            .filter((one) => asked.length === 0 || dimensions.includes(one.dimension))
            .map(({ id }) => id),
        );
      }
    }
  }
  const units = named.flatMap((name) => graph.settings.quantities.units.find(name)?.name ?? []);
  const own = graph.settings.units.filter((unit) => units.includes(unit.name));
  return {
    records: [...records],
    derivations: [...derivations],
    units: new Map(own.map((unit) => [unit.name, unit.from])),
  };
}
