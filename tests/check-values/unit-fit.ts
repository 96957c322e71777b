import { isRefusal, median, randomFrom, refuse, refuseFewer } from "../../src/plugin.ts";
import type { Refusal } from "../../src/plugin.ts";
import { unitTable } from "../../src/base/unit/unit-table.ts";
import { fromSI, toSI } from "../../src/base/unit/unit.ts";
import { estimateUnit } from "../../plugins/unit-fit/estimate.ts";
import { SMALLEST_P, lumpedVariance, vTest } from "../../plugins/unit-fit/given-unit.ts";
import { itemFits } from "../../plugins/unit-fit/item-fits.ts";
import type { Item } from "../../plugins/unit-fit/item-fits.ts";
import { attenuation, expectedPhi, plain, refuseLengths } from "../../plugins/unit-fit/lengths.ts";
import type { Length } from "../../plugins/unit-fit/lengths.ts";
import type { NullId } from "../../plugins/unit-fit/nulls.ts";
import { FEWEST, peaksOf, phi } from "../../plugins/unit-fit/quantogram.ts";
import { significance } from "../../plugins/unit-fit/significance.ts";
import type { Methods } from "./case.ts";

interface Written {
  readonly value: number;
  readonly unit: string;
}

interface Input {
  readonly x?: readonly (number | null)[];
  readonly q?: readonly number[] | number | Written;
  readonly items?: readonly (Written & {
    readonly kind?: string;
    readonly lo?: number;
    readonly hi?: number;
    readonly sd?: number;
  })[];
  readonly qMin?: number;
  readonly qMax?: number;
  readonly top?: number;
  readonly recordedTo?: number;
  readonly sd?: readonly number[] | number;
  readonly n?: readonly number[];
  readonly weights?: "constant" | "proportional";
  readonly conf?: number;
  readonly uq?: number;
  readonly k?: number;
  readonly N?: readonly number[];
  readonly sdOverQ?: readonly number[];
  readonly nulls?: Readonly<Record<string, { readonly h?: number; readonly w?: number }>>;
  readonly B?: number;
}

/** A refusal as the case files write it: `error`, and the figures that go with it in camel case. */
export function asError(refusal: Refusal): Readonly<Record<string, unknown>> {
  const camel = (name: string): string => name.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
  const details = Object.entries(refusal.details).map(([name, value]) => [camel(name), value] as const);
  return { error: refusal.refused, ...Object.fromEntries(details), statement: refusal.message };
}

/** Lets a method refuse before it computes. */
const guarded =
  (method: (input: Input) => unknown) =>
  (input: unknown): unknown => {
    const given = input as Input;
    const bad = given.x ? refuseLengths(given.x) : null;
    return bad ? asError(bad) : method(given);
  };

const valuesIn = (input: Input): readonly number[] => (input.x ?? []).map(Number);

function phiOf(input: Input): unknown {
  if (input.items) return mixedUnits(input);
  const q = Array.isArray(input.q) ? (input.q as readonly number[]) : [Number(input.q)];
  const lengths = valuesIn(input).map((value) => plain(value));
  return { phi: q.map((one) => phi(lengths, one)) };
}

/** Values in several units are converted into that of the trial unit; several kinds are refused. */
function mixedUnits(input: Input): unknown {
  const table = unitTable([]);
  const q = input.q as Written;
  const target = table.find(q.unit);
  const units = (input.items ?? []).map((item) => table.find(item.unit));
  if (!target || units.some((unit) => unit === null)) return { error: "unknown-unit" };
  if (units.some((unit) => unit?.kind !== target.kind)) return { error: "mixed-dimensions" };
  const x = (input.items ?? []).map((item, i) => {
    const unit = units[i];
    return unit ? fromSI(toSI(item.value, unit), target) : 0;
  });
  return {
    convertedTo: q.unit,
    x,
    phi: [
      phi(
        x.map((value) => plain(value)),
        q.value,
      ),
    ],
  };
}

function peaks(input: Input): unknown {
  const values = valuesIn(input);
  const few = refuseFewer(values.length, FEWEST, "values");
  if (few) return asError(few);
  const { qMin = 0, qMax = 0, top = 3, recordedTo = 0 } = input;
  const sd = Array.isArray(input.sd) ? median(input.sd as readonly number[]) : Number(input.sd ?? 0);
  const lowest = 4 * Math.max(recordedTo, sd);
  if (qMin < lowest) {
    return asError(refuse("range-below-precision", "below the precision", { "lowest-allowed": lowest }));
  }
  const smallest = Math.min(...values);
  const edge = "fits the smallest length as less than one unit";
  const found = peaksOf(
    values.map((value) => plain(value)),
    qMin,
    qMax,
  ).slice(0, top);
  return {
    peaks: found.map((peak) => ({ ...peak, ...(peak.q > smallest ? { mark: edge } : {}) })),
    warnings: [
      ...(qMax > smallest ? ["range-above-smallest-length"] : []),
      ...(values.length < 10 ? ["small-sample"] : []),
    ],
    ...(qMax > smallest ? { edge: `any peak with q > min(x) = ${smallest} is marked "${edge}"` } : {}),
  };
}

