import type { Id } from "../../../../base/finding.ts";

/** Gives keys that are free: the one wanted, else with a letter behind, `a` to `z`, then two; what it gave is taken. */
export function freeKeys(taken: ReadonlySet<Id>): {
  readonly isFree: (key: Id) => boolean;
  readonly take: (wanted: Id) => Id;
} {
  const given = new Set<Id>();
  const next = new Map<Id, number>();
  const isFree = (key: Id): boolean => !taken.has(key) && !given.has(key);
  const take = (wanted: Id): Id => {
    let key = wanted;
    for (let n = next.get(wanted) ?? 0; !isFree(key); n++) {
      key = `${wanted}${lettersOf(n)}`;
      next.set(wanted, n + 1);
    }
    given.add(key);
    return key;
  };
  return { isFree, take };
}

function lettersOf(n: number): string {
  const last = String.fromCharCode(97 + (n % 26));
  return n < 26 ? last : `${lettersOf(Math.floor(n / 26) - 1)}${last}`;
}
