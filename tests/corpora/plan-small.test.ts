import { expect, test } from "vitest";
import { plugins } from "../../plugins/index.ts";
import type { SourceFile } from "../../src/build.ts";
import { planText } from "../../src/cli/print/plan.ts";
import { planReport } from "../../src/show/plan/report.ts";
import { reportOf } from "../../src/show/report/report.ts";
import { planned, recordedIn } from "./planned.ts";

const corpus = (records: string, settings = ""): readonly SourceFile[] => [
  { path: "corpus.yaml", text: `title: A corpus\n${settings}` },
  { path: "records.yaml", text: records },
];

const rivals = `
artefacts: [{ id: post, name: A post, held-at: the store }]
observations: [{ id: soot, of: post, text: There is soot., basis: report }]
claims: [{ id: hearth, text: It was a hearth. }, { id: lamp, text: It was a lamp. }]
arguments:
  - { id: a, because: soot, therefore: hearth }
  - { id: b, because: soot, therefore: lamp }
`;
const question = (prior: string): string =>
  `questions: [{ id: what, text: Hearth or lamp?, answers: [hearth, lamp]${prior} }]\n`;
const look = (outcomes: string): string =>
  `examinations: [{ id: look, of: [post], method: a look, outcomes: [${outcomes}] }]\n`;

test.each([
  ["", "{ id: y, text: Y., probability: 1 }", { why: "no-prior" }],
  [", prior: { hearth: 1, lamp: 1 }", "{ id: y, text: Y. }", { why: "no-probabilities" }],
  [
    ", prior: { hearth: 1, lamp: 1 }",
    "{ id: y, text: Y., probability: { hearth: 0.5 } }, { id: n, text: N., probability: 0.5 }",
    { why: "answer-left-out", answer: "lamp" },
  ],
  [
    ", prior: { hearth: 1, lamp: 1 }",
    "{ id: y, text: Y., probability: { hearth: 0.5, lamp: 0.7 } }, { id: n, text: N., probability: 0.5 }",
    { why: "not-one", answer: "lamp", sum: 1.2 },
  ],
])("says why there is no gain: %s %s", async (prior, outcomes, expected) => {
  const { plan, model } = await planned(corpus(rivals + question(prior) + look(outcomes)));
  const { gain, noGain } = recordedIn(plan, "look");
  expect(gain).toBeNull();
  expect(noGain).toEqual(expected);
  expect(planText(model, plugins, plan, false).join("\n")).toMatch(/No gain is told: /);
});

test("a trip tells together what the published case of two examinations has, less than the sum", async () => {
  const looks = `examinations:
  - id: groove
    of: [post]
    method: measure the groove
    outcomes:
      - { id: y, text: Y., probability: { hearth: 0.9, lamp: 0.2 } }
      - { id: n, text: N., probability: { hearth: 0.1, lamp: 0.8 } }
  - id: pegs
    of: [post]
    method: look for pegs
    outcomes:
      - { id: y, text: Y., probability: { hearth: 0.6, lamp: 0.5 } }
      - { id: n, text: N., probability: { hearth: 0.4, lamp: 0.5 } }
`;
  const { plan, model } = await planned(corpus(rivals + question(", prior: { hearth: 1, lamp: 1 }") + looks));
  // Case J3-joint of tests/published/check-values.json.
  expect(plan.trips[0]?.together).toMatchObject({ question: "what", examinations: ["groove", "pegs"] });
  expect(plan.trips[0]?.together?.bits).toBeCloseTo(0.4010055924226371, 9);
  expect(plan.trips[0]?.together?.sum).toBeCloseTo(0.40461176650996034, 9);
  const text = planText(model, plugins, plan, false).join("\n");
  expect(text).toContain("2 of them together: 0.401\u00a0bits");
});

test("an examination that tells nothing apart is idle; of rivals nobody separates the plan speaks first", async () => {
  const idle = "{ id: y, text: Y., sees: [{ feature: soot }] }, { id: n, text: N. }";
  const { plan, model } = await planned(corpus(rivals + question("") + look(idle)));
  expect(recordedIn(plan, "look")).toMatchObject({ idle: true, decides: [], changed: [] });
  expect(plan.contest).toMatchObject({
    set: [],
    undecided: {
      pairs: [{ answers: ["hearth", "lamp"], proposed: [] }],
      answers: [{ answer: "hearth" }, { answer: "lamp" }],
    },
  });
  const text = planText(model, plugins, plan, false).join("\n");
  expect(text.indexOf("between “It was a hearth” and “It was a lamp”")).toBeLessThan(text.indexOf("Ranked by"));
  expect(text).toContain("Nothing it can show changes a standing.");
});

