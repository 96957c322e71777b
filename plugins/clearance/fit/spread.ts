import { normalAbove } from "../../../src/plugin.ts";

/** What a difference of two sizes may be: two even spreads of whole widths `widths`, and a normal error `u`, about `centre`. */
export interface Spread {
  readonly centre: number;
  readonly widths: readonly [number, number];
  readonly u: number;
}

/** A width below this share of all else is as good as a normal error of the same variance, and keeps more digits so. */
const NARROW = 1e-4;
/** The largest number below 1, and the least above 0, that keeps all its digits. */
const [ALMOST, LEAST] = [1 - 2 ** -53, 2 ** -1022];

/** Chance that the difference is at least `low` and at most `high`; null where an end is open. */
export function chanceBetween(spread: Spread, low: number | null, high: number | null): number {
  const [from, to] = [low ?? -Infinity, high ?? Infinity];
  if (from > to) return 0;
  // Taken on the side where both tails are small, so that a small chance keeps its digits.
  const rightwards = spread.centre > (Math.max(from, -1e300) + Math.min(to, 1e300)) / 2;
  const chance = rightwards
    ? chanceAbove(turned(spread), -to) - chanceAbove(turned(spread), -from, true)
    : chanceAbove(spread, from) - chanceAbove(spread, to, true);
  // A normal error has no ends: what is all but certain is not certain, and what is all but impossible is not impossible.
  const open = spread.u > 0 && (low !== null || high !== null);
  return Math.min(open ? ALMOST : 1, Math.max(open && from < to ? LEAST : 0, chance));
}

/** How dense the differences lie at `x`; infinite at an exact one. */
export function densityAt(spread: Spread, x: number): number {
  const { widths, u } = settled(spread);
  const t = spread.centre - x;
  const [a, b] = widths;
  if (b > 0) return stepped((s) => integral(s, u), t, a, b);
  if (a > 0) return (share(t + a / 2, u) - share(t - a / 2, u)) / a;
  if (u === 0) return t === 0 ? Infinity : 0;
  return Math.exp(-((t / u) ** 2) / 2) / (u * Math.sqrt(2 * Math.PI));
}

/** Chance of a difference of at least `x`, or with `beyond` of more than it. */
function chanceAbove(spread: Spread, x: number, beyond = false): number {
  if (!Number.isFinite(x)) return x < 0 ? 1 : 0;
  const t = spread.centre - x;
  if (t > 0) return 1 - chanceAbove(turned(spread), -x, !beyond);
  const {
    widths: [a, b],
    u,
  } = settled(spread);
  if (b > 0) return stepped((s) => secondIntegral(s, u), t, a, b);
  if (a > 0) return (integral(t + a / 2, u) - integral(t - a / 2, u)) / a;
  return u === 0 ? Number(t === 0 && !beyond) : share(t, u);
}

function turned({ centre, widths, u }: Spread): Spread {
  return { centre: -centre, widths, u };
}

/** The wider spread first; one too narrow to matter goes into the normal error. */
function settled({ widths, u }: Omit<Spread, "centre">): Omit<Spread, "centre"> {
  const [a, b] = [Math.max(...widths), Math.min(...widths)];
  const narrow = (width: number, beside: number): boolean => width > 0 && width < NARROW * beside;
  if (narrow(b, Math.max(a, u))) return settled({ widths: [a, 0], u: Math.hypot(u, b / Math.sqrt(12)) });
  if (narrow(a, u)) return { widths: [0, 0], u: Math.hypot(u, a / Math.sqrt(12)) };
  return { widths: [a, b], u };
}

/** The mean of a function's second differences over two even spreads. */
function stepped(of: (t: number) => number, t: number, a: number, b: number): number {
  const [wide, close] = [(a + b) / 2, (a - b) / 2];
  return (of(t + wide) - of(t + close) - of(t - close) + of(t - wide)) / (a * b);
}

/** Chance that a normal error with standard uncertainty `u` is above −t, then its integral over t, then that one's. */
function share(t: number, u: number): number {
  return u === 0 ? (t > 0 ? 1 : t < 0 ? 0 : 0.5) : normalAbove(-t / u);
}

function integral(t: number, u: number): number {
  return u === 0 ? Math.max(0, t) : t * share(t, u) + u * u * bell(t, u);
}

function secondIntegral(t: number, u: number): number {
  if (u === 0) return Math.max(0, t) ** 2 / 2;
  return ((t * t + u * u) * share(t, u) + t * u * u * bell(t, u)) / 2;
}

function bell(t: number, u: number): number {
  return Math.exp(-((t / u) ** 2) / 2) / (u * Math.sqrt(2 * Math.PI));
}
