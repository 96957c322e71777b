import type { Cone } from "./cone.ts";
import { byDeletion } from "./founding.ts";
import { groupsOf } from "./groups.ts";
import { comesBack, giveBack, take } from "./taking.ts";
import type { Taking } from "./taking.ts";

/** How far the search for the smallest set goes: visits of atoms, after which a minimal one is taken instead. */
export const searchEffort = 1_000_000;

/**
 * The smallest set of records by which the goal holds, of several the first by id; null when the effort ran out.
 * Each atom with several options takes each in turn; parts that share nothing are searched alone.
 */
export function smallestSet(cone: Cone, effort = searchEffort): readonly number[] | null {
  const size = cone.options.length;
  const taking: Taking = {
    cone,
    taken: new Uint8Array(size),
    chosen: new Int32Array(size).fill(-1),
    own: ownRecords(cone),
    has: new Uint8Array(cone.records.length),
    left: effort,
  };
  const first = take(taking, [0]);
  const rest = search(taking, first.pending, byDeletion(cone).length - first.records.length);
  return rest === null || taking.left < 0 ? null : [...first.records, ...rest].sort(ascending);
}

const ascending = (a: number, b: number): number => a - b;

/** For each atom the fewest records among the needs of one of its options that nothing but this atom needs. */
function ownRecords({ options, record }: Cone): Int32Array {
  const needing = new Map<number, Set<number>>();
  options.forEach((ways, atom) => {
    for (const need of ways.flat()) {
      const place = record[need] ?? -1;
      const atoms = needing.get(place) ?? new Set<number>();
      needing.set(place, atoms.add(atom));
    }
  });
  // The goal needs itself, whatever else needs its record.
  needing.delete(record[0] ?? -1);
  const isOwn = (need: number): boolean => {
    const place = record[need] ?? -1;
    return place >= 0 && needing.get(place)?.size === 1;
  };
  const count = (needs: readonly number[]): number =>
    new Set(needs.filter(isOwn).map((need) => record[need])).size;
  return Int32Array.from(options, (ways) =>
    ways.reduce((least, needs) => Math.min(least, count(needs)), Infinity),
  );
}

/** The fewest further records, at most `most`, by which the pending atoms hold; null where there are none. */
function search(taking: Taking, pending: readonly number[], most: number): readonly number[] | null {
  if (pending.length === 0) return [];
  const groups = groupsOf(taking, pending);
  if (groups.length === 1) return searchGroup(taking, pending, most);
  const all: number[] = [];
  for (const group of groups) {
    const part = searchGroup(taking, group, most - all.length);
    if (part === null) return null;
    all.push(...part);
  }
  return all;
}

function searchGroup(taking: Taking, pending: readonly number[], most: number): readonly number[] | null {
  const { options } = taking.cone;
  const waysOf = (atom: number): number => options[atom]?.length ?? 0;
  const atom = pending.reduce((best, one) => (waysOf(one) < waysOf(best) ? one : best));
  const others = pending.filter((one) => one !== atom);
  let best: readonly number[] | null = null;
  let cap = most;
  for (const [option, needs] of (options[atom] ?? []).entries()) {
    if (taking.left < 0) return null;
    taking.chosen[atom] = option;
    const step = take(taking, needs);
    const further = [...others, ...step.pending].reduce((sum, one) => sum + (taking.own[one] ?? 0), 0);
    if (step.records.length + further <= cap && !comesBack(taking, atom)) {
      const rest = search(taking, [...others, ...step.pending], cap - step.records.length);
      const found = rest && [...step.records, ...rest].sort(ascending);
      if (found && (best === null || isBefore(found, best))) {
        best = found;
        cap = found.length;
      }
    }
    giveBack(taking, step);
    taking.chosen[atom] = -1;
  }
  return best;
}

/** Fewer records, or as many and first in the order of ids. */
function isBefore(a: readonly number[], b: readonly number[]): boolean {
  if (a.length !== b.length) return a.length < b.length;
  const at = a.findIndex((place, index) => place !== b[index]);
  return at >= 0 && (a[at] ?? 0) < (b[at] ?? 0);
}
