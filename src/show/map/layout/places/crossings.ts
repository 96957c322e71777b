import type { Piece } from "./plan.ts";

interface Stretch {
  readonly low: number;
  readonly high: number;
}

/** How many lines would cross, were each drawn straight from box to box through the rows between. */
export function crossingsOf(rows: readonly (readonly Piece[])[]): number {
  const channels: Stretch[][] = rows.map(() => []);
  for (const piece of rows.flat()) {
    for (const { other, here, there } of piece.above) {
      const [start, end] = [piece.x + here, other.x + there];
      const rise = (end - start) / (other.row - piece.row);
      for (let row = piece.row; row < other.row; row++) {
        const low = start + rise * (row - piece.row);
        channels[row]?.push({ low, high: low + rise });
      }
    }
  }
  return channels.reduce((sum, stretches) => sum + inversions(stretches), 0);
}

function inversions(stretches: readonly Stretch[]): number {
  const sorted = stretches.toSorted((a, b) => a.low - b.low || a.high - b.high);
  return countSorting(sorted.map(({ high }) => high)).count;
}

/** Merge sort that counts the pairs it turns round. */
function countSorting(values: readonly number[]): {
  readonly count: number;
  readonly sorted: readonly number[];
} {
  if (values.length < 2) return { count: 0, sorted: values };
  const half = values.length >> 1;
  const left = countSorting(values.slice(0, half));
  const right = countSorting(values.slice(half));
  const sorted: number[] = [];
  let count = left.count + right.count;
  let taken = 0;
  for (const value of right.sorted) {
    for (let next = left.sorted[taken]; next !== undefined && next <= value; next = left.sorted[taken]) {
      sorted.push(next);
      taken++;
    }
    count += left.sorted.length - taken;
    sorted.push(value);
  }
  return { count, sorted: [...sorted, ...left.sorted.slice(taken)] };
}

/** How many more lines cross with `left` left of `right` than the other way round, their other ends staying. */
export function crossingsSaved(left: Piece, right: Piece): number {
  return saved(left.below, right.below) + saved(left.above, right.above);
}

function saved(left: Piece["below"], right: Piece["below"]): number {
  let sum = 0;
  for (const a of left) {
    for (const b of right) sum += Math.sign(a.other.x + a.there - b.other.x - b.there);
  }
  return sum;
}
