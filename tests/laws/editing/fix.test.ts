import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { plugins } from "../../../plugins/index.ts";
import type { Edit, Finding } from "../../../src/base/finding.ts";
import { edited, planned } from "../../../src/base/text/edit.ts";
import { hashOf } from "../../../src/base/text/hash.ts";
import { hunksIn } from "../../../src/base/text/lines/hunk.ts";
import type { Checked, Model, SourceFile } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { findingLines } from "../../../src/show/pages/findings.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";

const corpora = fileURLToPath(new URL("../../corpora/", import.meta.url));
const cases = readdirSync(join(corpora, "fixes")).sort();
const rules = readdirSync(join(corpora, "rules")).sort();

const memo = emptyMemo();
const evaluated = (files: readonly SourceFile[]): Promise<Checked<Model>> =>
  evaluate(files, plugins, memo, computingHere(plugins));
const textsOf = (files: readonly SourceFile[]) => new Map(files.map((file) => [file.path, file.text]));

function withEdits(files: readonly SourceFile[], edits: readonly Edit[]): readonly SourceFile[] {
  return files.map((file) => ({
    ...file,
    text: edited(
      file.text,
      edits.filter((one) => one.file === file.path),
    ),
  }));
}

/** Fixes that are done unasked, all that go together; with the choices where they are asked for. */
function plan(findings: readonly Finding[], files: readonly SourceFile[], choices: boolean) {
  const wanted = findings.flatMap((one) =>
    one.fix !== null && (choices || one.fix.choice === undefined) ? [{ for: one, fix: one.fix }] : [],
  );
  return planned(wanted, textsOf(files));
}

describe.each(cases)("%s", (name) => {
  const before = readCorpusFolder(join(corpora, "fixes", name, "before"));

  test("all certain changes give what was meant, byte for byte", async () => {
    let files = before;
    // What waits for another change is done the next time.
    for (let round = 0; round < 3; round++) {
      const { changes } = plan((await evaluated(files)).findings, files, name === "choices");
      files = withEdits(
        files,
        changes.flatMap(({ edits }) => edits),
      );
    }
    for (const { path } of before) {
      const expected = readFileSync(join(corpora, "fixes", name, "after", path), "utf8");
      expect(files.find((file) => file.path === path)?.text).toBe(expected);
    }
  });

  test("what was meant has no finding that a change would mend", async () => {
    const { findings } = await evaluated(readCorpusFolder(join(corpora, "fixes", name, "after")));
    expect(findings.filter((one) => one.fix !== null && one.fix.choice === undefined)).toEqual([]);
  });
});

const writings: readonly (readonly [string, (text: string) => string])[] = [
  ["as it is", (text) => text],
  ["with CRLF", (text) => text.replace(/\r?\n/g, "\r\n")],
  ["with a byte-order mark", (text) => `\ufeff${text}`],
];
const mistaken = [...cases.map((name) => join(corpora, "fixes", name, "before")), join(corpora, "planted")];
const folders = [...mistaken, ...rules.map((name) => join(corpora, "rules", name, "fires"))];

describe.each(writings)("files %s", (name, written) => {
  test.each(
    (name === "as it is" ? folders : mistaken).map(
      (folder) => [folder.slice(corpora.length), folder] as const,
    ),
  )(
    "%s: each change mends its finding, brings no error, and touches only the lines it is about",
    async (_name, folder) => {
      const files = readCorpusFolder(folder).map((file) => ({ ...file, text: written(file.text) }));
      const { model, findings } = await evaluated(files);
      const texts = textsOf(files);
      for (const one of findings) {
        if (one.fix === null) continue;
        expect(one.fix.edits.length).toBeGreaterThan(0);
        const mended = withEdits(files, one.fix.edits);
        const after = await evaluated(mended);
        expect(after.findings.filter((other) => isSame(one, other))).toEqual([]);
        expect(newErrors(findings, after.findings, one, texts)).toEqual([]);
        for (const edit of one.fix.edits) expect(isOwn(edit, one, model, texts)).toBe(true);
        for (const [path, text] of textsOf(mended))
          onlyHunks(texts.get(path) ?? "", text, path, one.fix.edits);
      }
    },
  );
});

/** The same finding: its message without how often it is met. */
function isSame(one: Finding, other: Finding): boolean {
  const said = ({ message }: Finding): string => inEnglish(message).replace(/; it is met in .*$/, "");
  return one.rule === other.rule && said(one) === said(other) && one.at?.file === other.at?.file;
}

