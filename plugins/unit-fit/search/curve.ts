import type { Json, Pair } from "../../../src/plugin.ts";
import type { Length } from "../lengths.ts";
import { phi } from "./quantogram.ts";

const FEWEST_POINTS = 300;
const MOST_POINTS = 1500;

/** The quantogram for drawing, evenly in 1/q, some thirty points to each turn of the longest length; `at` are on it too. */
export function curveOf(lengths: readonly Length[], from: number, to: number, at: readonly number[]): Json {
  const longest = Math.max(...lengths.map((length) => length.value));
  const turns = longest / from - longest / to;
  const count = Math.min(MOST_POINTS, Math.max(FEWEST_POINTS, Math.ceil(30 * turns)));
  const even = Array.from(
    { length: count },
    (_, k) => 1 / (1 / from - ((1 / from - 1 / to) * k) / (count - 1)),
  );
  const asked = at.filter((q) => q > from && q < to);
  return [...even, ...asked].sort((a, b) => a - b).map((q): Pair => [q, phi(lengths, q)]);
}

/** A unit's third, its half, itself and its double: what a unit lifts along with itself. */
export const familyOf = (q: number): readonly number[] => [q / 3, q / 2, q, 2 * q];
