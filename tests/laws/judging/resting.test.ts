import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { build, compute } from "../../../src/build.ts";
import { derive } from "../../../src/derive/derive.ts";
import type { Lens } from "../../../src/derive/lens.ts";
import type { Outcome } from "../../../src/derive/run.ts";
import { judge } from "../../../src/judge/judge.ts";
import type { Judged } from "../../../src/judge/resting/judged.ts";
import { lossSets } from "../../../src/judge/resting/loss-sets.ts";
import type { LossSets } from "../../../src/judge/resting/loss-sets.ts";
import { restsOn } from "../../../src/judge/resting/rests-on.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { independenceOf } from "../../../src/judge/resting/lines/independence.ts";
import type { Uses } from "../../../src/judge/resting/lines/independence.ts";
import { link } from "../../../src/link/link.ts";
import type { Graph } from "../../../src/link/graph.ts";
import { readCorpus } from "../../../src/read/read.ts";
import { factored } from "../../../src/show/judged/resting/factored.ts";
import { restingPage } from "../../../src/show/judged/resting/page.ts";
import type { RestingPage } from "../../../src/show/judged/resting/page.ts";
import type { Piece } from "../../../src/show/pages/pieces.ts";
import { reportOf } from "../../../src/show/report/report.ts";
import { reportSchema } from "../../../src/show/report/schema.ts";
import { losable, losableFiles, losablePlugins } from "../../oracle/losable-corpus.ts";

const seeds = Array.from({ length: 160 }, (_, seed) => seed + 1);

function graphOf(seed: number): Graph {
  const reading = readCorpus(losableFiles(seed), new Map());
  if (!("settings" in reading)) throw new Error("no settings");
  return link(reading);
}

/** Standings under a lens, every number computed. */
function judgedUnder(graph: Graph, memo: Map<string, Outcome>, lens: Lens): Judged {
  for (;;) {
    const derivations = derive(graph, losablePlugins, memo, lens);
    if (derivations.missing.length === 0)
      return {
        graph,
        plugins: losablePlugins,
        memo,
        lens,
        derivations,
        judgement: judge(graph, derivations, lens),
      };
    computeAll(derivations.missing, memo);
  }
}

function computeAll(missing: readonly Parameters<typeof compute>[0][], memo: Map<string, Outcome>): void {
  for (const run of missing)
    memo.set(
      run.key,
      compute(run, losablePlugins, () => undefined),
    );
}

/** The loss sets, every number computed that they ask for; and how often they asked. */
function completed(judged: Judged, memo: Map<string, Outcome>, claim: string): LossSets | null {
  for (;;) {
    const found = lossSets(judged, claim);
    if (found === null || found.missing.length === 0) return found;
    computeAll(found.missing, memo);
  }
}

function subsets(size: number): readonly (readonly string[])[] {
  const all: string[][] = [];
  const add = (set: readonly string[], from: number): void => {
    if (set.length > 0) all.push([...set]);
    if (set.length < size) for (let at = from; at < losable.length; at++) add([...set, losable[at]!], at + 1);
  };
  add([], 0);
  return all;
}

const isWithin = (graph: Graph, part: string, whole: string): boolean =>
  part === whole || graph.withParts(whole).includes(part);

