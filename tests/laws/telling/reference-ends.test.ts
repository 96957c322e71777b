import { expect, test } from "vitest";
import { genreOf } from "../../../src/write/references/processor/item.ts";
import { runsOf } from "../../../src/write/references/processor/marks.ts";

const closed = "\uFDD1";

test.each([
  ["“The Burning.” .", "“The Burning.”"],
  ["‘The Burning’ .", "‘The Burning’."],
  ["A thesis .", "A thesis."],
  ["Is it? .", "Is it?"],
  ["“The Burning.”", "“The Burning.”"],
  ["Vane . . . and all.", "Vane . . . and all."],
])("an entry whose last part is empty, %s, ends as %s", (made, read) => {
  expect(runsOf(made)).toEqual([{ text: read }]);
});

test("marks of a look stay about what they are about", () => {
  expect(runsOf(`\uFDD0iThe Burning.${closed} .`)).toEqual([{ italic: true, text: "The Burning." }]);
});

test.each([
  ["phdthesis", "PhD thesis"],
  ["Techreport", "Technical report"],
  ["field notes", "field notes"],
])("a sort of work recorded as %s is printed as %s", (genre, printed) => {
  expect(genreOf({ id: "a", type: "book", genre })).toBe(printed);
  expect(genreOf({ id: "a", type: "book" })).toBeUndefined();
});
