import { median, refuse, refuseFewer, refuseUnlessPositive } from "../../src/plugin.ts";
import type {
  Computation,
  ComputedNumber,
  Json,
  Measured,
  Plugin,
  Refusal,
  Settings,
  Tools,
} from "../../src/plugin.ts";
import { cautions, examples } from "./about.ts";
import { estimateUnit } from "./estimate.ts";
import { unitFitFigure } from "./figure.ts";
import { SMALLEST_P, lumpedVariance, multipleOf, vTest } from "./given-unit.ts";
import { plain } from "./lengths.ts";
import type { Length } from "./lengths.ts";
import { FEWEST, kinship, peaksOf, phi } from "./quantogram.ts";
import { significance } from "./significance.ts";
import { unitFitSentence } from "./sentence.ts";

const points = 400;

/** Whether lengths or masses are whole multiples of a unit: one given beforehand, or one searched for. */
export const unitFit: Plugin = {
  id: "unit-fit",
  version: "1.0.0",
  title: "Unit fit",
  doc: "Asks whether measurements cluster at whole multiples of a unit. A unit given beforehand is tested as it stands; a search pays for having looked at many units.",
  sources: [
    "Kendall 1974, Phil. Trans. R. Soc. A 276, 231–266 (cosine quantogram)",
    "Broadbent 1955, Biometrika 42, 45–57 (lumped variance)",
  ],
  inputs: [{ name: "values", kind: "measurements", doc: "Lengths or masses, each one trial of the unit." }],
  parameters: [
    { name: "unit", kind: "unit", doc: "A unit known before these data were seen." },
    { name: "low", kind: "quantity", doc: "Smallest unit of a search." },
    { name: "high", kind: "quantity", doc: "Largest unit of a search." },
    {
      name: "draws",
      kind: "number",
      doc: "Sets without a unit drawn for each null of a search.",
      default: "10000",
    },
  ],
  numbers: [
    { name: "n", kind: "count", doc: "Measurements that entered." },
    { name: "phi", kind: "number", doc: "Height of the quantogram at the unit." },
    {
      name: "p",
      kind: "probability",
      doc: "How often data without a unit fit as well: exact V-test, or of the whole search.",
    },
    { name: "lumped-p", kind: "probability", doc: "The same by the residuals (exact), for a unit given." },
    { name: "q", kind: "input", doc: "The unit as these data estimate it, the multiples taken as right." },
    { name: "p-adjusted", kind: "probability", doc: "p times the number of looks (Holm 1979, first step)." },
  ],
  compute: (inputs, settings, tools) => {
    const measured = inputs["values"] ?? [];
    const kinds = new Set(measured.map((one) => one.quantity.kind));
    if (kinds.size > 1)
      return refuse("mixed-dimensions", "Unexpected measurements of several kinds, expected one kind.");
    const values = measured.map((one) => one.quantity.value);
    const bad = refuseUnlessPositive(values, "values");
    if (bad) return bad;
    const unit = settings["unit"];
    if (unit?.kind === "unit") {
      if (!kinds.has(unit.value.kind)) {
        return refuse(
          "mixed-dimensions",
          `Unexpected ${unit.value.kind} as unit of a ${[...kinds][0] ?? "value"}.`,
        );
      }
      return withUnit(values, unit.value.size, tools);
    }
    return searched(measured, settings, tools);
  },
  figure: unitFitFigure,
  sentence: unitFitSentence,
  cautions,
  examples,
};

const bare = (value: number): ComputedNumber => ({ value, low: null, high: null });

function withUnit(values: readonly number[], q: number, tools: Tools): Computation | Refusal {
  const few = refuseFewer(values.length, 3, "values");
  if (few) return few;
  const test = vTest(values, q);
  const lumped = lumpedVariance(values, q);
  const estimate = estimateUnit(values, lumped.n);
  const p = test.exact ?? SMALLEST_P;
  const warnings = [
    ...(test.exact === null ? ["below-smallest-p"] : []),
    ...(values.some((value) => value < q / 2) ? ["less-than-one-unit"] : []),
  ];
  return {
    numbers: {
      n: bare(values.length),
      phi: bare(test.phi),
      p: bare(p),
      "lumped-p": bare(lumped.exact),
      q: { value: estimate.q, low: estimate.low, high: estimate.high },
      "p-adjusted": bare(Math.min(1, p * tools.looks)),
    },
    leftOut: [],
    warnings,
    data: {
      kind: "given",
      unit: q,
      curve: curveOf(
        values.map((value) => plain(value)),
        q / 3,
        q * 1.6,
      ),
      peaks: [{ q, phi: test.phi }],
      crit95: 1.645,
      residuals: lumped.residuals.map((e, i) => [values[i] ?? 0, e]),
      multiples: [...lumped.n],
    },
  };
}

