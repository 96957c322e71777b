import { expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { historiesBeside } from "../../../src/app/worker/models/histories.ts";
import { pageOf } from "../../../src/app/worker/pages.ts";
import type { Wanted } from "../../../src/app/worker/pages.ts";
import type { Desk } from "../../../src/app/worker/desk.ts";
import { build } from "../../../src/build.ts";
import type { Checked, Lens, Model, SourceFile } from "../../../src/build.ts";
import { listNames } from "../../../src/read/grammar/kinds.ts";
import { findingsText, questionsText } from "../../../src/cli/print/check.ts";
import { historyText } from "../../../src/cli/print/history.ts";
import { standpointsText } from "../../../src/cli/print/standpoints.ts";
import { contentsOf } from "../../../src/show/pages/contents.ts";
import { numbersText } from "../../../src/cli/print/numbers.ts";
import { planText } from "../../../src/cli/print/plan.ts";
import { restingText } from "../../../src/cli/print/resting.ts";
import { whyText } from "../../../src/cli/print/why.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import { visitBlocks } from "../../../src/show/desk/visit/blocks/blocks.ts";
import { visitSheet } from "../../../src/show/desk/visit/sheet/sheet.ts";
import { planReport } from "../../../src/show/plan/report.ts";
import { reportOf } from "../../../src/show/report/report.ts";
import { searchDocuments } from "../../../src/show/search/documents.ts";
import { shownFindings, shownTexts, withheldIn } from "../../../src/show/withhold.ts";
import { visitPage } from "../../../src/write/visit/page.ts";

/** Records without an id are called by what they say: here they would name a source, a scholar and a thing that are withheld. */
const written: Readonly<Record<string, string>> = {
  "corpus.yaml": `title: Bowls of the Row
bibliography: [sources.bib]
withhold: [umbra-1950, umbra-may, umbra-pit, umbra-claim, umbra-q, umbra-look, umbra-size, umbra-plate, umbra-search]
dimensions: { rim: { kind: length } }
`,
  "sources.bib": `@book{hale-1990, author = {Hale, Ada}, title = {The Row}, year = 1990}
@book{reed-2001, author = {Reed, Mal}, title = {The Row Again}, year = 2001}
@book{umbra-1950, author = {May, Una}, title = {Under Seal}, year = 1950}
`,
  "things.yaml": `scholars:
  - { id: hale, name: Ada Hale }
  - { id: reed, name: Mal Reed }
  - { id: umbra-may, name: Una May }
artefacts:
  - { id: bowl-1, name: The red bowl, held-at: county store }
  - { id: bowl-2, name: The grey bowl, held-at: county store }
  - { id: umbra-pit, name: The pit }
passages:
  - { id: sealed-p4, from: umbra-1950, at: p. 4, quote: a rim of 44 cm }
measurements:
  - { of: bowl-1, dimension: rim, value: 18.2 cm, from: hale-1990 p. 3 }
  - { of: bowl-1, dimension: rim, value: 21.0 cm, from: reed-2001 p. 3 }
  - { of: bowl-1, dimension: rim, value: 44.4 cm, from: umbra-1950 p. 4 }
  - { of: bowl-2, dimension: rim, value: 44.4 cm, from: [umbra-1950 p. 5, hale-1990 p. 9] }
  - { of: bowl-2, dimension: rim, value: 44.0 cm, from: sealed-p4 }
  - { of: bowl-2, dimension: depth, value: 7.5 cm, from: hale-1990 p. 3 }
  - { id: bowl-2-foot, of: bowl-2, dimension: foot, value: 9.5 cm, from: umbra-1950 p. 9 }
observations:
  - { id: worn, of: bowl-1, text: The rim is worn., feature: wear, from: hale-1990 p. 3 }
  - { id: umbra-pit/fill, of: bowl-2, text: It lay in the fill., from: hale-1990 p. 7 }
claims:
  - { id: one-set, text: They are one set. }
  - { id: two-sets, text: They are two sets. }
  - { id: umbra-claim, text: Umbrawords of a claim., about: bowl-1 }
questions:
  - { id: umbra-q, text: Umbrawords of a question?, answers: [one-set, two-sets] }
  - { id: sets, text: One set or two?, answers: [one-set, two-sets, umbra-claim] }
images:
  - { id: umbra-plate, of: bowl-1, file: images/umbra.png, credit: Umbracredit }
searches:
  - { id: umbra-search, where: Umbralibrary, words: umbrawords, found: 3, kept: 1, by: reed }
positions:
  - { who: hale, claim: one-set, stance: holds, from: hale-1990 p. 11 }
  - { who: [hale, umbra-may], claim: two-sets, stance: holds, year: 1960 }
  - { who: reed, claim: two-sets, stance: holds, from: umbra-1950 p. 8 }
readings:
  - { from: [umbra-1950, hale-1990], status: read }
arguments:
  - { id: by-rim, because: "bowl-1:rim@umbra-1950", therefore: two-sets, from: hale-1990 p. 12 }
  - { id: by-rim-too, because: ["bowl-1:rim@umbra-1950", worn], therefore: two-sets }
  - { id: by-word, because: "reed:two-sets@umbra-1950", against: one-set }
  - { id: by-wear, because: worn, therefore: one-set, from: hale-1990 p. 12 }
  - { id: by-umbra, because: worn, therefore: umbra-claim }
  - { id: against-number, because: worn, against: "umbra-size" }
  - { id: against-rim, because: worn, against: "bowl-1:rim@umbra-1950" }
derivations:
  - id: rims
    plugin: scaling
    text: The two sizes
    inputs: { larger: { of: bowl-2, dimension: rim }, smaller: { of: bowl-1, dimension: rim, prefer: [umbra-1950] } }
    bears-on: [{ claim: one-set, supports: { k: "> 2" }, disputes: { k: "< 2" } }, { claim: umbra-claim, supports: { k: "> 2" } }]
  - { id: umbra-size, plugin: scaling, text: Umbrawords, inputs: { larger: { of: bowl-2 }, smaller: { of: bowl-1 } }, bears-on: [{ claim: one-set, supports: { k: "> 2" } }] }
examinations:
  - { id: umbra-look, of: bowl-1, method: umbramethod, outcomes: [{ id: u, text: umbraoutcome, therefore: [one-set] }] }
  - id: look
    of: [bowl-1, bowl-2]
    method: measure the rims again
    outcomes:
      - { id: same, text: They are alike., measures: [{ of: bowl-1, dimension: rim, value: 44 cm }], therefore: [one-set] }
      - { id: other, text: They differ., therefore: [two-sets, umbra-claim], against: ["bowl-1:rim@umbra-1950"] }
`,
};

const files: readonly SourceFile[] = Object.entries(written).map(([path, text]) => ({ path, text }));
const texts = new Map(Object.entries(written));
const memo = emptyMemo();

const evaluatedAt = (lens: Lens): Promise<Checked<Model>> =>
  evaluate(files, plugins, memo, computingHere(plugins), {
    lens,
    reach: { plan: true, allRestsOn: true, history: true },
  });

function told({ model }: Checked<Model>): Model {
  if (!model) throw new Error("the corpus has no model");
  return model;
}

const tellingAsked = { question: null, examination: null, style: null, sections: null };
const asked = { examination: "look", keeper: null, also: [] };

/** Every page of the app, of every record; of one that is withheld it is as of one that there is not. */
function pagesOf(checked: Checked<Model>): ReadonlyMap<string, string> {
  const model = told(checked);
  const { graph } = model;
  const desk: Desk = {
    model,
    under: (lens) => told(build(files, plugins, memo, lens, { plan: true })),
    findings: checked.findings,
    texts,
    memo: memo.compute,
    need: () => undefined,
    corpus: () => ({ files, ...memo }),
    plans: {
      made: () => model.plan ?? null,
      make: () => ({ plan: model.plan ?? null, progress: null, missing: [] }),
    },
    through: (of) => histories.through(of, { done: () => undefined }),
  };
  const turns = { now: () => 0, later: () => undefined };
  const histories = historiesBeside(memo.compute, () => plugins, turns);
  const withheld = withheldIn(graph);
  const all = [...graph.records.keys(), ...graph.sources.keys()];
  const ids = all.filter((id) => !withheld(id));
  const view = { question: null, unfolded: [], focus: null, only: false, narrow: false };
  const wanted: readonly Wanted[] = [
    { page: "records", words: "" },
    { page: "map", view, language: "en" },
    { page: "map", view: { ...view, question: "sets", unfolded: ids }, language: "ar" },
    { page: "outline", open: [] },
    { page: "literature" },
    { page: "artefacts", draw: ["bowl-1", "bowl-2"] },
    { page: "numbers" },
    { page: "workbench", of: null },
    { page: "scholars", most: { questions: 20 } },
    { page: "history" },
    ...["review", "application"].map((kind): Wanted => ({
      page: "telling",
      asked: { ...tellingAsked, kind },
    })),
    { page: "talks", propose: "sets" },
    { page: "standpoints" },
    { page: "examinations" },
    { page: "visit", asked: { examination: null, keeper: null, also: [] } },
    { page: "visit", asked },
    { page: "visit", asked: { examination: null, keeper: "county store", also: [] } },
    { page: "grid", presets: [["of", "bowl-1"]] },
    { page: "findings" },
    ...listNames.map((list): Wanted => ({ page: "form", list, record: null, presets: [] })),
    ...ids.flatMap(ofOne),
  ];
  const dataOf = (one: Wanted): string => JSON.stringify(pageOf(desk, one).data, plain) ?? "";
  const made = new Map(wanted.map((one) => [JSON.stringify(one), dataOf(one)]));
  for (const [place, id] of all.filter(withheld).entries()) {
    for (const [at, one] of ofOne(id).entries()) {
      const none = one.page === "workbench" ? { ...one, of: "nothing-of-it" } : ofOne("nothing-of-it")[at];
      const page = dataOf(one).replaceAll(JSON.stringify(id), '"nothing-of-it"');
      expect(page, JSON.stringify(one)).toBe(none && dataOf(none));
    }
    made.set(`withheld ${place}`, "as of nothing");
  }
  return made;
}

/** The pages that one record may have, or a map that shows it alone. */
function ofOne(id: string): readonly Wanted[] {
  const kinds = ["sheet", "question", "artefact", "image", "number", "scholar", "paper", "entry"] as const;
  return [
    ...kinds.map((page) => ({ page, id })),
    { page: "form", list: null, record: id, presets: [] },
    ...(["rims", "umbra-size"].includes(id) ? [{ page: "workbench", of: id } as const] : []),
  ];
}

const plain = (_: string, value: unknown): unknown =>
  value instanceof Map ? [...value] : value instanceof Set ? [...value] : value;

/** All that the command line prints and writes. */
function printedOf(checked: Checked<Model>): readonly (readonly [string, string])[] {
  const model = told(checked);
  const { findings } = checked;
  const open = shownTexts(model.graph, texts);
  const sheet = visitSheet(model, asked, model.plan ? { plan: model.plan, plugins } : null);
  if (!model.plan || !sheet) throw new Error("the corpus has no plan");
  const ids = [...model.graph.records.keys()].filter((id) => !withheldIn(model.graph)(id));
  return [
    ["report", JSON.stringify(reportOf(model, findings, open, planReport(model.plan)))],
    ["findings", findingsText(shownFindings(model.graph, findings), open).join("\n")],
    ["questions", questionsText(model).join("\n")],
    ["numbers", numbersText(model).join("\n")],
    ["resting", restingText(model).join("\n")],
    ["history", historyText(model.history ?? []).join("\n")],
    ["standpoints", standpointsText(model).join("\n")],
    ["contents", JSON.stringify(contentsOf(model, findings, 0))],
    ["plan", planText(model, plugins, model.plan, true).join("\n")],
    ...ids.map((id) => [`why ${id}`, whyText(model, id).join("\n")] as const),
    ["visit", visitPage(visitBlocks(sheet, { withValues: true }), { asked, corpus: sheet.corpus })],
    ["search", JSON.stringify(searchDocuments(model.graph, plugins, open))],
  ];
}

test.each<readonly [string, Lens]>([
  ["the record", {}],
  ["a year", { asOf: 1995 as NonNullable<Lens["asOf"]> }],
  ["an outcome", { suppose: { examination: "look", outcome: "other" } }],
])("no page and nothing printed names what is withheld by a made name: %s", async (_, lens) => {
  const checked = await evaluatedAt(lens);
  const ids = [...told(checked).graph.records.keys()];
  expect(ids.filter((id) => id.includes("umbra")).length).toBeGreaterThan(6);
  const outputs = [...pagesOf(checked), ...printedOf(checked)];
  expect(outputs.length).toBeGreaterThan(100);
  const leaks = outputs.flatMap(([what, text]) => {
    const at = text.search(secret);
    return at < 0 ? [] : [`${what}: ${text.slice(Math.max(0, at - 120), at + 80)}`];
  });
  expect(leaks).toEqual([]);
});

const secret = /umbra|44\.4|Una May|Under Seal|The pit/iu;

test("the rest is told, standings follow from the whole, and a conflict among what is open is told", async () => {
  const checked = await evaluatedAt({});
  const model = told(checked);
  const report = reportOf(model, checked.findings, texts);
  expect(report.standings["bowl-1:rim@hale-1990"]).toEqual({ standing: "stands" });
  expect(report.standings["bowl-2-foot"]).toBeDefined();
  // Only what is withheld speaks against it.
  expect(report.standings["one-set"]?.standing).not.toBe("unsupported");
  const clash = report.findings.filter(({ rule }) => rule === "conflicting-measurements");
  expect(clash.map(({ about }) => about)).toEqual([["bowl-1:rim@hale-1990", "bowl-1:rim@reed-2001"]]);
});
