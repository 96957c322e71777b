import { mean, standardDeviation } from "../../../base/numeric/index.ts";
import { figuresOf, sensitivityOf } from "./points.ts";
import type { Point, Taken } from "./points.ts";

/** Readings of one figure in a picture: their mean and its standard uncertainty, in pixels or radians. */
export interface Pointed {
  readonly mean: number;
  readonly u: number;
  readonly readings: readonly number[];
  /** Where the uncertainty is from: the repeats, how far a few of them lie apart, or what each point is good to. */
  readonly by: "repeats" | "spread" | "points";
}

/** What each coordinate of a point is good to where nobody says otherwise: a picture pixel either way. */
export const usualHalfWidth = 1;

/** As many readings tell their own spread well enough: below it a t distribution has no variance (JCGM 101:2008, 6.4.9.4). */
export const enoughReadings = 4;

/**
 * What some readings come to. Four or more speak for themselves: the standard deviation of the mean, widened by
 * √((n − 1)/(n − 3)) for a spread known from few (GUM 4.2.3; JCGM 101:2008, 6.4.9.4), and never less than half a pixel either
 * way, rectangular, for the grid of the picture (GUM 4.3.7, F.2.2.1): repeats on one pixel do not tell more than it shows. With fewer, each coordinate is good to `halfWidth` either way,
 * rectangular, taken through the sensitivities (GUM 5.1.2) and not made less by repeating; readings that lie farther apart
 * than that count as far as they do. A half width that somebody set is never undercut. Null without a whole reading.
 */
export function pointed(
  taken: Taken,
  readings: readonly (readonly Point[])[],
  halfWidth: number | null = null,
): Pointed | null {
  const figures = figuresOf(taken, readings);
  if (figures.length === 0 || figures.some((one) => !Number.isFinite(one))) return null;
  const slope =
    Math.hypot(...readings.map((points) => sensitivityOf(taken, points))) / Math.sqrt(figures.length);
  const within = (half: number): number => (half / Math.sqrt(3)) * slope;
  const n = figures.length;
  const apart = n > 1 ? standardDeviation(figures) : 0;
  const given = within(halfWidth ?? usualHalfWidth);
  if (n < enoughReadings) {
    return {
      mean: mean(figures),
      u: Math.max(given, apart),
      readings: figures,
      by: apart > given ? "spread" : "points",
    };
  }
  const repeated = Math.max((apart / Math.sqrt(n)) * Math.sqrt((n - 1) / (n - 3)), within(0.5));
  const set = halfWidth !== null && given > repeated;
  return {
    mean: mean(figures),
    u: set ? given : repeated,
    readings: figures,
    by: set ? "points" : "repeats",
  };
}
