import {
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { afterEach, beforeEach, expect, test } from "vitest";
import { fieldsOf } from "../../../src/base/json.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { keptReading } from "../../../src/host/reading/kept.ts";
import type { KeptReading, Place } from "../../../src/host/reading/kept.ts";
import { canBeKept, packedRead, unpackedRead } from "../../../src/read/decode/kept/kept.ts";
import { packing } from "../../../src/read/decode/kept/packing.ts";
import { origins } from "../../../src/read/decode/kept/tables.ts";
import type { Tables } from "../../../src/read/decode/kept/tables.ts";
import { unpacking } from "../../../src/read/decode/kept/unpacking.ts";
import { readCorpus } from "../../../src/read/read.ts";
import type { FileRead, ReadMemo } from "../../../src/read/read.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";

let folder = "";
let file = "";
let told: string[] = [];

beforeEach(() => {
  const base = mkdtempSync(join(tmpdir(), "variorum-kept-"));
  [folder, file] = [join(base, "corpus"), join(base, "cache", "kept")];
  told = [];
  for (const { path, text } of corpusOf({ records: 250, seed: 4 })) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
});
afterEach(() => rmSync(dirname(folder), { recursive: true, force: true }));

/** Ten minutes after the files were written: by then each can be known again. */
const later = (): number => Date.now() + 600_000;

const opened = (given: Partial<Place> = {}): KeptReading =>
  keptReading(folder, {
    file,
    edition: "one",
    now: later,
    least: 10_000,
    tell: (said) => void told.push(inEnglish(said)),
    ...given,
  });

/** What was read; of the settings, which have functions, as they are written. */
function plainly(read: ReturnType<typeof readCorpus>): object {
  return "settings" in read ? { ...read, settings: read.settings.node } : read;
}
const readBy = (kept: KeptReading): object => plainly(readCorpus(kept.files(), kept.memo));
const readCold = (): object => plainly(readCorpus(readCorpusFolder(folder), new Map()));

/** What was read without its places, in one text. */
const wordsOf = (read: object): string =>
  JSON.stringify(read, (key, value: unknown) =>
    key === "node" ? undefined : value instanceof Map ? [...(value as ReadonlyMap<string, unknown>)] : value,
  );

/** Reads and keeps once, and opens again. */
function reopened(given: Partial<Place> = {}): KeptReading {
  const first = opened(given);
  readBy(first);
  first.keep();
  return opened(given);
}

/** How many files are not read again: they are given as the same objects each time. */
function knownAgain(kept: KeptReading): number {
  const [one, other] = [kept.files(), kept.files()];
  return one.filter((file, place) => file === other[place]).length;
}

test("what was kept is what is read anew, places and all, and no file is read again", () => {
  const kept = reopened();
  expect(readBy(kept)).toEqual(readCold());
  expect(knownAgain(kept)).toBe(kept.files().length);
  expect(told).toEqual([]);
  if (process.platform !== "win32") expect(statSync(file).mode & 0o777).toBe(0o600);
  expect(readdirSync(dirname(file))).toEqual(["kept"]);
});

test("what changed is read again, and only that, whatever its size and its date say", () => {
  const kept = reopened();
  const path = join(folder, "scholars.yaml");
  const { atime, mtime } = statSync(path);
  const text = readFileSync(path, "utf8");
  writeFileSync(path, text.replace(/name: (.)/u, "name: X"));
  utimesSync(path, atime, mtime);
  expect(statSync(path).size).toBe(Buffer.byteLength(text));
  rmSync(join(folder, "talk.yaml"));
  writeFileSync(join(folder, "more.yaml"), "claims:\n  - { id: one-more, text: One more. }\n");
  expect(readBy(kept)).toEqual(readCold());
  expect(knownAgain(kept)).toBe(kept.files().length - 2);
  kept.keep();
  const again = opened();
  expect(wordsOf(readBy(again)) === wordsOf(readCold())).toBe(true);
  expect(knownAgain(again)).toBe(again.files().length);
});

test("a file that was just written is read again, since it may be written once more at the same time", () => {
  const kept = reopened({ now: Date.now });
  expect(knownAgain(kept)).toBe(0);
  expect(wordsOf(readBy(kept)) === wordsOf(readCold())).toBe(true);
  const ahead = reopened({ now: () => Date.now() - 600_000 });
  expect(knownAgain(ahead)).toBe(0);
});

test("what is spoilt is set aside and told, another edition's is passed over, and what is read stays the same", () => {
  reopened();
  const whole = readFileSync(file);
  const cold = wordsOf(readCold());
  for (const at of [0, 40, Math.floor(whole.length / 2), whole.length - 1]) {
    const bytes = Buffer.from(whole);
    bytes[at] = (bytes[at] ?? 0) ^ 1;
    for (const spoilt of [bytes, bytes.subarray(0, at)]) {
      writeFileSync(file, spoilt);
      told = [];
      expect(wordsOf(readBy(opened())) === cold).toBe(true);
      if (!spoilt.equals(whole)) expect(told.length).toBeLessThanOrEqual(1);
      if (at > 40) expect(told[0]).toMatch(/^Unexpected content of .* set aside as `kept\.set-aside`$/u);
    }
  }
  writeFileSync(file, whole);
  told = [];
  const other = opened({ edition: "two" });
  expect(other.memo.size).toBe(0);
  expect(wordsOf(readBy(other)) === cold).toBe(true);
  expect(told).toEqual([]);
});

test("of a small corpus nothing is kept, and a cache that cannot be written is passed over", () => {
  const small = join(dirname(folder), "small");
  mkdirSync(small);
  writeFileSync(join(small, "corpus.yaml"), "format: 1\ntitle: Small\n");
  const kept = keptReading(small, { file });
  readBy(kept);
  kept.keep();
  expect(readdirSync(dirname(folder)).toSorted()).toEqual(["corpus", "small"]);
  const stopped = opened({ file: join(folder, "corpus.yaml", "kept") });
  readBy(stopped);
  stopped.keep();
  expect(wordsOf(readBy(stopped)) === wordsOf(readCold())).toBe(true);
});

const corpora = ["../../../demo-corpus", "../../corpora/erechtheion", "../../corpora/planted"];

test.each(corpora)("every kind of value comes back as it was: %s", (path) => {
  const files = readCorpusFolder(fileURLToPath(new URL(path, import.meta.url)));
  const memo: ReadMemo = new Map();
  readCorpus(files, memo);
  let kept = 0;
  for (const [one] of memo.values()) {
    if (!one || !canBeKept(one.file.path, one.read)) continue;
    kept++;
    const tables = packing();
    const place = packedRead(one.read, tables);
    const read: FileRead = unpackedRead(place, unpacking(throughJson(tables.tables())), one.file);
    expect(read).toEqual(one.read);
    if (!("records" in read)) continue;
    for (const { list, values } of read.records) {
      expect("constructor" in values).toBe(false);
      if (list === "derivations") expect("constructor" in fieldsOf(values.inputs)).toBe(false);
    }
  }
  expect(kept).toBeGreaterThan(0);
});

test("of what there is to tell something is not kept, and a zero below zero is what it was", () => {
  const files = [
    { path: "corpus.yaml", text: "format: 1\ntitle: T\n" },
    { path: "a.yaml", text: "measurements:\n  - { of: a, dimension: shift, value: -0 cm }\n" },
    { path: "b.yaml", text: "claims:\n  - { id: a }\n" },
  ];
  const memo: ReadMemo = new Map();
  readCorpus(files, memo);
  const readOf = (path: string): FileRead | undefined => memo.get(path)?.[0]?.read;
  const [a, b] = [readOf("a.yaml"), readOf("b.yaml")];
  if (!a || !b || !canBeKept("a.yaml", a)) throw new Error("not kept");
  expect(canBeKept("b.yaml", b)).toBe(false);
  const tables = packing();
  const place = packedRead(a, tables);
  const again = unpackedRead(place, unpacking(throughJson(tables.tables())), { path: "a.yaml", text: "" });
  const values = "records" in again ? again.records[0]?.values : undefined;
  expect(Object.is(values && "value" in values && values.value.value, -0)).toBe(true);
});

/** Texts, numbers, truth values, lists, maps, and objects of any of the three origins, of any names. */
const plain = fc.letrec<{ readonly any: unknown }>((tie) => ({
  any: fc.oneof(
    { maxDepth: 4, withCrossShrink: true },
    fc.constantFrom(null, undefined, true, false, -0, NaN, Infinity, "", "-0", "0"),
    fc.string({ unit: "grapheme", maxLength: 5 }),
    fc.double(),
    fc.array(tie("any"), { maxLength: 3 }),
    fc.array(fc.tuple(fc.string({ maxLength: 2 }), tie("any")), { maxLength: 3 }).map((all) => new Map(all)),
    fc
      .tuple(
        fc.constantFrom(...origins),
        fc.array(fc.tuple(fc.constantFrom("__proto__", "a", "a\nb", "b", "1"), tie("any")), { maxLength: 3 }),
      )
      .map(([origin, fields]) => Object.setPrototypeOf(Object.fromEntries(fields), origin) as object),
  ),
})).any;

test("any plain value comes back from the tables as it was, and what says the same lies in one place", () => {
  const sameOrigins = (one: unknown, other: unknown): boolean => {
    if (typeof one !== "object" || one === null) return true;
    const parts = (of: unknown): readonly unknown[] =>
      of instanceof Map ? [...(of as ReadonlyMap<unknown, unknown>).values()] : Object.values(of as object);
    return (
      Object.getPrototypeOf(one) === Object.getPrototypeOf(other) &&
      parts(one).every((part, place) => sameOrigins(part, parts(other)[place]))
    );
  };
  fc.assert(
    fc.property(fc.array(plain, { maxLength: 4 }), (values) => {
      const tables = packing();
      const places = values.map(tables.put);
      const { valueAt } = unpacking(throughJson(tables.tables()));
      for (const [at, value] of values.entries()) {
        expect(valueAt(places[at] ?? 0)).toStrictEqual(value);
        expect(sameOrigins(value, valueAt(places[at] ?? 0))).toBe(true);
        expect(tables.put(value)).toBe(places[at]);
      }
      expect(tables.put([1, new Map([["a", values]])])).toBe(tables.put([1, new Map([["a", [...values]]])]));
    }),
    { numRuns: 100, seed: 8 },
  );
});

/** The tables as a file has them. */
function throughJson({ strings, shapes, ...rest }: Tables): Tables {
  return {
    ...rest,
    ...(JSON.parse(JSON.stringify({ strings, shapes })) as Pick<Tables, "strings" | "shapes">),
  };
}

test("files of a corpus that is used are kept and known again, and one that was changed is read anew", () => {
  const beside = join(dirname(folder), "register");
  mkdirSync(beside);
  const put = (path: string, text: string): void => writeFileSync(join(beside, path), text);
  put("corpus.yaml", "format: 1\ntitle: A register\nbibliography: [register.bib]\n");
  put("register.bib", "@book{hale-1896, title = {A register of rings}, date = {1896}}\n");
  put("things.yaml", "artefacts:\n  - { id: ring-z, name: The last ring }\n");
  const main = join(folder, "corpus.yaml");
  writeFileSync(main, `${readFileSync(main, "utf8")}use: [{ as: reg, folder: ../register }]\n`);
  const kept = reopened();
  expect(knownAgain(kept)).toBe(kept.files().length);
  expect(kept.files().map(({ path }) => path)).toContain("../register/things.yaml");
  expect([...kept.memo.keys()].filter((key) => key.startsWith("../register/"))).toHaveLength(2);
  expect(readBy(kept)).toEqual(readCold());
  put("things.yaml", "artefacts:\n  - { id: ring-z, name: The next ring }\n");
  const again = opened();
  expect(wordsOf(readBy(again)) === wordsOf(readCold())).toBe(true);
  expect(wordsOf(readBy(again))).toContain("The next ring");
  expect(knownAgain(again)).toBe(again.files().length - 1);
});
