import fc from "fast-check";
import { expect, test } from "vitest";
import type { SourceFile } from "../../../src/build.ts";
import type { Graph } from "../../../src/link/graph.ts";
import { link } from "../../../src/link/link.ts";
import { sayingOf } from "../../../src/link/origin/changed.ts";
import type { Tied } from "../../../src/link/origin/replaced.ts";
import { listNames } from "../../../src/read/grammar/kinds.ts";
import { readCorpus } from "../../../src/read/read.ts";
import type { ReadMemo, Reading } from "../../../src/read/read.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";
import { inOneFile } from "../../bench/one-file.ts";
import { changedBy, wayTaken } from "../editing/edit-ways.ts";

const many = corpusOf({ records: 80, seed: 4 });
const one = inOneFile(corpusOf({ records: 100, seed: 5 }));

function readingOf(files: readonly SourceFile[], memo: ReadMemo): Reading {
  const reading = readCorpus(files, memo);
  if (!("settings" in reading)) throw new Error("no corpus");
  return reading;
}

/** All that a graph says. */
function told(graph: Graph): string {
  const dimensions = graph.list("measurements").map(({ values }) => values.dimension);
  const features = graph.list("observations").flatMap(({ values }) => values.feature ?? []);
  const all = [
    [...graph.records.values()].map(({ id, list, named, file, values, node }) => ({
      record: [id, list, named, file, values, node],
      said: graph.provenance(id),
      parts: list === "artefacts" ? graph.withParts(id) : [],
      rivals: graph.rivalsOf(id),
    })),
    listNames.map((list) => graph.list(list).map(({ id }) => id)),
    [...graph.wholeOf],
    [...graph.sources.keys()].map((key) => [key, graph.authorsOf(key)]),
    dimensions.map((name) => [graph.dimensionName(name), graph.dimensionKind(graph.dimensionName(name))]),
    features.map(graph.featureName),
    graph.ties,
    [graph.leftOut.map(({ id, node }) => [id, node]), graph.spoilt],
    graph.findings,
    [graph.citationStyle, graph.prose],
  ];
  return JSON.stringify(all, (_, value: unknown) => (value instanceof Map ? [...value] : value));
}

/** For each list whether it says what an earlier one said, record by record. */
function saidTheSame(before: Graph, now: Graph): readonly boolean[] {
  const saying = (graph: Graph, list: (typeof listNames)[number]): string =>
    JSON.stringify(graph.list(list).map(({ id, values }) => [id, { ...values }]));
  return listNames.map((list) => saying(before, list) === saying(now, list));
}

test("a corpus tied again after an edit is tied as it is at first", () => {
  const taken = { over: 0, anew: 0 };
  fc.assert(
    fc.property(
      fc.constantFrom(many, one),
      fc.array(wayTaken, { minLength: 4, maxLength: 7 }),
      (start, changes) => {
        const memo: ReadMemo = new Map();
        let files = start;
        let before: Tied | undefined;
        for (const change of [null, ...changes]) {
          if (change) files = changedBy(files, change);
          const reading = readingOf(files, memo);
          const graph = link(reading, before);
          expect(told(graph) === told(link(readingOf(files, new Map())))).toBe(true);
          if (before) {
            const isTakenOver = graph.provenance === before.graph.provenance;
            taken[isTakenOver ? "over" : "anew"]++;
            const same = saidTheSame(before.graph, graph);
            for (const [at, list] of listNames.entries())
              if (sayingOf(graph.list(list)) === sayingOf(before.graph.list(list)))
                expect(same[at], list).toBe(true);
          }
          before = { reading, graph };
        }
      },
    ),
    { numRuns: 10, seed: 5 },
  );
  expect(taken.over).toBeGreaterThan(10);
  expect(taken.anew).toBeGreaterThan(5);
});

/** The places of the one-line fields of a file's records, by list and field. */
function fieldLines(text: string): ReadonlyMap<string, readonly number[]> {
  const places = new Map<string, number[]>();
  let list = "";
  for (const [at, line] of text.split("\n").entries()) {
    list = /^([a-z]+):$/.exec(line)?.[1] ?? list;
    const field = /^ {4}([a-z-]+): \S/.exec(line)?.[1];
    if (field !== undefined) places.set(`${list} ${field}`, [...(places.get(`${list} ${field}`) ?? []), at]);
  }
  return places;
}

test.each(["with its sources", "without"])("so it is whichever field is another record's, %s", (sources) => {
  const memo: ReadMemo = new Map();
  const path = "records.yaml";
  const text = one.find((it) => it.path === path)?.text ?? "";
  // What says no source has its year and its scholars of its own.
  let lines = text.split("\n").filter((line) => sources !== "without" || !/^ {4}from: /.test(line));
  let before: Tied | undefined;
  let swapped = 0;
  for (const places of fieldLines(lines.join("\n")).values()) {
    const at = places.find((place) => lines[place] !== lines[places[0] ?? -1]);
    const other = lines[places[0] ?? -1];
    if (at === undefined || other === undefined) continue;
    lines = lines.with(at, other);
    const files = one.map((it) => (it.path === path ? { path, text: lines.join("\n") } : it));
    const reading = readingOf(files, memo);
    const graph = link(reading, before);
    expect(told(graph) === told(link(readingOf(files, new Map()))), other).toBe(true);
    before = { reading, graph };
    swapped++;
  }
  expect(swapped).toBeGreaterThan(20);
});

test("an edit of one value leaves all that other lists say the same objects", () => {
  const measured = many.find(({ text }) => /value: \d/.test(text));
  if (!measured) throw new Error("no measurement");
  const files = many.map((it) =>
    it === measured ? { ...it, text: it.text.replace(/value: (\d)/, "value: 1$1") } : it,
  );
  const memo: ReadMemo = new Map();
  const first = readingOf(many, memo);
  const tied = { reading: first, graph: link(first) };
  const after = link(readingOf(files, memo), tied);
  expect(after.provenance).toBe(tied.graph.provenance);
  const others = listNames.filter((list) => sayingOf(after.list(list)) !== sayingOf(tied.graph.list(list)));
  expect(others).toEqual(["measurements"]);
});
