import { arabicCapture } from "../arabic/reading/capture.ts";
import { told } from "../reader/told.ts";

const listed = (words: readonly string[]): string => words.join(", ");

/** Words of the sheet on which a passage is taken from a paper, and of the list of those that were. */
export const captureWords = told(
  {
    title: "New passage",
    goesOn: "Passage begun before",
    more: (at: string) => `More from ${at}`,
    region: "A part of the page, without words of its own.",
    unprinted:
      "What is printed on this page is not known yet: write its number, and later pages will follow.",
    joined: (words: readonly string[]) => `Divided at a line's end, and joined: ${listed(words)}.`,
    kept: (words: readonly string[]) =>
      `Divided at a hyphen that may be the word's own, and kept: ${listed(words)}.`,
    asked: "Look at the print.",
    second: "Second-hand",
    secondHelp: "The words are of another source, and were read in this one.",
    of: "They are of",
    itself: "The words are the source's own",
    andFrom: "And from it:",
    also: {
      claims: "a claim",
      observations: "an observation",
      measurements: "a measurement",
      positions: "a position",
    },
    alsoTitle: {
      claims: "Claim",
      observations: "Observation",
      measurements: "Measurement",
      positions: "Position",
    },
    leaveOut: "Leave it out",
    leaveOutOne: (kind: string) => `Leave out: ${kind}`,
    quantities: "In the quotation:",
    take: (quantity: string) => `Take ${quantity}`,
    claimAbove: "Left empty, it is the claim above.",
    addScholars: (names: readonly string[]) =>
      `With ${listed(names)} as ${names.length === 1 ? "a new scholar" : "new scholars"}`,
    save: "Save",
    leave: "Leave it",
    keys: "Enter saves, Shift and Enter begins a line, Escape leaves it and keeps a draft.",
    unfinished: "Begun and not saved",
    goOn: "Go on",
    goOnWith: (quote: string) => `Go on with ${quote}`,
    throwAway: "Throw away",
    throwAwayOne: (quote: string) => `Throw away ${quote}`,

    passages: "Passages from it",
    none: "No passage has been taken from it yet. Select words in the paper and press c.",
    inPaper: "In the paper",
    inPaperOne: (at: string) => `Show in the paper: ${at}`,
    notFound: "Its words are not in the paper that is open.",
    takeMore: "Take more from it",
    takeMoreOne: (at: string) => `Take more from it: ${at}`,
    quoting: "words of",
    openIn: (label: string) => `Open ${label} at the place`,
    openAt: (label: string, page: number) => `Open ${label} at page ${page}`,
    open: (label: string) => `Open ${label}`,
    translation: "Translation",
  },
  arabicCapture,
);
