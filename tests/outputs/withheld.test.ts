import { spawnSync } from "node:child_process";
import { rmSync } from "node:fs";
import { inflateSync } from "node:zlib";
import { afterAll, beforeAll, expect, test } from "vitest";
import { plugins } from "../../plugins/index.ts";
import { inEnglish } from "../../src/base/text/said/english.ts";
import { build } from "../../src/build.ts";
import { readCorpusFolder } from "../../src/host/corpus-folder.ts";
import { computingHere, emptyMemo, evaluate } from "../../src/host/evaluate.ts";
import type { Asked, Told } from "../../src/host/telling/kind.ts";
import { kinds } from "../../src/host/telling/kinds.ts";
import { withholdingSaid } from "../../src/show/telling/withholding.ts";
import { planted, plantedFolder, secret } from "./reading/planted.ts";
import { unzipped } from "./reading/unzipped.ts";

/** What each kind is asked with, once for each; a kind that is not named is asked with nothing. */
const asked: Readonly<Record<string, readonly Asked[]>> = {
  review: [{}, { question: "sets" }],
  application: [{ examination: "look" }],
  visit: [{ examination: "look", "with-values": true }, { keeper: "county store" }],
  slides: [{ talk: "talk" }],
  figures: [
    { of: ["sizes", "map:sets", "around:one-set:3", "bowl-1+bowl-2", "photo"], width: "85", dpi: "300" },
  ],
  data: [{}, { "with-notes": true }],
};

let folder = "";
let told: Told;
const written = new Map<string, Uint8Array>();

