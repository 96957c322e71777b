import { arabicMerge } from "../arabic/desk/merge.ts";
import { told } from "../reader/told.ts";
import { counted, countedFirst } from "../../../base/text/counted.ts";
import type { MergedAlone } from "../../../show/desk/changes/merging/told.ts";

const sides = { mine: "this side", theirs: "that side", both: "both sides" } as const;

/** The words of the page on which two versions of a file are merged. */
export const mergeWords = told(
  {
    title: "Two versions to merge",
    open: "Merge the two versions",
    lead: (file: string, clashes: number) =>
      `Two versions of ${file} stand in one file. ${
        clashes === 0
          ? "They nowhere say two things of one place."
          : clashes === 1
            ? "In one place they say two things."
            : `In ${counted(clashes)} places they say two things.`
      } What only one of them has is kept.`,
    noMarks: (file: string) => `${file} holds no conflict marks: there is nothing to merge in it.`,
    toChanges: "What changed",
    looks: "How it is merged",
    byRecord: "By record",
    byLines: "By lines",
    onlyLines:
      "The versions cannot be compared record by record, so that the lines are merged as they are typed.",
    withheld:
      "The file names something that the corpus withholds: its lines are not shown here, and can be read in the file itself.",
    throughout: { mine: "This side throughout", theirs: "That side throughout" },
    before: "before",
    choice: { mine: "this", theirs: "that", both: "both", own: "something else" },
    ownWords: "What is to stand there",
    nothing: "nothing: it was taken out",
    nothingBefore: "nothing",
    alone: "Put together by itself",
    became: (side: MergedAlone["side"], how: MergedAlone["how"], fields: string) =>
      how === "added"
        ? `kept: only ${sides[side]} has it`
        : how === "taken"
          ? `taken out by ${sides[side]}`
          : `${fields}: from ${sides[side]}`,
    left: (n: number) => (n === 1 ? "One choice is left." : `${countedFirst(n)} choices are left.`),
    write: "Write the merged file",
    undoable: "The marks go. It is one step, and can be undone; then commit the file.",
    tryLines: "Merge it by lines, or mend it in an editor.",
    step: (file: string) => `Merge two versions of ${file}`,
    readOnly: "The corpus cannot be changed here, so that nothing can be merged.",
  },
  arabicMerge,
);
