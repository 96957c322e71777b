import { expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import { listNames } from "../../../src/read/grammar/kinds.ts";
import { build } from "../../../src/build.ts";
import type { Model } from "../../../src/build.ts";
import { corpusOf, sizeFor } from "../../make-corpus/corpus.ts";
import type { Size } from "../../make-corpus/corpus.ts";

function modelOf(size: Size): Model {
  const { model } = build(corpusOf(size), plugins, emptyMemo());
  if (!model) throw new Error("the made corpus cannot be read");
  return model;
}

test("a made corpus of 300 records has no errors, and all its numbers can be had", async () => {
  const files = corpusOf({ records: 300, seed: 7 });
  const { model, findings } = await evaluate(files, plugins, emptyMemo(), computingHere(plugins));
  expect(findings.filter((one) => one.level === "error")).toEqual([]);
  expect([...(model?.derivations.byId.values() ?? [])].map((one) => one.status)).toContain("computed");
  const standings = new Set(model?.judgement.standings.values());
  expect([...standings].sort()).toEqual(["falls", "open", "stands", "unsupported"]);
});

test.each([60, 75, 120, 300, 1000])("%i records are %i records, of every kind", (records) => {
  const { graph } = modelOf({ records, seed: 3 });
  expect(graph.records.size).toBe(records);
  for (const list of listNames) expect(graph.list(list).length, list).toBeGreaterThan(0);
  expect(graph.findings).toEqual([]);
});

test("so many arguments imply five times as many records, in as many files as asked for, which say the same", () => {
  const size = sizeFor(200, 4);
  const files = corpusOf(size);
  expect([files.length, size.records]).toEqual([200 / 4, 1000]);
  const model = modelOf(size);
  expect([model.graph.records.size, model.graph.list("arguments").length]).toEqual([1000, 200]);
  expect(model.graph.findings).toEqual([]);
  const apart = modelOf({ records: 1000, seed: 4, arguments: 200 });
  expect([...model.judgement.standings].toSorted()).toEqual([...apart.judgement.standings].toSorted());
});

test("the same seed gives the same bytes, another seed others", () => {
  const bytes = (seed: number): string => JSON.stringify(corpusOf({ records: 200, seed }));
  expect(bytes(1)).toBe(bytes(1));
  expect(bytes(2)).not.toBe(bytes(1));
});

test("parts are as many as asked for, and too many for the records are refused", () => {
  const { graph } = modelOf({ records: 600, seed: 1, claims: 40, scholars: 15, arguments: 90 });
  expect(graph.list("claims").length).toBe(40);
  expect(graph.list("scholars").length).toBe(15);
  expect(graph.list("arguments").length).toBe(90);
  expect(() => corpusOf({ records: 100, seed: 1, arguments: 90 })).toThrow(RangeError);
});

test("claims stand in several ranks, arguments attack every sort of thing, scholars change, scripts differ", () => {
  const { graph, judgement } = modelOf({ records: 1000, seed: 5 });
  const ranks = new Map<string, number>();
  const rankOf = (claim: string, above: readonly string[]): number => {
    const known = ranks.get(claim);
    if (known !== undefined || above.includes(claim)) return known ?? 0;
    const below = graph
      .list("arguments")
      .filter((one) => one.values.therefore === claim)
      .flatMap((one) => one.values.because)
      .filter((id) => graph.records.get(id)?.list === "claims");
    const rank = 1 + Math.max(0, ...below.map((id) => rankOf(id, [...above, claim])));
    ranks.set(claim, rank);
    return rank;
  };
  const found = new Set(graph.list("claims").map((one) => rankOf(one.id, [])));
  for (const rank of [1, 2, 3, 4, 5]) expect(found).toContain(rank);
  const attacked = new Set(
    graph
      .list("arguments")
      .flatMap((one) => one.values.against ?? [])
      .map((id) => graph.records.get(id)?.list),
  );
  for (const list of ["claims", "arguments", "measurements", "observations"] as const)
    expect(attacked).toContain(list);
  const stances = new Map<string, Set<string>>();
  for (const { values } of graph.list("positions"))
    for (const who of values.who) {
      const key = `${who} ${values.claim}`;
      stances.set(key, (stances.get(key) ?? new Set<string>()).add(values.stance));
    }
  expect([...stances.values()].some((one) => one.size > 1)).toBe(true);
  const text = JSON.stringify(corpusOf({ records: 1000, seed: 5 }));
  expect(text).toMatch(/\p{Script=Greek}/u);
  expect(text).toMatch(/\p{Script=Arabic}/u);
  expect(judgement.compiled.arguments.length).toBeGreaterThan(150);
});
