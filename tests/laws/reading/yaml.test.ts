import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { unitTable } from "../../../src/base/unit/unit-table.ts";
import { spanOf } from "../../../src/read/record.ts";
import { readRecords } from "../../../src/read/records.ts";
import { nodeAt } from "../../../src/read/yaml/tree.ts";
import { readYaml } from "../../../src/read/yaml/text.ts";

const context = { units: unitTable([]), approximate: 0.025, plusMinus: "standard" as const };
const read = (text: string) => readRecords({ path: "a.yaml", text }, context);

const nasty = [
  "\ufeff# a byte-order mark\r\nclaims:\r\n  - id: a # said twice\r\n    text: The first claim.\r\n",
  'claims:\n- {id: a, text: "quoted, with a comma"}\n-   id:   b\n    text: >-\n      folded over\n      two lines\n',
  "source: hale-1896\nclaims:\n  - &x\n    id: a\n    text: |\n      kept\n      as it is\n  - id: b\n    text: النصّ من اليمين إلى اليسار\n",
  "observations:\n  - id: o\n    of: [ring, post]\n    text: 'single ''quoted'''\n    present: not-reported\n",
];

describe.each(nasty.map((text, n) => [n, text] as const))("nasty file %i", (_, text) => {
  test("is read whole, and every place lies in it and reads back its field", () => {
    const { records, findings, spoilt } = read(text);
    expect(findings).toEqual([]);
    expect(spoilt).toEqual([]);
    expect(records.length).toBeGreaterThan(0);
    for (const record of records) {
      for (const entry of record.node.entries) {
        if (entry.key === "from") continue;
        const span = spanOf(record, entry.key);
        expect(span.start).toBeGreaterThanOrEqual(0);
        expect(span.end).toBeLessThanOrEqual(text.length);
        expect(text.slice(entry.keyStart, entry.keyEnd)).toBe(entry.key);
        if (entry.value.is === "text" && entry.value.plain)
          expect(text.slice(span.start, span.end)).toBe(entry.value.text);
      }
    }
  });
});

test("a file's source is the from of records that name none", () => {
  const { records } = read(
    "source: hale-1896 p. 3\nclaims:\n  - { id: a, text: One. }\n  - { id: b, text: Two., from: vane-1968 }\n",
  );
  expect(records.map((record) => ("from" in record.values ? record.values.from : null))).toEqual([
    [{ key: "hale-1896", locator: "p. 3" }],
    [{ key: "vane-1968", locator: null }],
  ]);
});

test("scalars keep what was written, whatever they look like", () => {
  const words = ["942", "0x1F", "no", "~", "2024-05-01", "1e3", "18.20", "null"];
  for (const word of words) {
    const { records } = read(`claims:\n  - id: a\n    text: ${word}\n`);
    expect(records[0]?.list === "claims" && records[0].values.text).toBe(word);
  }
});

test("a bad optional field costs that field, a bad required one the record, a bad premise the argument", () => {
  const text = [
    "observations:",
    "  - { id: o, of: ring, text: Seen., year: long ago }",
    "  - { id: lost, of: ring }",
    "arguments:",
    "  - { id: whole, because: [o], therefore: c }",
    "  - { id: broken, because: [o, { not: an id }], therefore: c }",
    "",
  ].join("\n");
  const { records, spoilt } = read(text);
  expect(records.map((record) => record.id)).toEqual(["o", "whole"]);
  expect("year" in (records[0]?.values ?? {})).toBe(false);
  expect(spoilt.map(({ id }) => id)).toEqual(["lost", "broken"]);
});

test("a single value stands for a list of one, an empty value is no field, and x- fields are free", () => {
  const { records, findings } = read(
    "observations:\n  - { id: o, of: ring, text: Seen., note: , x-mine: { any: thing } }\n",
  );
  expect(findings).toEqual([]);
  expect(records[0]?.list === "observations" && records[0].values.of).toEqual(["ring"]);
  expect("note" in (records[0]?.values ?? {})).toBe(false);
});

test("any text is read without a throw, and every finding has a place in it", () => {
  const pieces = fc.constantFrom(
    "claims:",
    "\n",
    "  ",
    "- ",
    "id: ",
    "text: ",
    "{",
    "}",
    "[",
    "]",
    '"',
    "'",
    ",",
    "#",
    "&a",
    "*a",
    "|",
    ">",
    "\t",
    ": ",
    "é",
    "ن",
    "---\n",
    "!x",
    "<<: ",
  );
  fc.assert(
    fc.property(fc.array(fc.oneof(pieces, fc.string({ maxLength: 5 })), { maxLength: 40 }), (parts) => {
      const text = parts.join("");
      for (const { at } of read(text).findings) {
        expect(at?.start).toBeGreaterThanOrEqual(0);
        expect(at?.end).toBeLessThanOrEqual(text.length + 1);
      }
    }),
    { numRuns: 2000 },
  );
});

test("a path into a tree leads to its value, and a single value counts as a list of one", () => {
  const { root } = readYaml("a.yaml", "a: [x, { b: y }]\nc: z\n");
  if (!root) throw new Error("no root");
  expect(nodeAt(root, ["a", 1, "b"])).toMatchObject({ is: "text", text: "y" });
  expect(nodeAt(root, ["c", 0])).toMatchObject({ is: "text", text: "z" });
});
