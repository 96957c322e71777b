import type { Axis, Mark, Pair, Panel } from "./figure.ts";

/** The ends of both axes of a panel: those it states, else those of its marks with a little room around them. */
export function extentOf(panel: Panel): { readonly x: Pair; readonly y: Pair } {
  const all = panel.marks.map(reachOf);
  const peaks = panel.marks.some((mark) => mark.mark === "peaks");
  return {
    x: endsOf(
      panel.x,
      all.flatMap((one) => one.x),
      panel.marks.some((mark) => roomy.includes(mark.mark)) ? 0.04 : 0,
    ),
    y: endsOf(
      panel.y,
      all.flatMap((one) => one.y),
      peaks ? 0.22 : 0.06,
    ),
  };
}

/** Marks whose ends are to stand clear of the ends of the axis. */
const roomy: readonly Mark["mark"][] = ["dots", "edge", "bars"];

interface Reach {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

function reachOf(mark: Mark): Reach {
  switch (mark.mark) {
    case "line":
    case "strokes":
      return { x: mark.points.map(([x]) => x), y: mark.points.map(([, y]) => y) };
    case "band":
      return { x: mark.points.map(([x]) => x), y: mark.points.flatMap(([, low, high]) => [low, high]) };
    case "dots":
      return {
        x: mark.dots.flatMap(({ at, xEnds }) => [at[0], ...(xEnds ?? [])]),
        y: mark.dots.flatMap(({ at, yEnds }) => [at[1], ...(yEnds ?? [])]),
      };
    case "peaks":
      return { x: mark.peaks.map(({ at }) => at[0]), y: mark.peaks.map(({ at }) => at[1]) };
    case "edge":
      return {
        x: mark.stretches.flatMap(({ from, to }) => [from, to]),
        y: mark.stretches.map(({ row }) => row),
      };
    case "bars":
      return {
        x: mark.bars.flatMap(({ from, to, ends }) => [from, to, ...(ends ?? [])]),
        y: mark.bars.map(({ row }) => row),
      };
    case "reach":
      return mark.axis === "x" ? { x: [mark.from, mark.to], y: [] } : { x: [], y: [mark.from, mark.to] };
    case "rule":
      return mark.axis === "x" ? { x: [mark.at], y: [] } : { x: [], y: [mark.at] };
  }
}

function endsOf(axis: Axis, values: readonly number[], room: number): Pair {
  if (axis.names !== undefined) return [axis.names.length - 0.5, -0.5];
  const finite = values.filter((value) => Number.isFinite(value) && (axis.scale !== "log" || value > 0));
  const [low, high] = [Math.min(...finite), Math.max(...finite)];
  if (finite.length === 0) return axis.scale === "log" ? [1, 10] : [0, 1];
  // Values all alike, but for rounding, are given room around them.
  const alike = high - low <= 1e-9 * Math.max(Math.abs(low), Math.abs(high)) || high - low < 1e-300;
  if (axis.scale === "log") {
    const factor = alike ? 1.1 : (high / low) ** (room + 0.02);
    return [axis.from ?? low / factor, axis.to ?? high * factor];
  }
  const spread = alike ? Math.abs(low) || 1 : high - low;
  const [below, above] = alike ? [0.1, 0.1] : [Math.min(room, 0.06), room];
  return [axis.from ?? low - below * spread, axis.to ?? high + above * spread];
}

/** About `count` round places, two at least, between two ends, in steps of 1, 2 or 5 times a power of ten. */
export function roundPlaces([a, b]: Pair, count: number, scale: Axis["scale"]): readonly number[] {
  const [low, high] = [Math.min(a, b), Math.max(a, b)];
  if (scale === "log" && high / low > 8) {
    const decades = Array.from({ length: 40 }, (_, k) => 10 ** (k - 20));
    for (const steps of [[1, 2, 5], [1, 3], [1]]) {
      const places = decades.flatMap((decade) => steps.map((step) => step * decade));
      const inside = places.filter((place) => place >= low && place <= high);
      if (inside.length <= Math.max(2, count) && inside.length > 1) return inside;
    }
    const tens = decades.filter((place) => place >= low && place <= high);
    const every = Math.ceil(tens.length / Math.max(2, count));
    if (tens.length > 1) return tens.filter((_, place) => place % every === 0);
  }
  const raw = (high - low) / Math.max(1, count);
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = ([1, 2, 5, 10].find((one) => one * power >= raw * (1 - 1e-9)) ?? 10) * power;
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  if (last - first < 1 && count < 20) return roundPlaces([a, b], count + 1, scale);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => (first + k) * step);
}
