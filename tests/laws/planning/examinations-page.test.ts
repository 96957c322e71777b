import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { worded } from "../../../src/base/text/said/worded.ts";
import { examinationsAt } from "../../../src/app/worker/planning/pages.ts";
import { plansBeside } from "../../../src/app/worker/planning/plans.ts";
import { unsupposed } from "../../../src/derive/lens.ts";
import type { Progress, Turns } from "../../../src/app/worker/planning/slices.ts";
import { build } from "../../../src/build.ts";
import type { Model, Run } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { planOf } from "../../../src/plan/planning.ts";
import { decidersOf } from "../../../src/show/plan/deciding.ts";
import { examinationsPage, linesOf } from "../../../src/show/plan/page.ts";
import type { ExaminationsPage } from "../../../src/show/plan/page.ts";
import { bitsOf, costInWords, decidesInWords, percent, unitOfCost } from "../../../src/show/plan/wording.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";
import { modelOf } from "../../oracle/computed-model.ts";
import { casePlugins } from "../../oracle/random-corpus.ts";
import { corpus } from "../judging/standpoint-corpora.ts";

const memo = emptyMemo();
const made = build(corpusOf({ records: 900, seed: 4 }), [], memo).model;
const model = (): Model => made ?? expect.fail("The made corpus cannot be read");

/** Turns that a test takes itself; the clock goes on by five ms whenever it is asked. */
function turnsByHand(): Turns & { readonly waiting: (() => void)[] } {
  const waiting: (() => void)[] = [];
  let clock = 0;
  return { waiting, now: () => (clock += 5), later: (next) => void waiting.push(next) };
}

/** Plans by hand, with all that is told of them. */
function atHand() {
  const turns = turnsByHand();
  const told: Progress[] = [];
  const plans = plansBeside(memo.compute, turns);
  const done = { times: 0 };
  const hearing = { progress: (one: Progress) => void told.push(one), done: () => void (done.times += 1) };
  const take = (): void => turns.waiting.shift()?.();
  return { plans, turns, told, done, hearing, take };
}

describe("a long plan is made a slice at a time", () => {
  test("each turn is short, progress goes up to all examinations, and it comes to the plan made at one go", () => {
    const { plans, turns, told, done, hearing, take } = atHand();
    const first = plans.make(model(), hearing);
    expect(first.plan).toBe(null);
    expect(plans.made(model())).toBe(null);
    while (turns.waiting.length > 0) {
      expect(turns.waiting).toHaveLength(1);
      take();
    }
    expect(done.times).toBe(1);
    const { plan } = planOf({ ...model(), plugins: [], memo: memo.compute });
    const all = plan.recorded.length + plan.proposed.length;
    expect(plan.recorded.length).toBeGreaterThan(3);
    expect(told.length).toBeGreaterThan(3);
    const dones = told.map((one) => one.done);
    expect(dones).toEqual(dones.toSorted((a, b) => a - b));
    // The clock leaves two steps to a turn of twelve ms.
    expect(dones.every((one, at) => one - (dones[at - 1] ?? 0) <= 3)).toBe(true);
    expect(told.at(-1)?.of).toBe(all);
    expect(plans.made(model())).toEqual(plan);
  });

  test("it stops where it is when something else is asked, and goes on from there", () => {
    const { plans, turns, told, done, hearing, take } = atHand();
    plans.make(model(), hearing);
    while ((told.at(-1)?.done ?? 0) === 0 && turns.waiting.length > 0) take();
    const before = told.length;
    const { done: far = 0 } = told.at(-1) ?? {};
    expect(far).toBeGreaterThan(0);
    plans.stop();
    // The turn that was waited for still comes, and does nothing.
    while (turns.waiting.length > 0) take();
    expect([told.length, done.times]).toEqual([before, 0]);
    plans.make(model(), hearing);
    while (turns.waiting.length > 0) take();
    expect(told[before]?.done).toBeGreaterThan(far);
    expect(done.times).toBe(1);
  });

  test("asked for twice it is made once; a plan that is made is told at once", () => {
    const { plans, turns, done, hearing, take } = atHand();
    plans.make(model(), hearing);
    plans.make(model(), hearing);
    while (turns.waiting.length > 0) take();
    expect(done.times).toBe(1);
    const again = plans.make(model(), hearing);
    expect(again.plan).toBe(plans.made(model()));
    expect([again.progress, turns.waiting.length]).toEqual([null, 0]);
  });

  test("while numbers arrive the plan before is shown; of other files none is", () => {
    const { plans, turns, hearing, take } = atHand();
    plans.make(model(), hearing);
    while (turns.waiting.length > 0) take();
    const { plan } = plans.make(model(), hearing);
    expect(plan).not.toBe(null);
    const newer = { ...model() };
    expect(plans.make(newer, hearing).plan).toBe(plan);
    expect(plans.make(newer, hearing).progress).not.toBe(null);
    const otherYear = { ...model(), lens: { asOf: 1950 } };
    expect(plans.make(otherYear, hearing).plan).toBe(null);
    plans.forget();
    expect(plans.make({ ...model() }, hearing).plan).toBe(null);
  });

  test("nothing is planned before the record's own numbers are there: they are asked for first", () => {
    const run: Run = { key: "k", plugin: "p", inputs: {}, settings: {}, looks: 0 };
    const one: Model = { ...model(), derivations: { ...model().derivations, missing: [run] } };
    const needed: Run[] = [];
    const page = examinationsAt({
      model: one,
      under: () => expect.fail("Nothing is supposed"),
      findings: [],
      texts: new Map(),
      memo: memo.compute,
      need: (runs) => void needed.push(...runs),
      corpus: () => expect.fail("A draft was tried"),
      plans: { made: () => null, make: () => expect.fail("A plan was begun") },
      through: () => expect.fail("A history was begun"),
    });
    expect([page.plan, page.waitsFor, needed]).toEqual([null, 1, [run]]);
    expect(page.recorded).toBeGreaterThan(3);
  });

  test("what is supposed is no part of the lens a plan is made under", () => {
    const suppose = { examination: "x", outcome: "o" };
    expect(unsupposed({ asOf: 1950, suppose })).toEqual({ asOf: 1950 });
    expect(unsupposed({ suppose })).toEqual({});
  });
});

