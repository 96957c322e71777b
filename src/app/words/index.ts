import {
  arabicFields,
  arabicMethods,
  arabicRoles,
  arabicSheets,
  arabicTies,
  arabicWords,
} from "./arabic/index.ts";
import { fieldName } from "../../read/grammar/field-words.ts";
import { yearText } from "../../base/date/year.ts";
import { counted, countedFirst } from "../../base/text/counted.ts";
import { arabicStandings } from "./arabic/judged/standings.ts";
import { arabicYear } from "./reader/figures.ts";
import { language } from "./reader/language.ts";
import { inReadersWords } from "./reader/said.ts";
import { told } from "./reader/told.ts";
import type { Standing } from "../../judge/judge.ts";
import type { Tie } from "../../show/pages/ties.ts";
import type { OutlineLine } from "../../show/pages/outline/outline.ts";

/** Who holds the answers of a question, from when to when, and how many answers stand and are open. */
interface DisputeSoFar {
  readonly people: number;
  readonly years: readonly [number, number] | null;
  readonly stands: number;
  readonly open: number;
}

/** All words of the interface: the only place where they are worded. */
export const words = told(
  {
    skip: "Skip to the page",
    questions: "Questions",
    outline: "Outline",
    records: "Records",
    findings: "Findings",
    reading: "Reading the corpus …",
    lookingAgain: "Looking for findings again",
    computing: (n: number) => (n === 1 ? "Computing one number" : `Computing ${n} numbers`),
    toAnswers: "The answers as they stand",
    answersExclusive: "Answers that cannot both be right",
    answersOpen: "Answers that may be right together",
    answer: "Answer",
    standing: "Standing",
    why: "Why, in one sentence",
    heldBy: "Held by",
    heldUntil: (year: string) => `, until ${year}`,
    disputeSoFar: ({ people, years, stands, open }: DisputeSoFar) => {
      const who = people === 1 ? "One scholar" : `${countedFirst(people)} scholars`;
      const span = years === null ? "" : `, ${yearText(years[0])} to ${yearText(years[1])}`;
      const verdict =
        stands > 0
          ? `${countedFirst(stands)} ${stands === 1 ? "answer stands" : "answers stand"}`
          : "No answer stands";
      const alive = open > 0 ? `; ${counted(open)} ${open === 1 ? "is" : "are"} open` : "";
      return `${who}${span}. ${verdict}${alive}.`;
    },
    nobody: "nobody in print",
    asKnownIn: "as known in",
    today: "now",
    untilToday: (year: string) => `${year}, now`,
    earlier: "Earlier year",
    before: (year: string) => `before ${year}`,
    later: "Later year",
    toNow: "Back to now",
    unnamed: (n: number) =>
      n === 1 ? "One more answer is named only later." : `${n} more answers are named only later.`,
    notThere: "There is no record of that name.",
    notThereYet: "Nothing in print names it in that year.",
    unreadable: "The corpus cannot be read.",
    whatItSays: "What it says",
    noAnswers: "No answers yet",
    answersAre: (told: string) => `Answers: ${told}`,
    answerCount: (n: number, standing: Standing) =>
      `${n} ${n > 1 && (standing === "stands" || standing === "falls") ? standing.slice(0, -1) : standing}`,
    whereSaid: "Where it stands in the corpus",
    restsOn: "What it rests on",
    above: "What rests on it",
    nothingBelow: "Nothing is put under it.",
    nothingAbove: "Nothing rests on it.",
    wouldNotStand: "It would not stand without",
    recordSheet: "Record sheet",
    holders: "Who holds it",
    numbers: "Numbers",
    about: "Findings about it",
    line: "line",
    noFindings: "Nothing to say about this corpus.",
    accepted: "accepted:",
    mend: "To mend it:",
    changes: {
      "it is": "is",
      "it would be": "would be",
      choice: "One way to mend it, if you choose:",
      commands: "Making these changes",
      how: "They are made in the corpus’s folder, from the command line. The same without --write only shows them.",
    },
    filter: "Filter by words",
    none: "Nothing fits these words.",
    changed: "What stands otherwise now:",
    changedNothing: "The files changed; no standing did.",
    was: (text: string, was: string | null, is: string | null) =>
      `${text}: ${was === null ? "was not there" : `was ${was}`}, ${is === null ? "now gone" : `now ${is}`}`,
    outlineHelp: "Arrow keys move and fold; Enter opens the sheet.",
    again: "see above",
    footing: {
      observed: "It reaches something seen or measured.",
      silent: "It reaches only what was passed over in silence.",
      attested: "It is held, but reaches nothing seen.",
      bare: "Nobody holds it and nothing is under it.",
    } as Readonly<Record<string, string>>,
    levels: { error: "Errors", warning: "Warnings", note: "Notes" },
  },
  arabicWords,
);

