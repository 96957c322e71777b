import type { Point } from "../../show/map/scene.ts";
import type { Step } from "./pen.ts";

/** What a path is traced into: a canvas, or the text of an SVG path. */
export interface Tracer {
  readonly moveTo: (x: number, y: number) => void;
  readonly lineTo: (x: number, y: number) => void;
  readonly quadraticCurveTo: (byX: number, byY: number, x: number, y: number) => void;
  readonly closePath: () => void;
}

/** Traces a line through points; each corner is a quadratic curve of the radius, or of half the shorter side where that is less. */
export function traceLine(points: readonly Point[], corner: number, to: Tracer): void {
  const last = points.length - 1;
  for (let at = 0; at <= last; at++) {
    const point = points[at];
    if (point === undefined) return;
    if (at === 0) to.moveTo(point.x, point.y);
    else if (at === last || corner === 0) to.lineTo(point.x, point.y);
    else turn(points[at - 1] ?? point, point, points[at + 1] ?? point, corner, to);
  }
}

function turn(before: Point, point: Point, after: Point, corner: number, to: Tracer): void {
  const into = Math.hypot(point.x - before.x, point.y - before.y);
  const out = Math.hypot(after.x - point.x, after.y - point.y);
  const radius = Math.min(corner, into / 2, out / 2);
  if (radius === 0) return to.lineTo(point.x, point.y);
  const [a, b] = [radius / into, radius / out];
  to.lineTo(point.x + (before.x - point.x) * a, point.y + (before.y - point.y) * a);
  to.quadraticCurveTo(point.x, point.y, point.x + (after.x - point.x) * b, point.y + (after.y - point.y) * b);
}

/** Traces the steps of an outline. */
export function traceOutline(steps: readonly Step[], to: Tracer): void {
  for (const step of steps) {
    if (step.go === "move") to.moveTo(step.to.x, step.to.y);
    else if (step.go === "line") to.lineTo(step.to.x, step.to.y);
    else if (step.go === "curve") to.quadraticCurveTo(step.by.x, step.by.y, step.to.x, step.to.y);
    else to.closePath();
  }
}