test("the sets of losses are those of brute force over all sets of at most three, in 160 random corpora", () => {
  const sizes = new Map<number, number>();
  for (const seed of seeds) {
    const graph = graphOf(seed);
    const memo = new Map<string, Outcome>();
    const judged = judgedUnder(graph, memo, {});
    const fallen = subsets(3).map((set) => ({
      set,
      standings: judgedUnder(graph, new Map(memo), { without: set }).judgement.standings,
    }));
    for (const { id } of graph.list("claims")) {
      const own = new Map<string, Outcome>();
      for (const [key, outcome] of memo) own.set(key, outcome);
      const found = completed({ ...judged, memo: own }, own, id);
      if (judged.judgement.standings.get(id) !== "stands") {
        expect(found, `seed ${seed}, ${id}`).toBeNull();
        continue;
      }
      const felling = fallen.filter(({ standings }) => standings.get(id) !== "stands").map(({ set }) => set);
      const least = felling.filter(
        (set) =>
          !felling.some(
            (other) =>
              other !== set &&
              other.length <= set.length &&
              other.every((one) => set.some((it) => isWithin(graph, one, it))),
          ),
      );
      const expected = least.map((set) => set.toSorted()).sort(bySize);
      expect(found?.sets.toSorted(bySize), `seed ${seed}, ${id}`).toEqual(expected);
      expect(found?.upTo).toBe(3);
      for (const { length } of expected) sizes.set(length, (sizes.get(length) ?? 0) + 1);
      const single = restsOn({ ...judged, memo: own }, [id]);
      expect(single.missing).toEqual([]);
      expect(single.restsOn.get(id)).toEqual(expected.flatMap((set) => (set.length === 1 ? set : [])));
    }
  }
  process.stdout.write(`Sets by size: ${JSON.stringify([...sizes])}.\n`);
  expect([...sizes.keys()].sort()).toEqual([1, 2, 3]);
});

function bySize(a: readonly string[], b: readonly string[]): number {
  return a.length - b.length || (a.join("\n") < b.join("\n") ? -1 : 1);
}

/** What is used for what among a few vertices, as likely to cross as not. */
const uses = fc
  .record({
    edges: fc.uniqueArray(fc.tuple(fc.integer({ min: 0, max: 7 }), fc.integer({ min: 0, max: 7 })), {
      maxLength: 18,
      selector: String,
    }),
    roots: fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1, maxLength: 5 }),
  })
  .map(({ edges, roots }) => ({
    edges: edges.map(([from, to]) => [`v${from}`, `v${to}`] as const),
    roots: roots.map((root) => `v${root}`),
    goal: "v0",
  }));

/** All sets of vertices but the goal without which no root leads to it, by trying every one. */
function cutsByForce({ edges, roots, goal }: Uses): readonly (readonly string[])[] {
  const vertices = [...new Set([...roots, ...edges.flat()])].filter((one) => one !== goal).sort();
  const cuts: string[][] = [];
  for (let kept = 0; kept < 2 ** vertices.length; kept++) {
    const cut = vertices.filter((_, place) => (kept & (1 << place)) !== 0);
    const reached = new Set(roots.filter((root) => !cut.includes(root)));
    for (const at of reached)
      for (const [from, to] of edges) if (from === at && at !== goal && !cut.includes(to)) reached.add(to);
    if (!reached.has(goal)) cuts.push(cut);
  }
  return cuts;
}

test("as many lines share nothing as vertices must be lost at least (Menger), by brute force", () => {
  fc.assert(
    fc.property(uses, (drawn) => {
      const found = independenceOf(drawn);
      const cuts = cutsByForce(drawn);
      const least = Math.min(...cuts.map((cut) => cut.length));
      expect(found.paths.length).toBe(least);
      const inner = found.paths.flatMap((path) => path.slice(0, -1));
      expect(new Set(inner).size).toBe(inner.length);
      for (const path of found.paths) {
        expect(drawn.roots).toContain(path[0]);
        expect(path.at(-1)).toBe(drawn.goal);
        path.slice(1).forEach((to, place) => expect(drawn.edges).toContainEqual([path[place], to]));
      }
      const smallest = cuts.filter((cut) => cut.length === least).sort(bySize);
      expect(found.minimumCuts).toEqual(least > 0 && least <= 3 ? smallest : []);
      expect(found.singlePoints).toEqual(least === 1 ? smallest.flat() : []);
      expect(found.paths.length).toBeLessThanOrEqual(found.rootsReaching.length);
    }),
    { numRuns: 400, seed: 7 },
  );
});

test("sets told together in one row are exactly the sets", () => {
  const sets = fc.uniqueArray(
    fc
      .uniqueArray(fc.constantFrom(..."abcdefg"), { minLength: 2, maxLength: 2 })
      .map((set) => set.toSorted()),
    { maxLength: 20, selector: String },
  );
  fc.assert(
    fc.property(sets, (given) => {
      const rows = factored(given);
      const spelled = rows.flatMap((row) =>
        row.reduce<string[][]>((all, list) => all.flatMap((set) => list.map((id) => [...set, id])), [[]]),
      );
      expect(spelled.map((set) => set.toSorted()).sort()).toEqual(given.map((set) => [...set]).sort());
    }),
    { numRuns: 300, seed: 7 },
  );
});

