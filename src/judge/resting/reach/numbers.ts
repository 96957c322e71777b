import type { Id } from "../../../base/finding.ts";
import { distinct } from "../../../base/order.ts";
import { derive } from "../../../derive/derive.ts";
import type { Derived } from "../../../derive/derived/derived.ts";
import { isFor } from "../../../derive/recorded/left-out.ts";
import type { Run } from "../../../derive/run.ts";
import type { Graph } from "../../../link/graph.ts";
import type { Judged } from "../judged.ts";
import { among } from "./among.ts";
import { inputsIn } from "./inputs.ts";
import type { Loss } from "./origins.ts";

/** The numbers of a corpus under losses: recalled anew where a loss takes something that they could use. */
export interface Numbers {
  /** What a derivation gives; the present one where no loss touches it. */
  readonly under: (derivation: Id, losses: readonly Loss[]) => Derived | undefined;
  /** All records and units that it could use, through other derivations too. */
  readonly feeding: (derivation: Id) => Feeding;
  /** Under losses, what makes a computed number what it is: no loss of anything else changes it; null where that is not known. */
  readonly entering: (derivation: Id, losses: readonly Loss[]) => ReadonlySet<Id> | null;
  /** Runs that the numbers asked for would need and the memo does not have. */
  readonly missing: () => readonly Run[];
  /** A name of the number under losses that tells it from others; null where no loss touches what enters it. */
  readonly nameOf: (derivation: Id, losses: readonly Loss[]) => string | null;
}

/** What could go into a number. */
export interface Feeding {
  readonly records: ReadonlySet<Id>;
  readonly units: ReadonlySet<string>;
  /** The derivation itself and those whose numbers it uses, directly or not. */
  readonly through: ReadonlySet<Id>;
  /** Whether all these are measurements. */
  readonly measured: boolean;
}

/** The numbers of what is judged, under any losses besides those of its lens. */
export function numbersOf({ graph, plugins, memo, lens, derivations, judgement }: Judged): Numbers {
  const inputs = inputsIn(graph);
  const fed = new Map<Id, Feeding>();
  const found = new Map<string, Derived | undefined>();
  const missing = new Map<string, Run>();
  const narrowed = new Map<Id, Graph>();

  const feeding = (derivation: Id): Feeding => {
    const had = fed.get(derivation);
    if (had) return had;
    const records = new Set<Id>();
    const units = new Set<string>();
    const through = new Set<Id>([derivation]);
    for (const one of through) {
      const own = inputs(one);
      for (const id of own.records) records.add(id);
      for (const unit of own.units.keys()) units.add(unit);
      for (const other of own.derivations) through.add(other);
    }
    const measured = [...records].every((id) => graph.records.get(id)?.list === "measurements");
    const made = { records, units, through, measured };
    fed.set(derivation, made);
    return made;
  };

  /** What makes a computed number what it is: without any of the rest it is the same. Null where that is not known. */
  const entering = (derivation: Id, numberOf: (id: Id) => Derived | undefined): ReadonlySet<Id> | null => {
    if (!feeding(derivation).measured) return null;
    const all = new Set<Id>([derivation]);
    for (const id of all) {
      if (graph.records.get(id)?.list !== "derivations") continue;
      const now = numberOf(id);
      if (now?.status !== "computed") return null;
      for (const used of now.used) all.add(used);
      // A bound that is not taken still stands before the readings that come after it.
      for (const one of now.leftOut) if (isFor(one.why, "bound")) all.add(one.id);
    }
    return all;
  };

  /** Of the losses those that touch what enters a number, and what enters it instead, and so on. */
  const touching = (derivation: Id, losses: readonly Loss[]): readonly Loss[] => {
    const { records, units } = feeding(derivation);
    const fed = losses.filter(
      (loss) => loss.records.some((id) => records.has(id)) || loss.units.some((unit) => units.has(unit)),
    );
    for (let chosen: readonly Loss[] = []; ;) {
      if (chosen.length === fed.length) return fed;
      const enters = entering(derivation, (id) => recalled(id, chosen));
      if (enters === null) return fed;
      const more = fed.filter(
        (loss) =>
          chosen.includes(loss) ||
          loss.units.some((unit) => units.has(unit)) ||
          loss.records.some((id) => enters.has(id)),
      );
      if (more.length === chosen.length) return chosen;
      chosen = more;
    }
  };

  const keyOf = (derivation: Id, losses: readonly Loss[]): string => {
    const { records, units } = feeding(derivation);
    const gone = losses.flatMap((loss) => loss.records).filter((id) => records.has(id));
    const unitsGone = losses.flatMap((loss) => loss.units).filter((unit) => units.has(unit));
    return JSON.stringify([derivation, distinct(gone), distinct(unitsGone)]);
  };

  const recalled = (derivation: Id, losses: readonly Loss[]): Derived | undefined => {
    if (losses.length === 0) return derivations.byId.get(derivation);
    const key = keyOf(derivation, losses);
    if (found.has(key)) return found.get(key);
    const without = [...(lens.without ?? []), ...losses.flatMap((loss) => loss.alike[0] ?? [])];
    const left = derive(near(derivation), plugins, memo, { ...lens, without }, [derivation]);
    for (const run of left.missing) missing.set(run.key, run);
    const derived = left.byId.get(derivation);
    found.set(key, derived);
    return derived;
  };

  /** The same graph with no measurements but those that could go into a number. */
  const near = (derivation: Id): Graph => {
    const had = narrowed.get(derivation);
    if (had) return had;
    const { records, measured } = feeding(derivation);
    const kept = among("measurements", records, graph, judgement.compiled);
    const list = ((name) => (name === "measurements" ? kept : graph.list(name))) as Graph["list"];
    const made = measured ? { ...graph, list } : graph;
    narrowed.set(derivation, made);
    return made;
  };

  const under = (derivation: Id, losses: readonly Loss[]): Derived | undefined =>
    recalled(derivation, touching(derivation, losses));
  return {
    under,
    feeding,
    entering: (derivation, losses) => entering(derivation, (id) => under(id, losses)),
    missing: () => [...missing.values()],
    nameOf: (derivation, losses) => {
      const enters = entering(derivation, (id) => derivations.byId.get(id));
      const { records, units } = feeding(derivation);
      const touches = (loss: Loss): boolean =>
        loss.units.some((unit) => units.has(unit)) || loss.records.some((id) => (enters ?? records).has(id));
      return losses.some(touches) ? keyOf(derivation, losses) : null;
    },
  };
}
