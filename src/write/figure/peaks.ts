import { ruleX, text } from "@observablehq/plot";
import type { Markish } from "@observablehq/plot";
import type { Peak } from "./figure.ts";
import { letters, widthOf } from "./ground.ts";
import type { Ground } from "./ground.ts";

/** Places pointed out on a curve: the chief one at its height, its relatives in a row above the drawing where they fit. */
export function peakMarks(peaks: readonly Peak[], ground: Ground): readonly Markish[] {
  const { palette, y } = ground;
  const x = (peak: Peak): number => peak.at[0];
  const halo = { stroke: palette.sheet, strokeWidth: 4 } as const;
  const [strong, weak] = [peaks.filter((peak) => peak.strong), peaks.filter((peak) => !peak.strong)];
  const named = roomy(weak, ground);
  const above = {
    x,
    frameAnchor: "top",
    lineAnchor: "bottom",
    fill: palette.soft,
    fontSize: letters.mark,
  } as const;
  const dotted = { stroke: palette.soft, strokeDasharray: "1.5 4" } as const;
  // A line that runs up through the peak would run through words centred on it.
  const crossed = strong.some((peak) =>
    ground.panel.marks.some(
      (mark) =>
        mark.mark === "rule" &&
        mark.axis === "x" &&
        Math.abs(ground.px(mark.at) - ground.px(peak.at[0])) < 12,
    ),
  );
  const side = crossed ? ({ textAnchor: "end", dx: -8 } as const) : {};
  const at = { x, y: (peak: Peak) => peak.at[1], ...side };
  return [
    ruleX(named, { x, ...dotted, strokeWidth: 1 }),
    ruleX(strong, { x, y1: y[0], y2: (peak: Peak) => peak.at[1], ...dotted, strokeWidth: 1.4 }),
    text(named, { ...above, text: "detail", dy: -19 }),
    text(named, { ...above, text: "label", dy: -5 }),
    text(strong, { ...at, ...halo, text: "label", ...bold, fill: palette.ink, dy: -28 }),
    text(strong, { ...at, ...halo, text: "detail", fill: palette.soft, fontSize: letters.mark, dy: -11 }),
  ];
}

const bold = { fontSize: letters.strong, fontWeight: 600 } as const;

/** Those whose words stand clear of one another and of the sheet's edge, the larger first: they are the plainer ones. */
function roomy(peaks: readonly Peak[], ground: Ground): readonly Peak[] {
  const taken: { readonly from: number; readonly to: number }[] = [];
  return peaks
    .toSorted((a, b) => b.at[0] - a.at[0])
    .filter((peak) => {
      const half =
        Math.max(...[peak.label, peak.detail].map((words) => widthOf(words, letters.mark))) / 2 + 5;
      const x = ground.px(peak.at[0]);
      const free = taken.every((one) => x + half < one.from || x - half > one.to);
      if (!free || x - half < 0 || x + half > ground.width) return false;
      taken.push({ from: x - half, to: x + half });
      return true;
    });
}
