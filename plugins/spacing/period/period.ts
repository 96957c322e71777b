import {
  addCosines,
  frequencyGrid,
  fraction,
  greenwoodDurand,
  highestBetween,
  refuse,
  refuseFewer,
  say,
  resultant,
  resultantAbove,
  resultantSeries,
  type FrequencyGrid,
  type Random,
  type Refusal,
} from "../../../src/plugin.ts";

/** Positions against a period given beforehand, its phase unknown (methods D2). */
export interface RayleighTest {
  readonly n: number;
  readonly length: number;
  /** n R². */
  readonly z: number;
  /** Mean phase in radians. */
  readonly phase: number;
  readonly series: number;
  readonly exact: number;
  readonly greenwoodDurand: number;
}

/** Rayleigh's test of at least two positions. */
export function rayleigh(positions: readonly number[], period: number): RayleighTest | Refusal {
  const bad = refusePositions(positions, 2) ?? refusePeriod(period);
  if (bad !== null) return bad;
  const { n, length, direction } = resultant(positions, period);
  return {
    n,
    length,
    z: n * length * length,
    phase: direction,
    series: resultantSeries(n, length),
    exact: resultantAbove(n, length),
    greenwoodDurand: greenwoodDurand(n, length),
  };
}

/** The best period in a range, and how often even positions do as well (methods D3). */
export interface Periodogram {
  readonly period: number;
  readonly power: number;
  readonly p: number;
  /** Power at half and at twice the period. */
  readonly atHalf: number;
  readonly atTwice: number;
}

/** Power |sum exp(2 pi i x / P)|² / n of positions at one period. */
export function powerAt(positions: readonly number[], period: number): number {
  const { n, length } = resultant(positions, period);
  return n * length * length;
}

/** Points of a search, times the positions, times the sets drawn: more would take hours. */
const MOST_WORK = 1e12;

/** Searches at least five positions for a period between `low` and `high`, against `draws` sets of even ones. */
export function periodogram(
  positions: readonly number[],
  low: number,
  high: number,
  random: Random,
  draws: number,
): Periodogram | Refusal {
  const bad = refusePositions(positions, 5) ?? refusePeriod(low) ?? refusePeriod(high);
  if (bad !== null) return bad;
  if (!(high > low)) return refuse("empty-range", say`The highest period is not above the lowest.`);
  const start = Math.min(...positions);
  const span = Math.max(...positions) - start;
  if (!(span > 0)) return refuse("no-variation", say`All positions are equal, expected them to vary.`);
  if (10 * span * (1 / low - 1 / high) * positions.length * draws > MOST_WORK)
    return refuse(
      "range-too-wide",
      say`The range holds more periods than can be looked through, expected a narrower one, or fewer draws.`,
    );
  const grid = frequencyGrid(1 / high, 1 / low, 1 / (10 * span));
  const search = searchOn(grid);
  const best = search(positions.map((x) => x - start));
  let reached = 0;
  const drawn = positions.map(() => 0);
  for (let k = 0; k < draws; k += 1) {
    for (let i = 0; i < drawn.length; i += 1) drawn[i] = span * random.uniform();
    if (search(drawn).power >= best.power - 1e-12) reached += 1;
  }
  const period = 1 / best.frequency;
  return {
    period,
    power: best.power,
    p: (1 + reached) / (draws + 1),
    atHalf: powerAt(positions, period / 2),
    atTwice: powerAt(positions, period * 2),
  };
}

// The highest point of the grid, and then the highest power between its neighbours.
function searchOn(
  grid: FrequencyGrid,
): (positions: readonly number[]) => { readonly frequency: number; readonly power: number } {
  const cosines = new Float64Array(grid.count);
  const sines = new Float64Array(grid.count);
  return (positions) => {
    const values = Float64Array.from(positions);
    cosines.fill(0);
    sines.fill(0);
    addCosines(values, grid, cosines, 0, null);
    addCosines(values, grid, sines, -0.25, null);
    let top = 0;
    let highest = -1;
    for (let k = 0; k < grid.count; k += 1) {
      const power = (cosines[k] ?? 0) ** 2 + (sines[k] ?? 0) ** 2;
      if (power > highest) [top, highest] = [k, power];
    }
    const frequency = highestBetween(
      (f) => powerAt(positions, 1 / f),
      slopeOf(positions),
      grid.from + Math.max(0, top - 1) * grid.step,
      grid.from + Math.min(grid.count - 1, top + 1) * grid.step,
    );
    return { frequency, power: powerAt(positions, 1 / frequency) };
  };
}

// Half the slope of the power over the frequency, but for a factor above 0.
function slopeOf(positions: readonly number[]): (f: number) => number {
  return (f) => {
    let [cosine, sine, cosineSlope, sineSlope] = [0, 0, 0, 0];
    for (const x of positions) {
      const angle = 2 * Math.PI * fraction(x * f);
      cosine += Math.cos(angle);
      sine += Math.sin(angle);
      cosineSlope -= x * Math.sin(angle);
      sineSlope += x * Math.cos(angle);
    }
    return cosine * cosineSlope + sine * sineSlope;
  };
}

function refusePositions(positions: readonly number[], needed: number): Refusal | null {
  if (positions.some((x) => !Number.isFinite(x))) {
    return refuse("missing-value", say`A position is missing, expected a number.`);
  }
  return refuseFewer(positions.length, needed, say`positions`);
}

function refusePeriod(period: number): Refusal | null {
  return period > 0
    ? null
    : refuse("non-positive", say`The period is ${String(period)}, expected one above 0.`);
}
