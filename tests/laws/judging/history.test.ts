import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { build } from "../../../src/build.ts";
import type { Memo, Model, SourceFile } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import type { Standing } from "../../../src/judge/judge.ts";
import { historyReport } from "../../../src/show/judged/history/report.ts";
import { broughtInWords, changesInWords } from "../../../src/show/judged/history/sentence.ts";
import { reportOf } from "../../../src/show/report/report.ts";
import { reportSchema } from "../../../src/show/report/schema.ts";
import { demoMemo } from "../../demo-memo.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";

const demo = readCorpusFolder(fileURLToPath(new URL("../../../demo-corpus", import.meta.url)));
const made = corpusOf({ records: 200, seed: 4 });

const memos = new Map<readonly SourceFile[], Memo>([[demo, await demoMemo()]]);

/** A model with its history and every number of every year, and the memo that has them. */
async function through(files: readonly SourceFile[], asOf?: number): Promise<{ model: Model; memo: Memo }> {
  const memo = memos.get(files) ?? emptyMemo();
  memos.set(files, memo);
  const lens = asOf === undefined ? {} : { asOf };
  const { model } = await evaluate(files, plugins, memo, computingHere(plugins), {
    lens,
    reach: { history: true },
  });
  if (!model) throw new Error("the corpus has no model");
  return { model, memo };
}

const historyIn = (model: Model) => {
  if (model.history === null) throw new Error("the history was not told");
  return model.history;
};

/** The standings of the claims that are listed, by a build of its own for the year. */
function standingsAt(files: readonly SourceFile[], memo: Memo, asOf?: number): Record<string, Standing> {
  const { model } = build(files, plugins, memo, asOf === undefined ? {} : { asOf });
  const claims = model?.graph.list("claims").filter((one) => model.judgement.listed(one.id)) ?? [];
  return Object.fromEntries(
    claims.map(({ id }) => [id, model?.judgement.standings.get(id) ?? "unsupported"]),
  );
}

describe.each([
  ["the demo", demo],
  ["an invented corpus", made],
] as const)("%s", (_, files) => {
  test("the changes added up give the standings of every year, and at the end those of today", async () => {
    const { model, memo } = await through(files);
    const now = new Map<string, Standing>();
    for (const { year, changes } of historyIn(model)) {
      for (const { claim, was, is } of changes) {
        expect(now.get(claim) ?? null).toBe(was);
        expect(is).not.toBe(was);
        now.set(claim, is);
      }
      expect(Object.fromEntries(now)).toEqual(standingsAt(files, memo, year ?? undefined));
    }
    expect(Object.fromEntries(now)).toEqual(standingsAt(files, memo));
  });

  test("years are in order, each source is told in its year and each dated record once", async () => {
    const { model } = await through(files);
    const { graph } = model;
    const history = historyIn(model).filter((step) => step.year !== null);
    const years = history.map((step) => step.year ?? NaN);
    expect(years).toEqual([...new Set(years)].sort((a, b) => a - b));
    for (const { year, publications } of history)
      for (const { source } of publications)
        if (source !== null) expect(graph.sources.get(source)?.year).toBe(year);
    const told = history
      .flatMap((step) => step.publications.map((one) => one.source))
      .filter((one) => one !== null);
    const dated = [...graph.sources.values()].filter((one) => one.year !== null).map((one) => one.key);
    expect([...told].sort()).toEqual([...dated].sort());
    for (const list of ["claims", "positions", "arguments", "observations", "measurements"] as const) {
      const counted = history
        .flatMap((step) => step.publications.flatMap((one) => one.brought))
        .reduce((sum, one) => sum + (one.list === list ? one.count : 0), 0);
      expect(counted).toBe(graph.list(list).filter((one) => graph.provenance(one.id).year !== null).length);
    }
  });

  test("a look back in time ends with its year", async () => {
    const whole = historyIn((await through(files)).model).filter((step) => step.year !== null);
    const middle = whole[Math.floor(whole.length / 2)]?.year ?? 0;
    const { model } = await through(files, middle);
    expect(historyIn(model)).toEqual(whole.filter((step) => (step.year ?? 0) <= middle));
  });
});

test("the report has the history where it was asked for, by the schema, and else null", async () => {
  const { model } = await through(demo);
  const history = historyIn(model);
  const report = reportSchema.parse(
    JSON.parse(JSON.stringify(reportOf(model, [], new Map(), { history: historyReport(history) }))),
  );
  expect(report.history).toHaveLength(history.length);
  // Ferrant's book of 1937 argues for a roof, against the open ring of 1896.
  const then = report.history?.find((step) => step.year === 1937);
  expect(then?.changes["ring-a-open"]).toEqual(["stands", "open"]);
  expect(then?.changes["ring-a-roofed"]).toEqual([null, "open"]);
  expect(then?.publications.map((one) => one.source)).toEqual(["ferrant-1937"]);
  expect(reportOf(model, [], new Map()).history).toBeNull();
});

test("what is withheld is in no year", async () => {
  const hidden = demo.map((file) =>
    file.path === "corpus.yaml"
      ? { ...file, text: file.text.replace(/^withhold: .*$/m, "withhold: [ferrant-1937, ring-a-windbreak]") }
      : file,
  );
  const { model } = await through(hidden);
  const text = JSON.stringify([historyIn(model), historyReport(historyIn(model))]);
  expect(model.graph.settings.withhold).toEqual(["ferrant-1937", "ring-a-windbreak"]);
  for (const word of ["ferrant-1937", "Ferrant 1937", "windbreak"]) expect(text).not.toContain(word);
  const then = historyIn(model).find((step) => step.year === 1937);
  expect(then?.publications.map((one) => inEnglish(one.text ?? ""))).toEqual(["something withheld"]);
});

test("says in words what became of claims and what was brought", () => {
  const change = (was: Standing | null, is: Standing) => ({ claim: "c", text: "c", was, is });
  const became = (changes: Parameters<typeof changesInWords>[0]): string =>
    inEnglish(changesInWords(changes));
  expect(became([])).toBe("no claim changes");
  expect(
    became([
      change("stands", "falls"),
      change("open", "falls"),
      change("open", "falls"),
      change("stands", "open"),
    ]),
  ).toBe("3 claims fall, 1 opens");
  expect(became([change(null, "stands")])).toBe("1 claim is named for the first time");
  expect(became([change("open", "unsupported"), change(null, "open"), change(null, "open")])).toBe(
    "1 claim loses its support, 2 are named for the first time",
  );
  expect(
    inEnglish(
      broughtInWords([
        { list: "claims", count: 1 },
        { list: "arguments", count: 2 },
      ]),
    ),
  ).toBe("1 claim, 2 arguments");
});
