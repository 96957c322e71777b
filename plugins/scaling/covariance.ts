import type { Measured } from "../../src/plugin.ts";

/** The relative error that each ratio has from one cause, what both of its sizes share cancelled; a list for each cause. */
export type SharedByCause = readonly (readonly number[])[];

/** What the sizes on the two sides of each pair share with others, by cause. */
export function sharedByCause(larger: readonly Measured[], smaller: readonly Measured[]): SharedByCause {
  const byCause = new Map<string, number[]>();
  const add = (all: readonly Measured[], power: number): void =>
    all.forEach(({ quantity }, at) => {
      for (const { with: cause, relative } of quantity.shared) {
        const errors = byCause.get(cause) ?? larger.map(() => 0);
        errors[at] = (errors[at] ?? 0) + power * relative;
        byCause.set(cause, errors);
      }
    });
  add(larger, 1);
  add(smaller, -1);
  return [...byCause.values()];
}

/** How the log ratios err together, as far as it sets them apart. */
export interface Covariance {
  /** Q of the ratios about their common factor, by the inverse of the covariance. */
  readonly heterogeneity: (logRatios: readonly number[]) => number;
  /** Variance of a ratio's distance from the mean weighted by 1 / v. */
  readonly ofDeparture: (at: number) => number;
  /** The largest variance of the difference of two ratios. */
  readonly largestBetween: number;
}

const SAME = 1e-12;

/**
 * The covariance diag(v) + Σ d dᵀ of the log ratios, `d` each cause's errors about their mean: what all ratios have alike
 * moves them together and is no matter of their scatter (GUM 5.2.2). Null where nothing but that is shared.
 */
export function covarianceOf(v: readonly number[], shared: SharedByCause): Covariance | null {
  const n = v.length;
  const apart = shared
    .map((errors) => {
      const mean = errors.reduce((sum, one) => sum + one, 0) / n;
      return errors.map((one) => one - mean);
    })
    .filter((errors) => errors.some((one) => Math.abs(one) > SAME));
  if (apart.length === 0) return null;
  const rows = v.map((own, i) =>
    v.map((_, j) => apart.reduce((sum, d) => sum + (d[i] ?? 0) * (d[j] ?? 0), i === j ? own : 0)),
  );
  const of = (i: number, j: number): number => rows[i]?.[j] ?? 0;
  const root = choleskyOf(rows);
  const ones = solved(
    root,
    v.map(() => 1),
  );
  const whole = v.reduce((sum, own) => sum + 1 / own, 0);
  const shares = v.map((own) => 1 / own / whole);
  const withMean = rows.map((row) => dot(row, shares));
  const ofMean = dot(withMean, shares);
  const between = rows.flatMap((_, i) => rows.slice(0, i).map((__, j) => of(i, i) + of(j, j) - 2 * of(i, j)));
  return {
    heterogeneity: (logRatios) => {
      const mean = dot(logRatios, shares);
      const centred = solved(
        root,
        logRatios.map((one) => one - mean),
      );
      return Math.max(0, dot(centred, centred) - dot(centred, ones) ** 2 / dot(ones, ones));
    },
    ofDeparture: (i) => of(i, i) - 2 * (withMean[i] ?? 0) + ofMean,
    largestBetween: between.reduce((most, one) => Math.max(most, one), 0),
  };
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, one, i) => sum + one * (b[i] ?? 0), 0);
}

/** The lower triangle L with L Lᵀ the matrix. */
function choleskyOf(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const root: number[][] = [];
  for (const [i, row] of matrix.entries()) {
    const own: number[] = [];
    root.push(own);
    for (let j = 0; j <= i; j += 1) {
      const rest = (row[j] ?? 0) - dot(own, root[j]?.slice(0, j) ?? []);
      own.push(i === j ? Math.sqrt(Math.max(rest, Number.MIN_VALUE)) : rest / (root[j]?.[j] ?? 1));
    }
  }
  return root;
}

/** The x with L x = b. */
function solved(root: readonly (readonly number[])[], b: readonly number[]): readonly number[] {
  const x: number[] = [];
  for (const [i, row] of root.entries()) x.push(((b[i] ?? 0) - dot(x, row)) / (row[i] ?? 1));
  return x;
}
