import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import fc from "fast-check";
import { expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { hashOf } from "../../../src/base/text/hash.ts";
import { build } from "../../../src/build.ts";
import { openDesk } from "../../../src/host/desk/desk.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { rowEdits, rowsOf } from "../../../src/read/bibliography/incoming/fields/change.ts";
import { readAs } from "../../../src/read/bibliography/incoming/formats.ts";
import { textEdits } from "../../../src/read/edit/text-edits.ts";
import type { TextChange } from "../../../src/read/edit/text-change.ts";

const files: Readonly<Record<string, string>> = {
  "corpus.yaml":
    "title: Line ends\nlanguage: en # of all\nbibliography: [a.bib, b.ris, c.json]\nartefact-tables: [t.csv]\n",
  "a.bib": "% ours\n@book{a,\n  title = {A},\n  year = 1990\n}\n@book{a2, title = {B\n  C}}\n",
  "b.ris": "TY  - BOOK\nID  - b\nTI  - Long\n  title\nPY  - 1990\nER  - \n",
  "c.json": '[\n  { "id": "c", "type": "book",\n    "title": "T" }\n]\n',
  "t.csv": 'id,name,note\np1,A,"a note\nof two lines"\np2,B,\n',
  "x.yaml":
    "# Claims.\nclaims:\n  - id: c1\n    text: A text\n      that goes on. # by two\n  - { id: c2, text: B }\n# The end.\n",
  "review/introduction.md": "One.\n\nTwo {{claim:c1}} [@b].[^1]\n\n[^1]: Note.\n",
};

/** How a file is kept: its line ends in turn, whether a mark of byte order begins it, and whether its last line ends. */
const kept = fc.record({
  ends: fc.array(fc.constantFrom("\n", "\r\n", "\r"), { minLength: 1, maxLength: 5 }),
  mark: fc.boolean(),
  last: fc.boolean(),
});
type Kept = typeof kept extends fc.Arbitrary<infer T> ? T : never;

function asKept(text: string, { ends, mark, last }: Kept): string {
  let line = 0;
  const whole = last ? text : text.replace(/\n$/u, "");
  return `${mark ? "\ufeff" : ""}${whole.replace(/\n/gu, () => ends[line++ % ends.length] ?? "\n")}`;
}

/** All that a corpus says, but for where. */
function said(all: Readonly<Record<string, string>>): unknown {
  const { model, findings } = build(
    Object.entries(all).map(([path, text]) => ({ path, text })),
    plugins,
    emptyMemo(),
  );
  if (!model) return findings.map(({ message }) => inEnglish(message));
  const { graph } = model;
  return {
    records: [...graph.records].map(([id, { list, values }]) => [
      id,
      list,
      JSON.stringify(values).replace(/\\r\\n|\\r/gu, "\\n"),
    ]),
    sources: [...graph.sources].map(([key, { label, year }]) => [key, label, year]),
    prose: graph.prose.map(({ pieces }) => pieces.map(({ is }) => is)),
    findings: findings.map(({ rule, message }) => [rule, inEnglish(message)]),
  };
}

test("a corpus says the same whatever its lines end in, and every end may be another", () => {
  const wanted = said(files);
  expect(wanted).toMatchObject({
    sources: [
      ["a", "A 1990", 1990],
      ["a2", expect.anything(), null],
      ["b", expect.anything(), 1990],
      ["c", "T", null],
    ],
  });
  fc.assert(
    fc.property(fc.array(kept, { minLength: 7, maxLength: 7 }), (ways) => {
      const all = Object.entries(files).map(([path, text], at) => {
        const way = ways[at];
        return [path, way ? asKept(text, way) : text] as const;
      });
      expect(said(Object.fromEntries(all))).toEqual(wanted);
    }),
    { numRuns: 60 },
  );
});

const value =
  (record: string, path: string, to: string) =>
  (text: string): TextChange => ({
    is: "field",
    record: text.indexOf(record),
    path: [path],
    value: to,
  });

/** One change of each kind of file: what stands there, what is put there instead, and the words that alone may change. */
const changes: readonly (readonly [string, (text: string) => TextChange | null, string, string])[] = [
  ["x.yaml", value("{ id: c2", "text", "C"), "text: B }", "text: C }"],
  ["x.yaml", value("id: c1", "id", "c9"), "id: c1", "id: c9"],
  [
    "corpus.yaml",
    () => ({ is: "setting", path: ["title"], value: "Ends" }),
    "title: Line ends",
    "title: Ends",
  ],
  ["t.csv", value("p2,B", "name", "Bee"), "p2,B,", "p2,Bee,"],
  ["a.bib", () => null, "title = {A}", "title = {Z}"],
  ["c.json", () => null, '"title": "T"', '"title": "Z"'],
];

test("a change through the desk keeps every other line with its own end", () => {
  const folder = mkdtempSync(join(tmpdir(), "variorum-ends-"));
  try {
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    const desk = openDesk(folder);
    fc.assert(
      fc.property(fc.constantFrom(...changes), kept, ([path, change, was, is], way) => {
        const text = asKept(files[path] ?? "", way);
        writeFileSync(join(folder, path), text);
        const made = change(text);
        const edits = made === null ? entryEdits(path, text) : textEdits({ path, text }, made);
        if ("problem" in edits) throw new Error(inEnglish(edits.problem));
        desk.edit("a word", [{ file: path, madeFor: hashOf(text), edits }]);
        expect(readFileSync(join(folder, path), "utf8")).toBe(text.replace(was, is));
        desk.undo();
        expect(readFileSync(join(folder, path), "utf8")).toBe(text);
      }),
      { numRuns: 30 },
    );
    expect(readCorpusFolder(folder)).toHaveLength(7);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

/** The edits that give the first entry of a bibliography another title. */
function entryEdits(path: string, text: string) {
  const format = path.endsWith(".bib") ? "bib" : "json";
  const [source] = readAs(format, { path, text }).sources;
  if (!source) throw new Error(`no entry in ${path}`);
  const rows = rowsOf(format, text, source).map((row) =>
    row.name === "title" ? { ...row, text: "Z" } : row,
  );
  const made = rowEdits(format, text, source, rows);
  return "problem" in made ? made : made.edits.map((one) => ({ file: path, ...one }));
}
