import { print } from "../pen/palette.ts";
import type { Pen, Stroke } from "../pen/pen.ts";

/** Px of a millimetre on paper: 96 px are an inch, in CSS and in SVG. */
export const pxPerMm = 96 / 25.4;
/** Px of a point. */
export const pxPerPoint = 96 / 72;
/** The smallest letters and the thinnest lines on paper, in points (the least that journals commonly ask for). */
export const leastLetters = 7;
export const leastLine = 0.5;
/** The highest that a picture may be to stand on a page with its caption, in mm. */
export const pageHeight = 230;

/**
 * What drawings made for a screen, whose letters are 11 px at least, are scaled by so that those letters are 7 points high; a
 * little more, since lengths in a file are rounded.
 */
export const onPaper = (leastLetters * pxPerPoint * 1.004) / 11;

/** The colours of paper: black ink on white; blue and red of standings are told by their lines too. */
export const paper = print;

/** A pen for paper: the grid of drawing film stays away, and no line is thinner than half a point at a scale. */
export function paperPen(pen: Pen, scale: number): Pen {
  const least = (leastLine * pxPerPoint) / scale;
  const onFilm = ({ colour }: Stroke): boolean => colour === "grid" || colour === "grid-strong";
  const wide = (stroke: Stroke): Stroke => (stroke.width < least ? { ...stroke, width: least } : stroke);
  const some = (stroke: Stroke | null): Stroke | null => (stroke === null ? null : wide(stroke));
  return {
    line: (points, stroke, corner) => {
      if (!onFilm(stroke)) pen.line(points, wide(stroke), corner);
    },
    lines: (lines, stroke, corner) => {
      if (!onFilm(stroke)) pen.lines(lines, wide(stroke), corner);
    },
    outline: (steps, fill, stroke) => pen.outline(steps, fill, some(stroke)),
    disc: (at, radius, fill, stroke) => pen.disc(at, radius, fill, some(stroke)),
    text: (words, at, letters) => pen.text(words, at, letters),
    part: (id, title, draw) => pen.part(id, title, draw),
  };
}

/** A picture as an SVG file of a size on paper, in mm. */
export interface Printed {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}

/** Gives an SVG its size on paper: its width and height become mm, its inner unit stays. */
export function sizedTo(svg: string, width: number, height: number): Printed {
  const mm = (value: number): string => `${Math.round(value * 1000) / 1000}mm`;
  const sized = svg.replace(/<svg\b[^>]*>/, (root) =>
    root
      .replace(/ width="[^"]*"/, ` width="${mm(width)}"`)
      .replace(/ height="[^"]*"/, ` height="${mm(height)}"`),
  );
  return { svg: sized, width, height };
}
