import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { ClaimGraph } from "../../../src/judge/solver/claim-graph.ts";
import type { Framework } from "../../../src/judge/solver/framework.ts";
import { standpointsOf } from "../../../src/judge/standpoints/standpoints.ts";
import { filesOf, randomCase } from "../../oracle/random-corpus.ts";
import { regularModels, together } from "./standpoint-cases.ts";
import { modelOf } from "../../oracle/computed-model.ts";
import {
  claimGraphCorpus,
  frameworkCorpus,
  multiplied,
  multipliedIds,
  pairsCorpus,
} from "./standpoint-corpora.ts";

const published = <One>(name: string): readonly One[] =>
  JSON.parse(readFileSync(new URL(`../../published/${name}`, import.meta.url), "utf8")).cases;

type FrameworkCase = Framework & { readonly id: string; readonly preferred: readonly (readonly string[])[] };
type GraphCase = {
  readonly id: string;
  readonly theory: ClaimGraph;
  readonly expected: { readonly preferredClaimSets: readonly (readonly string[])[] };
};

const asSet = (sets: readonly (readonly string[])[]): readonly string[] =>
  sets.map((set) => [...set].sort().join(" ")).sort();

describe("published frameworks, put into a corpus: the product of the components are the preferred extensions", () => {
  const cases = published<FrameworkCase>("argument-frameworks.json");
  test.each(cases.filter((one) => one.arguments.length > 0))("$id", (one) => {
    const model = modelOf(frameworkCorpus(one));
    const found = standpointsOf(model.graph, model.judgement);
    expect(found.exact).toBe(true);
    expect(found.count).toBe(BigInt(one.preferred.length));
    const known = multipliedIds(model, found);
    const names = new Set(one.arguments);
    const sets = multiplied(model, found).map(({ holds }) => holds.filter((id) => names.has(id)));
    expect(new Set(asSet(sets)).size).toBe(one.preferred.length);
    expect(asSet(sets)).toEqual(asSet(one.preferred.map((set) => set.filter(known))));
  });
});

describe("published claim graphs, put into a corpus: the claims that hold together are those published", () => {
  test.each(published<GraphCase>("claim-graphs.json"))("$id", ({ theory, expected }) => {
    const model = modelOf(claimGraphCorpus(theory));
    const found = standpointsOf(model.graph, model.judgement);
    const known = multipliedIds(model, found);
    const claims = new Set(theory.claims);
    const sets = multiplied(model, found).map(({ holds }) => holds.filter((id) => claims.has(id)));
    const published = expected.preferredClaimSets.map((set) => set.filter(known));
    expect([...new Set(asSet(sets))]).toEqual([...new Set(asSet(published))]);
    for (const { claim, inAll, inSome } of found.joint) {
      expect(inAll).toBe(expected.preferredClaimSets.every((set) => set.includes(claim)));
      expect(inSome).toBe(expected.preferredClaimSets.some((set) => set.includes(claim)));
    }
  });
});

const seeds = Array.from({ length: 300 }, (_, seed) => seed + 1001);

test("on random corpora the product of the components are the regular models that clingo finds", async () => {
  let several = 0;
  for (const seed of seeds) {
    const one = randomCase(seed);
    const model = modelOf(filesOf(one));
    const regular = await regularModels(one);
    const found = standpointsOf(model.graph, model.judgement);
    expect(found.count, `seed ${seed}`).toBe(BigInt(regular.length));
    const known = multipliedIds(model, found);
    const expected = regular.map(({ certain, possible }) => ({
      holds: [...certain].filter(known).sort(),
      open: [...possible].filter((id) => known(id) && !certain.has(id)).sort(),
    }));
    const got = multiplied(model, found).map(({ holds, open }) => ({
      holds: holds.filter(known),
      open: open.filter(known),
    }));
    const lines = (models: typeof got): readonly string[] => models.map((it) => JSON.stringify(it)).sort();
    expect(lines(got), `seed ${seed}`).toEqual(lines(expected));
    expect(new Set(lines(got)).size, `seed ${seed}`).toBe(regular.length);
    if (regular.length > 1) several++;
    const accepted = found.components.flatMap((component) => [...component.accepted]);
    for (const [claim, { inAll, inSome }] of [
      ...accepted,
      ...found.joint.map((it) => [it.claim, it] as const),
    ]) {
      expect(inAll, `seed ${seed}, ${claim}`).toBe(regular.every(({ certain }) => certain.has(claim)));
      expect(inSome, `seed ${seed}, ${claim}`).toBe(regular.some(({ certain }) => certain.has(claim)));
    }
  }
  process.stdout.write(`Of ${seeds.length} corpora ${several} have several standpoints.
`);
  expect(several).toBeGreaterThan(20);
});

