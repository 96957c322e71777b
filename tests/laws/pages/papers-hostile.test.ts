import fc from "fast-check";
import { expect, test } from "vitest";
import { scaleWithin } from "../../../src/app/pages/papers/reader/room.ts";
import { foundIn } from "../../../src/show/desk/papers/find.ts";
import { freePaper, papersOf } from "../../../src/show/desk/papers/papers.ts";
import { mostHits, searching } from "../../../src/show/desk/papers/searching.ts";
import { soughtBy } from "../../../src/show/desk/papers/sought.ts";
import { ownTime } from "../base/processor.ts";

test("a page of any shape fits on a canvas, and one of a common shape is as fine as was asked for", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 2e6, noNaN: true }),
      fc.double({ min: 0.01, max: 2e6, noNaN: true }),
      fc.double({ min: 0.05, max: 3000, noNaN: true }),
      (width, height, scale) => {
        const fine = scaleWithin({ width, height }, scale);
        expect(fine).toBeGreaterThan(0);
        expect(Math.max(width, height) * fine).toBeLessThanOrEqual(8192.001);
        expect(width * height * fine ** 2).toBeLessThanOrEqual(33_554_432 * 1.001);
      },
    ),
    { numRuns: 100 },
  );
  expect(scaleWithin({ width: 612, height: 792 }, 4)).toBe(4);
});

const part = fc.constantFrom<unknown>(
  "FragmentSelector",
  "RangeSelector",
  "TextQuoteSelector",
  "SpecificResource",
  "page=2",
  "page=0",
  "page=9999999",
  "page=1&viewrect=0,0,-1,1e9",
  "xywh=percent:5,5,200,1",
  "x",
  "",
  null,
  7,
  "__proto__",
  "constructor",
);
const selector = fc.letrec((tie) => ({
  any: fc.oneof({ maxDepth: 4 }, part, fc.array(tie("any"), { maxLength: 3 }), tie("map")),
  map: fc.dictionary(
    fc.constantFrom(
      "type",
      "value",
      "exact",
      "prefix",
      "suffix",
      "selector",
      "startSelector",
      "endSelector",
      "refinedBy",
      "source",
      "conformsTo",
      "__proto__",
    ),
    tie("any"),
    { maxKeys: 6, noNullPrototype: true },
  ),
})).any;

test("a selector that is anything at all finds a place of the paper, or none", () => {
  const pages = ["A post stood here. x", "x x", ""];
  fc.assert(
    fc.property(selector, (given) => {
      soughtBy(given);
      const found = foundIn(pages, given);
      if (found === null) return;
      expect(pages[found.page]).toBeDefined();
      if ("start" in found) expect(found.start).toBeLessThanOrEqual(found.end);
    }),
    { numRuns: 100 },
  );
});

test("a page of one sign many times over is searched in a moment", () => {
  const pages = Array.from({ length: 20 }, () => "a".repeat(50_000));
  const spent = ownTime();
  foundIn(pages, {
    type: "TextQuoteSelector",
    exact: "a".repeat(300),
    prefix: "a".repeat(1000),
    suffix: "b",
  });
  expect(searching()(pages, "aa").length).toBeLessThanOrEqual(mostHits);
  expect(spent()).toBeLessThan(3000);
});

test("papers of any name belong to the longest key, and what comes in takes no other's place", () => {
  const name = fc.string({
    unit: fc.constantFrom(...`az<>"'&/\\:*?. -`, "\u202e", "\u0301"),
    minLength: 1,
    maxLength: 12,
  });
  fc.assert(
    fc.property(
      fc.array(name, { minLength: 1, maxLength: 5 }),
      fc.array(name, { maxLength: 8 }),
      (keys, names) => {
        const files = names.map((one) => `papers/${one}.pdf`);
        const all = [...papersOf(keys, files).values()].flat();
        expect(new Set(all).size).toBe(all.length);
        const [key = ""] = keys;
        const free = freePaper(key, "pdf", files);
        expect(files).not.toContain(free);
        expect(free.startsWith("papers/")).toBe(true);
        expect(free.slice("papers/".length)).not.toMatch(/[\\/:*?"<>|]/u);
      },
    ),
    { numRuns: 100 },
  );
});
