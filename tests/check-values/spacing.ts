import { randomFrom } from "../../src/plugin.ts";
import { compareCensored } from "../../plugins/spacing/two-rows/compare.ts";
import { periodogram, rayleigh } from "../../plugins/spacing/period/period.ts";
import { regularity } from "../../plugins/spacing/regularity.ts";
import { kaplanMeier } from "../../plugins/spacing/survival.ts";
import type { Gap, Survival } from "../../plugins/spacing/survival.ts";
import { overlapOf, turnbull } from "../../plugins/spacing/turnbull.ts";
import type { Methods } from "./case.ts";
import { orError } from "./unit-fit.ts";

interface Group {
  readonly t: readonly number[];
  readonly d: readonly number[];
}

interface Input {
  readonly gaps: readonly number[];
  readonly observed: readonly number[];
  readonly positions: readonly number[];
  readonly period: number;
  readonly minPeriod: number;
  readonly maxPeriod: number;
  readonly wMin?: number;
  readonly B?: number;
  readonly a: Group & readonly [number, number];
  readonly b: Group & readonly [number, number];
  readonly lo: readonly number[];
  readonly hi: readonly (number | null)[];
}

const gapsOf = ({ t, d }: Group): readonly Gap[] => t.map((size, i) => ({ size, observed: Boolean(d[i]) }));

const survivalOf = (s: Survival) => ({
  time: s.times,
  atRisk: s.atRisk,
  events: s.events,
  surv: s.shares,
  seGreenwood: s.errors,
  median: s.median,
  rmean: s.restrictedMean,
});

const random = () => randomFrom(20_261_125);

const methods: Readonly<Record<string, (input: Input) => unknown>> = {
  "spacing.regularity": ({ gaps, wMin, B = 200_000 }) =>
    orError(regularity(gaps, random(), B, wMin), (r) => ({ ...r, pRegular_exact: r.exact })),
  "spacing.rayleigh": ({ positions, period }) =>
    orError(rayleigh(positions, period), (r) => ({
      n: r.n,
      Rbar: r.length,
      Z: r.z,
      // The cases give the phase as a place along the period.
      phase: (r.phase * period) / (2 * Math.PI),
      p_seriesR: r.series,
      p_exact: r.exact,
      p_greenwoodDurand: r.greenwoodDurand,
    })),
  "spacing.periodogram": ({ positions, minPeriod, maxPeriod, B = 4000 }) =>
    orError(periodogram(positions, minPeriod, maxPeriod, random(), B), (r) => r),
  "spacing.kaplanMeier": ({ gaps, observed }) =>
    orError(kaplanMeier(gaps.map((size, i) => ({ size, observed: Boolean(observed[i]) }))), survivalOf),
  "spacing.compareCensored": ({ a, b }) => {
    const [first, second] = [gapsOf(a), gapsOf(b)];
    return orError(compareCensored(first, second, random(), 10_000), (r) => ({
      logRank: { chisq: r.logRank.chisq, p: r.logRank.p, obs: r.logRank.observed, exp: r.logRank.expected },
      petoPeto: r.petoPeto,
      gehan: {
        W: r.w,
        scores: r.scores,
        exactP: r.gehan.p,
        pLower: r.gehan.below,
        pUpper: r.gehan.above,
        nPerm: r.gehan.count,
      },
      gehanW: r.w,
      logRankScores: r.logRankScores,
      logRankExactP: r.logRankExact.p,
      kmA: orError(kaplanMeier(first), survivalOf),
      kmB: orError(kaplanMeier(second), survivalOf),
      smallestP: r.gehan.smallest,
    }));
  },
  "spacing.turnbull": ({ lo, hi }) =>
    orError(turnbull(lo.map((low, i) => ({ low, high: hi[i] ?? null }))), (r) => r),
  "spacing.intervalOverlap": ({ a, b }) =>
    orError(overlapOf(a, b), (r) => ({
      overlap: r.overlap,
      overlapLength: r.length,
      jaccard: r.jaccard,
      fractionOfA: r.shareOfA,
      fractionOfB: r.shareOfB,
      gap: r.gap,
      relation: r.relation,
      pAless_if_uniform: r.pLess,
      kNeeded: r.kNeeded,
    })),
};

/** The methods of `spacing`. */
export const spacing: Methods = Object.fromEntries(
  Object.entries(methods).map(([name, method]) => [name, (input: unknown) => method(input as Input)]),
);
