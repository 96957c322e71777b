import type { Point } from "../../show/map/scene.ts";

/** A colour by what it is for; the palette says what it is in light, in dark and in print. */
export type Colour =
  "sheet" | "paper" | "ink" | "soft" | "hair" | "line" | "grid" | "grid-strong" | "blue" | "red";

/** A line's colour, its width in px, its dashes and gaps in px, and whether its ends are round (a dash of almost nothing is a dot). */
export interface Stroke {
  readonly colour: Colour;
  readonly width: number;
  readonly dash?: readonly number[];
  readonly round?: boolean;
}

/** How letters are set; size in px. The anchor follows the script: the start of a right-to-left text is its right end. */
export interface Letters {
  readonly face: "serif" | "sans";
  readonly size: number;
  readonly weight: 400 | 600;
  readonly colour: Colour;
  readonly anchor: "start" | "middle" | "end";
  readonly rtl: boolean;
  readonly lang: string | null;
}

/** A step of an outline: move, line, quadratic curve (its control point first), or close. */
export type Step =
  | { readonly go: "move" | "line"; readonly to: Point }
  | { readonly go: "curve"; readonly by: Point; readonly to: Point }
  | { readonly go: "close" };

/** What draws: the same calls make a picture on a canvas and in an SVG file. */
export interface Pen {
  /** A line through points, its corners rounded by a radius in px. */
  readonly line: (points: readonly Point[], stroke: Stroke, corner?: number) => void;
  /** Many lines of one stroke, drawn at once. */
  readonly lines: (lines: readonly (readonly Point[])[], stroke: Stroke, corner?: number) => void;
  readonly outline: (steps: readonly Step[], fill: Colour | null, stroke: Stroke | null) => void;
  readonly disc: (at: Point, radius: number, fill: Colour | null, stroke: Stroke | null) => void;
  /** One line of text; `at` is its baseline's anchor point. */
  readonly text: (words: string, at: Point, letters: Letters) => void;
  /** Draws what belongs to one record; a file keeps its name and title. */
  readonly part: (id: string, title: string, draw: () => void) => void;
}
