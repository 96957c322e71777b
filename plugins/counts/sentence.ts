import {
  alike,
  formatP,
  say,
  type Computation,
  type Naming,
  type Settings,
  type Text,
} from "../../src/plugin.ts";
import { rateWords, shown, tellingOf, tellsEach, type Telling } from "./read.ts";

/** Ratios within this factor of 1 either way are called one rate, as far as the data bound them so. */
const NEAR = 2;

/** What the review's methods section prints; the words for what p says are fixed, and single records are not told. */
export function countsSentence(computation: Computation, _settings: Settings, name: Naming): Text {
  const { numbers, warnings } = computation;
  const telling = tellingOf(computation, name);
  const shares = telling.of === "shares";
  if (telling.nothing) return noComparison(telling);
  const ratio = numbers["ratio"];
  const p = numbers["p"]?.value ?? 1;
  const [value = "", low = "", high = ""] = alike(
    [ratio?.value ?? 0, ratio?.low ?? 0, ratio?.high ?? 0].map(shown),
  );
  const ends =
    ratio?.high === null ? say`at least ${shown(ratio.low ?? 0)}` : say`${value} (${low} to ${high})`;
  const test = shares ? say`Fisher’s exact test: ${formatP(p)}` : say`exact conditional test: ${formatP(p)}`;
  const found = ratioWords(telling, ends);
  const equal = shares ? say`equal shares` : say`equal rates`;
  if (warnings.includes("p-and-interval-differ"))
    return say`${found} is at the edge of what is compatible with ${equal}, for p and interval fall on different sides of 5 %; whether they differ cannot be decided (${test}).`;
  if (p < 0.05) return say`${found} is not compatible with ${equal} (${test}).`;
  if (warnings.includes("comparison-too-small"))
    return shares
      ? say`${found}; with so few, whether the shares differ cannot be decided (${test}).`
      : say`${found}; with so few, whether the rates differ cannot be decided (${test}).`;
  const bounded = ratio !== undefined && (ratio.low ?? 0) >= 1 / NEAR && (ratio.high ?? Infinity) <= NEAR;
  return bounded
    ? say`${found} is compatible with ${equal}, and not with one more than twice the other (${test}).`
    : say`${found} departs from ${equal} no better than chance, and whether they differ cannot be decided (${test}).`;
}

/** The ratio at the beginning of a sentence, after what was counted on both sides where that may be told. */
function ratioWords(telling: Telling, ends: Text): Text {
  const sums = sumsWords(telling);
  if (telling.of === "shares")
    return sums === null ? say`An odds ratio of ${ends}` : say`${sums}: an odds ratio of ${ends}`;
  return sums === null ? say`A ratio of the rates of ${ends}` : say`${sums}: a ratio of the rates of ${ends}`;
}

function noComparison(telling: Telling): Text {
  const sums = sumsWords(telling);
  if (telling.of === "shares")
    return sums === null
      ? say`No comparison is possible, for all or none had it on either side.`
      : say`${sums}: no comparison is possible, for all or none had it on either side.`;
  return sums === null
    ? say`No comparison is possible, for nothing was counted on either side.`
    : say`${sums}: no comparison is possible, for nothing was counted on either side.`;
}

/** What was counted on both sides; null where a single record could be read off it. */
function sumsWords(telling: Telling): Text | null {
  const { of, first, second } = telling;
  if (tellsEach(telling)) return null;
  return of === "shares"
    ? say`${shown(first.count)} of ${shown(first.exposure)} against ${shown(second.count)} of ${shown(second.exposure)}`
    : say`${rateWords(first, telling)} against ${rateWords(second, telling)}`;
}