beforeAll(async () => {
  folder = plantedFolder();
  const files = readCorpusFolder(folder);
  const memo = emptyMemo();
  const under: Told["under"] = (lens, reach = {}) =>
    evaluate(files, plugins, memo, computingHere(plugins), { lens, reach });
  const { model, findings } = await under({}, { plan: true, history: true });
  if (!model) throw new Error("no model");
  told = { folder, files, model, findings, plugins, memo, under, today: "2026-11-26" };
  for (const [name, load] of Object.entries(kinds)) {
    const kind = await load();
    for (const format of kind.formats)
      for (const [n, options] of (asked[name] ?? [{}]).entries()) {
        const made = await kind.make(told, format, name, options);
        if ("refused" in made) throw new Error(`${name} ${format}: ${inEnglish(made.refused)}`);
        for (const { path, content } of made)
          written.set(`${name} ${n} ${format}: ${path}`, Buffer.from(content as Uint8Array));
      }
  }
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** All that a file says to whoever opens it: what is packed in it unpacked, by the places in it. */
function* saidIn(path: string, bytes: Uint8Array): Generator<readonly [string, string]> {
  const buffer = Buffer.from(bytes);
  yield [path, buffer.toString("utf8")];
  yield [`${path} (UTF-16)`, buffer.toString("utf16le")];
  if (buffer.subarray(0, 4).toString("latin1") === "PK\u0003\u0004")
    for (const [name, entry] of unzipped(buffer)) yield* saidIn(`${path} > ${name}`, entry);
  for (const [, type = "", data = ""] of buffer
    .toString("latin1")
    .matchAll(/data:(image\/[a-z+]+);base64,([A-Za-z0-9+/=]+)/g))
    yield* saidIn(`${path} > ${type}`, Buffer.from(data, "base64"));
  if (buffer.subarray(0, 5).toString("latin1") !== "%PDF-") return;
  for (const { index, 0: head } of buffer.toString("latin1").matchAll(/stream\r?\n/g))
    try {
      yield [`${path} > stream`, inflateSync(buffer.subarray(index + head.length)).toString("latin1")];
    } catch {
      // The word stands at the end of a stream, too.
    }
  // The letters of a PDF are numbers of shapes: what they say a program of others tells (Debian: poppler-utils), where it is there.
  const { status, stdout } = spawnSync("pdftotext", ["-", "-"], { input: buffer, encoding: "utf8" });
  if (status === 0) yield [`${path} > words`, stdout];
}

test("every kind is written in every format", async () => {
  for (const [name, load] of Object.entries(kinds))
    for (const format of (await load()).formats)
      expect(
        [...written.keys()].some((key) => key.startsWith(`${name} 0 ${format}:`)),
        `${name} ${format}`,
      ).toBe(true);
  // What must stay out is in the corpus, and bears on what follows from it.
  expect(Object.values(planted).filter((one) => secret.test(String(one))).length).toBeGreaterThan(5);
  expect(told.model.judgement.standings.has("umbra-claim")).toBe(true);
});

test("nothing that must stay out is in any byte of any output", () => {
  const leaks = [...written].flatMap(([path, bytes]) =>
    [[path, path] as const, ...saidIn(path, bytes)].flatMap(([at, text]) => {
      const found = text.search(secret);
      return found < 0 ? [] : [`${at}: ${text.slice(Math.max(0, found - 100), found + 60)}`];
    }),
  );
  expect(leaks).toEqual([]);
});

test("what may be told is told", () => {
  const all = [...written].flatMap(([path, bytes]) =>
    [...saidIn(path, bytes)].map(([, text]) => [path, text]),
  );
  const tells = (kind: string, words: RegExp): boolean =>
    all.some(([path, text]) => path?.startsWith(kind) === true && words.test(text ?? ""));
  for (const kind of ["review", "visit", "slides", "data", "application"])
    expect(tells(kind, /The red bowl/), kind).toBe(true);
  expect(tells("figures", /18\.2|sizes|They are one set/)).toBe(true);
  expect(tells("tables", /18\.2 cm/)).toBe(true);
  // The published photograph goes with the data, without the place in it.
  expect([...written.keys()].some((path) => path.startsWith("data 0 zip: corpus/images/photo.jpg"))).toBe(
    true,
  );
});

test("that something is withheld is said where there is room for it", () => {
  const sentences = withholdingSaid(told.model.graph).map(inEnglish);
  expect(sentences).toHaveLength(3);
  const saysSo = (path: string, bytes: Uint8Array): boolean =>
    [...saidIn(path, bytes)].some(([, text]) => /withheld/.test(text.replace(/<[^>]+>|\s+/g, " ")));
  const declaring = [
    "review 0 docx: review.docx",
    "review 0 md: review.md",
    "review 0 html: review.html",
    "application 0 docx: application.docx",
    "tables 0 csv: dictionary.csv",
    "tables 0 xlsx: tables.xlsx",
    "page 0 html: page.html",
    "data 0 ttl: data.ttl",
    "data 0 jsonld: data.jsonld",
    "data 0 zip: ro-crate-metadata.json",
    "data 0 zip: README.md",
  ];
  for (const path of declaring) {
    const bytes = written.get(path);
    expect(bytes && saysSo(path, bytes), path).toBe(true);
  }
});

test("the corpus that is given out can be read, and what was withheld is not in it to be found", () => {
  const place = "data 0 zip: corpus/";
  const files = [...written].flatMap(([path, bytes]) =>
    path.startsWith(place) && /\.(?:yaml|json)$/.test(path)
      ? [{ path: path.slice(place.length), text: Buffer.from(bytes).toString("utf8") }]
      : [],
  );
  const { model, findings } = build(files, plugins, emptyMemo());
  expect(findings.filter(({ level }) => level === "error")).toEqual([]);
  expect(model?.graph.records.has("by-wear")).toBe(true);
  // What lost a premise, or was read in a source that is withheld, would say another thing.
  for (const id of ["by-both", "by-way", "by-rim", "with-pit", "kept"])
    expect(model?.graph.records.has(id), id).toBe(false);
  const differences = written.get("data 0 zip: differences.json") ?? new Uint8Array();
  const { standings } = JSON.parse(Buffer.from(differences).toString("utf8")) as {
    readonly standings: Readonly<Record<string, unknown>>;
  };
  expect(standings).toHaveProperty("two-sets");
});
