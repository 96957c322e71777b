import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { build } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { prepared } from "../../../src/link/edit/prepare.ts";
import { edited } from "../../../src/base/text/edit.ts";
import type { WrittenMap } from "../../../src/read/edit/written.ts";
import { writtenOf } from "../../../src/read/edit/written.ts";
import { textsAt, withWritten, writtenAt } from "../../../src/show/desk/workbench/draft/draft.ts";
import { afterSeeing, looksOf } from "../../../src/show/desk/workbench/draft/looks.ts";
import { recordOf, savingOf } from "../../../src/show/desk/workbench/draft/record.ts";
import { benchOver, demo, draftWith, selections } from "./workbench-cases.ts";

const spacingOf = (gaps: WrittenMap): WrittenMap => ({ plugin: "spacing", inputs: { gaps } });
const runs = { numRuns: 10 };

describe("what the workbench says is in and left out", () => {
  test("is what the derivation takes when it stands in a file, for any selection", () => {
    const bench = benchOver(demo);
    bench.computing.on = false;
    fc.assert(
      fc.property(selections, (selection) => {
        const draft = draftWith(spacingOf(selection));
        const page = bench.page({ draft });
        const text = JSON.stringify({ derivations: [recordOf(draft, "mine", 1)] });
        const { model } = build([...demo, { path: "mine.yaml", text }], plugins, emptyMemo());
        const derived = model?.derivations.byId.get("mine");
        const [gaps] = page.inputs;
        const taken = gaps?.lines.filter((line) => line.why === null).map((line) => line.id);
        const left = gaps?.lines.flatMap((line) =>
          line.why === null ? [] : [`${line.id}: ${inEnglish(line.why)}`],
        );
        expect(taken).toEqual(derived?.used);
        expect(left?.toSorted()).toEqual(
          derived?.leftOut.map(({ id, why }) => `${id}: ${inEnglish(why)}`).toSorted(),
        );
        expect(gaps?.counts).toEqual({ taken: taken?.length, left: left?.length, withheld: 0 });
      }),
      runs,
    );
  });

  test("of two inputs each is counted by itself, and what finds no counterpart is left out of its own", () => {
    const bench = benchOver(demo);
    const page = bench.whole({
      draft: draftWith({
        plugin: "scaling",
        inputs: {
          larger: { of: "ring-b", dimension: "post-hole depth", from: "marrack-1999" },
          smaller: { of: "ring-a", dimension: "post-hole depth", from: "marrack-1999" },
        },
      }),
    });
    const derived = bench.tried.at(-1)?.derived;
    expect(page.inputs.map((one) => one.name)).toEqual(["larger", "smaller"]);
    expect(page.inputs.flatMap((one) => one.lines.filter((line) => line.why === null)).length).toBe(
      derived?.used.length,
    );
    const alone = page.inputs.flatMap((one) =>
      one.lines.filter((line) => line.why !== null && inEnglish(line.why) === "no counterpart"),
    );
    expect(alone.map((line) => line.id).toSorted()).toEqual(
      derived?.leftOut.flatMap(({ id, why }) => (inEnglish(why) === "no counterpart" ? [id] : [])).toSorted(),
    );
    expect(alone.length).toBeGreaterThan(0);
    expect(page.pairs?.length).toBe(derived?.run?.inputs["larger"]?.length);
  });

  test("a setting that cannot be read hides nothing of what is selected", () => {
    const bench = benchOver(demo);
    const inputs = { values: { of: "ring-a", dimension: "gap" } };
    const good = bench.page({ draft: draftWith({ plugin: "unit-fit", inputs }) });
    const bad = bench.page({
      draft: draftWith({ plugin: "unit-fit", inputs, parameters: { low: "3 apples" } }),
    });
    expect(bad.inputs[0]?.counts).toEqual(good.inputs[0]?.counts);
    expect(good.inputs[0]?.counts.taken).toBeGreaterThan(5);
    expect(inEnglish(bad.settings.find((one) => one.name === "low")?.understood.problem ?? "")).toContain(
      "apples",
    );
    expect(bad.number?.status).toBe("failed");
  });
});

test("a draft put into a file by the desk, and read back, is the same derivation", () => {
  const { model } = benchOver(demo);
  const files = new Map(demo.map(({ path, text }) => [path, text]));
  fc.assert(
    fc.property(selections, fc.constantFrom("< 0.01", "within 0.2..0.4", "<"), (selection, asks) => {
      const draft = draftWith({
        ...spacingOf(selection),
        text: "Gaps: of a row, #2 of > 3",
        "bears-on": [{ claim: "spacing-regular", supports: { p: asks } }],
      });
      const done = prepared({ graph: model.graph, files }, savingOf(draft, "mine", 3));
      if (!("changes" in done)) throw new Error(JSON.stringify(done));
      expect(done.made).toEqual(["mine"]);
      const after = done.changes.reduce(
        (all, change) =>
          all.map((file) =>
            file.path === change.file ? { ...file, text: edited(file.text, change.edits) } : file,
          ),
        demo,
      );
      const read = build(after, plugins, emptyMemo()).model?.graph.records.get("mine");
      expect(read && writtenOf(read.node)).toEqual(recordOf(draft, "mine", 3));
    }),
    runs,
  );
});

