import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { edited } from "../../../src/base/text/edit.ts";
import {
  entryAlone,
  rowEdits,
  rowsOf,
  troubleInFile,
} from "../../../src/read/bibliography/incoming/fields/change.ts";
import type { Row } from "../../../src/read/bibliography/incoming/fields/change.ts";
import { readAs } from "../../../src/read/bibliography/incoming/formats.ts";
import type { Format } from "../../../src/read/bibliography/incoming/formats.ts";

const files: Readonly<Record<Format, string>> = {
  bib: `% ours
@string{tv = {Thorn Vale}}
@article{vane-1968,
  author  = {Vane, Isolde},
  title   = "A Pace of the {D}own", % with a capital
  journal = tv # { Notes},
  year    = 1968
}
@inbook{part, title = {A part}, crossref = {whole}}
@book{whole, title = {The whole}, year = {1970}, publisher = {P}}
`,
  ris: "TY  - BOOK\r\nID  - b\r\nAU  - Vane, I.\r\nAU  - Reed, M.\r\nTI  - Long\r\n  title\r\nPY  - 1990\r\nER  - \r\n\r\nTY  - BOOK\r\nID  - c\r\nTI  - Other\r\nER  - \r\n",
  json: '[\n  { "id": "b", "type": "book",\n    "title": "One \\u00e9",\n    "issued": { "date-parts": [[1990]] } },\n  {"id": "c", "type": "book", "title": "Other"}\n]\n',
};

const formats = Object.keys(files) as Format[];

function changed(format: Format, place: number, change: (rows: readonly Row[]) => readonly Row[]): string {
  const text = files[format];
  const source = readAs(format, { path: `x.${format}`, text }).sources[place];
  if (!source) throw new Error("unexpected lack of an entry");
  const made = rowEdits(format, text, source, change(rowsOf(format, text, source)));
  if ("problem" in made) throw new Error(inEnglish(made.problem));
  const trouble = troubleInFile(format, { path: `x.${format}`, text }, source, made.edits);
  if (trouble) throw new Error(inEnglish(trouble.problem));
  return edited(
    text,
    made.edits.map((one) => ({ file: "", ...one })),
  );
}

const put = (name: string, text: string) => (rows: readonly Row[]) =>
  rows.map((row) => (row.name === name ? { ...row, text } : row));

describe("an entry that is changed", () => {
  test("as it is stays to the byte", () => {
    for (const format of formats) {
      const { sources } = readAs(format, { path: `x.${format}`, text: files[format] });
      for (const place of sources.keys()) expect(changed(format, place, (rows) => rows)).toBe(files[format]);
    }
  });

  test("changes one field in its place and nothing around it", () => {
    const words = fc.stringMatching(/^[A-Za-zäé]{1,8}( [A-Za-zäé]{1,8}){0,3}$/u);
    fc.assert(
      fc.property(fc.constantFrom(...formats), words, (format, said) => {
        const name = format === "ris" ? "TI" : "title";
        const was = { bib: "A Pace of the {D}own", ris: "Long\r\n  title", json: "One \\u00e9" }[format];
        expect(changed(format, 0, put(name, said))).toBe(files[format].replace(was, said));
      }),
    );
  });

  test("loses a field with its line, gets one in the manner of the others, and keeps what stands bare", () => {
    expect(changed("bib", 0, put("journal", ""))).toBe(files.bib.replace("  journal = tv # { Notes},\n", ""));
    expect(changed("bib", 0, put("year", "1969"))).toBe(files.bib.replace("1968\n}", "1969\n}"));
    expect(changed("bib", 0, put("year", "1969–70"))).toBe(files.bib.replace("1968\n}", "{1969–70}\n}"));
    expect(changed("bib", 0, (rows) => [...rows, { name: "doi", text: "10.1000/1", is: "braces" }])).toBe(
      files.bib.replace("= 1968\n", "= 1968,\n  doi     = {10.1000/1}\n"),
    );
    expect(changed("ris", 0, (rows) => [...rows, { name: "PB", text: "P", is: "bare" }])).toBe(
      files.ris.replace("ER  - ", "PB  - P\r\nER  - "),
    );
    expect(changed("json", 0, (rows) => [...rows, { name: "DOI", text: "10.1000/1", is: "quotes" }])).toBe(
      files.json.replace("[[1990]] } }", '[[1990]] },\n    "DOI": "10.1000/1" }'),
    );
  });

  test("is refused where the rest of the file would be read otherwise", () => {
    const refused = (text: string) => () => changed("bib", 0, put("title", text));
    expect(refused("} , note = {")).toThrow(/braces or quotes/);
    expect(refused("open {")).toThrow(/braces or quotes/);
    expect(() => changed("ris", 0, put("TI", "x\nER  - "))).toThrow(/tag/);
    expect(() => changed("json", 0, put("issued", "[1"))).toThrow(/JSON/);
    expect(() => changed("bib", 0, (rows) => [...rows, { name: "a = b", text: "c", is: "braces" }])).toThrow(
      /name/,
    );
  });

  test("is read alone as it is in its file, with its abbreviations and what it has from others", () => {
    for (const format of formats) {
      const { sources } = readAs(format, { path: `x.${format}`, text: files[format] });
      for (const source of sources)
        expect(entryAlone(format, files[format], source, [])?.csl, source.key).toEqual(source.csl);
    }
  });
});