const kiln = fileURLToPath(new URL("../../corpora/lost", import.meta.url));

function pageOf(id: string): RestingPage {
  const memo = emptyMemo();
  const { model } = build(readCorpusFolder(kiln), losablePlugins, memo);
  if (!model) throw new Error("no model");
  const { page, missing } = restingPage(model, losablePlugins, memo.compute, id);
  expect(missing).toEqual([]);
  if (!page) throw new Error("no page");
  return page;
}

const plain = (pieces: readonly Piece[] | null): string => (pieces ?? []).map((one) => one.text).join("");

test("a claim with two lines takes two losses, told in one row", () => {
  const page = pageOf("fired-often");
  expect(inEnglish(page.gist ?? "")).toBe("No single loss ends it; two together do.");
  expect(page.together.map(plain)).toEqual([
    "one of the kiln floor, Ida Tarrant or Tarrant 1961, together with one of Kofi Osei, Osei 1984 or the waster heap",
  ]);
  expect(plain(page.lines)).toBe("Two lines lead to it that share nothing.");
  expect(page.yet).toBeNull();
});

test("where a step needs several premises, the lines are said to tell too much", () => {
  const page = pageOf("one-potter");
  expect(plain(page.lines)).toBe("Three lines lead to it that share nothing.");
  expect(plain(page.yet)).toBe("Yet the loss of the flue, Greta Lund or Lund 1998 alone ends it.");
  expect(page.sameAuthor.map((three) => three.map((one) => one.text))).toEqual([
    ["Lund 1998", "Lund 2003", "Greta Lund"],
  ]);
});

test("of what is withheld only that there is something", () => {
  const page = pageOf("ash-raked");
  expect(JSON.stringify(page)).not.toMatch(/orchard/i);
  expect(page.together.map(plain)).toEqual([
    "one of Greta Lund, Lund 2003 or something withheld, together with one of Kofi Osei, Osei 1984 or the waster heap",
  ]);
  const { model, findings } = build(
    readCorpusFolder(kiln),
    losablePlugins,
    emptyMemo(),
    {},
    { allRestsOn: true },
  );
  const report = reportOf(model, findings, new Map());
  expect(JSON.stringify(report)).not.toMatch(/orchard/i);
  expect(report.standings["ash-raked"]?.lossSets).toContainEqual(["osei", null]);
  expect(report.standings["ash-raked"]?.lines?.paths).toContainEqual([null, "lund-2003", null, "ash-raked"]);
  expect(reportSchema.parse(report)).toEqual(report);
});

test("a claim that answers no question, or does not stand, has no such page and costs nothing", () => {
  const memo = emptyMemo();
  const { model } = build(readCorpusFolder(kiln), losablePlugins, memo);
  for (const id of ["fired-once", "tarrant", "floor-relined"])
    expect(model && restingPage(model, losablePlugins, memo.compute, id)).toEqual({
      page: null,
      missing: [],
    });
});

test("sets wait for the numbers they hang on, and none is told before its parts are known", () => {
  let waited = 0;
  for (const seed of seeds.slice(0, 60)) {
    const graph = graphOf(seed);
    const memo = new Map<string, Outcome>();
    const judged = judgedUnder(graph, memo, {});
    for (const { id } of graph.list("claims")) {
      const early = lossSets(judged, id);
      const own = new Map(memo);
      const late = completed({ ...judged, memo: own }, own, id);
      if (!early || !late || early.missing.length === 0) continue;
      waited++;
      for (const set of early.sets) {
        if (!set.some((one) => graph.wholeOf.has(one) || graph.withParts(one).length > 1))
          expect(late.sets, `seed ${seed}, ${id}`).toContainEqual(set);
      }
    }
  }
  expect(waited).toBeGreaterThan(0);
});
