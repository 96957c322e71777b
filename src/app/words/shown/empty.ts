import { arabicEmpty } from "../arabic/shown/empty.ts";
import { told } from "../reader/told.ts";
import { taughtLines } from "./taught-lines.ts";

/** What an empty page teaches: the lines that would fill it, to be written into any YAML file of the corpus. */
export const empty = told(
  {
    questions: {
      text: "The corpus asks no question yet. A question and its answers are written so, in any YAML file of the folder; the page follows as soon as the file is saved.",
      lines: taughtLines.questions,
    },
    artefacts: {
      text: "The corpus has no artefacts yet. A thing has an id and a name; its parts name it; what was measured on it names its dimension:",
      lines: taughtLines.artefacts,
    },
    scholars: {
      text: "The corpus names no scholar yet. A scholar has a name; a position says what they make of a claim, and where they say it:",
      lines: taughtLines.scholars,
    },
    outline: {
      text: "There is nothing to outline yet. An argument ties a claim to what was seen or measured:",
      lines: taughtLines.outline,
    },
    examinations: {
      text: "No examination is recorded yet. It names the things to look at, how, and what may come of it; what each outcome would speak for and against is all that a plan needs:",
      lines: taughtLines.examinations,
    },
    records: {
      text: "Nothing is recorded yet. Records are lists named after their kind; scholars and sources are a good beginning:",
      lines: taughtLines.records,
    },
  },
  arabicEmpty,
);
