/**
 * A root of `f` between `a` and `b`, where it changes sign, by bisection down to the last bit.
 * Throws when the signs at the ends agree.
 */
export function rootBetween(f: (x: number) => number, a: number, b: number): number {
  let low = a;
  let high = b;
  const atLow = f(low);
  const atHigh = f(high);
  if (atLow === 0) return low;
  if (atHigh === 0) return high;
  if (atLow > 0 === atHigh > 0) throw new RangeError(`no change of sign between ${a} and ${b}`);
  for (let step = 0; step < 1100; step += 1) {
    const middle = low + (high - low) / 2;
    if (middle <= Math.min(low, high) || middle >= Math.max(low, high)) break;
    const value = f(middle);
    if (value === 0) return middle;
    if (value > 0 === atLow > 0) low = middle;
    else high = middle;
  }
  return low + (high - low) / 2;
}
