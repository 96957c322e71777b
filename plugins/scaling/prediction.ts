import {
  linearRegression,
  mean,
  refuse,
  refuseFewer,
  refuseUnlessPositive,
  say,
  standardDeviation,
  studentQuantile,
  type Refusal,
} from "../../src/plugin.ts";

/** A missing dimension foretold from one scale factor over n pairs (methods C5). */
export interface IsometricPrediction {
  readonly k: number;
  readonly y0: number;
  readonly low: number;
  readonly high: number;
  readonly df: number;
  readonly s: number;
}

/** y0 = x0 exp(mean ln(y / x)) with a prediction interval; at least 3 pairs. */
export function predictIsometric(
  x: readonly number[],
  y: readonly number[],
  x0: number,
  confidence = 0.95,
): IsometricPrediction | Refusal {
  const bad = refuseSizes(x, y, [x0]);
  if (bad !== null) return bad;
  const logs = x.map((size, i) => Math.log((y[i] ?? NaN) / size));
  const centre = mean(logs);
  const s = standardDeviation(logs);
  const df = logs.length - 1;
  const reach = studentQuantile(confidence, df) * s * Math.sqrt(1 + 1 / logs.length);
  const y0 = x0 * Math.exp(centre);
  return { k: Math.exp(centre), y0, low: y0 * Math.exp(-reach), high: y0 * Math.exp(reach), df, s };
}

/** A missing dimension foretold from the line ln y on ln x; `y0` is the median, not the mean. */
export interface AllometricPrediction {
  readonly y0: number;
  /** Where a further thing would lie. */
  readonly predicted: readonly [number, number];
  /** Where the line lies. */
  readonly line: readonly [number, number];
  readonly extrapolation: boolean;
}

/** Predictions at each of `at` by ordinary least squares on logs (methods C5). */
export function predictAllometric(
  x: readonly number[],
  y: readonly number[],
  at: readonly number[],
  confidence = 0.95,
): readonly AllometricPrediction[] | Refusal {
  const bad = refuseSizes(x, y, at);
  if (bad !== null) return bad;
  const logX = x.map(Math.log);
  const fit = linearRegression([logX], y.map(Math.log));
  if (fit === null) return refuse("no-variation", say`All first sizes are equal, expected them to vary.`);
  const [intercept = 0, slope = 0] = fit.coefficients;
  const centre = mean(logX);
  const squares = logX.reduce((sum, value) => sum + (value - centre) ** 2, 0);
  const t = studentQuantile(confidence, fit.df);
  return at.map((x0) => {
    const place = Math.log(x0);
    const lean = 1 / logX.length + (place - centre) ** 2 / squares;
    const y0 = Math.exp(intercept + slope * place);
    const around = (variance: number): readonly [number, number] => {
      const factor = Math.exp(t * fit.sigma * Math.sqrt(variance));
      return [y0 / factor, y0 * factor];
    };
    return {
      y0,
      predicted: around(1 + lean),
      line: around(lean),
      extrapolation: x0 < Math.min(...x) || x0 > Math.max(...x),
    };
  });
}

function refuseSizes(x: readonly number[], y: readonly number[], at: readonly number[]): Refusal | null {
  return (
    refuseUnlessPositive(x, say`first sizes`) ??
    refuseUnlessPositive(y, say`second sizes`) ??
    refuseUnlessPositive(at, say`sizes to predict from`) ??
    refuseFewer(Math.min(x.length, y.length), 3, say`pairs`)
  );
}
