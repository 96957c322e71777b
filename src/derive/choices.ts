import type { Id } from "../base/finding.ts";
import type { Unit } from "../base/unit/unit.ts";
import type { Graph } from "../link/graph.ts";
import type { Plugin } from "../plugin.ts";
import { bearingOn } from "./bearing.ts";
import type { Bearing } from "./bearing.ts";
import { derive } from "./derive.ts";
import { unitFromTheseData } from "./derived/own-data.ts";
import type { Derived } from "./derived/derived.ts";
import type { Choice, Lens } from "./lens.ts";
import { isFor } from "./recorded/left-out.ts";
import type { ComputeMemo, Run } from "./run.ts";
import { drawsIn, fewDraws } from "./trials/draws.ts";
import { leavingsOf } from "./trials/leave-out.ts";
import type { Leaving } from "./trials/leave-out.ts";
import { isNearLimit } from "./trials/near.ts";
import { unitsOf } from "./trials/reread.ts";
import { variantsOf } from "./trials/unit-variants.ts";
import { sameAsBefore, signatureOf } from "./trials/remembered.ts";

/** What is needed to compute a derivation again with other readings. */
export interface Bench {
  readonly graph: Graph;
  readonly plugins: readonly Plugin[];
  readonly memo: ComputeMemo;
  readonly lens: Lens;
}

/** What a derivation says of claims when it is computed otherwise, where that is something else. */
export interface Turned {
  /** Null while its outcome is not in the memo. */
  readonly other: Derived | null;
  readonly missing: readonly Run[];
  /** By claim; `says nothing of` where the derivation would then be refused or fail. */
  readonly turned: ReadonlyMap<Id, Bearing | "says nothing of">;
}

/** A derivation under another choice of readings. */
export interface Trial extends Turned {
  readonly choice: Choice;
}

/** A derivation without what some of its evidence has in common. */
export interface Loss extends Turned {
  readonly leaving: Leaving;
  /** Sets drawn, where that is fewer than for the number itself. */
  readonly draws: number | null;
}

/** What comes of leaving out one artefact, source or survey after another, and how many were too many to try. */
export interface Losses {
  readonly each: readonly Loss[];
  readonly untried: number;
}

/** Readings that another choice would take, in the order in which they were met. */
function alternativesOf({ merged, leftOut }: Derived): readonly Id[] {
  return [...merged.flat(), ...leftOut.filter((one) => isFor(one.why, "anotherTaken")).map((one) => one.id)];
}

function isComputed(graph: Graph, { id, status }: Derived): boolean {
  return status === "computed" && graph.records.get(id)?.list === "derivations";
}

/**
 * The other choices a computed derivation leaves: each other size of its unit and of those its measurements are written
 * in, each source that has a reading where there are several, throughout, and each single such reading. Readings that do
 * not stand are no choice.
 */
export function choicesFor(graph: Graph, derived: Derived, stands: (id: Id) => boolean): readonly Choice[] {
  if (!isComputed(graph, derived)) return [];
  const alternatives = alternativesOf(derived).filter(stands);
  const written = writtenIn(graph, [...derived.used, ...alternatives]);
  const tested = unitsFor(graph, derived);
  const sources = new Set(alternatives.flatMap((id) => graph.provenance(id).sources.slice(0, 1)));
  return [
    ...tested.map((unit) => {
      const own = testedIn(derived);
      const also = own !== null && written.includes(own) ? { written: { unit: own, as: unit } } : {};
      return { derivation: derived.id, unit, ...also };
    }),
    ...written
      .filter((unit) => tested.length === 0 || unit !== testedIn(derived))
      .flatMap((unit) =>
        variantsOf(graph, unit).map((as) => ({ derivation: derived.id, written: { unit, as: sizeOf(as) } })),
      ),
    ...[...sources].map((prefer) => ({ derivation: derived.id, prefer })),
    ...alternatives.map((use) => ({ derivation: derived.id, use })),
  ];
}

/** Other sizes of the unit tested, as far as they were not found in these very data. */
function unitsFor(graph: Graph, derived: Derived): readonly NonNullable<Choice["unit"]>[] {
  const tested = testedIn(derived);
  if (tested === null) return [];
  return variantsOf(graph, tested)
    .filter(({ name }) => unitFromTheseData(graph, [name], derived.used) === null || name === tested)
    .map(sizeOf);
}

