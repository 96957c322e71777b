import { mean, quantile, rootBetween, standardDeviation, type Random } from "../../../src/plugin.ts";
import type { Length } from "../lengths.ts";

/** The ways to draw data that keep the coarse shape of the lengths and have no unit (methods A8). */
export type NullId = "kde" | "gamma" | "lognormal" | "jitter";

/** One drawn length, to stand in the place of the i-th. */
export type Draw = (i: number) => number;

/** Silverman's bandwidth 0.9 min(sd, IQR / 1.34) n^-0.2; the sd alone where the quartiles coincide. */
export function silverman(values: readonly number[]): number {
  const sd = standardDeviation(values);
  const quartiles = (quantile(values, 0.75) - quantile(values, 0.25)) / 1.34;
  return 0.9 * (quartiles > 0 ? Math.min(sd, quartiles) : sd) * values.length ** -0.2;
}

/**
 * A length picked with replacement, plus a normal error of `bandwidth`, reflected at 0. Where artefacts gave more
 * than one length each, it is picked within the artefact of the i-th (methods A10).
 */
export function kernelDraws(lengths: readonly Length[], bandwidth: number, random: Random): Draw {
  const groups = groupsOf(lengths);
  return (i) => {
    const group = groups[i] ?? [];
    const picked = lengths[group[random.below(group.length)] ?? 0];
    return rounded(Math.abs((picked?.value ?? 0) + bandwidth * random.normal()), picked?.recordedTo ?? 0);
  };
}

/** Draws from the gamma distribution of greatest likelihood (Marsaglia & Tsang 2000). */
export function gammaDraws(lengths: readonly Length[], random: Random): Draw {
  const values = lengths.map((length) => length.value);
  const centre = mean(values);
  const spread = Math.log(centre) - mean(values.map(Math.log));
  const shape = gammaShape(spread);
  return (i) => rounded((gammaDraw(shape, random) * centre) / shape, lengths[i]?.recordedTo ?? 0);
}

/** Normal draws on ln X, with the mean and standard deviation of the data. */
export function lognormalDraws(lengths: readonly Length[], random: Random): Draw {
  const logs = lengths.map((length) => Math.log(length.value));
  const centre = mean(logs);
  const sd = standardDeviation(logs);
  return (i) => rounded(Math.exp(centre + sd * random.normal()), lengths[i]?.recordedTo ?? 0);
}

/** Each length within ± `share` of itself, even: keeps the unit of small multiples, hence cautious there. */
export function jitterDraws(lengths: readonly Length[], share: number, random: Random): Draw {
  return (i) => {
    const length = lengths[i];
    return rounded((length?.value ?? 0) * (1 + share * (2 * random.uniform() - 1)), length?.recordedTo ?? 0);
  };
}

function rounded(value: number, to: number): number {
  return to > 0 ? Math.max(to, Math.round(value / to) * to) : value;
}

// For each length the places from which its stand-in is picked: those of its artefact, when several artefacts
// are there and some gave several lengths; else all.
function groupsOf(lengths: readonly Length[]): readonly (readonly number[])[] {
  const places = new Map<string, number[]>();
  for (const [i, { artefact }] of lengths.entries()) {
    const group = places.get(artefact);
    if (group === undefined) places.set(artefact, [i]);
    else group.push(i);
  }
  const all = lengths.map((_, i) => i);
  const nested = places.size > 1 && places.size < lengths.length;
  return lengths.map(({ artefact }) => (nested ? (places.get(artefact) ?? all) : all));
}

/** Shape of greatest likelihood, from ln(mean) - mean(ln): the root of ln k - digamma(k). */
function gammaShape(spread: number): number {
  if (!(spread > 1e-12)) return 1e12;
  const excess = (logShape: number): number => logLessDigamma(Math.exp(logShape)) - spread;
  return Math.exp(rootBetween(excess, Math.log(1e-3), Math.log(1e13)));
}

// ln x - digamma(x): recurrence up to 10, then the asymptotic series (Abramowitz & Stegun 1964, 6.3.18).
function logLessDigamma(x: number): number {
  let shift = Math.log(x);
  let y = x;
  for (; y < 10; y += 1) shift += 1 / y;
  const z = 1 / (y * y);
  const series = z * (1 / 12 - z * (1 / 120 - z * (1 / 252 - z * (1 / 240 - z / 132))));
  return shift - Math.log(y) + 1 / (2 * y) + series;
}

function gammaDraw(shape: number, random: Random): number {
  if (shape < 1) return gammaDraw(shape + 1, random) * (1 - random.uniform()) ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = random.normal();
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(1 - random.uniform()) < (x * x) / 2 + d * (1 - v + Math.log(v))) return d * v;
  }
}
