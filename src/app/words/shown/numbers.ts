import { arabicJoints, arabicNumberNames, arabicNumbers } from "../arabic/shown/numbers.ts";
import { told } from "../reader/told.ts";
import { taughtDerivation } from "./taught-lines.ts";
import type { Bearing } from "../../../derive/bearing.ts";
import type { Derived } from "../../../derive/derived/derived.ts";

const only = (n: number, one: string, many: string): string => (n === 1 ? one : `${n} ${many}`);

/** Words of the numbers pages. */
export const numberWords = told(
  {
    numbers: "Numbers",
    empty: {
      text: "Nothing is computed yet. A derivation names a method, what it is computed on, and what its numbers bear on:",
      lines: taughtDerivation,
    },
    noClaim: "Bear on no claim",
    number: "Number",
    outcome: "Came out as",
    saysOfIt: "Says of the claim",
    says: {
      supports: "supports it",
      disputes: "disputes it",
      inconclusive: "is inconclusive",
    } as const satisfies Readonly<Record<Bearing, string>>,
    heading: {
      supports: "supports the claim",
      disputes: "disputes the claim",
      inconclusive: "is inconclusive about the claim",
      none: "is to bear on the claim",
    } as const,
    status: {
      computed: "computed",
      refused: "refused",
      failed: "failed",
      withheld: "not allowed to run",
      pending: "still being computed",
    } as const satisfies Readonly<Record<Derived["status"], string>>,
    pendingLong: "The number is still being computed; the page follows when it is there.",
    supportsWhen: "supports when ",
    disputesWhen: "disputes when ",
    is: (name: string, value: string) => `${name} is ${value}`,
    largeP: "A large p is no support: a bound on what would have been missed is not asked for.",
    strength: (strength: string) => `taken as a ${strength} argument`,
    bearsOn: "What it bears on",
    bearsOnNothing: "It bears on no claim.",
    turnsTitle: "What would turn it",
    hangs: "It hangs on which readings are taken.",
    holdsAnyway: (n: number) =>
      only(
        n,
        "The one other choice of readings changes nothing it says.",
        "other choices of readings were tried; none changes what it says.",
      ),
    noChoice: "There is no other choice of readings to try.",
    notTried: (n: number) =>
      only(
        n,
        "One other choice of readings is still being computed.",
        "other choices of readings are still being computed.",
      ),
    throughout: "throughout",
    instead: "instead",
    withReadingsOf: "With the readings of",
    withReading: "With",
    singly: (n: number) =>
      only(
        n,
        "One single reading, taken by itself, changes nothing.",
        "single readings, each taken by itself, change nothing.",
      ),
    thenNothing: "it would be refused",
    thenSays: (says: string) =>
      says === "inconclusive"
        ? "it would be inconclusive"
        : says === "says nothing of"
          ? "it would say nothing"
          : says === "supports"
            ? "it would support it"
            : "it would dispute it",
    sameAsNow: "it would say the same",
    lossesTitle: "Left out one at a time",
    hangsOnOne: "It hangs on one of the things it was computed on.",
    noneTurns: (n: number) =>
      only(
        n,
        "What could be left out changes nothing it says.",
        "artefacts, sources and surveys were left out, one at a time; without any of them it says the same.",
      ),
    othersLeft: (n: number) =>
      only(
        n,
        "Without one other it says the same.",
        "others were left out; without any of them it says the same.",
      ),
    without: "Without",
    sameAs: "or, which is the same,",
    sharing: "the readings that share the error of",
    runs: (name: string, low: string, high: string) =>
      low === high ? `${name} stays ${low}` : `${name} runs from ${low} to ${high}`,
    reach: (reached: string) => `Over all of these, ${reached}.`,
    fewDraws: (draws: number) =>
      `Where sets are drawn, ${String(draws).replace(/\B(?=(?:\d{3})+$)/g, ",")} are each time, and as many as for the number itself where p comes near a limit.`,
    lossesMore: (n: number) => only(n, "One more of these", "more of these"),
    untried: (n: number) =>
      only(
        n,
        "One single thing more was not left out by itself: only what several measurements have in common was.",
        "single things more were not left out by themselves: only what several measurements have in common was.",
      ),
    lossesPending: (n: number) =>
      only(n, "One loss is still being computed.", "losses are still being computed."),
    beaten: "Not tried, since an argument stands against it:",
    beatenMore: "Not tried, since arguments stand against them:",
    doesNotHold: "does not hold, an argument stands against it",
    takeCare: "Take care",
    metHere: "Met in these data",
    general: "Of the method as such",
    allNumbers: "All its numbers",
    name: "Name",
    value: "Value",
    interval: "95 % interval",
    what: "What it is",
    inFile: (name: string) => `Written ${name} in a file.`,
    looks: (times: number) => `The same method looked ${times} times at whether`,
    looksBeside: "beside this also with",
    looksTogether: (adjusted: string, others: number) =>
      `${others > 0 ? "with what came of all of them, " : ""}p for all looks together (Holm 1979) is ${adjusted}`,
    wanted: "What could be measured for it",
    wantedCount: (n: number) =>
      only(
        n,
        "One more measurement would enter it, were it made:",
        "more measurements would enter it, were they made:",
      ),
    of: "of",
    besideIt: (dimension: string) => `to set beside the ${dimension} of`,
    follows: (from: string, size: string) => `; follows from the ${from}: ${size}, which does not enter`,
    wantedMore: (n: number) => only(n, "One more", "more"),
    inputs: "What it was computed on",
    measurement: "Measurement",
    evidence: "Evidence",
    recorded: "As recorded",
    written: "Figure as written",
    inSI: "In SI, ± 1 s",
    source: "Source",
    state: "Taken or left out",
    takenAs: (input: string) => `taken as ${input.replace(/-/g, " ")}`,
    takenIn: "taken",
    merged: (others: string) => `in one mean with ${others}`,
    leftOut: (why: string) => `left out: ${why}`,
    leftOutCount: (n: number) => only(n, "One record was left out", "records were left out"),
    withheld: (n: number) => only(n, "One more is withheld.", "more are withheld."),
    panelsWithheld: "Drawings of single measurements are not shown: some of them are withheld.",
    nothingTaken: "Nothing was taken.",
    settings: "How it was computed",
    byDefault: "the method’s own",
    unit: "unit tested",
    foundIn: "found in",
    unitFrom: "from",
    methodSources: "The method was published in",
    asTable: "The figure as tables",
    thinned: (shown: number, all: number) => `${shown} of ${all} points.`,
    save: "Save figure as SVG",
    saved: "Saved.",
    drawing: "Drawing …",
    undrawn: "The figure could not be drawn; its data stand in the tables.",
    wholeNumber: "The number with its figure",
    allow: {
      title: "A plug-in of this corpus",
      what: "This number is computed by code that came with the corpus. Nothing of it has been run. Read it; once you allow it, it runs in a sandbox without network, files or clock, as long as the file stays as it is.",
      file: "File",
      code: "The text of the file",
      allow: "Allow this plug-in",
      allowed: "By a plug-in of this corpus, which you allowed; its file has the SHA-256",
    },
  },
  arabicNumbers,
);

