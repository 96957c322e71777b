import { readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { arabicSaid } from "../../../src/app/words/arabic/said/index.ts";
import { arabic } from "../../../src/base/text/said/arabic.ts";
import { inEnglish, inWords } from "../../../src/base/text/said/english.ts";
import { row, say } from "../../../src/base/text/said/said.ts";
import type { Text } from "../../../src/base/text/said/said.ts";
import { ruleDocs } from "../../../src/judge/rules/index.ts";
import { chained, few, quoted } from "../../../src/base/text/said/rows.ts";
import { yearText } from "../../../src/base/date/year.ts";
import { yearWords } from "../../../src/base/date/year-words.ts";
import { evaluated } from "../../corpora/findings-text.ts";

const corpora = fileURLToPath(new URL("../../corpora/rules", import.meta.url));
const tongue = arabic(arabicSaid, String);

/** What stands in the program's own words: texts of the corpus are kept apart by isolates, code by backticks. */
function ownWords(text: string): string {
  let plain = text.replace(/`[^`]*`/gu, " ");
  for (let before = ""; before !== plain;) {
    before = plain;
    plain = plain.replace(/\u2068[^\u2066-\u2069]*\u2069/gu, " ");
  }
  return plain;
}

/** Words that stay in Latin letters in any language: fields, marks and values of the format, the hash of a file, and the p of a test. */
const asWritten = /\b(?:why-strength|nothing-in-it|p|x-|YAML|SHA|not-reported)\b|x-/gu;

const latinIn = (text: Text): readonly string[] =>
  ownWords(inWords(text, tongue))
    .replace(asWritten, " ")
    .match(/\p{Script=Latin}+/gu) ?? [];

describe.each(readdirSync(corpora))("%s", (rule) => {
  test("its findings are whole in Arabic", async () => {
    const { findings } = await evaluated(join(corpora, rule, "fires"));
    const told = findings.filter((one) => one.rule === rule);
    expect(told).not.toEqual([]);
    for (const { message, fix } of told) {
      expect(latinIn(message), inWords(message, tongue)).toEqual([]);
      expect(fix === null ? [] : latinIn(fix.label)).toEqual([]);
      expect(inWords(message, tongue)).toMatch(/\p{Script=Arabic}/u);
    }
  });
});

test("what a rule means is there in Arabic, with the fields it names", () => {
  for (const { id, title, doc } of ruleDocs) {
    expect([...latinIn(title), ...latinIn(doc)], id).toEqual([]);
    const fields = (text: string): readonly string[] => [...new Set(text.match(/`[^`]+`/gu))].sort();
    expect(fields(inWords(doc, tongue)), id).toEqual(fields(inEnglish(doc)));
  }
});

test("of more than four names three are told, and how many others", () => {
  const names = ["a", "b", "c", "d", "e"];
  expect(inEnglish(say`${few(names.slice(0, 4))}.`)).toBe("a, b, c and d.");
  expect(inEnglish(say`${few(names)}.`)).toBe("a, b, c and 2 more.");
  const isolated = names.slice(0, 3).map((name) => `\u2068${name}\u2069`);
  expect(inWords(say`${few(names)}.`, tongue)).toBe(`${isolated.join("، ")} واثنان آخران.`);
});

test("texts are tied two by two, and a name in quotation marks is whole", () => {
  const tied = chained(["a", "b", "c"], (before, next) => say`${before} or ${next}`);
  expect(inEnglish(say`${tied}`)).toBe("a or b or c");
  const long = Array.from({ length: 300 }, (_, place) => `w${place}`).join(" ");
  expect(inEnglish(say`${row([quoted(long)])}`)).toBe(`“${long}”`);
});

test("a year in words is the year as texts have it, and Arabic names its era", () => {
  for (const year of [-479, 0, 1, 60, 999, 1000, 1998])
    expect(inEnglish(yearWords(year))).toBe(yearText(year));
  expect(inWords(yearWords(-479), tongue)).toBe("\u2068480\u2069 ق.م");
  expect(inWords(yearWords(60), tongue)).toBe("\u206860\u2069 م");
});
