import type { Cell, Label } from "../../show/artefacts/drawing/cell.ts";
import { letterSizes } from "../../show/artefacts/drawing/cell.ts";
import type { Edge, Outline } from "../../show/artefacts/drawing/outline.ts";
import type { Placed } from "../../show/artefacts/drawing/sheet.ts";
import type { Point } from "../../show/map/scene.ts";
import type { Letters, Pen, Step, Stroke } from "../pen/pen.ts";
import { jagged } from "./jagged.ts";

const heavy: Stroke = { colour: "ink", width: 1.8 };
const supplied: Stroke = { colour: "ink", width: 1.4, dash: [7, 4] };
const fine: Stroke = { colour: "line", width: 0.8 };
const middle: Stroke = { colour: "line", width: 0.8, dash: [12, 3, 2, 3] };
const measure: Stroke = { colour: "ink", width: 0.9 };

/** Draws a thing: paper under it, its heavy outline, the thin ones of its uncertainty, its dimension lines and words. */
export function drawThing(pen: Pen, placed: Placed, perMetre: number): void {
  const { drawn, at } = placed;
  const on = ({ x, y }: Point): Point => ({ x: at.x + x * perMetre, y: at.y + y * perMetre });
  pen.part(drawn.id, drawn.words, () => {
    fill(pen, drawn.outline, on, perMetre);
    middleLines(pen, drawn.outline, on);
    for (const thin of drawn.thin) {
      const apart = Math.max(
        Math.abs(thin.width - drawn.outline.width),
        Math.abs(thin.height - drawn.outline.height),
      );
      // Closer than this it would only make the heavy line look heavier.
      if (apart * perMetre >= 1.5) stroke(pen, thin, on, perMetre, () => fine);
    }
    stroke(pen, drawn.outline, on, perMetre, ({ state }) => (state === "supplied" ? supplied : heavy));
    dimensionLines(pen, placed, at);
    for (const label of placed.labels) pen.text(label.text, moved(label.at, at), lettersOf(label));
  });
}

function fill(pen: Pen, outline: Outline, on: (point: Point) => Point, perMetre: number): void {
  if (outline.round) return pen.disc(on(outline.round.at), outline.round.radius * perMetre, "paper", null);
  const points = outline.edges.flatMap((edge) => pathOf(edge, outline, on));
  const steps = points.map((to, n): Step => ({ go: n === 0 ? "move" : "line", to }));
  pen.outline([...steps, { go: "close" }], "paper", null);
}

function stroke(
  pen: Pen,
  outline: Outline,
  on: (point: Point) => Point,
  perMetre: number,
  strokeOf: (edge: Pick<Edge, "state">) => Stroke,
): void {
  if (outline.round) {
    pen.disc(on(outline.round.at), outline.round.radius * perMetre, null, strokeOf({ state: "whole" }));
  }
  for (const edge of outline.edges) pen.line(pathOf(edge, outline, on), strokeOf(edge));
}

function pathOf(edge: Edge, outline: Outline, on: (point: Point) => Point): readonly Point[] {
  const points = edge.points.map(on);
  if (edge.state !== "broken") return points;
  const [from, to] = [on({ x: -outline.width / 2, y: 0 }), on({ x: outline.width / 2, y: outline.height })];
  return jagged(points, { left: from.x, right: to.x, top: from.y, bottom: to.y });
}

/** The middle line of a thing that is round, and of a circle the other one too. */
function middleLines(pen: Pen, outline: Outline, on: (point: Point) => Point): void {
  const { width, height, round } = outline;
  const lines = [[on({ x: 0, y: 0 }), on({ x: 0, y: height })]];
  if (round || height === width)
    lines.push([on({ x: -width / 2, y: height / 2 }), on({ x: width / 2, y: height / 2 })]);
  pen.lines(lines, middle);
}

/** Dimension lines end in short strokes aslant (common practice on measured drawings). */
function dimensionLines(pen: Pen, { lines }: Pick<Cell, "lines">, at: Point): void {
  pen.lines(
    lines.flatMap((line) => line.leads.map((lead) => lead.map((point) => moved(point, at)))),
    fine,
  );
  pen.lines(
    lines.map((line) => [moved(line.from, at), moved(line.to, at)]),
    measure,
  );
  const slant = ({ x, y }: Point): readonly Point[] => [
    { x: x - 3.5, y: y + 3.5 },
    { x: x + 3.5, y: y - 3.5 },
  ];
  pen.lines(
    lines.flatMap((line) => [line.from, line.to].map((end) => slant(moved(end, at)))),
    { colour: "ink", width: 1.5 },
  );
}

function lettersOf({ role, anchor, rtl }: Label): Letters {
  return {
    face: role === "title" ? "serif" : "sans",
    size: letterSizes[role],
    weight: 400,
    colour: role === "figure" || role === "title" ? "ink" : "soft",
    anchor,
    rtl,
    lang: null,
  };
}

function moved({ x, y }: Point, by: Point): Point {
  return { x: x + by.x, y: y + by.y };
}
