import { arabicHistory } from "../arabic/judged/history.ts";
import { told } from "../reader/told.ts";
import { yearText } from "../../../base/date/year.ts";

/** The words of the history's page. */
export const historyWords = told(
  {
    history: "History",
    lead: (years: number, changing: number, first: number, last: number) =>
      years === 1
        ? `One year of print, ${yearText(first)}.`
        : `${years} years of print, ${yearText(first)} to ${yearText(last)}; in ${changing === years ? "each" : changing} of them the standing of a claim changes.`,
    looks: "Which years",
    every: "Every year",
    changing: "Years that change a standing",
    noYears: "Nothing that is recorded is in print yet.",
    noneThen: "Nothing was in print by that year.",
    noChanges: "In no year does a standing change.",
    pending: (n: number) =>
      n === 1
        ? "One number of earlier years is still to be computed; until then a standing that hangs on it is told without it."
        : `${n} numbers of earlier years are still to be computed; until then a standing that hangs on them is told without them.`,
    growing: (done: number, of: number) =>
      `${done} of ${of} years of print are told so far; the others follow as they are worked out.`,
    again: (done: number, of: number) =>
      `Numbers have come since; the years are gone through again with them: ${done} of ${of}.`,
    brought: "What came into print",
    noPublication: "In no publication",
    withoutYear: "Without a year",
    own: "What the corpus adds itself.",
    changed: "Changed",
    named: "Named for the first time",
    map: (year: number) => `Map as of ${yearText(year)}`,
    questions: (year: number) => `Questions as of ${yearText(year)}`,
  },
  arabicHistory,
);
