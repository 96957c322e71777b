import { metricBar, unitBar } from "../../../show/artefacts/drawing/bar.ts";
import type { BarUnit } from "../../../show/artefacts/drawing/bar.ts";
import { cellOf } from "../../../show/artefacts/drawing/cell.ts";
import type { Cell, DrawingWords } from "../../../show/artefacts/drawing/cell.ts";
import type { DrawnInWords } from "../../../show/artefacts/drawing/drawn.ts";
import { pxPerMm, usualScales } from "../../../show/artefacts/drawing/sheet.ts";
import type { Sheet } from "../../../show/artefacts/drawing/sheet.ts";

/** The sheet that a slide has room for, in px, and what is drawn on it besides. */
interface Frame {
  readonly width: number;
  readonly height: number;
  readonly unit: BarUnit | null;
  readonly words: DrawingWords;
}

const margin = { across: 12, down: 3 } as const;
/** What is free between two things, and before the bars. */
const gap = 30;
/** The bars stand in a column at the side: a slide is wide and low. */
const barColumns = { wide: 190, narrow: 132 } as const;
/** A sheet narrower than this, in px, is one of 4:3. */
const narrow = 500;

/** Things in one row at the largest usual scale at which they fit, the scale and its bars at their side. */
export function besideBars(things: readonly DrawnInWords[], frame: Frame): Sheet {
  const { width, height, unit, words } = frame;
  const barColumn = width < narrow ? barColumns.narrow : barColumns.wide;
  const roomy = width - barColumn - gap - 2 * margin.across;
  const at = (scale: number) => {
    const perMetre = (1000 * pxPerMm) / scale;
    const cells = things.map((drawn) => cellOf(drawn, perMetre, words));
    const across = cells.reduce((sum, cell) => sum + cell.left + cell.right + gap, -gap);
    const down = highest(cells, "above") + highest(cells, "height") + highest(cells, "below");
    return {
      scale,
      perMetre,
      cells,
      across,
      down,
      fits: across <= roomy && down <= height - 2 * margin.down,
    };
  };
  const laid = usualScales.map(at);
  const best = laid.find((one) => one.fits) ?? laid.at(-1);
  if (best === undefined) throw new Error("besideBars: no scale");
  const { perMetre, cells, scale } = best;
  const hung = cells.some((cell) => cell.drawn.form === "profile");
  const [above, tall] = [highest(cells, "above"), highest(cells, "height")];
  let x = margin.across + Math.max(0, (roomy - best.across) / 2);
  const placed = cells.map((cell) => {
    const sink = hung ? 0 : tall - cell.height;
    const one = { ...cell, at: { x: x + cell.left, y: margin.down + above + sink } };
    x += cell.left + cell.right + gap;
    return one;
  });
  const longest = barColumn - 60;
  const second = unit === null ? null : unitBar(unit, perMetre, longest);
  const down = Math.min(height, best.down + 2 * margin.down);
  const bars = [metricBar(perMetre, longest), ...(second === null ? [] : [second])].map((bar, place) => ({
    at: { x: width - margin.across - barColumn, y: down / 2 - 20 + 56 * place },
    bar,
  }));
  return {
    width,
    height: Math.max(down, 150),
    scale,
    perMetre,
    things: placed,
    bars,
    unitTooLong: unit !== null && second === null,
  };
}

function highest(cells: readonly Cell[], what: "above" | "height" | "below"): number {
  return Math.max(0, ...cells.map((cell) => cell[what]));
}
