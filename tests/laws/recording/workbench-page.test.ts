import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { build } from "../../../src/build.ts";
import type { SourceFile } from "../../../src/build.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import type { Text } from "../../../src/base/text/said/said.ts";
import { prepared } from "../../../src/link/edit/prepare.ts";
import { edited } from "../../../src/base/text/edit.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import type { Plugin } from "../../../src/plugin.ts";
import type { WrittenMap } from "../../../src/read/edit/written.ts";
import { withWritten } from "../../../src/show/desk/workbench/draft/draft.ts";
import { proposedId } from "../../../src/show/desk/workbench/draft/proposed-id.ts";
import { recordOf, savingOf } from "../../../src/show/desk/workbench/draft/record.ts";
import { readUnder } from "../linking/supposed-model.ts";
import { benchOver, demo, draftWith } from "./workbench-cases.ts";

const gaps = [1.02, 0.99, 1.01, 0.98, 1.0, 1.03, 0.97, 1.01];

/** A row of pits; the last two are withheld, and one gap was measured twice, otherwise. */
const row = (more: object = {}): readonly SourceFile[] => [
  {
    path: "corpus.yaml",
    text: JSON.stringify({
      title: "Row",
      bibliography: "s.bib",
      withhold: ["row/pit-6", "row/pit-7", "hidden"],
    }),
  },
  {
    path: "s.bib",
    text: "@book{hale, title={Row}, author={Hale, Ada}, year=1990}\n@book{vane, title={Row}, author={Vane, Bo}, year=2001}",
  },
  {
    path: "row.yaml",
    text: JSON.stringify({
      artefacts: [
        { id: "row", name: "The pit row" },
        ...gaps.map((_, at) => ({ id: `row/pit-${at}`, name: at < 6 ? `Pit ${at}` : `Secret pit ${at}` })),
      ],
      measurements: [
        ...gaps.map((gap, at) => ({
          id: `gap-${at}`,
          of: `row/pit-${at}`,
          dimension: "gap",
          from: "hale",
          basis: "autopsy",
          value: `${gap.toFixed(2)} ± 0.02 m`,
        })),
        {
          id: "again",
          of: "row/pit-0",
          dimension: "gap",
          from: "vane",
          basis: "report",
          value: "1.40 ± 0.02 m",
        },
      ],
      claims: [
        { id: "evenly", text: "The pits were set out at even gaps." },
        { id: "hidden", text: "Nobody may read this." },
      ],
      derivations: [
        {
          id: "told",
          plugin: "spacing",
          inputs: { gaps: { of: "row", dimension: "gap", without: ["gap-7"] } },
        },
        {
          id: "open",
          plugin: "spacing",
          "x-mine": "kept",
          inputs: { gaps: { of: "row", dimension: "gap" } },
        },
      ],
      ...more,
    }),
  },
];

const spacing = (more: WrittenMap = {}): WrittenMap => ({
  plugin: "spacing",
  inputs: { gaps: { of: "row", dimension: "gap", prefer: "hale" } },
  ...more,
});
const forEvenly: WrittenMap = { "bears-on": [{ claim: "evenly", supports: { p: "< 0.01" } }] };

describe("what is withheld", () => {
  test("is counted and named nowhere", () => {
    const bench = benchOver(row());
    const page = bench.whole({ draft: draftWith(spacing(forEvenly)) });
    expect(page.number?.status).toBe("computed");
    expect(page.inputs[0]?.counts).toEqual({ taken: 6, left: 1, withheld: 2 });
    expect(bench.tried.at(-1)?.derived?.used.length).toBe(8);
    const { draft: _, ...told } = page;
    for (const name of ["Secret", "pit-6", "pit-7", "gap-6", "gap-7", "Nobody may read", "hidden"])
      expect(JSON.stringify(told)).not.toContain(name);
    const byHand = bench.page({ draft: draftWith({ plugin: "spacing", inputs: { gaps: [] } }) });
    expect(byHand.inputs[0]?.byHand.all).toBe(7);
    expect(JSON.stringify(byHand)).not.toContain("Secret");
  });

  test("closes the workbench to a derivation that names it, and to no other", () => {
    const bench = benchOver(row());
    const told = bench.page({ of: "told" });
    expect([told.closed, told.title, told.form]).toEqual(["withheld", null, null]);
    expect(JSON.stringify(told)).not.toContain("gap-7");
    expect(bench.page({ of: "open" }).closed).toBe(null);
    expect(bench.page({ of: "evenly" }).closed).toBe("unknown");
    expect(bench.page({ of: "nothing-so-called" }).closed).toBe("unknown");
  });
});

