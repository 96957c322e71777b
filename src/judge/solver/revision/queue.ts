/** Atoms waiting their turn, the one with the least key first; an atom may wait more than once. */
export type Queue = {
  readonly push: (atom: number) => void;
  /** The next atom, or -1 when none waits. */
  readonly pop: () => number;
};

/** A binary heap (Williams 1964) of atoms by the keys given. */
export function queueBy(key: Int32Array): Queue {
  const heap: number[] = [];
  const rise = (atom: number, from: number): void => {
    let at = from;
    for (let above = (at - 1) >> 1; at > 0 && key[heap[above]!]! > key[atom]!; above = (at - 1) >> 1) {
      heap[at] = heap[above]!;
      at = above;
    }
    heap[at] = atom;
  };
  const sink = (atom: number): void => {
    let at = 0;
    for (let below = 1; below < heap.length; below = 2 * at + 1) {
      if (below + 1 < heap.length && key[heap[below + 1]!]! < key[heap[below]!]!) below++;
      if (key[heap[below]!]! >= key[atom]!) break;
      heap[at] = heap[below]!;
      at = below;
    }
    heap[at] = atom;
  };
  return {
    push: (atom) => {
      heap.push(atom);
      rise(atom, heap.length - 1);
    },
    pop: () => {
      const first = heap[0];
      const last = heap.pop();
      if (first === undefined || last === undefined) return -1;
      if (heap.length > 0) sink(last);
      return first;
    },
  };
}
