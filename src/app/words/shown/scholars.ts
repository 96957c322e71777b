import { arabicHeld, arabicNearness, arabicScholars, arabicStances } from "../arabic/shown/scholars.ts";
import { yearText } from "../../../base/date/year.ts";
import { told } from "../reader/told.ts";
import type { Nearness } from "../../../show/scholars/looked.ts";
import type { StanceName } from "../../../show/scholars/taken.ts";

/** The words of the scholars' room. */
export const scholarWords = told(
  {
    scholars: "Scholars",
    each: "Each scholar",
    matrix: "Claims by scholars",
    byClaim: "By claim",
    byScholar: "By scholar",
    looks: "Two looks at who holds what",
    narrowLooks: "In what order",
    noneThen: "Nobody is in print by that year.",
    noStance: "No position is recorded by that year.",
    later: (n: number) =>
      n === 1 ? "One more scholar is in print only later." : `${n} more scholars are in print only later.`,
    silent: (n: number) =>
      n === 1
        ? "One more scholar says nothing of these questions, and has no column."
        : `${n} more scholars say nothing of these questions, and have no column.`,
    without: (n: number) =>
      n === 1
        ? "One more claim answers no question, and no position on it is recorded."
        : `${n} more claims answer no question, and no position on them is recorded.`,
    inAll: (n: number, years: readonly [number, number] | null, changed: number) => {
      const people = n === 1 ? "One scholar" : `${n} scholars`;
      const span = years === null ? "" : `, ${yearText(years[0])} to ${yearText(years[1])}`;
      const who = changed === 1 ? "One of them" : `${changed} of them`;
      return `${people}${span}.${changed === 0 ? "" : ` ${who} took another stance later.`}`;
    },
    span: (first: number, last: number) => `${yearText(first)} to ${yearText(last)}`,
    thenHeld: (year: number | null, claim: string) =>
      `${year === null ? "" : `until ${yearText(year)}, `}then holds “${claim}”`,
    ofCell: (who: string, word: string, claim: string, years: string) =>
      `${who} ${word} “${claim}”${years === "" ? "" : `, ${years}`}`,
    emptyCell: (who: string, claim: string) => `${who}, “${claim}”: nothing recorded`,
    name: "Scholar",
    inPrint: "In print",
    holdsNow: "Holds now",
    claimCount: "Claims",
    changedCount: "Changed",
    nothingHeld: "nothing recorded",
    undated: "undated",
    other: "Claims that bear on no question",
    claim: "Claim",
    or: "or",
    orMeans: "cannot be right together with the claim above it",
    whichExcludes: ", which cannot be right together with this",
    orLegend: ": the claim cannot be right together with the one above it",
    changed: "›",
    changedMeans: "before a word: they took another stance earlier",
    heldMeans: ": they have left it for a claim that cannot be right together with it",
    scholar: "scholar",
    legend: "A word is the latest stance recorded.",
    keys: "Arrow keys move from cell to cell; Enter opens what is there.",
    nothingRecorded: "nothing recorded",
    pointAt: "Point at a word, or move to it, to read since when.",
    since: (year: string) => `since ${year}`,
    until: (year: string) => `until ${year}`,
    before: "before:",
    knownAs: "Also written",
    orcid: "ORCID",
    page: "Positions over time, and what they rely on",
    overTime: "Positions over time",
    relies: "What is relied on",
    noSteps: "No argument of theirs is recorded.",
    directions: { for: "for", against: "against" },
    from: "from",
    comesDownTo: "comes down to",
    on: "on",
    noEvidence: "nothing seen or measured",
    more: (n: number) => `and ${n} more`,
    looked: "Seen and measured",
    times: (n: number) => (n === 1 ? "once" : `${n} times`),
    unanswered: "Arguments in print against what is held",
    unansweredNone: "None is recorded without a reply of theirs.",
    noReply: "no reply in print recorded here",
    onlyOthers: "no reply of theirs in print recorded here; others replied:",
    is: "against",
    changes: "Contradictions and changes",
    changesNone: "None is recorded.",
    via: "read in",
  },
  arabicScholars,
);

/** How each stance is said. */
export const stanceWords: Readonly<Record<StanceName, string>> = told(
  { holds: "holds", rejects: "rejects", doubts: "doubts", "leaves-open": "leaves open" },
  arabicStances,
);

/** A claim that was held and left for a rival. */
export const heldWord: string = told("held", arabicHeld);

/** How near somebody came to what they report. */
export const nearnessWords: Readonly<Record<Nearness, string>> = told(
  {
    "first-hand": "first-hand",
    "from likenesses": "from casts, pictures and drawings",
    "second-hand": "second-hand",
    "not said": "it is not said how",
  },
  arabicNearness,
);
