import fc from "fast-check";
import { expect, test } from "vitest";
import { lettersOf, textsIn } from "../../../src/host/reading/letters.ts";
import { joined, numbersIn, parted, wholesIn } from "../../../src/host/reading/parts.ts";
import { readCorpus } from "../../../src/read/read.ts";
import type { ReadMemo } from "../../../src/read/read.ts";

/** Letters of one byte in Latin-1 and of more, and halves of pairs that have no other half. */
const letters = fc.constantFrom("a", "\u0000", "ÿ", "Ā", "دليل", "𐤀", "\ud802", "\udc00", "’");
const texts = fc.array(fc.array(letters, { maxLength: 20 }).map((all) => all.join("")));

test("texts come back from their letters as they were", () => {
  fc.assert(
    fc.property(texts, (all) => {
      expect(textsIn(lettersOf(all))).toEqual(all);
    }),
    { numRuns: 100, seed: 3 },
  );
  const { narrow, wide } = lettersOf(["né", "دليل", "en"]);
  expect([...narrow]).toEqual([110, 233, 101, 110]);
  expect(wide).toHaveLength(8);
});

const parts = fc.array(fc.uint8Array({ maxLength: 20 }), { maxLength: 4 });

test("parts come back as they were put together, from bytes that lie anywhere", () => {
  fc.assert(
    fc.property(parts, fc.string({ unit: "grapheme" }), fc.nat(9), (all, edition, offset) => {
      const bytes = joined(edition, all);
      const there = new Uint8Array(offset + bytes.length);
      there.set(bytes, offset);
      const found = parted(edition, there.subarray(offset));
      expect(found?.map((part) => [...part])).toEqual(all.map((part) => [...part]));
      for (const part of found ?? []) expect(part.byteOffset % 8).toBe(0);
      expect(parted(`${edition}.`, bytes)).toEqual([]);
    }),
    { numRuns: 100, seed: 3 },
  );
  const [whole, half] =
    parted("one", joined("one", [Uint32Array.of(7, 4e9), Float64Array.of(0.5, -0)])) ?? [];
  expect([...wholesIn(whole ?? new Uint8Array())]).toEqual([7, 4e9]);
  expect([...numbersIn(half ?? new Uint8Array())]).toEqual([0.5, -0]);
});

test("what another edition put together in a form of its own is none of this one's, and not spoilt", () => {
  for (const rest of [{ sha256: "0", parts: [1, 2, 3] }, {}]) {
    const bytes = Buffer.from(`${JSON.stringify({ edition: "earlier", ...rest })}\nabc`);
    expect(parted("one", bytes)).toEqual([]);
    expect(parted("earlier", bytes)).toBe(null);
  }
});

test("of parts that were spoilt or cut off nothing comes back", () => {
  const bytes = joined("one", [Uint8Array.of(1, 2, 3), Uint8Array.of(4)]);
  const edition = Buffer.from(bytes).indexOf("one");
  for (let at = 0; at < bytes.length; at++) {
    const spoilt = Uint8Array.from(bytes);
    spoilt[at] = (spoilt[at] ?? 0) ^ 1;
    const found = parted("one", spoilt);
    const isOther = at >= edition && at < edition + 3;
    expect(found, `byte ${at}`).toEqual(isOther ? [] : null);
    expect(parted("one", bytes.subarray(0, at))).toBe(null);
  }
});

test("a file that is remembered is read anew where the settings read it in another way, and found again where they did before", () => {
  const records = {
    path: "a.yaml",
    text: "measurements:\n  - { of: a, dimension: shift, value: about 100 cm }\n",
  };
  const main = (share: number): { path: string; text: string } => ({
    path: "corpus.yaml",
    text: `format: 1\ntitle: T\napproximate: ${share} %\n`,
  });
  const memo: ReadMemo = new Map();
  const valuesOf = (share: number, known: ReadMemo): readonly unknown[] => {
    const read = readCorpus([main(share), records], known);
    return "records" in read ? read.records.map(({ values }) => values) : [];
  };
  const [first] = valuesOf(10, memo);
  const [other] = valuesOf(20, memo);
  expect(other).toEqual(valuesOf(20, new Map())[0]);
  expect(other).not.toEqual(first);
  expect(valuesOf(10, memo)[0]).toBe(first);
  expect(valuesOf(20, memo)[0]).toBe(other);
});
