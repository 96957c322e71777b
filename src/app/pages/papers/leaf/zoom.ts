import { useState } from "react";
import type { Size } from "../tools.tsx";
import type { Shape } from "../reader/paper.ts";

/** Pixels of the window for a point, at real size. */
const real = 96 / 72;
const [least, most] = [0.25, 8];
/** What stands beside a page in its window: the margin with the numbers, and the edges. */
const beside = 56;

/** How large a paper is shown: pixels for a unit of its pages, at first as wide as the window. */
export function useZoom(
  width: number,
  { width: wide }: Shape,
): { readonly scale: number; readonly size: Size } {
  const [zoom, setZoom] = useState<number | null>(null);
  const fitting = Math.max(0.1, (width - beside) / wide);
  const scale = zoom === null ? fitting : zoom * real;
  const now = scale / real;
  const by = (factor: number): void => setZoom(Math.max(least, Math.min(most, now * factor)));
  const size = {
    percent: Math.round(now * 100),
    isFit: zoom === null,
    larger: () => by(1.2),
    smaller: () => by(1 / 1.2),
    fit: () => setZoom(null),
  };
  return { scale, size };
}
