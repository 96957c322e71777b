import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { plugins } from "../../plugins/index.ts";
import { inEnglish } from "../../src/base/text/said/english.ts";
import { build } from "../../src/build.ts";
import { readCorpusFolder } from "../../src/host/corpus-folder.ts";
import { emptyMemo } from "../../src/host/evaluate.ts";
import { reportOf } from "../../src/show/report/report.ts";

const folder = fileURLToPath(new URL("planted", import.meta.url));

/** How many mistakes of each sort there are. */
const planted = { yaml: 8, reference: 5, type: 8, quantity: 7, unit: 3, duplicate: 3, bibliography: 3, csv: 3 };

test("forty planted mistakes are told in their places, nothing else is, and the rest is evaluated", () => {
  const listed = readFileSync(`${folder}/mistakes.txt`, "utf8")
    .split("\n")
    .filter((line) => line !== "" && !line.startsWith("#"))
    .map((line) => line.split(/\s+/));
  const sorts = Object.entries(planted).map(([sort]) => [sort, listed.filter(([one]) => one === sort).length] as const);
  expect(Object.fromEntries(sorts)).toEqual(planted);
  expect(listed).toHaveLength(40);

  const files = readCorpusFolder(folder);
  const { model, findings } = build(files, plugins, emptyMemo());
  const texts = new Map(files.map((file) => [file.path, file.text]));
  const report = reportOf(model, findings, texts);
  const told = report.findings
    .filter((one) => one.level === "error")
    .map(({ at, rule }) => `${at?.file}:${at?.line}:${at?.column} ${rule}`);
  expect(told.sort()).toEqual(listed.map(([, place, rule]) => `${place} ${rule}`).sort());
  expect(report.standings["open-ring"]).toMatchObject({ standing: "stands", footing: "observed" });
});

test("every message says what is there and what was expected", () => {
  const { findings } = build(readCorpusFolder(folder), plugins, emptyMemo());
  for (const { message, level } of findings) if (level === "error") expect(inEnglish(message)).toMatch(/expected|the first is kept/);
});

test("a fix that is offered mends what it is offered for", () => {
  const files = readCorpusFolder(folder);
  const { findings } = build(files, plugins, emptyMemo());
  const fixable = findings.filter((one) => one.fix !== null && one.level === "error");
  expect(fixable.length).toBeGreaterThanOrEqual(5);
  for (const one of fixable) {
    const mended = files.map((file) => {
      const edits = (one.fix?.edits ?? []).filter((edit) => edit.file === file.path);
      const text = [...edits]
        .sort((a, b) => b.start - a.start)
        .reduce((whole, edit) => whole.slice(0, edit.start) + edit.text + whole.slice(edit.end), file.text);
      return { ...file, text };
    });
    const after = build(mended, plugins, emptyMemo()).findings;
    expect(after.filter((other) => inEnglish(other.message) === inEnglish(one.message) && other.at?.start === one.at?.start)).toEqual([]);
  }
});
