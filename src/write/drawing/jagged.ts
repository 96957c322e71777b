import type { Point } from "../../show/map/scene.ts";

/** Length of a tooth of a broken edge, and how far it bites into the thing at most, in px; less into a small thing. */
const tooth = 7;
const deepest = 5;
const deepestShare = 0.1;
/** Bites are uneven, as breaks are, and the same every time. */
const bites: readonly number[] = [0.6, 1, 0.35, 0.85, 0.5, 1, 0.7];

/** The box that a thing fills, in px. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A broken edge: teeth along a path, biting only into the thing, which lies on the path's right hand (y down) and within a box. */
export function jagged(points: readonly Point[], within: Box): readonly Point[] {
  const [first] = points;
  if (!first) return [];
  let length = 0;
  const lengths = points.slice(1).map((to, n) => {
    const from = points[n] ?? to;
    length += Math.hypot(to.x - from.x, to.y - from.y);
    return length;
  });
  const bite = Math.min(
    deepest,
    deepestShare * Math.min(within.right - within.left, within.bottom - within.top),
  );
  const teeth = Math.max(2, Math.round(length / tooth / 2) * 2);
  const found: Point[] = [];
  for (let n = 0; n <= teeth; n++) {
    const along = (length * n) / teeth;
    const { at, direction } = placeAlong(points, lengths, along);
    const deep = n % 2 === 1 ? bite * (bites[n % bites.length] ?? 1) : 0;
    found.push({
      x: Math.min(within.right, Math.max(within.left, at.x - direction.y * deep)),
      y: Math.min(within.bottom, Math.max(within.top, at.y + direction.x * deep)),
    });
  }
  return found;
}

function placeAlong(
  points: readonly Point[],
  lengths: readonly number[],
  along: number,
): { readonly at: Point; readonly direction: Point } {
  const found = lengths.findIndex((one) => one >= along - 1e-9);
  const n = found < 0 ? lengths.length - 1 : found;
  const from = points[n] ?? { x: 0, y: 0 };
  const to = points[n + 1] ?? from;
  const before = lengths[n - 1] ?? 0;
  const stretch = (lengths[n] ?? 0) - before;
  const share = stretch > 0 ? Math.min(1, (along - before) / stretch) : 0;
  const direction =
    stretch > 0 ? { x: (to.x - from.x) / stretch, y: (to.y - from.y) / stretch } : { x: 0, y: 0 };
  return { at: { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share }, direction };
}
