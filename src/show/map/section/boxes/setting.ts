import { broken, isRightToLeft, textWidth } from "../../letters/letters.ts";
import type { Measure } from "../../letters/letters.ts";
import type { Setting } from "../../scene.ts";

/** A text broken to a width. */
export function settingOf(text: string, measure: Measure, lang: string | null = null): Setting {
  return { lines: broken(text, measure), rtl: isRightToLeft(text), lang };
}

/** Width in px of the longest line of a setting. */
export function settingWidth(
  { lines }: Setting,
  { face, size, weight }: Omit<Measure, "width" | "lines">,
): number {
  return Math.ceil(Math.max(0, ...lines.map((line) => textWidth(line, face, size, weight))));
}

/** Whether a text is broken to a measure without losing anything. */
export function fitsWhole(text: string, measure: Measure): boolean {
  return broken(text, { ...measure, lines: measure.lines + 1 }).length <= measure.lines;
}

/** One line of a text, ended by `…` where it is too long. */
export function oneLine(text: string, measure: Omit<Measure, "lines">): string {
  return broken(text, { ...measure, lines: 1 })[0] ?? "";
}
