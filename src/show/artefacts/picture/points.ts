/** A place in a picture, in picture pixels from its upper left corner, rightwards and downwards. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** What can be taken from a picture: a distance, an angle at the middle of three points, the diameter of a circle through three. */
export type Taken = "distance" | "angle" | "diameter";

/** How many points each of them takes. */
export const pointsOf: Readonly<Record<Taken, number>> = { distance: 2, angle: 3, diameter: 3 };

/** A figure from its points: picture pixels, or radians for an angle; NaN where the points give none. */
export function figureOf(taken: Taken, points: readonly Point[]): number {
  const [a, b, c] = points;
  if (!a || !b) return Number.NaN;
  if (taken === "distance") return Math.hypot(b.x - a.x, b.y - a.y);
  if (!c) return Number.NaN;
  return taken === "angle" ? Math.abs(turnAt(a, b, c)) : diameterThrough(a, b, c);
}

/** The turn at the middle of three points from the first to the last, from −π to π. */
function turnAt(a: Point, b: Point, c: Point): number {
  const [ux, uy, vx, vy] = [a.x - b.x, a.y - b.y, c.x - b.x, c.y - b.y];
  if (Math.hypot(ux, uy) === 0 || Math.hypot(vx, vy) === 0) return Number.NaN;
  return Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
}

/**
 * The figures of several readings, each counted on from the first: at a straight line some turn the one way and some the
 * other, and folded to one side they would come to less than 180°, or more than 0°, however well they are pointed at.
 */
export function figuresOf(taken: Taken, readings: readonly (readonly Point[])[]): readonly number[] {
  if (taken !== "angle") return readings.map((points) => figureOf(taken, points));
  const turns = readings.map(([a, b, c]) => (a && b && c ? turnAt(a, b, c) : Number.NaN));
  const [first = Number.NaN] = turns;
  const counted = turns.map((turn) => first + around(turn - first));
  const mean = counted.reduce((total, turn) => total + turn, 0) / counted.length;
  // The other way round it is the same angle: on the whole between 0 and 180°.
  if (Math.abs(mean) > Math.PI) return counted.map((turn) => 2 * Math.PI - Math.sign(mean) * turn);
  return mean < 0 ? counted.map((turn) => -turn) : counted;
}

/** The same angle between −π and π. */
function around(angle: number): number {
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}

/** The diameter of the circle through three points: the product of the sides over twice the area of their triangle. */
function diameterThrough(a: Point, b: Point, c: Point): number {
  const twiceArea = Math.abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
  const sides = figureOf("distance", [a, b]) * figureOf("distance", [b, c]) * figureOf("distance", [c, a]);
  return twiceArea === 0 ? Number.NaN : sides / twiceArea;
}

/** The step of a difference, in picture pixels. */
const step = 1e-3;

/**
 * By how much a figure changes with its points, per pixel: the root of the sum of its squared sensitivity coefficients
 * (GUM 5.1.3) over all coordinates. For a distance it is √2.
 */
export function sensitivityOf(taken: Taken, points: readonly Point[]): number {
  const moved = (place: number, axis: "x" | "y", by: number): readonly Point[] =>
    points.map((one, at) => (at === place ? { ...one, [axis]: one[axis] + by } : one));
  const slopes = points.flatMap((_, place) =>
    (["x", "y"] as const).map((axis) => {
      const sides = [moved(place, axis, step), moved(place, axis, -step)];
      const [more = Number.NaN, less = Number.NaN] = figuresOf(taken, sides);
      return (more - less) / (2 * step);
    }),
  );
  return Math.hypot(...slopes);
}

/** How far the middle of three points lies off the line through the others, in picture pixels: the rise of an arc. */
export function riseOf(points: readonly Point[]): number {
  const [a, b, c] = points;
  if (!a || !b || !c) return Number.NaN;
  const sides = [figureOf("distance", [a, b]), figureOf("distance", [b, c]), figureOf("distance", [c, a])];
  const longest = Math.max(...sides);
  const twiceArea = Math.abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
  return longest === 0 ? 0 : twiceArea / longest;
}
