import type { Cone } from "./cone.ts";

/** A choice under way: which atoms are taken in, and by which option each holds (-1 while undecided). */
export interface Taking {
  readonly cone: Cone;
  readonly taken: Uint8Array;
  readonly chosen: Int32Array;
  /** For each atom how many records at least its choice brings that no other choice can. */
  readonly own: Int32Array;
  /** The records taken in so far. */
  readonly has: Uint8Array;
  /** Visits of atoms that are left. */
  left: number;
}

/** What one step took in, and which of it has several options and awaits a choice. */
export interface Taken {
  readonly atoms: readonly number[];
  readonly records: readonly number[];
  readonly pending: readonly number[];
}

/** Takes in atoms and all that follows from them without a choice. */
export function take(taking: Taking, wanted: readonly number[]): Taken {
  const { cone, taken, chosen, has } = taking;
  const step = { atoms: [] as number[], records: [] as number[], pending: [] as number[] };
  const waiting = [...wanted];
  for (let atom = waiting.pop(); atom !== undefined; atom = waiting.pop()) {
    taking.left--;
    if (taken[atom] === 1) continue;
    taken[atom] = 1;
    step.atoms.push(atom);
    const own = cone.record[atom] ?? -1;
    if (own >= 0 && has[own] === 0) {
      has[own] = 1;
      step.records.push(own);
    }
    const ways = cone.options[atom] ?? [];
    if (ways.length > 1) step.pending.push(atom);
    else {
      chosen[atom] = 0;
      waiting.push(...(ways[0] ?? []));
    }
  }
  return step;
}

/** Undoes a step. */
export function giveBack({ taken, chosen, has }: Taking, { atoms, records }: Taken): void {
  for (const atom of atoms) {
    taken[atom] = 0;
    chosen[atom] = -1;
  }
  for (const own of records) has[own] = 0;
}

/** Whether an atom has come to hold itself up. */
export function comesBack(taking: Taking, atom: number): boolean {
  const { cone, chosen } = taking;
  const seen = new Set<number>();
  const waiting = [atom];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    taking.left--;
    for (const need of cone.options[at]?.[chosen[at] ?? -1] ?? []) {
      if (need === atom) return true;
      if (seen.has(need)) continue;
      seen.add(need);
      waiting.push(need);
    }
  }
  return false;
}
