import {
  formatNumber,
  paragraph,
  say,
  type Bar,
  type Dot,
  type Mark,
  type Pair,
  type Panel,
} from "../../src/plugin.ts";
import { densityAt } from "./fit/spread.ts";
import { namesOf, type Row, type Scale } from "./rows.ts";

const POINTS = 80;
/** Standard uncertainties of normal errors to either side of which nothing is drawn. */
const TAIL = 3.3;
/** Foot and head of a curve about the middle of its row, in rows. */
const [FOOT, HEAD] = [0.36, 0.72];

/** How likely each clearance is, one row for each dimension, and where the peg fits. */
export function likelihood(rows: readonly Row[], { unit, size }: Scale, loosest: number | null): Panel {
  const curves = rows.map((row, at) => curveOf(row, at, size, loosest));
  const bounded = rows.filter(({ ends }) => ends.includes(null));
  return {
    title: say`How likely each clearance is`,
    caption: paragraph([
      loosest === null
        ? say`Each curve is drawn to a height of its own; shaded is where the peg fits, to the right of 0.`
        : say`Each curve is drawn to a height of its own; shaded is where the peg fits, to the right of 0 and up to ${`${formatNumber(loosest)} ${unit}`}, the loosest.`,
      say`Points are clearances with their 95 % intervals, or the whole of a range.`,
      bounded.length > 0 ? say`A bound leaves no curve, only a side: ${namesOf(bounded)}.` : null,
    ]),
    shows: "each",
    x: { label: say`clearance, socket less peg`, unit },
    y: { label: "", unit: "1", names: rows.map((row) => row.name) },
    marks: [
      ...curves.flatMap(({ fits }): readonly Mark[] =>
        fits.length === 0 ? [] : [{ mark: "band", points: fits, label: say`fits` }],
      ),
      { mark: "rule", axis: "x", at: 0, role: "main", label: say`just fits` },
      ...(loosest === null
        ? []
        : [{ mark: "rule", axis: "x", at: loosest, role: "null", label: say`loosest` } satisfies Mark]),
      ...curves.flatMap(({ outline }): readonly Mark[] =>
        outline.length === 0 ? [] : [{ mark: "line", points: outline, role: "main", label: say`likelihood` }],
      ),
      {
        mark: "dots",
        label: say`clearance of each dimension`,
        dots: rows.flatMap((row, at) => dotOf(row, at, size)),
      },
      ...(bounded.length === 0 ? [] : [sidesOf(rows, size)]),
    ],
  };
}

interface Curve {
  readonly outline: readonly Pair[];
  readonly fits: readonly (readonly [number, number, number])[];
}

function curveOf({ spread, ends }: Row, row: number, size: number, loosest: number | null): Curve {
  const { centre, widths, u } = spread;
  const half = (widths[0] + widths[1]) / 2 + TAIL * u;
  if (half === 0 || ends.includes(null)) return { outline: [], fits: [] };
  const limits = [0, ...(loosest === null ? [] : [loosest * size])];
  // The edges of even spreads are places too: between them the curve would be cut short.
  const corners = [1, -1].flatMap((sign) => [
    centre + (sign * (widths[0] + widths[1])) / 2,
    centre + (sign * Math.abs(widths[0] - widths[1])) / 2,
  ]);
  const [low, high] = [centre - half, centre + half];
  const places = [
    ...Array.from({ length: POINTS + 1 }, (_, i) => low + (2 * half * i) / POINTS),
    ...[...limits, ...corners].filter((x) => x > low && x < high),
  ].sort((a, b) => a - b);
  const heights = places.map((x) => densityAt(spread, x));
  const top = Math.max(...heights);
  const foot = row + FOOT;
  const points = places.map((x, i): Pair => [x / size, foot - (HEAD * (heights[i] ?? 0)) / top]);
  const within = (x: number): boolean => x >= 0 && (loosest === null || x <= loosest * (1 + 1e-12));
  return {
    outline: points,
    fits: points.filter(([x]) => within(x)).map(([x, y]) => [x, foot, y] as const),
  };
}

function dotOf(row: Row, at: number, size: number): readonly Dot[] {
  const [low, high] = row.interval;
  if (low === null || high === null) return [];
  return [
    {
      at: [row.spread.centre / size, at + FOOT],
      ...(low === high ? {} : { xEnds: [low / size, high / size] as const }),
      label: row.name,
      open: row.flag !== "fits",
    },
  ];
}

/** What a bound leaves: from where on, or up to where, the clearance lies. */
function sidesOf(rows: readonly Row[], size: number): Mark {
  const known = rows.flatMap(({ ends, interval }) => [...ends, ...interval, 0].filter((end) => end !== null));
  const [from, to] = [Math.min(...known), Math.max(...known)];
  const far = (to - from || Math.abs(to) || size) / 5;
  return {
    mark: "bars",
    role: "between",
    bars: rows.flatMap(({ ends: [low, high] }, row): readonly Bar[] => {
      if (high !== null && low === null)
        return [{ row, from: (from - far) / size, to: high / size, open: "less", label: "" }];
      if (low !== null && high === null)
        return [{ row, from: low / size, to: (to + far) / size, open: "more", label: "" }];
      return [];
    }),
    label: say`left open by a bound`,
  };
}
