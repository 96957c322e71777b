import * as fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { readBibliography } from "../../../src/read/bibliography/read.ts";
import type { Source } from "../../../src/read/bibliography/read.ts";

type Ending = "bib" | "ris" | "json";
const endings: readonly Ending[] = ["bib", "ris", "json"];

const read = (ending: Ending, text: string): ReturnType<typeof readBibliography> =>
  readBibliography({ path: `sources.${ending}`, text });
const only = (ending: Ending, text: string): Source => {
  const [source, more] = read(ending, text).sources;
  if (!source || more) throw new Error("Expected one source");
  return source;
};
const bib = (fields: string): Source => only("bib", `@book{vane, title = {The Rings}, ${fields}}`);
const messages = (ending: Ending, text: string): readonly string[] =>
  read(ending, text).findings.map((one) => inEnglish(one.message));

/** One sound entry of each format, by its key. */
const entry: Readonly<Record<Ending, (key: string) => string>> = {
  bib: (key) =>
    `@book{${key},\n  author = {Vane, Ann and Hale, Bo},\n  title = {The Rings of ${key}},\n  date = {1968}\n}\n`,
  ris: (key) =>
    `TY  - BOOK\nID  - ${key}\nAU  - Vane, Ann\nAU  - Hale, Bo\nTI  - The Rings of ${key}\nPY  - 1968\nER  - \n`,
  json: (key) =>
    `{ "id": "${key}", "type": "book", "title": "The Rings of ${key}",\n  "author": [{ "family": "Vane", "given": "Ann" }, ` +
    `{ "family": "Hale", "given": "Bo" }], "issued": { "date-parts": [[1968]] } }`,
};
const whole = (ending: Ending, entries: readonly string[]): string =>
  ending === "json" ? `[\n${entries.join(",\n")}\n]` : entries.join("\n");