test("so they are where two disputes stand side by side, and their ways are multiplied", async () => {
  const several = seeds.filter((seed) => {
    const { graph, judgement } = modelOf(filesOf(randomCase(seed)));
    return standpointsOf(graph, judgement).count > 1n;
  });
  let factored = 0;
  for (let at = 0; at + 1 < several.length; at += 2) {
    const one = together(randomCase(several[at] ?? 1), randomCase(several[at + 1] ?? 1));
    const model = modelOf(filesOf(one));
    const found = standpointsOf(model.graph, model.judgement);
    const regular = await regularModels(one);
    const known = multipliedIds(model, found);
    const claims = (ids: Iterable<string>): readonly string[] =>
      [...ids].filter((id) => /^[ac]\d+$/.test(id) && known(id));
    expect(asSet(multiplied(model, found).map(({ holds }) => claims(holds)))).toEqual(
      asSet(regular.map(({ certain }) => claims(certain))),
    );
    if (found.components.filter((it) => it.count > 1n).length > 1) factored++;
  }
  expect(factored).toBeGreaterThan(5);
});

describe("twelve pairs of rivals", () => {
  test("are twelve components, counted by multiplication", () => {
    const { graph, judgement } = modelOf(pairsCorpus(12, "apart"));
    const found = standpointsOf(graph, judgement);
    expect(found.count).toBe(4096n);
    expect(found.components.map((one) => one.alternatives.length)).toEqual(
      Array.from({ length: 12 }, () => 2),
    );
    expect(found.components[3]?.about).toEqual([{ kind: "rivals", between: ["left-3", "right-3"] }]);
  });

  test("stay so when a claim leans on all of them, and it is told of that claim alone", () => {
    const { graph, judgement } = modelOf(pairsCorpus(12, "joined"));
    const found = standpointsOf(graph, judgement);
    expect(found).toMatchObject({ count: 4096n, exact: true });
    expect(found.components.map((one) => one.alternatives.length)).toEqual(
      Array.from({ length: 12 }, () => 2),
    );
    const on = Array.from({ length: 12 }, (_, n) => n);
    expect(found.joint).toEqual([{ claim: "whole", on, inAll: false, inSome: true }]);
  });

  test("with a further choice that hangs on all of them are too many to lay out, and every claim is known all the same", () => {
    const { graph, judgement } = modelOf(pairsCorpus(12, "locked"));
    const found = standpointsOf(graph, judgement);
    const [component, ...others] = found.components;
    expect(others).toEqual([]);
    expect(component).toMatchObject({ exact: false, alternatives: [] });
    expect(found.exact).toBe(false);
    // 2 to the 12th, and two ways where all first ones hold.
    expect(found.count).toBeLessThan(4097n);
    expect(component?.about).toHaveLength(12);
    expect(component?.claims).toHaveLength(38);
    for (const claim of component?.claims ?? []) {
      const expected = { inAll: claim.startsWith("either-"), inSome: true };
      expect(component?.accepted.get(claim), claim).toEqual(expected);
    }
  });

  test("and where the effort does not suffice, it is said of each claim that it is not known", () => {
    const { graph, judgement } = modelOf(pairsCorpus(12, "locked"));
    const found = standpointsOf(graph, judgement, () => true, { effort: 0 });
    expect(found).toMatchObject({ count: 1n, exact: false });
    const acceptances = [...(found.components[0]?.accepted.values() ?? [])];
    expect(acceptances).toHaveLength(38);
    for (const one of acceptances) expect(one).toEqual({ inAll: null, inSome: null });
  });
});
