import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, test } from "vitest";
import { plugins } from "../../plugins/index.ts";
import { inEnglish } from "../../src/base/text/said/english.ts";
import type { Memo, Model } from "../../src/build.ts";
import { planText } from "../../src/cli/print/plan.ts";
import { derive } from "../../src/derive/derive.ts";
import { readCorpusFolder } from "../../src/host/corpus-folder.ts";
import { judge } from "../../src/judge/judge.ts";
import { supposing } from "../../src/link/suppose/examination.ts";
import type { Plan } from "../../src/plan/plan.ts";
import { planReport } from "../../src/show/plan/report.ts";
import { reportOf } from "../../src/show/report/report.ts";
import { reportSchema } from "../../src/show/report/schema.ts";
import { demoMemo } from "../demo-memo.ts";
import { planned, recordedIn } from "./planned.ts";

const demo = fileURLToPath(new URL("../../demo-corpus", import.meta.url));

describe("the dispute of Merrow Down", () => {
  let memo: Memo;
  let model: Model;
  let plan: Plan;
  beforeAll(async () => {
    memo = await demoMemo();
    ({ model, plan } = await planned(readCorpusFolder(demo), {}, memo));
  });

  test("is ranked as it was by hand, but for the two that decide nothing", () => {
    const text = readFileSync(`${demo}/what-next.md`, "utf8");
    const byHand = [...text.matchAll(/^## \d+\. .*\(`([a-z0-9-]+)`\)/gm)].map((match) => match[1] ?? "");
    expect(byHand).toHaveLength(5);
    const ranked = plan.recorded.map((one) => one.examination.id);
    expect(ranked.slice(0, 3)).toEqual(byHand.slice(0, 3));
    expect(ranked.slice(3).toSorted()).toEqual(byHand.slice(3).toSorted());
    // By hand the one that uses nothing up came first; the rule of the format counts claims before it asks that.
    const [foot, gradiometer] = ["date-the-foot", "gradiometer-again"].map((id) => recordedIn(plan, id));
    expect([foot?.decides, gradiometer?.decides]).toEqual([[], []]);
    expect([foot?.changed.length, gradiometer?.changed.length]).toEqual([2, 1]);
    expect(ranked.slice(3)).toEqual(["date-the-foot", "gradiometer-again"]);
  });

  test("comes out of each look as what-next.md has it", () => {
    const changes = (examination: string, outcome: string): unknown => {
      const found = recordedIn(plan, examination).outcomes.find((one) => one.id === outcome);
      const claims = model.graph.list("claims").map((one) => one.id);
      return Object.fromEntries([...(found?.changes ?? [])].filter(([id]) => claims.includes(id)));
    };
    for (const [look, roofed, open] of [
      ["look-at-the-casts", "round-ends", "straight-ends"],
      ["reopen-trench-4", "floors-untouched", "floors-recut"],
    ] as const) {
      expect(changes(look, roofed)).toMatchObject({
        "ring-a-roofed": ["open", "stands"],
        "ring-a-open": ["open", "falls"],
      });
      expect(changes(look, open)).toMatchObject({
        "ring-a-roofed": ["open", "falls"],
        "ring-a-open": ["open", "stands"],
      });
    }
    expect(changes("look-at-the-casts", "casts-spoilt")).toEqual({});
    expect(changes("measure-the-1937-film", "film-agrees-with-1998")).toEqual({});
    expect(changes("measure-the-1937-film", "film-agrees-with-1937")).toEqual({
      "rings-in-paces": ["stands", "unsupported"],
      "rings-by-eye": ["falls", "stands"],
    });
    expect(changes("gradiometer-again", "no-patch")).toEqual({});
    expect(changes("gradiometer-again", "burnt-patch")).toEqual({ "no-fire-inside": ["stands", "falls"] });
    expect(changes("date-the-foot", "foot-old")).toEqual({});
    expect(changes("date-the-foot", "foot-young")).toEqual({
      "walls-daubed": ["stands", "falls"],
      "roof-later": ["unsupported", "open"],
    });
  });

  test("has the p of the pace at about 0.002, and at about 0.2 once the film gives the gaps of 1937", () => {
    const film = recordedIn(plan, "measure-the-1937-film").outcomes.find((one) => one.id === "film-agrees-with-1937");
    const [now, then] = film?.numbers.get("ring-unit") ?? [];
    expect(now?.numbers["p"]?.value).toBeCloseTo(0.002, 3);
    expect(then?.numbers["p"]?.value).toBeCloseTo(0.2, 1);
    expect(film?.pending).toEqual([]);
  });

  test("gains from the casts what probabilities and priors give, reckoned here by hand", () => {
    const prior = [0.42, 0.42, 0.06, 0.1];
    const likely = [
      [0.65, 0.2, 0.15],
      [0.35, 0.5, 0.15],
      [0.5, 0.35, 0.15],
      [0.5, 0.35, 0.15],
    ];
    // Mutual information, summed over every answer and outcome.
    let bits = 0;
    for (const at of [0, 1, 2]) {
      const p = prior.reduce((sum, one, answer) => sum + one * likely[answer]![at]!, 0);
      prior.forEach((one, answer) => (bits += one * likely[answer]![at]! * Math.log2(likely[answer]![at]! / p)));
    }
    const { gain, gainPerCost } = recordedIn(plan, "look-at-the-casts");
    expect(gain?.question).toBe("what-was-it");
    expect(gain?.bits).toBeCloseTo(bits, 12);
    expect(gainPerCost).toBeCloseTo(bits, 12);
    expect(recordedIn(plan, "date-the-foot").gain?.bits).toBe(0);
  });

  test("needs one look to tell all open rivals apart, and says what no look decides", () => {
    expect(plan.contest.pairs).toHaveLength(5);
    expect(plan.contest.set).toEqual(["look-at-the-casts"]);
    expect(plan.contest.nearMinimal).toBe(false);
    expect(plan.contest.undecided.pairs).toEqual([]);
    expect(plan.contest.undecided.answers.map((one) => one.answer)).toEqual(["ring-in-feet", "roof-later"]);
  });

  test("names keepers, leave and cautions, and what spares the charred foot first", () => {
    expect(plan.trips.map(({ keeper, examinations }) => [keeper, examinations])).toEqual([
      ["Thornminster county store", ["look-at-the-casts", "date-the-foot"]],
      ["the commoners of Merrow, through their clerk", ["reopen-trench-4", "measure-the-1937-film"]],
      [null, ["gradiometer-again"]],
    ]);
    expect(plan.trips[0]).toMatchObject({ cost: 5, uncosted: 0, leadTimes: ["eight weeks", "a week"] });
    const foot = recordedIn(plan, "date-the-foot");
    expect(foot.cautions.map((one) => one.kind)).toEqual(["destructive", "permission"]);
    expect(recordedIn(plan, "reopen-trench-4").cautions.map((one) => one.kind)).toEqual([
      "permission",
      "in-the-ground",
    ]);
    expect(foot.gentler).toEqual([]);
  });

  test("is suggested nothing that its own examinations look at already", () => {
    const suggested = plan.proposed.map((one) => one.examination.id);
    expect(suggested).toContain("measure-again:depth-98-07");
    expect(suggested).not.toContain("measure-again:depth-98-08");
    expect(suggested.filter((id) => id.includes("gap"))).toEqual(["look-again:south-gap-1937"]);
    expect(new Set(suggested).size).toBe(suggested.length);
    expect(plan.passedOver).toBe(0);
  });

  test("prints the rule above the list, every outcome, and JSON by the shipped schema", () => {
    const report = reportSchema.parse(
      JSON.parse(JSON.stringify(reportOf(model, [], new Map(), planReport(plan)))),
    );
    expect(report.plan.map((one) => one.examination)).toEqual(plan.recorded.map((one) => one.examination.id));
    expect(report.plan[0]).toMatchObject({
      decides: ["ring-a-open", "ring-a-roofed"],
      changes: 5,
      cost: 1,
      idle: false,
    });
    expect(report.plan[0]?.outcomes["round-ends"]?.["ring-a-open"]).toEqual(["open", "falls"]);
    expect(report.proposed.map((one) => one.examination)).toEqual(plan.proposed.map((one) => one.examination.id));
    const lines = planText(model, plugins, plan, false);
    const at = (words: string): number => lines.findIndex((line) => line.includes(words));
    expect(at("Ranked by")).toBeGreaterThanOrEqual(0);
    expect(at("Ranked by")).toBeLessThan(at("look-at-the-casts"));
    for (const { outcomes } of plan.recorded)
      for (const { text } of outcomes) expect(at(text)).toBeGreaterThan(at("Ranked by"));
    expect(lines).toContain("      an open ring: open → falls");
    expect(at("more; --all prints them")).toBeGreaterThan(0);
    expect(planText(model, plugins, plan, true).length).toBeGreaterThan(lines.length);
    expect(lines.join("\n")).not.toMatch(/merrow-down|4417|trench-9/);
  });

  test("is told in print so that each sentence is true of it", () => {
    const lines = planText(model, plugins, plan, true);
    const said = lines.map((line) => line.trim());
    const after = said.slice(said.indexOf("What the record itself suggests looking at"));
    const caution = after.filter((line) => line.startsWith("Scheduled or protected ground"));
    expect(after[1]).toBe(caution[0]);
    expect(caution).toHaveLength(1);
    for (const line of [
      // It falls now, and in one outcome goes on falling: nothing is decided whatever comes of it.
      "It can overturn the standing of “laid out by eye”, and can change one claim besides.",
      "no claim changes; 6 arguments and pieces of evidence do",
      "permit: scheduled ground; consent of the heritage authority for any digging",
      "No gain is expected about “Roofed house or open ring?”: what it can show is as probable under each answer.",
      "Without what is recorded of it, “both at one time” would not stand.",
    ])
      expect(said).toContain(line);
    expect(said.filter((line) => /^expected gain: .*\sbits for each day, number 1 by that measure$/.test(line))).toHaveLength(1);
    expect(said.filter((line) => /^permit: .*; scheduled ground/.test(line))).toEqual([]);
    expect(recordedIn(plan, "measure-the-1937-film").decidesInEveryOutcome).toBe(false);
    expect(recordedIn(plan, "reopen-trench-4").decidesInEveryOutcome).toBe(true);
    expect(plan.trips.map((one) => one.together)).toEqual([null, null, null]);
    const ring = plan.proposed.find((one) => one.examination.id === "see-again:ring-b");
    expect(inEnglish(ring?.examination.method ?? "")).toBe("look again at outer ring, as far as can be seen without digging");
  });

  test("looks back: as of a year each outcome changes what judging the supposed record changes", async () => {
    const lens = { asOf: 2000 };
    const then = await planned(readCorpusFolder(demo), lens, memo);
    const { graph, judgement } = then.model;
    for (const { examination, outcomes } of then.plan.recorded) {
      outcomes.forEach(({ id, changes }, at) => {
        const under = supposing(graph, examination, examination.outcomes[at]!);
        const derivations = derive(under, plugins, memo.compute, lens);
        expect(derivations.missing).toEqual([]);
        const { standings } = judge(under, derivations, lens);
        const expected = [...judgement.standings].flatMap(([one, was]) => {
          const is = standings.get(one);
          const listed = graph.records.get(one)?.list !== "claims" || judgement.listed(one);
          return is === undefined || is === was || !listed ? [] : [[one, [was, is]] as const];
        });
        expect(Object.fromEntries(changes), id).toEqual(Object.fromEntries(expected));
      });
    }
    expect(then.plan.recorded.flatMap((one) => one.changed).length).toBeGreaterThan(0);
  });
});