/** Errors that were not there; what a record says that was not read before is its own, not the change's. */
function newErrors(
  before: readonly Finding[],
  after: readonly Finding[],
  mended: Finding,
  texts: ReadonlyMap<string, string>,
): readonly Finding[] {
  const lineOf = ({ at }: Finding): string =>
    `${at?.file} ${(texts.get(at?.file ?? "") ?? "").slice(0, at?.start).split("\n").length}`;
  const was = new Set(before.map(({ rule, message }) => `${rule} ${inEnglish(message)}`));
  return after.filter(
    (one) =>
      one.level === "error" &&
      !was.has(`${one.rule} ${inEnglish(one.message).replace(/; it is met in .*$/, "")}`) &&
      !was.has(`${one.rule} ${inEnglish(one.message)}`) &&
      !one.about.some((id) => mended.about.includes(id)) &&
      lineOf(one) !== lineOf(mended),
  );
}

/** Whether an edit lies in a line where the finding stands, or in a record that it is about. */
function isOwn(
  edit: Edit,
  { at, also = [], about }: Finding,
  model: Model | null,
  texts: ReadonlyMap<string, string>,
): boolean {
  const text = texts.get(edit.file) ?? "";
  const line = (place: number): number => text.slice(0, place).split("\n").length;
  const spans = [...(at ? [at] : []), ...also];
  const inLines = spans.some(
    (span) =>
      span.file === edit.file && line(span.start) <= line(edit.start) && line(edit.end) <= line(span.end) + 1,
  );
  const inRecord = about.some((id) => {
    const record = model?.graph.records.get(id);
    return record?.file === edit.file && record.node.start <= edit.start && edit.end <= record.node.end;
  });
  return inLines || inRecord;
}

/** Outside the lines that are shown as changed, the text is byte for byte what it was. */
function onlyHunks(before: string, after: string, path: string, edits: readonly Edit[]): void {
  const own = edits.filter((one) => one.file === path);
  const lines = before.split("\n");
  for (const { line, before: were, after: are } of hunksIn(new Map([[path, before]]))(own).toReversed()) {
    const ends = (lines[line - 1] ?? "").endsWith("\r") ? "\r" : "";
    const mark = line === 1 && before.startsWith("\ufeff") ? "\ufeff" : "";
    lines.splice(
      line - 1,
      were.length,
      ...are.map((text, place) => `${place === 0 ? mark : ""}${text}${ends}`),
    );
  }
  expect(lines.join("\n")).toBe(after);
  expect(commentsIn(after)).toEqual(commentsIn(before));
  const lone = (text: string): number => (text.match(/(?<!\r)\n/g) ?? []).length;
  if (lone(before) === 0) expect(lone(after)).toBe(0);
}

