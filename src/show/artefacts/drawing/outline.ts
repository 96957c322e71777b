import type { Point } from "../../map/scene.ts";

/** What is known of a dimension that an edge is drawn by: measured, a lower bound, or supplied (reconstructed, or at most so much). */
export type EdgeState = "whole" | "broken" | "supplied";

/** A stretch of an outline in metres, run so that the thing lies on its right hand (y down). */
export interface Edge {
  readonly points: readonly Point[];
  readonly state: EdgeState;
}

/** An outline in metres: x from its middle line, y down from its top; a whole circle is round, all else has edges. */
export interface Outline {
  readonly width: number;
  readonly height: number;
  readonly edges: readonly Edge[];
  readonly round: { readonly at: Point; readonly radius: number } | null;
}

/** How a shape is made from its dimensions: format.md 2, `shape`. */
export type Form = "circle" | "rectangle" | "profile";

/** A dimension's value in metres and what is known of it. */
export interface Length {
  readonly metres: number;
  readonly state: EdgeState;
}

/**
 * The outline that dimensions make: of a circle its diameter; of a rectangle its width and height; of a profile its widths from rim
 * to base at equal steps of height, and last the height. Null where there are too few of them or one is not above 0.
 */
export function outlineOf(form: Form, lengths: readonly Length[]): Outline | null {
  if (lengths.length < (form === "circle" ? 1 : 2) || lengths.some(({ metres }) => !(metres > 0)))
    return null;
  const [first] = lengths;
  const last = lengths.at(-1);
  if (!first || !last) return null;
  if (form === "circle") return circle(first);
  return profile(form === "rectangle" ? [first, first] : widthsOf(lengths.slice(0, -1)), last);
}

/** A single width is that of the rim and of the base: straight sides. */
function widthsOf(widths: readonly Length[]): readonly Length[] {
  const [only] = widths;
  return widths.length === 1 && only ? [only, only] : widths;
}

/** An open arc of this angle at the right is where a circle is broken. */
const gapAngle = Math.PI / 3;
const arcSteps = 96;

function circle({ metres, state }: Length): Outline {
  const radius = metres / 2;
  const at = { x: 0, y: radius };
  const size = { width: metres, height: metres };
  if (state === "whole") return { ...size, edges: [], round: { at, radius } };
  const arc = (from: number, to: number, steps: number): readonly Point[] =>
    Array.from({ length: steps + 1 }, (_, n) => {
      const angle = from + ((to - from) * n) / steps;
      return { x: radius * Math.cos(angle), y: radius + radius * Math.sin(angle) };
    });
  const half = gapAngle / 2;
  const edges: readonly Edge[] =
    state === "supplied"
      ? [{ points: arc(0, 2 * Math.PI, arcSteps), state }]
      : [
          { points: arc(half, 2 * Math.PI - half, arcSteps), state: "whole" },
          { points: arc(-half, half, arcSteps / 4), state: "broken" },
        ];
  return { ...size, edges, round: null };
}

function profile(widths: readonly Length[], height: Length): Outline {
  const levels = widths.map((width, n) => ({
    half: width.metres / 2,
    y: (height.metres * n) / (widths.length - 1),
    state: width.state,
  }));
  const right = levels.map(({ half, y }) => ({ x: half, y }));
  const left = levels.map(({ half, y }) => ({ x: -half, y })).reverse();
  const walls = (points: readonly Point[], states: readonly EdgeState[]): readonly Edge[] =>
    points.slice(1).map((to, n) => ({
      points: [points[n] ?? to, to],
      state: lesser(states[n] ?? "whole", states[n + 1] ?? "whole"),
    }));
  const states = levels.map((level) => level.state);
  const [rim, base] = [levels[0], levels.at(-1)];
  const across = (from: number, y: number, state: EdgeState): Edge => ({
    points: [
      { x: from, y },
      { x: -from, y },
    ],
    state,
  });
  return {
    width: 2 * Math.max(...levels.map(({ half }) => half)),
    height: height.metres,
    edges: [
      across(-(rim?.half ?? 0), 0, "whole"),
      ...walls(right, states),
      across(base?.half ?? 0, height.metres, height.state),
      ...walls(left, states.toReversed()),
    ],
    round: null,
  };
}

/** What is known of an edge between two levels: the less of the two. */
function lesser(one: EdgeState, other: EdgeState): EdgeState {
  if (one === "broken" || other === "broken") return "broken";
  return one === "supplied" || other === "supplied" ? "supplied" : "whole";
}
