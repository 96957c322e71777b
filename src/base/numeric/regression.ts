import { mean } from "./sample.ts";

/** Ordinary least squares with an intercept: coefficients (intercept first), their standard errors and the fit. */
export interface Regression {
  readonly coefficients: readonly number[];
  readonly errors: readonly number[];
  /** Residual standard deviation. */
  readonly sigma: number;
  readonly r2: number;
  readonly df: number;
}

/**
 * Least squares of `y` on the columns `x` with an intercept, by Householder QR on centred columns
 * (Golub & Van Loan 1996, from memory). Null when a column is constant or follows from the others.
 */
export function linearRegression(x: readonly (readonly number[])[], y: readonly number[]): Regression | null {
  const n = y.length;
  const df = n - x.length - 1;
  const centres = x.map(mean);
  const centreY = mean(y);
  const columns = x.map((column, j) => Float64Array.from(column, (value) => value - (centres[j] ?? 0)));
  const response = Float64Array.from(y, (value) => value - centreY);
  const total = response.reduce((sum, value) => sum + value * value, 0);
  const triangle = triangulate(columns, response);
  if (triangle === null) return null;
  const slopes = backSubstitute(triangle, response);
  let rest = 0;
  for (let i = x.length; i < n; i += 1) rest += (response[i] ?? 0) ** 2;
  const sigma = Math.sqrt(rest / df);
  const inverse = x.map((_, j) => backSubstitute(triangle, unit(x.length, j)));
  const errors = x.map(
    (_, j) => sigma * Math.sqrt(inverse.reduce((sum, row) => sum + (row[j] ?? 0) ** 2, 0)),
  );
  const intercept = slopes.reduce((rest, slope, j) => rest - slope * (centres[j] ?? 0), centreY);
  const lean = inverse.reduce(
    (sum, row) => sum + row.reduce((dot, value, j) => dot + value * (centres[j] ?? 0), 0) ** 2,
    1 / n,
  );
  return {
    coefficients: [intercept, ...slopes],
    errors: [sigma * Math.sqrt(lean), ...errors],
    sigma,
    r2: 1 - rest / total,
    df,
  };
}

/** Turns the columns into the upper triangle R in place, and the response into Q'y; null when rank is short. */
function triangulate(
  columns: readonly Float64Array[],
  response: Float64Array,
): readonly Float64Array[] | null {
  for (const [k, column] of columns.entries()) {
    const whole = Math.hypot(...column);
    const norm = Math.hypot(...column.subarray(k));
    if (!(norm > 1e-13 * whole)) return null;
    const head = column[k] ?? 0;
    const pivot = head > 0 ? -norm : norm;
    const mirror = column.slice(k);
    mirror[0] = head - pivot;
    const size = mirror.reduce((sum, value) => sum + value * value, 0);
    for (const other of [...columns.slice(k), response]) reflect(other, mirror, k, size);
  }
  return columns;
}

function reflect(target: Float64Array, mirror: Float64Array, from: number, size: number): void {
  let dot = 0;
  for (const [i, value] of mirror.entries()) dot += value * (target[from + i] ?? 0);
  const factor = (2 * dot) / size;
  for (const [i, value] of mirror.entries()) target[from + i] = (target[from + i] ?? 0) - factor * value;
}

function backSubstitute(triangle: readonly Float64Array[], right: ArrayLike<number>): number[] {
  const solution = triangle.map(() => 0);
  for (let i = triangle.length - 1; i >= 0; i -= 1) {
    let value = right[i] ?? 0;
    for (let j = i + 1; j < triangle.length; j += 1) value -= (triangle[j]?.[i] ?? 0) * (solution[j] ?? 0);
    solution[i] = value / (triangle[i]?.[i] ?? 1);
  }
  return solution;
}

function unit(length: number, place: number): readonly number[] {
  return Array.from({ length }, (_, i) => (i === place ? 1 : 0));
}