function searched(measured: readonly Measured[], settings: Settings, tools: Tools): Computation | Refusal {
  const [low, high, draws] = [settings["low"], settings["high"], settings["draws"]];
  if (low?.kind !== "quantity" || high?.kind !== "quantity") {
    return refuse(
      "missing-setting",
      "Missing `unit`, or `low` and `high`, expected a unit or a range to search.",
    );
  }
  const [qMin, qMax] = [low.value.value, high.value.value];
  if (!(qMin > 0) || !(qMax > qMin))
    return refuse("empty-range", "The largest unit is not above the smallest.");
  const lengths = measured.map(lengthOf);
  const few = refuseFewer(lengths.length, FEWEST, "values");
  if (few) return few;
  const lowestAllowed =
    4 * Math.max(median(lengths.map((one) => one.recordedTo)), median(lengths.map((one) => one.sd)));
  if (qMin < lowestAllowed) {
    const message = `The smallest unit lies below four times the precision of the measurements.`;
    return refuse("range-below-precision", message, { "lowest-allowed": lowestAllowed });
  }
  const values = lengths.map((one) => one.value);
  // Above the smallest length any unit fits it as less than one (methods A2): such peaks are shown, never taken.
  const smallest = Math.min(...values);
  const limit = qMin < smallest ? Math.min(qMax, smallest) : qMax;
  const peaks = peaksOf(lengths, qMin, limit);
  const [best] = peaks;
  if (!best)
    return refuse("too-few", "Too few measurements are precise enough for units of this size.", {
      needed: FEWEST,
    });
  const trial = {
    lengths,
    qMin,
    qMax: limit,
    peak: best,
    draws: draws?.kind === "number" ? Math.round(draws.value) : 10_000,
  };
  const kernel = significance(trial, "kde", tools.random, (done) => tools.report(done / 2));
  const gamma = significance(trial, "gamma", tools.random, (done) => tools.report(0.5 + done / 2));
  const estimate = estimateUnit(
    values,
    values.map((value) => multipleOf(value, best.q)),
  );
  const warnings = [
    ...(qMax > smallest ? ["range-above-smallest-length"] : []),
    ...(lengths.length < 10 ? ["small-sample"] : []),
    ...(kernel.raised ? ["bandwidth-raised"] : []),
    ...(best.atRangeEdge ? ["peak-at-range-edge"] : []),
  ];
  return {
    numbers: {
      n: bare(lengths.length),
      phi: bare(best.phi),
      p: bare(kernel.p),
      q: { value: best.q, low: Math.min(best.q, estimate.low), high: Math.max(best.q, estimate.high) },
      "p-adjusted": bare(Math.min(1, kernel.p * tools.looks)),
    },
    leftOut: [],
    warnings,
    data: {
      kind: "searched",
      draws: trial.draws,
      pError: kernel.se,
      gammaP: gamma.p,
      crit95: kernel.crit95,
      curve: curveOf(lengths, qMin, qMax),
      peaks: peaks.slice(0, 6).map((peak) => ({ q: peak.q, phi: peak.phi, kin: kinOf(best, peak) })),
    },
  };
}

function kinOf(best: { q: number; phi: number; atRangeEdge: boolean }, peak: typeof best): string {
  const kin = peak === best ? null : kinship(best, peak);
  if (kin === null) return "";
  return kin.of === "submultiple" ? `1/${kin.by} of it` : `${kin.by} times it`;
}

function lengthOf(one: Measured): Length {
  const { form, value, low, high, u, digit } = one.quantity;
  const width = form === "range" && low !== null && high !== null ? high - low : 0;
  return { value, sd: width > 0 ? 0 : (u ?? 0), width, recordedTo: digit, artefact: one.artefact };
}

function curveOf(lengths: readonly Length[], from: number, to: number): Json {
  const [first, last] = [1 / to, 1 / from];
  return Array.from({ length: points }, (_, k) => {
    const q = 1 / (last - ((last - first) * k) / (points - 1));
    return [q, phi(lengths, q)];
  });
}
