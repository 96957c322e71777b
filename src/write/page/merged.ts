/** A stretch of a drawing, and the places of the drawings that have it, in their order. */
export interface Stretch {
  readonly text: string;
  readonly of: readonly number[];
}

/**
 * Drawings that differ little as one: every stretch once, in an order in which each drawing's own are in its order. So
 * each is drawn by hiding what is not of it.
 */
export function merged(drawings: readonly (readonly string[])[]): readonly Stretch[] {
  const [first = [], ...more] = drawings;
  let all: { readonly text: string; readonly of: number[] }[] = first.map((text) => ({ text, of: [0] }));
  for (const [n, drawing] of more.entries()) {
    const common = longestCommon(
      all.map((one) => one.text),
      drawing,
    );
    const next: typeof all = [];
    let [a, b] = [0, 0];
    for (const [i, j] of [...common, [all.length, drawing.length] as const]) {
      next.push(...all.slice(a, i));
      next.push(...drawing.slice(b, j).map((text) => ({ text, of: [n + 1] })));
      const both = all[i];
      if (both !== undefined) next.push({ text: both.text, of: [...both.of, n + 1] });
      [a, b] = [i + 1, j + 1];
    }
    all = next;
  }
  return all;
}

/** The places of a longest common subsequence in both rows (Wagner and Fischer 1974). */
function longestCommon(
  one: readonly string[],
  other: readonly string[],
): readonly (readonly [number, number])[] {
  const width = other.length + 1;
  const best = new Uint16Array((one.length + 1) * width);
  const at = (i: number, j: number): number => best[i * width + j] ?? 0;
  for (let i = one.length - 1; i >= 0; i--)
    for (let j = other.length - 1; j >= 0; j--)
      best[i * width + j] = one[i] === other[j] ? at(i + 1, j + 1) + 1 : Math.max(at(i + 1, j), at(i, j + 1));
  const found: (readonly [number, number])[] = [];
  let [i, j] = [0, 0];
  while (i < one.length && j < other.length) {
    if (one[i] === other[j]) found.push([i++, j++]);
    else if (at(i + 1, j) >= at(i, j + 1)) i++;
    else j++;
  }
  return found;
}

/** Places as ranges: `0-3 7`. */
export function rangesOf(places: readonly number[]): string {
  const ranges: [number, number][] = [];
  for (const place of places) {
    const last = ranges.at(-1);
    if (last && last[1] === place - 1) last[1] = place;
    else ranges.push([place, place]);
  }
  return ranges.map(([from, to]) => (from === to ? String(from) : `${from}-${to}`)).join(" ");
}
