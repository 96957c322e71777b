/** Lists of items by each of their keys, keys and items in the order in which they come. */
export function listsBy<K, T>(
  items: Iterable<T>,
  keysOf: (item: T) => readonly K[],
): ReadonlyMap<K, readonly T[]> {
  const lists = new Map<K, T[]>();
  for (const item of items) {
    for (const key of keysOf(item)) {
      const list = lists.get(key);
      if (list) list.push(item);
      else lists.set(key, [item]);
    }
  }
  // A list that grew has room for over sixteen more, and most come to hold two or three.
  for (const [key, list] of lists) if (list.length > 1) lists.set(key, list.slice());
  return lists;
}

/** Finds items by each of their keys, in the order given. */
export function gathered<K, T>(
  items: Iterable<T>,
  keysOf: (item: T) => readonly K[],
): (key: K) => readonly T[] {
  const lists = listsBy(items, keysOf);
  return (key) => lists.get(key) ?? [];
}
