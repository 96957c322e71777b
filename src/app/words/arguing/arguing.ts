import { arabicArguing } from "../arabic/arguing/arguing.ts";
import { told } from "../reader/told.ts";

/** What is known of an argument in hand, as its state is told in words. */
export interface InHandState {
  readonly premises: number;
  readonly aim: "nothing" | "claim" | "new" | "against";
  /** The new claim has its words. */
  readonly worded: boolean;
  /** The new claim answers a question. */
  readonly answers: boolean;
  /** The step in words is there. */
  readonly said: boolean;
}

const chosen = (n: number): string => (n === 0 ? "No premise chosen." : `Premises: ${n} chosen.`);

/** Words of the argument in hand: how it is begun, what it still lacks, and what would change with it. */
export const arguingWords = told(
  {
    title: "Argument in hand",
    changing: "Change of an argument",
    state: (one: InHandState): string => {
      const { premises, aim, worded, answers, said } = one;
      if (aim === "nothing")
        return premises === 0
          ? "Choose what it leans on (p), then where it leads (t) or what it is against (x)."
          : `${chosen(premises)} Now the conclusion (t), a new claim (n), or what it is against (x).`;
      if (aim === "new" && !worded) return `${chosen(premises)} Now the words of the new claim.`;
      if (premises === 0)
        return answers
          ? "An answer with nothing under it yet. Now what it leans on (p), or save it as it is."
          : `${aim === "against" ? "What it is against" : "The conclusion"} is chosen. Now what it leans on (p).`;
      return said
        ? `${chosen(premises)} It can be saved (Ctrl+Enter).`
        : `${chosen(premises)} Now the step in words (w): why the one bears on the other.`;
    },

    argueFrom: "Argue from it",
    argueFor: "Argue for it",
    argueAgainst: "Argue against it",
    anotherAnswer: "Argue for another answer",
    changePremises: "Change its premises",
    asPremise: "Take as premise",
    notPremise: "Leave out as premise",
    asConclusion: "Take as conclusion",
    notConclusion: "Leave out as conclusion",
    asTarget: "Be against it",
    notTarget: "Not against it",
    newClaim: "Lead to a new claim",
    toStep: "To the words of the step",
    ofOne: (way: string, label: string) => `${way}: ${label}`,

    because: "Because",
    therefore: "Therefore",
    against: "Against",
    premiseSearch: "Search for a premise",
    claimSearch: "Search for the conclusion",
    targetSearch: "Search for what it is against",
    claimWords: "Words of the new claim",
    answersTo: (question: string) => `It becomes an answer to: ${question}`,
    leaveOut: "leave out",
    leaveOutOne: (label: string) => `Leave out: ${label}`,
    step: "The step in words",
    stepEmpty: "Left empty, it does not tell a reader why the one bears on the other.",
    more: "Sort, weight, whose and from where",
    unsaid: "not said",
    search: (label: string) => `Search: ${label}`,
    byEmpty: "Without a name it is the corpus's own reasoning, or that of the authors of its source.",
    place: (label: string) => `Place in it: ${label}`,

    wouldChange: "What would change",
    itself: "The argument itself",
    becomes: "then",
    nothingElse: "Nothing else would stand otherwise.",
    notTried: "Told as soon as there is a premise, and somewhere to lead.",
    changed: "Saved. What changed",
    changedNothing: "Saved. Nothing else stands otherwise.",
    save: "Save",
    away: "Put away",
    awayWhy: "Kept as a draft; found again on the page of questions.",
    drop: "Throw away",
    open: "Open",
    fold: "Fold",
    close: "Close",
    readOnly: (why: string) => `It can be tried here, and not saved. ${why}`.trim(),
    gone: "What it changes was changed or taken out meanwhile. Take it in hand anew.",

    drafts: "Arguments begun and not saved",
    draftOf: (n: number, aim: string) =>
      `${n === 0 ? "No premise yet" : n === 1 ? "1 premise" : `${n} premises`}${aim === "" ? "" : `: ${aim}`}`,
    goOn: "Take in hand",
    throwAwayOne: (label: string) => `Throw away: ${label}`,
    drawn: "Drag from the upper edge of a box up to a conclusion, from its side to what it is against.",
  },
  arabicArguing,
);