describe("looks", () => {
  test("never fall, whatever is seen and in whatever order, and count each setting once", () => {
    const keys = fc.array(fc.constantFrom("a", "b", "c", "d"), { maxLength: 12 });
    fc.assert(
      fc.property(keys, fc.nat(4), (seen, before) => {
        let draft = { ...draftWith({}), looksBefore: before };
        let looks = looksOf(draft);
        for (const key of seen) {
          draft = afterSeeing(draft, key);
          expect(looksOf(draft)).toBeGreaterThanOrEqual(looks);
          looks = looksOf(draft);
        }
        expect(looks).toBe(Math.max(1, before + new Set(seen).size));
      }),
    );
  });

  test("rise with another selection, parameter or limit, and not with another claim", () => {
    const bench = benchOver(demo);
    const values = (more: WrittenMap, gaps: WrittenMap = { of: "ring-b", dimension: "gap" }): WrittenMap => ({
      ...spacingOf(gaps),
      ...more,
    });
    let draft = draftWith(values({}));
    const see = (next: WrittenMap): number => {
      draft = { ...draft, values: next };
      const page = bench.whole({ draft });
      expect(page.number?.status).toBe("computed");
      expect(bench.tried.at(-1)?.record?.values.looks ?? 1).toBe(page.looks);
      if (page.seen === null) throw new Error("nothing was seen");
      draft = afterSeeing(draft, page.seen);
      expect(looksOf(draft)).toBe(page.looks);
      return page.looks;
    };
    const bears = (claim: string, p: string): WrittenMap => ({ "bears-on": [{ claim, supports: { p } }] });
    expect(see(values({}))).toBe(1);
    expect(see(values({}, { of: ["ring-b"], dimension: "gap" }))).toBe(1);
    expect(see(values(bears("plan-doubled", "< 0.01")))).toBe(2);
    expect(see(values(bears("posts-doubled", "< 0.01")))).toBe(2);
    expect(see(values(bears("posts-doubled", "< 0.05")))).toBe(3);
    expect(see(values({ ...bears("posts-doubled", "< 0.05"), parameters: { draws: "500" } }))).toBe(4);
    expect(see(values({}, { of: "ring-a", dimension: "gap" }))).toBe(5);
    expect(see(values({}))).toBe(5);
  });

  test("of a new one come after those that the corpus has counted at the same claim by the same method", () => {
    const bench = benchOver(demo);
    const bearsOn = (claim: string): WrittenMap => ({ "bears-on": [{ claim, supports: { p: "< 0.01" } }] });
    const looksAt = (values: WrittenMap): number => bench.whole({ draft: draftWith(values) }).looks;
    const spaced = spacingOf({ of: "ring-b", dimension: "gap" });
    // The demo has three spacings for the one claim, one for the other, and none for the third.
    expect(looksAt({ ...spaced, ...bearsOn("spacing-regular") })).toBe(4);
    expect(bench.tried.at(-1)?.record?.values.looks).toBe(4);
    expect(looksAt({ ...spaced, ...bearsOn("same-rhythm") })).toBe(2);
    expect(looksAt({ ...spaced, ...bearsOn("plan-doubled") })).toBe(1);
    // Two unit fits of the rings, each of which counts both.
    const fitted = (plugin: string): WrittenMap => ({
      plugin,
      inputs: { values: { of: "ring-b", dimension: "diameter" } },
      parameters: { unit: "down-pace" },
      ...bearsOn("rings-in-paces"),
    });
    expect(bench.page({ draft: draftWith(fitted("unit-fit")) }).looks).toBe(3);
    expect(bench.tried.at(-1)?.record?.values.looks).toBe(3);
    expect(bench.page({ draft: draftWith(fitted("spacing")) }).looks).toBe(1);
  });

  test("of a derivation that is changed begin with its own, its recorded setting among them", () => {
    const bench = benchOver(demo);
    const page = bench.whole({ of: "ring-unit" });
    expect([page.looks, looksOf(page.draft)]).toEqual([2, 2]);
    const other = withWritten(page.draft.values, ["inputs", "values", "of"], "ring-a");
    expect(bench.whole({ of: "ring-unit", draft: { ...page.draft, values: other } }).looks).toBe(3);
  });
});

test("another year is no other setting: what is seen of it counts as a look at the record as it is", () => {
  const memo = emptyMemo();
  const now = benchOver(demo, plugins, {}, memo);
  const then = benchOver(demo, plugins, { asOf: 1970 }, memo);
  const spaced = draftWith(spacingOf({ of: "ring-b", dimension: "gap" }));
  const [one, other] = [now.whole({ draft: spaced }), then.whole({ draft: spaced })];
  expect([one.number?.status, other.number?.status]).toEqual(["computed", "computed"]);
  expect(other.inputs[0]?.counts).not.toEqual(one.inputs[0]?.counts);
  expect(other.seen).toBe(one.seen);
  expect(then.page({ of: "outer-spacing" }).draft.seen).toEqual(now.page({ of: "outer-spacing" }).draft.seen);
});

test("fields are found, changed and taken away where they stand", () => {
  const values: WrittenMap = { plugin: "spacing", inputs: { gaps: { of: ["a", "b"] } } };
  expect(textsAt(values, ["inputs", "gaps", "of"])).toEqual(["a", "b"]);
  expect(writtenAt(values, ["inputs", "gaps", "constructor"])).toBe(undefined);
  const more = withWritten(values, ["bears-on", 0], { claim: "c" });
  const asked = withWritten(more, ["bears-on", 0, "supports"], { p: "< 0.01" });
  expect(asked["bears-on"]).toEqual([{ claim: "c", supports: { p: "< 0.01" } }]);
  expect(withWritten(asked, ["bears-on", 0], null)["bears-on"]).toEqual([]);
  expect(withWritten(asked, ["plugin"], null)).toEqual({
    inputs: values["inputs"],
    "bears-on": asked["bears-on"],
  });
});
