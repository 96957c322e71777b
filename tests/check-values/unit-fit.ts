import { SMALLEST_P, inEnglish, isRefusal, median, randomFrom, refuseFewer } from "../../src/plugin.ts";
import type { Refusal } from "../../src/plugin.ts";
import { unitTable } from "../../src/base/unit/unit-table.ts";
import { fromSI, toSI } from "../../src/base/unit/unit.ts";
import { estimateUnit } from "../../plugins/unit-fit/given/estimate.ts";
import { lumpedVariance, multipleOf, vTest } from "../../plugins/unit-fit/given/given-unit.ts";
import { itemFits } from "../../plugins/unit-fit/given/item-fits.ts";
import type { Item } from "../../plugins/unit-fit/given/item-fits.ts";
import { attenuation, expectedPhi, plain, refuseLengths } from "../../plugins/unit-fit/lengths.ts";
import type { Length } from "../../plugins/unit-fit/lengths.ts";
import type { NullId } from "../../plugins/unit-fit/search/nulls.ts";
import { phi } from "../../plugins/unit-fit/search/quantogram.ts";
import { BELOW_ONE_UNIT, searchUnit } from "../../plugins/unit-fit/search/search.ts";
import { significance } from "../../plugins/unit-fit/search/significance.ts";
import type { Methods } from "./case.ts";

interface Written {
  readonly value: number;
  readonly unit: string;
}

interface WrittenItem extends Written {
  readonly kind?: string;
  readonly lo?: number;
  readonly hi?: number;
  readonly sd?: number;
  readonly recordedTo?: number;
}

interface Input {
  readonly x?: readonly (number | null)[];
  readonly q?: readonly number[] | number | Written;
  readonly items?: readonly WrittenItem[];
  readonly qMin?: number;
  readonly qMax?: number;
  readonly top?: number;
  readonly recordedTo?: number;
  readonly sd?: readonly number[] | number;
  readonly n?: readonly number[];
  readonly weights?: string;
  readonly conf?: number;
  readonly uq?: number;
  readonly k?: number;
  readonly N?: readonly number[];
  readonly sdOverQ?: readonly number[];
  readonly nulls?: Readonly<Record<string, unknown>>;
  readonly B?: number;
}

/** A refusal as the case files write it: `error`, and the figures that go with it in camel case. */
export function asError(refusal: Refusal): Readonly<Record<string, unknown>> {
  const camel = (name: string): string => name.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
  const details = Object.entries(refusal.details).map(([name, value]) => [camel(name), value] as const);
  return { error: refusal.refused, ...Object.fromEntries(details), statement: inEnglish(refusal.message) };
}

