import { readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { edited } from "../../../src/base/text/edit.ts";
import { inputOf, keptIn } from "../../fuzz/found.ts";
import { inputAt } from "../../fuzz/inputs/inputs.ts";
import { formats } from "../../fuzz/inputs/input.ts";
import { seedsIn } from "../../fuzz/inputs/seeds.ts";
import { smaller } from "../../fuzz/smaller.ts";
import { corpusFaults } from "../../fuzz/trials/corpus.ts";
import { tried } from "../../fuzz/trials/trial.ts";

const root = fileURLToPath(new URL("../../../", import.meta.url));
const found = join(root, "tests/corpora/fuzzed");
const kept = keptIn(found);
const seeds = seedsIn(root);
// Papers are opened by what runs in a page; `npm run fuzz` opens them by its own build of that.
/** Longer ones are for `npm run fuzz`. */
const longest = 8_000;
const bench = { root, opening: null };

test("a thousand inputs, changed and made up, end in findings that can be shown", async () => {
  const faults: string[] = [];
  const met = new Set<string>();
  for (let place = 0; place < 1000; place++) {
    const input = inputAt(7, place, seeds);
    met.add(input.format);
    if (input.bytes.length > longest) continue;
    for (const what of await tried(input, place, bench)) faults.push(`${place} (${input.how}): ${what}`);
  }
  expect(faults).toEqual([]);
  expect([...met].sort()).toEqual([...formats].sort());
});

test("an input is the same for the same seed and place, and another for another", () => {
  for (let place = 0; place < 40; place++) expect(inputAt(3, place, seeds)).toEqual(inputAt(3, place, seeds));
  const texts = Array.from({ length: 40 }, (_, place) =>
    Buffer.from(inputAt(3, place, seeds).bytes).toString("latin1"),
  );
  expect(new Set(texts).size).toBeGreaterThan(35);
});

test("what is told of a place outside its file is a fault, and so is a throw", async () => {
  const files = [
    { path: "corpus.yaml", text: "title: Pits\n" },
    { path: "records.yaml", text: "claims: [{ id: a, text: t }]\n", problem: "cannot be opened" },
  ];
  expect(corpusFaults(files, 0)).toEqual([]);
  const broken = {
    format: "records",
    how: "",
    path: "records.yaml",
    bytes: Uint8Array.of(97),
    beside: [],
  } as const;
  const thrown = await tried(
    {
      ...broken,
      get bytes(): Uint8Array {
        throw new TypeError("no bytes");
      },
    },
    0,
    bench,
  );
  expect(thrown).toEqual([expect.stringMatching(/^throws TypeError: no bytes/u)]);
  expect(() => edited("a", [{ file: "a", start: 0, end: 2, text: "" }])).toThrow();
});

test("a find is made as small as it gets", async () => {
  const text = Array.from({ length: 60 }, (_, at) => `line ${at}: some words\n`).join("");
  const small = await smaller(text, async (one) => one.includes("41") && one.includes("7:"));
  expect(small).toMatch(/^.{0,8}7:.{0,8}41.{0,8}$/su);
});

test("every find that was kept is in the table, and none besides", () => {
  const folders = readdirSync(found, { withFileTypes: true }).filter((one) => one.isDirectory());
  expect(kept.map(({ name }) => name).sort()).toEqual(folders.map(({ name }) => name).sort());
});

test.each(kept)("what was found once is mended: $name", async (one) => {
  const input = inputOf(found, one);
  for (let place = 0; place < 12; place++) expect(await tried(input, place, bench)).toEqual([]);
});
