import { expect, test } from "vitest";
import type { AnyRecord } from "../../../src/read/record.ts";
import { readCorpus } from "../../../src/read/read.ts";
import type { Reading } from "../../../src/read/read.ts";
import type { SourceFile } from "../../../src/read/source-file.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";

const main = (settings = ""): SourceFile => ({
  path: "corpus.yaml",
  text: `format: 1\ntitle: Met\nlanguage: en\n${settings}`,
});

function readingOf(...files: readonly SourceFile[]): Reading {
  const read = readCorpus(files, new Map());
  if (!("settings" in read)) throw new Error("the corpus cannot be read");
  return read;
}

function measurementsOf(...files: readonly SourceFile[]): readonly (AnyRecord & { list: "measurements" })[] {
  return readingOf(...files).records.filter((one) => one.list === "measurements");
}

const measured = (path: string, id: string, value: string, from = "vane-1968 p. 3"): SourceFile => ({
  path,
  text: `measurements:\n  - { id: ${id}, of: ring-a, dimension: gap, value: ${value}, from: ${from} }\n`,
});

test("what a file says is the same whatever was read before it", () => {
  const files = corpusOf({ records: 300, seed: 11 });
  const settings = files.find(({ path }) => path === "corpus.yaml") ?? main();
  const together = readingOf(...files).records;
  for (const file of files.filter(({ path }) => path.endsWith(".yaml") && path !== "corpus.yaml")) {
    const here = together.filter((one) => one.file === file.path);
    expect(here.map((one) => [one.list, one.id, one.values])).toEqual(
      readingOf(settings, file).records.map((one) => [one.list, one.id, one.values]),
    );
  }
});

test("what is met again in another file is kept once", () => {
  const [one, other] = measurementsOf(
    main(),
    measured("a.yaml", "one", "18.2 ± 0.4 cm"),
    measured("b.yaml", "other", "18.2 ± 0.4 cm"),
  );
  expect(other?.values.value).toBe(one?.values.value);
  expect(other?.values.from).toBe(one?.values.from);
});

test("the same text is another quantity in other units, under another coverage, and by another sign for decimals", () => {
  const pace = (size: string): SourceFile => main(`units:\n  pace: { is: ${size} m }\n`);
  const sizes = ["0.7", "0.8"].map(
    (size) => measurementsOf(pace(size), measured("a.yaml", "one", "10 pace"))[0]?.values.value.value,
  );
  expect(sizes).toEqual([7, 8]);
  const [plain, twice] = measurementsOf(
    main(),
    measured("a.yaml", "one", "18 ± 2 cm"),
    measured("b.yaml", "other", "18 ± 2 cm, coverage: 2"),
  );
  expect([plain?.values.value.u, twice?.values.value.u]).toEqual([0.02, 0.01]);
  const table = {
    path: "t.csv",
    text: "id;of;dimension;value;from\nin-table;ring-a;gap;1,500 m;vane-1968\n",
  };
  const comma = main("measurement-tables: [t.csv]\ndecimal: comma\n");
  const [inTable, inText] = measurementsOf(comma, table, measured("a.yaml", "one", "1.5 m"));
  expect([inTable?.values.value.value, inText?.values.value.value]).toEqual([1.5, 1.5]);
});