/** Lets a method refuse before it computes: values, ends of ranges and trial units are above 0. */
const guarded =
  (method: (input: Input) => unknown) =>
  (input: unknown): unknown => {
    const given = input as Input;
    const trial = Array.isArray(given.q) ? (given.q as readonly number[]) : [given.q];
    const numbers = [
      ...(given.x ?? []),
      ...(given.items ?? []).flatMap((item) => (item.kind === "range" ? [item.lo, item.hi] : [item.value])),
      ...trial.filter((q): q is number => typeof q === "number"),
    ];
    const bad = refuseLengths(numbers.map((one) => one ?? null));
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

/** Four times the precision that a case states for its values. */
function lowestIn({ recordedTo = 0, sd = 0 }: Input): number {
  return 4 * Math.max(recordedTo, Array.isArray(sd) ? median(sd as readonly number[]) : Number(sd));
}

function peaks(input: Input): unknown {
  const lengths = input.items ? informingIn(input.items) : valuesIn(input).map((value) => plain(value));
  const lowest = input.items ? undefined : lowestIn(input);
  const { qMin = 0, qMax = 0, top = 3 } = input;
  return orError(searchUnit(lengths, qMin, qMax, lowest), ({ peaks: found, warnings, smallest }) => ({
    peaks: found.slice(0, top).map((peak) => (peak.aboveSmallest ? { ...peak, mark: BELOW_ONE_UNIT } : peak)),
    warnings,
    ...(qMax > smallest
      ? { edge: `any peak with q > min(x) = ${smallest} is marked "${BELOW_ONE_UNIT}"` }
      : {}),
  }));
}

const nullIds: readonly NullId[] = ["kde", "gamma", "lognormal", "jitter"];

function monteCarlo(input: Input): unknown {
  const lengths = input.items
    ? informingIn(input.items)
    : valuesIn(input).map((value) => plain(value, input.recordedTo ?? 0));
  const { qMin = 0, qMax = 0, B = 10_000 } = input;
  const nulls = input.nulls ?? Object.fromEntries(nullIds.map((id) => [id, {}]));
  const lowest = input.items ? undefined : lowestIn(input);
  return orError(searchUnit(lengths, qMin, qMax, lowest), ({ peaks: [peak], warnings }) => {
    if (!peak) throw new Error("No peak, expected one");
    const results = nullIds.flatMap((id, place) => {
      if (!Object.hasOwn(nulls, id)) return [];
      const own = { lengths, qMin, qMax, peak, draws: B, ...settingsOf(nulls[id]) };
      const { p, crit95, se, bandwidth, raised } = significance(
        own,
        id,
        randomFrom(20_261_125 + place),
        () => undefined,
      );
      return [[id, { p, crit95, se, ...(bandwidth === null ? {} : { h: bandwidth, raised }) }] as const];
    });
    return { observedPeak: peak, nulls: Object.fromEntries(results), B, warnings };
  });
}

function settingsOf(given: unknown): { readonly bandwidth?: number; readonly jitter?: number } {
  const { h, w } = (typeof given === "object" ? given : {}) as { readonly h?: number; readonly w?: number };
  return { ...(h === undefined ? {} : { bandwidth: h }), ...(w === undefined ? {} : { jitter: w }) };
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

const isBound = (item: WrittenItem): boolean => /^at/i.test(item.kind ?? "");

/** The standard uncertainty of a written value (methods 0): stated, else of its rounding; 2.5 % at least for "about". */
function sdOf(item: WrittenItem): number {
  if (item.sd !== undefined) return item.sd;
  const digits = String(item.value).split(".")[1]?.length ?? 0;
  const rounding = (item.recordedTo ?? 10 ** -digits) / Math.sqrt(12);
  return item.kind === "approx" ? Math.max(0.025 * item.value, rounding) : rounding;
}

function itemLength(item: WrittenItem): Length {
  const { kind, lo = 0, hi = 0, recordedTo = 0 } = item;
  return kind === "range"
    ? { value: (lo + hi) / 2, sd: 0, width: hi - lo, recordedTo, artefact: "" }
    : { value: item.value, sd: sdOf(item), width: 0, recordedTo, artefact: "" };
}

const informingIn = (items: readonly WrittenItem[]): readonly Length[] =>
  items.filter((item) => !isBound(item)).map(itemLength);

function weighted(input: Input): unknown {
  const items =
    input.items ?? valuesIn(input).map((value) => ({ value, unit: "", sd: Number(input.sd ?? 0) }));
  const trial = Array.isArray(input.q) ? (input.q as readonly number[]) : [Number(input.q)];
  const rhos = trial.map((q) => items.map((item) => (isBound(item) ? 0 : attenuation(itemLength(item), q))));
  return {
    phiW: trial.map((q) => phi(informingIn(items), q)),
    rho: rhos,
    nInformative: rhos.map((row) => row.filter((rho) => rho > 0).length),
    effectiveN: rhos.map((row) => row.reduce((sum, rho) => sum + rho * rho, 0)),
  };
}

function fits(input: Input): unknown {
  const items = (input.items ?? []).map((item): Item => {
    if (isBound(item)) return { kind: "bound" };
    if (item.kind === "range") return { kind: "range", low: item.lo ?? 0, high: item.hi ?? 0 };
    return { kind: "value", value: item.value, sd: sdOf(item) };
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
  const values = valuesIn(input);
  const multiples = input.n ?? values.map((value) => multipleOf(value, Number(input.q)));
  const few = refuseFewer(values.length, 2, "values");
  if (few) return asError(few);
  const proportional = input.weights !== undefined && /proportional|n\^?2|n²/.test(input.weights);
  const error = proportional ? "proportional" : "constant";
  const { q, se, s, low, high, df, sameFrom, sameTo } = estimateUnit(values, multiples, error, input.conf);
  return { q, se, s, ci95: [low, high], df, sameIntegers: [sameFrom, sameTo] };
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
