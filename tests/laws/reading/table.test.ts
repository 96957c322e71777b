import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { readCorpus } from "../../../src/read/read.ts";
import { readTable } from "../../../src/read/table/csv.ts";
import type { Table } from "../../../src/read/table/csv.ts";

const read = (text: string): Table => readTable({ path: "posts.csv", text });
const texts = ({ rows }: Table): readonly (readonly string[])[] =>
  rows.map((row) => row.cells.map((cell) => cell.text));
const messages = ({ findings }: Table): readonly string[] => findings.map((one) => inEnglish(one.message));

/** A cell as RFC 4180 writes it; quotes are put where they must be, or everywhere. */
function written(cell: string, separator: string, always: boolean): string {
  const must = cell.includes('"') || cell.includes("\n") || cell.includes("\r") || cell.includes(separator);
  return must || always ? `"${cell.replaceAll('"', '""')}"` : cell;
}

const cellText = fc.string({ unit: fc.constantFrom(...'ab1 ,;\t"\n\r.ß#') });
const separators = fc.constantFrom(",", ";", "\t");
const ends = fc.constantFrom("\n", "\r\n");

test("what is written by RFC 4180 is read again, each cell at its place", () => {
  const grid = fc
    .integer({ min: 2, max: 5 })
    .chain((width) => fc.array(fc.array(cellText, { minLength: width, maxLength: width }), { maxLength: 6 }));
  fc.assert(
    fc.property(
      grid,
      separators,
      ends,
      fc.boolean(),
      fc.boolean(),
      fc.boolean(),
      (cells, mark, end, mark0, all, last) => {
        const width = cells[0]?.length ?? 2;
        fc.pre(cells.every((row) => row.join("").trim() !== ""));
        const head = Array.from({ length: width }, (_, column) => `column ${column}`);
        const lines = [head, ...cells].map((row) => row.map((cell) => written(cell, mark, all)));
        const text = `${mark0 ? "\uFEFF" : ""}${lines.map((row) => row.join(mark)).join(end)}${last ? end : ""}`;
        const table = read(text);
        expect(table.findings).toEqual([]);
        expect(table.head.map((cell) => cell.text)).toEqual(head);
        expect(texts(table)).toEqual(cells);
        table.rows.forEach((row, place) => {
          expect(text.slice(row.span.start, row.span.end)).toBe(lines[place + 1]?.join(mark));
          const places = row.cells.map(({ span }) => text.slice(span.start, span.end));
          expect(places).toEqual(lines[place + 1]);
        });
      },
    ),
  );
});

test("any text is read without an error of ours, every place in the file", () => {
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom(...'ab,;\t"\n\r#\uFEFF\0'), maxLength: 60 }), (text) => {
      const table = read(text);
      const spans = [
        ...table.head.map((cell) => cell.span),
        ...table.rows.flatMap((row) => [row.span, ...row.cells.map((cell) => cell.span)]),
        ...table.findings.flatMap((one) => one.at ?? []),
      ];
      for (const { start, end } of spans) {
        expect(start).toBeGreaterThanOrEqual(0);
        expect(end).toBeGreaterThanOrEqual(start);
        expect(end).toBeLessThanOrEqual(text.length);
      }
      for (const row of table.rows) expect(row.cells).toHaveLength(table.head.length);
    }),
  );
});

// RFC 4180 (2005), section 2, rules 1, 3, 5, 6 and 7.
test("the examples of RFC 4180", () => {
  const head = "field_name,field_name2,field_name3\r\n";
  expect(texts(read(`${head}aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n`))).toEqual([
    ["aaa", "bbb", "ccc"],
    ["zzz", "yyy", "xxx"],
  ]);
  expect(texts(read(`${head}"aaa","bbb","ccc"\r\nzzz,yyy,xxx`))).toEqual([
    ["aaa", "bbb", "ccc"],
    ["zzz", "yyy", "xxx"],
  ]);
  expect(texts(read(`${head}"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx`))[0]).toEqual(["aaa", "b\r\nbb", "ccc"]);
  expect(texts(read(`${head}"aaa","b""bb","ccc"`))).toEqual([["aaa", 'b"bb', "ccc"]]);
});