test("the standings it would change are those that change when it is saved", () => {
  const bench = benchOver(row());
  const draft = draftWith(spacing(forEvenly));
  const page = bench.whole({ draft });
  expect(page.changes.map(({ claim, was, is }) => [claim, was, is])).toEqual([
    ["evenly", "unsupported", "stands"],
  ]);
  expect(page.bearings[0]?.says).toBe("supports");
  const files = new Map(row().map(({ path, text }) => [path, text]));
  const done = prepared({ graph: bench.model.graph, files }, savingOf(draft, page.id, page.looks));
  if (!("changes" in done)) throw new Error(JSON.stringify(done));
  const [change] = done.changes;
  const after = row().map((file) =>
    file.path === change?.file ? { ...file, text: edited(file.text, change.edits) } : file,
  );
  const { model } = readUnder(after, plugins, emptyMemo());
  expect(model.judgement.standings.get("evenly")).toBe("stands");
  expect(bench.model.judgement.standings.get("evenly")).toBe("unsupported");
  expect(model.derivations.byId.get(page.id)?.numbers).toEqual(bench.tried.at(-1)?.derived?.numbers);
});

test("a draft in the place of a recorded derivation is tried in its place, and no other record sees it", () => {
  const bench = benchOver(row());
  const opened = bench.whole({ of: "open" });
  expect(opened.changes).toEqual([]);
  const other = withWritten(opened.draft.values, ["inputs", "gaps", "prefer"], "vane");
  const page = bench.whole({ of: "open", draft: { ...opened.draft, values: other } });
  const derivations = bench.tried.at(-1)?.derivations;
  expect(derivations?.byId.get("open")?.used).toContain("again");
  expect(derivations?.byId.get("told")?.used).toEqual(bench.model.derivations.byId.get("told")?.used);
  const saving = savingOf(page.draft, page.id, page.looks);
  if (saving.do !== "change") throw new Error("not a change");
  expect(saving.seen["inputs"]).toEqual({ gaps: { of: "row", dimension: "gap" } });
  expect(saving.values["inputs"]).toEqual({ gaps: { of: "row", dimension: "gap", prefer: "vane" } });
  expect(saving.values["x-mine"]).toBe("kept");
  expect(saving.values["looks"]).toBe("2");
});

test("a reading that another contradicts is marked, and ways to narrow are those that leave something", () => {
  const bench = benchOver(row());
  const field = bench.page({ draft: draftWith(spacing()) }).inputs[0];
  const findings = build(row(), plugins, emptyMemo()).findings;
  const about = findings.filter((one) => one.rule === "conflicting-measurements").flatMap((one) => one.about);
  expect(about).toContain("again");
  expect(field?.disputed.toSorted()).toEqual(["again", "gap-0"]);
  expect(field?.narrowing.bases).toEqual(["autopsy", "report"]);
  expect(field?.narrowing.sources.map((one) => one.value)).toEqual(["hale", "vane"]);
  expect(field?.dimensions).toEqual([{ value: "gap", text: "gap (7)" }]);
  const again = field?.lines.find((line) => line.id === "again");
  expect(told(again?.why)).toBe("another reading was taken");
});

const told = (text: Text | null | undefined): string => (text ? inEnglish(text) : "");

describe("settings", () => {
  const bench = benchOver(demo);
  const inputs = { values: { of: "ring-a", dimension: "gap" } };
  const page = (parameters: WrittenMap, typing: { at: string; text: string } | null = null) =>
    bench.page({ draft: draftWith({ plugin: "unit-fit", inputs, parameters }), typing });
  const understood = (name: string, text: string) =>
    page({}, { at: `parameters.${name}`, text }).settings.find((one) => one.name === name)?.understood;

  test("are told as they are read while they are typed, or what is wrong with them", () => {
    expect(understood("low", "30 cm")).toEqual({ as: "0.300 ± 0.003 m", problem: null });
    expect(understood("draws", "2000")).toEqual({ as: "2000", problem: null });
    expect(understood("low", "")).toEqual({ as: null, problem: null });
    expect(told(understood("low", "18,2 cm")?.problem)).toContain("18,2");
    expect(told(understood("unit", "down-pase")?.problem)).toContain("down-pace");
    expect(told(understood("draws", "3 m")?.problem)).toContain("a pure number");
  });

  test("what is being typed is not yet taken", () => {
    expect(page({ low: "30 cm" }, { at: "parameters.low", text: "40 cm" }).settings[1]).toMatchObject({
      written: "30 cm",
      understood: { as: "0.400 ± 0.003 m" },
    });
  });

  test("limits are read by the words that derivations are read by", () => {
    const limit = (text: string) => page({}, { at: "limit.q", text }).limit;
    expect(limit("< 30 cm")).toEqual({ as: "30 cm", problem: null });
    expect(limit("within 70..80 cm")?.as).toBe("70 cm to 80 cm");
    expect(told(limit("< ")?.problem)).toContain("expected one such as");
    expect(told(limit("about 3")?.problem)).toContain("about 3");
  });
});

