import fc from "fast-check";
import { expect, test } from "vitest";
import { say } from "../../../src/base/text/said/said.ts";
import { widthsOf } from "../../../src/write/office/docx/table.ts";
import { wayOfLine } from "../../../src/write/telling/set/direction.ts";
import { parted } from "../../../src/write/telling/set/parted.ts";
import type { SetInlines } from "../../../src/write/telling/set/set-text.ts";
import { stretchesOf } from "../../../src/write/telling/set/stretches.ts";

const mark = "\u200E";
const arabic = "\u062D\u062F\u0651\u0627\u062F";
const textOf = (of: SetInlines): string =>
  stretchesOf(of)
    .map(({ text }) => text)
    .join("");

test("a year after an Arabic name in an English line is parted from it, in one stretch and over several", () => {
  const cited: SetInlines = [
    { is: "text", text: say`by ` },
    { is: "runs", runs: [{ text: `(${arabic} 1988, 79)` }] },
  ];
  expect(textOf(cited)).toBe(`by (${arabic}${mark} 1988, 79)`);
  const withArabicFigures: SetInlines = [
    { is: "text", text: say`by ` },
    { is: "words", text: `${arabic} 1988, \u0667\u0669`, lang: null, quoted: false },
  ];
  expect(textOf(withArabicFigures)).toBe(`by ${arabic}${mark} 1988, \u0667\u0669`);
  const told: SetInlines = [
    { is: "words", text: arabic, lang: "ar", quoted: false },
    { is: "text", text: say` (1988)` },
    { is: "text", text: say` held` },
  ];
  expect(textOf(told)).toBe(`${arabic}${mark} (1988) held`);
});

test("an Arabic line, and figures inside Arabic words, stay as they are", () => {
  const line: SetInlines = [{ is: "words", text: `${arabic} 1988 ${arabic}`, lang: "ar", quoted: false }];
  expect(textOf(line)).toBe(`${arabic} 1988 ${arabic}`);
  expect(parted([{ text: `${arabic} 1988 ${arabic} said` }])[0]?.text).not.toContain(mark);
});

test("nothing but marks is put in, and once", () => {
  const piece = fc.constantFrom(arabic, " ", "(", "1988", "Vane", ", ", "\u0667\u0669", "\u201D");
  fc.assert(
    fc.property(fc.array(fc.array(piece).map((all) => ({ text: all.join("") }))), (parts) => {
      const once = parted(parts);
      const plain = (all: typeof parts): string => all.map(({ text }) => text).join("");
      expect(plain([...once]).replaceAll(mark, "")).toBe(plain(parts));
      expect(parted(once)).toEqual(once);
    }),
    { numRuns: 100 },
  );
});

test("a line with words of ours runs as they do, though most of its letters run otherwise", () => {
  const name: SetInlines = [{ is: "words", text: `${arabic} ${arabic}`, lang: "ar", quoted: false }];
  expect(wayOfLine(name)).toBe("rtl");
  expect(wayOfLine([...name, { is: "text", text: say` (in 1962)` }])).toBe("ltr");
});

test("a column is broad enough for the longest word of its head in bold, whatever its cells hold", () => {
  const heads = ["Where", "Words searched", "When", "Found", "Screened", "Left out", "Kept"];
  const line = (text: string): SetInlines => [{ is: "text", text }];
  const widths = widthsOf([
    heads.map(line),
    heads.map((_, place) => line(place < 2 ? "word ".repeat(40) : "7")),
  ]);
  // DejaVu Sans Bold, the broadest face that stands in for ours: at most 0.87 em a letter of these, 0.7 em as a rule; 9 pt.
  for (const [place, head] of heads.entries()) {
    const longest = Math.max(...head.split(" ").map(({ length }) => length));
    expect(widths[place], head).toBeGreaterThanOrEqual(160 + longest * 0.7 * 180);
  }
});
