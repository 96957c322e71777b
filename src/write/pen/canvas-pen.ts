import type { Point } from "../../show/map/scene.ts";
import { familyList } from "./faces.ts";
import type { Palette } from "./palette.ts";
import type { Colour, Letters, Pen, Stroke } from "./pen.ts";
import { traceLine, traceOutline } from "./trace.ts";
import type { Tracer } from "./trace.ts";

/** What the pen asks of a canvas: the shape of the browser's context in two dimensions. */
export interface Canvas extends Tracer {
  fillStyle: unknown;
  strokeStyle: unknown;
  lineWidth: number;
  lineCap: string;
  lineJoin: string;
  miterLimit: number;
  font: string;
  textAlign: string;
  textBaseline: string;
  direction: string;
  readonly beginPath: () => void;
  readonly arc: (x: number, y: number, radius: number, from: number, to: number) => void;
  readonly fill: () => void;
  readonly stroke: () => void;
  readonly fillText: (words: string, x: number, y: number) => void;
  readonly setLineDash: (dash: number[]) => void;
}

const lists = { serif: familyList("serif", '"'), sans: familyList("sans", '"') } as const;
const aligned = { start: "start", middle: "center", end: "end" } as const;
const whole: readonly number[] = [];

/** Makes a pen for one picture on a canvas, under whatever transform the canvas has; nothing else may draw on it meanwhile. */
export function canvasPen(canvas: Canvas, palette: Palette): Pen {
  canvas.lineJoin = "miter";
  // What SVG does where a file says nothing.
  canvas.miterLimit = 4;
  canvas.textBaseline = "alphabetic";
  const strike = striker(canvas, palette);
  const write = writer(canvas, palette);
  const paint = (fill: Colour | null, stroke: Stroke | null): void => {
    if (fill !== null) {
      canvas.fillStyle = palette[fill];
      canvas.fill();
    }
    if (stroke !== null) strike(stroke);
  };
  return {
    line: (points, stroke, corner = 0) => {
      canvas.beginPath();
      traceLine(points, corner, canvas);
      strike(stroke);
    },
    lines: (lines, stroke, corner = 0) => {
      canvas.beginPath();
      for (const points of lines) traceLine(points, corner, canvas);
      strike(stroke);
    },
    outline: (steps, fill, stroke) => {
      canvas.beginPath();
      traceOutline(steps, canvas);
      paint(fill, stroke);
    },
    disc: (at, radius, fill, stroke) => {
      canvas.beginPath();
      canvas.arc(at.x, at.y, radius, 0, 2 * Math.PI);
      paint(fill, stroke);
    },
    text: write,
    part: (_id, _title, draw) => draw(),
  };
}

/** Strokes the path that was traced; the canvas is told only what differs from the stroke before. */
function striker(canvas: Canvas, palette: Palette): (stroke: Stroke) => void {
  let last: Stroke | null = null;
  return (stroke) => {
    if (stroke !== last) {
      canvas.strokeStyle = palette[stroke.colour];
      canvas.lineWidth = stroke.width;
      canvas.lineCap = stroke.round ? "round" : "butt";
      canvas.setLineDash([...(stroke.dash ?? whole)]);
      last = stroke;
    }
    canvas.stroke();
  };
}

function writer(canvas: Canvas, palette: Palette): (words: string, at: Point, letters: Letters) => void {
  let font = "";
  return (words, at, letters) => {
    const wanted = `${letters.weight} ${letters.size}px ${lists[letters.face]}`;
    if (wanted !== font) {
      canvas.font = wanted;
      font = wanted;
    }
    canvas.direction = letters.rtl ? "rtl" : "ltr";
    canvas.textAlign = aligned[letters.anchor];
    canvas.fillStyle = palette[letters.colour];
    canvas.fillText(words, at.x, at.y);
  };
}
