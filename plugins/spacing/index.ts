import { isRefusal, refuse } from "../../src/plugin.ts";
import type {
  Computation,
  ComputedNumber,
  Json,
  Mark,
  Measured,
  Plugin,
  Refusal,
  Settings,
  Tools,
} from "../../src/plugin.ts";
import { cautions, examples } from "./about.ts";
import { compareCensored } from "./compare.ts";
import { periodogram, rayleigh } from "./period.ts";
import { regularity } from "./regularity.ts";
import { kaplanMeier } from "./survival.ts";
import type { Gap } from "./survival.ts";

/** Whether features stand at even gaps, at a period, or as another row does; broken ends are taken as what they are. */
export const spacing: Plugin = {
  id: "spacing",
  version: "1.0.0",
  title: "Spacing",
  doc: "Asks how even the gaps of a row are, whether they follow a period, and whether two rows are spaced alike.",
  sources: [
    "Kaplan & Meier 1958, JASA 53, 457–481",
    "Gehan 1965, Biometrika 52, 203–223",
    "Kluyver 1905 (length of a random walk, for the exact Rayleigh test, from memory)",
  ],
  inputs: [
    {
      name: "gaps",
      kind: "measurements",
      doc: "Gaps along the row, in order; bounds are broken ends.",
      takesBounds: true,
    },
    { name: "other", kind: "measurements", doc: "Gaps of another row.", optional: true, takesBounds: true },
    {
      name: "scale",
      kind: "measurements",
      doc: "A factor by which the gaps are multiplied first.",
      optional: true,
    },
  ],
  parameters: [
    { name: "period", kind: "quantity", doc: "A period known beforehand." },
    { name: "low", kind: "quantity", doc: "Smallest period of a search." },
    { name: "high", kind: "quantity", doc: "Largest period of a search." },
    { name: "draws", kind: "number", doc: "Sets drawn where there is no exact p.", default: "10000" },
  ],
  numbers: [
    { name: "n", kind: "count", doc: "Observed gaps; mean and cv are theirs." },
    { name: "censored", kind: "count", doc: "Gaps known only as at least so long." },
    { name: "mean", kind: "input", doc: "Mean observed gap." },
    { name: "cv", kind: "number", doc: "Coefficient of variation of the observed gaps." },
    { name: "p", kind: "probability", doc: "How often gaps at random would be as even." },
    { name: "median", kind: "input", doc: "Median gap, broken ends taken into account." },
    { name: "period", kind: "input", doc: "The period given or found." },
    { name: "period-p", kind: "probability", doc: "How often positions without a period follow it as well." },
    { name: "compare-p", kind: "probability", doc: "How often two rows spaced alike would differ as much." },
  ],
  compute: (inputs, settings, tools) => {
    const gaps = inputs["gaps"] ?? [];
    const kinds = new Set([...gaps, ...(inputs["other"] ?? [])].map((one) => one.quantity.kind));
    if (kinds.size > 1)
      return refuse("mixed-dimensions", "Unexpected gaps of several kinds, expected one kind.");
    return computed(gaps, inputs["other"] ?? [], inputs["scale"]?.[0], settings, tools);
  },
  figure: (computation) => {
    const { edge, steps } = computation.data as {
      readonly edge: readonly EdgeGap[];
      readonly steps: readonly Step[];
    };
    const marks: Mark[] = [
      {
        mark: "edge",
        spans: edge.map(({ from, to, broken }) => ({ from, to, broken })),
      },
      {
        mark: "line",
        role: "step",
        points: steps.map(([time, share]) => [time, share] as const),
        label: "share longer",
      },
    ];
    return {
      title: "Gaps along the edge, and the share longer than each length",
      x: { label: "length", unit: "m" },
      y: { label: "share of gaps longer", unit: "1" },
      marks,
    };
  },
  sentence: ({ numbers }) => {
    const [n, censored, cv, p] = ["n", "censored", "cv", "p"].map((name) => numbers[name]?.value);
    const broken = censored ? ` and ${censored} broken ends` : "";
    if (p === undefined) return `${n ?? 0} gaps${broken} are too few to tell whether they are even.`;
    const verdict =
      p < 0.05
        ? "more even than gaps at random"
        : p < 0.2
          ? "of an evenness that cannot be decided"
          : "no better than chance in their evenness";
    return `${n ?? 0} gaps${broken} have a coefficient of variation of ${(100 * (cv ?? 0)).toPrecision(2)} % and are ${verdict} (p = ${p.toPrecision(2)}).`;
  },
  cautions,
  examples,
};