function commentsIn(text: string): readonly string[] {
  return text.match(/# .*$/gm) ?? [];
}

describe("a change keeps what stands round a value", () => {
  const head = "artefacts:\n  - id: ring-alpha\n    name: A\n";
  const seen = (text: string): string =>
    `${head}observations:\n  - id: o\n    of: ring-alpha\n    text: ${text}\n    year: 1990\n`;
  const measured = (value: string): string =>
    `${head}measurements:\n  - of: ring-alpha\n    value: ${value}\n    dimension: height\n`;
  const long = "word ".repeat(120);
  const table = "title: T\nmeasurement-tables: [t.csv]\n";
  const row = (of: string, value: string): string => `of,dimension,value\n${of},height,${value}\n`;
  const artefacts = { path: "a.yaml", text: head };

  async function mended(text: string, path = "a.yaml", main = "title: T\n"): Promise<string> {
    let files: readonly SourceFile[] = [
      { path: "corpus.yaml", text: main },
      ...(path === "a.yaml" ? [] : [artefacts]),
      { path, text },
    ];
    const { changes } = plan((await evaluated(files)).findings, files, false);
    files = withEdits(
      files,
      changes.flatMap(({ edits }) => edits),
    );
    const left = (await evaluated(files)).findings.filter((one) => one.level === "error");
    expect(left.map((one) => inEnglish(one.message))).toEqual([]);
    return files.find((file) => file.path === path)?.text ?? "";
  }

  test.each([
    ["a comment behind a text with a number sign", seen("Post #4 of x # why"), seen('"Post #4 of x" # why')],
    ["a comment behind a text with a colon", seen("Note: dark # why"), seen('"Note: dark" # why')],
    ["a comment behind a closing quote", seen('"A # b" ash # why'), seen('"\\"A # b\\" ash" # why')],
    [
      "a comment behind braces",
      `${head}claims:\n  - { id: c, text: So: it } # why\n`,
      `${head}claims:\n  - { id: c, text: "So: it" } # why\n`,
    ],
    ["the end of a long line", seen(`Post #4 of ${long}end`), seen(`"Post #4 of ${long}end"`)],
    ["the line behind a literal text", measured("|\n      18,2 cm"), measured('"18.2 cm"')],
    ["the line behind a folded text", measured(">-\n      18,2 cm"), measured('"18.2 cm"')],
  ])("%s", async (_name, text, meant) => {
    expect(await mended(text)).toBe(meant);
    expect(await mended(text.replaceAll("\n", "\r\n"))).toBe(meant.replaceAll("\n", "\r\n"));
  });

  test("spaces round the cells of a table", async () => {
    expect(await mended(row("  ring-alpah ", " 18 cm"), "t.csv", table)).toBe(row("  ring-alpha ", " 18 cm"));
    expect(await mended(row("ring-alpha", '"18,2 cm"'), "t.csv", table)).toBe(row("ring-alpha", "18.2 cm"));
  });

  test.each([
    ["a comment inside braces", `${head}claims:\n  - { id: c, text: One, # why\n      two }\n`],
    [
      "a comment inside a list of sources",
      `${head}claims:\n  - id: c\n    text: T\n    from: [vane p. 12, # why\n      fig. 3]\n`,
    ],
    [
      "quotes inside a citation",
      `${head}claims:\n  - id: c\n    text: T\n    from: [vane p. 12 "n" x, fig. 3]\n`,
    ],
  ])("%s is no part of a value: no change is offered", async (_name, text) => {
    const files = [
      { path: "corpus.yaml", text: "title: T\n" },
      { path: "a.yaml", text },
    ];
    const { findings } = await evaluated(files);
    const split = findings.filter((one) => one.rule === "split-value");
    expect(split.length).toBeGreaterThan(0);
    expect(split.map((one) => one.fix)).toEqual(split.map(() => null));
  });
});

describe("planning", () => {
  const text = "abcdefghij";
  const edit = (start: number, end: number, put: string): Edit => ({ file: "f", start, end, text: put });
  const fix = (...edits: readonly Edit[]) => ({ label: "a change", edits });

  test("of two that touch, the first is done and the second waits", () => {
    const wanted = [
      { for: 1, fix: fix(edit(2, 4, "x")) },
      { for: 2, fix: fix(edit(3, 5, "y"), edit(8, 9, "z")) },
      { for: 3, fix: fix(edit(4, 4, "+")) },
      { for: 4, fix: fix(edit(5, 6, "w")) },
      { for: 5, fix: fix(edit(2, 4, "x"), edit(7, 7, "!")) },
    ];
    const { done, waiting, changes } = planned(wanted, new Map([["f", text]]));
    expect([done, waiting]).toEqual([
      [1, 4, 5],
      [2, 3],
    ]);
    expect(changes).toEqual([
      { file: "f", madeFor: hashOf(text), edits: [edit(2, 4, "x"), edit(5, 6, "w"), edit(7, 7, "!")] },
    ]);
    expect(edited(text, changes[0]?.edits ?? [])).toBe("abxewg!hij");
  });

  test("an edit that a change asks for twice is made once", () => {
    const wanted = [{ for: 1, fix: fix(edit(2, 4, "x"), edit(6, 7, "y"), edit(2, 4, "x")) }];
    const { done, changes } = planned(wanted, new Map([["f", text]]));
    expect(done).toEqual([1]);
    expect(changes[0]?.edits).toEqual([edit(2, 4, "x"), edit(6, 7, "y")]);
  });

  test("an edit for a file that is not there, or beyond its end, waits", () => {
    const wanted = [
      { for: 1, fix: fix(edit(8, 11, "x")) },
      { for: 2, fix: fix({ ...edit(0, 1, "x"), file: "g" }) },
    ];
    expect(planned(wanted, new Map([["f", text]]))).toEqual({ done: [], waiting: [1, 2], changes: [] });
  });

  test("doing all at once is doing one after the other, from the back", () => {
    const piece = fc.tuple(fc.nat(60), fc.nat(6), fc.string({ maxLength: 4 }));
    fc.assert(
      fc.property(
        fc.string({ minLength: 70, maxLength: 90 }),
        fc.array(piece, { maxLength: 12 }),
        (whole, pieces) => {
          const wanted = pieces.map(([start, length, put], n) => ({
            for: n,
            fix: fix(edit(start, start + length, put)),
          }));
          const { done, waiting, changes } = planned(wanted, new Map([["f", whole]]));
          expect([...done, ...waiting].sort((a, b) => a - b)).toEqual(pieces.map((_, n) => n));
          const edits = changes[0]?.edits ?? [];
          const inTurn = edits
            .toReversed()
            .reduce((now, one) => now.slice(0, one.start) + one.text + now.slice(one.end), whole);
          expect(edited(whole, edits)).toBe(inTurn);
          const lines = whole.split("\n");
          expect(
            hunksIn(new Map([["f", whole]]))(edits).every(({ line }) => line >= 1 && line <= lines.length),
          ).toBe(true);
        },
      ),
    );
  });
});

describe("on a page", () => {
  test("a change is shown as lines, what differs parted from what stays, and nothing withheld beside it", async () => {
    const files: readonly SourceFile[] = [
      { path: "corpus.yaml", text: "title: Land\nwithhold: [spring]\n" },
      {
        path: "a.yaml",
        text: "artefacts:\n  - { id: spring, name: Deep Pool, materail: water }\n  - { id: field, name: Field, coordinates: grid 5678, materail: loam }\n",
      },
    ];
    const { model, findings } = await evaluated(files);
    const lines = findingLines(model?.graph ?? null, findings, textsOf(files));
    expect(JSON.stringify(lines)).not.toMatch(/spring|Deep Pool|grid 5678/);
    const [mend] = lines.flatMap((line) => line.mend ?? []);
    expect(mend && { ...mend, label: inEnglish(mend.label) }).toMatchObject({
      label: "Write material",
      choice: false,
      command: "variorum check --fix --write",
    });
    expect(mend?.lines.map(({ line, as, changed }) => [line, as, changed])).toEqual([
      [3, "it is", "ai"],
      [3, "it would be", "ia"],
    ]);
    for (const { head, tail } of mend?.lines ?? []) {
      expect(head).toMatch(/^ {2}- \{ id: field, name: Field, .*mater$/);
      expect(tail).toBe("l: loam }");
    }
  });

  test("a choice names its rule, and what is accepted is not offered", async () => {
    const files = readCorpusFolder(join(corpora, "fixes", "choices", "before"));
    const { model, findings } = await evaluated(files);
    const lines = findingLines(model?.graph ?? null, findings, textsOf(files));
    const [mend] = lines.flatMap((line) => line.mend ?? []);
    expect(mend).toMatchObject({ choice: true, command: "variorum check --fix --write --rule beaten-input" });
    expect(mend?.lines.slice(0, 3).map(({ as, changed }) => [as, changed])).toEqual([
      ["it is", ""],
      ["it would be", 'without: ["ring:side@hale-1896"]'],
      ["it would be", "        "],
    ]);
    const accept = "accept: [{ rule: beaten-input, about: [by-list], why: Left as printed. }]\n";
    const lived = files.map((file) =>
      file.path === "corpus.yaml" ? { ...file, text: file.text + accept } : file,
    );
    const again = await evaluated(lived);
    expect(
      findingLines(again.model?.graph ?? null, again.findings, textsOf(lived)).flatMap(
        (line) => line.mend ?? [],
      ),
    ).toEqual([]);
  });
});

describe("levels and acceptances", () => {
  const main = (more: string): SourceFile => ({ path: "corpus.yaml", text: `title: Land\n${more}` });
  const records: SourceFile = {
    path: "a.yaml",
    text: "artefacts:\n  - { id: ring, name: the ring, part-of: nothing-there }\nobservations:\n  - { id: ash, of: ring, text: Ash., colour: grey }\n",
  };

  test("no level and no acceptance makes less of an error", async () => {
    const plain = (await evaluated([main(""), records])).findings.filter((one) => one.level === "error");
    expect(plain.map((one) => one.rule).sort()).toEqual(["unknown-field", "unknown-reference"]);
    const { findings } = await evaluated([
      main(
        "rules: { unknown-field: off, unknown-reference: note }\naccept:\n  - { rule: unknown-field, why: It is grey. }\n  - { rule: unknown-reference, about: [ring], why: It is lost. }\n",
      ),
      records,
    ]);
    expect(findings.filter((one) => one.level === "error")).toEqual(plain);
    expect(findings.filter((one) => one.rule === "unused-acceptance")).toHaveLength(4);
  });

  test("a level is given, a rule is put off, and an acceptance says why", async () => {
    const seen: SourceFile = {
      path: "a.yaml",
      text: "artefacts:\n  - { id: ring, name: the ring }\nobservations:\n  - { id: ash, of: ring, text: Ash. }\n  - { id: soot, of: ring, text: Soot. }\n",
    };
    const undated = async (more: string) =>
      (await evaluated([main(more), seen])).findings.filter((one) => one.rule === "undated-record");
    expect(await undated("")).toMatchObject([{ level: "note", about: ["ash", "soot"], accepted: null }]);
    expect(await undated("rules: { undated-record: warning }\n")).toMatchObject([{ level: "warning" }]);
    expect(await undated("rules: { undated-record: off }\n")).toEqual([]);
    // What is accepted of one record is not accepted of the next.
    expect(
      await undated(
        "accept: [{ rule: undated-record, about: [ash], why: From a notebook without a date. }]\n",
      ),
    ).toMatchObject([
      { about: ["ash"], accepted: "From a notebook without a date." },
      { about: ["soot"], accepted: null },
    ]);
  });
});
