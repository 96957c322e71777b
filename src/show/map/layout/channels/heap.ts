/** A queue that gives the least first, of items that compare; items that come out stale are the caller's to leave. */
export interface Heap<Item> {
  readonly push: (item: Item) => void;
  readonly pop: () => Item | undefined;
}

/** A binary heap (Williams 1964). */
export function heapOf<Item>(isLess: (a: Item, b: Item) => boolean): Heap<Item> {
  const items: Item[] = [];
  const less = (a: number, b: number): boolean => {
    const [one, other] = [items[a], items[b]];
    return one !== undefined && other !== undefined && isLess(one, other);
  };
  const exchange = (a: number, b: number): void => {
    const [one, other] = [items[a], items[b]];
    if (one === undefined || other === undefined) return;
    items[a] = other;
    items[b] = one;
  };
  return {
    push: (item) => {
      items.push(item);
      for (let at = items.length - 1; at > 0 && less(at, (at - 1) >> 1); at = (at - 1) >> 1) {
        exchange(at, (at - 1) >> 1);
      }
    },
    pop: () => {
      exchange(0, items.length - 1);
      const least = items.pop();
      for (let at = 0; ;) {
        const child = 2 * at + 1;
        const next = less(child + 1, child) ? child + 1 : child;
        if (!less(next, at)) return least;
        exchange(at, next);
        at = next;
      }
    },
  };
}