function monteCarlo(input: Input): unknown {
  const lengths = valuesIn(input).map((value) => plain(value, input.recordedTo ?? 0));
  const { qMin = 0, qMax = 0, nulls = {}, B = 10_000 } = input;
  const [peak] = peaksOf(lengths, qMin, qMax);
  if (!peak) return { error: "too-few" };
  const trial = { lengths, qMin, qMax, peak, draws: B };
  const results = Object.entries(nulls).map(([id, settings], place) => {
    const own = { ...trial, bandwidth: settings.h, jitter: settings.w };
    const { p, crit95, se } = significance(
      own,
      id as NullId,
      randomFrom(20_261_125 + place),
      () => undefined,
    );
    return [id, { p, crit95, se }] as const;
  });
  return { observedPeak: peak, nulls: Object.fromEntries(results) };
}

function given(input: Input): unknown {
  const q = Number(input.q);
  const few = refuseFewer(valuesIn(input).length, 3, "values");
  if (few) return asError(few);
  const test = vTest(valuesIn(input), q);
  return {
    meanCos: test.meanCosine,
    phi: test.phi,
    Rbar: test.length,
    p_seriesR: test.series,
    p_exact: test.exact,
    p_exactUpper: test.exact === null ? SMALLEST_P : null,
    p_rayleigh_seriesR: test.rayleighSeries,
    p_rayleigh_exact: test.rayleighExact,
  };
}

function lumped(input: Input): unknown {
  const result = lumpedVariance(valuesIn(input), Number(input.q));
  return {
    n: result.n,
    residuals: result.residuals,
    s2_over_d2: result.ratio,
    broadbentC: result.broadbent,
    z_normal: result.z,
    p_normal: result.normal,
    p_exact: result.exact,
    p_exact_mc: result.exact,
  };
}

function weighted(input: Input): unknown {
  const lengths = (input.items ?? []).map((item): Length => ({
    value: item.kind === "range" ? ((item.lo ?? 0) + (item.hi ?? 0)) / 2 : item.value,
    sd: item.sd ?? 0,
    width: item.kind === "range" ? (item.hi ?? 0) - (item.lo ?? 0) : 0,
    recordedTo: 0,
    artefact: "",
  }));
  const bound = (i: number): boolean => /^at/i.test(input.items?.[i]?.kind ?? "");
  const informing = lengths.filter((_, i) => !bound(i));
  const rhos = (input.q as readonly number[]).map((q) =>
    lengths.map((length, i) => (bound(i) ? 0 : attenuation(length, q))),
  );
  return {
    phiW: (input.q as readonly number[]).map((q) => phi(informing, q)),
    rho: rhos,
    nInformative: rhos.map((row) => row.filter((rho) => rho > 0).length),
  };
}

function fits(input: Input): unknown {
  const items = (input.items ?? []).map((item): Item => {
    if (/^at/i.test(item.kind ?? "")) return { kind: "bound" };
    if (item.kind === "range") return { kind: "range", low: item.lo ?? 0, high: item.hi ?? 0 };
    return { kind: "value", value: item.value, sd: item.sd ?? 0 };
  });
  const result = itemFits(items, Number(input.q), input.uq ?? 0, input.k ?? 2);
  return {
    items: result.items.map((item, i) =>
      items[i]?.kind === "bound" ? { ...item, excluded: "bound" } : item,
    ),
    nFit: result.fitting,
    nTested: result.tested,
    nInformative: result.informative,
    pChance: result.pChance,
  };
}

function estimate(input: Input): unknown {
  const { q, se, s, low, high, df } = estimateUnit(
    valuesIn(input),
    input.n ?? [],
    input.weights ?? "constant",
    input.conf ?? 0.95,
  );
  return { q, se, s, ci95: [low, high], df };
}

/** The methods of `unit-fit`. */
export const unitFit: Methods = {
  "unitfit.phi": guarded(phiOf),
  "unitfit.peaks": guarded(peaks),
  "unitfit.monteCarlo": guarded(monteCarlo),
  "unitfit.givenUnit.vTest": guarded(given),
  "unitfit.givenUnit.lumpedVariance": guarded(lumped),
  "unitfit.givenUnit.itemFits": guarded(fits),
  "unitfit.phiWeighted": guarded(weighted),
  "unitfit.estimateQ": guarded(estimate),
  "unitfit.expectedPhi": guarded(({ N = [], sdOverQ = [] }) => ({
    table: N.map((n) => sdOverQ.map((share) => expectedPhi(n, share))),
  })),
};

/** A result, or a refusal in the case files' words. */
export function orError<T extends object>(outcome: T | Refusal, shown: (result: T) => unknown): unknown {
  return isRefusal(outcome) ? asError(outcome) : shown(outcome);
}