test("of trips, only those that are expected to tell something count together", async () => {
  const looks = (second: string): string => `examinations:
  - id: groove
    of: [post]
    method: measure the groove
    outcomes:
      - { id: y, text: Y., probability: { hearth: 0.9, lamp: 0.2 } }
      - { id: n, text: N., probability: { hearth: 0.1, lamp: 0.8 } }
  - id: pegs
    of: [post]
    method: look for pegs
    outcomes: [{ id: y, text: Y., probability: ${second} }, { id: n, text: N., probability: 0.7 }]
`;
  const known = rivals + question(", prior: { hearth: 1, lamp: 2 }");
  const { plan, model } = await planned(corpus(known + looks("0.3"), "costs-in: pounds sterling\n"));
  expect(recordedIn(plan, "pegs").gain?.bits).toBe(0);
  expect(plan.trips[0]?.together).toBeNull();
  const text = planText(model, plugins, plan, false).join("\n");
  expect(text).toContain("No gain is expected about “Hearth or lamp?”: what it can show is as probable");
  expect(text).not.toContain("of them together");
});

test("what does the same whatever it shows tells no rivals apart", async () => {
  const [same, other] = [
    "{ id: y, text: Y., therefore: hearth, against: b }, { id: n, text: N., therefore: hearth, against: b }",
    "{ id: y, text: Y., against: b }, { id: n, text: N., against: a }",
  ];
  const both = `examinations:
  - { id: look, of: [post], method: a look, outcomes: [${same}] }
  - { id: later, of: [post], method: a later look, cost: 4, outcomes: [${other}] }
`;
  const { plan, model } = await planned(corpus(rivals + question("") + both));
  expect(plan.recorded.map((one) => [one.examination.id, one.idle])).toEqual([
    ["later", false],
    ["look", true],
  ]);
  expect(recordedIn(plan, "look").decides).toEqual(["hearth", "lamp"]);
  expect(plan.contest.set).toEqual(["later"]);
  expect(plan.contest.pairs).toEqual([{ answers: ["hearth", "lamp"], by: ["later"] }]);
  expect(planText(model, plugins, plan, false).join("\n")).toContain(
    "The smallest set that tells the one open pair of rivals apart (4\u00a0days): A later look.",
  );
  const alone = await planned(corpus(rivals + question("") + look(same)));
  expect(alone.plan.contest.undecided.pairs).toMatchObject([{ answers: ["hearth", "lamp"] }]);
  expect(planText(alone.model, plugins, alone.plan, false)).toContain(
    "Nothing recorded tells the one open pair of rivals apart.",
  );
});

test("a corpus without examinations has a plan of what it suggests itself", async () => {
  const { plan, model } = await planned(corpus(rivals + question("")));
  expect(plan.recorded).toEqual([]);
  expect(plan.trips).toEqual([]);
  expect(plan.proposed.map((one) => [one.examination.id, one.reason?.kind])).toEqual([
    ["look-again:soot", "second-hand"],
  ]);
  expect(plan.proposed[0]?.decides).toEqual(["hearth", "lamp"]);
  expect(plan.contest.undecided.answers[0]).toEqual({ answer: "hearth", proposed: ["look-again:soot"] });
  expect(planText(model, plugins, plan, false).join("\n")).toContain("No examination is recorded");
});

test("nothing withheld is in a plan, and an examination of what is withheld is none", async () => {
  const secret = `
artefacts: [{ id: post, name: A post }, { id: spring, name: The hidden spring, access: { permit: the miller } }]
observations:
  - { id: soot, of: post, text: There is soot. }
  - { id: wet, of: spring, text: The hidden spring is wet. }
  - { id: both, of: [post, spring], text: They face each other., basis: report }
claims: [{ id: hearth, text: It was a hearth. }, { id: masked, text: The masked one. }]
arguments:
  - { id: a, because: [soot, both], therefore: hearth }
  - { id: b, because: soot, therefore: masked }
  - { id: c, because: wet, against: soot }
questions: [{ id: what, text: What?, answers: [hearth, masked], prior: { hearth: 1, masked: 1 } }]
examinations:
  - { id: dip, of: [spring], method: a dip, outcomes: [{ id: y, text: Y., against: [soot] }] }
  - id: look
    of: [post, spring]
    method: a look
    outcomes:
      - { id: y, text: Y., therefore: [masked, hearth], against: [wet], probability: { hearth: 1, masked: 0 } }
      - { id: n, text: N., probability: { hearth: 0, masked: 1 } }
`;
  const { plan, model } = await planned(corpus(secret, "withhold: [spring, masked]\n"));
  expect(plan.recorded.map((one) => one.examination.id)).toEqual(["look"]);
  expect(recordedIn(plan, "look").gain).toMatchObject({ bits: 1, prior: new Map([["hearth", 0.5]]) });
  const whole = JSON.stringify(plan, (_, value: unknown) => (value instanceof Map ? [...value] : value));
  const printed = planText(model, plugins, plan, true).join("\n");
  const report = JSON.stringify(reportOf(model, [], new Map(), planReport(plan)));
  for (const text of [whole, printed, report])
    for (const word of ["spring", "masked", "wet", "miller", "dip"]) expect(text, word).not.toContain(word);
  expect(plan.proposed.map((one) => one.examination.id)).toContain("look-again:both");
});
