import { axisX, axisY, ruleX, ruleY, text } from "@observablehq/plot";
import type { Markish } from "@observablehq/plot";
import { formatNumber } from "../../plugin.ts";
import type { Axis } from "./figure.ts";
import { roundPlaces } from "./extent.ts";
import { cutTo, letters } from "./ground.ts";
import type { Ground } from "./ground.ts";

/** The axes of a panel: a line with round places below, one at the left, or the names of what stands in rows. */
export function axesOf(ground: Ground): readonly Markish[] {
  const { panel, palette, x, y, left, width, right, height, top, bottom } = ground;
  const style = { color: palette.soft, fontSize: letters.axis, tickSize: 5, labelArrow: "none" } as const;
  const across = Math.max(2, Math.floor((width - left - right) / 80));
  const edge = panel.marks.some((mark) => mark.mark === "edge");
  const below = [
    axisX([...roundPlaces(x, across, panel.x.scale)], {
      ...style,
      label: null,
      text: (value: number) => formatNumber(value, 6),
    }),
    ruleY([y[0]], { stroke: palette.line, strokeWidth: 1 }),
    // Ends where the axis ends; an axis would put its own label at the edge of the sheet.
    text([labelOf(panel.x)], {
      frameAnchor: "bottom-right",
      lineAnchor: "top",
      dy: 26,
      fill: palette.soft,
      fontSize: letters.axis,
    }),
  ];
  if (edge) return below;
  if (panel.y.names !== undefined) {
    const names = panel.y.names.map((name) => cutTo(name, left - 12, letters.axis));
    return [
      ...below,
      axisY([...names.keys()], {
        ...style,
        color: palette.ink,
        label: null,
        tickSize: 0,
        text: (at: number) => names[at] ?? "",
      }),
    ];
  }
  const up = Math.max(2, Math.floor((height - top - bottom) / 45));
  return [
    ...below,
    axisY([...roundPlaces(y, up, panel.y.scale)], {
      ...style,
      label: labelOf(panel.y),
      labelAnchor: "top",
      labelOffset: left,
      text: (value: number) => formatNumber(value, 6),
    }),
    ruleX([x[0]], { stroke: palette.line, strokeWidth: 1 }),
  ];
}

/** What an axis measures, with its unit. */
export function labelOf({ label, unit }: Axis): string {
  return unit === "1" ? label : `${label} (${unit})`;
}
