import { arabicEmpty } from "../arabic/shown/empty.ts";
import { told } from "../reader/told.ts";
import { taughtLines } from "./taught-lines.ts";

/** What an empty page teaches: what would fill it, and the lines that would do so in any YAML file of the corpus. */
export const empty = told(
  {
    questions: {
      text: "The corpus asks no question yet.",
      files:
        "In a file it is written so, a question with its answers; the page follows as soon as the file is saved:",
      lines: taughtLines.questions,
    },
    artefacts: {
      text: "The corpus has no artefacts yet.",
      files:
        "In a file, a thing has an id and a name; its parts name it; what was measured on it names its dimension:",
      lines: taughtLines.artefacts,
    },
    scholars: {
      text: "The corpus names no scholar yet. A scholar has a name; a position says what they make of a claim, and where they say it.",
      files: "In a file it is written so:",
      lines: taughtLines.scholars,
    },
    outline: {
      text: "There is nothing to outline yet. An argument ties a claim to what was seen or measured.",
      files: "In a file it is written so:",
      lines: taughtLines.outline,
    },
    examinations: {
      text: "No examination is recorded yet. It names the things to look at, how, and what may come of it; what each outcome would speak for and against is all that a plan needs.",
      files: "In a file it is written so:",
      lines: taughtLines.examinations,
    },
    records: {
      text: "Nothing is recorded yet. Scholars and sources are a good beginning.",
      files: "In a file, records are lists named after their kind:",
      lines: taughtLines.records,
    },
  },
  arabicEmpty,
);
