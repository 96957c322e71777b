import {
  count,
  fieldsOf,
  formatDrawnP,
  formatNumber,
  formatP,
  numberOf,
  paragraph,
  say,
  textOf,
  type Computation,
  type Naming,
  type Settings,
  type Text,
} from "../../src/plugin.ts";
import { meetingIn } from "./two-rows/ranges.ts";
import { meeting, whetherMet } from "./two-rows/ranges-sentence.ts";

/** What the review's methods section prints; the words for what p says are fixed. */
export function spacingSentence(
  computation: Computation,
  _settings: Settings,
  _name: Naming,
  tells: "each" | "together" = "each",
): Text {
  const met = meetingIn(computation);
  if (met !== null) return tells === "together" ? whetherMet(met) : meeting(met, computation);
  return paragraph([evenness(computation), period(computation), comparison(computation)]);
}

function evenness({ numbers, data }: Computation): Text {
  const n = numbers["n"]?.value ?? 0;
  const p = numbers["p"]?.value ?? 1;
  const { drawn, draws, smallestP } = fieldsOf(data);
  const gaps = gapsWords(n, numbers["censored"]?.value ?? 0);
  const cv = `${formatNumber(100 * (numbers["cv"]?.value ?? 0), 2)} %`;
  const found = drawn === true ? formatDrawnP(p, numberOf(draws)) : formatP(p);
  const least = numberOf(smallestP);
  const test =
    least > 0.001
      ? say`${found}; measured so, no ${count(n)} gaps give less than ${formatNumber(least, 2)}`
      : found;
  if (p < 0.05)
    return say`${gaps} with a coefficient of variation of ${cv} are compatible with a regular spacing, being more even than gaps at random (${test}).`;
  return p < 0.2 || n < 5
    ? say`${gaps} with a coefficient of variation of ${cv} may or may not be regular, which cannot be decided (${test}).`
    : say`${gaps} with a coefficient of variation of ${cv} fit a regular spacing no better than chance (${test}).`;
}

function gapsWords(n: number, broken: number): Text {
  const gaps = say`${count(n)} gaps`;
  if (broken === 0) return gaps;
  return broken === 1 ? say`${gaps} and 1 broken end` : say`${gaps} and ${say`${count(broken)} broken ends`}`;
}

/** A period given beforehand and one searched for are never told alike. */
function period({ numbers, data }: Computation): Text | null {
  const p = numbers["period-p"]?.value;
  if (p === undefined) return null;
  const shown = fieldsOf(fieldsOf(data)["shown"]);
  const size = numberOf(shown["size"]) || 1;
  const length = `${formatNumber((numbers["period"]?.value ?? 0) / size, 4)} ${textOf(shown["unit"])}`;
  const found = fieldsOf(fieldsOf(data)["period"]);
  return found["given"] === true ? given(length, p) : searched(length, p, numberOf(found["sets"]));
}

function given(length: string, p: number): Text {
  const test = say`Rayleigh's test, exact after Kluyver 1905: ${formatP(p)}`;
  if (p < 0.05)
    return say`The positions are compatible with a period of ${length}, given beforehand (${test}).`;
  return p < 0.2
    ? say`Whether the positions follow a period of ${length}, given beforehand, cannot be decided (${test}).`
    : say`The positions follow a period of ${length}, given beforehand, no better than chance (${test}).`;
}

function searched(length: string, p: number, sets: number): Text {
  const test = say`periodogram against ${count(sets)} sets of positions at random, searched alike: ${formatDrawnP(p, sets)}`;
  if (p < 0.05)
    return say`A search among periods found its best at ${length}; the positions are compatible with a period of that size (${test}).`;
  return p < 0.2
    ? say`A search among periods found its best at ${length}; whether the positions have a period cannot be decided (${test}).`
    : say`A search among periods found its best at ${length}; the positions follow it no better than chance (${test}).`;
}

function comparison({ numbers, warnings, data }: Computation): Text | null {
  const p = numbers["compare-p"]?.value;
  if (p === undefined) return null;
  const { exact, count: looked, smallest } = fieldsOf(fieldsOf(data)["compared"]);
  const relabelled = numberOf(looked);
  const test =
    exact === true
      ? say`${formatP(p)} over all ${count(relabelled)} relabellings, of which so few gaps could give no less than ${formatNumber(numberOf(smallest), 2)}`
      : say`${formatDrawnP(p, relabelled)} over relabellings drawn at random`;
  if (warnings.includes("comparison-too-small"))
    return say`Whether the two rows are spaced alike cannot be decided from so few gaps (permutation test of Gehan 1965: ${test}).`;
  return p < 0.05
    ? say`The two rows are not compatible with one spacing (permutation test of Gehan 1965: ${test}).`
    : say`The two rows are compatible with one spacing (permutation test of Gehan 1965: ${test}).`;
}
