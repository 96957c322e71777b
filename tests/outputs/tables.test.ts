import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { build } from "../../src/build.ts";
import type { Model } from "../../src/build.ts";
import { emptyMemo } from "../../src/host/evaluate.ts";
import { readTable } from "../../src/read/table/csv.ts";
import type { Cell, DataTable } from "../../src/show/telling/tables/table.ts";
import { dataTables } from "../../src/show/telling/tables/tables.ts";
import { csvOf } from "../../src/write/tables/csv.ts";
import { workbookOf } from "../../src/write/office/sheets/workbook.ts";
import { textIn, unzipped } from "./reading/unzipped.ts";

const files: Readonly<Record<string, string>> = {
  "corpus.yaml": `title: Bowls of the Row
bibliography: [sources.bib]
withhold: [sealed-pit, sealed-claim]
dimensions: { rim: { kind: length, also: [mouth] }, bearing: { kind: angle, sign: any } }
`,
  "sources.bib": `@book{hale-1990, author = {Hale, Ada}, title = {The Row}, year = 1990}
@book{reed-2001, author = {Reed, Mal}, title = {The Row Again}, year = 2001}
`,
  "records.yaml": `scholars:
  - { id: hale, name: Ada Hale }
  - { id: reed, name: Mal Reed }
artefacts:
  - { id: bowl, name: The red bowl, coordinates: "51.50 N, 2.10 W" }
  - { id: sealed-pit, name: The pit of the garden }
passages:
  - { id: reed-p5, from: reed-2001, at: "p. 5, n. 2", quote: a mouth }
measurements:
  - { id: plain, of: bowl, dimension: rim, value: 18.2 ± 0.4 cm, from: hale-1990 p. 3 }
  - { id: old-feet, of: bowl, dimension: mouth, value: 5 ft 4 in, year: 480 BC, from: reed-p5 }
  - { id: bound, of: bowl, dimension: rim, value: ≥ 240 cm, between: a to b }
  - { id: worn, of: bowl, dimension: rim, value: 30 cm, state: preserved, basis: autopsy, between: b to c }
  - { id: range, of: bowl, dimension: rim, value: 42–45 cm, between: c to d }
  - { id: many, of: bowl, dimension: lip, value: 62–88 mm, n: 40, spread: true }
  - { id: turned, of: bowl, dimension: bearing, value: -30° }
  - { id: hidden, of: sealed-pit, dimension: rim, value: 77.7 cm }
claims:
  - { id: one-set, text: "=They are one set, \\"all\\"" }
  - { id: two-sets, text: They are two sets., incompatible-with: [one-set] }
  - { id: sealed-claim, text: The pit is older., about: [sealed-pit] }
positions:
  - { who: [hale, reed], claim: one-set, stance: holds, from: hale-1990 p. 9, words: plainly one }
  - { who: reed, claim: one-set, stance: rejects, from: reed-2001 p. 1 }
`,
};
const sources = Object.entries(files).map(([path, text]) => ({ path, text }));
const texts = new Map(Object.entries(files));
const checked = build(sources, [], emptyMemo());
const model = checked.model as Model;
const tables = dataTables(model, checked.findings, texts);

function table(name: string): DataTable {
  const found = tables.find((one) => one.name === name);
  if (!found) throw new Error(name);
  return found;
}

function row(name: string, id: string): Readonly<Record<string, Cell>> {
  const { columns, rows } = table(name);
  const cells = rows.find((one) => one[0] === id) ?? [];
  return Object.fromEntries(columns.map((one, place) => [one.name, cells[place] ?? null]));
}

describe("the table of measurements", () => {
  test("has the figure as written and in SI", () => {
    expect(row("measurements", "plain")).toMatchObject({
      artefact: "bowl",
      "artefact-name": "The red bowl",
      original: "18.2 ± 0.4 cm",
      "original-unit": "cm",
      form: "value",
      "si-unit": "m",
      state: "complete",
      source: "hale-1990 p. 3",
      by: "Ada Hale",
      year: "1990",
    });
    expect(row("measurements", "plain")["value"]).toBeCloseTo(0.182, 12);
    expect(row("measurements", "plain")["standard-uncertainty"]).toBeCloseTo(0.004, 12);
  });

  test("turns feet and inches by the foot of 0.3048 m, and years of BC by EDTF", () => {
    const { value, year, dimension, source } = row("measurements", "old-feet");
    expect(value).toBeCloseTo(5 * 0.3048 + 4 * 0.0254, 12);
    expect({ year, dimension, source }).toEqual({
      year: "-0479",
      dimension: "rim",
      source: "reed-2001 p. 5, n. 2",
    });
  });

  test("takes bounds and what is preserved for no values", () => {
    for (const [id, limit] of [
      ["bound", 2.4],
      ["worn", 0.3],
    ] as const) {
      expect(row("measurements", id)).toMatchObject({
        form: "at-least",
        "standard-uncertainty": null,
        high: null,
      });
      expect(row("measurements", id)["low"]).toBeCloseTo(limit, 12);
    }
  });

  test("has of a range its middle, its ends, and what a rectangle over it leaves open (GUM 4.3.7)", () => {
    const { value, low, high, "standard-uncertainty": u } = row("measurements", "range");
    [value, low, high, u].forEach((one, place) =>
      expect(one).toBeCloseTo([0.435, 0.42, 0.45, 0.03 / Math.sqrt(12)][place] ?? NaN, 12),
    );
    expect(row("measurements", "turned")["value"]).toBeCloseTo(-Math.PI / 6, 12);
  });

  test("takes the spread of several for no error of one", () => {
    expect(row("measurements", "many")).toMatchObject({
      spread: true,
      n: 40,
      "standard-uncertainty": null,
      low: 0.062,
      high: 0.088,
    });
  });
});

