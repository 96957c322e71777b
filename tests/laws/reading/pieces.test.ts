import { readFileSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { expect, test } from "vitest";
import { edited } from "../../../src/base/text/edit.ts";
import { unitTable } from "../../../src/base/unit/unit-table.ts";
import { textEdits } from "../../../src/read/edit/text-edits.ts";
import { readInPieces, readWhole } from "../../../src/read/records.ts";
import { large, piecesOf } from "../../../src/read/yaml/pieces.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";
import { inOneFile } from "../../bench/one-file.ts";

const context = () => ({ units: unitTable([]), approximate: 0.025, plusMinus: "standard" as const });

const folder = fileURLToPath(new URL("../../corpora/hand-written/", import.meta.url));
const byHand = readdirSync(folder, { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".yaml") && !name.endsWith("corpus.yaml"))
  .map((name) => readFileSync(`${folder}${name}`, "utf8"));
const made =
  inOneFile(corpusOf({ records: 120, seed: 5 })).find(({ path }) => path === "records.yaml")?.text ?? "";
const reading =
  corpusOf({ records: 300, seed: 6 }).find(({ path }) => path.startsWith("readings/"))?.text ?? "";
const tricky = [
  "claims:\n  - id: a\n    text: >-\n      one\n\n      - two\n  # of a\n\n  - id: b\n    text: |+\n      three\n\n\n# between\nquestions:\n  - id: q\n    text: Why?\n    answers: [a,\n      b]\n",
  'source: vane-1968 \n\n# all of it\nobservations:\n- id: o\n  text: "a line\n    and another"\n  of: [x]\n-\n  id: p\n  text: plain over\n    two lines # not this\n  of: x\n  x-own: { a: [1, 2] }\n',
  "claims:\r\n  - id: a\r\n    text: One\r\n  - id: b\r\n    text: 'it''s'\r\n",
  "claims:\r\n  - id: a\r\n    text: One\r\n  - text: Two",
  "claims:\n   - { id: a, text: One }\n   -  id: b\n      text: Two\n      short: three\nmeasurements:\n",
];
const texts = [...byHand, made, reading, ...tricky].filter((text) => piecesOf(text) !== null);

/** Pieces of text that mean something to YAML, put in anywhere. */
const signs = [
  "\n",
  "\n\n",
  " ",
  "  ",
  "- ",
  "\n  - ",
  ": ",
  "#",
  " # ",
  '"',
  "'",
  "[",
  "]",
  "{",
  "}",
  ",",
  "&a ",
  "*a",
  "|",
  ">",
  "\t",
  "!",
  "---\n",
  "...\n",
  "claims:\n",
  "\r\n",
  "7",
  "é",
  "x",
];

/** Read item by item a text gives what it gives as a whole, or nothing. */
function same(text: string, now: ReturnType<typeof context>): boolean {
  const file = { path: "a.yaml", text };
  const inPieces = readInPieces(file, now);
  if (!inPieces) return false;
  expect(inPieces).toEqual(readWhole(file, now));
  return true;
}

test("most of what people write is read item by item", () => {
  const count = byHand.filter((text) => piecesOf(text) !== null).length;
  expect(count).toBeGreaterThan(byHand.length / 2);
  for (const text of [made, reading, ...tricky]) expect(same(text, context())).toBe(true);
});

const heads = ["claims:", "claims: # of them", "claims:  ", "claims:#", "source: vane-1968", "artefacts:"];
const bodies = [
  ["{ id: a, text: One }"],
  ["id: a", "text: One # said so"],
  ["id: b", "text: >-", "  two", "", "  of them"],
  ["id: c", "x-own: # of it"],
  ["id: d", "x-own:", "  - e", "  -", "# of it"],
  ["text: One"],
  ["text:", "  # of it"],
  ["id: e", "text: 'it''s'", "", "# further on", ""],
];
const beside = ["", "# between", "  # between", "      # further in", "   "];

/** The lines of a file of heads, items under them and comments beside them, each item's dash in a column. */
const invented = fc
  .array(
    fc.tuple(
      fc.constantFrom(...heads),
      fc.constantFrom("", "  ", "   "),
      fc.array(fc.tuple(fc.constantFrom("- ", "-   "), fc.constantFrom(...bodies), fc.subarray(beside)), {
        maxLength: 3,
      }),
    ),
    { minLength: 1, maxLength: 3 },
  )
  .map((lists) =>
    lists.flatMap(([head, lead, items]) => [
      head,
      ...(head.startsWith("source") ? [] : items).flatMap(([dash, body, others]) => [
        ...body.map((line, n) =>
          line === "" ? "" : lead + (n === 0 ? dash : dash.replace("-", " ")) + line,
        ),
        ...others,
      ]),
    ]),
  );

test("a file of heads, items and comments is read item by item as in the whole, however its lines end", () => {
  let read = 0;
  const made = fc.tuple(invented, fc.constantFrom("\n", "\r\n"), fc.boolean());
  fc.assert(
    fc.property(made, ([lines, end, isEnded]) => {
      if (same(lines.join(end) + (isEnded ? end : ""), context())) read++;
    }),
    { numRuns: 100, seed: 4 },
  );
  expect(read).toBeGreaterThan(20);
});

test("an item is read as in the whole of its file, whatever is put in or taken out", () => {
  const edit = fc.record({
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    take: fc.constantFrom(0, 0, 0, 1, 5),
    put: fc.oneof(fc.constantFrom("7", "a", "é", " b"), fc.constantFrom("", ...signs)),
  });
  let read = 0;
  fc.assert(
    fc.property(fc.constantFrom(...texts), fc.array(edit, { minLength: 1, maxLength: 5 }), (text, edits) => {
      const now = context();
      let is = text;
      same(is, now);
      for (const { at, take, put } of edits) {
        const from = Math.floor(at * is.length);
        is = is.slice(0, from) + put + is.slice(from + take);
        if (same(is, now)) read++;
      }
    }),
    { numRuns: 100, seed: 3 },
  );
  expect(read).toBeGreaterThan(10);
});

test("a change to a record of a large file lies in that record, and the file reads as before but for it", () => {
  expect(made.length).toBeGreaterThan(large);
  const file = { path: "records.yaml", text: made };
  const before = readWhole(file, context());
  fc.assert(
    fc.property(
      fc.nat(before.records.length - 1),
      fc.constantFrom("short", "note"),
      fc.constantFrom<string | null>("twelve: of them", "# one", "two\nlines", "Ḫattuša", "7", null),
      (place, field, value) => {
        const record = before.records[place];
        if (!record) throw new Error("no record");
        const edits = textEdits(file, { is: "field", record: record.node.start, path: [field], value });
        if ("problem" in edits) throw new Error(String(edits.problem));
        const piece = piecesOf(made)?.pieces.find(
          ({ start, end }) => start <= record.node.start && record.node.start < end,
        );
        for (const { start, end } of edits) {
          expect(start).toBeGreaterThan(piece?.start ?? Infinity);
          expect(end).toBeLessThanOrEqual(piece?.end ?? 0);
        }
        const after = readWhole({ ...file, text: edited(made, edits) }, context());
        expect(after.findings.length).toBe(before.findings.length);
        expect(after.records.map(({ id }) => id)).toEqual(before.records.map(({ id }) => id));
        for (const [at, one] of after.records.entries()) {
          const was: Readonly<Record<string, unknown>> = { ...before.records[at]?.values };
          const { [field]: _, ...others } = was;
          const expected = at !== place ? was : value === null ? others : { ...others, [field]: value };
          expect({ ...one.values }).toEqual(expected);
        }
      },
    ),
    { numRuns: 25, seed: 2 },
  );
});