test("every method is offered with what it needs, and each gives a number or says what is missing", () => {
  const bench = benchOver(demo);
  const { methods } = bench.page({});
  expect(methods.map((one) => one.id)).toEqual(plugins.map((one) => one.id));
  for (const one of methods) {
    expect(one.needs.length, one.id).toBeGreaterThan(0);
    const page = bench.page({ draft: draftWith({ plugin: one.id }) });
    expect(page.inputs.map(({ name }) => name)).toEqual(
      plugins.find(({ id }) => id === one.id)?.inputs.map(({ name }) => name),
    );
    expect([one.id, page.number?.status]).toEqual([one.id, "refused"]);
    expect(told(page.number?.why)).toContain("Missing");
  }
});

test("a stranger's plug-in is offered once it may run, and told of before", () => {
  const [first] = plugins as readonly [Plugin, ...Plugin[]];
  const guest: Plugin = { ...first, id: "guest-fit", guest: { hash: "0".repeat(64), trouble: null } };
  const files = [...row(), { path: "plugins/guest-fit.js", text: "export default {}" }];
  expect(benchOver(files).page({}).notAllowed).toEqual(["guest-fit"]);
  const allowed = benchOver(files, [...plugins, guest]).page({});
  expect(allowed.notAllowed).toEqual([]);
  expect(allowed.methods.at(-1)).toMatchObject({ id: "guest-fit", guest: true });
  const trouble: Plugin = { ...guest, guest: { hash: "0".repeat(64), trouble: "broken" } };
  const broken = benchOver(files, [...plugins, trouble]).page({});
  expect(broken.methods.map((one) => one.id)).not.toContain("guest-fit");
});

test("nothing of a draft that was stopped is asked to be computed", () => {
  const bench = benchOver(row());
  bench.computing.on = false;
  const draft = draftWith(spacing(forEvenly));
  bench.page({ draft });
  expect(bench.needed.length).toBeGreaterThan(0);
  bench.needed.length = 0;
  const stopped = bench.page({ draft: { ...draft, stopped: true } });
  expect([stopped.number?.status, bench.needed]).toEqual(["pending", []]);
  expect([stopped.changes, stopped.pending]).toEqual([[], 1]);
});

test("an id is proposed from what is selected, and is nobody else's", () => {
  const { model } = benchOver(demo);
  const values = (of: string | readonly string[], dimension: string): WrittenMap => ({
    plugin: "spacing",
    inputs: { gaps: { of, dimension } },
  });
  expect(proposedId(model.graph, values("ring-b", "gap"))).toBe("ring-b-gap-spacing");
  expect(proposedId(model.graph, values(["ring-a/post-07", "ring-b"], "Pfostenlochtiefe"))).toMatch(
    /^ring-a-post-07-ring-b[a-z-]*-spacing$/,
  );
  const bench = benchOver([
    ...demo,
    {
      path: "z.yaml",
      text: JSON.stringify({ derivations: [{ id: "ring-b-gap-spacing", ...values("ring-b", "gap") }] }),
    },
  ]);
  expect(proposedId(bench.model.graph, values("ring-b", "gap"))).toBe("ring-b-gap-spacing-2");
  const taken = bench.page({ draft: draftWith({ ...values("ring-b", "gap"), id: "ring-a" }) });
  expect([taken.id, taken.idProblem]).toEqual(["ring-a", "taken"]);
  expect(taken.inputs[0]?.counts.taken).toBeGreaterThan(0);
  expect(bench.page({ draft: draftWith({ id: "No Id" }) }).idProblem).toBe("bad");
});

test("what is not there yet is left out of the record, which reads as one types it", () => {
  const draft = draftWith({
    plugin: "scaling",
    text: "",
    parameters: { tolerance: "" },
    inputs: { pairs: [["a", "b"]], larger: { of: "" }, smaller: {} },
    "bears-on": [
      { claim: "c", supports: { p: "<", k: "within 1..2" }, disputes: [{ p: " < " }] },
      { claim: "" },
    ],
  });
  expect(Object.entries(recordOf(draft, "mine", 1))).toEqual([
    ["id", "mine"],
    ["plugin", "scaling"],
    ["inputs", { pairs: [["a", "b"]] }],
    ["bears-on", [{ claim: "c", supports: { k: "within 1..2" } }]],
  ]);
  expect(recordOf(draftWith({ plugin: "spacing" }), "mine", 4)).toMatchObject({ inputs: {}, looks: "4" });
});
