import { extentOf } from "../figure/extent.ts";
import type { Mark, Pair, Panel } from "../figure/figure.ts";

/** A panel that tells things apart in rows, divided into several with so many rows each at most; its axis stays that of the whole. */
export function inParts(panel: Panel, most: number): readonly Panel[] {
  const { names } = panel.y;
  if (names === undefined || names.length <= most) return [panel];
  const [from, to] = extentOf(panel).x;
  const count = Math.ceil(names.length / most);
  const each = Math.ceil(names.length / count);
  return Array.from({ length: count }, (_, part): Panel => {
    const first = part * each;
    const rows = names.slice(first, first + each);
    const isIn = (row: number): boolean => row >= first - 0.5 && row < first + rows.length - 0.5;
    return {
      ...panel,
      x: { ...panel.x, from, to },
      y: { ...panel.y, names: rows },
      marks: panel.marks.map((mark) => ofRows(mark, first, isIn)),
    };
  });
}

function ofRows(mark: Mark, first: number, isIn: (row: number) => boolean): Mark {
  const moved = ([x, y]: Pair): Pair => [x, y - first];
  switch (mark.mark) {
    case "dots":
      return {
        ...mark,
        dots: mark.dots.flatMap((dot) => (isIn(dot.at[1]) ? [{ ...dot, at: moved(dot.at) }] : [])),
      };
    case "edge":
      return {
        ...mark,
        stretches: mark.stretches.flatMap((one) => (isIn(one.row) ? [{ ...one, row: one.row - first }] : [])),
      };
    case "bars":
      return {
        ...mark,
        bars: mark.bars.flatMap((one) => (isIn(one.row) ? [{ ...one, row: one.row - first }] : [])),
      };
    case "line":
    case "strokes":
      return { ...mark, points: mark.points.filter(([, y]) => isIn(y)).map(moved) };
    case "band":
      return {
        ...mark,
        points: mark.points
          .filter(([, low]) => isIn(low))
          .map(([x, low, high]) => [x, low - first, high - first] as const),
      };
    case "peaks":
      return {
        ...mark,
        peaks: mark.peaks.flatMap((one) => (isIn(one.at[1]) ? [{ ...one, at: moved(one.at) }] : [])),
      };
    case "rule":
    case "reach":
      return mark;
  }
}
