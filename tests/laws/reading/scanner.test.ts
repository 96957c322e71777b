import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { unitTable } from "../../../src/base/unit/unit-table.ts";
import { readInFull, readWhole } from "../../../src/read/records.ts";
import { plainTree } from "../../../src/read/yaml/plain/scan.ts";
import { changedTexts, compared } from "./scanner-texts.ts";

const context = { units: unitTable([]), approximate: 0.025, plusMinus: "standard" as const };

const textsBelow = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((one) => one.isFile() && /\.ya?ml$/u.test(one.name))
    .map((one) => readFileSync(join(one.parentPath, one.name), "utf8"));

const demo = textsBelow(fileURLToPath(new URL("../../../demo-corpus/", import.meta.url)));
const corpora = textsBelow(fileURLToPath(new URL("../../corpora/", import.meta.url)));

test("every file that is here reads the same in both ways, and nearly all are plain", () => {
  const { texts, plain, unlike } = compared([...demo, ...corpora]);
  expect(unlike).toEqual([]);
  expect(plain / texts).toBeGreaterThan(0.8);
  expect(demo.filter((text) => plainTree(text) === null)).toEqual([]);
});

test("a text changed at random reads the same in both ways wherever it is plain", () => {
  const { texts, plain, unlike } = compared(changedTexts([...demo, ...corpora], 1500, 11));
  expect(unlike).toEqual([]);
  expect(texts).toBe(1500);
  expect(plain).toBeGreaterThan(300);
});

test("records, their places and what there is to tell of them are the same", () => {
  let records = 0;
  const changed = [...changedTexts([...demo, ...corpora], 150, 12)];
  for (const text of [...demo, ...changed].filter((one) => plainTree(one) !== null)) {
    const file = { path: "a.yaml", text };
    const read = readWhole(file, context);
    records += read.records.length;
    expect(read).toEqual(readInFull(file, context));
    for (const record of read.records) expect(record.node).toBe(record.node);
  }
  expect(records).toBeGreaterThan(200);
});

test("what looks plain and is not goes to the other reader", () => {
  const odd = [
    "",
    "a\n",
    "- a\n",
    "a: b: c\n",
    "a: &x b\n",
    "a: *x\n",
    "a: !t b\n",
    "a: b\na: c\n",
    "a: b\n...\nc\n",
    "--- \na: b\n",
    "a: b #c\n",
    'a: "b\\n"\n',
    "a: [b,\n  c]\n",
    "a: [b, ]\n",
    "a: { b }\n",
    "a:\tb\n",
    "a: b\u0007\n",
    "\ufeffa: b\n",
    "? a\n: b\n",
    "a: |+\n  b\n",
    "a: >2\n   b\n",
    "<<: a\n",
    "a:\n   - b\n  - c\n",
    `${"[".repeat(70)}`,
    `a: ${"[".repeat(30)}${"]".repeat(30)}\n`,
    "a: b\rc: d\n",
    Array.from({ length: 300 }, (_, n) => `a${n}: b\n`).join(""),
  ];
  expect(odd.filter((text) => plainTree(text) !== null)).toEqual([]);
});

test("line ends of both kinds, texts over several lines and blocks are plain", () => {
  const texts = [
    "a: b\r\nc:\r\n  - d: e\r\n    f: g\r\n",
    "a: one\n  two\n\n  three\nb: c",
    "a: >-\n  one\n  two\n\n  three\nb: |\n  one\n\n  two\n",
    "claims:\n- id: a\n  about: [x, \"y, z\", 'it''s']\n# said\n\n- { id: b, x: { y: [1, 2] } }\n",
    'a: "say \\"so\\" \\\\"\nb:\nc: -5 cm\n',
  ];
  expect(texts.filter((text) => plainTree(text) === null)).toEqual([]);
  expect(compared(texts).unlike).toEqual([]);
});
