/** For each atom of a program a set of losses, as bits. */
export interface Masks {
  readonly lossCount: number;
  /** How many numbers one set takes. */
  readonly wide: number;
  readonly bits: Uint32Array;
  readonly add: (atom: number, loss: number) => void;
  /** The losses of an atom in ascending order. */
  readonly lossesAt: (atom: number) => readonly number[];
}

/** Empty sets of losses for so many atoms. */
export function masksOf(atomCount: number, lossCount: number): Masks {
  const wide = Math.max(1, Math.ceil(lossCount / 32));
  const bits = new Uint32Array(atomCount * wide);
  return {
    lossCount,
    wide,
    bits,
    add: (atom, loss) => {
      const at = atom * wide + (loss >>> 5);
      bits[at] = bits[at]! | (1 << (loss & 31));
    },
    lossesAt: (atom) =>
      Array.from({ length: lossCount }, (_, loss) => loss).filter(
        (loss) => (bits[atom * wide + (loss >>> 5)]! & (1 << (loss & 31))) !== 0,
      ),
  };
}

/** Adds one set to another; tells whether it grew. */
export function unite(
  to: Uint32Array,
  toAt: number,
  from: Uint32Array,
  fromAt: number,
  wide: number,
): boolean {
  let grew = false;
  for (let at = 0; at < wide; at++) {
    const before = to[toAt + at]!;
    const after = (before | from[fromAt + at]!) >>> 0;
    if (after !== before) {
      to[toAt + at] = after;
      grew = true;
    }
  }
  return grew;
}

/** How many losses are in a set. */
export function sizeOf(bits: Uint32Array, from: number, wide: number): number {
  let size = 0;
  for (let at = from; at < from + wide; at++) {
    for (let left = bits[at]!; left !== 0; left &= left - 1) size++;
  }
  return size;
}
