/**
 * A root of `f` between `a` and `b`, where it changes sign, by Brent's method (Brent 1973, Algorithms for Minimization
 * without Derivatives, chapter 4, from memory): the step of inverse interpolation where it can be trusted, else half of
 * what is left. It stops within `tolerance` of the root, or at the last bit.
 */
export function brentRoot(f: (x: number) => number, from: number, to: number, tolerance: number): number {
  let [a, b, c] = [from, to, from];
  let [atA, atB] = [f(a), f(b)];
  let atC = atA;
  if (atA === 0) return a;
  if (atA > 0 === atB > 0 && atB !== 0) throw new RangeError(`no change of sign between ${a} and ${b}`);
  for (let step = 0; step < 1000; step += 1) {
    const before = b - a;
    // The best place so far is b, and the root lies between b and c.
    if (Math.abs(atC) < Math.abs(atB)) {
      [a, b, c] = [b, c, b];
      [atA, atB, atC] = [atB, atC, atB];
    }
    const near = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= near || atB === 0) return b;
    const tried =
      Math.abs(before) >= near && Math.abs(atA) > Math.abs(atB)
        ? interpolated([a, b, c], [atA, atB, atC], before, near)
        : null;
    const move = tried ?? half;
    [a, atA] = [b, atB];
    b += Math.abs(move) < near ? Math.sign(move) * near : move;
    atB = f(b);
    if (atB > 0 === atC > 0) [c, atC] = [a, atA];
  }
  return b;
}

type Three = readonly [number, number, number];

/** The step from b that a line, or a parabola on its side, through the places leads to; null where it leads too far. */
function interpolated([a, b, c]: Three, [atA, atB, atC]: Three, before: number, near: number): number | null {
  const across = c - b;
  const [r, s, t] = [atB / atA, atB / atC, atA / atC];
  let p = a === c ? across * r : r * (across * t * (t - s) - (b - a) * (s - 1));
  let q = a === c ? 1 - r : (t - 1) * (s - 1) * (r - 1);
  if (p > 0) q = -q;
  else p = -p;
  const stays = p < 0.75 * across * q - Math.abs(near * q) / 2 && p < Math.abs((before * q) / 2);
  return stays ? p / q : null;
}