/** A ring that was roofed or open; the observations for either are against one another. */
const ring = {
  artefacts: [
    { id: "post", name: "the north post", access: { keeper: "the county store", "lead-time": "a week" } },
    { id: "spring", name: "the hidden spring", "found-at": "behind the mill", "withhold-location": "true" },
  ],
  questions: [
    {
      id: "which",
      text: "Roofed or open?",
      answers: ["roofed", "open-ring"],
      prior: { roofed: "0.5", "open-ring": "0.5" },
    },
    { id: "where", text: "In wood or in stone?", answers: ["wooden", "stony"] },
  ],
  claims: [
    { id: "roofed", text: "The ring carried a roof." },
    { id: "open-ring", text: "The ring stood open." },
    { id: "wooden", text: "It was of wood." },
    { id: "stony", text: "It was of stone." },
    { id: "wet", text: "The ground was wet." },
  ],
  observations: [
    { id: "deep", of: "post", text: "The post stood deep." },
    { id: "shallow", of: "post", text: "The post stood shallow." },
    { id: "grain", of: "post", text: "Grain is seen in it." },
    { id: "chips", of: "post", text: "Chips of stone lie about." },
  ],
  arguments: [
    { id: "not-shallow", because: "deep", against: "shallow" },
    { id: "not-deep", because: "shallow", against: "deep" },
    { id: "so-roofed", because: "deep", therefore: "roofed" },
    { id: "so-open", because: "shallow", therefore: "open-ring" },
    { id: "so-wooden", because: "grain", therefore: "wooden" },
    { id: "so-stony", because: "chips", therefore: "stony" },
  ],
  examinations: [
    {
      id: "groove",
      of: "post",
      method: "measure the groove.",
      cost: "2",
      permit: "a ticket",
      outcomes: [
        {
          id: "wide",
          text: "It is wide.",
          against: ["shallow"],
          probability: { roofed: "0.9", "open-ring": "0.2" },
        },
        {
          id: "narrow",
          text: "It is narrow.",
          against: ["deep"],
          probability: { roofed: "0.1", "open-ring": "0.8" },
        },
      ],
    },
    {
      id: "burn",
      of: "post",
      method: "burn a piece of it",
      cost: "1",
      destructive: "true",
      outcomes: [
        { id: "hot", text: "It burns.", against: ["shallow"] },
        { id: "cold", text: "It does not burn.", against: ["deep"] },
      ],
    },
    {
      id: "smell",
      of: "post",
      method: "smell it",
      outcomes: [{ id: "sweet", text: "It smells sweet." }],
    },
    {
      id: "dowse",
      of: "spring",
      method: "walk over the hidden spring",
      outcomes: [{ id: "full", text: "The hidden spring runs.", therefore: ["wet"] }],
    },
  ],
};

