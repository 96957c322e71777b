import besselj0 from "@stdlib/math-base-special-besselj0";
import besselj1 from "@stdlib/math-base-special-besselj1";
import { normalAbove } from "./distributions.ts";
import { eachNode } from "./quadrature.ts";

/** Phases of positions on a period, in fractions of a turn, and their resultant. */
export interface Resultant {
  readonly n: number;
  /** Mean of cos and sin of the phases. */
  readonly meanCosine: number;
  readonly meanSine: number;
  /** Length of the mean vector, 0 to 1. */
  readonly length: number;
  /** Direction of the mean vector in radians, 0 to 2 pi. */
  readonly direction: number;
}

/** The smallest p that the inversion integrals can tell from 0; what lies below it is only known to be smaller. */
export const SMALLEST_P = 1e-9;

/** The part of `x` above the whole number below it, 0 to 1. */
export function fraction(x: number): number {
  return x - Math.floor(x);
}

/** The mean vector of the phases 2 pi x / period. */
export function resultant(positions: readonly number[], period: number): Resultant {
  let cosine = 0;
  let sine = 0;
  for (const x of positions) {
    const angle = 2 * Math.PI * fraction(x / period);
    cosine += Math.cos(angle);
    sine += Math.sin(angle);
  }
  const n = positions.length;
  const direction = Math.atan2(sine, cosine);
  return {
    n,
    meanCosine: cosine / n,
    meanSine: sine / n,
    length: Math.hypot(cosine, sine) / n,
    direction: direction < 0 ? direction + 2 * Math.PI : direction,
  };
}

/**
 * Chance that the sum of cosines of n even phases is at least `sum` (n >= 3): Fourier inversion with the
 * characteristic function J0(t)^n. Absolute error below about 1e-9 for n >= 4, 1e-7 for n = 3.
 */
export function cosineSumAbove(n: number, sum: number): number {
  const { at, weight } = besselPowers(n, n);
  let integral = 0;
  for (let k = 0; k < at.length; k += 1) {
    const t = at[k] ?? 1;
    integral += ((weight[k] ?? 0) * Math.sin(t * sum)) / t;
  }
  return bounded(0.5 - integral / Math.PI);
}

/**
 * Chance that the resultant of n even phases is at least n R long (Kluyver 1905; n >= 2):
 * 1 - nR times the integral of J0(t)^n J1(nR t).
 */
export function resultantAbove(n: number, length: number): number {
  // Of two the integral dies away too slowly; R is the cosine of half the angle between them, which is even.
  if (n === 2) return (2 / Math.PI) * Math.acos(Math.min(1, length));
  const radius = n * length;
  const { at, weight } = besselPowers(n, n - 1);
  let integral = 0;
  for (let k = 0; k < at.length; k += 1) integral += (weight[k] ?? 0) * besselj1(radius * (at[k] ?? 0));
  return bounded(1 - radius * integral);
}

/** Greenwood & Durand 1955 as given by Zar (from memory): conservative in the tail. */
export function greenwoodDurand(n: number, length: number): number {
  return Math.exp(Math.sqrt(1 + 4 * n + 4 * (n * n - (n * length) ** 2)) - (1 + 2 * n));
}

/** Series p of the V-test with the mean direction given (Jammalamadaka & SenGupta 2001, from memory). */
export function cosineSumSeries(n: number, meanCosine: number): number {
  const z = Math.sqrt(2 * n) * meanCosine;
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  const first = (3 * z - z ** 3) / (16 * n);
  const second = (15 * z + 305 * z ** 3 - 125 * z ** 5 + 9 * z ** 7) / (4608 * n * n);
  return bounded(normalAbove(z) + density * (first + second));
}

/** Series p of the Rayleigh test, the plain exponential from n = 50 (Mardia & Jupp 2000, from memory). */
export function resultantSeries(n: number, length: number): number {
  const z = n * length * length;
  const first = (2 * z - z * z) / (4 * n);
  const second = (24 * z - 132 * z ** 2 + 76 * z ** 3 - 9 * z ** 4) / (288 * n * n);
  return bounded(Math.exp(-z) * (n < 50 ? 1 + first - second : 1));
}

/** Places of an integral over t from 0 on, and J0(t)^n at each times what it counts for. */
interface BesselPowers {
  readonly at: Float64Array;
  readonly weight: Float64Array;
}

// The same for every set of n positions, and nearly all that a p costs.
const known = new Map<string, BesselPowers>();

// |J0(t)| is at most sqrt(2 / (pi t)): what lies beyond `end` is below 1e-13, or for few positions, whose integrand
// falls slowly, cancels to about 1e-9. A panel holds at most 8 radians of its fastest oscillation, which 16 nodes
// integrate to the last digits.
function besselPowers(n: number, decay: number): BesselPowers {
  const key = `${n} ${decay}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const end = Math.min(n < 5 ? 8000 : 3000, Math.max(1, (2 / Math.PI) * 10 ** (26 / decay)));
  const [at, weight]: [number[], number[]] = [[], []];
  eachNode(0, end, Math.ceil((end * n) / 4), (t, counts) => {
    at.push(t);
    weight.push(counts * besselj0(t) ** n);
  });
  const made = { at: Float64Array.from(at), weight: Float64Array.from(weight) };
  known.set(key, made);
  return made;
}

function bounded(p: number): number {
  return Math.min(1, Math.max(0, p));
}
