import type { PlacedBox, Route, Scene, Section } from "../../../src/show/map/scene.ts";

/** A level or upright stretch of a route. */
export interface Stretch {
  readonly route: Route;
  readonly upright: boolean;
  /** Where it lies across its direction, and from where to where along it. */
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** A scene with its section, taken apart for the laws. */
export interface Drawn {
  readonly section: Section;
  readonly scene: Scene;
  readonly stretches: readonly Stretch[];
  readonly boxOf: (id: string) => PlacedBox;
}

/** The stretches of a route, each with its route. */
export function stretchesOf(route: Route): readonly Stretch[] {
  return route.points.slice(1).map((b, at) => {
    const a = route.points[at]!;
    const upright = a.x === b.x;
    const [from, to] = upright ? [a.y, b.y] : [a.x, b.x];
    return { route, upright, at: upright ? a.x : a.y, from: Math.min(from, to), to: Math.max(from, to) };
  });
}

/** Whether a box is the mark of what is cut. */
export function isMark(box: PlacedBox): boolean {
  return box.look.as === "mark";
}
