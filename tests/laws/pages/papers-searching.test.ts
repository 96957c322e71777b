import fc from "fast-check";
import { expect, test } from "vitest";
import { movedBy, wordsIn } from "../../../src/app/pages/papers/words/by-words.ts";
import { regionMoved } from "../../../src/app/pages/papers/leaf/region.tsx";
import { bundleWith, bundlesOf } from "../../../src/app/pages/papers/reader/open.ts";
import { pageAsked, printedPages } from "../../../src/show/desk/papers/printing.ts";
import { mostHits, searching } from "../../../src/show/desk/papers/searching.ts";

const search = searching();
/** The words that were found, as they stand in the paper. */
const found = (texts: readonly string[], words: string): readonly string[] =>
  search(texts, words).map(({ page, start, end }) => (texts[page] ?? "").slice(start, end));

test.each([
  ["case", "The Ring of Posts", "ring OF posts", "Ring of Posts"],
  ["accents, written apart or as one sign", "l'entre\u0301e du fosse\u0301", "entrée", "entre\u0301e"],
  ["Greek with its breathings", "ἐν Ἀθήναις", "αθηναισ", "Ἀθήναις"],
  ["ligatures", "the \ufb01lling of the pit", "filling", "\ufb01lling"],
  ["lines that end between words", "the post\nholes were", "post holes", "post\nholes"],
  ["words that a line's end divides", "weathering cones of the tur-\n  rets", "turrets", "tur-\n  rets"],
  ["a hyphen of the word's own there", "each post-\nhole was", "post-hole", "post-\nhole"],
  ["a hyphen or none", "each post-hole was", "posthole", "post-hole"],
  ["soft hyphens", "the mea\u00adsured depth", "measured", "mea\u00adsured"],
  ["typographic quotes and dashes", "pp. 12–13: ‘a floor’", "12-13: 'a floor'", "12–13: ‘a floor’"],
  ["Arabic with vowels and a lengthened line", "البِئْر والحـــفرة", "والحفرة", "والحـــفرة"],
  ["German sharp s", "die Größe", "grösse", "Größe"],
])("searching passes over %s", (_, text, words, expected) => {
  expect(found([text], words)).toEqual([expected]);
});

test("words are not run together where a space divides them, nor signs that are no hyphen dropped", () => {
  expect(found(["so the rapist was"], "therapist")).toEqual([]);
  expect(found(["5-6 posts, 7 - 9 cm"], "56")).toEqual([]);
  expect(found(["anything"], "  ")).toEqual([]);
});

test("what is cut out of any text is found in it, in place and in order", () => {
  const text = fc.string({
    unit: fc.constantFrom(..."abé fiß-ά\n  ־Ωxy’".split("")),
    minLength: 1,
    maxLength: 60,
  });
  fc.assert(
    fc.property(fc.array(text, { minLength: 1, maxLength: 3 }), fc.nat(), fc.nat(), (pages, a, b) => {
      const page = a % pages.length;
      const whole = pages[page] ?? "";
      const cut = whole.slice(b % whole.length, (b % whole.length) + 8);
      fc.pre(/^[\p{L}]/u.test(cut) && /[\p{L}]$/u.test(cut));
      const hits = search(pages, cut);
      expect(hits.some((one) => one.page === page)).toBe(true);
      const places = hits.map((one) => one.page * 1000 + one.start);
      expect(places).toEqual(places.toSorted((x, y) => x - y));
      for (const hit of hits) expect(hit.end).toBeGreaterThan(hit.start);
    }),
    { numRuns: 100 },
  );
});

test("a search that finds too much ends, and a page read later is searched too", () => {
  expect(search(["a ".repeat(5000)], "a")).toHaveLength(mostHits);
  expect(found(["", ""], "ring")).toEqual([]);
  expect(found(["", "the ring"], "ring")).toEqual(["ring"]);
});

