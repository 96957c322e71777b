import type { Cone } from "./cone.ts";

/** For each atom of a cone the option by which it holds, or -1; following these never comes back. */
export type Founding = Int32Array;

/** How the goal holds by the marked records alone; null where it does not. */
export function foundingWithin({ options, record }: Cone, kept: Uint8Array): Founding | null {
  const chosen = new Int32Array(options.length).fill(-1);
  const waits = options.map((ways) => ways.map((needs) => needs.length));
  const waiting: (readonly [atom: number, option: number])[][] = options.map(() => []);
  const found: number[] = [];
  const holds = (atom: number, option: number): void => {
    if (chosen[atom] !== -1) return;
    chosen[atom] = option;
    found.push(atom);
  };
  options.forEach((ways, atom) => {
    const own = record[atom] ?? -1;
    if (own >= 0 && kept[own] !== 1) return;
    ways.forEach((needs, option) => {
      for (const need of needs) waiting[need]?.push([atom, option]);
      if (needs.length === 0) holds(atom, option);
    });
  });
  for (let at = 0; at < found.length; at++) {
    for (const [atom, option] of waiting[found[at] ?? 0] ?? []) {
      const left = (waits[atom]?.[option] ?? 0) - 1;
      const of = waits[atom];
      if (of) of[option] = left;
      if (left === 0) holds(atom, option);
    }
  }
  return chosen[0] === -1 ? null : chosen;
}

/** The atoms that the goal holds by in a founding, the goal first, each before those that hold it up. */
export function reachedBy({ options }: Cone, founding: Founding): readonly number[] {
  const seen = new Set([0]);
  for (const atom of seen) for (const need of options[atom]?.[founding[atom] ?? -1] ?? []) seen.add(need);
  return [...seen];
}

/**
 * A set of records by which the goal holds and none of which can be spared: from those that the goal first holds by,
 * each is taken away in turn, the last id first, and left out where the goal holds without it.
 */
export function byDeletion(cone: Cone): readonly number[] {
  const all = foundingWithin(cone, new Uint8Array(cone.records.length).fill(1));
  if (!all) throw new Error("byDeletion: a goal that does not hold");
  const kept = new Uint8Array(cone.records.length);
  for (const atom of reachedBy(cone, all)) {
    const own = cone.record[atom] ?? -1;
    if (own >= 0) kept[own] = 1;
  }
  for (let place = kept.length - 1; place >= 0; place--) {
    if (kept[place] === 0) continue;
    kept[place] = 0;
    if (!foundingWithin(cone, kept)) kept[place] = 1;
  }
  return [...kept.keys()].filter((place) => kept[place] === 1);
}
