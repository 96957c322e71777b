import { formatNumber } from "../../base/quantity/quantity-print.ts";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Axis, Mark, Pair, Panel } from "../../plugin.ts";

/** The data of some marks as a table. */
export interface PanelTable {
  readonly title: Text;
  readonly head: readonly Text[];
  readonly rows: readonly (readonly Text[])[];
  /** How many points a curve has, where only some of them are listed. */
  readonly of: number | null;
}

/** Most points of a curve that are worth reading one by one. */
const MOST = 40;

/** What a panel shows, in tables: one for each kind of mark that has data. */
export function tablesOf(panel: Panel): readonly PanelTable[] {
  return panel.marks.flatMap((mark) => tableOf(mark, panel)).filter((table) => table.rows.length > 0);
}

function tableOf(mark: Mark, { x, y }: Panel): readonly PanelTable[] {
  const [across, up] = [headOf(x), headOf(y)];
  // In rows of names a curve has a shape and no heights that could be read.
  if (y.names !== undefined && (mark.mark === "line" || mark.mark === "band")) return [];
  switch (mark.mark) {
    case "line": {
      const points = thinned(mark.points);
      return [
        {
          title: mark.label,
          head: [across, up],
          rows: points.map(([a, b]) => [shown(a), shown(b)]),
          of: points.length < mark.points.length ? mark.points.length : null,
        },
      ];
    }
    case "strokes":
      return [
        {
          title: mark.label,
          head: [across, up],
          rows: mark.points.map(([a, b]) => [shown(a), shown(b)]),
          of: null,
        },
      ];
    case "peaks":
      return [
        {
          title: mark.label,
          head: [say`which`, across, up],
          rows: mark.peaks.map(({ at, label, detail }) => [detail, label, shown(at[1])]),
          of: null,
        },
      ];
    case "dots": {
      const [wide, high] = [mark.dots.some((one) => one.xEnds), mark.dots.some((one) => one.yEnds)];
      const columns = [
        { head: across, cell: (at: number) => shown(mark.dots[at]?.at[0]) },
        ...(wide ? [{ head: "95 %", cell: (at: number) => ends(mark.dots[at]?.xEnds) }] : []),
        ...(y.names ? [] : [{ head: up, cell: (at: number) => shown(mark.dots[at]?.at[1]) }]),
        ...(high ? [{ head: "95 %", cell: (at: number) => ends(mark.dots[at]?.yEnds) }] : []),
      ];
      return [
        {
          title: mark.label,
          head: [say`which`, ...columns.map((column) => column.head)],
          rows: mark.dots.map((one, at) => [one.label, ...columns.map((column) => column.cell(at))]),
          of: null,
        },
      ];
    }
    case "edge":
      return (y.names ?? []).map((name, row) => ({
        title: name,
        head: [say`from (${x.unit})`, say`to (${x.unit})`, say`length (${x.unit})`],
        rows: mark.stretches
          .filter((one) => one.row === row)
          .map(({ from, to, open, endless }) => [
            endless && open === "start" ? "…" : shown(from),
            endless && open === "end" ? "…" : shown(to),
            endless ? "…" : `${open === null ? "" : "≥ "}${shown(to - from)}`,
          ]),
        of: null,
      }));
    case "bars":
      return [
        {
          title: mark.label,
          head: [say`which`, say`from (${x.unit})`, say`to (${x.unit})`, "95 %"],
          rows: mark.bars.map(({ row, from, to, ends: both, open }) => [
            y.names?.[row] ?? "",
            shown(from),
            `${open === null ? "" : open === "more" ? "≥ " : "≤ "}${shown(to)}`,
            ends(both),
          ]),
          of: null,
        },
      ];
    case "rule":
      return mark.label === ""
        ? []
        : [
            {
              title: mark.label,
              head: [mark.axis === "x" ? across : up],
              rows: [[shown(mark.at)]],
              of: null,
            },
          ];
    case "reach":
      return [
        {
          title: mark.label,
          head: [mark.axis === "x" ? across : up],
          rows: [[say`${shown(mark.from)} to ${shown(mark.to)}`]],
          of: null,
        },
      ];
    case "band": {
      const points = thinned(mark.points);
      return [
        {
          title: mark.label,
          head: [across, say`from`, say`to`],
          rows: points.map((point) => point.map(shown)),
          of: points.length < mark.points.length ? mark.points.length : null,
        },
      ];
    }
  }
}

function headOf({ label, unit }: Axis): Text {
  return unit === "1" ? label : say`${label} (${unit})`;
}

function shown(value: number | undefined): string {
  return value === undefined ? "" : formatNumber(value, 4);
}

function ends(pair: Pair | undefined): Text {
  return pair === undefined ? "" : say`${shown(pair[0])} to ${shown(pair[1])}`;
}

function thinned<P>(points: readonly P[]): readonly P[] {
  const step = Math.ceil(points.length / MOST);
  return points.filter((_, at) => at % step === 0 || at === points.length - 1);
}
