import type { Bearing } from "../../derive/bearing.ts";
import type { Derived } from "../../derive/derive.ts";

const only = (n: number, one: string, many: string): string => (n === 1 ? one : `${n} ${many}`);

/** Words of the numbers pages. */
export const numberWords = {
  numbers: "Numbers",
  empty: {
    text: "Nothing is computed yet. A derivation names a method, what it is computed on, and what its numbers bear on:",
    lines: `units:                        # in corpus.yaml
  span: { is: 22.5 ± 0.3 cm, from: hale-1896 p. 3 }

derivations:                  # in any other YAML file
  - id: rims-in-spans
    plugin: unit-fit
    inputs: { values: { of: [bowl-1, bowl-2, bowl-3], dimension: rim } }
    parameters: { unit: span }
    bears-on:
      - claim: measured-in-spans
        supports: { p: "< 0.01" }`,
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
  supportsWhen: (condition: string) => `supports when ${condition}`,
  disputesWhen: (condition: string) => `disputes when ${condition}`,
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
  noChoice: "Each dimension has one reading only, so there is no other choice of readings.",
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
  takeCare: "Take care",
  metHere: "Met in these data",
  general: "Of the method as such",
  allNumbers: "All its numbers",
  name: "name",
  value: "value",
  interval: "95 % interval",
  what: "what it is",
  looks: (times: number, adjusted: string | null) =>
    `These data were looked at ${times} times for the same claim${adjusted === null ? "" : `; p for all looks together is ${adjusted}`}.`,
  inputs: "What it was computed on",
  measurement: "measurement",
  written: "as written",
  inSI: "in SI",
  source: "source",
  state: "taken or left out",
  takenAs: (input: string) => `in, as ${input.replace(/-/g, " ")}`,
  takenIn: "in",
  merged: (others: string) => `in one mean with ${others}`,
  leftOut: (why: string) => `left out: ${why}`,
  leftOutCount: (n: number) => only(n, "One measurement was left out", "measurements were left out"),
  withheld: (n: number) => only(n, "One more is withheld.", "more are withheld."),
  panelsWithheld: "Drawings of single measurements are not shown: some of them are withheld.",
  nothingTaken: "Nothing was taken.",
  settings: "How it was computed",
  byDefault: "the method’s own",
  unit: "Unit tested",
  foundIn: "found in",
  unitFrom: "from",
  methodSources: "The method was published in",
  asTable: "The figure as tables",
  thinned: (shown: number, all: number) => `${shown} of ${all} points.`,
  save: "Save figure as SVG",
  saved: "Saved.",
  drawing: "Drawing …",
  undrawn: "The figure could not be drawn; its data stand in the tables.",
  sheet: "The record",
  wholeNumber: "The number with its figure",
} as const;
