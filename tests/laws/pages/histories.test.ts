import fc from "fast-check";
import { expect, test } from "vitest";
import { historiesBeside } from "../../../src/app/worker/models/histories.ts";
import { build } from "../../../src/build.ts";
import type { Model } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { historyOf } from "../../../src/show/judged/history/history.ts";
import { plugins } from "../../../plugins/index.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";

const memo = emptyMemo();
const { model } = build(corpusOf({ records: 300, seed: 6 }), plugins, memo);
if (!model) throw new Error("no model");

const wholeOf = (one: Model) =>
  historyOf({ graph: one.graph, plugins, memo: memo.compute, lens: one.lens }, one.judgement);

/** Histories whose turns a test takes itself, by a clock that goes on by so many ms whenever it is looked at. */
function atHand(tick: number) {
  let clock = 0;
  const waiting: (() => void)[] = [];
  const turns = { now: () => (clock += tick), later: (next: () => void) => void waiting.push(next) };
  return { histories: historiesBeside(memo.compute, () => plugins, turns), waiting };
}

test("a history told as it grows has the first years of the whole, more each time, and comes to the whole", () => {
  const whole = wholeOf(model);
  expect(whole.history.length).toBeGreaterThan(10);
  fc.assert(
    fc.property(fc.integer({ min: 7, max: 11 }), (tick) => {
      const { histories, waiting } = atHand(tick);
      const lengths: number[] = [];
      let dones = 0;
      const told = () => histories.through(model, { grown: ask, done: () => (dones += 1) });
      const ask = (): void => {
        const { steps, progress, again } = told().told;
        expect(again).toBe(false);
        expect(steps).toEqual(whole.history.slice(0, steps.length));
        expect(progress?.done).toBeLessThanOrEqual(progress?.of ?? 0);
        lengths.push(steps.length);
      };
      ask();
      for (let turn = waiting.shift(); turn; turn = waiting.shift()) turn();
      expect(lengths).toEqual(lengths.toSorted((a, b) => a - b));
      // It is told at longer and longer intervals, not with every year.
      expect(lengths.length).toBeLessThan(whole.history.length);
      expect(dones).toBe(1);
      const last = told();
      expect(last.told.progress).toBe(null);
      expect(last.told.steps).toEqual(whole.history);
      expect(last.missing.map(({ key }) => key)).toEqual(whole.missing.map(({ key }) => key));
      expect(last.told.pending).toBe(whole.missing.length);
    }),
    { numRuns: 4, seed: 2 },
  );
});

test("one turn goes through no more than a year", () => {
  const { histories, waiting } = atHand(11);
  const done = (): number =>
    histories.through(model, { done: () => undefined }).told.progress?.done ?? Infinity;
  let before = done();
  for (let turn = waiting.shift(); turn; turn = waiting.shift()) {
    turn();
    const now = done();
    if (now === Infinity) break;
    expect(now - before).toBeLessThanOrEqual(3);
    before = now;
  }
});

test("with numbers that come the last history is told until the new one is whole, and no longer than its files", () => {
  const { histories, waiting } = atHand(11);
  const hearing = { done: () => undefined };
  const all = (): void => {
    for (let turn = waiting.shift(); turn; turn = waiting.shift()) turn();
  };
  histories.through(model, hearing);
  all();
  const whole = histories.through(model, hearing).told;
  const next: Model = { ...model, judgement: { ...model.judgement } };
  const again = histories.through(next, hearing).told;
  expect(again.steps).toBe(whole.steps);
  expect([again.again, again.progress === null]).toEqual([true, false]);
  all();
  expect(histories.through(next, hearing).told).toEqual(whole);
  histories.forget();
  const other: Model = { ...model, judgement: { ...model.judgement } };
  const fresh = histories.through(other, hearing).told;
  expect(fresh.again).toBe(false);
  expect(fresh.steps.length).toBeLessThan(whole.steps.length);
});

test("it stops where it is when another page is asked for, and goes on from there", () => {
  const { histories, waiting } = atHand(11);
  const hearing = { done: () => expect.fail("A stopped history went on") };
  const first = histories.through(model, hearing).told.progress?.done ?? 0;
  histories.stop();
  for (let turn = waiting.shift(); turn; turn = waiting.shift()) turn();
  const then = histories.through(model, { done: () => undefined }).told.progress;
  expect(then?.done).toBeGreaterThanOrEqual(first);
  expect(then?.done).toBeLessThanOrEqual(first + 2);
});
