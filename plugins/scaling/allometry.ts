import {
  fisherAbove,
  fisherQuantile,
  linearRegression,
  mean,
  refuse,
  refuseFewer,
  refuseUnlessPositive,
  say,
  studentQuantile,
  studentTwoSided,
  type Refusal,
} from "../../src/plugin.ts";

/** An interval whose ends may lie at infinity (null). */
export type SlopeInterval = readonly [number | null, number | null];

/** A line through logged sizes, with the p of the slope that was asked about. */
export interface Line {
  readonly slope: number;
  readonly intercept: number;
  readonly interval: SlopeInterval;
  readonly p: number;
}

/** Three lines through log sizes (Warton, Wright, Falster & Westoby 2006; methods C4). */
export interface Allometry {
  readonly n: number;
  readonly r: number;
  /** p of no relation at all; where it is not small a slope says nothing. */
  readonly pRelation: number;
  readonly ols: Line & { readonly se: number; readonly interceptInterval: readonly [number, number] };
  readonly sma: Line & { readonly rTest: number };
  readonly ma: Line;
}

/** Centred sums of squares and products, divided by n - 1. */
interface Moments {
  readonly n: number;
  readonly meanX: number;
  readonly meanY: number;
  readonly xx: number;
  readonly yy: number;
  readonly xy: number;
}

/** Allometry of positive sizes; `slope` is the one asked about: 1 for lengths, 2 for areas, 3 for volumes or masses. */
export function allometry(
  x: readonly number[],
  y: readonly number[],
  slope = 1,
  logOf: (size: number) => number = Math.log10,
): Allometry | Refusal {
  const bad =
    refuseUnlessPositive(x, say`first sizes`) ??
    refuseUnlessPositive(y, say`second sizes`) ??
    refuseFewer(Math.min(x.length, y.length), 3, say`pairs`);
  if (bad !== null) return bad;
  const logX = x.map(logOf);
  const logY = y.map(logOf);
  const fit = linearRegression([logX], logY);
  const m = momentsOf(logX, logY);
  if (fit === null || !(m.yy > 0)) {
    return refuse("no-variation", say`All sizes of one kind are equal, expected them to vary.`);
  }
  const df = m.n - 2;
  const r = m.xy / Math.sqrt(m.xx * m.yy);
  const [intercept = 0, b = 0] = fit.coefficients;
  const [seIntercept = 0, se = 0] = fit.errors;
  const t = studentQuantile(0.95, df);
  return {
    n: m.n,
    r,
    pRelation: correlationP(r, m.n),
    ols: {
      slope: b,
      intercept,
      interval: [b - t * se, b + t * se],
      interceptInterval: [intercept - t * seIntercept, intercept + t * seIntercept],
      se,
      p: studentTwoSided((b - slope) / se, df),
    },
    sma: standardisedAxis(m, r, slope),
    ma: majorAxis(m, slope),
  };
}

function standardisedAxis(m: Moments, r: number, asked: number): Line & { readonly rTest: number } {
  const slope = Math.sign(r) * Math.sqrt(m.yy / m.xx);
  const spread = (fisherQuantile(0.05, 1, m.n - 2) * (1 - r * r)) / (m.n - 2);
  const ends = [
    slope * (Math.sqrt(spread + 1) - Math.sqrt(spread)),
    slope * (Math.sqrt(spread + 1) + Math.sqrt(spread)),
  ];
  const rTest =
    (m.yy - asked ** 2 * m.xx) /
    Math.sqrt((m.yy - 2 * asked * m.xy + asked ** 2 * m.xx) * (m.yy + 2 * asked * m.xy + asked ** 2 * m.xx));
  return {
    slope,
    intercept: m.meanY - slope * m.meanX,
    interval: [Math.min(...ends), Math.max(...ends)],
    rTest,
    p: correlationP(rTest, m.n),
  };
}

// In the axes of the data the condition on the slope is one on the angle: sin² 2d = 4 H ab / (a - b)²,
// with a and b the variances along and across, and H = F / (n - 2).
function majorAxis(m: Moments, asked: number): Line {
  const difference = Math.hypot(m.yy - m.xx, 2 * m.xy);
  const slope = m.xy === 0 ? (m.yy > m.xx ? Infinity : 0) : (m.yy - m.xx + difference) / (2 * m.xy);
  const along = (m.xx + m.yy + difference) / 2;
  const across = Math.max(0, (m.xx * m.yy - m.xy ** 2) / along);
  const sine = (2 * Math.sqrt((fisherQuantile(0.05, 1, m.n - 2) / (m.n - 2)) * along * across)) / difference;
  const covariance = (m.yy - m.xx) * asked + m.xy * (1 - asked ** 2);
  const residual = m.yy - 2 * asked * m.xy + asked ** 2 * m.xx;
  const axis = asked ** 2 * m.yy + 2 * asked * m.xy + m.xx;
  return {
    slope,
    intercept: m.meanY - slope * m.meanX,
    interval: sine >= 1 ? [null, null] : turned(slope, Math.asin(sine) / 2),
    p: correlationP(covariance / Math.sqrt(residual * axis), m.n),
  };
}

function turned(slope: number, by: number): SlopeInterval {
  const angle = Math.atan(slope);
  const low = angle - by;
  const high = angle + by;
  return [low <= -Math.PI / 2 ? null : Math.tan(low), high >= Math.PI / 2 ? null : Math.tan(high)];
}

function correlationP(r: number, n: number): number {
  const rest = 1 - r * r;
  return rest <= 0 ? 0 : fisherAbove((r * r * (n - 2)) / rest, 1, n - 2);
}

function momentsOf(x: readonly number[], y: readonly number[]): Moments {
  const n = Math.min(x.length, y.length);
  const meanX = mean(x);
  const meanY = mean(y);
  let [xx, yy, xy] = [0, 0, 0];
  for (let i = 0; i < n; i += 1) {
    const dx = (x[i] ?? 0) - meanX;
    const dy = (y[i] ?? 0) - meanY;
    xx += dx * dx;
    yy += dy * dy;
    xy += dx * dy;
  }
  return { n, meanX, meanY, xx: xx / (n - 1), yy: yy / (n - 1), xy: xy / (n - 1) };
}
