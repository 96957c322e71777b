import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { copied } from "../../../src/app/pages/desk/grid/table/moves.ts";
import { tableInHtml } from "../../../src/show/desk/grid/html-table.ts";
import { pastedFrom } from "../../../src/show/desk/grid/pasted.ts";

/** Cells as they stand in spreadsheets: figures, words, signs that tables are made of, several lines. */
const cell = fc.oneof(
  fc.constantFrom(
    "18.2",
    "18,2 ± 0,3",
    '5" nail',
    '"so called"',
    "a\tb",
    "two\nlines",
    "p. 12; fig. 3",
    "قدر",
    "",
    "<b>",
    "R&D",
  ),
  fc.string({ maxLength: 12 }).map((text) => text.replace(/[\r\u0000-\u0008\u000b-\u001f\u007f\ufeff]/g, "")),
);
const lines = (most: number): fc.Arbitrary<readonly (readonly string[])[]> =>
  fc
    .integer({ min: 2, max: 5 })
    .chain((wide) =>
      fc.array(fc.array(cell, { minLength: wide, maxLength: wide }), { minLength: 2, maxLength: most }),
    );

/** A line of cells as RFC 4180 and spreadsheets on the clipboard have it. */
const quotedLine = (line: readonly string[], sign: string): string =>
  line
    .map((one) => (one.includes(sign) || /["\r\n]/.test(one) ? `"${one.replaceAll('"', '""')}"` : one))
    .join(sign);

describe("cells from a spreadsheet", () => {
  test("are the same, with quotes and line breaks in them", () => {
    fc.assert(
      fc.property(lines(5), fc.constantFrom("\n", "\r\n"), fc.boolean(), (table, mark, closed) => {
        const text = table.map((line) => quotedLine(line, "\t")).join(mark) + (closed ? mark : "");
        // A last line without any text is no line where the text does not end in one.
        fc.pre(closed || table.at(-1)?.some((one) => one !== "") === true);
        expect(pastedFrom({ text, html: "" }, tableInHtml)).toEqual({ block: table, parted: "cells" });
      }),
      { numRuns: 100 },
    );
  });

  test("are the same after they were copied out of the grid", () => {
    fc.assert(
      fc.property(lines(4), (table) => {
        expect(pastedFrom({ text: `${copied(table)}\n`, html: "" }, tableInHtml).block).toEqual(table);
      }),
      { numRuns: 100 },
    );
  });

  test("parted by semicolons or commas are told from texts with such signs in them", () => {
    fc.assert(
      fc.property(lines(4), fc.constantFrom(";", ","), (table, sign) => {
        const words = table.map((line) => line.map((one) => `w${one.replace(/[;,\t]/g, "")}`));
        const text = words.map((line) => quotedLine(line, sign)).join("\n");
        expect(pastedFrom({ text, html: "" }, tableInHtml)).toEqual({ block: words, parted: "signs" });
      }),
      { numRuns: 60 },
    );
    for (const text of ["18,2\n19,4\n7,0", "Hale, Ada", "one; two", "p. 3, fig. 2\nplate 4"]) {
      const { block } = pastedFrom({ text, html: "" }, tableInHtml);
      expect(block).toEqual(text.split("\n").map((line) => [line]));
    }
  });
});

describe("a table in HTML", () => {
  const shown = (text: string): string =>
    text
      .trim()
      .replace(/[^\S\n]+/g, " ")
      .replace(/ ?\n ?/g, "\n")
      .trim();
  const inHtml = (text: string): string =>
    text
      .replace(/&/g, "&amp;")
      .replace(/</g, "&lt;")
      .replace(/"/g, "&#34;")
      .replace(/±/g, "&plusmn;")
      .replace(/\n/g, "<br>");

  test("has the cells that a browser shows", () => {
    fc.assert(
      fc.property(lines(4), (table) => {
        const seen = table.map((line) =>
          line.map((one) => shown(one.replace(/[\u00a0\u2028\u2029\u0085]/g, " "))),
        );
        const rows = seen.map(
          (line) => `<tr>\n${line.map((one) => `<td style='x:y'>${inHtml(one)}</td>`).join("\n")}</tr>`,
        );
        const html = `<html><head><style>td { color: red }</style></head><body><!-- <td>no</td> --><table><tbody>${rows.join("")}</tbody></table></body></html>`;
        expect(tableInHtml(html)).toEqual(seen);
        expect(pastedFrom({ text: "words of it", html }, tableInHtml).block).toEqual(seen);
      }),
      { numRuns: 60 },
    );
  });

  test("keeps cells that reach over others in their places, and is none where there is none", () => {
    const html =
      "<table><tr><th rowspan=2>Find<th colspan='2'>Size in&nbsp;cm</tr><tr><th>high<th>wide</tr><tr><td>SR-17<td>7<p>about</p><td>18.2</table>";
    expect(tableInHtml(html)).toEqual([
      ["Find", "Size in cm", ""],
      ["", "high", "wide"],
      ["SR-17", "7\nabout", "18.2"],
    ]);
    expect(tableInHtml("<p>no table</p>")).toBeNull();
    expect(pastedFrom({ text: "no table", html: "<p>no table</p>" }, tableInHtml).block).toEqual([
      ["no table"],
    ]);
  });
});

test("a column of very many figures is taken apart like a short one, without signs that no cell needs", () => {
  const lines = Array.from({ length: 300_000 }, (_, n) => `${n}`);
  const { block } = pastedFrom({ text: `${lines.join("\r\n")}\r\n\u00010\u0001`, html: "" }, () => null);
  expect(block.length).toBe(300_001);
  expect(block.at(-1)).toEqual(["0"]);
});