test("printed pages: of the file's names, of passages, of the entry, else unknown", () => {
  const none = { labels: null, pages: null, passages: [] };
  const told = printedPages({ ...none, count: 3, labels: ["xi", "xii", "1"] });
  expect([told(0), told(2), pageAsked("XII", 3, told), pageAsked("1", 3, told)]).toEqual(["xi", "1", 1, 2]);
  const counted = printedPages({ ...none, count: 2, labels: ["1", "2"], pages: "211–12" });
  expect([counted(0), counted(1), counted(2)]).toEqual(["211", "212", null]);
  const passages = [
    { at: "p. 214", page: 3 },
    { at: "pp. 216–217", page: 5 },
    { at: "p. 9", page: 1 },
    { at: "fig. 2", page: 7 },
  ];
  const taken = printedPages({ ...none, count: 20, pages: "1–20", passages });
  expect([taken(0), taken(19), pageAsked("230", 20, taken), pageAsked("4", 20, taken)]).toEqual([
    "211",
    "230",
    19,
    3,
  ]);
  const unknown = printedPages({ ...none, count: 20, pages: "211–229" });
  expect([
    unknown(0),
    pageAsked("20", 20, unknown),
    pageAsked("21", 20, unknown),
    pageAsked("x", 20, unknown),
  ]).toEqual([null, 19, null, null]);
});

test("words are gone over by keys along the lines and from line to line, and a selection grows at one end", () => {
  const words = wordsIn("one two three\n\nfour five\nsix");
  expect(words.map(({ line }) => line)).toEqual([0, 0, 0, 1, 1, 2]);
  const at = (moved: number): { fixed: number; moved: number } => ({ fixed: moved, moved });
  expect(movedBy(words, at(0), "ArrowRight", false)).toEqual(at(1));
  expect(movedBy(words, at(1), "ArrowDown", false)).toEqual(at(3));
  expect(movedBy(words, at(4), "ArrowUp", false)).toEqual(at(1));
  expect(movedBy(words, at(4), "ArrowDown", false)).toEqual(at(5));
  expect(movedBy(words, at(1), "End", true)).toEqual({ fixed: 1, moved: 2 });
  expect(movedBy(words, { fixed: 1, moved: 3 }, "ArrowLeft", true)).toEqual({ fixed: 1, moved: 2 });
  expect(movedBy(words, at(5), "ArrowRight", false)).toEqual(at(5));
  expect(movedBy(words, at(0), "x", false)).toBeNull();
});

test("a part of a page stays within it, whatever keys are pressed", () => {
  const key = fc.constantFrom("ArrowLeft", "ArrowRight", "ArrowUp", "ArrowDown");
  fc.assert(
    fc.property(fc.array(fc.tuple(key, fc.boolean()), { maxLength: 300 }), (keys) => {
      let region = { x: 25, y: 25, w: 50, h: 20 };
      for (const [one, size] of keys) region = regionMoved(region, one, size) ?? region;
      expect(Math.min(region.x, region.y, region.w - 1, region.h - 1)).toBeGreaterThanOrEqual(0);
      expect(Math.max(region.x + region.w, region.y + region.h)).toBeLessThanOrEqual(100);
    }),
    { numRuns: 50 },
  );
  expect(regionMoved({ x: 0, y: 0, w: 1, h: 1 }, "Enter", false)).toBeNull();
});

test("PDFs are opened each by itself, the whole before its plates, and pictures of pages together", () => {
  const bundles = bundlesOf([
    "papers/a-plates.pdf",
    "papers/a.PDF",
    "papers/a/1.png",
    "papers/a/2.jpg",
    "papers/a.svg",
  ]);
  expect(bundles).toEqual([
    { file: "papers/a.PDF", pictures: null },
    { file: "papers/a-plates.pdf", pictures: null },
    { file: "papers/a/1.png", pictures: ["papers/a/1.png", "papers/a/2.jpg"] },
  ]);
  expect(bundleWith(bundles, "papers/a/2.jpg")).toBe(bundles[2]);
  expect(bundleWith(bundles, "papers/other.pdf")).toBe(bundles[0]);
  expect(bundleWith([], "papers/other.pdf")).toBeNull();
});
