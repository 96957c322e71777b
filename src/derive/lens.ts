import type { Id } from "../base/finding.ts";
import type { AnyLinked, Graph } from "../link/graph.ts";
import type { Supposition } from "../link/suppose/supposition.ts";
import type { UnitValue } from "../plugin.ts";

/** Another reading than the one a derivation takes by itself: a source's throughout, or one measurement's. */
export interface Choice {
  readonly derivation: Id;
  /** A source whose readings are taken wherever it has one. */
  readonly prefer?: Id;
  /** A measurement taken instead of those of the same dimension. */
  readonly use?: Id;
  /** Measurements left out, as if the selection named them in `without`. */
  readonly without?: readonly Id[];
  /** At most so many sets are drawn, where any are. */
  readonly draws?: number;
  /** Another size of the unit that is tested, and where that is from. */
  readonly unit?: UnitValue & { readonly source: string };
  /** Measurements that are written in a unit are read with another size of it, and where that is from. */
  readonly written?: { readonly unit: string; readonly as: UnitValue & { readonly source: string } };
}

/** The one way to ask what if: a year, a loss, another choice, a supposed outcome. */
export interface Lens {
  /** Astronomical year: what was in print by its end. */
  readonly asOf?: number;
  /** Artefacts, sources and scholars, without what came from them. */
  readonly without?: readonly Id[];
  readonly instead?: readonly Choice[];
  /** Put into the graph itself before anything is derived from it. */
  readonly suppose?: Supposition;
}

/** A lens without its supposition: the record as it is. */
export function unsupposed(given: Lens): Lens {
  const { suppose: _, ...lens } = given;
  return lens;
}

/** Whether a lens changes nothing of the record as it is. */
export function isPlain({ asOf, without, instead, suppose }: Lens): boolean {
  return asOf === undefined && suppose === undefined && !without?.length && !instead?.length;
}

/** Lists whose records go when what they came from is lost. */
const fromSources: readonly string[] = [
  "observations",
  "measurements",
  "relations",
  "positions",
  "arguments",
];

/** What counts where a lens takes nothing away: everything. */
export const everyRecord = (): boolean => true;

/** Tells which records count under a lens: in print, and not lost. */
export function countsUnder(graph: Graph, lens: Lens): (id: Id) => boolean {
  const lost = new Set(lens.without ?? []);
  const things = new Set<Id>();
  for (const id of lost) {
    if (graph.records.get(id)?.list === "artefacts") for (const part of graph.withParts(id)) things.add(part);
  }
  const { asOf } = lens;
  if (asOf === undefined && lost.size === 0) return everyRecord;
  return (id) => {
    const record = graph.records.get(id);
    if (!record) return false;
    const said = graph.provenance(id);
    if (asOf !== undefined && said.year !== null && said.year > asOf) return false;
    if (lost.size === 0) return true;
    if (things.size > 0 && ofThings(record).some((thing) => things.has(thing))) return false;
    if (!fromSources.includes(record.list)) return true;
    return ![...said.sources, ...said.via, ...said.scholars].some((origin) => lost.has(origin));
  };
}

/** The artefacts that an observation or measurement is of. */
export function ofThings(record: AnyLinked): readonly Id[] {
  if (record.list === "observations") return record.values.of;
  return record.list === "measurements" ? [record.values.of] : [];
}

/** The artefacts, sources and scholars any of which takes a record away when it is lost. */
export function lostWith(graph: Graph, record: AnyLinked): readonly Id[] {
  const found = new Set<Id>();
  for (const thing of ofThings(record)) {
    for (let at: Id | undefined = thing; at !== undefined; at = graph.wholeOf.get(at)) found.add(at);
  }
  if (fromSources.includes(record.list)) {
    const said = graph.provenance(record.id);
    for (const origin of [...said.sources, ...said.via, ...said.scholars]) found.add(origin);
  }
  return [...found];
}