function pageOf(settings: object = {}): { readonly model: Model; readonly page: ExaminationsPage } {
  const one = modelOf(corpus(ring, settings));
  const { plan } = planOf({ ...one, plugins: casePlugins, memo: memo.compute });
  return { model: one, page: examinationsPage(one, casePlugins, plan) };
}

const lines = (page: ExaminationsPage) => page.plan?.recorded ?? [];

describe("the page of examinations", () => {
  test("each examination is told with what it takes and what it would decide, in the order of the plan", () => {
    const { page } = pageOf();
    expect(lines(page).map((one) => [one.id, inEnglish(one.decides)])).toEqual([
      ["groove", "It decides “The ring carried a roof” and “The ring stood open”, whatever comes of it."],
      ["burn", "It decides “The ring carried a roof” and “The ring stood open”, whatever comes of it."],
      ["dowse", "It decides no answer, and can change one claim."],
      ["smell", "Nothing it can show changes a standing."],
    ]);
    const [groove, burn] = lines(page);
    expect(groove).toMatchObject({
      method: "Measure the groove",
      cost: "2\u00a0days",
      keepers: ["the county store"],
      permits: ["a ticket"],
      leadTimes: ["a week"],
      destructive: false,
      asks: [],
    });
    expect(burn?.destructive).toBe(true);
    expect(burn?.gentler.map((one) => one.id)).toContain("groove");
    expect(burn?.asks.length).toBeGreaterThan(3);
  });

  test("an outcome tells what would change, from now to then, answers first, and where to see it", () => {
    const [groove] = lines(pageOf().page);
    const [wide] = groove?.outcomes ?? [];
    expect(wide?.claims.map((one) => [one.id, one.was, one.is])).toEqual(
      expect.arrayContaining([
        ["roofed", "open", "stands"],
        ["open-ring", "open", "falls"],
      ]),
    );
    expect(wide?.lands).toEqual({ page: "question", id: "which" });
    expect(lines(pageOf().page)[3]?.outcomes[0]).toMatchObject({ claims: [], others: 0, lands: null });
  });

  // Two hypotheses of one half each, outcomes 0.9 and 0.1 under one, 0.2 and 0.8 under the other: Lindley 1956, case J1-two.
  test("the gain is told in bits with prior and posterior, and by its cost", () => {
    const gain = lines(pageOf().page)[0]?.gain;
    expect(gain?.bits).toBe("0.397");
    expect(gain?.prior).toEqual({ answers: ["50\u00a0%", "50\u00a0%"], bits: "1" });
    expect(gain?.answers.map((one) => one.id)).toEqual(["roofed", "open-ring"]);
    expect(gain?.outcomes).toEqual([
      { text: "It is wide.", p: "55\u00a0%", posterior: ["82\u00a0%", "18\u00a0%"], bits: "0.684" },
      { text: "It is narrow.", p: "45\u00a0%", posterior: ["11\u00a0%", "89\u00a0%"], bits: "0.503" },
    ]);
    expect(gain?.perCost).toEqual({ bits: "0.199", place: 1 });
    expect(lines(pageOf().page)[1]?.gain).toBe(null);
    expect(inEnglish(lines(pageOf().page)[1]?.noGain ?? "")).toContain("not every outcome has a probability");
  });

  test("what none can decide comes with names; the smallest set and the trips with costs", () => {
    const { plan } = pageOf().page;
    expect(plan?.contest.pairs.map((one) => one.answers.map((answer) => answer.id).sort())).toEqual([
      ["stony", "wooden"],
    ]);
    expect(plan?.contest.answers.map((one) => one.answer.id).sort()).toEqual(["stony", "wooden"]);
    expect(plan?.contest.set.map((one) => [one.id, one.cost])).toEqual([["burn", "1\u00a0day"]]);
    expect([plan?.contest.told, plan?.contest.rivals]).toEqual([1, 2]);
    expect(plan?.trips.map((trip) => [trip.keeper, trip.rows.map((row) => row.id), trip.cost])).toEqual([
      ["the county store", ["groove", "smell", "burn"], "3\u00a0days"],
      [null, ["dowse"], null],
    ]);
  });

  test("other pages are told what would decide a claim, recorded examinations before suggested ones", () => {
    const { model: one } = pageOf();
    const { plan } = planOf({ ...one, plugins: casePlugins, memo: memo.compute });
    const told = linesOf(one, casePlugins, plan);
    expect(worded(decidersOf(told, plan, ["roofed"]), inEnglish)).toEqual([
      {
        id: "groove",
        text: "Measure the groove",
        decides: "“The ring carried a roof”",
        cost: "2\u00a0days",
        destructive: false,
      },
      {
        id: "burn",
        text: "Burn a piece of it",
        decides: "“The ring carried a roof”",
        cost: "1\u00a0day",
        destructive: true,
      },
    ]);
    expect(decidersOf(told, plan, ["wooden"]).every((decider) => decider.id.includes(":"))).toBe(true);
  });

  test("nothing withheld is told, nor where a thing was found that keeps its place to itself", () => {
    expect(JSON.stringify(pageOf().page)).toContain("hidden spring");
    expect(JSON.stringify(pageOf().page)).not.toContain("behind the mill");
    const closed = pageOf({ withhold: ["spring", "open-ring"] }).page;
    expect(closed.recorded).toBe(3);
    for (const secret of ["spring", "stood open", "open-ring", "mill"])
      expect(JSON.stringify(closed)).not.toContain(secret);
  });

  test("a corpus without examinations has none, and is not waited for", () => {
    const bare = modelOf(corpus({ claims: [{ id: "c", text: "A claim." }] }));
    expect(examinationsPage(bare, casePlugins, null)).toEqual({
      costsIn: "days",
      years: [],
      recorded: 0,
      plan: null,
    });
  });
});