function testedIn({ run }: Derived): string | null {
  const tested = Object.values(run?.settings ?? {}).find((one) => one.kind === "unit");
  return tested?.kind === "unit" ? tested.value.name : null;
}

function sizeOf({ name, kind, size, u, source }: Unit): NonNullable<Choice["unit"]> {
  return { name, kind, size, u, source };
}

/** The units in which some of the measurements are written. */
function writtenIn(graph: Graph, ids: readonly Id[]): readonly string[] {
  const records = ids.map((id) => graph.records.get(id));
  return [...new Set(records.flatMap((one) => (one?.list === "measurements" ? unitsOf(one) : [])))];
}

/** Readings that would be a choice if they stood. */
export function beatenChoices(graph: Graph, derived: Derived, stands: (id: Id) => boolean): readonly Id[] {
  return isComputed(graph, derived) ? alternativesOf(derived).filter((id) => !stands(id)) : [];
}

/** A derivation that bears on something, tried with every other choice of readings. */
export function trialsOf(bench: Bench, derived: Derived, stands: (id: Id) => boolean): readonly Trial[] {
  if (derived.bearings.length === 0) return [];
  return choicesFor(bench.graph, derived, stands).map((choice) => ({
    choice,
    ...tried(bench, derived, [choice]),
  }));
}

/**
 * A derivation that bears on something, computed without each artefact, source and survey in turn, the derivations it
 * leans on likewise. Where sets are drawn, a thousand do; as many as for the number itself are drawn only near a limit.
 */
export function lossesOf(bench: Bench, derived: Derived, stands: (id: Id) => boolean): Losses {
  const { graph } = bench;
  if (derived.bearings.length === 0 || !isComputed(graph, derived)) return { each: [], untried: 0 };
  const leant = leansOn(bench, derived);
  const leavings = leavingsOf(graph, leant, stands);
  const signature = signatureOf(graph, bench.lens, leant, leavings);
  return sameAsBefore(bench.memo, `${derived.id}\n${JSON.stringify(bench.lens)}`, signature, () => {
    const each = leavings.each.map((leaving) => lossOf(bench, derived, leant, leaving, leavings.never));
    const isWhole = each.every(({ other }) => other !== null);
    return { result: { each, untried: leavings.untried }, isWhole };
  });
}

function lossOf(
  bench: Bench,
  derived: Derived,
  leant: readonly Derived[],
  leaving: Leaving,
  never: readonly Id[],
): Loss {
  const gone = [...leaving.ids, ...never];
  const without = leant.map(({ id }): Choice => ({ derivation: id, without: gone }));
  const all = derived.run === null ? null : drawsIn(derived.run);
  if (all === null || all <= fewDraws) return { leaving, draws: null, ...tried(bench, derived, without) };
  const few = without.map((choice) => ({ ...choice, draws: fewDraws }));
  const quick = tried(bench, derived, few);
  if (quick.other === null || !isNearLimit(bench.graph, bench.plugins, quick.other))
    return { leaving, draws: fewDraws, ...quick };
  return { leaving, draws: null, ...tried(bench, derived, without) };
}

/** A derivation and all whose numbers it takes, its own first. */
function leansOn({ graph, plugins, memo, lens }: Bench, derived: Derived): readonly Derived[] {
  if (!derived.used.some((id) => graph.records.get(id)?.list === "derivations")) return [derived];
  const { byId } = derive(graph, plugins, memo, lens, [derived.id]);
  return [derived, ...[...byId.values()].filter(({ id }) => id !== derived.id)];
}

function tried({ graph, plugins, memo, lens }: Bench, derived: Derived, choices: readonly Choice[]): Turned {
  const asked = { ...lens, instead: [...(lens.instead ?? []), ...choices] };
  const { byId, missing } = derive(graph, plugins, memo, asked, [derived.id]);
  const other = byId.get(derived.id) ?? null;
  if (other === null || other.status === "pending") return { other: null, missing, turned: new Map() };
  return { other, missing: [], turned: turnedBy(derived, other) };
}

function turnedBy(one: Derived, other: Derived): Turned["turned"] {
  const claims = [...new Set(one.bearings.map((bearing) => bearing.claim))];
  return new Map(
    claims.flatMap((claim) => {
      const now = bearingOn(other.bearings, claim) ?? ("says nothing of" as const);
      return now === bearingOn(one.bearings, claim) ? [] : [[claim, now] as const];
    }),
  );
}
