import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { plugins } from "../../../plugins/index.ts";
import type { Lens, Model } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { rules } from "../../../src/judge/rules/index.ts";
import { examinationOf, supposing } from "../../../src/link/suppose/examination.ts";
import type { Supposition } from "../../../src/link/suppose/supposition.ts";
import { suppositionIn, suppositionText } from "../../../src/link/suppose/supposition.ts";
import { listNames } from "../../../src/read/grammar/kinds.ts";
import { demoMemo } from "../../demo-memo.ts";
import { readUnder } from "./supposed-model.ts";
import type { Read } from "./supposed-model.ts";

const demo = readCorpusFolder(fileURLToPath(new URL("../../../demo-corpus", import.meta.url)));
const memo = await demoMemo();

const readDemo = (lens: Lens = {}): Read => readUnder(demo, plugins, memo, lens);
const demoUnder = (suppose: Supposition): Model => readDemo({ suppose }).model;
const recorded = readDemo();

/** Every outcome that the demo corpus records. */
const outcomes = (): readonly Supposition[] =>
  recorded.model.graph
    .list("examinations")
    .flatMap(({ id, values }) => values.outcomes.map((one) => ({ examination: id, outcome: one.id })));

describe("supposing an outcome", () => {
  test("adds what format.md 7 says, and nothing else", () => {
    const { graph } = recorded.model;
    for (const { examination, outcome } of outcomes()) {
      const made = examinationOf(graph, examination);
      const one = made?.outcomes.find((each) => each.id === outcome);
      if (!made || !one) throw new Error("an outcome of the record that is not found");
      const then = supposing(graph, made, one);
      const more = listNames.flatMap((list) => {
        const n = then.list(list).length - graph.list(list).length;
        return n === 0 ? [] : [[list, n]];
      });
      const expected = [
        ["observations", 1 + one.sees.length],
        ["measurements", one.measures.length],
        ["arguments", one.therefore.length + one.against.length],
      ].filter(([, n]) => n !== 0);
      expect(Object.fromEntries(more)).toEqual(Object.fromEntries(expected));
      expect(then.records.size - graph.records.size).toBe(then.supposed?.records.size);
      const itself = `${examination}~${outcome}`;
      for (const id of then.supposed?.records ?? []) {
        expect(graph.records.has(id)).toBe(false);
        expect(then.provenance(id)).toEqual({ sources: [examination], via: [], scholars: [], year: null });
        const record = then.records.get(id);
        if (record?.list === "arguments") {
          expect(record.values.because).toEqual([itself]);
          expect(record.values.strength).toBe(one.strength);
        }
      }
    }
  });

  test("leaves the graph it was given as it was", () => {
    const { graph } = recorded.model;
    const before = [...graph.records.values()];
    const counts = listNames.map((list) => graph.list(list).length);
    for (const one of outcomes()) {
      const examination = examinationOf(graph, one.examination);
      const outcome = examination?.outcomes.find((each) => each.id === one.outcome);
      if (examination && outcome) supposing(graph, examination, outcome);
    }
    expect([...graph.records.values()]).toEqual(before);
    expect(listNames.map((list) => graph.list(list).length)).toEqual(counts);
    expect(graph.supposed).toBeNull();
  });

  test("of a graph that supposes already takes the place of what was supposed", () => {
    const { graph } = recorded.model;
    const [first, second] = examinationOf(graph, "look-at-the-casts")?.outcomes ?? [];
    const examination = examinationOf(graph, "look-at-the-casts");
    if (!examination || !first || !second) throw new Error("no such examination");
    const then = supposing(supposing(graph, examination, first), examination, second);
    expect(then.records.size).toBe(supposing(graph, examination, second).records.size);
    expect(then.records.has(`look-at-the-casts~${first.id}`)).toBe(false);
  });

  test("points to the lines of the outcome", () => {
    const { graph } = demoUnder({
      examination: "measure-the-1937-film",
      outcome: "film-agrees-with-1937",
    });
    const text = readFileSync(new URL("../../../demo-corpus/examinations.yaml", import.meta.url), "utf8");
    const at = (id: string): string => {
      const record = graph.records.get(id);
      return record ? text.slice(record.node.start, record.node.end) : "";
    };
    const itself = "measure-the-1937-film~film-agrees-with-1937";
    expect(at(itself)).toMatch(/^id: film-agrees-with-1937/);
    expect(at(`${itself}~measures-2`)).toContain("1.93 ± 0.03 m");
  });
});

