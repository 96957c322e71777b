/** What a choice may still cost, in sets looked at. */
export interface Allowance {
  left: number;
}

/**
 * The fewest numbers of which every set has one; of equals those that come first. A set is branched on at a time, the
 * smallest first, and sets that share nothing say how many numbers it takes at least (the hitting-set tree of Reiter
 * 1987, Artif. Intell. 32, from memory). When the allowance ends, those picked greedily, which may be more.
 */
export function fewest(given: readonly (readonly number[])[], allowance: Allowance): readonly number[] {
  const sets = smallestOf(given);
  const greedy = pickedGreedily(sets);
  for (let size = apartIn(sets); size < greedy.length; size++) {
    const found = meeting(sets, size, allowance);
    if (found !== null) return found.toSorted((a, b) => a - b);
    if (allowance.left <= 0) break;
  }
  return greedy.toSorted((a, b) => a - b);
}

/** The sets in order of size, without those that contain another and so are met with it. */
function smallestOf(sets: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const kept: (readonly number[])[] = [];
  for (const set of sets.toSorted((a, b) => a.length - b.length)) {
    const members = new Set(set);
    if (!kept.some((smaller) => smaller.every((one) => members.has(one)))) kept.push(set);
  }
  return kept;
}

function meeting(
  sets: readonly (readonly number[])[],
  size: number,
  allowance: Allowance,
): readonly number[] | null {
  const [first] = sets;
  if (!first) return [];
  allowance.left -= sets.length;
  if (allowance.left <= 0 || apartIn(sets) > size) return null;
  for (const one of first) {
    const rest = meeting(without(sets, one), size - 1, allowance);
    if (rest !== null) return [one, ...rest];
  }
  return null;
}

/** How many of the sets, taken in their order, share no member: each asks for a number of its own. */
function apartIn(sets: readonly (readonly number[])[]): number {
  const used = new Set<number>();
  let apart = 0;
  for (const set of sets) {
    if (set.some((one) => used.has(one))) continue;
    for (const one of set) used.add(one);
    apart++;
  }
  return apart;
}

function pickedGreedily(sets: readonly (readonly number[])[]): readonly number[] {
  const picked: number[] = [];
  for (let left = sets; left.length > 0;) {
    const met = new Map<number, number>();
    for (const set of left) for (const one of set) met.set(one, (met.get(one) ?? 0) + 1);
    const [best] = [...met].toSorted(([a, inA], [b, inB]) => inB - inA || a - b)[0] ?? [0];
    picked.push(best);
    left = without(left, best);
  }
  return picked;
}

function without(sets: readonly (readonly number[])[], one: number): readonly (readonly number[])[] {
  return sets.filter((set) => !set.includes(one));
}