describe("the words of a plan", () => {
  test("costs are in the corpus's own measure, one of them in the singular where it is a plain plural", () => {
    expect(costInWords(1, "days")).toBe("1\u00a0day");
    expect(costInWords(2.5, "days")).toBe("2.5\u00a0days");
    expect(costInWords(1, "pounds sterling")).toBe("1\u00a0pounds sterling");
    expect(costInWords(null, "days")).toBe(null);
  });

  test("a probability that is not certain is not told as certain", () => {
    expect(percent(0.5)).toBe("50\u00a0%");
    expect(percent(0.999)).toBe("99.9\u00a0%");
    expect(percent(1)).toBe("100\u00a0%");
    expect(percent(0.004)).toBe("0.4\u00a0%");
  });

  test("what hangs on numbers to come is not told as changing nothing", () => {
    const none = {
      decides: [],
      overturns: [],
      changed: 0,
      always: false,
      outcomes: 2,
      idle: true,
      pending: false,
    };
    expect(inEnglish(decidesInWords(none, String))).toBe("Nothing it can show changes a standing.");
    expect(inEnglish(decidesInWords({ ...none, pending: true }, String))).toContain("still to be computed");
    expect(inEnglish(decidesInWords({ ...none, changed: 2 }, String))).toContain("nothing it can show tells");
  });

  test("what is settled already is overturned, and one outcome alone is not all that can come of it", () => {
    const two = {
      decides: ["a", "b"],
      overturns: [],
      changed: 3,
      always: false,
      outcomes: 2,
      idle: false,
      pending: false,
    };
    const said = (change: object): string => inEnglish(decidesInWords({ ...two, ...change }, String));
    expect(said({})).toBe("It can decide a and b, and can change one claim besides.");
    expect(said({ always: true })).toBe(
      "It decides a and b, whatever comes of it, and can change one claim besides.",
    );
    expect(said({ decides: [], overturns: ["a"], changed: 1 })).toBe("It can overturn the standing of a.");
    expect(said({ overturns: ["c"] })).toBe("It can decide a and b, and overturn the standing of c.");
    expect(said({ decides: ["a"], overturns: ["c"], changed: 2, always: true })).toBe(
      "It decides a and overturns the standing of c, whatever comes of it.",
    );
    expect(said({ always: true, outcomes: 1 })).toBe(
      "If it ends as recorded, it decides a and b, and changes one claim besides; no other outcome is recorded.",
    );
  });

  test("one bit is one, and a cost that is no plain plural is told as a unit of cost", () => {
    expect([bitsOf("1"), bitsOf("0.4")]).toEqual(["1\u00a0bit", "0.4\u00a0bits"]);
    expect([unitOfCost("days"), unitOfCost("pounds sterling")]).toEqual([
      "day",
      "unit of cost, in pounds sterling",
    ]);
  });
});
