/** Where a thing wants to be, how much that counts, and the least distance it keeps from the one before. */
export interface Wish {
  readonly at: number;
  readonly weight: number;
  readonly step: number;
}

/** Things that would overlap and so stand as close as they may: their common place, by mean or by median. */
interface Block {
  readonly place: number;
  readonly count: number;
  readonly weight: number;
  readonly sorted: readonly (readonly [place: number, weight: number])[];
}

/**
 * Places along a line in the order given, at their distances, as near their wishes as can be: the least sum of squares
 * (`mean`) or of distances (`median`), by pooling adjacent violators (Barlow and others 1972, from memory).
 */
export function spread(
  wishes: readonly Wish[],
  { by = "mean", from = -Infinity, to = Infinity }: Spreading = {},
): readonly number[] {
  const blocks: Block[] = [];
  let reach = 0;
  for (const [at, wish] of wishes.entries()) {
    if (at > 0) reach += wish.step;
    const place = wish.at - reach;
    let block: Block = { place, count: 1, weight: wish.weight, sorted: [[place, wish.weight]] };
    for (let last = blocks.at(-1); last && last.place >= block.place; last = blocks.at(-1)) {
      blocks.pop();
      block = by === "mean" ? joinedByMean(last, block) : joinedByMedian(last, block);
    }
    blocks.push(block);
  }
  const most = to - reach;
  const places = blocks.flatMap(({ place, count }) =>
    Array.from({ length: count }, () => Math.max(from, Math.min(most, place))),
  );
  let offset = 0;
  return wishes.map((wish, at) => {
    if (at > 0) offset += wish.step;
    return (places[at] ?? 0) + offset;
  });
}

/** To the nearest 64th of a px: sums and differences of such numbers are exact, and what is straight stays so. */
export function exactly(x: number): number {
  return Math.round(x * 64) / 64;
}

/** How `spread` weighs wishes, and between which bounds it stays. */
export interface Spreading {
  readonly by?: "mean" | "median";
  readonly from?: number;
  readonly to?: number;
}

function joinedByMean(left: Block, right: Block): Block {
  const weight = left.weight + right.weight;
  return {
    place: (left.place * left.weight + right.place * right.weight) / weight,
    count: left.count + right.count,
    weight,
    sorted: [],
  };
}

function joinedByMedian(left: Block, right: Block): Block {
  const sorted = [...left.sorted, ...right.sorted].sort((a, b) => a[0] - b[0]);
  const weight = left.weight + right.weight;
  let sum = 0;
  const median = sorted.find(([, own]) => (sum += own) >= weight / 2);
  return { place: median?.[0] ?? left.place, count: left.count + right.count, weight, sorted };
}

/** The middle one of some numbers, or the mean of the middle two; null of none. */
export function medianOf(values: readonly number[]): number | null {
  const sorted = values.toSorted((a, b) => a - b);
  const low = sorted[(sorted.length - 1) >> 1];
  const high = sorted[sorted.length >> 1];
  return low === undefined || high === undefined ? null : (low + high) / 2;
}
