import { count, median, refuse, refuseFewer, say, type Refusal } from "../../../src/plugin.ts";
import { attenuation, refuseLengths, type Length } from "../lengths.ts";
import { FEWEST, kinship, peaksOf, type Peak } from "./quantogram.ts";

/** What is said of a peak above the smallest length. */
export const BELOW_ONE_UNIT = "fits the smallest length as less than one unit";

/** A peak of a search, with its place in the family of the best one. */
export interface FoundPeak extends Peak {
  /** `1/2 of the best`, `2 times the best`; empty where it is of another family. */
  readonly kin: string;
  /** Above the smallest length, where any unit fits it as less than one. */
  readonly aboveSmallest: boolean;
}

/** A search for a unit (methods A2). */
export interface Search {
  /** All peaks of the range asked for, highest first. */
  readonly peaks: readonly FoundPeak[];
  /** The highest one that is not above the smallest length, where the range goes below it. */
  readonly best: Peak;
  /** Upper end of the range in which the best one was looked for. */
  readonly limit: number;
  readonly smallest: number;
  readonly warnings: readonly string[];
}

/** Points of a search, times the lengths: more would take the memory of a small machine. */
const MOST_POINTS = 2e7;
/** Points of a search, times the sets drawn: more would take hours. */
const MOST_DRAWN = 1e11;

const tooWide = (): Refusal =>
  refuse(
    "range-too-wide",
    say`The range holds more units than can be looked through, expected a narrower one, or fewer draws.`,
  );

/** Refuses a search of so many sets as nobody would wait for. */
export function refuseEndless(
  lengths: readonly Length[],
  [qMin, qMax]: readonly [number, number],
  draws: number,
): Refusal | null {
  const longest = Math.max(...lengths.map((length) => length.value));
  return 8 * longest * (1 / qMin - 1 / qMax) * draws > MOST_DRAWN ? tooWide() : null;
}

/** The lowest unit worth looking for: four times what the lengths were recorded to, or their median error. */
export function lowestAllowed(lengths: readonly Length[]): number {
  const recorded = median(lengths.map((length) => length.recordedTo));
  const errors = median(lengths.map(({ sd, width }) => (width > 0 ? width / Math.sqrt(12) : sd)));
  return 4 * Math.max(recorded, errors);
}

/** Searches for a unit from qMin to qMax; refuses too few lengths and units below `lowest`, their precision. */
export function searchUnit(
  lengths: readonly Length[],
  qMin: number,
  qMax: number,
  lowest: number = lowestAllowed(lengths),
): Search | Refusal {
  const bad =
    refuseLengths(lengths.map((length) => length.value)) ?? refuseFewer(lengths.length, FEWEST, say`values`);
  if (bad !== null) return bad;
  if (!(qMin > 0) || !(qMax > qMin)) {
    return refuse("empty-range", say`The largest unit is not above the smallest, expected a range above 0.`);
  }
  if (qMin < lowest * (1 - 1e-12)) {
    return refuse(
      "range-below-precision",
      say`The smallest unit lies below four times the precision of the values, expected a larger one.`,
      { "lowest-allowed": lowest },
    );
  }
  const values = lengths.map((length) => length.value);
  if (20 * Math.max(...values) * (1 / qMin - 1 / qMax) * lengths.length > MOST_POINTS) return tooWide();
  const smallest = Math.min(...values);
  const limit = qMin < smallest ? Math.min(qMax, smallest) : qMax;
  const all = peaksOf(lengths, qMin, qMax);
  const best = limit === qMax ? all[0] : peaksOf(lengths, qMin, limit)[0];
  if (best === undefined) {
    const message = say`The values are too uncertain for units of this size, expected ${count(FEWEST)} precise ones.`;
    return refuse("too-few", message, { needed: FEWEST });
  }
  const effective = lengths.reduce((sum, length) => sum + attenuation(length, best.q) ** 2, 0);
  return {
    peaks: all.map((peak) => ({ ...peak, kin: kinOf(best, peak), aboveSmallest: peak.q > smallest })),
    best,
    limit,
    smallest,
    warnings: [
      ...(qMax > smallest ? ["range-above-smallest-length"] : []),
      ...(effective < 10 - 1e-9 ? ["small-sample"] : []),
    ],
  };
}

function kinOf(best: Peak, peak: Peak): string {
  const kin = kinship(best, peak);
  if (kin === null) return "";
  return kin.of === "submultiple" ? `1/${kin.by} of the best` : `${kin.by} times the best`;
}
