import type { Text } from "../../../../base/text/said/said.ts";
import { broken, isRightToLeft } from "../../../map/letters/letters.ts";
import type { LeafRun, Paragraph } from "./leaf.ts";
import type { Shape } from "./room.ts";
import { slideSizes } from "./room.ts";

/** How a talk is laid out: its shape, the language of our own words, and the fonts that it will be set in. */
export interface Setup {
  readonly shape: Shape;
  readonly told: (text: Text) => string;
  /** `bundled`: our own; `any`: those of the machine that opens a file, which may be wider. */
  readonly fonts: "bundled" | "any";
  /** Laid out for a reader from right to left: what stands at the left then stands at the right. */
  readonly mirrored: boolean;
}

/** How much wider than our own the fonts may be: common ones of machines were measured for `any`. */
const wider = {
  bundled: { serif: 1.02, sans: 1.02 },
  any: { serif: 1.22, sans: 1.28 },
} as const;

/** The size of a slide in points. */
export function sizeOf({ shape }: Setup): { readonly width: number; readonly height: number } {
  return slideSizes[shape];
}

/** A paragraph of runs; what direction it has is told by its first letter. */
export function paragraph(
  runs: readonly LeafRun[],
  size: number,
  more: Partial<Pick<Paragraph, "before" | "align">> = {},
): Paragraph {
  return {
    runs,
    size,
    leading: Math.round(size * 1.28),
    before: more.before ?? 0,
    rtl: isRightToLeft(runs.map((run) => run.text).join("")),
    align: more.align ?? "start",
  };
}

/** Into how many lines a paragraph breaks within a width in points. */
export function linesIn({ fonts }: Setup, { runs, size }: Paragraph, width: number): number {
  const [first] = runs;
  if (first === undefined) return 0;
  const text = runs.map((run) => run.text).join("");
  const face = runs.some((run) => run.face === "serif") ? "serif" : "sans";
  const weight = runs.some((run) => run.weight === 600 && run.text.length * 2 > text.length) ? 600 : 400;
  const factor = Math.max(...runs.map((run) => wider[fonts][run.face]));
  return Math.max(1, broken(text, { face, weight, size, width: width / factor, lines: 400 }).length);
}

/** The height of paragraphs one below the other, in points. */
export function heightOf(setup: Setup, lines: readonly Paragraph[], width: number): number {
  return lines.reduce(
    (sum, one, place) => sum + (place === 0 ? 0 : one.before) + linesIn(setup, one, width) * one.leading,
    0,
  );
}
