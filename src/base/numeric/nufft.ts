import FFT from "fft.js";
import { fraction } from "./phases.ts";
import { integrate } from "./quadrature.ts";
import type { FrequencyGrid } from "./spectrum.ts";

/** Cells of the fine grid that a position is spread over, and the sharpness of the kernel for that width. */
const WIDTH = 12;
const HALF = WIDTH / 2;
const SHARPNESS = 2.3 * WIDTH;

/** Coefficients of a polynomial of degree 16 are parted into 9 even and 8 odd ones. */
const EVEN = 9;
const ODD = 8;
const DEGREE = EVEN + ODD - 1;

/** Fills the sums over the positions of cos(2 pi x f), for two sets of positions at once. */
export type CosinePairs = (
  first: Float64Array,
  second: Float64Array,
  firstSums: Float64Array,
  secondSums: Float64Array,
) => void;

/** Whether a pair by transform costs less than twice `addCosines`: nanoseconds as measured for each step of either. */
export function pairsAreQuicker(positions: number, grid: FrequencyGrid): boolean {
  return 0.75 * positions * grid.count > 190 * positions + 10 * sizeFor(grid);
}

/** Cells of the fine grid: a power of two, at least two for each frequency. */
function sizeFor(grid: FrequencyGrid): number {
  return 2 ** Math.ceil(Math.log2(2 * grid.count + WIDTH));
}

/**
 * The sums of `addCosines` for many sets of positions on one grid, by a non-uniform fast Fourier transform
 * (Dutt & Rokhlin 1993; kernel exp(b (sqrt(1 - z^2) - 1)) of Barnett, Magland & af Klinteberg 2019, both from
 * memory): two real sets in one complex transform. Error below 1e-9 for each position.
 */
export function cosinePairs(grid: FrequencyGrid): CosinePairs {
  const size = sizeFor(grid);
  const middle = Math.floor(grid.count / 2);
  const centre = grid.from + middle * grid.step;
  const transform = new FFT(size);
  const half = correction(grid.count, middle, size);
  const own = new Float64Array(2 * (size + 2 * WIDTH));
  const other = new Float64Array(2 * (size + 2 * WIDTH));
  const folded = new Float64Array(2 * size);
  const spectrum = new Float64Array(2 * size);
  return (first, second, firstSums, secondSums) => {
    spread(first, own, size, grid.step, centre);
    spread(second, other, size, grid.step, centre);
    fold(own, other, folded, size);
    transform.transform(spectrum, folded);
    for (let k = 0; k < grid.count; k += 1) {
      const at = 2 * ((middle - k + size) & (size - 1));
      firstSums[k] = half[k]! * spectrum[at]!;
      secondSums[k] = half[k]! * spectrum[at + 1]!;
    }
  };
}

/** Half of 1 over the kernel's transform at each frequency: hermitian sums count every cosine twice. */
function correction(count: number, middle: number, size: number): Float64Array {
  return Float64Array.from({ length: count }, (_, k) => {
    const turn = (2 * Math.PI * (k - middle)) / size;
    return 0.25 / integrate((t) => kernel(t / HALF) * Math.cos(turn * t), 0, HALF, 6);
  });
}

function kernel(z: number): number {
  return Math.abs(z) >= 1 ? 0 : Math.exp(SHARPNESS * (Math.sqrt(1 - z * z) - 1));
}

/** Lays each position, turned by its phase at the middle frequency, over the cells around its place on the circle. */
function spread(
  positions: Float64Array,
  cells: Float64Array,
  size: number,
  step: number,
  centre: number,
): void {
  cells.fill(0);
  for (let i = 0; i < positions.length; i += 1) {
    const x = positions[i]!;
    const place = size * fraction(x * step);
    const phase = 2 * Math.PI * fraction(x * centre);
    const cosine = Math.cos(phase);
    const sine = Math.sin(phase);
    const first = Math.ceil(place - HALF);
    const s = 2 * (first - (place - HALF)) - 1;
    const squared = s * s;
    // The margin keeps cells before 0 and after the last in the array until they are folded back.
    const left = 2 * (first + WIDTH);
    const right = left + 2 * (WIDTH - 1);
    for (let j = 0; j < HALF; j += 1) {
      const row = j * (EVEN + ODD);
      let even = 0;
      for (let c = EVEN - 1; c >= 0; c -= 1) even = even * squared + pieces[row + c]!;
      let odd = 0;
      for (let c = ODD - 1; c >= 0; c -= 1) odd = odd * squared + pieces[row + EVEN + c]!;
      odd *= s;
      const near = even + odd;
      const far = even - odd;
      cells[left + 2 * j]! += near * cosine;
      cells[left + 2 * j + 1]! += near * sine;
      cells[right - 2 * j]! += far * cosine;
      cells[right - 2 * j + 1]! += far * sine;
    }
  }
  for (let c = 0; c < 2 * WIDTH; c += 1) {
    cells[2 * size + c]! += cells[c]!;
    cells[2 * WIDTH + c]! += cells[2 * (size + WIDTH) + c]!;
  }
}

/** One set made hermitian into the real part of the transform, the other into its imaginary part. */
function fold(own: Float64Array, other: Float64Array, folded: Float64Array, size: number): void {
  for (let m = 0; m < size; m += 1) {
    const here = 2 * (m + WIDTH);
    const there = 2 * (((size - m) & (size - 1)) + WIDTH);
    const ownReal = own[here]! + own[there]!;
    const ownImaginary = own[here + 1]! - own[there + 1]!;
    const otherReal = other[here]! + other[there]!;
    const otherImaginary = other[here + 1]! - other[there + 1]!;
    folded[2 * m] = ownReal - otherImaginary;
    folded[2 * m + 1] = ownImaginary + otherReal;
  }
}

/** For the first half of the cells the kernel over one cell as a polynomial in -1 to 1: even coefficients, then odd. */
const pieces: Float64Array = kernelPieces();

function kernelPieces(): Float64Array {
  const table = new Float64Array(HALF * (EVEN + ODD));
  for (let j = 0; j < HALF; j += 1) {
    const powers = powersOf((s) => kernel(((s + 1) / 2 + j - HALF) / HALF));
    for (const [power, value] of powers.entries()) {
      table[j * (EVEN + ODD) + (power % 2 === 0 ? power / 2 : EVEN + (power - 1) / 2)] = value;
    }
  }
  return table;
}

/** The polynomial of degree 16 through a function's values at the Chebyshev nodes of -1 to 1, by powers. */
function powersOf(value: (s: number) => number): Float64Array {
  const count = DEGREE + 1;
  const nodes = Array.from({ length: count }, (_, i) => (Math.PI * (i + 0.5)) / count);
  const values = nodes.map((angle) => value(Math.cos(angle)));
  const powers = new Float64Array(count);
  let before: readonly number[] = [0];
  let term: readonly number[] = [1];
  for (let degree = 0; degree < count; degree += 1) {
    const sum = nodes.reduce((total, angle, i) => total + values[i]! * Math.cos(degree * angle), 0);
    const share = ((degree === 0 ? 1 : 2) * sum) / count;
    term.forEach((coefficient, power) => (powers[power]! += share * coefficient));
    const next = Array.from(
      { length: degree + 2 },
      (_, power) => (degree === 0 ? 1 : 2) * (term[power - 1] ?? 0) - (before[power] ?? 0),
    );
    [before, term] = [degree === 0 ? [1] : term, degree === 0 ? [0, 1] : next];
  }
  return powers;
}
