import type { Id } from "../../base/finding.ts";

/** Items by each of their keys, in the order given. */
export function gathered<T>(
  items: Iterable<T>,
  keysOf: (item: T) => readonly Id[],
): (key: Id) => readonly T[] {
  const lists = new Map<Id, T[]>();
  for (const item of items) {
    for (const key of keysOf(item)) {
      const list = lists.get(key);
      if (list) list.push(item);
      else lists.set(key, [item]);
    }
  }
  return (key) => lists.get(key) ?? [];
}
