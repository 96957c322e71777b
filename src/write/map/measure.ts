import { broken, textWidth } from "../../show/map/letters/letters.ts";

/** How letters are measured: their face and weight. */
export interface Cut {
  readonly face: "serif" | "sans";
  readonly weight: 400 | 600;
}

const most = 20_000;
const widths = new Map<string, number>();
const breaks = new Map<string, readonly string[]>();

/** A text's width in px at a size; kept, because a picture is drawn again with every frame. */
export function widthOf(words: string, { face, weight }: Cut, size: number): number {
  const key = `${face}${weight} ${words}`;
  const known = widths.get(key);
  if (known !== undefined) return known * size;
  const width = textWidth(words, face, 100, weight) / 100;
  if (widths.size >= most) widths.clear();
  widths.set(key, width);
  return width * size;
}

/** A text broken to so many lines of a width in px at a size; kept too. */
export function linesOf(
  words: string,
  cut: Cut,
  { size, width, lines }: { readonly size: number; readonly width: number; readonly lines: number },
): readonly string[] {
  const key = `${cut.face}${cut.weight} ${size} ${width} ${lines} ${words}`;
  const known = breaks.get(key);
  if (known !== undefined) return known;
  const found = broken(words, { ...cut, size, width, lines });
  if (breaks.size >= most) breaks.clear();
  breaks.set(key, found);
  return found;
}

/** Lines of whole words as `linesOf` breaks them; none where a word is wider than the width. */
export function wordsIn(
  words: string,
  cut: Cut,
  room: { readonly size: number; readonly width: number; readonly lines: number },
): readonly string[] {
  const isWhole = words.split(/\s+/u).every((word) => widthOf(word, cut, room.size) <= room.width);
  return isWhole ? linesOf(words, cut, room) : [];
}

/** A text on one line within a width, ending at a word with `…` where it has to; widths in px on the screen, to 8 px. */
export function fitted(words: string, cut: Cut, size: number, width: number): string {
  if (widthOf(words, cut, size) <= width) return words;
  const stepped = Math.floor(width / 8) * 8;
  return stepped < 2 * size ? "" : (linesOf(words, cut, { size, width: stepped, lines: 1 })[0] ?? "");
}

/** A figure as it is set in a width: its words and their size, in px on the screen. */
export interface Figure {
  readonly words: string;
  readonly size: number;
}

/** A figure in a width: smaller down to 11 px so that it fits whole, else ended behind a whole word with `…`, and never within a number. */
export function figureIn(words: string, cut: Cut, largest: number, width: number): Figure | null {
  const em = widthOf(words, cut, 1);
  for (let size = largest; size > 11; size--) if (em * size <= width) return { words, size };
  if (em * 11 <= width) return { words, size: 11 };
  const short = fitted(words, cut, 11, width);
  const kept = short.replace(/…$/, "").trimEnd();
  return kept !== "" && /^\s/.test(words.slice(kept.length)) ? { words: short, size: 11 } : null;
}
