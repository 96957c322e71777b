import { areaY, dot, line, rect, ruleX, ruleY, text, vector } from "@observablehq/plot";
import type { Markish, VectorShape } from "@observablehq/plot";
import type { Mark, Pair } from "./figure.ts";
import { barMarks } from "./bars.ts";
import { edgeMarks } from "./edge.ts";
import { letters, widthOf } from "./ground.ts";
import { dashes, inKey, widths } from "./key.ts";
import type { Ground } from "./ground.ts";
import { peakMarks } from "./peaks.ts";

/** One of a figure's marks as marks of the plot; what fills comes first, so that it lies under what is drawn. */
export function plotMarks(mark: Mark, ground: Ground): readonly Markish[] {
  const { palette } = ground;
  switch (mark.mark) {
    case "reach":
      return [reach(mark, ground)];
    case "band":
      return [
        areaY(mark.points, {
          x: (one: Band) => one[0],
          y1: (one: Band) => one[1],
          y2: (one: Band) => one[2],
          fill: palette.hair,
          fillOpacity: 0.6,
        }),
      ];
    case "line":
      return [
        line(mark.points, {
          x: first,
          y: second,
          stroke: palette.ink,
          strokeWidth: widths[mark.role],
          ...(dashes[mark.role] === "" ? {} : { strokeDasharray: dashes[mark.role] }),
        }),
      ];
    case "rule":
      return rule(mark, ground);
    case "dots":
      return dots(mark, ground);
    case "strokes":
      return [
        vector(mark.points, {
          x: first,
          y: second,
          length: 10,
          shape: stroke,
          stroke: palette.ink,
          strokeWidth: 1.4,
        }),
      ];
    case "peaks":
      return peakMarks(mark.peaks, ground);
    case "edge":
      return edgeMarks(mark.stretches, ground);
    case "bars":
      return barMarks(mark, ground);
  }
}

type Band = readonly [number, number, number];
type Of<M extends Mark["mark"]> = Extract<Mark, { readonly mark: M }>;

const first = (point: Pair): number => point[0];
const second = (point: Pair): number => point[1];

const stroke: VectorShape = {
  draw(context, length) {
    context.moveTo(0, length / 2);
    context.lineTo(0, -length / 2);
  },
};

function reach({ axis, from, to }: Of<"reach">, { x, y, palette }: Ground): Markish {
  const within = (value: number, [a, b]: Pair): number =>
    Math.min(Math.max(a, b), Math.max(Math.min(a, b), value));
  const ends =
    axis === "x" ? { x1: within(from, x), x2: within(to, x) } : { y1: within(from, y), y2: within(to, y) };
  return rect([0], { ...ends, fill: palette.hair, fillOpacity: 0.6 });
}

/** A line right across, its words at its end: above it to the right, or beside its head. */
function rule(mark: Of<"rule">, ground: Ground): readonly Markish[] {
  const { axis, at, role, label } = mark;
  const { palette, x, px, width, right, left, top } = ground;
  const look = {
    stroke: role === "zero" ? palette.line : palette.ink,
    strokeWidth: widths[role],
    ...(dashes[role] === "" ? {} : { strokeDasharray: dashes[role] }),
  };
  const words = {
    fill: palette.soft,
    fontSize: letters.mark,
    stroke: palette.sheet,
    strokeWidth: 4,
  } as const;
  if (axis === "y") {
    const fits = widthOf(label, letters.mark) < width - left - right;
    const named =
      label !== "" && fits && !inKey(mark, ground.panel)
        ? [text([at], { ...words, x: () => x[1], y: at, text: () => label, textAnchor: "end", dy: -8 })]
        : [];
    return [ruleY([at], look), ...named];
  }
  const room = widthOf(label, letters.mark) + 8;
  const after = px(at) + room < width - right;
  const named =
    label === "" || (!after && px(at) - room < left)
      ? []
      : [
          text([at], {
            ...words,
            x: at,
            frameAnchor: "top",
            text: () => label,
            lineAnchor: "bottom",
            textAnchor: after ? "start" : "end",
            dx: after ? 4 : -4,
            dy: top > 20 ? -4 : 0,
          }),
        ];
  return [ruleX([at], look), ...named];
}

function dots({ dots: all }: Of<"dots">, { palette }: Ground): readonly Markish[] {
  const bar = { stroke: palette.soft, strokeWidth: 1 };
  type One = (typeof all)[number];
  const named = { x: (one: One) => one.at[0], y: (one: One) => one.at[1], title: (one: One) => one.label };
  return [
    ruleX(
      all.filter((one) => one.yEnds !== undefined),
      {
        ...bar,
        x: (one: One) => one.at[0],
        y1: (one: One) => one.yEnds?.[0],
        y2: (one: One) => one.yEnds?.[1],
      },
    ),
    ruleY(
      all.filter((one) => one.xEnds !== undefined),
      {
        ...bar,
        y: (one: One) => one.at[1],
        x1: (one: One) => one.xEnds?.[0],
        x2: (one: One) => one.xEnds?.[1],
      },
    ),
    dot(
      all.filter((one) => one.open !== true),
      { ...named, r: 3.2, fill: palette.ink, stroke: "none" },
    ),
    dot(
      all.filter((one) => one.open === true),
      { ...named, r: 4, fill: palette.sheet, stroke: palette.ink, strokeWidth: 1.6 },
    ),
  ];
}
