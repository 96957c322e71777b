import { expect, test } from "vitest";
import { arabicSaid } from "../../../src/app/words/arabic/said/index.ts";
import { arabicFigure } from "../../../src/app/words/reader/figures.ts";
import { arabic } from "../../../src/base/text/said/arabic.ts";
import { inEnglish, inWords } from "../../../src/base/text/said/english.ts";
import { choiceName, fieldName } from "../../../src/read/grammar/field-words.ts";
import type { Field, Fields } from "../../../src/read/grammar/field.ts";
import { everywhere, kinds } from "../../../src/read/grammar/kinds.ts";
import { dateWords } from "../../../src/show/pages/date-words.ts";

const tongue = arabic(arabicSaid, arabicFigure);
const bare = (text: string): string => text.replace(/[\u2066-\u2069]/gu, "");

const within = (fields: Fields): readonly (readonly [string, Field])[] =>
  Object.entries(fields).flatMap(([name, field]): readonly (readonly [string, Field])[] => [
    [name, field],
    ...("fields" in field ? within(field.fields) : []),
  ]);
const all = [...Object.values(kinds).flatMap((kind) => within(kind.fields)), ...within(everywhere)];

/** The registry's own name, which no language changes. */
const names = [...new Set(all.map(([name]) => name))].filter((name) => name !== "orcid");

test.each(names)("the field %s has a name in words, in English its own", (name) => {
  const said = fieldName(name);
  expect(typeof said).toBe("object");
  expect(inEnglish(said)).toBe(name.replace(/-/g, " "));
});

test("every value that is one of a few has a name in words, in English its own", () => {
  // Whether something is there is told in sentences.
  const told = all.filter(([name]) => name !== "present" && name !== "coverage");
  const values = told.flatMap(([, field]) => (field.type === "choice" ? field.of : []));
  expect(values.length).toBeGreaterThan(40);
  for (const value of values) {
    expect(typeof choiceName(value), value).toBe("object");
    expect(inEnglish(choiceName(value))).toBe(value.replace(/-/g, " "));
  }
});

test("a name of the corpus's own stays as it is", () => {
  expect(fieldName("my-register")).toBe("my register");
  expect(fieldName("constructor")).toBe("constructor");
});

test.each([
  ["1894-10-03", "3 أكتوبر 1894"],
  ["../-0479", "حتى 480 ق.م"],
  ["0060~", "نحو 60 م"],
])("the date %s in Arabic is %s", (edtf, expected) => {
  expect(bare(inWords(dateWords(edtf), tongue))).toBe(expected);
});
