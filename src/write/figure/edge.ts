import { ruleX, ruleY, text } from "@observablehq/plot";
import type { Markish } from "@observablehq/plot";
import { formatNumber } from "../../plugin.ts";
import type { Stretch } from "./figure.ts";
import { cutTo, letters, widthOf } from "./ground.ts";
import type { Ground } from "./ground.ts";

/** Rows of stretches to scale: an upright at each feature, none where an edge is broken off, lengths where they fit. */
export function edgeMarks(
  stretches: readonly Stretch[],
  { panel, palette, px, x, width, left }: Ground,
): readonly Markish[] {
  const length = {
    x1: (one: Stretch) => one.from,
    x2: (one: Stretch) => one.to,
    y: (one: Stretch) => one.row,
  };
  const uprights = stretches.flatMap(({ row, from, to, open }) => [
    ...(open === "start" ? [] : [{ row, at: from }]),
    ...(open === "end" ? [] : [{ row, at: to }]),
  ]);
  type Upright = (typeof uprights)[number];
  const sized = stretches.map((one) => {
    const words = `${one.open === null ? "" : "≥ "}${formatNumber(one.to - one.from, 3)}`;
    const fits = one.endless !== true && px(one.to) - px(one.from) > widthOf(words, 11) + 4;
    return { ...one, words, fits };
  });
  type Sized = (typeof sized)[number];
  const room = width - left;
  const names = (panel.y.names ?? []).map((name, row) => ({
    name: cutTo(name, room, letters.mark, 600),
    row,
  }));
  return [
    ruleY(
      stretches.filter((one) => one.open === null),
      { ...length, stroke: palette.ink, strokeWidth: 1.4 },
    ),
    ruleY(
      stretches.filter((one) => one.open !== null),
      {
        ...length,
        stroke: palette.ink,
        strokeWidth: 1.4,
        strokeDasharray: "4 4",
      },
    ),
    ruleX(uprights, {
      x: (one: Upright) => one.at,
      y1: (one: Upright) => one.row - 0.16,
      y2: (one: Upright) => one.row + 0.16,
      stroke: palette.ink,
      strokeWidth: 2.4,
    }),
    text(
      sized.filter((one) => one.fits),
      {
        x: (one: Sized) => (one.from + one.to) / 2,
        y: (one: Sized) => one.row,
        text: (one: Sized) => one.words,
        dy: 11,
        fill: palette.soft,
        fontSize: 11,
        fontVariant: "tabular-nums",
      },
    ),
    text(names, {
      x: () => x[0],
      y: (one: { readonly row: number }) => one.row,
      text: "name",
      textAnchor: "start",
      dy: -24,
      fill: palette.ink,
      fontSize: letters.mark,
      fontWeight: 600,
    }),
  ];
}
