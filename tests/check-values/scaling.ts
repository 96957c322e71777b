import { allometry } from "../../plugins/scaling/allometry.ts";
import type { Line } from "../../plugins/scaling/allometry.ts";
import { oneFactor } from "../../plugins/scaling/one-factor.ts";
import { predictAllometric, predictIsometric } from "../../plugins/scaling/prediction.ts";
import { ratioOf, ratioOfIntervals } from "../../plugins/scaling/ratio.ts";
import type { Interval } from "../../plugins/scaling/ratio.ts";
import type { Methods } from "./case.ts";
import { orError } from "./unit-fit.ts";

interface Input {
  readonly a: number & Interval & readonly number[];
  readonly ua: number & readonly number[];
  readonly b: number & Interval & readonly number[];
  readonly ub: number & readonly number[];
  readonly conf?: number;
  readonly cov?: number;
  readonly tolerance?: number;
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly x0: number & readonly number[];
  readonly b0?: number;
  readonly log?: string;
}

const lineOf = (line: Line) => ({
  slope: line.slope,
  intercept: line.intercept,
  slopeCI: line.interval,
  p_slope1: line.p,
});

const listed = <T>(one: T | readonly T[]): readonly T[] =>
  Array.isArray(one) ? (one as readonly T[]) : [one as T];

const methods: Readonly<Record<string, (input: Input) => unknown>> = {
  "scaling.ratio": ({ a, ua, b, ub, conf, cov }) =>
    orError(ratioOf(a, ua, b, ub, conf, cov), (r) => ({
      ratio: r.ratio,
      u: r.u,
      logRatio: r.logRatio,
      uLog: r.uLog,
      ci95_log: r.byLog,
      ci95_linear: r.linear,
      fieller95: r.fieller,
      warnings: r.fieller === null ? ["denominator-not-distinct-from-zero"] : [],
    })),
  "scaling.ratioInterval": ({ a, b }) =>
    orError(ratioOfIntervals(a, b), ({ ratio, says }) => ({ ratio, says })),
  "scaling.isometryTest": ({ a, ua, b, ub, tolerance, conf }) =>
    orError(
      oneFactor(
        a.map((value, i) => ({ a: Number(value), ua: ua[i] ?? 0, b: b[i] ?? 0, ub: ub[i] ?? 0 })),
        tolerance,
        conf,
      ),
      (r) => ({
        ...r,
        ci95: [r.low, r.high],
        Q: r.heterogeneity,
        departing: r.departures.flatMap((z, i) => (z !== null && Math.abs(z) > 2 ? [i] : [])),
      }),
    ),
  "scaling.allometry": ({ x, y, b0, log }) =>
    orError(allometry(x, y, b0, log === "ln" ? Math.log : Math.log10), (r) => ({
      n: r.n,
      r: r.r,
      r2: r.r ** 2,
      ols: { ...lineOf(r.ols), interceptCI: r.ols.interceptInterval, se: r.ols.se },
      sma: { ...lineOf(r.sma), r_test: r.sma.rTest },
      ma: lineOf(r.ma),
      p_r0: r.pRelation,
      statement: r.pRelation > 0.05 ? "no relation shown" : null,
      warnings: r.n < 5 ? ["small-sample"] : [],
    })),
  "scaling.predictIsometric": ({ x, y, x0, conf }) =>
    orError(predictIsometric(x, y, x0, conf), (r) => ({ ...r, pi95: [r.low, r.high] })),
  "scaling.predictAllometric": ({ x, y, x0, conf }) =>
    orError(predictAllometric(x, y, listed<number>(x0), conf), (list) => ({
      y0: list.map((one) => one.y0),
      pi95: list.map((one) => one.predicted),
      // The cases give the line's own interval within the range of the data alone.
      ci95: list.filter((one) => !one.extrapolation).map((one) => one.line),
      extrapolation: list.map((one) => one.extrapolation),
    })),
};

/** The methods of `scaling`. */
export const scaling: Methods = Object.fromEntries(
  Object.entries(methods).map(([name, method]) => [name, (input: unknown) => method(input as Input)]),
);
