import { count, row, say } from "./said.ts";
import type { Hole, Mention, Row, Said, Text } from "./said.ts";

/** A text whole, in quotation marks. */
export const quoted = (text: Text): Mention => ({
  mention: text,
  words: Number.MAX_SAFE_INTEGER,
  quoted: true,
});

/** The first three of a row of more than four, and how many others there are in words of their own. */
export function few(
  names: readonly Hole[],
  more: (shown: Row, others: number) => Said = (shown, others) => say`${shown} and ${count(others)} more`,
): Hole {
  return names.length > 4 ? more(row(names.slice(0, 3), "comma"), names.length - 3) : row(names);
}

/** Texts one after another, tied two by two. */
export function chained(texts: readonly Hole[], tie: (before: Hole, next: Hole) => Said): Hole {
  const [one = "", ...others] = texts;
  return others.reduce((before, next) => tie(before, next), one);
}
