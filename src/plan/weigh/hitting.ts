import { disjointBound, subsetFree } from "./covering.ts";

/** The fewest or cheapest things of which each set has one. */
export interface Hitting<Id> {
  /** All best ones where found exactly, each in the order of the sets; else the one found. */
  readonly solutions: readonly (readonly Id[])[];
  /** It is small, and need not be the smallest. */
  readonly nearMinimal: boolean;
  /** Places of sets that nothing hits, for they are empty: they are left out of account. */
  readonly unhittable: readonly number[];
}

/** Above so many things the search is greedy (methods J3). */
export const exactUpTo = 25;
/** As many best solutions are listed; more of the same cost and number are not. */
const listed = 100;

/**
 * Smallest hitting sets by cost, then by number: branch and bound on the smallest set not yet hit, bounded by sets
 * that share nothing; greedy above `exactUpTo` things.
 */
export function smallestHitting<Id>(
  sets: readonly (readonly Id[])[],
  cost: (one: Id) => number = () => 1,
): Hitting<Id> {
  const unhittable = sets.flatMap((set, at) => (set.length === 0 ? [at] : []));
  const things = [...new Set(sets.flat())];
  const place = new Map(things.map((one, at) => [one, at]));
  const costs = things.map(cost);
  const wanted = subsetFree(
    sets.filter((set) => set.length > 0).map((set) => new Set(set.map((one) => place.get(one) ?? 0))),
  );
  if (wanted.length === 0) return { solutions: [[]], nearMinimal: false, unhittable };
  const exact = things.length <= exactUpTo;
  const found = exact ? branchAndBound(wanted, costs) : [greedy(wanted, costs)];
  const named = found.map((one) => [...one].sort((a, b) => a - b).flatMap((at) => things.slice(at, at + 1)));
  return { solutions: named, nearMinimal: !exact, unhittable };
}

type Sets = readonly ReadonlySet<number>[];

/** Sums of costs that differ by less than this are the same sum. */
const slack = 1e-9;

function branchAndBound(sets: Sets, costs: readonly number[]): readonly (readonly number[])[] {
  const first = greedy(sets, costs);
  let least = { cost: sumOf(first, costs), number: first.length };
  let best = new Map<string, readonly number[]>();
  const worse = (cost: number, number: number): boolean =>
    cost > least.cost + slack || (cost > least.cost - slack && number > least.number);
  const search = (taken: readonly number[], barred: ReadonlySet<number>, open: Sets): void => {
    const cost = sumOf(taken, costs);
    const bound = disjointBound(open, costs, barred);
    if (bound === null || worse(cost + bound.cost, taken.length + bound.number)) return;
    const smallest = smallestOf(open, barred);
    if (smallest === null) {
      if (cost < least.cost - slack || taken.length < least.number) best = new Map();
      least = { cost, number: taken.length };
      const key = taken.toSorted((a, b) => a - b).join(" ");
      if (best.size < listed) best.set(key, taken);
      return;
    }
    // What was tried stays barred in the branches after it: no set is met twice.
    const tried = new Set(barred);
    for (const one of smallest) {
      search(
        [...taken, one],
        tried,
        open.filter((set) => !set.has(one)),
      );
      tried.add(one);
    }
  };
  search([], new Set(), sets);
  return [...best.values()];
}

/** The members, still to be had, of the set that has fewest of them; null where no set is open. */
function smallestOf(open: Sets, barred: ReadonlySet<number>): readonly number[] | null {
  let smallest: readonly number[] | null = null;
  for (const set of open) {
    const left = [...set].filter((one) => !barred.has(one));
    if (smallest === null || left.length < smallest.length) smallest = left;
  }
  return smallest;
}

/** The cheapest for each set it hits, again and again; then what the others make needless goes, the dearest first. */
function greedy(sets: Sets, costs: readonly number[]): readonly number[] {
  const taken: number[] = [];
  for (let open = sets; open.length > 0;) {
    const hits = new Map<number, number>();
    for (const set of open) for (const one of set) hits.set(one, (hits.get(one) ?? 0) + 1);
    const [next] = [...hits].reduce((a, b) => (priceOf(b, costs) < priceOf(a, costs) ? b : a));
    taken.push(next);
    open = open.filter((set) => !set.has(next));
  }
  let kept: readonly number[] = taken;
  for (const one of taken.toSorted((a, b) => (costs[b] ?? 0) - (costs[a] ?? 0))) {
    const without = kept.filter((other) => other !== one);
    if (sets.every((set) => without.some((other) => set.has(other)))) kept = without;
  }
  return kept;
}

/** Cost for each set hit; of two that cost nothing, the one that hits more. */
function priceOf([thing, hits]: readonly [number, number], costs: readonly number[]): number {
  return ((costs[thing] ?? 0) + slack) / hits;
}

function sumOf(taken: readonly number[], costs: readonly number[]): number {
  return taken.reduce((sum, one) => sum + (costs[one] ?? 0), 0);
}
