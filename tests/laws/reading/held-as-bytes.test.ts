import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { apart } from "../../../src/base/text/apart.ts";
import { textOf } from "../../../src/host/corpus-folder.ts";
import { readCorpus } from "../../../src/read/read.ts";
import { fileOfBytes, hasSameText, hasSameTextIn, textsOf } from "../../../src/read/source-file.ts";
import type { SourceFile } from "../../../src/read/source-file.ts";

const encoded = (text: string): Uint8Array => new TextEncoder().encode(text);
const found = (path: string, text: string): SourceFile => textOf(path, encoded(text));

describe("a file that is held as bytes", () => {
  test("says what was written, in whatever order files are asked", () => {
    const written = fc.array(fc.string({ unit: "grapheme" }), { minLength: 1, maxLength: 6 });
    const says = fc.property(written, fc.boolean(), (written, hasMark) => {
      const texts = written.map((text) => (hasMark ? `\ufeff${text}` : text));
      const files = texts.map((text, at) => found(`${at}.yaml`, text));
      for (const [at, file] of [...files.entries(), ...[...files.entries()].reverse()])
        expect(file.text).toBe(texts[at]);
      expect(structuredClone(files)).toEqual(texts.map((text, at) => ({ path: `${at}.yaml`, text })));
    });
    fc.assert(says);
  });

  test("is not decoded to find that it is the same", () => {
    const decode = (): string => {
      throw new Error("decoded");
    };
    const file = fileOfBytes("a.yaml", encoded("claims: []\n"), decode);
    expect(hasSameText(file, file)).toBe(true);
    expect(() => hasSameText(file, found("a.yaml", "claims: []\n"))).toThrow("decoded");
    const [one, other] = [textsOf([file]), textsOf([file, found("b.yaml", "")])];
    expect(hasSameTextIn(one, other, "a.yaml")).toBe(true);
    expect(hasSameTextIn(one, other, "b.yaml")).toBe(false);
    expect(() => hasSameTextIn(one, textsOf([found("a.yaml", "claims: []\n")]), "a.yaml")).toThrow("decoded");
  });
});

test("texts by their paths are asked of their files", () => {
  const files = [found("a.yaml", "one"), found("b.yaml", "two – three")];
  expect([...textsOf(files)]).toEqual(files.map(({ path, text }) => [path, text]));
  expect(textsOf(files).get("c.yaml")).toBeUndefined();
});

test("a text set apart is the same text, half letters too", () => {
  const same = fc.property(fc.string({ unit: "binary" }), fc.nat(40), (text, from) => {
    expect(apart(text.slice(from))).toBe(text.slice(from));
  });
  fc.assert(same);
  for (const long of ["a\ud83d", "–".repeat(4095) + "𝄞" + "a".repeat(5000), "a".repeat(8192)])
    expect(apart(long)).toBe(long);
});

test("what a file says does not keep the file's text in memory", () => {
  setFlagsFromString("--expose-gc");
  const collect = runInNewContext("gc") as () => void;
  const held = (): number => {
    collect();
    collect();
    return process.memoryUsage().heapUsed / 1e6;
  };
  const long = "The posts of the inner ring stood in packed chalk, as the section shows throughout.";
  const fileOf = (n: number): SourceFile => {
    const comment = `# ${"–".repeat(12_000)}\n`;
    const claim = `  - { id: c${n}, text: "${long} ${n}", from: [] }\n`;
    const passage = `  - { id: p${n}, at: p. ${n}, quote: "${long} ${n}", from: vane-1968 }\n`;
    const parameters = `{ unit: "${"a-unit-with-a-long-name-".repeat(4)}${n}" }`;
    const derivation = `  - { id: d${n}, plugin: unit-fit, inputs: { values: [] }, parameters: ${parameters} }\n`;
    const text = `claims:\n${claim}passages:\n${passage}derivations:\n${derivation}${comment}`;
    return found(`claims/${n}.yaml`, text);
  };
  const read = (): ReturnType<typeof readCorpus> => {
    const main = found("corpus.yaml", "format: 1\ntitle: Held\nlanguage: en\n");
    return readCorpus([main, ...Array.from({ length: 600 }, (_, n) => fileOf(n))], new Map());
  };
  read();
  const before = held();
  const kept = read();
  // 600 texts of 12,000 letters, two bytes each, would be 14 MB.
  expect(held() - before).toBeLessThan(12_000 * 2 * 600 * 1e-6 * 0.5);
  expect("records" in kept && kept.records.length).toBe(1800);
});
