import { byText } from "./order.ts";

/**
 * Damerau-Levenshtein distance (optimal string alignment: insertion, deletion, substitution and the swap of
 * two neighbours each cost 1), or `limit + 1` as soon as it is known to be larger than `limit`.
 */
export function editDistance(a: string, b: string, limit: number): number {
  const beyond = limit + 1;
  if (Math.abs(a.length - b.length) > limit) return beyond;
  let older: number[] = [];
  let previous = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    let least = row;
    for (let column = 1; column <= b.length; column++) {
      const same = a.charCodeAt(row - 1) === b.charCodeAt(column - 1);
      let cost = Math.min(
        cell(previous, column) + 1,
        cell(current, column - 1) + 1,
        cell(previous, column - 1) + (same ? 0 : 1),
      );
      const swapped =
        row > 1 &&
        column > 1 &&
        a.charCodeAt(row - 1) === b.charCodeAt(column - 2) &&
        a.charCodeAt(row - 2) === b.charCodeAt(column - 1);
      if (swapped) cost = Math.min(cost, cell(older, column - 2) + 1);
      current.push(cost);
      least = Math.min(least, cost);
    }
    if (least > limit) return beyond;
    older = previous;
    previous = current;
  }
  return Math.min(cell(previous, b.length), beyond);
}

/**
 * The candidates most like a word that was not found, best first, at most `count`; compared without regard to
 * case, and none that differs in more than a third of the word (but always one slip).
 */
export function nearest(word: string, candidates: Iterable<string>, count = 3): readonly string[] {
  const wanted = word.normalize("NFC").toLowerCase().slice(0, longest);
  const limit = Math.max(1, Math.floor(wanted.length / 3));
  const found: { readonly text: string; readonly distance: number }[] = [];
  for (const text of new Set(candidates)) {
    const distance = editDistance(wanted, text.normalize("NFC").toLowerCase(), limit);
    if (distance <= limit) found.push({ text, distance });
  }
  found.sort((a, b) => a.distance - b.distance || byText(a.text, b.text));
  return found.slice(0, count).map((one) => one.text);
}

const longest = 120;

function cell(row: readonly number[], column: number): number {
  return row[column] ?? 0;
}
