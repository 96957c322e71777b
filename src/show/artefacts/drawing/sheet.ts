import { metricBar, unitBar } from "./bar.ts";
import type { Bar, BarUnit } from "./bar.ts";
import { cellOf } from "./cell.ts";
import type { Cell, DrawingWords } from "./cell.ts";
import type { DrawnInWords } from "./drawn.ts";
import type { Point } from "../../map/scene.ts";

/** Px of a millimetre on paper: 96 px are an inch, in CSS and in SVG. */
export const pxPerMm = 96 / 25.4;

/** A thing in its place on the sheet: where the middle of its top lies. */
export interface Placed extends Cell {
  readonly at: Point;
}

/** A drawing to scale on its sheet, in px. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  /** 20 means 1:20. */
  readonly scale: number;
  readonly perMetre: number;
  readonly things: readonly Placed[];
  readonly bars: readonly { readonly at: Point; readonly bar: Bar }[];
  /** The unit of the second bar does not fit on the sheet. */
  readonly unitTooLong: boolean;
}

/** How a drawing is laid out: the sheet's width in px, the unit of the second bar, and its words. */
export interface Frame {
  readonly width: number;
  /** No thing is drawn higher than this many px; left out, as high as a page with room for its title. */
  readonly tallest?: number;
  readonly unit: BarUnit | null;
  readonly words: DrawingWords;
}

const margin = 20;
const between = 30;
const rowGap = 34;
const pageful = 200 * pxPerMm;
/** The usual scales, from life size on: 1:1, 1:2, 1:5, 1:10 and so on (common practice). */
export const usualScales: readonly number[] = Array.from({ length: 22 }, (_, n) => {
  return ([1, 2, 5][n % 3] ?? 1) * 10 ** Math.floor(n / 3);
});

/**
 * Lays groups of things out, all at one usual scale: the largest at which each of them fits on the sheet, or one somewhat
 * smaller where more of them then stand side by side.
 */
export function sheetOf(groups: readonly (readonly DrawnInWords[])[], frame: Frame): Sheet {
  const room = frame.width - 2 * margin;
  const laid = usualScales.map((one) => rowsAt(groups, one, room, frame));
  const largest = laid.find((one) => one.fits) ?? laid.at(-1);
  if (!largest) throw new Error("sheetOf: no scale");
  const most = largest.scale * (groups.flat().length === 2 ? 5 : 2.5);
  const near = laid.filter((one) => one.scale >= largest.scale && one.scale <= most);
  const { scale, rows } = near.reduce(
    (best, one) => (one.rows.length < best.rows.length ? one : best),
    largest,
  );
  const perMetre = (1000 * pxPerMm) / scale;
  const things: Placed[] = [];
  let y = margin;
  for (const row of rows) {
    const above = Math.max(...row.map((cell) => cell.above));
    const height = Math.max(...row.map((cell) => cell.height));
    const inner = row.reduce((sum, cell) => sum + cell.left + cell.right, 0);
    const gap = Math.min(3 * between, (room - inner) / (row.length + 1));
    let x = margin + (room - inner - gap * (row.length - 1)) / 2;
    for (const cell of row) {
      things.push({ ...cell, at: { x: x + cell.left, y: y + above + sinkOf(row, cell, height) } });
      x += cell.left + cell.right + gap;
    }
    y +=
      above + Math.max(...row.map((cell) => sinkOf(row, cell, height) + cell.height + cell.below)) + rowGap;
  }
  const bars = barsOf(frame, perMetre, room, y);
  const last = Math.max(y, ...bars.map((one) => one.at.y));
  const unitTooLong = frame.unit !== null && bars.length < 2;
  return { width: frame.width, height: last + 40, scale, perMetre, things, bars, unitTooLong };
}

/** Profiles hang from one line, as from the turf; round things and rectangles stand on one. */
function sinkOf(row: readonly Cell[], cell: Cell, height: number): number {
  return row.some((one) => one.drawn.form === "profile") ? 0 : height - cell.height;
}

interface Rows {
  readonly scale: number;
  readonly rows: readonly (readonly Cell[])[];
  readonly fits: boolean;
}

function rowsAt(
  groups: readonly (readonly DrawnInWords[])[],
  scale: number,
  room: number,
  { words, tallest = pageful }: Frame,
): Rows {
  const perMetre = (1000 * pxPerMm) / scale;
  const cells = groups.map((group) => group.map((drawn) => cellOf(drawn, perMetre, words)));
  const rows = cells.flatMap((group) => {
    const packed = inRows(group, room, group.length).length;
    return inRows(group, room, Math.ceil(group.length / packed));
  });
  const within = (cell: Cell): boolean => cell.height <= tallest && cell.left + cell.right <= room;
  return { scale, rows, fits: cells.flat().every(within) };
}

/** Rows filled one after the other, so many things in each at most. */
function inRows(cells: readonly Cell[], room: number, abreast: number): readonly (readonly Cell[])[] {
  const rows: Cell[][] = [];
  let used = 0;
  for (const cell of cells) {
    const wide = cell.left + cell.right;
    const row = rows.at(-1);
    if (row && row.length < abreast && used + between + wide <= room) {
      row.push(cell);
      used += between + wide;
    } else {
      rows.push([cell]);
      used = wide;
    }
  }
  return rows;
}

/** The metric bar, and beside it, or below where there is no room, the one in the unit asked for. */
function barsOf(frame: Frame, perMetre: number, room: number, y: number): Sheet["bars"] {
  const longest = Math.min(room - 60, 75 * pxPerMm);
  const first = { at: { x: margin, y }, bar: metricBar(perMetre, longest) };
  const bar = frame.unit === null ? null : unitBar(frame.unit, perMetre, longest);
  if (bar === null) return [first];
  const x = margin + first.bar.length + 84;
  const beside = x + bar.length + bar.u + 90 <= frame.width;
  return [first, { at: beside ? { x, y } : { x: margin, y: y + 46 }, bar }];
}
