import {
  commonError,
  isRefusal,
  isUnsettled,
  kindWords,
  refuse,
  say,
  writtenUnit,
  type Computation,
  type Measured,
  type Refusal,
  type Settings,
  type Tools,
} from "../../../src/plugin.ts";
import { restsOnOne, sharesOf } from "./artefacts.ts";
import { estimateUnit, powersIn, widened } from "../given/estimate.ts";
import { multipleOf } from "../given/given-unit.ts";
import { largestError } from "../lengths.ts";
import { itemsNamed, lengthOf } from "../measured.ts";
import { curveOf, familyOf } from "./curve.ts";
import { refuseEndless, searchUnit } from "./search.ts";
import { significance, type Trial } from "./significance.ts";

const bare = (value: number) => ({ value, low: null, high: null });

/** Searches for a unit in a range, and asks how often data without one do as well (methods A2, A5, A8, A10). */
export function searched(
  measured: readonly Measured[],
  settings: Settings,
  tools: Tools,
): Computation | Refusal {
  const [low, high, draws] = [settings["low"], settings["high"], settings["draws"]];
  if (low?.kind !== "quantity" || high?.kind !== "quantity") {
    return refuse(
      "missing-setting",
      say`Missing \`unit\`, or \`low\` and \`high\`, expected a unit or a range.`,
    );
  }
  const kind = measured[0]?.quantity.kind;
  if (low.value.kind !== kind || high.value.kind !== kind) {
    const [from, to] = [kindWords[low.value.kind], kindWords[high.value.kind]];
    const as = kind === undefined ? say`quantity` : kindWords[kind];
    const message = say`The range is of ${from} to ${to}, expected a ${as} as the values are.`;
    return refuse("mixed-dimensions", message);
  }
  const [qMin, qMax] = [low.value.value, high.value.value];
  const lengths = measured.map(lengthOf);
  const found = searchUnit(lengths, qMin, qMax);
  if (isRefusal(found)) return found;
  const { best, limit } = found;
  const count = draws?.kind === "number" && draws.value >= 1 ? Math.round(draws.value) : 10_000;
  const endless = refuseEndless(lengths, [qMin, limit], count);
  if (endless !== null) return endless;
  const trial: Trial = { lengths, qMin, qMax: limit, peak: best, draws: count };
  const kernel = significance(trial, "kde", tools.random, (done) => tools.report(done / 2));
  const gamma = significance(trial, "gamma", tools.random, (done) => tools.report((1 + done) / 2));
  const values = lengths.map((one) => one.value);
  const multiples = values.map((value) => multipleOf(value, best.q));
  const powers = powersIn(values, multiples);
  const common = commonError(
    measured.map((one, i) => ({ power: powers[i] ?? 0, shared: one.quantity.shared })),
  );
  const interval = widened(estimateUnit(values, multiples), common);
  const shares = sharesOf(lengths, best.q, qMin, limit);
  const several = shares.length > 1;
  return {
    numbers: {
      n: bare(lengths.length),
      phi: bare(best.phi),
      p: bare(kernel.p),
      q: { value: best.q, low: Math.min(best.q, interval.low), high: Math.max(best.q, interval.high) },
      "p-adjusted": bare(Math.min(1, kernel.p * tools.looks)),
    },
    leftOut: [],
    warnings: [
      ...found.warnings,
      ...(kernel.raised ? ["bandwidth-raised"] : []),
      ...(isUnsettled(kernel.p, count) ? ["more-draws"] : []),
      ...(kernel.p < 0.05 !== gamma.p < 0.05 ? ["nulls-disagree"] : []),
      ...(best.atRangeEdge ? ["peak-at-range-edge"] : []),
      ...(several && restsOnOne(shares, best.q) ? ["rests-on-one-artefact"] : []),
    ],
    data: {
      found: "searched",
      shown: { ...writtenUnit(measured[0]?.quantity) },
      looks: tools.looks,
      q: best.q,
      draws: count,
      p: { kde: kernel.p, gamma: gamma.p },
      error: { kde: kernel.se, gamma: gamma.se },
      crit95: { kde: kernel.crit95, gamma: gamma.crit95 },
      bandwidth: kernel.bandwidth,
      range: [qMin, limit, qMax],
      null: kernel.crit95,
      largestError: largestError(lengths.length, kernel.crit95),
      reach: [Math.min(best.q, interval.low), Math.max(best.q, interval.high)],
      curve: curveOf(lengths, qMin, qMax, familyOf(best.q)),
      residuals: values.map((value, i) => [value, value - (multiples[i] ?? 0) * best.q]),
      multiples: [...multiples],
      items: itemsNamed(measured),
      peaks: found.peaks.slice(0, 6).map((peak) => ({ ...peak, best: peak.q === best.q })),
      artefacts: several ? shares.map((share) => ({ ...share })) : [],
    },
  };
}
