/**
 * Each p adjusted for all `looks` at the same question (Holm 1979): the i-th smallest is multiplied by looks − i + 1, and
 * none is below a smaller one's. Looks of which no p is known count as larger ones, which is the cautious way.
 */
export function holm(ps: readonly number[], looks: number): readonly number[] {
  const order = ps.map((_, place) => place).sort((a, b) => (ps[a] ?? 0) - (ps[b] ?? 0));
  const adjusted = ps.map(() => 1);
  let least = 0;
  order.forEach((place, rank) => {
    least = Math.max(least, Math.min(1, (Math.max(looks, ps.length) - rank) * (ps[place] ?? 1)));
    adjusted[place] = least;
  });
  return adjusted;
}
