import fc from "fast-check";
import { expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { build, compute } from "../../../src/build.ts";
import type { Memo, SourceFile } from "../../../src/build.ts";
import type { Plugin } from "../../../src/plugin.ts";
import { casePlugins } from "../../oracle/random-corpus.ts";

const taken = ["a", "b", "c"];

/** One, and what it takes of others besides. */
const total: Plugin = {
  ...(casePlugins[0] as Plugin),
  id: "total",
  inputs: [],
  parameters: taken.map((name) => ({ name, kind: "number", doc: "Another number." })),
  compute: (_, settings) => {
    const value = Object.values(settings).reduce(
      (sum, one) => sum + (one?.kind === "number" ? one.value : 0),
      1,
    );
    return { numbers: { p: { value, low: null, high: null } }, leftOut: [], warnings: [], data: null };
  },
};

/** What each of some derivations takes, by its place. */
type Taking = readonly (readonly number[])[];

/** The file of some of the derivations, in this order. */
const fileOf = (path: string, taking: Taking, places: readonly number[]): SourceFile => ({
  path,
  text: JSON.stringify({
    derivations: places.map((at) => ({
      id: `d${at}`,
      plugin: "total",
      inputs: {},
      parameters: Object.fromEntries(
        (taking[at] ?? []).map((other, n) => [taken[n] ?? "", { number: `d${other}.p` }]),
      ),
    })),
  }),
});

const settings = { path: "corpus.yaml", text: "title: Numbers\n" };

/** The number of each derivation, null where there is none, and what is said of them, in an order of its own. */
function told(files: readonly SourceFile[]): {
  readonly numbers: Readonly<Record<string, number | null>>;
  readonly why: readonly string[];
} {
  const memo: Memo = { read: new Map(), compute: new Map() };
  for (;;) {
    const { model, findings } = build([settings, ...files], [total], memo);
    if (!model) throw new Error("no model");
    for (const run of model.missing)
      memo.compute.set(
        run.key,
        compute(run, [total], () => undefined),
      );
    if (model.missing.length > 0) continue;
    const { byId } = model.derivations;
    return {
      numbers: Object.fromEntries([...byId].map(([id, { numbers }]) => [id, numbers["p"]?.value ?? null])),
      why: findings
        .map(({ rule, about, message }) => `${rule} ${about.toSorted().join()}: ${inEnglish(message)}`)
        .toSorted(),
    };
  }
}

/** What each comes to: nothing for one that leans on itself in the end. */
function totals(taking: Taking): Readonly<Record<string, number | null>> {
  const of = (at: number, above: readonly number[]): number | null => {
    if (above.includes(at)) return null;
    const parts = [...new Set(taking[at])].map((other) => of(other, [...above, at]));
    return parts.includes(null) ? null : parts.reduce<number>((sum, one) => sum + (one ?? 0), 1);
  };
  return Object.fromEntries(taking.map((_, at) => [`d${at}`, of(at, [])]));
}

const size = 6;
const places = [...Array(size).keys()];
const oneTaking = fc.array(fc.nat(size - 1), { maxLength: 3 }).map((all) => [...new Set(all)]);

test("what leans on itself has no number, all else has, and the order of records and files says nothing", () => {
  let circles = 0;
  const order = fc.shuffledSubarray(places, { minLength: size, maxLength: size });
  fc.assert(
    fc.property(
      fc.array(oneTaking, { minLength: size, maxLength: size }),
      order,
      fc.nat(size),
      (taking, by, cut) => {
        const one = told([fileOf("a.yaml", taking, places)]);
        expect(one.numbers).toEqual(totals(taking));
        const files = [
          fileOf("b.yaml", taking, by.slice(0, cut)),
          fileOf("a.yaml", taking, by.slice(cut)),
        ] as const;
        expect(told(files)).toEqual(one);
        expect(told(files.toReversed())).toEqual(one);
        if (Object.values(one.numbers).includes(null)) circles++;
      },
    ),
    { numRuns: 30, seed: 5 },
  );
  expect(circles).toBeGreaterThan(8);
});

test("a long row of numbers beside a circle is no circle, whichever is come to first", () => {
  const row = 250;
  // The first takes the row and the second, and the second the first: a circle; the row ends in one that takes nothing.
  const ofRow = Array.from({ length: row }, (_, n) => (n === row - 1 ? [] : [n + 3]));
  const ended = {
    path: "z.yaml",
    text: JSON.stringify({ derivations: [{ id: `d${row + 1}`, plugin: "no-such", inputs: {} }] }),
  };
  for (const first of [
    [1, 2],
    [2, 1],
  ]) {
    const { numbers, why } = told([
      fileOf("a.yaml", [first, [0], ...ofRow], [...Array(row + 1).keys()]),
      ended,
    ]);
    expect(Object.keys(numbers).length).toBe(row + 2);
    expect(why.filter((one) => one.includes("Unknown plug-in")).length).toBeGreaterThanOrEqual(row);
    expect(why.filter((one) => /circle|lean on/u.test(one)).length).toBeLessThanOrEqual(1);
  }
});
