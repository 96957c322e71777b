import type { Id } from "../base/finding.ts";
import type { Graph } from "../link/graph.ts";
import type { Plugin } from "../plugin.ts";
import { bearingOn } from "./bearing.ts";
import type { Bearing } from "./bearing.ts";
import { derive } from "./derive.ts";
import type { Derived } from "./derive.ts";
import type { Choice, Lens } from "./lens.ts";
import type { ComputeMemo, Run } from "./run.ts";
import { anotherTaken } from "./select.ts";

/** What is needed to compute a derivation again with other readings. */
export interface Bench {
  readonly graph: Graph;
  readonly plugins: readonly Plugin[];
  readonly memo: ComputeMemo;
  readonly lens: Lens;
}

/** A derivation under another choice of readings, and what it then says of claims where that is something else. */
export interface Trial {
  readonly choice: Choice;
  /** Null while its outcome is not in the memo. */
  readonly other: Derived | null;
  readonly missing: readonly Run[];
  /** By claim; `says nothing of` where the derivation would then be refused or fail. */
  readonly turned: ReadonlyMap<Id, Bearing | "says nothing of">;
}

/**
 * The other choices a computed derivation leaves: each source that has a reading where there are several, throughout,
 * and each single such reading. Readings that do not stand are no choice.
 */
export function choicesFor(graph: Graph, derived: Derived, stands: (id: Id) => boolean): readonly Choice[] {
  if (derived.status !== "computed" || graph.records.get(derived.id)?.list !== "derivations") return [];
  const alternatives = [
    ...derived.merged.flat(),
    ...derived.leftOut.filter((one) => one.why === anotherTaken).map((one) => one.id),
  ].filter(stands);
  const sources = new Set(alternatives.flatMap((id) => graph.provenance(id).sources.slice(0, 1)));
  return [
    ...[...sources].map((prefer) => ({ derivation: derived.id, prefer })),
    ...alternatives.map((use) => ({ derivation: derived.id, use })),
  ];
}

/** A derivation that bears on something, tried with every other choice of readings. */
export function trialsOf(bench: Bench, derived: Derived, stands: (id: Id) => boolean): readonly Trial[] {
  if (derived.bearings.length === 0) return [];
  return choicesFor(bench.graph, derived, stands).map((choice) => tried(bench, derived, choice));
}

function tried({ graph, plugins, memo, lens }: Bench, derived: Derived, choice: Choice): Trial {
  const asked = { ...lens, instead: [...(lens.instead ?? []), choice] };
  const { byId, missing } = derive(graph, plugins, memo, asked, (one) => one === derived.id);
  const other = byId.get(derived.id) ?? null;
  if (other === null || other.status === "pending") {
    const own = missing.filter((run) => other?.run?.key === run.key);
    return { choice, other: null, missing: own, turned: new Map() };
  }
  return { choice, other, missing: [], turned: turnedBy(derived, other) };
}

function turnedBy(one: Derived, other: Derived): Trial["turned"] {
  const claims = [...new Set(one.bearings.map((bearing) => bearing.claim))];
  return new Map(
    claims.flatMap((claim) => {
      const now = bearingOn(other.bearings, claim) ?? ("says nothing of" as const);
      return now === bearingOn(one.bearings, claim) ? [] : [[claim, now] as const];
    }),
  );
}
