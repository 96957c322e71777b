import type { PlacedBox, Point } from "../../../show/map/scene.ts";

/** A stretch of the ground between two cuts, or before the first and after the last. */
export interface Turf {
  readonly from: number;
  readonly to: number;
}

/** The stretches of turf from one place to another, between the mouths of the cuts; things in their order along the ground. */
export function turfBetween(things: readonly PlacedBox[], from: number, to: number): readonly Turf[] {
  const found: Turf[] = [];
  let at = from;
  for (const { x, width } of things) {
    if (x + width <= from) continue;
    if (x >= to) break;
    if (x > at) found.push({ from: at, to: x });
    at = Math.max(at, x + width);
  }
  if (at < to) found.push({ from: at, to });
  return found;
}

/** How far the turf lies under its level, in px: nothing at the edges of a cut, at most 4 between; the same at every place each time. */
export function unevenness(x: number, nearest: number): number {
  const rise = Math.min(1, Math.max(0, nearest / 60));
  return rise * rise * (3 - 2 * rise) * (2.4 * Math.sin(x / 97) + 1.6 * Math.sin(x / 41 + 1));
}

/** The turf line over a window: uneven between the cuts, exact at their edges and level over their mouths. */
export function turfLine(
  things: readonly PlacedBox[],
  ground: number,
  { from, to }: Turf,
  step: number,
): readonly Point[] {
  const points: Point[] = [];
  for (const stretch of turfBetween(things, from, to)) {
    points.push({ x: stretch.from, y: ground + heightAt(stretch, stretch.from, from, to) });
    for (let x = Math.ceil(stretch.from / step) * step; x < stretch.to; x += step) {
      if (x > stretch.from) points.push({ x, y: ground + heightAt(stretch, x, from, to) });
    }
    points.push({ x: stretch.to, y: ground + heightAt(stretch, stretch.to, from, to) });
  }
  if (points.length > 0) return points;
  return [
    { x: from, y: ground },
    { x: to, y: ground },
  ];
}

/** Unevenness within a stretch; an end that is the window's own is no edge of a cut. */
function heightAt(stretch: Turf, x: number, from: number, to: number): number {
  const left = stretch.from === from ? Infinity : x - stretch.from;
  const right = stretch.to === to ? Infinity : stretch.to - x;
  return unevenness(x, Math.min(left, right));
}
