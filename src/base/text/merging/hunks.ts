import { diffIndices } from "node-diff3";

/** Lines of one text, from `start` to before `end`, and those of another, from `from` to before `to`, that took their place. */
export interface LineHunk {
  readonly start: number;
  readonly end: number;
  readonly from: number;
  readonly to: number;
}

/** A stretch of larger size is not searched for lines in common: it is one change. */
const largest = 250_000;

/**
 * The changes that lead from one list of lines to another, in their order. Lines that both have once each, in one
 * order, hold the two together; between them what is common is found by Hunt and McIlroy's method (1976).
 */
export function lineHunks(base: readonly string[], made: readonly string[]): readonly LineHunk[] {
  const hunks: LineHunk[] = [];
  const between = (start: number, end: number, from: number, to: number): void => {
    let [head, tail, front, back] = [start, end, from, to];
    while (head < tail && front < back && base[head] === made[front]) [head, front] = [head + 1, front + 1];
    while (head < tail && front < back && base[tail - 1] === made[back - 1])
      [tail, back] = [tail - 1, back - 1];
    if (head === tail && front === back) return;
    const [old, own] = [base.slice(head, tail), made.slice(front, back)];
    const held = old.length > 0 && own.length > 0 ? anchors(old, own) : [];
    if (held.length > 0) {
      let [at, by] = [head, front];
      for (const [one, two] of held) {
        between(at, head + one, by, front + two);
        [at, by] = [head + one + 1, front + two + 1];
      }
      between(at, tail, by, back);
    } else if (old.length * own.length > largest)
      hunks.push({ start: head, end: tail, from: front, to: back });
    else
      for (const { buffer1, buffer2 } of diffIndices(old, own)) {
        const [one, two] = [head + buffer1[0], front + buffer2[0]];
        hunks.push({ start: one, end: one + buffer1[1], from: two, to: two + buffer2[1] });
      }
  };
  between(0, base.length, 0, made.length);
  return joined(hunks);
}

/** Changes that meet are one. */
function joined(hunks: readonly LineHunk[]): readonly LineHunk[] {
  const all: LineHunk[] = [];
  for (const hunk of hunks) {
    const last = all.at(-1);
    if (last && last.end === hunk.start && last.to === hunk.from)
      all[all.length - 1] = { ...hunk, start: last.start, from: last.from };
    else all.push(hunk);
  }
  return all;
}

/** The longest run of lines that stand once in each of two lists, in the order of both: pairs of places. */
function anchors(old: readonly string[], own: readonly string[]): readonly (readonly [number, number])[] {
  const places = oncePlaces(own);
  const pairs = [...oncePlaces(old)].flatMap(([line, one]): readonly (readonly [number, number])[] => {
    const two = places.get(line);
    return two === undefined ? [] : [[one, two]];
  });
  // Places in `pairs`: the last of the best run of each length, and what each one follows.
  const ends: number[] = [];
  const before: number[] = [];
  pairs.forEach(([, two], place) => {
    let [low, high] = [0, ends.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((pairs[ends[middle] ?? 0]?.[1] ?? 0) < two) low = middle + 1;
      else high = middle;
    }
    before[place] = low > 0 ? (ends[low - 1] ?? -1) : -1;
    ends[low] = place;
  });
  const run: (readonly [number, number])[] = [];
  for (let at = ends.at(-1) ?? -1; at >= 0; at = before[at] ?? -1) run.push(pairs[at] ?? [0, 0]);
  return run.reverse();
}

function oncePlaces(lines: readonly string[]): ReadonlyMap<string, number> {
  const places = new Map<string, number>();
  const again = new Set<string>();
  lines.forEach((line, place) => {
    if (places.has(line)) again.add(line);
    else places.set(line, place);
  });
  for (const line of again) places.delete(line);
  return places;
}