/** What what-next.md says of each outcome, written by hand before there was a program to say it. */
describe("the demo corpus under its outcomes", () => {
  test.each([
    ["look-at-the-casts:round-ends", { "ring-a-roofed": "stands", "ring-a-open": "falls" }],
    ["look-at-the-casts:straight-ends", { "ring-a-roofed": "falls", "ring-a-open": "stands" }],
    ["reopen-trench-4:floors-untouched", { "ring-a-roofed": "stands", "ring-a-open": "falls" }],
    ["reopen-trench-4:floors-recut", { "ring-a-roofed": "falls", "ring-a-open": "stands" }],
    ["measure-the-1937-film:film-agrees-with-1998", { "rings-in-paces": "stands" }],
    [
      "measure-the-1937-film:film-agrees-with-1937",
      { "rings-by-eye": "stands", "rings-in-paces": "unsupported" },
    ],
    ["gradiometer-again:burnt-patch", { "no-fire-inside": "falls" }],
  ])("%s", (written, expected) => {
    const suppose = suppositionIn(written);
    if (!suppose) throw new Error("no supposition");
    const { judgement } = demoUnder(suppose);
    for (const [claim, standing] of Object.entries(expected))
      expect(judgement.standings.get(claim)).toBe(standing);
  });

  test.each(["look-at-the-casts:casts-spoilt", "date-the-foot:foot-old"])(
    "%s changes no standing",
    (written) => {
      const suppose = suppositionIn(written);
      if (!suppose) throw new Error("no supposition");
      const { judgement } = demoUnder(suppose);
      for (const [id, standing] of recorded.model.judgement.standings)
        expect(judgement.standings.get(id)).toBe(standing);
    },
  );

  test("the p of the pace goes from about 0.002 to about 0.2", () => {
    const p = (model: Model): number =>
      model.derivations.byId.get("ring-unit")?.numbers["p"]?.value ?? Number.NaN;
    expect(p(recorded.model).toPrecision(1)).toBe("0.002");
    const then = demoUnder({ examination: "measure-the-1937-film", outcome: "film-agrees-with-1937" });
    expect(p(then).toPrecision(1)).toBe("0.2");
    expect(then.derivations.byId.get("ring-unit")?.used).toContain(
      "measure-the-1937-film~film-agrees-with-1937~measures-1",
    );
  });

  test("no rule of how the record is kept tells of what is supposed, and none shows its ids", () => {
    const kept = new Set(rules.filter((one) => one.ofTheRecord).map((one) => one.id));
    expect([...kept]).toContain("undated-record");
    const told = (checked: Read) =>
      checked.findings.filter((one) => kept.has(one.rule)).map((one) => [one.rule, inEnglish(one.message)]);
    for (const suppose of outcomes()) {
      const then = readDemo({ suppose });
      expect(told(then)).toEqual(told(recorded));
      for (const one of then.findings) expect(inEnglish(one.message)).not.toContain("~");
    }
  });
});

describe("a supposition in one word", () => {
  test.each([
    ["look-at-the-casts:round-ends", "look-at-the-casts", "round-ends"],
    [
      "look-again:ring-a/post-06:gap@ferrant-1937:not-so",
      "look-again:ring-a/post-06:gap@ferrant-1937",
      "not-so",
    ],
  ])("%s", (written, examination, outcome) => {
    expect(suppositionIn(written)).toEqual({ examination, outcome });
    expect(suppositionText({ examination, outcome })).toBe(written);
  });

  test.each(["", "nothing", ":so", "look:"])("“%s” is none", (written) => {
    expect(suppositionIn(written)).toBeNull();
  });
});

describe("what the corpus does not have", () => {
  test.each([
    [
      "look-at-the-cast",
      "round-ends",
      "Unknown examination `look-at-the-cast`, expected `look-at-the-casts`",
    ],
    [
      "look-at-the-casts",
      "round-end",
      "Unknown outcome `round-end` of `look-at-the-casts`, expected `round-ends`",
    ],
  ])("%s:%s is an error that names the nearest, and nothing is supposed", (examination, outcome, said) => {
    const { model, findings } = readDemo({ suppose: { examination, outcome } });
    expect(model?.graph.supposed).toBeNull();
    expect(findings.filter((one) => one.level === "error").map((one) => inEnglish(one.message))).toContain(
      said,
    );
  });
});