type EdgeGap = { readonly [key: string]: Json } & {
  readonly from: number;
  readonly to: number;
  readonly broken: boolean;
};
type Step = readonly [number, number];

const bare = (value: number): ComputedNumber => ({ value, low: null, high: null });

const gapOf = ({ quantity }: Measured): Gap => ({
  size: quantity.value,
  observed: quantity.form !== "at-least",
});

function computed(
  measured: readonly Measured[],
  other: readonly Measured[],
  scale: Measured | undefined,
  settings: Settings,
  tools: Tools,
): Computation | Refusal {
  const gaps = measured.map(gapOf);
  const observed = gaps.filter((gap) => gap.observed);
  const draws = settings["draws"]?.kind === "number" ? Math.round(settings["draws"].value) : 10_000;
  const survival = kaplanMeier(gaps);
  if (isRefusal(survival)) return survival;
  const even = regularity(
    observed.map((gap) => gap.size),
    tools.random,
    draws,
  );
  if (isRefusal(even)) return even;
  tools.report(0.4);
  const period = periodOf(gaps, settings, tools, draws);
  if (period && isRefusal(period)) return period;
  tools.report(0.8);
  const factor = scale?.quantity.value ?? 1;
  const compared =
    other.length === 0
      ? null
      : compareCensored(
          gaps.map((gap) => ({ ...gap, size: gap.size * factor })),
          other.map(gapOf),
          tools.random,
          draws,
        );
  if (compared && isRefusal(compared)) return compared;
  const error = Math.sqrt(
    measured.reduce((sum, one) => sum + (one.quantity.u ?? 0) ** 2, 0) / measured.length,
  );
  return {
    numbers: {
      n: bare(observed.length),
      censored: bare(gaps.length - observed.length),
      mean: bare(even.mean),
      cv: bare(even.cv),
      p: bare(even.pRegular),
      ...(survival.median === null ? {} : { median: bare(survival.median) }),
      ...(period ? { period: bare(period.period), "period-p": bare(period.p) } : {}),
      ...(compared ? { "compare-p": bare(compared.gehan.p) } : {}),
    },
    leftOut: [],
    warnings: [
      ...(gaps.length > observed.length ? ["broken-ends"] : []),
      ...(even.cv <= error / even.mean ? ["as-even-as-measured"] : []),
      ...(survival.median === null ? ["median-not-reached"] : []),
      ...(period && error * Math.sqrt(gaps.length) > period.period / 4 ? ["positions-uncertain"] : []),
      ...(compared && !compared.gehan.exact ? ["drawn-relabellings"] : []),
    ],
    data: {
      edge: edgeOf(gaps),
      steps: stepsFor(survival.times, survival.shares),
      ...(compared ? { smallestP: compared.gehan.smallest } : {}),
    },
  };
}

/** The period given or searched for, on the positions along the longest stretch without a broken end. */
function periodOf(
  gaps: readonly Gap[],
  settings: Settings,
  tools: Tools,
  draws: number,
): { readonly period: number; readonly p: number } | Refusal | null {
  const [given, low, high] = [settings["period"], settings["low"], settings["high"]];
  const positions = positionsOf(gaps);
  if (given?.kind === "quantity") {
    const test = rayleigh(positions, given.value.value);
    return isRefusal(test) ? test : { period: given.value.value, p: test.exact };
  }
  if (low?.kind !== "quantity" || high?.kind !== "quantity") return null;
  const found = periodogram(
    positions,
    low.value.value,
    high.value.value,
    tools.random,
    Math.max(1000, draws),
  );
  return isRefusal(found) ? found : { period: found.period, p: found.p };
}

function positionsOf(gaps: readonly Gap[]): readonly number[] {
  let best: number[] = [0];
  let run: number[] = [0];
  for (const gap of gaps) {
    if (gap.observed) run.push((run.at(-1) ?? 0) + gap.size);
    else run = [0];
    if (run.length > best.length) best = run;
  }
  return best;
}

function edgeOf(gaps: readonly Gap[]): readonly Json[] {
  let at = 0;
  return gaps.map((gap) => {
    const from = at;
    at += gap.size;
    return { from, to: at, broken: !gap.observed };
  });
}

function stepsFor(times: readonly number[], shares: readonly number[]): readonly Json[] {
  const points: (readonly [number, number])[] = [[0, 1]];
  times.forEach((time, i) => {
    points.push([time, points.at(-1)?.[1] ?? 1], [time, shares[i] ?? 0]);
  });
  return points;
}
