import { byText } from "./order.ts";

/**
 * Damerau-Levenshtein distance (optimal string alignment: insertion, deletion, substitution and the swap of
 * two neighbours each cost 1), or `limit + 1` as soon as it is known to be larger than `limit`.
 */
export function editDistance(a: string, b: string, limit: number): number {
  const beyond = limit + 1;
  if (Math.abs(a.length - b.length) > limit) return beyond;
  // What both begin and end with costs nothing.
  let from = 0;
  while (from < a.length && a.charCodeAt(from) === b.charCodeAt(from)) from++;
  let endA = a.length;
  let endB = b.length;
  while (endA > from && endB > from && a.charCodeAt(endA - 1) === b.charCodeAt(endB - 1)) {
    endA--;
    endB--;
  }
  return Math.min(distanceWithin(a.slice(from, endA), b.slice(from, endB), limit), beyond);
}

/** The rows at hand of the matrix of distances: what is written in them before is never read. */
let rows = [0, 1, 2].map(() => new Int32Array(256));

/** The same of two texts of any kind, looking only at cells that the limit leaves in reach. */
function distanceWithin(a: string, b: string, limit: number): number {
  const beyond = limit + 1;
  const width = b.length;
  if (width + 2 > (rows[0]?.length ?? 0)) rows = [0, 1, 2].map(() => new Int32Array(2 * width + 2));
  let [older, previous, current] = rows as [Int32Array, Int32Array, Int32Array];
  for (let column = 0; column <= width; column++) previous[column] = column;
  for (let row = 1; row <= a.length; row++) {
    const first = Math.max(1, row - limit);
    const last = Math.min(width, row + limit);
    const sign = a.charCodeAt(row - 1);
    const signBefore = row > 1 ? a.charCodeAt(row - 2) : -1;
    current[first - 1] = first === 1 ? row : beyond;
    let least = row;
    for (let column = first; column <= last; column++) {
      const other = b.charCodeAt(column - 1);
      let cost = Math.min(
        cell(previous, column) + 1,
        cell(current, column - 1) + 1,
        cell(previous, column - 1) + (sign === other ? 0 : 1),
      );
      if (column > 1 && sign === b.charCodeAt(column - 2) && signBefore === other)
        cost = Math.min(cost, cell(older, column - 2) + 1);
      current[column] = cost;
      least = Math.min(least, cost);
    }
    if (last < width) current[last + 1] = beyond;
    if (least > limit) return beyond;
    [older, previous, current] = [previous, current, older];
  }
  return cell(previous, width);
}

/**
 * The candidates most like a word that was not found, best first, at most `count`; compared without regard to
 * case, and none that differs in more than a third of the word (but always one slip).
 */
export function nearest(word: string, candidates: Iterable<string>, count = 3): readonly string[] {
  return nearestAmong(candidates)(word, count);
}

/** The same for many words and one set of candidates, which is gone through when the first word is asked for. */
export function nearestAmong(
  candidates: Iterable<string>,
): (word: string, count?: number) => readonly string[] {
  let all: readonly Folded[] | null = null;
  return (word, count = 3) => {
    all ??= [...new Set(candidates)].map(foldedText);
    const wanted = foldedText(word.slice(0, longest));
    let limit = Math.max(1, Math.floor(wanted.folded.length / 3));
    let found: readonly { readonly text: string; readonly distance: number }[] = [];
    for (const { text, folded, signs } of all) {
      // A slip takes away one sign and puts in another: what differs in more is farther.
      if (bitsIn(signs ^ wanted.signs) > 2 * limit) continue;
      const distance = editDistance(wanted.folded, folded, limit);
      if (distance > limit) continue;
      found = [...found, { text, distance }]
        .sort((one, other) => one.distance - other.distance || byText(one.text, other.text))
        .slice(0, count);
      // Once there are as many as asked for, only what is as near as the last of them matters.
      if (found.length === count) limit = found.at(-1)?.distance ?? limit;
    }
    return found.map((one) => one.text);
  };
}

/** A text as it is compared. */
interface Folded {
  readonly text: string;
  readonly folded: string;
  /** Which signs it has, as bits; several signs share one. */
  readonly signs: number;
}

function foldedText(text: string): Folded {
  const folded = text.normalize("NFC").toLowerCase();
  let signs = 0;
  for (let at = 0; at < folded.length; at++) signs |= 1 << (folded.charCodeAt(at) & 31);
  return { text, folded, signs };
}

function bitsIn(bits: number): number {
  let count = 0;
  for (let left = bits; left !== 0; left &= left - 1) count++;
  return count;
}

const longest = 120;

function cell(row: Int32Array, column: number): number {
  return row[column] ?? 0;
}
