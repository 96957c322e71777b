import { arabicLiterature } from "../arabic/reading/literature.ts";
import { told } from "../reader/told.ts";
import type { Odd, takenKinds } from "../../../show/desk/literature/reading-list.ts";
import type { Flow, SearchLine } from "../../../show/desk/literature/search-log.ts";

const of = (n: number, one: string, more: string): string => `${n} ${n === 1 ? one : more}`;
const taken: Readonly<Record<(typeof takenKinds)[number], readonly [one: string, more: string]>> = {
  passages: ["passage", "passages"],
  positions: ["position", "positions"],
  observations: ["observation", "observations"],
  measurements: ["measurement", "measurements"],
};
const odd: Readonly<Record<Odd, string>> = {
  "taken-unread": "Records are taken from it at first hand, though it is not said to have been read.",
  "taken-from-nothing": "Records are taken from it, though there is said to be nothing in it.",
  "read-for-nothing": "It has been read, and nothing is taken from it yet.",
};

/** Words of the room of the literature: what has been read of it, and how it was looked for. */
export const literatureWords = told(
  {
    title: "Literature",
    looks: "Two looks at the literature",
    list: "Reading list",
    log: "Searches",
    none: "The corpus has no bibliography yet.",
    counts: (n: number) => (n === 1 ? "One source" : `${n} sources`),
    unlisted: "not on the list",
    statusOf: (label: string) => `What became of ${label}`,
    choose: (label: string) => `Choose ${label}`,
    show: "Show",
    all: "all",
    onlyOdd: "what does not go together",
    filter: "Narrow by words",
    order: "Order",
    byYear: "by year",
    byAuthor: "by author",
    byStatus: "by status",
    nothingSo: "Nothing on the list is so.",
    keys: "With the box of a source in focus: up and down to another, T to read, R read, N nothing in it, F not found, space to choose it for a change of several at once.",
    chosen: (n: number) => (n === 1 ? "One source chosen; set it to" : `${n} sources chosen; set them to`),
    setTo: "Set",
    unchoose: "Choose none",
    taken: (kind: (typeof takenKinds)[number], n: number) => of(n, ...taken[kind]),
    secondHand: (n: number) => `${of(n, "record", "records")} through another source`,
    odd: (one: Odd) => odd[one],
    paper: "Read",
    bringPaper: "Bring in its paper",
    more: (n: number) => (n === 1 ? "Show one more" : `Show ${n} more`),
    step: (n: number, status: string) => `${of(n, "source", "sources")}: ${status}`,
    noSearches:
      "No search is logged yet. A search says where was looked, with which words, how many came up, and why some were left out.",
    logOne: "Log a search",
    where: "Where",
    found: "found",
    screened: "looked at",
    kept: "kept",
    leftOut: "left out",
    notCounted: "not counted",
    by: (who: string) => `by ${who}`,
    change: "Change",
    changeOf: (where: string) => `Change the search in ${where}`,
    unaccounted: ({ unaccounted }: SearchLine) =>
      (unaccounted ?? 0) > 0
        ? `${of(unaccounted ?? 0, "one looked at is", "looked at are")} neither kept nor left out.`
        : `${of(-(unaccounted ?? 0), "more is", "more are")} kept or left out than were looked at.`,
    together: "All searches together",
    atLeast: (n: number) =>
      n === 1
        ? "One search lacks a count; the sums are at least these."
        : `${n} searches lack a count; the sums are at least these.`,
    twice: "A source that two searches found counts in each of them.",
    reasons: "Left out, and why",
    flow: ({ found, screened, kept, leftOut }: Flow) =>
      `${found} found, ${screened} looked at, ${leftOut} left out, ${kept} kept.`,
  },
  arabicLiterature,
);
