import type { Quantity } from "../../../base/quantity.ts";
import { wholeU } from "../si-words.ts";
import type { Pointed } from "./pointing.ts";
import type { Taken } from "./points.ts";

/** The scale of a picture, with what it is uncertain by as shares of it (1 s): all that is measured by it has these in common. */
export interface Scale {
  /** Metres that one picture pixel stands for. */
  readonly perPixel: number;
  /** From pointing at its ends. */
  readonly pointing: number;
  /** From the length that lies between them, or the printed ratio. */
  readonly given: number;
  /** Both together. */
  readonly relative: number;
}

/**
 * What may be off by more than this share of itself is no figure: 1/b is then no longer near enough to a straight line for
 * its uncertainty to go through by shares (GUM 5.1.2, note), and no ± tells where the value lies.
 */
export const useless = 0.3;

/** The scale by a length of which both ends lie in the picture: a scale bar, or a dimension that is known otherwise. */
export function scaleOf(length: Quantity, ends: Pointed): Scale | null {
  const u = wholeU(length);
  if (length.kind !== "length" || u === null || !(length.value > 0) || !(ends.mean > 0)) return null;
  const scale = scaled(length.value / ends.mean, ends.u / ends.mean, u / length.value);
  return scale.relative <= useless ? scale : null;
}

/** Metres to the inch, exactly (international yard and pound agreement of 1959). */
const inch = 0.0254;

/** The scale by a printed ratio (150 for 1:150) and so many pixels to the inch of the print, good to a share of it (1 s). */
export function printedScale(ratio: number, perInch: number, relative: number): Scale | null {
  if (!(ratio > 0) || !(perInch > 0) || !(relative >= 0 && relative < 1)) return null;
  return scaled((inch / perInch) * ratio, 0, relative);
}

function scaled(perPixel: number, pointing: number, given: number): Scale {
  return { perPixel, pointing, given, relative: Math.hypot(pointing, given) };
}

/** What was measured on a picture, in SI with standard uncertainties. */
export interface OnPicture {
  readonly taken: Taken;
  readonly value: number;
  /** From pointing at its own points alone. */
  readonly own: number;
  /** What the scale adds, as a share of the value; an angle needs no scale. */
  readonly shared: number;
  /** Both together. */
  readonly whole: number;
}

/**
 * A figure in pixels as a length: v = L p / b, for p pixels of the thing and b of a length L. By the law of propagation for
 * a product (GUM 5.1.6), (u(v)/v)² = (u(p)/p)² + (u(b)/b)² + (u(L)/L)²: the first is its own, the others are the scale's and
 * common to all that is measured by it (GUM 5.2.2).
 */
export function onPicture(taken: Taken, figure: Pointed, scale: Scale | null): OnPicture | null {
  if (taken === "angle") return { taken, value: figure.mean, own: figure.u, shared: 0, whole: figure.u };
  if (!scale) return null;
  const value = figure.mean * scale.perPixel;
  const own = figure.u * scale.perPixel;
  return { taken, value, own, shared: scale.relative, whole: Math.hypot(own, value * scale.relative) };
}
