import {
  addCosines,
  cosinePairs,
  fraction,
  frequencyGrid,
  highestBetween,
  pairsAreQuicker,
  type FrequencyGrid,
} from "../../../src/plugin.ts";
import { attenuation, isWeighted, type Length } from "../lengths.ts";

/** Fewest lengths (by the sum of squared weights) with which a unit may be searched for. */
export const FEWEST = 6;

/** A local maximum of the quantogram. */
export interface Peak {
  readonly q: number;
  readonly phi: number;
  readonly atRangeEdge: boolean;
}

/** The cosine quantogram phi(q) of Kendall 1974, weighted where lengths carry errors (methods A1, A6). */
export function phi(lengths: readonly Length[], q: number): number {
  let sum = 0;
  let squares = 0;
  for (const length of lengths) {
    const rho = attenuation(length, q);
    sum += rho * Math.cos(2 * Math.PI * fraction(length.value / q));
    squares += rho * rho;
  }
  return squares === 0 ? 0 : Math.sqrt(2 / squares) * sum;
}

/** A quantogram over a grid of frequencies 1/q, prepared once for many sets of lengths. */
export interface Scan {
  readonly grid: FrequencyGrid;
  /** Fills `phis` for these values; the i-th value has the weight of the i-th length. */
  readonly fill: (values: Float64Array, phis: Float64Array) => void;
  /** Fills the phis of two sets at once, which for many lengths and frequencies costs a quarter. */
  readonly fillTwo: (
    first: Float64Array,
    second: Float64Array,
    firstPhis: Float64Array,
    secondPhis: Float64Array,
  ) => void;
}

/**
 * A scan of the units qMin to qMax with `steps` frequencies for each turn of the longest length. Where fewer than
 * six lengths count by their weights, phi is minus infinity.
 */
export function scan(lengths: readonly Length[], qMin: number, qMax: number, steps: number): Scan {
  const longest = Math.max(...lengths.map((length) => length.value));
  const grid = frequencyGrid(1 / qMax, 1 / qMin, 1 / (steps * longest));
  const weights = isWeighted(lengths) ? weightRows(lengths, grid) : null;
  const scale = new Float64Array(grid.count);
  for (let k = 0; k < grid.count; k += 1) {
    let squares = lengths.length;
    if (weights !== null) {
      squares = 0;
      for (let i = 0; i < lengths.length; i += 1) squares += (weights[i * grid.count + k] ?? 0) ** 2;
    }
    scale[k] = squares < FEWEST - 1e-9 ? NaN : Math.sqrt(2 / squares);
  }
  const scaled = (phis: Float64Array): void => {
    for (let k = 0; k < phis.length; k += 1) {
      const factor = scale[k] ?? NaN;
      phis[k] = Number.isNaN(factor) ? -Infinity : factor * (phis[k] ?? 0);
    }
  };
  const fill: Scan["fill"] = (values, phis) => {
    phis.fill(0);
    addCosines(values, grid, phis, 0, weights);
    scaled(phis);
  };
  if (weights !== null || !pairsAreQuicker(lengths.length, grid)) {
    return {
      grid,
      fill,
      fillTwo: (first, second, firstPhis, secondPhis) => {
        fill(first, firstPhis);
        fill(second, secondPhis);
      },
    };
  }
  const pairs = cosinePairs(grid);
  return {
    grid,
    fill,
    fillTwo: (first, second, firstPhis, secondPhis) => {
      pairs(first, second, firstPhis, secondPhis);
      scaled(firstPhis);
      scaled(secondPhis);
    },
  };
}

function weightRows(lengths: readonly Length[], grid: FrequencyGrid): Float64Array {
  const rows = new Float64Array(lengths.length * grid.count);
  for (const [i, length] of lengths.entries()) {
    for (let k = 0; k < grid.count; k += 1) {
      rows[i * grid.count + k] = attenuation(length, 1 / (grid.from + k * grid.step));
    }
  }
  return rows;
}

/** All local maxima of the quantogram between qMin and qMax, highest first; of equal ones the larger unit first. */
export function peaksOf(lengths: readonly Length[], qMin: number, qMax: number): readonly Peak[] {
  const { grid, phis } = scanned(lengths, qMin, qMax);
  const peaks: Peak[] = [];
  for (let k = 0; k < grid.count; k += 1) {
    const here = phis[k] ?? -Infinity;
    const beside = Math.max(phis[k - 1] ?? -Infinity, phis[k + 1] ?? -Infinity);
    if (here > -Infinity && here >= beside) peaks.push(refined(lengths, grid, k));
  }
  const rank = (peak: Peak): number => Math.round(peak.phi * 1e9);
  return peaks.sort((a, b) => rank(b) - rank(a) || b.q - a.q);
}

/** The highest point of the quantogram between qMin and qMax; null where too few lengths count. */
export function highestPeak(lengths: readonly Length[], qMin: number, qMax: number): Peak | null {
  const { grid, phis } = scanned(lengths, qMin, qMax);
  let top = 0;
  for (let k = 1; k < grid.count; k += 1) if ((phis[k] ?? -Infinity) > (phis[top] ?? -Infinity)) top = k;
  return phis[top] === -Infinity ? null : refined(lengths, grid, top);
}

function scanned(
  lengths: readonly Length[],
  qMin: number,
  qMax: number,
): { readonly grid: FrequencyGrid; readonly phis: Float64Array } {
  const { grid, fill } = scan(lengths, qMin, qMax, 20);
  const phis = new Float64Array(grid.count);
  const values = Float64Array.from(lengths, (length) => length.value);
  fill(values, phis);
  return { grid, phis };
}

/** The top between the neighbours of a grid point. */
function refined(lengths: readonly Length[], grid: FrequencyGrid, k: number): Peak {
  const last = grid.count - 1;
  const value = (f: number): number => phi(lengths, 1 / f);
  const low = grid.from + Math.max(0, k - 1) * grid.step;
  const high = grid.from + Math.min(last, k + 1) * grid.step;
  const f = highestBetween(value, slopeOf(lengths), low, high);
  return { q: 1 / f, phi: value(f), atRangeEdge: k === 0 || k === last };
}

// The slope only has to find the top; with weights that change with q it is taken by differences.
function slopeOf(lengths: readonly Length[]): (f: number) => number {
  if (isWeighted(lengths)) {
    return (f) => phi(lengths, 1 / (f * (1 + 1e-7))) - phi(lengths, 1 / (f * (1 - 1e-7)));
  }
  return (f) => {
    let sum = 0;
    for (const { value } of lengths) sum -= value * Math.sin(2 * Math.PI * fraction(value * f));
    return sum;
  };
}

/** How two peaks are related: the whole number 2 to 6 that one is of the other within 1 %, else null. */
export function kinship(
  first: Peak,
  second: Peak,
): { readonly of: "submultiple" | "multiple"; readonly by: number } | null {
  for (const [large, small, of] of [
    [first.q, second.q, "submultiple"],
    [second.q, first.q, "multiple"],
  ] as const) {
    const by = Math.round(large / small);
    if (by >= 2 && by <= 6 && Math.abs(large / small - by) <= 0.01 * by) return { of, by };
  }
  return null;
}
