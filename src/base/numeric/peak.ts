import { rootBetween } from "./root.ts";

/**
 * Where a smooth function is highest between `a` and `b` (a < b), to the last digits: the root of its slope where
 * the slope falls through 0, else golden-section search.
 */
export function highestBetween(
  value: (x: number) => number,
  slope: (x: number) => number,
  a: number,
  b: number,
): number {
  if (slope(a) > 0 && slope(b) < 0) {
    const top = rootBetween(slope, a, b);
    if (value(top) >= Math.max(value(a), value(b))) return top;
  }
  return goldenSection(value, a, b);
}

function goldenSection(value: (x: number) => number, a: number, b: number): number {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [a, b];
  let [left, right] = [high - ratio * (high - low), low + ratio * (high - low)];
  let [atLeft, atRight] = [value(left), value(right)];
  while (high - low > 1e-12 * Math.abs(b)) {
    if (atLeft >= atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - ratio * (high - low);
      atLeft = value(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + ratio * (high - low);
      atRight = value(right);
    }
  }
  const middle = (low + high) / 2;
  const ends = value(a) >= value(b) ? a : b;
  return value(ends) >= value(middle) ? ends : middle;
}
