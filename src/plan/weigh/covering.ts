/** The sets that hold no other one, each once: what hits these hits all. */
export function subsetFree(sets: readonly ReadonlySet<number>[]): readonly ReadonlySet<number>[] {
  const once = new Map(sets.map((set) => [[...set].sort((a, b) => a - b).join(" "), set]));
  const holding = new Map<number, ReadonlySet<number>[]>();
  const kept: ReadonlySet<number>[] = [];
  for (const set of [...once.values()].sort((a, b) => a.size - b.size)) {
    const smaller = [...set].flatMap((one) => holding.get(one) ?? []);
    if (smaller.some((small) => [...small].every((one) => set.has(one)))) continue;
    kept.push(set);
    for (const one of set) holding.set(one, [...(holding.get(one) ?? []), set]);
  }
  return kept;
}

/** The least that sets which share nothing must cost and number; null where one has nothing left to be hit by. */
export function disjointBound(
  open: readonly ReadonlySet<number>[],
  costs: readonly number[],
  barred: ReadonlySet<number>,
): { readonly cost: number; readonly number: number } | null {
  const used = new Set<number>();
  let cost = 0;
  let number = 0;
  for (const set of open) {
    const left = [...set].filter((one) => !barred.has(one));
    if (left.length === 0) return null;
    if (left.some((one) => used.has(one))) continue;
    for (const one of left) used.add(one);
    cost += Math.min(...left.map((one) => costs[one] ?? 0));
    number++;
  }
  return { cost, number };
}