/** Fields whose name in the format is not the word to show. */
export const fieldWords: Readonly<Record<string, string>> = told(
  {
    lang: "language",
    at: "place",
    selector: "in the paper",
    present: "seen or not",
    plugin: "computed by",
    looks: "times looked at",
  } as Readonly<Record<string, string>>,
  arabicFields,
);

/** What a field is called, by its name in the format or that name in words. */
export function fieldWord(name: string): string {
  const words = name.replace(/-/g, " ");
  return Object.hasOwn(fieldWords, words) ? (fieldWords[words] ?? words) : inReadersWords(fieldName(words));
}

/** Headings of a sheet that are not those of a claim, by the kind of record. */
export const sheetWords: Readonly<
  Record<string, { readonly says?: string; readonly below?: string; readonly above?: string }>
> = told(
  {
    scholar: { says: "Who they are", above: "What is recorded of them" },
    source: { says: "In the bibliography", above: "What is recorded from it" },
    artefact: { says: "What it is", below: "What it belongs to" },
    image: { says: "What it is" },
    derivation: { says: "How it is computed" },
  },
  arabicSheets,
);

const languages = new Intl.DisplayNames(language === "ar" ? "ar" : "en-GB", {
  type: "language",
  fallback: "code",
});

/** The name of a language, by its code in BCP 47; what is no code stays as it is. */
export function languageName(code: string): string {
  try {
    return languages.of(code.trim()) ?? code;
  } catch {
    return code;
  }
}

/** The title of a method, from its name in a file. */
export function methodName(name: string): string {
  const own = language === "ar" ? arabicMethods[name.trim()] : undefined;
  if (own !== undefined) return own;
  const words = name.trim().replace(/-/g, " ");
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** How a tie is named on a sheet, seen from above and from below. */
export const tieWords: Readonly<Record<Tie["how"], { readonly below: string; readonly above: string }>> =
  told(
    {
      for: { below: "argument for it", above: "argues for" },
      against: { below: "argument against it", above: "argues against" },
      premise: { below: "from", above: "a premise of" },
      "computed on": { below: "computed on", above: "used by" },
      "bears on": { below: "bears on", above: "bears on" },
      of: { below: "of", above: "of" },
      "seen or measured": { below: "seen or measured", above: "seen or measured on it" },
      part: { below: "part", above: "its part" },
      whole: { below: "part of", above: "whole" },
      "said in": { below: "said in", above: "said in" },
      says: { below: "says", above: "says" },
      position: { below: "position", above: "position" },
    },
    arabicTies,
  );

/** What a line of the outline is to the line above it. */
export const roleWords: Readonly<Record<OutlineLine["role"], string>> = told(
  {
    question: "",
    answer: "",
    for: "for:",
    against: "against:",
    from: "from:",
    used: "computed on:",
    thing: "on:",
  },
  arabicRoles,
);

/** The four standings as a page writes them. */
export const standingWords: Readonly<Record<Standing, string>> = told(
  { stands: "stands", open: "open", falls: "falls", unsupported: "unsupported" },
  arabicStandings,
);

/** An astronomical year as a page writes it. */
export const yearIn: (astronomical: number) => string = told(yearText, arabicYear);
