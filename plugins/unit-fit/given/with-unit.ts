import {
  SMALLEST_P,
  commonError,
  kindWords,
  refuse,
  refuseFewer,
  say,
  writtenUnit,
  type Computation,
  type Factor,
  type Json,
  type Measured,
  type Refusal,
  type Tools,
  type UnitValue,
} from "../../../src/plugin.ts";
import { estimateUnit, powersIn, widened } from "./estimate.ts";
import { criticalPhi, lumpedVariance, phiOf, vTest, vTestP } from "./given-unit.ts";
import { itemFits, type ItemFits } from "./item-fits.ts";
import { itemOf, itemsNamed, lengthOf } from "../measured.ts";
import { attenuation, largestError, plain, type Length } from "../lengths.ts";
import { curveOf, familyOf } from "../search/curve.ts";
import { lowestAllowed } from "../search/search.ts";

const bare = (value: number) => ({ value, low: null, high: null });

/** Tests a unit given beforehand at its stated value (methods A3, A4, A7). */
export function withUnit(
  all: readonly Measured[],
  unit: UnitValue,
  { looks, onlyNumbers }: Pick<Tools, "looks" | "onlyNumbers">,
): Computation | Refusal {
  const q = unit.size;
  const other = all.find((one) => one.quantity.kind !== unit.kind);
  if (other !== undefined) {
    return refuse(
      "mixed-dimensions",
      say`The unit is a ${kindWords[unit.kind]}, the values a ${kindWords[other.quantity.kind]}, expected one kind.`,
    );
  }
  const measured = all.filter((one) => attenuation(lengthOf(one), q) > 0);
  const few = refuseFewer(measured.length, 3, say`values`);
  if (few !== null) return few;
  const values = measured.map((one) => one.quantity.value);
  const lumped = lumpedVariance(values, q);
  const estimate = estimateUnit(values, lumped.n);
  const powers = powersIn(values, lumped.n);
  const factors = measured.map((one, i): Factor => ({ power: powers[i] ?? 0, shared: one.quantity.shared }));
  const interval = widened(estimate, commonError(factors));
  const told = (phi: number, p: number): Pick<Computation, "numbers" | "leftOut"> => ({
    numbers: {
      n: bare(values.length),
      phi: bare(phi),
      p: bare(p),
      "lumped-p": bare(lumped.exact),
      q: { value: estimate.q, ...interval },
      "p-adjusted": bare(Math.min(1, p * looks)),
    },
    leftOut: all
      .filter((one) => !measured.includes(one))
      .map(({ id }) => ({ id, why: say`a range as wide as the unit` })),
  });
  if (onlyNumbers) return { ...told(phiOf(values, q), vTestP(values, q)), warnings: [], data: null };

  const test = vTest(values, q);
  const p = test.exact ?? SMALLEST_P;
  const fits = itemFits(measured.map(itemOf), q, unit.u, 2);
  // Lengths written in the very unit share its error, which then bears on no phase.
  const own: Factor = { power: -1, shared: [{ with: `unit:${unit.name}`, relative: unit.u / unit.size }] };
  const span = spanOfP(values, { ...unit, u: unit.size * commonError([...factors, own]) });
  const critical = criticalPhi(values.length);
  const rayleigh = test.rayleighExact ?? SMALLEST_P;
  return {
    ...told(test.phi, p),
    warnings: [
      ...(test.exact === null ? ["below-smallest-p"] : []),
      ...(values.some((value) => value < q / 2) ? ["less-than-one-unit"] : []),
      ...([0.01, 0.05].some((level) => span.low < level && span.high >= level) ? ["unit-uncertain"] : []),
      ...(p > 0.05 && rayleigh < 0.01 ? ["constant-offset"] : []),
      ...(fits.informative * 2 < fits.tested ? ["uninformative-items"] : []),
    ],
    data: {
      found: "given",
      shown: { ...writtenUnit(measured[0]?.quantity) },
      looks,
      q,
      reach: [unit.size - 1.96 * unit.u, unit.size + 1.96 * unit.u],
      null: critical,
      largestError: largestError(values.length, critical),
      curve: curveAround(measured.map(lengthOf), q),
      residuals: values.map((value, i) => [value, lumped.residuals[i] ?? 0]),
      multiples: [...lumped.n],
      items: itemsNamed(measured),
      lumped: { ratio: lumped.ratio, broadbent: lumped.broadbent, pNormal: lumped.normal },
      rayleighP: rayleigh,
      pOverUnit: { ...span },
      sameMultiples: [estimate.sameFrom, Number.isFinite(estimate.sameTo) ? estimate.sameTo : null],
      itemFits: fitsShown(fits),
    },
  };
}

/** The quantogram from a third of the unit to a little over its double, as far down as the precision allows. */
function curveAround(lengths: readonly Length[], q: number): Json {
  const low = Math.min(0.8 * q, Math.max(0.3 * q, lowestAllowed(lengths)));
  return curveOf(
    lengths.map(({ value }) => plain(value)),
    low,
    2.3 * q,
    familyOf(q),
  );
}

/** The smallest and largest p of units within 1.96 standard uncertainties of the stated one. */
function spanOfP(
  values: readonly number[],
  { size, u }: UnitValue,
): { readonly low: number; readonly high: number } {
  const steps = u > 0 ? [-1, -0.75, -0.5, -0.25, 0, 0.25, 0.5, 0.75, 1] : [0];
  const near = steps.map((step) => size + 1.96 * step * u).filter((q) => q > 0);
  const ps = near.map((q) => vTestP(values, q));
  return { low: Math.min(...ps), high: Math.max(...ps) };
}

function fitsShown(fits: ItemFits): Json {
  return {
    fitting: fits.fitting,
    tested: fits.tested,
    informative: fits.informative,
    pChance: fits.pChance,
    chances: fits.items.map((item) => item.chance),
    fits: fits.items.map((item) => item.fits),
  };
}
