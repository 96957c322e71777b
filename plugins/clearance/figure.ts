import { paragraph, say } from "../../src/plugin.ts";
import type { Bar, Computation, Figure, Naming, Panel, Settings } from "../../src/plugin.ts";
import { likelihood } from "./curve.ts";
import { clearanceWords, endsOfSize, namesOf, rowsIn, shownIn, type Row, type Scale } from "./rows.ts";

/** The peg in the socket to scale, dimension by dimension, and how likely each clearance is. */
export function clearanceFigure(computation: Computation, settings: Settings, name: Naming): Figure {
  const rows = rowsIn(computation, name);
  const scale = shownIn(computation);
  const { loosest } = settings;
  const most = loosest?.kind === "quantity" ? loosest.value.value / scale.size : null;
  return {
    title: say`A peg in its socket`,
    panels: [parts(rows, scale), likelihood(rows, scale, most)],
  };
}

function parts(rows: readonly Row[], scale: Scale): Panel {
  const beyond = rows.filter(({ spread, ends }) => spread.centre < 0 && ends[1] !== null);
  const open = rows.some(({ outer, inner }) => outer.open !== null || inner.open !== null);
  const sized = (side: "outer" | "inner"): readonly Bar[] =>
    rows.map((row, at) => barOf(row[side], at, scale.size));
  return {
    title: say`The peg laid into the socket, to scale`,
    caption: paragraph([
      say`Each row is one dimension from one side of both parts: uprights are the walls of the socket, shaded is the peg, above them the clearance. Bars at the ends are 95 % intervals, or the whole of a range.`,
      beyond.length > 0 ? say`The peg reaches beyond the wall: ${namesOf(beyond)}.` : null,
      open ? say`Dashed: known only as at least or at most so much.` : null,
    ]),
    shows: "each",
    x: { label: say`size`, unit: scale.unit, from: 0 },
    y: { label: "", unit: "1", names: rows.map((row) => row.name) },
    marks: [
      { mark: "bars", role: "piece", bars: sized("inner"), label: say`peg` },
      { mark: "bars", role: "opening", bars: sized("outer"), label: say`socket` },
      {
        mark: "bars",
        role: "between",
        bars: rows.map((row, at) => gapOf(row, at, scale)),
        label: say`clearance`,
      },
    ],
  };
}

function barOf(part: Row["outer"], row: number, size: number): Bar {
  const ends = endsOfSize(part);
  return {
    row,
    from: 0,
    to: part.value / size,
    ...(ends === null ? {} : { ends: [ends[0] / size, ends[1] / size] as const }),
    open: part.open,
    label: "",
  };
}

function gapOf(row: Row, at: number, scale: Scale): Bar {
  const [from, to] = [row.inner.value / scale.size, row.outer.value / scale.size];
  return {
    row: at,
    from: Math.min(from, to),
    to: Math.max(from, to),
    open: row.outer.open ?? row.inner.open,
    label: clearanceWords(row, scale),
  };
}
