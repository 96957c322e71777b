import { expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import type { Memo } from "../../../src/build.ts";
import { derive } from "../../../src/derive/derive.ts";
import { compute } from "../../../src/derive/run.ts";
import type { Outcome } from "../../../src/derive/run.ts";
import { judge } from "../../../src/judge/judge.ts";
import { link } from "../../../src/link/link.ts";
import { supposing } from "../../../src/link/suppose/examination.ts";
import type { Planned } from "../../../src/plan/plan.ts";
import { planning, planOf } from "../../../src/plan/planning.ts";
import type { PlanProgress } from "../../../src/plan/planning.ts";
import { byDecision } from "../../../src/plan/rank.ts";
import { readCorpus } from "../../../src/read/read.ts";
import { planReport } from "../../../src/show/plan/report.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";
import { checkedUnder, plannedFrom, planFiles, planPlugins } from "./plan-cases.ts";

const seeds = Array.from({ length: 40 }, (_, seed) => seed + 1);

test("what an outcome changes is the difference of two builds, one without it and one that supposes it", () => {
  const met = { outcomes: 0, changes: 0, numbers: 0, proposed: 0, decided: 0, idle: 0 };
  const kinds = new Set<string>();
  for (const seed of seeds) {
    const files = planFiles(seed);
    const memo: Memo = { read: new Map(), compute: new Map() };
    const { model, plan } = plannedFrom(files, memo);
    for (const planned of [...plan.recorded, ...plan.proposed]) {
      const examination = planned.examination.id;
      for (const outcome of planned.outcomes) {
        const then = checkedUnder(files, { suppose: { examination, outcome: outcome.id } }, {}, memo).model;
        const expected = [...model.judgement.standings].flatMap(([id, was]) => {
          const is = then.judgement.standings.get(id);
          return is === undefined || is === was ? [] : [[id, [was, is]] as const];
        });
        const found = [...outcome.changes].toSorted(([a], [b]) => (a < b ? -1 : 1));
        expect(found, `${seed} ${examination} ${outcome.id}`).toEqual(
          expected.toSorted(([a], [b]) => (a < b ? -1 : 1)),
        );
        for (const [id, [, number]] of outcome.numbers)
          expect(number.numbers, `${seed} ${id}`).toEqual(then.derivations.byId.get(id)?.numbers);
        expect(outcome.pending).toEqual([]);
        met.outcomes++;
        met.changes += outcome.changes.size;
        met.numbers += outcome.numbers.size;
      }
      met.proposed += planned.reason === null ? 0 : 1;
      met.decided += planned.decides.length;
      met.idle += planned.idle ? 1 : 0;
      kinds.add(planned.reason?.kind ?? "recorded");
    }
  }
  for (const [what, count] of Object.entries(met)) expect(count, what).toBeGreaterThan(20);
  expect([...kinds].toSorted()).toEqual([
    "attacked",
    "in-conflict",
    "no-number",
    "recorded",
    "rests-on",
    "second-hand",
  ]);
});

test("what an examination decides, changes and tells apart is read off its outcomes", () => {
  let [sure, settledOnly] = [0, 0];
  for (const seed of seeds) {
    const { model, plan } = plannedFrom(planFiles(seed));
    const answers = model.graph.list("questions").flatMap((one) => one.values.answers);
    const claims = model.graph.list("claims").map((one) => one.id);
    for (const planned of [...plan.recorded, ...plan.proposed]) {
      const { outcomes, decides, changed, idle } = planned;
      const after = outcomes.map(
        ({ changes }) =>
          (id: string): string =>
            changes.get(id)?.[1] ?? model.judgement.standings.get(id) ?? "unsupported",
      );
      const now = (id: string): string => model.judgement.standings.get(id) ?? "unsupported";
      const settled = (standing: string): boolean => standing === "stands" || standing === "falls";
      expect([...decides]).toEqual(
        [...new Set(answers)]
          .filter((id) => after.some((then) => settled(then(id)) && then(id) !== now(id)))
          .sort(),
      );
      expect([...changed]).toEqual(claims.filter((id) => after.some((then) => then(id) !== now(id))).sort());
      const labels = (then: (id: string) => string): string => claims.map(then).join();
      const told = new Set([...after, ...(after.length === 1 ? [now] : [])].map(labels));
      expect(idle).toBe(told.size <= 1);
      const always = after.every((then) => decides.every((id) => settled(then(id)) && then(id) !== now(id)));
      expect(planned.decidesInEveryOutcome).toBe(decides.length > 0 && always);
      sure += planned.decidesInEveryOutcome ? 1 : 0;
      settledOnly +=
        decides.length > 0 && !always && after.every((then) => decides.every((id) => settled(then(id))))
          ? 1
          : 0;
    }
  }
  // Both kinds are met: what every outcome changes, and what one leaves as settled as it is.
  expect(sure).toBeGreaterThan(5);
  expect(settledOnly).toBeGreaterThan(5);
});

test("the ranking is by the rule, leaves nothing undecided, and hangs on no order of files or lists", () => {
  const all: Planned[] = [];
  for (const seed of seeds.slice(0, 25)) {
    const files = planFiles(seed);
    const memo: Memo = { read: new Map(), compute: new Map() };
    const report = JSON.stringify(planReport(plannedFrom(files, memo).plan));
    expect(JSON.stringify(planReport(plannedFrom(files.toReversed(), memo).plan))).toBe(report);
    const { plan } = plannedFrom(files, memo);
    for (const list of [plan.recorded, plan.proposed]) {
      expect(list.toReversed().toSorted(byDecision)).toEqual(list);
      list.forEach((one, at) => {
        const next = list[at + 1];
        if (next) expect(byDecision(one, next)).toBeLessThan(0);
      });
    }
    all.push(...plan.recorded);
  }
  const key = ({ decides, changed, examination }: Planned): readonly number[] => [
    -decides.length,
    -changed.length,
    examination.destructive ? 1 : 0,
    examination.cost ?? Infinity,
  ];
  for (const one of all.slice(0, 60)) {
    for (const other of all.slice(0, 60)) {
      const [a, b] = [key(one), key(other)];
      const at = a.findIndex((value, place) => value !== b[place]);
      if (at >= 0) expect(Math.sign(byDecision(one, other))).toBe((a[at] ?? 0) < (b[at] ?? 0) ? -1 : 1);
    }
  }
});

test("a plan in slices tells how far it is, and comes to the same", () => {
  const { model } = plannedFrom(planFiles(3));
  const memo: Memo = { read: new Map(), compute: new Map() };
  const { model: computed } = checkedUnder(planFiles(3), {}, { plan: true }, memo);
  const bench = { ...computed, plugins: planPlugins, memo: memo.compute };
  const steps = planning(bench);
  const told: PlanProgress[] = [];
  for (;;) {
    const step = steps.next();
    if (step.done === true) {
      expect(step.value.plan).toEqual(planOf(bench).plan);
      expect(step.value.missing).toEqual([]);
      break;
    }
    told.push(step.value);
  }
  const { recorded = [], proposed = [] } = model.plan ?? {};
  const all = recorded.length + proposed.length;
  const done = told.map((one) => one.done);
  expect(done).toEqual(done.toSorted((a, b) => a - b));
  expect([...new Set(done)]).toEqual(Array.from({ length: all + 1 }, (_, at) => at));
  expect(told.at(-1)).toEqual({ done: all, of: all });
});

test("a plan made under a supposition is that of the record", () => {
  const files = planFiles(5);
  const memo: Memo = { read: new Map(), compute: new Map() };
  const { plan } = plannedFrom(files, memo);
  const [first] = plan.recorded;
  const suppose = { examination: first?.examination.id ?? "", outcome: first?.outcomes[0]?.id ?? "" };
  const under = checkedUnder(files, { suppose }, { plan: true }, memo).model;
  expect(under.graph.supposed).not.toBeNull();
  expect(planReport(under.plan ?? plan).plan).toEqual(planReport(plan).plan);
});

test("in a made corpus of some size each outcome changes what judging the supposed record anew changes", () => {
  const reading = readCorpus(corpusOf({ records: 900, seed: 11 }), new Map());
  if (!("settings" in reading)) throw new Error("The made corpus cannot be read");
  const graph = link(reading);
  const memo = new Map<string, Outcome>();
  for (const run of derive(graph, plugins, memo, {}).missing)
    memo.set(
      run.key,
      compute(run, plugins, () => undefined),
    );
  const derivations = derive(graph, plugins, memo, {});
  const judgement = judge(graph, derivations, {});
  const { plan } = planOf({ graph, plugins, memo, lens: {}, derivations, judgement, restsOn: new Map() });
  const all = [...plan.recorded, ...plan.proposed];
  expect(all.length).toBeGreaterThan(30);
  let changed = 0;
  for (const { examination, outcomes } of all.filter((_, at) => at % 3 === 0)) {
    outcomes.forEach(({ id, changes }, at) => {
      const outcome = examination.outcomes[at];
      if (!outcome) throw new Error(`no outcome ${id}`);
      const { standings } = judge(supposing(graph, examination, outcome), derivations, {});
      const expected = [...judgement.standings].flatMap(([one, was]) => {
        const is = standings.get(one);
        return is === undefined || is === was ? [] : [[one, [was, is]] as const];
      });
      expect(Object.fromEntries(changes), `${examination.id} ${id}`).toEqual(Object.fromEntries(expected));
      changed += changes.size;
    });
  }
  expect(changed).toBeGreaterThan(20);
});
