import type { Text } from "../text/said/said.ts";

/** Two numbers: a place x, y in a panel, or the lower and the upper end of an interval. */
export type Pair = readonly [number, number];

/** A point with its 95 % intervals where it has any; `open` for one that stands apart from the rest. */
export interface Dot {
  readonly at: Pair;
  readonly xEnds?: Pair;
  readonly yEnds?: Pair;
  readonly label: Text;
  readonly open?: boolean;
}

/** A stretch of an edge between two features; `open` is the end where the edge is broken off. */
export interface Stretch {
  /** Place of the row among the names of the y axis. */
  readonly row: number;
  readonly from: number;
  readonly to: number;
  readonly open: "start" | "end" | null;
  /** The open end is nowhere: the stretch is drawn as far as the axis goes and has no length. */
  readonly endless?: true;
}

/** A length in a row, to scale; `ends` are those of the 95 % interval, or the range, of its further end. */
export interface Bar {
  /** Place of the row among the names of the y axis. */
  readonly row: number;
  readonly from: number;
  readonly to: number;
  readonly ends?: Pair;
  /** Known only as at least or at most so much. */
  readonly open: "more" | "less" | null;
  /** Words at the head of its row; empty for none. */
  readonly label: Text;
}

/** A place that is pointed out on a curve, with a line down to the axis. */
export interface Peak {
  readonly at: Pair;
  readonly label: Text;
  readonly detail: Text;
  readonly strong: boolean;
}

/** Marks a plug-in puts into a panel; positions are in the units of the axes, the drawing is somebody else's. */
export type Mark =
  | {
      readonly mark: "line";
      readonly points: readonly Pair[];
      /** `main` is what the panel is about, `other` what it is held against, `null` what chance or one factor would give. */
      readonly role: "main" | "other" | "null";
      readonly label: Text;
    }
  /** Between two curves: x, lower y, upper y. */
  | {
      readonly mark: "band";
      readonly points: readonly (readonly [number, number, number])[];
      readonly label: Text;
    }
  /** Across the whole panel, between two places of one axis. */
  | {
      readonly mark: "reach";
      readonly axis: "x" | "y";
      readonly from: number;
      readonly to: number;
      readonly label: Text;
    }
  | { readonly mark: "dots"; readonly dots: readonly Dot[]; readonly label: Text }
  /** Short strokes across a curve. */
  | { readonly mark: "strokes"; readonly points: readonly Pair[]; readonly label: Text }
  | {
      readonly mark: "rule";
      readonly axis: "x" | "y";
      readonly at: number;
      readonly role: "main" | "null" | "zero";
      readonly label: Text;
      /** Tells the size of a single measurement, in a panel that else shows none. */
      readonly each?: true;
    }
  | { readonly mark: "peaks"; readonly peaks: readonly Peak[]; readonly label: Text }
  | { readonly mark: "edge"; readonly stretches: readonly Stretch[]; readonly label: Text }
  /** Two parts laid over one another, row by row: the walls of an opening, a piece that lies in it, what is between them. */
  | {
      readonly mark: "bars";
      readonly role: "opening" | "piece" | "between";
      readonly bars: readonly Bar[];
      readonly label: Text;
    };

/** An axis; `unit` is `1` where there is none. Its ends are the marks' own where they are not given. */
export interface Axis {
  readonly label: Text;
  readonly unit: string;
  readonly scale?: "log";
  readonly from?: number;
  readonly to?: number;
  /** Names of the places 0, 1, 2 …, from the top, on an axis that tells things apart. */
  readonly names?: readonly Text[];
}

/** One coordinate system of a figure, with the words that belong under it. */
export interface Panel {
  readonly title: Text;
  /** What is to be seen, in sentences: the caption, and what is read aloud in place of the drawing. */
  readonly caption: Text;
  /** Whether single measurements can be read off it, or only what they come to together. */
  readonly shows: "each" | "together";
  readonly x: Axis;
  readonly y: Axis;
  readonly marks: readonly Mark[];
}

/** A figure as data: panels from top to bottom; the drawing is somebody else's. */
export interface Figure {
  readonly title: Text;
  readonly panels: readonly Panel[];
}
