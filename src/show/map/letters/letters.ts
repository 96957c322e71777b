import { joinedForms } from "./arabic.ts";
import { arabicWidths, letterWidths } from "./widths-table.ts";

/** The two faces: scholars' sentences in serif, the program's words and figures in sans. */
export type Face = "serif" | "sans";

/** How a text is to be broken: letters of a size in px, a width in px, and how many lines there may be. */
export interface Measure {
  readonly face: Face;
  readonly size: number;
  readonly weight?: 400 | 600;
  readonly width: number;
  readonly lines: number;
}

/** What the estimate adds, so that a line never runs out of its box. */
const safety = 1.02;
/** Widths in em of letters that no bundled font has: ideographs and the like fill a square. */
const square = 1;
const unknown = 0.8;

type Widths = readonly [number, number, number, number];
const table = widthsBy(letterWidths);
const arabic = widthsBy(arabicWidths);

function widthsBy(rows: typeof letterWidths): ReadonlyMap<string, Widths> {
  return new Map(
    rows.flatMap(([letters, ...forms]) => {
      const lists = forms.map((form) => form.split(" ").map((width) => Number(width) / 1000));
      const at = (list: number, place: number): number => lists[list]?.[place] ?? unknown;
      return [...letters].map((letter, n): [string, Widths] => [
        letter,
        [at(0, n), at(1, n), at(2, n), at(3, n)],
      ]);
    }),
  );
}

/** Width of a text in px: an estimate from the fonts' own advance widths, on the wide side. */
export function textWidth(text: string, face: Face, size: number, weight: 400 | 600 = 400): number {
  const column = (face === "serif" ? 0 : 2) + (weight === 600 ? 1 : 0);
  const letters = [...text.normalize("NFC")];
  const forms = arabicScript.test(text) ? joinedForms(letters) : null;
  let sum = 0;
  letters.forEach((letter, at) => {
    sum += arabic.get(letter)?.[forms?.[at] ?? 0] ?? letterWidth(letter, column);
  });
  return sum * size * safety;
}

const arabicScript = /[\u0600-\u06ff]/;
const marks = /^[\p{M}\p{Cf}]$/u;
const wide =
  /^[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uffe6\u{1f000}-\u{3fffd}]$/u;

function letterWidth(letter: string, column: number): number {
  const known = table.get(letter);
  if (known) return known[column] ?? unknown;
  if (marks.test(letter)) return 0;
  const [base = letter, ...rest] = letter.normalize("NFD");
  if (rest.length > 0 && rest.every((mark) => marks.test(mark))) return letterWidth(base, column);
  return wide.test(letter) ? square : unknown;
}

/** Whether a text runs from right to left, by its first letter that has a direction. */
export function isRightToLeft(text: string): boolean {
  const outside = text.replace(/\u2068[^\u2069]*\u2069/g, "");
  const first = /\p{L}/u.exec(outside)?.[0] ?? /\p{L}/u.exec(text)?.[0] ?? "";
  return /[\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u.test(first);
}

/**
 * Breaks a text into lines that are no wider than asked: at spaces, between ideographs anywhere, within a word only
 * where it is longer than a line. What is left over after the last line is told by `…` behind a whole word.
 */
export function broken(text: string, measure: Measure): readonly string[] {
  const { face, size, weight = 400, width, lines } = measure;
  const fits = (line: string): boolean =>
    line.length <= longestLine && textWidth(line, face, size, weight) <= width;
  const found: string[] = [];
  const parts = [...piecesOf(text)];
  let at = 0;
  while (at < parts.length && found.length < lines) {
    const line = lineFrom(parts, at, fits);
    found.push(line.text);
    at += line.taken;
    if (line.left !== null) parts[at] = line.left;
  }
  const last = found.at(-1);
  if (at >= parts.length || last === undefined) return found;
  return [...found.slice(0, -1), shortened(last, fits)];
}

/** More letters than any line holds: what is longer need not be measured to know that it does not fit. */
const longestLine = 5000;

/** The stretches between which a line may end; each keeps the space before it. */
function piecesOf(text: string): readonly string[] {
  const plain = text.trim().replace(/[\s]+/gu, " ");
  return plain.match(pieces) ?? [];
}

const ideograph = "[\\u2e80-\\u303e\\u3041-\\ua4cf\\uac00-\\ud7a3\\uf900-\\ufaff\\uff00-\\uffe6]";
const closing = "[\\u3001\\u3002\\u3009\\u300b\\u300d\\u300f\\uff01\\uff0c\\uff1a\\uff1b\\uff1f]";
const pieces = new RegExp(` ?${ideograph}${closing}*| ?(?:(?!${ideograph})[^ ])+`, "gu");

/** A line, how many stretches went into it whole, and what is left of one that is longer than a line. */
interface LineFrom {
  readonly text: string;
  readonly taken: number;
  readonly left: string | null;
}

function lineFrom(parts: readonly string[], at: number, fits: (line: string) => boolean): LineFrom {
  let line = (parts[at] ?? "").trimStart();
  if (!fits(line)) {
    const cut = longest(line, fits);
    return { text: cut, taken: 0, left: line.slice(cut.length) };
  }
  let taken = 1;
  for (; at + taken < parts.length; taken++) {
    const piece = parts[at + taken] ?? "";
    if (!fits(line + piece)) break;
    line += piece;
  }
  return { text: line, taken, left: null };
}

/** As many letters of a word as fit, one at least. */
function longest(word: string, fits: (line: string) => boolean): string {
  let taken = "";
  for (const [letter] of word.matchAll(cluster)) {
    if (taken !== "" && !fits(taken + letter)) break;
    taken += letter;
  }
  return taken;
}

const cluster = /\P{M}[\p{M}\u200d]*|\p{M}+/gu;

function clusters(word: string): readonly string[] {
  return word.match(cluster) ?? [];
}

/** A line with `…` at its end, behind the last word that leaves room for it. */
function shortened(line: string, fits: (line: string) => boolean): string {
  const words = piecesOf(line);
  for (let kept = words.length; kept > 0; kept--) {
    const told = `${words
      .slice(0, kept)
      .join("")
      .replace(/[\s,;:،؛–—-]+$/u, "")}…`;
    if (fits(told)) return told;
  }
  const letters = clusters(line);
  for (let kept = letters.length; kept > 0; kept--) {
    const told = `${letters.slice(0, kept).join("")}…`;
    if (fits(told)) return told;
  }
  return "…";
}
