import { formatNumber, formatP, type Computation, type Naming, type Settings } from "../../src/plugin.ts";
import { countedWords, tellingOf, tellsEach, type Telling } from "./read.ts";

/** Ratios within this factor of 1 either way are called one rate, as far as the data bound them so. */
const NEAR = 2;

/** What the review's methods section prints; the words for what p says are fixed, and single records are not told. */
export function countsSentence(computation: Computation, _settings: Settings, name: Naming): string {
  const { numbers, warnings } = computation;
  const telling = tellingOf(computation, name);
  const { of, nothing } = telling;
  const what = of === "shares" ? "shares" : "rates";
  const sums = tellsEach(telling) ? "" : `${inWords(telling)}: `;
  if (nothing)
    return `${capital(sums)}${sums === "" ? "N" : "n"}o comparison is possible, for ${of === "shares" ? "all or none had it" : "nothing was counted"} on either side.`;
  const ratio = numbers["ratio"];
  const p = numbers["p"]?.value ?? 1;
  const kind = of === "shares" ? "an odds ratio" : "a ratio of the rates";
  const ends =
    ratio?.high === null
      ? `at least ${shown(ratio.low ?? 0)}`
      : `${shown(ratio?.value ?? 0)} (${shown(ratio?.low ?? 0)} to ${shown(ratio?.high ?? 0)})`;
  const test = `${of === "shares" ? "Fisher’s exact test" : "exact conditional test"}: ${formatP(p)}`;
  const found = `${capital(`${sums}${kind}`)} of ${ends}`;
  if (warnings.includes("p-and-interval-differ"))
    return `${found} is at the edge of what is compatible with equal ${what}, for p and interval fall on different sides of 5 %; whether they differ cannot be decided (${test}).`;
  if (p < 0.05) return `${found} is not compatible with equal ${what} (${test}).`;
  if (warnings.includes("comparison-too-small"))
    return `${found}; with so few, whether the ${what} differ cannot be decided (${test}).`;
  const bounded = ratio !== undefined && (ratio.low ?? 0) >= 1 / NEAR && (ratio.high ?? Infinity) <= NEAR;
  return bounded
    ? `${found} is compatible with equal ${what}, and not with one more than twice the other (${test}).`
    : `${found} departs from equal ${what} no better than chance, and whether they differ cannot be decided (${test}).`;
}

function inWords(telling: Telling): string {
  const [first, second] = [telling.first, telling.second].map((side) => countedWords(side, telling, shown));
  return `${first} against ${second}`;
}

function shown(value: number): string {
  return formatNumber(value, 3);
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
