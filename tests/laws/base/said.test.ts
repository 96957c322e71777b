import { describe, expect, test } from "vitest";
import { arabic, arabicForm } from "../../../src/base/text/said/arabic.ts";
import { inEnglish, inWords } from "../../../src/base/text/said/english.ts";
import { count, countInWords, first, row, say } from "../../../src/base/text/said/said.ts";
import type { Said } from "../../../src/base/text/said/said.ts";

const figure = (n: number): string => String(n);

describe("in English", () => {
  test("a template is what it would be without its tag", () => {
    const [what, that] = ["`postt`", "post"];
    expect(inEnglish(say`Unknown ${what}, expected ${that}`)).toBe(`Unknown ${what}, expected ${that}`);
    expect(inEnglish(say`{ p: "< 0.01" }, \`x\` and \u2068${"ح"}\u2069`)).toBe(
      '{ p: "< 0.01" }, `x` and \u2068ح\u2069',
    );
    expect(inEnglish("as it is")).toBe("as it is");
  });

  test("a text with what looks like a hole or a pattern of replacement stays as it is", () => {
    expect(inEnglish(say`It says ${"{0} $& {1}"}, ${say`and ${"$1"}`}`)).toBe("It says {0} $& {1}, and $1");
  });

  test("counts, rows, mentions and first letters", () => {
    expect(inEnglish(say`${count(2)} of ${countInWords(3)}, ${countInWords(13)}`)).toBe("2 of three, 13");
    expect(inEnglish(say`${row(["a"])}; ${row(["a", "b"])}; ${row(["a", "b", say`c`])}`)).toBe(
      "a; a and b; a, b and c",
    );
    expect(inEnglish(say`${row(["a", "b", "c"], "or")}; ${row(["a", "b"], "comma")}`)).toBe(
      "a, b or c; a, b",
    );
    expect(inEnglish(first(say`${say`the number`} falls`))).toBe("The number falls");
    const mention = { mention: "one two three, four", words: 3, quoted: true };
    expect(inEnglish(say`It leans on ${mention}.`)).toBe("It leans on “one two three …”.");
  });

  test("a name that runs from right to left is closed where it is cut", () => {
    const mention = { mention: "\u2068سلمى بنت حدّاد\u2069", words: 2, quoted: false };
    expect(inEnglish(say`${mention} argues`)).toBe("\u2068سلمى بنت\u2069 … argues");
  });
});

describe("in Arabic", () => {
  const tongue = arabic(
    {
      "{0} argues against {1}": "على {1} حجة {0}",
      "{0} records": { two: "سجلان", few: "{0} سجلات", many: "{0} سجلًا", other: "{0} سجل" },
      "the number": "العدد",
      "{0} falls": "يسقط {0}",
    },
    figure,
  );

  test("holes stand where the language wants them, texts of the corpus kept together", () => {
    expect(inWords(say`${"Hale 1896"} argues against ${say`the number`}`, tongue)).toBe(
      "على العدد حجة \u2068Hale 1896\u2069",
    );
  });

  test("a counted sentence takes the form of its count", () => {
    const of = (n: number): string => inWords(say`${count(n)} records`, tongue);
    expect([2, 3, 10, 11, 99, 100, 103].map(of)).toEqual([
      "سجلان",
      "3 سجلات",
      "10 سجلات",
      "11 سجلًا",
      "99 سجلًا",
      "100 سجل",
      "103 سجلات",
    ]);
  });

  test("rows and quotations are the language's own", () => {
    const rows: Said = say`${row(["a", "b"])}: ${row(["a", "b"], "or")}`;
    expect(inWords(rows, tongue)).toBe("\u2068a\u2069 و\u2068b\u2069: \u2068a\u2069 أو \u2068b\u2069");
    const quoted = { mention: "The ring stood open", words: 2, quoted: true };
    expect(inWords(say`${quoted} falls`, tongue)).toBe("يسقط «\u2068The ring …\u2069»");
  });

  test("a sentence that the catalogue lacks is told in English, whole", () => {
    expect(inWords(say`It leans on ${say`the number`}`, tongue)).toBe("\u2068It leans on the number\u2069");
    expect(inWords(say`${say`the number`}: ${"x"}`, tongue)).toBe("العدد: \u2068x\u2069");
  });

  test("plural forms are those of Unicode's data", () => {
    const rules = new Intl.PluralRules("ar");
    for (let n = 0; n <= 1200; n++) expect(arabicForm(n), String(n)).toBe(rules.select(n));
    for (const n of [0.5, 1.5, 3.25]) expect(arabicForm(n)).toBe(rules.select(n));
  });
});

test("what is said is plain data: it survives being sent to another thread", () => {
  const said = first(say`${count(3)} of ${row(["a", say`b`])} ${{ mention: "c d", words: 1, quoted: true }}`);
  expect(inEnglish(structuredClone(said))).toBe("3 of a and b “c …”");
});
