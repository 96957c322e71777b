import {
  SMALLEST_P,
  isRefusal,
  isUnsettled,
  writtenUnit,
  type Computation,
  type ComputedNumber,
  type Inputs,
  type Json,
  type Refusal,
  type Settings,
  type Tools,
} from "../../src/plugin.ts";
import { periodOf } from "./period/periods.ts";
import { exactRegularity, regularity } from "./regularity.ts";
import { curveOf, edgeOf } from "./curve.ts";
import { distributionOf, medianOfRanges, positionsOf, refuseKinds, rowOf, type Row } from "./row.ts";
import { meetingComputed } from "./two-rows/ranges.ts";
import { compareScaled } from "./two-rows/scaled.ts";
import { kaplanMeier, type Survival } from "./survival.ts";
import type { Turnbull } from "./turnbull.ts";

const bare = (value: number): ComputedNumber => ({ value, low: null, high: null });

/** All numbers of a row of gaps: evenness, median, and where asked for a period and the comparison with another row. */
export function computed(inputs: Inputs, settings: Settings, tools: Tools): Computation | Refusal {
  const row = rowOf(inputs["gaps"] ?? []);
  const other = rowOf(inputs["other"] ?? []);
  const bad = refuseKinds([
    ...[...row.measured, ...other.measured].map((one) => one.quantity.kind),
    ...Object.values(settings).flatMap((one) => (one.kind === "quantity" ? [one.value.kind] : [])),
  ]);
  if (bad !== null) return bad;
  const asked = settings["draws"];
  const draws = asked?.kind === "number" && asked.value >= 1 ? Math.round(asked.value) : 10_000;
  const observed = row.gaps.filter((gap) => gap.observed).map((gap) => gap.size);
  const scale = inputs["scale"]?.[0];
  if (observed.length < 2 && other.gaps.length > 0) return meetingComputed(row, other, scale);
  const survival = kaplanMeier(row.gaps);
  if (isRefusal(survival)) return survival;
  const even = regularity(observed, tools.random, draws);
  if (isRefusal(even)) return even;
  tools.report(0.3);
  const positions = positionsOf(row.gaps);
  const period = periodOf(positions, settings, tools, draws);
  if (period !== null && isRefusal(period)) return period;
  tools.report(0.6);
  const compared =
    other.gaps.length === 0 ? null : compareScaled(row.gaps, other.gaps, scale, tools.random, draws);
  if (compared !== null && isRefusal(compared)) return compared;
  const beyondMeasure = even.cv <= row.u / even.mean;
  const ranges = distributionOf(row);
  const median = medianOf(ranges, survival);
  return {
    numbers: {
      n: bare(observed.length),
      censored: bare(row.gaps.length - observed.length),
      mean: bare(even.mean),
      cv: bare(even.cv),
      p: bare(Math.max(SMALLEST_P, even.pRegular)),
      ...(median === null ? {} : { median }),
      ...(period === null ? {} : { period: bare(period.period), "period-p": bare(period.p) }),
      ...(compared === null ? {} : { "compare-p": bare(compared.test.p) }),
    },
    leftOut: [...row.leftOut, ...other.leftOut],
    warnings: [
      ...(row.gaps.length > observed.length ? ["broken-ends"] : []),
      ...(beyondMeasure ? ["as-even-as-measured"] : []),
      ...(median === null ? ["median-not-reached"] : []),
      ...(even.pRegular < SMALLEST_P || (period !== null && period.p <= SMALLEST_P)
        ? ["below-smallest-p"]
        : []),
      ...(period !== null && positions.length <= row.gaps.length ? ["longest-stretch"] : []),
      ...(period !== null && row.u * Math.sqrt(positions.length - 1) > period.period / 4
        ? ["positions-uncertain"]
        : []),
      ...(compared !== null && !compared.test.exact ? ["drawn-relabellings"] : []),
      ...([
        ...(even.exact === null ? [[even.pRegular, draws] as const] : []),
        ...(period === null || period.given ? [] : [[period.p, period.sets] as const]),
        ...(compared === null || compared.test.exact
          ? []
          : [[compared.test.p, compared.test.count] as const]),
      ].some(([p, sets]) => isUnsettled(p, sets))
        ? ["more-draws"]
        : []),
      ...(compared !== null && compared.test.smallest > 0.05 ? ["comparison-too-small"] : []),
      ...(compared !== null && isTorn(compared.differing) ? ["scale-decides"] : []),
    ],
    data: {
      shown: { ...writtenUnit(row.measured[0]?.quantity) },
      row: { edge: edgeOf(row.gaps), ...curveOf(row.gaps, survival, ranges) },
      other: otherRow(other),
      draws,
      // Even gaps that are all alike come out as uneven as their errors are.
      smallestP: Math.max(SMALLEST_P, exactRegularity(observed.length, row.u / even.mean) ?? 1),
      drawn: even.exact === null,
      restrictedMean: survival.restrictedMean,
      clustered: even.pClustered,
      period: period === null ? null : { ...period },
      compared: compared === null ? null : comparedShown(compared),
    },
  };
}

function medianOf(ranges: Turnbull | null, survival: Survival): ComputedNumber | null {
  if (ranges === null) return survival.median === null ? null : bare(survival.median);
  const [low, high] = medianOfRanges(ranges) ?? [null, null];
  return low === null || high === null ? null : { value: (low + high) / 2, low, high };
}

function isTorn(differing: number | null): boolean {
  return differing !== null && differing > 0.05 && differing < 0.95;
}

function comparedShown(compared: Exclude<ReturnType<typeof compareScaled>, Refusal>): Json {
  const { test, factor, differing, agreeing } = compared;
  const { p, count, exact, smallest } = test;
  return { p, count, exact, smallest, factor, differing, agreeing: agreeing === null ? null : [...agreeing] };
}

function otherRow(other: Row): Json {
  if (other.gaps.length === 0) return null;
  const survival = kaplanMeier(other.gaps);
  return isRefusal(survival)
    ? null
    : { edge: edgeOf(other.gaps), ...curveOf(other.gaps, survival, distributionOf(other)) };
}
