import { expect, test } from "vitest";
import { historiesBeside } from "../../../src/app/worker/models/histories.ts";
import type { Desk } from "../../../src/app/worker/desk.ts";
import { tellingAt } from "../../../src/app/worker/planning/telling.ts";
import { build } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import type { Block } from "../../../src/show/telling/blocks/block.ts";
import { sightOf } from "../../../src/show/telling/review/desk.ts";
import { readingsOf } from "../../../src/show/telling/review/searches/readings.ts";
import { plugins } from "../../../plugins/index.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";
import { inlinesIn, textOf } from "../telling/review-cases.ts";

const files = corpusOf({ records: 900, seed: 12 });
const memo = emptyMemo();
const { model, findings } = build(files, plugins, memo, {}, { plan: true });
if (!model) throw new Error("no model");

const turns = { now: () => 0, later: () => undefined };
const histories = historiesBeside(memo.compute, () => plugins, turns);
const desk: Desk = {
  model,
  under: () => model,
  findings,
  texts: model.files,
  memo: memo.compute,
  need: () => undefined,
  corpus: () => ({ files, ...memo }),
  plans: { made: () => model.plan, make: () => ({ plan: model.plan, progress: null, missing: [] }) },
  through: (of) => histories.through(of, { done: () => undefined }),
};
const asked = { kind: "review", question: null, examination: null, style: null, sections: null };
const questions = model.graph.list("questions").map(({ id }) => id);

test("the preview of all questions of a large corpus is that of the first, and names it", () => {
  const [first = ""] = questions;
  expect(questions.length).toBeGreaterThan(5);
  const large = tellingAt(desk, asked, 100);
  expect(large.previewed?.id).toBe(first);
  expect(large.questions.map(({ id }) => id)).toEqual(questions);
  expect(large.preview).toEqual(tellingAt(desk, { ...asked, question: first }, 100).preview);
  const small = tellingAt(desk, asked);
  expect(small.previewed).toBe(null);
  expect(JSON.stringify(small.preview).length).toBeGreaterThan(2 * JSON.stringify(large.preview).length);
  for (const question of questions.slice(0, 3)) {
    const one = tellingAt(desk, { ...asked, question }, 100);
    expect(one.previewed).toBe(null);
    expect(one.preview).toEqual(tellingAt(desk, { ...asked, question }).preview);
  }
  expect(tellingAt(desk, { ...asked, kind: "application" }, 100).previewed).toBe(null);
});

test("a sentence names so many works at most, and how many there are besides", () => {
  const { preview } = tellingAt(desk, { ...asked, sections: ["searches"] }, 100);
  const blocks: readonly Block[] = preview?.manuscript.blocks ?? [];
  const { unread } = readingsOf(sightOf({ model, findings, plugins, memo: memo.compute }, null));
  expect(unread.length).toBeGreaterThan(50);
  const [sentence] = blocks.filter((one) => textOf({ blocks: [one] }).includes("it is not recorded that"));
  const cited = inlinesIn(sentence ? [sentence] : []).filter(
    (one) => typeof one !== "string" && "is" in one && one.is === "citing",
  );
  const others = /and (\d+) other works of the bibliography\.$/u.exec(
    textOf({ blocks: sentence ? [sentence] : [] }),
  )?.[1];
  const isUnread = cited
    .slice(-40)
    .flatMap((one) =>
      typeof one !== "string" && "is" in one && one.is === "citing" ? one.cites.map(({ id }) => id) : [],
    );
  expect(isUnread).toEqual(unread.slice(0, 40));
  expect(40 + Number(others)).toBe(unread.length);
});
