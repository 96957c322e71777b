import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { CslItem } from "../../../src/read/bibliography/csl.ts";
import { locatorOf } from "../../../src/write/references/locator.ts";
import { htmlOf, plainOf } from "../../../src/write/references/runs.ts";
import { references, similarItems } from "./references-items.ts";

const ids = ["a", "b", "c", "d", "e", "f", "__proto__", "constructor", "42"];
/** One that prints dashes and letters, one that adds given names, one without dashes, and one of notes. */
const styles = ["chicago-author-date", "apa", "antiquity", "modern-humanities-research-association"];

const listed = (name: string, items: readonly CslItem[]): readonly (readonly [string, string])[] =>
  references(name, items)
    .bibliography()
    .map(({ id, runs }) => [id, htmlOf(runs)] as const);

describe.each(styles)("%s", (name) => {
  test("the order of the items says nothing, and a second time gives the same", () => {
    fc.assert(
      fc.property(
        similarItems(ids).chain((items) =>
          fc.tuple(fc.constant(items), fc.shuffledSubarray([...items], { minLength: items.length })),
        ),
        ([items, shuffled]) => {
          const once = listed(name, items);
          expect(listed(name, shuffled)).toEqual(once);
          expect(once.map(([id]) => id).toSorted()).toEqual(items.map((one) => one.id).toSorted());
          const kept = references(name, items);
          const first = kept.bibliography();
          expect(kept.bibliography()).toEqual(first);
        },
      ),
      { numRuns: 6 },
    );
  });

  test("what is changed item by item is what is written from the start", () => {
    fc.assert(
      fc.property(fc.array(similarItems(ids), { minLength: 2, maxLength: 4 }), (steps) => {
        const kept = references(name, []);
        for (const items of steps) {
          kept.update(items);
          const fresh = references(name, items);
          expect(kept.bibliography()).toEqual(fresh.bibliography());
          for (const { id } of items) {
            expect(plainOf(kept.cited([{ id }]))).toBe(plainOf(fresh.cited([{ id }])));
            expect(plainOf(kept.reference(id))).toBe(plainOf(fresh.reference(id)));
          }
        }
      }),
      { numRuns: 6 },
    );
  });
});

/** The text of a piece of HTML that has no elements but those named, and no sign that is not escaped. */
function textOf(html: string): string {
  const bare = html.replace(/<\/?(?:a|br|em|span|strong|sub|sup|u)(?: (?:href|class)="[^"<>]*")?>/g, "");
  expect(bare).not.toMatch(/[<>"]|&(?!(?:amp|lt|gt|quot);)/);
  return bare
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&amp;", "&");
}

const hostile = fc.constantFrom(
  "<script>alert(1)</script>",
  '<img src=x onerror="alert(1)">',
  "<i>pes</i> & <b>palmus",
  "</i></span>",
  "a $& b $1 %%STRING%%",
  "\uFDD0i\uFDD1\uFDD1",
  "كتاب \u202E الحجارة",
  "\"quoted\" & 'single'",
  "javascript:alert(1)",
);

test("text of hostile items is escaped and loses nothing but marks", () => {
  const item = fc.record({
    title: hostile,
    "container-title": hostile,
    publisher: hostile,
    family: hostile,
    URL: hostile,
  });
  fc.assert(
    fc.property(fc.constantFrom(...styles), item, (name, { family, ...fields }) => {
      const csl = { id: "__proto__", type: "article-journal", author: [{ family, given: "<b>" }], ...fields };
      const runs = references(name, [csl]).reference("__proto__");
      const html = htmlOf(runs);
      expect(textOf(html)).toBe(plainOf(runs).replaceAll("\n", ""));
      expect(html).not.toContain("<script");
      expect(html).not.toMatch(/href="(?!https?:)/);
      expect(plainOf(runs)).not.toMatch(/[\uFDD0\uFDD1]/);
      if (fields.title.includes("$&")) expect(plainOf(runs).toLowerCase()).toContain("a $& b $1 %%string%%");
    }),
    { numRuns: 40 },
  );
});

test("years before Christ are the historical ones, as the read model has them", () => {
  const item = {
    id: "tablet",
    type: "book",
    title: "On stones",
    author: [{ literal: "Anonymous" }],
    issued: { "date-parts": [[-300]] },
  };
  expect(plainOf(references("chicago-author-date", [item]).reference("tablet"))).toBe(
    "Anonymous. 300 BC. On Stones.",
  );
  expect(plainOf(references("chicago-author-date", [item]).cited([{ id: "tablet" }]))).toBe(
    "(Anonymous 300 BC)",
  );
});

test.each([
  ["47", undefined, { label: "page", locator: "47" }],
  ["xii–xiv", undefined, { label: "page", locator: "xii–xiv" }],
  ["p. 12, fig. 3", undefined, { label: "page", locator: "12, fig. 3" }],
  ["S. 61", undefined, { label: "page", locator: "61" }],
  ["σσ. 31–33", undefined, { label: "page", locator: "31–33" }],
  ["ص ٧٩", undefined, { label: "page", locator: "٧٩" }],
  ["стр. 7", undefined, { label: "page", locator: "7" }],
  ["pág. 5", undefined, { label: "page", locator: "5" }],
  ["págs. 5-6", undefined, { label: "page", locator: "5-6" }],
  ["pp. 12-15", undefined, { label: "page", locator: "12-15" }],
  ["figs. 3-4", undefined, { label: "figure", locator: "3-4" }],
  ["chap. 2", undefined, { label: "chapter", locator: "2" }],
  ["§ 14", undefined, { label: "section", locator: "14" }],
  ["s.v. Pfosten", undefined, { label: "sub-verbo", locator: "Pfosten" }],
  ["vol. 2, p. 33", "2", { label: "page", locator: "33" }],
  ["2:33", "2", { label: "page", locator: "33" }],
  ["vol. 3, p. 33", "2", { label: "volume", locator: "3, p. 33" }],
  ["12, 14", "12", { label: "page", locator: "12, 14" }],
  ["Taf. 3", undefined, { suffix: ", Taf. 3" }],
  ["ceiling", undefined, { suffix: ", ceiling" }],
  ["", undefined, {}],
])("the locator %s in volume %s", (written, volume, expected) => {
  expect(locatorOf(written, volume)).toEqual(expected);
});

test("a locator with a figure follows the page in a volume", () => {
  const item = {
    id: "k",
    type: "book",
    title: "Rings",
    author: [{ family: "Vane" }],
    volume: "2",
    issued: { "date-parts": [[1968]] },
  };
  const inChicago = references("chicago-author-date", [item]);
  expect(plainOf(inChicago.cited([{ id: "k", at: "p. 12, fig. 3" }]))).toBe("(Vane 1968, 2:12, fig. 3)");
  expect(plainOf(inChicago.narrative({ id: "k", at: "2:12" }))).toBe("Vane (1968, 2:12)");
});
