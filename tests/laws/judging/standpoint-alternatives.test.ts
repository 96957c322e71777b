import * as fc from "fast-check";
import { expect, test } from "vitest";
import type { Fit } from "../../../src/judge/standpoints/scholars/fit.ts";
import { standpointsOf } from "../../../src/judge/standpoints/standpoints.ts";
import type { Standpoints } from "../../../src/judge/standpoints/standpoints.ts";
import { fewest } from "../../../src/judge/standpoints/told/fewest.ts";
import { filesOf, randomCase } from "../../oracle/random-corpus.ts";
import { outspoken, present, regularModels } from "./standpoint-cases.ts";
import { modelOf } from "../../oracle/computed-model.ts";
import { pairsCorpus, rivalsCorpus } from "./standpoint-corpora.ts";

const seeds = Array.from({ length: 300 }, (_, seed) => seed + 1001);

test("where the ways are not laid out the solver says of each claim what laying them out says", () => {
  let asked = 0;
  const corpora = [
    ...seeds.map((seed) => filesOf(outspoken(seed))),
    ...seeds.slice(0, 100).map(rivalsCorpus),
    pairsCorpus(3, "joined"),
    pairsCorpus(3, "locked"),
  ];
  const acceptances = ({ components, joint }: Standpoints): readonly string[] => {
    const all = [
      ...components.flatMap((one) => [...one.accepted]),
      ...joint.map((one) => [one.claim, one] as const),
    ];
    return all.map(([claim, { inAll, inSome }]) => `${claim} ${inAll} ${inSome}`).sort();
  };
  const fitted = (fits: readonly Fit[]): readonly string[] =>
    fits.map((one) => `${one.scholar} ${one.but === null}`).sort();
  for (const [place, files] of corpora.entries()) {
    const { graph, judgement } = modelOf(files);
    const whole = standpointsOf(graph, judgement);
    const short = standpointsOf(graph, judgement, () => true, { limit: 1 });
    expect(acceptances(short), `corpus ${place}`).toEqual(acceptances(whole));
    expect(fitted(short.fits), `corpus ${place}`).toEqual(fitted(whole.fits));
    for (const component of short.components) {
      if (component.alternatives.length > 0) continue;
      asked += component.claims.length;
      const same = whole.components.find((one) => one.claims.join() === component.claims.join());
      if (!same) continue;
      const best = new Map<string, Fit>();
      for (const fit of same.alternatives.flatMap((one) => one.fits)) {
        if (best.get(fit.scholar)?.but !== null) best.set(fit.scholar, fit);
      }
      expect(fitted(component.fits), `corpus ${place}`).toEqual(fitted([...best.values()]));
    }
  }
  expect(asked).toBeGreaterThan(200);
});

test("each alternative is told by the fewest claims that no rival shares, by trying every set of claims", () => {
  const sizes = [0, 0, 0, 0, 0];
  const corpora = [
    ...seeds.slice(0, 150).map((seed) => filesOf(randomCase(seed))),
    ...seeds.map(rivalsCorpus),
  ];
  for (const files of corpora) {
    const { graph, judgement } = modelOf(files);
    for (const { alternatives, claims } of standpointsOf(graph, judgement).components) {
      const sets = claims.reduce<string[][]>((all, id) => [...all, ...all.map((set) => [...set, id])], [[]]);
      alternatives.forEach((own, place) => {
        const rivals = alternatives.filter((_, other) => other !== place);
        const apart = (ids: readonly string[]): boolean =>
          rivals.every((rival) => ids.some((id) => rival.fates.get(id) !== own.fates.get(id)));
        expect(apart(own.toldBy)).toBe(true);
        const byClaims = own.toldBy.filter((id) => claims.includes(id));
        const least = Math.min(...sets.filter(apart).map((set) => set.length));
        if (least === Infinity) expect(byClaims.length).toBeLessThan(own.toldBy.length);
        else expect(own.toldBy.length).toBe(least);
        sizes[own.toldBy.length] = (sizes[own.toldBy.length] ?? 0) + 1;
      });
    }
  }
  process.stdout.write(`Alternatives told by 0, 1, 2, 3, 4 things: ${sizes.join(", ")}.\n`);
  expect(Math.min(...sizes.slice(1, 4))).toBeGreaterThan(10);
});

