import {
  commonError,
  isRefusal,
  refuse,
  refuseFewer,
  refuseUnlessPositive,
  say,
  type Computation,
  type ComputedNumber,
  type Inputs,
  type Json,
  type Measured,
  type Refusal,
  type Settings,
} from "../../src/plugin.ts";
import { sharedByCause } from "./covariance.ts";
import { oneFactor, sharesIn, toleranceNeeded, type OneFactor, type PairOfDimensions } from "./one-factor.ts";
import { ratioOf } from "./ratio.ts";
import { fittedLine, unitOfPairs } from "./scatter.ts";

/** From this relative uncertainty of the denominator on, a single ratio gets Fieller's interval (methods C1). */
const COARSE = 0.1;
/** Standard uncertainties within which 95 % of normal errors lie. */
const Z95 = 1.959963984540054;
/** A dimension further from the common factor than so many of its standard uncertainties departs from it. */
const DEPARTS = 2;

const bare = (value: number): ComputedNumber => ({ value, low: null, high: null });

/** One scale factor over all pairs of homologous dimensions, and whether it is enough (methods C3). */
export function computed(inputs: Inputs, settings: Settings): Computation | Refusal {
  const larger = inputs["larger"] ?? [];
  const smaller = inputs["smaller"] ?? [];
  const bad =
    refuseFewer(Math.min(larger.length, smaller.length), 1, say`pairs of dimensions`) ??
    refuseKinds(larger, smaller);
  if (bad !== null) return bad;
  const pairs = larger.flatMap((one, i) => pairOf(one, smaller[i]));
  const tolerance = shareIn(settings["tolerance"]);
  const claimed = settings["claimed"]?.kind === "number" ? settings["claimed"].value : null;
  const wrong = claimed === null ? null : refuseUnlessPositive([claimed], say`factors claimed`);
  if (wrong !== null) return wrong;
  const shared = sharedByCause(larger, smaller);
  const fit = oneFactor(pairs, tolerance, 0.95, shared);
  if (isRefusal(fit)) return fit;
  const departing = fit.departures.map((z) => z !== null && Math.abs(z) > DEPARTS);
  const common = commonIn(larger, smaller, sharesIn(pairs, tolerance));
  const k = factorOf(fit, pairs, common);
  return {
    numbers: {
      n: bare(pairs.length),
      k,
      heterogeneity: bare(fit.heterogeneity),
      df: bare(fit.df),
      ...(fit.p === null ? {} : { p: bare(fit.p) }),
      ...(fit.detectable === null ? {} : { detectable: bare(fit.detectable) }),
    },
    leftOut: [],
    warnings: [
      ...(pairs.length === 1 ? ["one-dimension"] : []),
      ...(fit.p !== null && fit.p < 0.05 && departing.includes(true) ? ["departing-dimension"] : []),
      ...(k.low === null ? ["denominator-not-distinct-from-zero"] : []),
    ],
    data: {
      k: fit.k,
      common,
      toleranceNeeded: toleranceNeeded(pairs, tolerance, shared),
      claimed: claimed === null ? null : { ...heldAgainst(claimed, fit, oneSided(larger, smaller)) },
      shown: unitOfPairs([...larger, ...smaller]) as Json,
      fit: fittedLine(pairs),
      rows: pairs.map(({ a, ua, b, ub }, i) => ({
        dimension: larger[i]?.dimension ?? "",
        artefact: larger[i]?.artefact ?? "",
        larger: a,
        uLarger: ua,
        smaller: b,
        uSmaller: ub,
        ratio: a / b,
        u: fit.uLog[i] ?? 0,
        departure: fit.departures[i] ?? null,
        departs: departing[i] ?? false,
      })),
    },
  };
}

/**
 * A factor that somebody names beside the ratios: where it lies, and which of them it meets within their errors, those
 * that only one side shares among them.
 */
function heldAgainst(
  factor: number,
  { logRatios, uLog }: OneFactor,
  shared: readonly number[],
): { readonly [key: string]: Json } {
  const log = Math.log(factor);
  const [least, most] = [Math.min(...logRatios), Math.max(...logRatios)];
  const meets = logRatios.map(
    (ratio, i) => Math.abs(ratio - log) <= DEPARTS * Math.hypot(uLog[i] ?? 0, shared[i] ?? 0),
  );
  return { factor, lies: log < least ? "below" : log > most ? "above" : "between", meets };
}

function refuseKinds(larger: readonly Measured[], smaller: readonly Measured[]): Refusal | null {
  const mixed = larger.find((one, i) => {
    const other = smaller[i];
    return other !== undefined && other.quantity.kind !== one.quantity.kind;
  });
  return mixed === undefined
    ? null
    : refuse(
        "mixed-dimensions",
        say`The pair of \`${mixed.id}\` is of two kinds, expected one kind in each pair.`,
      );
}

function pairOf(one: Measured, other: Measured | undefined): readonly PairOfDimensions[] {
  if (other === undefined) return [];
  return [
    { a: one.quantity.value, ua: one.quantity.u ?? 0, b: other.quantity.value, ub: other.quantity.u ?? 0 },
  ];
}

function shareIn(tolerance: Settings[string] | undefined): number {
  if (tolerance?.kind === "number") return tolerance.value;
  return tolerance?.kind === "quantity" ? tolerance.value.value : 0;
}

/** Relative error of each single ratio from what its sizes share with others: what both of them share cancels. */
function oneSided(larger: readonly Measured[], smaller: readonly Measured[]): readonly number[] {
  return larger.map(({ quantity }, i) =>
    commonError([
      { power: 1, shared: quantity.shared },
      { power: -1, shared: smaller[i]?.quantity.shared ?? [] },
    ]),
  );
}

/** Relative error of the common factor from what the sizes share: an instrument, a survey, a unit; what both sides share cancels. */
function commonIn(
  larger: readonly Measured[],
  smaller: readonly Measured[],
  shares: readonly number[],
): number {
  const sharing = (one: Measured | undefined): Measured["quantity"]["shared"] => one?.quantity.shared ?? [];
  return commonError(
    shares.flatMap((share, i) => [
      { power: share, shared: sharing(larger[i]) },
      { power: -share, shared: sharing(smaller[i]) },
    ]),
  );
}

// One ratio with a coarse denominator is skewed: its interval is Fieller's, without ends where 0 is within reach. What is
// shared is no matter of single pairs, and widens the whole.
function factorOf(fit: OneFactor, pairs: readonly PairOfDimensions[], common: number): ComputedNumber {
  const [pair] = pairs;
  if (pairs.length > 1 || pair === undefined || pair.ub / pair.b <= COARSE) {
    const reach = Math.hypot(Math.log(fit.high / fit.k), Z95 * common);
    return { value: fit.k, low: fit.k * Math.exp(-reach), high: fit.k * Math.exp(reach) };
  }
  const single = ratioOf(pair.a, Math.hypot(pair.ua, common * pair.a), pair.b, pair.ub);
  const [low, high] = isRefusal(single) ? [null, null] : (single.fieller ?? [null, null]);
  return { value: fit.k, low, high };
}
