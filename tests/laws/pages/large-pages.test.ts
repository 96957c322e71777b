import { expect, test } from "vitest";
import { modelsBeside } from "../../../src/app/worker/models/models.ts";
import { build } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { indexOf, recordsPage, stockOf } from "../../../src/show/pages/contents.ts";
import { outlinePage } from "../../../src/show/pages/outline/outline.ts";
import type { OutlineLine } from "../../../src/show/pages/outline/outline.ts";
import { netOf } from "../../../src/show/map/section/net/net.ts";
import { wholesUnder, wholesUnderMany } from "../../../src/show/map/section/net/reach.ts";
import { scholarsPage } from "../../../src/show/scholars/scholars.ts";
import { reportOf } from "../../../src/show/report/report.ts";
import { plugins } from "../../../plugins/index.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";

const files = corpusOf({ records: 900, seed: 12 });
const { model, findings } = build(files, plugins, emptyMemo());
if (!model) throw new Error("no model");

test("a large corpus is shown bare before its findings are there, and whole with all of them after", () => {
  let next: (() => void) | null = null;
  let clock = 0;
  const turns = { now: () => (clock += 5), later: (turn: () => void) => void (next = turn) };
  const models = modelsBeside(emptyMemo(), () => plugins, turns, 100);
  models.take(files);
  let told = 0;
  expect(models.shown({}, () => (told += 1))).toBe("bare");
  const bare = models.now({});
  expect([...(bare.model?.judgement.standings ?? [])]).toEqual([...model.judgement.standings]);
  expect(bare.findings.length).toBeLessThan(findings.length);
  for (let turn: (() => void) | null = next; turn !== null; turn = next) {
    next = null;
    (turn as () => void)();
  }
  expect(told).toBe(1);
  expect(models.shown({}, () => undefined)).toBe("whole");
  const whole = models.now({});
  expect(whole.findings).toEqual(findings);
  expect(whole.model && reportOf(whole.model, whole.findings, whole.model.files)).toEqual(
    reportOf(model, findings, model.files),
  );
});

test("the page of records tells the first of each kind as the index does, and how many there are", () => {
  const index = indexOf(model);
  const page = recordsPage(model, "");
  expect(page.map(({ name, all, count }) => [name, all, count])).toEqual(
    index.map(({ name, entries }) => [name, entries.length, entries.length]),
  );
  for (const [at, { entries }] of page.entries())
    expect(entries).toEqual(index[at]?.entries.slice(0, entries.length));
  const claims = index.find(({ name }) => name === "claims")?.entries ?? [];
  const [wanted] = claims;
  const narrowed = recordsPage(model, `  ${wanted?.id.toUpperCase()} `).find(({ name }) => name === "claims");
  expect(narrowed?.all).toBe(claims.length);
  expect(narrowed?.count).toBeLessThan(claims.length);
  expect(narrowed?.entries).toContainEqual(wanted);
});

test("the stock is the index without its words", () => {
  expect(stockOf(model)).toEqual(
    indexOf(model).map(({ name, entries }) => ({
      name,
      entries: entries.map(({ id, standing }) => ({ id, standing })),
    })),
  );
});

test("an outline told as it is opened has the lines of the whole one", () => {
  const whole = outlinePage(model);
  const closed = outlinePage(model, new Set());
  const bare = ({ id, text, role, standing, again, to }: OutlineLine) => [
    id,
    text,
    role,
    standing,
    again,
    to,
  ];
  expect(closed.map(bare)).toEqual(whole.map(bare));
  expect(closed.every(({ under }) => under.length === 0)).toBe(true);
  expect(closed.map((line) => line.closed === true)).toEqual(whole.map(({ under }) => under.length > 0));
  expect(outlinePage(model, new Set(whole.map(({ id }) => id)))).toEqual(whole);
});

test("what many claims come down to is what all of them together come down to", () => {
  const net = netOf(model);
  const all = net.claims;
  for (let from = 0; from < all.length; from += 7) {
    const some = all.filter((_, at) => at % 5 !== from % 5);
    expect(wholesUnderMany(net, some)).toEqual(wholesUnder(net, some));
  }
  expect(wholesUnderMany(net, all).size).toBeGreaterThan(1);
});

test("a matrix told in part is the beginning of the whole, of no more cells than are asked for but in one question", () => {
  const { matrix: whole, scholars } = scholarsPage(model);
  const columns = scholars.filter(({ claims }) => claims > 0).length;
  expect(whole.groups.length).toBeGreaterThan(5);
  expect(whole.more).toBe(0);
  for (const most of [
    ...[0, 1, 3].map((questions) => ({ questions })),
    ...[0, 40 * columns, 100_000_000].map((cells) => ({ cells })),
  ]) {
    const { groups, columns: told, more } = scholarsPage(model, most).matrix;
    const places = told.map((id) => whole.columns.indexOf(id));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    const within = whole.groups.slice(0, groups.length).map(({ question, rows }) => ({
      question,
      rows: rows.map((row) => ({ ...row, cells: places.map((place) => row.cells[place]) })),
    }));
    expect(groups).toEqual(within);
    // Who has no column says nothing in these rows.
    const said = (all: typeof groups): number =>
      all.flatMap(({ rows }) => rows.flatMap((row) => row.cells.filter((cell) => cell !== null))).length;
    expect(said(groups)).toBe(said(whole.groups.slice(0, groups.length)));
    expect(groups.length + more).toBe(whole.groups.length);
    const cells = groups.flatMap(({ rows }) => rows.flatMap((row) => row.cells)).length;
    if ("questions" in most) expect(groups).toHaveLength(most.questions);
    else expect(groups.length === 1 || cells <= most.cells).toBe(true);
  }
});
