import fc from "fast-check";
import { expect, test } from "vitest";
import { broken, isRightToLeft, textWidth } from "../../../src/show/map/letters/letters.ts";

const scripts = [
  "posts of the ring ",
  "δακτύλιος ἔφερε ",
  "حلقة الأوتاد ",
  "環状列石の柱穴",
  "Größe, élan – ",
  "— … 1998. ",
];
const texts = fc.oneof(
  fc.string({ unit: "grapheme", maxLength: 120 }),
  fc
    .array(fc.tuple(fc.constantFrom(...scripts), fc.nat(12)), { maxLength: 12 })
    .map((parts) => parts.map(([text, cut]) => text.slice(0, text.length - cut)).join("")),
);
const measures = fc.record({
  face: fc.constantFrom("serif" as const, "sans" as const),
  size: fc.constantFrom(13, 16, 18),
  weight: fc.constantFrom(400 as const, 600 as const),
  width: fc.integer({ min: 40, max: 320 }),
  lines: fc.integer({ min: 1, max: 4 }),
});
const bare = (text: string): string => text.replace(/\s+/gu, "");

test("no line is wider than the width asked, and none is empty or beyond their number", () => {
  fc.assert(
    fc.property(texts, measures, (text, measure) => {
      const lines = broken(text, measure);
      expect(lines.length).toBeLessThanOrEqual(measure.lines);
      for (const line of lines) {
        expect(line.trim()).not.toBe("");
        expect(textWidth(line, measure.face, measure.size, measure.weight)).toBeLessThanOrEqual(
          measure.width,
        );
      }
    }),
    { seed: 1, numRuns: 400 },
  );
});

test("lines hold the whole text, or its beginning with `…` behind", () => {
  fc.assert(
    fc.property(texts, measures, (text, measure) => {
      const whole = bare(text.trim());
      const all = broken(text, { ...measure, lines: 1000 });
      expect(bare(all.join(""))).toBe(whole);
      const lines = broken(text, measure);
      if (lines.length === all.length) expect(lines).toEqual(all);
      else {
        const last = lines.at(-1) ?? "";
        expect(last.endsWith("…")).toBe(true);
        expect(whole.startsWith(bare(lines.join("")).slice(0, -1))).toBe(true);
      }
    }),
    { seed: 2, numRuns: 400 },
  );
});

test("a cut text ends at a whole word", () => {
  const text = "The posts of the inner ring stood deep enough to bear the span of a roof.";
  const lines = broken(text, { face: "serif", size: 16, width: 160, lines: 2 });
  const words = lines.join(" ").replace("…", "").split(" ");
  expect(lines).toHaveLength(2);
  expect(text.split(" ").slice(0, words.length)).toEqual(words);
});

test.each([
  ["حلقة of posts", true],
  ["12: עיגול", true],
  ["ring حلقة", false],
  ["δακτύλιος", false],
  ["1998", false],
])("%s runs from the right: %s", (text, expected) => {
  expect(isRightToLeft(text)).toBe(expected);
});
