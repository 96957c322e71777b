import {
  SMALLEST_P,
  cosineSumAbove,
  cosineSumSeries,
  logBallVolume,
  normalAbove,
  resultant,
  resultantAbove,
  resultantSeries,
  squaredUniformTransform,
} from "../../../src/plugin.ts";

/** The V-test of a unit given beforehand (methods A3). Null stands for a p below 1e-9. */
export interface VTest {
  readonly meanCosine: number;
  readonly phi: number;
  readonly length: number;
  readonly series: number;
  readonly exact: number | null;
  /** Rayleigh test of the same phases: any common offset. */
  readonly rayleighSeries: number;
  readonly rayleighExact: number | null;
}

/** The V-test of at least three lengths against the unit q, all in one unit. */
export function vTest(values: readonly number[], q: number): VTest {
  const { n, meanCosine, length } = resultant(values, q);
  return {
    meanCosine,
    phi: phiOf(values, q),
    length,
    series: cosineSumSeries(n, meanCosine),
    exact: floored(cosineSumAbove(n, n * meanCosine)),
    rayleighSeries: resultantSeries(n, length),
    rayleighExact: floored(resultantAbove(n, length)),
  };
}

/** The height of the quantogram of some lengths at a unit. */
export function phiOf(values: readonly number[], q: number): number {
  const { n, meanCosine } = resultant(values, q);
  return meanCosine * Math.sqrt(2 * n);
}

/** The exact p of the V-test alone; never below the smallest that can be told from 0. */
export function vTestP(values: readonly number[], q: number): number {
  const { n, meanCosine } = resultant(values, q);
  return Math.max(SMALLEST_P, cosineSumAbove(n, n * meanCosine));
}

/**
 * The height that 5 % of n lengths without a unit exceed at a unit named beforehand: the exact V-test turned round, from
 * the normal approximation on, whose density there serves as the slope.
 */
export function criticalPhi(n: number): number {
  const known = criticalPhis.get(n);
  if (known !== undefined) return known;
  let phi = 1.6449;
  for (let step = 0; step < 6; step += 1) {
    const excess = cosineSumAbove(n, phi * Math.sqrt(n / 2)) - 0.05;
    if (Math.abs(excess) < 1e-6) break;
    phi += excess / 0.1031;
  }
  criticalPhis.set(n, phi);
  return phi;
}

// One constant for each n, which costs more than all the rest of a run.
const criticalPhis = new Map<number, number>();

function floored(p: number): number | null {
  return p < SMALLEST_P ? null : p;
}

/** The whole number of units that a length is nearest to, at least 1. */
export function multipleOf(value: number, q: number): number {
  return Math.max(1, Math.floor(value / q + 0.5));
}

/** Residuals from the nearest multiples, and Broadbent's lumped variance (methods A4). */
export interface LumpedVariance {
  readonly n: readonly number[];
  readonly residuals: readonly number[];
  /** s² / d², with d half the unit: 1/3 on average where there is no unit. */
  readonly ratio: number;
  /** Broadbent's C = sqrt(N) (1/3 - s²/d²). */
  readonly broadbent: number;
  readonly z: number;
  readonly normal: number;
  readonly exact: number;
}

/** Lumped variance of the lengths about multiples of q (Broadbent 1955, 1956). */
export function lumpedVariance(values: readonly number[], q: number): LumpedVariance {
  const count = values.length;
  const n = values.map((value) => multipleOf(value, q));
  const residuals = values.map((value, i) => value - (n[i] ?? 0) * q);
  const ratio = residuals.reduce((sum, e) => sum + e * e, 0) / count / (q / 2) ** 2;
  const z = (ratio - 1 / 3) / Math.sqrt(4 / (45 * count));
  return {
    n,
    residuals,
    ratio,
    broadbent: Math.sqrt(count) * (1 / 3 - ratio),
    z,
    normal: normalAbove(-z),
    exact: squaresBelow(count, count * ratio),
  };
}

/**
 * Chance that the squares of n even numbers on (0, 1) add up to at most x: the volume of a ball's corner up to
 * x = 1; the Fourier series of the bounded sum above.
 */
export function squaresBelow(n: number, x: number): number {
  if (x >= n) return 1;
  const corner = Math.exp(logBallVolume(n, Math.sqrt(x)) - n * Math.LN2);
  if (x <= 1) return corner;
  if (n === 2) return Math.sqrt(x - 1) + (x / 2) * (Math.PI / 2 - 2 * Math.acos(1 / Math.sqrt(x)));
  let sum = x;
  for (let k = 1; k <= 50_000; k += 1) {
    const w = (2 * Math.PI * k) / n;
    const [real, imaginary] = squaredUniformTransform(w);
    const size = Math.hypot(real, imaginary) ** n;
    const angle = n * Math.atan2(imaginary, real);
    sum += (2 * size * (Math.sin(angle) - Math.sin(angle - w * x))) / w;
    if (size < 1e-14 * w) break;
  }
  const p = sum / n;
  // Far in the tail the series has only its rounding left; the uncut corner is then a bound from above.
  return p < 1e-11 ? Math.min(corner, 1e-11) : Math.min(1, p, corner);
}
