import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { build } from "../../../src/build.ts";
import type { Checked, Model } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { contentsOf, indexOf } from "../../../src/show/pages/contents.ts";
import { dateWords } from "../../../src/show/pages/date-words.ts";
import { findingLines } from "../../../src/show/pages/findings.ts";
import { outlinePage } from "../../../src/show/pages/outline/outline.ts";
import type { OutlineLine } from "../../../src/show/pages/outline/outline.ts";
import { questionPage } from "../../../src/show/pages/question.ts";
import { sheetOf } from "../../../src/show/pages/sheet.ts";
import { reportOf } from "../../../src/show/report/report.ts";
import { searchDocuments } from "../../../src/show/search/documents.ts";
import { demoMemo } from "../../demo-memo.ts";

const files = readCorpusFolder(fileURLToPath(new URL("../../../demo-corpus", import.meta.url)));
const texts = new Map(files.map((file) => [file.path, file.text]));
let checked: Checked<Model>;
let model: Model;

beforeAll(async () => {
  checked = await evaluate(files, plugins, await demoMemo(), computingHere(plugins));
  if (!checked.model) throw new Error("the demo has no model");
  model = checked.model;
});

const sheet = (id: string) => sheetOf(model, checked.findings, texts, id);

test("everything in the index has a sheet, and every link on a sheet leads to one", () => {
  const ids = indexOf(model).flatMap((kind) => kind.entries.map((entry) => entry.id));
  expect(ids.length).toBeGreaterThan(300);
  for (const id of ids) {
    const page = sheet(id);
    expect(page, id).not.toBeNull();
    const links = [
      ...(page?.fields.flatMap((field) =>
        field.lines.flatMap((line) => line.pieces.flatMap((piece) => piece.to ?? [])),
      ) ?? []),
      ...(page?.below.map((tie) => tie.id) ?? []),
      ...(page?.above.map((tie) => tie.id) ?? []),
      ...(page?.findings.flatMap((finding) => finding.about.map((one) => one.id)) ?? []),
    ];
    for (const link of links) expect(sheet(link), `${id} leads to ${link}`).not.toBeNull();
  }
});

test("the outline reaches things, and every line of it leads to a sheet", () => {
  const lines: OutlineLine[] = [];
  const collect = (line: OutlineLine): void => {
    lines.push(line);
    line.under.forEach(collect);
  };
  outlinePage(model).forEach(collect);
  expect(lines.some((line) => line.role === "thing")).toBe(true);
  for (const line of lines) expect(sheet(line.to), line.id).not.toBeNull();
});

test("a holder who left is shown so", () => {
  const answers = questionPage(model, "what-was-it")?.answers ?? [];
  const roofed = answers.find((answer) => answer.claim === "ring-a-roofed");
  expect(roofed?.holders[0]).toMatchObject({ name: "Edith Ferrant", since: 1937, until: 1951 });
});

test("a title that is worded by us is looked for in English; any other is the corpus's own", () => {
  const documents = searchDocuments(model.graph, plugins, texts);
  const worded = documents.filter((one) => one.said !== undefined);
  expect(new Set(worded.map((one) => one.kind))).toContain("measurements");
  for (const { said, title } of worded) expect(said && inEnglish(said)).toBe(title);
  for (const { said, id } of documents.filter((one) => one.kind === "claims"))
    expect(said, id).toBeUndefined();
});

describe("what is withheld is in no output", () => {
  const outputs = (): string =>
    JSON.stringify([
      contentsOf(model, checked.findings, 0),
      indexOf(model),
      findingLines(model.graph, checked.findings, texts),
      outlinePage(model),
      [...model.graph.records.keys(), ...model.graph.sources.keys()].map(sheet),
      reportOf(model, checked.findings, texts),
    ]);

  test("exact places, and where a thing was found when that is withheld", () => {
    const artefacts = model.graph.list("artefacts");
    const exact = artefacts.flatMap((one) => one.values.coordinates ?? []);
    const places = artefacts
      .filter((one) => one.values["withhold-location"])
      .flatMap((one) => one.values["found-at"] ?? []);
    expect(exact.length).toBeGreaterThan(0);
    expect(places.length).toBeGreaterThan(0);
    const all = outputs();
    for (const secret of [...exact, ...places]) expect(all).not.toContain(secret);
  });

  test("ids that the settings withhold", () => {
    const ids = model.graph.settings.withhold;
    expect(ids.length).toBeGreaterThan(0);
    const all = outputs();
    for (const id of ids) expect(all).not.toContain(JSON.stringify(id));
  });
});

test.each([
  ["1894-10", "October 1894"],
  ["1894-10-03", "3 October 1894"],
  ["-2150/-1950", "2151 to 1951 BC"],
  ["1850~", "about 1850"],
  ["../1850", "until 1850"],
  ["18XX", "1800 to 1899"],
])("the date %s reads %s", (text, expected) => {
  expect(inEnglish(dateWords(text))).toBe(expected);
});

test("a claim is listed since a record in print names it, though its wording came later", () => {
  const small = [
    { path: "corpus.yaml", text: "title: Later words\nbibliography: [s.bib]\n" },
    {
      path: "s.bib",
      text: "@book{early, title={E}, author={A}, year=1951}\n@book{late, title={L}, author={B}, year=1998}\n",
    },
    {
      path: "r.yaml",
      text: `questions: [{ id: q, text: Why?, answers: [c, d] }]
claims: [{ id: c, text: It stood., from: late }, { id: d, text: It fell., from: late }]
artefacts: [{ id: t, name: Thing }]
observations: [{ id: o, of: t, text: Seen., from: early }]
arguments: [{ id: a, because: o, therefore: c, from: early }]
`,
    },
  ];
  const at = (asOf: number) => build(small, plugins, emptyMemo(), { asOf }).model;
  const [before, between] = [at(1950), at(1960)];
  if (!before || !between) throw new Error("the corpus has no model");
  expect(questionPage(before, "q")?.answers).toEqual([]);
  expect(questionPage(between, "q")?.answers).toMatchObject([{ claim: "c", standing: "stands" }]);
  expect(questionPage(between, "q")?.later).toBe(1);
});