test("the fewest numbers that meet every set are as few as trying every set of numbers finds", () => {
  const set = fc.uniqueArray(fc.nat({ max: 7 }), { minLength: 1, maxLength: 4 });
  fc.assert(
    fc.property(fc.array(set, { maxLength: 12 }), (sets) => {
      const meets = (ones: readonly number[]): boolean =>
        sets.every((each) => each.some((one) => ones.includes(one)));
      const got = fewest(sets, { left: 100_000 });
      const all = Array.from({ length: 256 }, (_, mask) =>
        [...Array(8).keys()].filter((bit) => (mask >> bit) & 1),
      );
      expect(meets(got)).toBe(true);
      expect(got.length).toBe(Math.min(...all.filter(meets).map((ones) => ones.length)));
      expect(meets(fewest(sets, { left: 0 }))).toBe(true);
    }),
    { numRuns: 500 },
  );
});

test("the published pairs of rivals are met by as few examinations as published", () => {
  // J6-hitting in methods J: one set for each pair of rival answers, the examinations that separate the pair.
  const sets = [
    [1, 2],
    [2, 3],
    [1, 3],
    [4, 3],
  ];
  const solutions = [
    [1, 3],
    [2, 3],
  ];
  expect(solutions).toContainEqual(fewest(sets, { left: 1000 }));
});

test("the scholars that fit an alternative, and a whole standpoint, are those found by looking at every regular model", async () => {
  let fits = 0;
  let nearly = 0;
  for (const seed of seeds.slice(0, 250)) {
    const one = outspoken(seed);
    const { graph, judgement } = modelOf(filesOf(one));
    const found = standpointsOf(graph, judgement);
    const regular = await regularModels(one);
    for (const scholar of ["s0", "s1"]) {
      const own = present(one, scholar);
      const misfits = (fate: (claim: string) => string, ones: typeof own): readonly string[] =>
        ones
          .filter(([claim, stance]) => fate(claim) !== (stance === "holds" ? "true" : "false"))
          .map(([claim]) => claim);
      const few = (lists: readonly (readonly string[])[], of: number): 0 | 1 | null => {
        const least = Math.min(...lists.map((list) => list.length));
        return of > 0 && least === 0 ? 0 : of > 1 && least === 1 ? 1 : null;
      };
      const got = (
        list: readonly { readonly scholar: string; readonly but: object | null }[],
      ): 0 | 1 | null => {
        const fit = list.find((it) => it.scholar === scholar);
        return fit ? (fit.but === null ? 0 : 1) : null;
      };
      const whole = regular.map((model) =>
        misfits(
          (claim) => (model.certain.has(claim) ? "true" : model.possible.has(claim) ? "open" : "false"),
          own,
        ),
      );
      expect(got(found.fits), `seed ${seed}, ${scholar}`).toBe(few(whole, own.length));
      for (const { claims, alternatives } of found.components) {
        const here = own.filter(([claim]) => claims.includes(claim));
        for (const { fates, fits: told } of alternatives) {
          const words = { stands: "true", open: "open", falls: "false" } as const;
          const list = misfits((claim) => words[fates.get(claim) ?? "falls"], here);
          const expected = few([list], here.length);
          expect(got(told), `seed ${seed}, ${scholar}`).toBe(expected);
          if (expected === 0) fits++;
          if (expected === 1) {
            nearly++;
            expect(told.find((it) => it.scholar === scholar)?.but?.claim).toBe(list[0]);
          }
        }
      }
    }
  }
  process.stdout.write(`${fits} fits, ${nearly} but for one position.\n`);
  expect(fits).toBeGreaterThan(20);
  expect(nearly).toBeGreaterThan(5);
});
