import type { PrintFont } from "../fonts.ts";
import { seenOrder } from "./order.ts";

/** A piece of a line in one direction and one font: how far from the line's left end it begins, in the unit of the size. */
export interface Run {
  readonly text: string;
  readonly rtl: boolean;
  readonly font: PrintFont;
  readonly x: number;
}

/** A line as it is set: its runs from the left, its width, and the signs that no font has a shape for. */
export interface SetLine {
  readonly runs: readonly Run[];
  readonly width: number;
  readonly lacking: readonly string[];
}

/** Sets a line at a size: each word in the first font that has all of it, else each letter in the first that has it. */
export function setLine(line: string, rtl: boolean, fonts: readonly PrintFont[], size: number): SetLine {
  const runs: Run[] = [];
  const lacking: string[] = [];
  let x = 0;
  for (const stretch of seenOrder(line.normalize("NFC"), rtl)) {
    for (const { text, font } of inFonts(stretch.text, stretch.rtl, fonts, lacking)) {
      const word = text.trimStart();
      const before = font.width(" ".repeat(text.length - word.length), size);
      if (word !== "") runs.push({ text: word.trimEnd(), rtl: stretch.rtl, font, x: x + before });
      x += before + font.width(word, size);
    }
  }
  return { runs, width: x, lacking };
}

interface Piece {
  readonly text: string;
  readonly font: PrintFont;
}

function inFonts(
  text: string,
  rtl: boolean,
  fonts: readonly PrintFont[],
  lacking: string[],
): readonly Piece[] {
  const [usual] = fonts;
  if (usual === undefined) return [];
  if (usual.has(text)) return [{ text, font: usual }];
  const found: { text: string; font: PrintFont }[] = [];
  const add = (piece: string, font: PrintFont): void => {
    const last = found.at(-1);
    if (last?.font === font) last.text += piece;
    else found.push({ text: piece, font });
  };
  for (const word of text.match(/\s+|[^\s]+/gu) ?? []) {
    const whole = fonts.find((font) => font.has(word));
    if (whole !== undefined) {
      add(word, /^\s+$/u.test(word) ? (found.at(-1)?.font ?? whole) : whole);
      continue;
    }
    for (const letter of word.match(/\P{M}[\p{M}\u200c\u200d]*|\p{M}+/gu) ?? []) {
      const one = fonts.find((font) => font.has(letter.replace(/[\u200c\u200d]/g, "")));
      if (one === undefined) lacking.push(letter);
      add(letter, one ?? usual);
    }
  }
  return rtl ? found.reverse() : found;
}
