import type { Page } from "playwright-core";
import { widthsOnPage } from "./font-page.ts";

/** Widths in thousandths of an em: serif 400, serif 600, sans 400, sans 600. */
type Row = readonly [letters: string, serif: string, serifBold: string, sans: string, sansBold: string];
/** Widths of the joining letters in thousandths of an em: alone, at the end, at the start, in the middle. */
type ArabicRow = readonly [letters: string, alone: string, last: string, first: string, middle: string];

/** The two tables that the estimate of a text's width reads. */
export interface Tables {
  readonly letters: readonly Row[];
  readonly arabic: readonly ArabicRow[];
}

const ranges: readonly (readonly [number, number])[] = [
  [0x20, 0x7e],
  [0xa0, 0x17f],
  [0x218, 0x21b],
  [0x386, 0x3e1],
  [0x400, 0x45f],
  [0x490, 0x493],
  [0x1e00, 0x1e9e],
  [0x1f00, 0x1fff],
  [0x2010, 0x2027],
  [0x2030, 0x203a],
  [0x2044, 0x2044],
  [0x2070, 0x208e],
  [0x20ac, 0x20ac],
  [0x2116, 0x2122],
  [0x2150, 0x215e],
  [0x2190, 0x2193],
  [0x2212, 0x2215],
  [0x221e, 0x221e],
  [0x2248, 0x2248],
  [0x2260, 0x2265],
];
const arabicRanges: readonly (readonly [number, number])[] = [
  [0x60c, 0x60c],
  [0x61b, 0x61b],
  [0x61f, 0x64a],
  [0x660, 0x66d],
  [0x671, 0x671],
  [0x67e, 0x67e],
  [0x686, 0x686],
  [0x698, 0x698],
  [0x6a9, 0x6a9],
  [0x6af, 0x6af],
  [0x6cc, 0x6cc],
  [0x6f0, 0x6f9],
];

const lettersOf = (all: typeof ranges): readonly string[] =>
  all
    .flatMap(([from, to]) => Array.from({ length: to - from + 1 }, (_, n) => String.fromCodePoint(from + n)))
    .filter((one) => /[\p{L}\p{N}\p{P}\p{S}\p{Zs}]/u.test(one));

const fonts = [
  { face: "serif", weight: 400, size: 1000 },
  { face: "serif", weight: 600, size: 1000 },
  { face: "sans", weight: 400, size: 1000 },
  { face: "sans", weight: 600, size: 1000 },
] as const;

/** Measures every letter; one that is as wide as its base letter in every font is left to that. */
export async function measuredTable(page: Page): Promise<Tables> {
  const all = lettersOf(ranges);
  const widths = await Promise.all(fonts.map((font) => widthsOnPage(page, font, all)));
  const place = new Map(all.map((letter, at) => [letter, at]));
  const kept = all.filter((letter, at) => {
    const base = place.get([...letter.normalize("NFD")][0] ?? letter);
    return (
      base === undefined || base === at || widths.some((font) => (font[at] ?? 0) > (font[base] ?? 0) * 1.005)
    );
  });
  const row = (part: readonly string[]): Row => {
    const words = widths.map((font) =>
      part.map((one) => Math.ceil(font[place.get(one) ?? 0] ?? 0)).join(" "),
    );
    return [part.join(""), words[0] ?? "", words[1] ?? "", words[2] ?? "", words[3] ?? ""];
  };
  return { letters: inRows(kept).map(row), arabic: await measuredArabic(page) };
}

async function measuredArabic(page: Page): Promise<readonly ArabicRow[]> {
  const all = lettersOf(arabicRanges);
  // A letter takes its joined forms beside a stroke that lengthens a join, whose width is then taken off.
  const stroke = "\u0640";
  const forms = all.map((one) => [one, stroke + one, one + stroke, stroke + one + stroke]);
  const found = await Promise.all(
    fonts
      .filter((font) => font.face === "serif")
      .map((font) => widthsOnPage(page, font, [stroke, ...forms.flat()])),
  );
  const width = (at: number, form: number): number => {
    const strokes = [0, 1, 1, 2][form] ?? 0;
    return Math.max(...found.map((font) => (font[1 + at * 4 + form] ?? 0) - strokes * (font[0] ?? 0)));
  };
  const widths = [0, 1, 2, 3].map((form) => all.map((_, at) => Math.ceil(width(at, form))));
  return inRows(all).map((part): ArabicRow => {
    const words = widths.map((form) => part.map((one) => form[all.indexOf(one)] ?? 0).join(" "));
    return [part.join(""), words[0] ?? "", words[1] ?? "", words[2] ?? "", words[3] ?? ""];
  });
}

function inRows(letters: readonly string[]): readonly (readonly string[])[] {
  return Array.from({ length: Math.ceil(letters.length / 24) }, (_, n) => letters.slice(n * 24, n * 24 + 24));
}

/** The file that holds the tables. */
export function tableText({ letters, arabic }: Tables): string {
  const rows = (all: readonly (readonly string[])[]): string =>
    all.map((row) => `  [\n${row.map((one) => `    ${JSON.stringify(one)},\n`).join("")}  ],\n`).join("");
  return `/** A row of letters, and their widths in thousandths of an em in four forms, parted by spaces. */
export type WidthRow = readonly [letters: string, a: string, b: string, c: string, d: string];

/**
 * Advance widths in the bundled fonts, measured in Chromium by \`WRITE_WIDTHS=1 npm test -- letter-widths\`:
 * serif 400, serif 600, sans 400, sans 600. A letter with marks that is missing is as wide as its base letter.
 */
export const letterWidths: readonly WidthRow[] = [
${rows(letters)}];

/** Arabic letters in both faces, by their forms: alone, at the end, at the start, in the middle of a joined run. */
export const arabicWidths: readonly WidthRow[] = [
${rows(arabic)}];
`;
}