/** Names of numbers that are abbreviated in a file, as the trade writes them. */
const names: Readonly<Record<string, string>> = told(
  {
    phi: "φ",
    df: "degrees of freedom",
    cv: "coefficient of variation",
    detectable: "detectable departure",
    "p-fit": "chance to fit",
    "lumped-p": "p of the residuals",
    "p-adjusted": "adjusted p",
    "period-p": "p of the period",
    "compare-p": "p of likeness",
  } as Readonly<Record<string, string>>,
  arabicNumberNames,
);

/** A number's name in words. */
export function numberName(name: string): string {
  return names[name] ?? name.replace(/-/g, " ");
}

const joints = told({ and: " and ", or: ", or ", to: " to " }, arabicJoints);

/** A condition in words, its comparisons and the words between them by turns: `k within 1.9 to 2.1`, ` and `, `p > 0.05`. */
export function conditionParts(condition: string): readonly string[] {
  return condition
    .split(/( and |, or )/)
    .map((part, place) =>
      place % 2 === 1
        ? part === " and "
          ? joints.and
          : joints.or
        : part.replace(/^[\w-]+/, numberName).replace(/(?<=within .*?)\s*\.\.\s*/, joints.to),
    );
}

/** A sentence as it is printed: figure and per cent sign are not parted, and powers of ten are written out. */
export function printed(text: string): string {
  return text
    .replace(/(\d) %/g, "$1\u00a0%")
    .replace(
      /(?<=\d)e([+-]?)(\d+)/g,
      (_, sign: string, power: string) =>
        `\u00a0×\u00a010${sign === "-" ? "⁻" : ""}${[...power].map((digit) => "⁰¹²³⁴⁵⁶⁷⁸⁹"[Number(digit)]).join("")}`,
    );
}