describe("what is amiss costs its row and is told at its place", () => {
  const cases: readonly (readonly [text: string, rows: readonly string[][], at: string, message: RegExp])[] =
    [
      [
        "of,value\na,1\nb\nc,3",
        [
          ["a", "1"],
          ["c", "3"],
        ],
        "b",
        /^Unexpected 1 cell, expected 2/,
      ],
      [
        "of,value\na,1\nb,2,x\nc,3",
        [
          ["a", "1"],
          ["c", "3"],
        ],
        "b,2,x",
        /^Unexpected 3 cells, expected 2/,
      ],
      [
        'of,value\na,1\n"b,2\nc,3',
        [
          ["a", "1"],
          ["c", "3"],
        ],
        '"b,2',
        /never closed/,
      ],
      ['of,value\n"a"x,1\nc,3', [["c", "3"]], "x,1", /after a closing quote/],
      ["# Surveyed 1998\r\nof;value\r\na;1,5", [["a", "1,5"]], "# Surveyed 1998", /^Unexpected comment/],
      ["of,of,value\na,b,1", [["a", "1"]], "of", /^Duplicate column `of`/],
      ["of,value\n,\na\nb,2", [["b", "2"]], "a", /^Unexpected 1 cell/],
      ["\n\n", [], "", /^Missing head line/],
    ];
  test.each(cases)("%j", (text, rows, at, message) => {
    const table = read(text);
    expect(texts(table)).toEqual(rows);
    expect(messages(table)).toEqual([expect.stringMatching(message)]);
    const span = table.findings[0]?.at;
    expect(span && text.slice(span.start, span.end)).toBe(at);
  });
});

test("a separator inside quotes of the head line does not count", () => {
  expect(texts(read('"height, above, turf";of\n1;a'))).toEqual([["1", "a"]]);
});

test("half a million rows, and files that are one quote, one cell or one line of separators", () => {
  expect(read("of,value\n" + "a,1\n".repeat(500_000)).rows).toHaveLength(500_000);
  expect(read(`of,value\n${"a,1\n".repeat(1_100_000)}`).findings).toHaveLength(1);
  expect(read(`of,value\n${'"'.repeat(1_000_001)}`).findings).not.toEqual([]);
  expect(read(`of,value\na,${"x".repeat(10_000_000)}`).rows[0]?.cells[1]?.text).toHaveLength(10_000_000);
  expect(read(`of${",".repeat(500_000)}\na`).findings).toHaveLength(1);
  expect(read(`of${",".repeat(5_000_000)}\na`).findings).not.toEqual([]);
  const wide = Array.from({ length: 100_000 }, (_, place) => `c${place}`).join(",");
  expect(read(`${wide}\n${wide}`).rows).toHaveLength(1);
});

test("a table with the comma as decimal sign reads it in every field, and takes no point for one", () => {
  const table =
    "of;dimension;value;uncertainty;unit;to-nearest\npost;depth;12,5;0,25;cm;0,5 cm\npost;width;1.200;;mm;\n";
  const corpus = [
    {
      path: "corpus.yaml",
      text: "format: 1\ntitle: Posts\nlanguage: en\ndecimal: comma\nmeasurement-tables: [posts.csv]\n",
    },
    { path: "posts.csv", text: table },
  ];
  const reading = readCorpus(corpus, new Map());
  const records = "records" in reading ? reading.records : [];
  const { findings } = reading;
  expect(records).toHaveLength(1);
  expect(records[0]).toMatchObject({
    values: { value: { value: 0.125, u: 0.0025 }, "to-nearest": { value: 0.005 } },
  });
  expect(findings.map((one) => one.rule)).toEqual(["bad-value"]);
  expect(inEnglish(findings[0]?.message ?? "")).toMatch(/`1\.200`/);
});
