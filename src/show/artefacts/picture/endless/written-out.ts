import type { DrawnElement } from "./markup.ts";

/** Where an element leads, and how often what is there is drawn. */
export interface Lead {
  readonly to: number;
  readonly times: number;
}

/** What the elements that lead to others add up to once those are written out, where each counts as told; more than the most is not counted on. */
export function writtenOut(
  elements: readonly DrawnElement[],
  leads: readonly (readonly Lead[])[],
  each: readonly number[],
  most: number,
): number {
  const sums = [0];
  for (const [at, one] of each.entries()) sums.push((sums[at] ?? 0) + one);
  const leading = leads.flatMap((all, at) => (all.length > 0 ? [at] : []));
  const known = new Map<number, number>();
  // That what adds nothing has an end too.
  const least = most / 1_000_000;
  const sizeOf = (from: number, depth: number): number => {
    const before = known.get(from);
    if (before !== undefined) return before;
    if (depth > 200) return Infinity;
    // What leads back to itself is not drawn.
    known.set(from, 0);
    const to = elements[from]?.to ?? from;
    let size = (sums[to] ?? 0) - (sums[from] ?? 0);
    for (let n = firstFrom(leading, from); size <= most; n++) {
      const at = leading[n];
      if (at === undefined || at >= to) break;
      size += sizeAt(at, depth + 1);
    }
    known.set(from, size);
    return size;
  };
  const sizeAt = (at: number, depth: number): number =>
    (leads[at] ?? []).reduce((sum, lead) => sum + least + lead.times * sizeOf(lead.to, depth), 0);
  let size = 0;
  for (const at of leading) if (size <= most) size += sizeAt(at, 0);
  return size;
}

/** Where the first of some rising numbers stands that is no less than one. */
function firstFrom(rising: readonly number[], least: number): number {
  let [low, high] = [0, rising.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rising[middle] ?? 0) < least) low = middle + 1;
    else high = middle;
  }
  return low;
}
