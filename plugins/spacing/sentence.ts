import {
  fieldsOf,
  formatDrawnP,
  formatNumber,
  formatP,
  numberOf,
  textOf,
  type Computation,
  type Naming,
  type Settings,
} from "../../src/plugin.ts";
import { factorsWords, meetingIn, reachWords, type Meeting } from "./two-rows/ranges.ts";

/** What the review's methods section prints; the words for what p says are fixed. */
export function spacingSentence(
  computation: Computation,
  _settings: Settings,
  _name: Naming,
  tells: "each" | "together" = "each",
): string {
  const met = meetingIn(computation);
  if (met !== null) return tells === "together" ? whetherMet(met) : meeting(met, computation);
  return [evenness(computation), period(computation), comparison(computation)]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

/** Two rows of which only the reach is known. */
function meeting(met: Meeting, { data }: Computation): string {
  const shown = fieldsOf(fieldsOf(data)["shown"]);
  const size = numberOf(shown["size"]) || 1;
  const words = (reach: Meeting["own"]): string => `${reachWords(reach, size)} ${textOf(shown["unit"])}`;
  const enlarged =
    met.factors[0] === 1 && met.factors[1] === 1
      ? ""
      : ` Enlarged by ${reachWords(met.factors, 1, 4)}, to ${words(met.enlarged)}, they ${
          { all: "meet", some: "meet with some of these factors only", none: "do not meet" }[met.meetEnlarged]
        }.`;
  return `Gaps of ${words(met.own)} and of ${words(met.other)} ${met.meet ? "meet" : "do not meet"}.${enlarged} They meet ${factorsWords(met.needed)}.`;
}

function whetherMet({ meet, meetEnlarged, factors }: Meeting): string {
  const enlarged = factors[0] !== 1 || factors[1] !== 1;
  const met = enlarged
    ? { all: "meet", some: "meet with some of the factors", none: "do not meet" }[meetEnlarged]
    : null;
  return `The ranges of the two rows ${met ?? (meet ? "meet" : "do not meet")}${enlarged ? ", the first enlarged" : ""}.`;
}

function evenness({ numbers, data }: Computation): string {
  const n = numbers["n"]?.value ?? 0;
  const censored = numbers["censored"]?.value ?? 0;
  const p = numbers["p"]?.value ?? 1;
  const { drawn, draws, smallestP } = fieldsOf(data);
  const gaps = `${n} gaps${censored > 0 ? ` and ${censored} broken ${censored === 1 ? "end" : "ends"}` : ""}`;
  const cv = `a coefficient of variation of ${formatNumber(100 * (numbers["cv"]?.value ?? 0), 2)} %`;
  const said =
    p < 0.05
      ? "are compatible with a regular spacing, being more even than gaps at random"
      : p < 0.2 || n < 5
        ? "may or may not be regular, which cannot be decided"
        : "fit a regular spacing no better than chance";
  const test = drawn === true ? formatDrawnP(p, numberOf(draws)) : formatP(p);
  const least = numberOf(smallestP);
  const reach = least > 0.001 ? `; measured so, no ${n} gaps give less than ${formatNumber(least, 2)}` : "";
  return `${gaps} with ${cv} ${said} (${test}${reach}).`;
}

/** A period given beforehand and one searched for are never told alike. */
function period({ numbers, data }: Computation): string {
  const p = numbers["period-p"]?.value;
  if (p === undefined) return "";
  const shown = fieldsOf(fieldsOf(data)["shown"]);
  const size = numberOf(shown["size"]) || 1;
  const length = `${formatNumber((numbers["period"]?.value ?? 0) / size, 4)} ${textOf(shown["unit"])}`;
  const found = fieldsOf(fieldsOf(data)["period"]);
  if (found["given"] === true) {
    const what = `a period of ${length}, given beforehand`;
    const said =
      p < 0.05
        ? `The positions are compatible with ${what}`
        : p < 0.2
          ? `Whether the positions follow ${what}, cannot be decided`
          : `The positions follow ${what}, no better than chance`;
    return `${said} (Rayleigh's test, exact after Kluyver 1905: ${formatP(p)}).`;
  }
  const said =
    p < 0.05
      ? "the positions are compatible with a period of that size"
      : p < 0.2
        ? "whether the positions have a period cannot be decided"
        : "the positions follow it no better than chance";
  const sets = numberOf(found["sets"]);
  return `A search among periods found its best at ${length}; ${said} (periodogram against ${sets} sets of positions at random, searched alike: ${formatDrawnP(p, sets)}).`;
}

function comparison({ numbers, warnings, data }: Computation): string {
  const p = numbers["compare-p"]?.value;
  if (p === undefined) return "";
  const said = warnings.includes("comparison-too-small")
    ? "Whether the two rows are spaced alike cannot be decided from so few gaps"
    : p < 0.05
      ? "The two rows are not compatible with one spacing"
      : "The two rows are compatible with one spacing";
  const { exact, count, smallest } = fieldsOf(fieldsOf(data)["compared"]);
  const test =
    exact === true
      ? `${formatP(p)} over all ${numberOf(count)} relabellings, of which so few gaps could give no less than ${formatNumber(numberOf(smallest), 2)}`
      : `${formatDrawnP(p, numberOf(count))} over relabellings drawn at random`;
  return `${said} (permutation test of Gehan 1965: ${test}).`;
}
