import type { Shape } from "./paper.ts";

/** The most pages of a paper that is shown: a small file can say that it has any number of them. */
export const mostPages = 10_000;

/** What a canvas of every browser holds: pixels along a side, and in all. */
const [mostAlong, mostInAll] = [8192, 32 * 1024 * 1024];

/** As many pixels for a unit of a page as were asked for, or as its canvas can hold where that is less. */
export function scaleWithin({ width, height }: Shape, scale: number): number {
  const along = mostAlong / Math.max(width, height, 1);
  const inAll = Math.sqrt(mostInAll / Math.max(width * height, 1));
  return Math.min(scale, along, inAll);
}
