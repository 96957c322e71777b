import type { Slides } from "../slides.ts";
import type { Box, Paragraph } from "./leaf.ts";
import { heightOf, linesIn, paragraph, sizeOf } from "./measured.ts";
import type { Setup } from "./measured.ts";
import { margin } from "./room.ts";
import { ownRun, wordsRun } from "./words.ts";

/** The slide that a talk opens with: its title, and who speaks of what. */
export function opening({ title, authors, corpus }: Slides, setup: Setup): readonly Box[] {
  const { width, height } = sizeOf(setup);
  const inner = width - 2 * margin;
  const set = (size: number): Paragraph => paragraph([wordsRun(setup, { text: title, lang: null })], size);
  const size = [54, 44, 36].find((one) => linesIn(setup, set(one), inner) <= 3) ?? 30;
  const lines = [
    set(size),
    paragraph([ownRun(setup, corpus)], 24, { before: 18 }),
    ...(authors.length === 0 ? [] : [paragraph([ownRun(setup, authors.join(", "))], 20, { before: 4 })]),
  ];
  const high = heightOf(setup, lines, inner);
  const y = Math.max(40, Math.round((height - high) * 0.42));
  return [{ is: "text", role: "title", lines, x: margin, y, width: inner, height: high }];
}