test("of two who share a position each has a row, and the latest is told", () => {
  const { columns, rows } = table("positions");
  const at = (name: string): number => columns.findIndex((one) => one.name === name);
  expect(
    rows.map((cells) => ["scholar", "stance", "latest", "words"].map((name) => cells[at(name)])),
  ).toEqual([
    ["hale", "holds", true, "plainly one"],
    ["reed", "holds", false, "plainly one"],
    ["reed", "rejects", true, null],
  ]);
  expect(row("claims", "one-set")).toMatchObject({
    "held-by": "Ada Hale",
    "rejected-by": "Mal Reed",
    "not-both-with": "two-sets",
    standing: "unsupported",
    footing: "attested",
  });
});

test("every column is in the dictionary, and so is what is withheld", () => {
  const meant = table("dictionary").rows.map(([of, column]) => `${String(of)}.${String(column)}`);
  for (const { name, columns } of tables.filter((one) => one.name !== "dictionary"))
    for (const column of columns) expect(meant).toContain(`${name}.${column.name}`);
  const all = tables.map(csvOf).join("");
  expect(all).toContain("Exact places of finds are withheld.");
  expect(all).toContain("Some records are withheld");
  expect(all).not.toMatch(/sealed|garden|77\.7|51\.50/);
});

const cell = fc.oneof(
  fc.string({ unit: "grapheme" }),
  fc.constantFrom('"', "a,b", "x\r\ny", "1,5", "", "٣٫٥", "naïve\n"),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.boolean(),
  fc.constant(null),
);

test("what is written as CSV is read as it was", () => {
  const columns = ["one", "two", "three"].map((name) => ({ name, holds: "text" as const, doc: name }));
  fc.assert(
    fc.property(fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 6 }), (rows) => {
      const text = csvOf({ name: "t", doc: "t", columns, rows });
      expect(fieldsOf(text).slice(1)).toEqual(rows.map((cells) => cells.map((one) => inField(one))));
    }),
    { numRuns: 100 },
  );
});

function inField(one: Cell): string {
  if (one === null) return "";
  if (typeof one !== "string") return String(one);
  return /^[=+@\t\r]|^-(?![\d.]+$)/.test(one) ? `'${one}` : one;
}

/** Fields by the grammar of RFC 4180, section 2, read sign by sign. */
function fieldsOf(text: string): readonly (readonly string[])[] {
  const lines: string[][] = [];
  let [line, field, quoted]: [string[], string, boolean] = [[], "", false];
  for (let at = 0; at < text.length; at++) {
    const sign = text.charAt(at);
    if (quoted && sign === '"' && text[at + 1] === '"') field += text.charAt(++at);
    else if (sign === '"') quoted = !quoted;
    else if (!quoted && sign === ",") [line, field] = [[...line, field], ""];
    else if (!quoted && text.startsWith("\r\n", at)) {
      lines.push([...line, field]);
      [line, field] = [[], ""];
      at++;
    } else field += sign;
  }
  return lines;
}

test("the corpus's own reader of tables reads it too", () => {
  const read = readTable({ path: "measurements.csv", text: csvOf(table("measurements")) });
  expect(read.rows).toHaveLength(7);
});

test("no text is taken for a formula", async () => {
  expect(csvOf(table("claims"))).toContain(`"'=They are one set, ""all"""`);
  const book = await workbookOf(tables);
  const sheets = [...unzipped(book).keys()].filter((name) => /worksheets\/sheet\d+\.xml$/.test(name));
  expect(sheets).toHaveLength(tables.length);
  expect(sheets.filter((name) => /<f[ >]/.test(textIn(book, name)))).toEqual([]);
  const shared = textIn(book, "xl/sharedStrings.xml");
  expect(shared).toContain('=They are one set, "all"');
});

test("equal tables make equal bytes at any hour", async () => {
  const [once, again] = [await workbookOf(tables), await workbookOf(tables)];
  expect(Buffer.from(once).equals(again)).toBe(true);
  for (const at of entriesIn(once)) expect(Buffer.from(once).readUInt32LE(at + 12)).toBe(0x00210000);
});

function entriesIn(zip: Uint8Array): readonly number[] {
  const bytes = Buffer.from(zip);
  const found: number[] = [];
  for (
    let at = bytes.indexOf("PK\u0001\u0002", 0, "latin1");
    at >= 0;
    at = bytes.indexOf("PK\u0001\u0002", at + 1, "latin1")
  )
    found.push(at);
  return found;
}