describe.each(endings)("%s", (ending) => {
  test("an entry gives its names, year, label and places", () => {
    const text = whole(ending, [entry[ending]("k1"), entry[ending]("k2")]);
    const { sources, findings } = read(ending, `\uFEFF${text.replaceAll("\n", "\r\n")}`);
    expect(findings).toEqual([]);
    expect(sources.map((one) => one.key)).toEqual(["k1", "k2"]);
    for (const { key, csl, names, year, label, span, keySpan } of sources) {
      expect(csl).toMatchObject({ id: key, type: "book", title: `The Rings of ${key}` });
      expect(names).toEqual([
        { family: "Vane", given: "Ann" },
        { family: "Hale", given: "Bo" },
      ]);
      expect([year, label]).toEqual([1968, "Vane & Hale 1968"]);
      const written = `\uFEFF${text.replaceAll("\n", "\r\n")}`;
      expect(written.slice(keySpan.start, keySpan.end).replaceAll('"', "")).toBe(key);
      expect(written.slice(span.start, span.end)).toContain(`The Rings of ${key}`);
      expect(written.slice(span.start, span.end).match(/The Rings/g)).toHaveLength(1);
    }
  });

  test("50,000 entries arrive", () => {
    const entries = Array.from({ length: 50_000 }, (_, place) => entry[ending](`k${place}`));
    const { sources, findings } = read(ending, whole(ending, entries));
    expect(findings).toEqual([]);
    expect(new Set(sources.map((one) => one.key)).size).toBe(50_000);
  });

  const pieces: Readonly<Record<Ending, readonly string[]>> = {
    bib: [
      "@book{",
      "k,",
      "title = ",
      "{",
      "}",
      '"',
      "@",
      "#",
      "\\emph{",
      "$",
      "author={",
      " and ",
      "%",
      "\n",
      "@string{",
      "date={",
      "(",
      ")",
    ],
    ris: [
      "TY  - BOOK",
      "\n",
      "\r\n",
      "ER  - ",
      "AU  - ",
      "PY  - ",
      "TI  - x",
      "DO  - 10",
      "ID  - ",
      "Z",
      "\uFEFF",
      "TY  - ??",
    ],
    json: [
      "[",
      "]",
      "{",
      "}",
      '"id"',
      ":",
      ",",
      '"',
      '"type"',
      "\\",
      "\\u12",
      "1",
      "-",
      "null",
      "\n",
      '"author"',
      '"issued"',
      "\0",
    ],
  };
  test("any text is read without an error of ours, every place in the file", () => {
    const piece = fc.constantFrom(...pieces[ending], "k", "é", "𐀀", "~");
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 40 }), (parts) => {
        const text = parts.join("");
        const { sources, findings } = read(ending, text);
        const spans = [
          ...sources.flatMap((one) => [one.span, one.keySpan]),
          ...findings.map((one) => one.at),
        ];
        for (const span of spans) {
          expect(span?.start).toBeGreaterThanOrEqual(0);
          expect(span?.end).toBeGreaterThanOrEqual(span?.start ?? 0);
          expect(span?.end).toBeLessThanOrEqual(text.length);
        }
      }),
      { numRuns: 500 },
    );
  });

  test("a broken entry costs at most itself and is told, wherever a piece of it is lost", () => {
    const good = read(ending, whole(ending, [entry[ending]("k1"), entry[ending]("k3")])).sources;
    const middle = entry[ending]("k2");
    fc.assert(
      fc.property(
        fc.nat(middle.length - 1),
        fc.constantFrom("{", "}", '"', ",", "", "\\", "@"),
        (at, put) => {
          const broken = middle.slice(0, at) + put + middle.slice(at + 1);
          const text = whole(ending, [entry[ending]("k1"), broken, entry[ending]("k3")]);
          const { sources } = read(ending, text);
          for (const { key, csl } of good) expect(sources.find((one) => one.key === key)?.csl).toEqual(csl);
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe("what is amiss is told at its place, and the others arrive", () => {
  const cases: readonly (readonly [Ending, text: string, keys: string, line: number, message: RegExp])[] = [
    ["bib", "@book{a, title={T}}\n@book{b, title={U\n}\n@book{c, title={V}}", "a c", 2, /never closed/],
    [
      "bib",
      "@book{a, title={T}}\n@book{b title={U}}\n@book{c, title={V}}",
      "a c",
      2,
      /expected `,` after the key/,
    ],
    ["bib", "@book{a, title={T}}\n@book{b,\n title=foo}", "a b", 3, /^Unknown abbreviation `foo`/],
    [
      "bib",
      "@book{a, title={T}}\n@foo{b, title={U}}",
      "a b",
      2,
      /^Unknown kind of entry `@foo`, read as a document/,
    ],
    ["bib", "@book{a, title={T}}\n@book{b,\n crossref={z}}", "a b", 3, /^Unknown entry `z` in `crossref`/],
    ["bib", "@set{a, entryset={b,z}}\n@book{b, title={T}}", "a b", 1, /^Unknown entry `z` in the set `a`/],
    ["bib", "@book{b, title={T},\n title={U}}", "b", 2, /^Duplicate field `title`/],
    ["bib", "@book{b,\n title={a $x}}", "b", 2, /^Unreadable `title`/],
    ["bib", "no entries", "", 1, /^Missing bibliography entries/],
    ["ris", "TY  - BOOK\nID  - a\nTY  - BOOK\nID  - b\nER  - ", "a b", 1, /^Missing `ER/],
    ["ris", "TY  - BOOK\nID  - a\nER  - \nTI  - lost\n", "a", 4, /outside a record/],
    [
      "ris",
      "TY  - ZZZZ\nID  - a\nTI  - T\nER  - ",
      "a",
      1,
      /^Unknown kind of record `ZZZZ`, read as a document/,
    ],
    [
      "json",
      '[{"id":"a","type":"book"},\n{"id":"b","type":"book",},\n{"id":"c","type":"book"}]',
      "a c",
      2,
      /expected a key/,
    ],
    ["json", '[{"id":"a","type":"book"}\n{"id":"c","type":"book"}]', "a c", 2, /expected `,` between items/],
    ["json", '[{"id":"a","type":"book"},\n7,\n{"id":"c","type":"book"}]', "a c", 2, /^Missing `id`/],
    ["json", '[{"id":"a","type":"book"},\n{"id":"b","type":"tome"}]', "a b", 2, /^Unknown type `tome`/],
    ["json", '[{"id":"a","type":"book"}]\nx', "a", 2, /^Unexpected `x`/],
    ["json", "{}", "", 1, /expected a list/],
  ];
  test.each(cases)("%s %j", (ending, text, keys, line, message) => {
    const { sources, findings } = read(ending, text);
    expect(sources.map((one) => one.key).join(" ")).toBe(keys);
    expect(findings.map((one) => inEnglish(one.message))).toEqual([expect.stringMatching(message)]);
    expect(text.slice(0, findings[0]?.at?.start).split("\n")).toHaveLength(line);
  });
});

// EDTF (ISO 8601-2:2019) counts 1 BC as 0000; CSL 1.0.2 counts it as -1.
describe("dates", () => {
  const dates: readonly (readonly [fields: string, issued: object, year: number | null])[] = [
    ["date = {-0299}", { "date-parts": [[-300]] }, -299],
    ["date = {0000}", { "date-parts": [[-1]] }, 0],
    ["date = {1999/2001~}", { "date-parts": [[1999], [2001]], circa: true }, 2001],
    ["date = {1968-05-02}", { "date-parts": [[1968, 5, 2]] }, 1968],
    ["year = {1968}, month = may", { "date-parts": [[1968, 5]] }, 1968],
    ["year = {c. 1896}", { "date-parts": [[1896]], circa: true }, 1896],
    ["year = {480 BC}", { "date-parts": [[-480]] }, -479],
    ["year = {1896--97}", { "date-parts": [[1896], [1897]] }, 1897],
    ["year = {forthcoming}", { literal: "forthcoming" }, null],
  ];
  test.each(dates)("%s", (fields, issued, year) => {
    expect(bib(fields).csl.issued).toEqual(issued);
    expect(bib(fields).year).toBe(year);
  });

  test("a CSL date of 300 BC is the astronomical year −299", () => {
    const item = '[{"id":"a","type":"classic","issued":{"date-parts":[[-300]]}}]';
    expect(only("json", item).year).toBe(-299);
  });

  test("a reprint counts from its original", () => {
    expect(bib("date = {1974}, origdate = {1896}").year).toBe(1896);
    expect(bib("year = {1974}, origyear = {1896}").year).toBe(1896);
  });
});

test("names: others, bodies, particles and ORCIDs", () => {
  // 0000-0002-1825-0097 is the example that ORCID's own documentation gives.
  const one = bib(
    'author = {van der Merwe, Jo and\n   others}, author+an:orcid = {1="0000-0002-1825-0097"}, year = 1990',
  );
  expect(one.andOthers).toBe(true);
  expect(one.names).toHaveLength(1);
  expect(one.names[0]).toMatchObject({ family: "Merwe", orcid: "0000-0002-1825-0097" });
  expect(one.label).toBe("van der Merwe et al. 1990");
  expect(bib("author = {{Hale and Daughters}}").label).toBe("Hale and Daughters n.d.");
  const csl =
    '[{"id":"a","type":"book","author":[{"family":"Hale","ORCID":"https://orcid.org/0000-0002-1825-0097"}]}]';
  expect(only("json", csl).names).toEqual([{ family: "Hale", orcid: "0000-0002-1825-0097" }]);
});

test("the language is that of the work, several as one text", () => {
  expect(bib("language = {english}, langid = {german}").csl.language).toBe("en");
  expect(bib("langid = {ngerman}").csl.language).toBe("de");
  expect(bib("language = {langlatin and langgerman}").csl.language).toBe("la, de");
  expect(only("json", '[{"id":"a","type":"book","language":["de","en"]}]').csl.language).toBe("de, en");
});

test("abbreviations, \\enquote*, xdata and a broken title keep their words", () => {
  const text =
    "@string{m = {Merrow}}\n@xdata{x, publisher = m # { Press}}\n@book{a, title = {On \\enquote*{rings}}, xdata = {x}}";
  expect(only("bib", text).csl).toMatchObject({
    publisher: "Merrow Press",
    title: expect.stringContaining("rings"),
  });
  expect(only("bib", "@book{a, title = {Rings at $x}}").csl.title).toBe("Rings at x");
});

test("RIS: lines that go on, fields given twice, and keys made from author and year", () => {
  const record = (more: string): string =>
    `TY  - JOUR\nAU  - Hále, Edmund\nPY  - 1998/03/12/\nTI  - The Rings\n of Merrow\n${more}ER  - \n`;
  const { sources, findings } = read("ris", record("DO  - 10.1000/a\nDO  - 10.1000/b\n") + record(""));
  expect(findings).toEqual([]);
  expect(sources.map((one) => one.key)).toEqual(["hale-1998", "hale-1998b"]);
  expect(sources[0]?.csl).toMatchObject({
    DOI: "10.1000/a",
    title: "The Rings of Merrow",
    issued: { "date-parts": [[1998, 3, 12]] },
  });
});

test("nothing is printed and nothing of the language's own is mistaken for a key", () => {
  const spies = (["log", "warn", "error", "info", "debug"] as const).map((name) => vi.spyOn(console, name));
  const text =
    "@book{__proto__, title={T}}\n@book{x, foo={y}, crossref={constructor}}\n@constructor{z, title={T}}";
  expect(read("bib", text).sources.map((one) => one.key)).toEqual(["__proto__", "x", "z"]);
  expect(only("json", '[{"id":"__proto__","type":"book","__proto__":{"title":"x"}}]').key).toBe("__proto__");
  for (const spy of spies) {
    expect(spy).not.toHaveBeenCalled();
    spy.mockRestore();
  }
});

const many = (count: number, piece: (place: number) => string): string =>
  Array.from({ length: count }, (_, place) => piece(place)).join("");
const million = 1_000_000;

describe("hostile files end, with a finding", () => {
  const files: readonly (readonly [name: string, Ending, text: () => string])[] = [
    ["ten million letters", "bib", () => "x".repeat(10 * million)],
    ["ten million @", "bib", () => "@".repeat(10 * million)],
    ["a million openings", "bib", () => "@book{".repeat(million)],
    ["unclosed entries", "bib", () => many(50_000, (place) => `@book{k${place}, title={T\n`)],
    ["closed too late", "bib", () => "@a{k, t={ \n".repeat(300_000) + "}x".repeat(300_000)],
    ["unclosed quotes", "bib", () => '@a(k,t=" \n'.repeat(300_000)],
    ["ten million braces", "bib", () => "@a{k, title={" + "{".repeat(10 * million)],
    ["ten million spaces", "bib", () => "@book{k, title={" + " ".repeat(10 * million)],
    ["a title of ten million letters", "bib", () => `@book{k, title={${"x".repeat(10 * million)}}}`],
    ["a name of ten million words", "bib", () => `@book{k, author={${"Ab ".repeat(3 * million)}}}`],
    ["abbreviations that grow", "bib", () => "@string{a={xxxxxxxxxx}}\n" + "@string{a = a # a}\n".repeat(40)],
    [
      "one that is used without end",
      "bib",
      () => `@string{s={${"x".repeat(9_999)}}}\n` + many(30_000, (place) => `@a{k${place},title=s#s#s#s}\n`),
    ],
    [
      "a circle of entries",
      "bib",
      () => many(20_000, (place) => `@book{k${place}, crossref={k${(place + 1) % 20_000}}}\n`),
    ],
    ["a million lines of no record", "ris", () => "x\n".repeat(million)],
    ["records without end", "ris", () => "TY  - BOOK\n".repeat(100_000)],
    ["a hundred thousand brackets", "json", () => "[".repeat(100_000)],
    ["brackets within an item", "json", () => `[{"id":"a","x":${"[".repeat(50_000)}${"]".repeat(50_000)}}]`],
    ["a string that never ends", "json", () => `[{"id":"a","title":"${"x".repeat(10 * million)}`],
    ["a million commas", "json", () => `[${",".repeat(million)}`],
    ["items that never close", "json", () => "[" + '{"id":"a",'.repeat(300_000)],
  ];
  test.each(files)("%s (%s)", (_, ending, text) => {
    expect(messages(ending, text())).not.toEqual([]);
  });

  const long: readonly (readonly [name: string, Ending, text: () => string])[] = [
    ["spaces within a name", "bib", () => `@book{k, author={A${" ".repeat(million)}and B}, title={T}}`],
    ["names", "bib", () => `@book{k, author={${"A and ".repeat(160_000)}B}}`],
    ["accents", "bib", () => `@book{k, title={${"\\'e".repeat(300_000)}}}`],
    ["dollars", "bib", () => `@book{k, title={${"$".repeat(million)}}}`],
    ["authors", "ris", () => `TY  - BOOK\n${"AU  - Hale, E\n".repeat(200_000)}ER  - `],
    ["words", "ris", () => `TY  - BOOK\n${"KW  - ring\n".repeat(300_000)}ER  - `],
    ["lines that go on", "ris", () => `TY  - BOOK\nTI  - a\n${"b\n".repeat(500_000)}ER  - `],
    ["one line", "ris", () => `TY  - BOOK\nTI  - ${"x ".repeat(5 * million)}\nER  - `],
    ["a string", "json", () => `[{"id":"a","type":"book","title":"${"x".repeat(10 * million)}"}]`],
    ["escapes", "json", () => `[{"id":"a","type":"book","title":"${"\\u00e9".repeat(million)}"}]`],
  ];
  test.each(long)("a source of very many %s (%s) is one source", (_, ending, text) => {
    expect(read(ending, text()).sources).toHaveLength(1);
  });
});
