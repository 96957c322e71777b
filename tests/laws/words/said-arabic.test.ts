import { expect, test } from "vitest";
import type { ArabicCatalogue } from "../../../src/base/text/said/arabic.ts";
import { arabicSaid } from "../../../src/app/words/arabic/said/index.ts";
import { templatesIn, templatesOf } from "../base/said-templates.ts";

const templates = templatesOf();
const entries = Object.entries(arabicSaid);
const holesIn = (text: string): readonly string[] =>
  [...new Set([...text.matchAll(/\{(\d+)\}/g)].map(([hole]) => hole))].sort();
const formsOf = (entry: (typeof entries)[number][1]): Readonly<Record<string, string>> =>
  typeof entry === "string" ? { only: entry } : { ...entry };

test("templates are found however they are nested", () => {
  const text =
    "const x = say`a ${count(n)} b ${y ? say`q ${z}` : `not ${say`r`}`}`; const t: string = say`\\`s\\``;";
  expect(templatesIn("x.ts", text).map(({ key, countAt: at }) => [key, at])).toEqual([
    ["a {0} b {1}", 0],
    ["q {0}", null],
    ["r", null],
    ["`s`", null],
  ]);
  expect(templates.length).toBeGreaterThan(80);
});

test("every sentence of the sources is in the Arabic catalogue", () => {
  const missing = templates
    .filter(({ key }) => /\p{L}/u.test(key.replace(/\{\d+\}/g, "")) && !Object.hasOwn(arabicSaid, key))
    .map(({ key, file }) => `${file}: ${key}`);
  expect(missing).toEqual([]);
});

test("the catalogue has no sentence that nothing says", () => {
  const said = new Set(templates.map(({ key }) => key));
  expect(entries.map(([key]) => key).filter((key) => !said.has(key))).toEqual([]);
});

test("no text of a template looks like a hole", () => {
  for (const { key, holes } of templates) expect(holesIn(key).length, key).toBe(holes);
});

/** What stays as it is in any language: code between backticks, options, names of formats and files that the English has too. */
const latin = (text: string): readonly string[] =>
  text.replace(/\{\d+\}/g, " ").match(/[A-Za-z][\w.-]*/g) ?? [];

/** The hole of the first count, for each sentence that has one. */
const countAt = new Map(templates.map((one) => [one.key, one.countAt]));

test("an Arabic sentence has the holes of the English one, and is Arabic", () => {
  for (const [key, entry] of entries) {
    const counted = `{${countAt.get(key) ?? -1}}`;
    for (const [form, text] of Object.entries(formsOf(entry))) {
      // A form for one or two of something says so in words.
      const inWords = (form === "one" || form === "two" || form === "zero") && !text.includes(counted);
      expect(holesIn(text), `${key} (${form})`).toEqual(
        holesIn(key).filter((hole) => !inWords || hole !== counted),
      );
      expect(latin(key), `${key} (${form})`).toEqual(expect.arrayContaining([...latin(text)]));
      expect(text, key).toMatch(/[\u0600-\u06ff،؛؟]/);
      expect(/[.…]$/.test(text), key).toBe(/[.…]$/.test(key));
    }
  }
});

test("a sentence with a count in it has all forms that Arabic counts by", () => {
  for (const { key, countAt: at } of templates) {
    if (at === null || !/\p{L}/u.test(key.replace(/\{\d+\}/g, ""))) continue;
    const entry = arabicSaid[key];
    expect(entry !== undefined && typeof entry !== "string", key).toBe(true);
    if (entry === undefined || typeof entry === "string") continue;
    expect(Object.keys(entry), key).toEqual(expect.arrayContaining(["two", "few", "many", "other"]));
  }
});

test("no two rooms say the same sentence differently", () => {
  const modules = import.meta.glob<Readonly<Record<string, ArabicCatalogue>>>(
    ["../../src/app/words/arabic/said/**/*.ts", "!**/index.ts"],
    { eager: true },
  );
  const known = new Map<string, string>();
  for (const [file, module] of Object.entries(modules))
    for (const [key, entry] of Object.values(module).flatMap(Object.entries)) {
      const text = JSON.stringify(entry);
      expect(known.get(key) ?? text, `${file}: ${key}`).toBe(text);
      known.set(key, text);
    }
  // Every room's catalogue is among those that are used.
  expect([...known.keys()].filter((key) => !Object.hasOwn(arabicSaid, key))).toEqual([]);
});
