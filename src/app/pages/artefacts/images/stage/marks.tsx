import { useRef } from "react";
import type { KeyboardEvent } from "react";
import type { Point } from "../../../../../show/artefacts/picture/points.ts";
import { imageWords as words } from "../../../../words/recording/images.ts";
import type { PointSet } from "../measure/draft.ts";
import { arrows, within } from "./stage.tsx";
import { inPicture, onFrame } from "./view.ts";
import type { Size, View } from "./view.ts";

interface Props {
  readonly set: PointSet;
  readonly readings: readonly (readonly Point[])[];
  /** All readings, or the last alone. */
  readonly all: boolean;
  /** The points are on a circle, not at the ends of lines. */
  readonly round: boolean;
  readonly view: View;
  readonly size: Size;
  readonly onMove: (at: readonly [reading: number, place: number], to: Point) => void;
  readonly onTake: (reading: number) => void;
}

/** The points of a set over its picture, joined by lines; each can be dragged, or moved by the arrow keys. */
export function Marks({ set, readings, all, round, view, size, onMove, onTake }: Props) {
  return readings.map((points, reading) => {
    if (!all && reading !== readings.length - 1) return null;
    const seen = points.map((one) => onFrame(one, view));
    const line = seen
      .map(({ x, y }, place) => `${place === 0 ? "M" : "L"}${String(x)} ${String(y)}`)
      .join("");
    const circle = round ? circleThrough(seen) : null;
    return (
      <g key={reading} className={`reading ${set}`}>
        {[true, false].map((halo) => (
          <g key={String(halo)} className={halo ? "halo" : "drawn"} aria-hidden="true">
            {circle ? <circle cx={circle.x} cy={circle.y} r={circle.radius} /> : <path d={line} />}
          </g>
        ))}
        {points.map((point, place) => (
          <Mark
            key={place}
            name={`${words.pointNamed(words.sets[set], reading + 1, place + 1)}, ${words.at(String(point.x), String(point.y))}`}
            seen={onFrame(point, view)}
            onMove={(to) => onMove([reading, place], inPicture(to, view, size))}
            onStep={(by) => onMove([reading, place], within({ x: point.x + by.x, y: point.y + by.y }, size))}
            onTake={() => onTake(reading)}
          />
        ))}
      </g>
    );
  });
}

interface MarkProps {
  readonly name: string;
  readonly seen: Point;
  /** To a point of the frame. */
  readonly onMove: (to: Point) => void;
  readonly onStep: (by: Point) => void;
  readonly onTake: () => void;
}

function Mark({ name, seen, onMove, onStep, onTake }: MarkProps) {
  const dragged = useRef(false);
  const onKeyDown = (event: KeyboardEvent): void => {
    const arrow = arrows[event.key];
    const by = event.shiftKey ? 10 : 1;
    if (arrow) onStep({ x: arrow.x * by, y: arrow.y * by });
    else if (event.key === "Delete") onTake();
    else return;
    event.preventDefault();
  };
  const tick = `M${String(seen.x - 6)} ${String(seen.y)}h12M${String(seen.x)} ${String(seen.y - 6)}v12`;
  return (
    <g
      className="mark"
      role="button"
      tabIndex={0}
      aria-label={name}
      onKeyDown={onKeyDown}
      onPointerDown={(event) => {
        event.stopPropagation();
        event.currentTarget.setPointerCapture(event.pointerId);
        dragged.current = true;
      }}
      onPointerMove={(event) => {
        if (!dragged.current) return;
        // It goes on to the picture, whose cross and loupe follow.
        const frame = event.currentTarget.ownerSVGElement?.getBoundingClientRect();
        onMove({ x: event.clientX - (frame?.left ?? 0), y: event.clientY - (frame?.top ?? 0) });
      }}
      onPointerUp={() => {
        dragged.current = false;
      }}
      onPointerCancel={() => {
        dragged.current = false;
      }}
    >
      <circle className="hold" cx={seen.x} cy={seen.y} r={12} />
      <path className="halo" d={tick} />
      <path d={tick} />
    </g>
  );
}

/** The circle through three points of the frame; null where they lie in one line, or it would not be seen as one. */
function circleThrough(points: readonly Point[]): (Point & { readonly radius: number }) | null {
  const [a, b, c] = points;
  if (!a || !b || !c) return null;
  const twice = 2 * (a.x * (b.y - c.y) + b.x * (c.y - a.y) + c.x * (a.y - b.y));
  const square = ({ x, y }: Point): number => x * x + y * y;
  const x = (square(a) * (b.y - c.y) + square(b) * (c.y - a.y) + square(c) * (a.y - b.y)) / twice;
  const y = (square(a) * (c.x - b.x) + square(b) * (a.x - c.x) + square(c) * (b.x - a.x)) / twice;
  const radius = Math.hypot(a.x - x, a.y - y);
  return Number.isFinite(radius) && radius < 50_000 ? { x, y, radius } : null;
}
