import type { Id } from "../../../base/finding.ts";
import { gathered } from "../../../base/lists/gathered.ts";
import { isList } from "../../../base/json.ts";
import type { Json } from "../../../base/json.ts";
import { remembered } from "../../../base/text/remembered.ts";
import { measuredOn, texts } from "../../../derive/prepare/select.ts";
import { asMap } from "../../../derive/prepare/settings.ts";
import { seenOf } from "../../../derive/recorded/seen.ts";
import { folded } from "../../../link/dimension.ts";
import type { DerivationRecord, Graph, Linked } from "../../../link/graph.ts";
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
  const dated = datedIn(graph);
  const made = remembered((id) => {
    const record = graph.records.get(id);
    return record?.list === "derivations"
      ? inputsOf(record, graph, dated)
      : { records: [], derivations: [], units: new Map() };
  });
  known.set(graph, made);
  return made;
}

/** What dates each artefact against others. */
type Dated = (thing: Id) => readonly Linked<"relations">[];

const datedIn = (graph: Graph): Dated =>
  gathered(graph.list("relations"), ({ values }) =>
    [values.earlier, values.later, ...(values["same-time"] ?? [])].filter((end) => end !== undefined),
  );

function inputsOf({ values }: DerivationRecord, graph: Graph, dated: Dated): Inputs {
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
        if (asked.length === 0 || "feature" in selection) {
          take(seenOf(graph, { things: [thing], features: null }).map(({ record }) => record.id));
          take(dated(thing).map(({ id }) => id));
        }
        const fitting = measuredOn([thing], graph).filter(
          ({ name }) => asked.length === 0 || dimensions.includes(name),
        );
        take(fitting.map(({ record }) => record.id));
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
