import { arabicChanges } from "../arabic/desk/changes.ts";
import { told } from "../reader/told.ts";
import type { Step } from "../../../host/desk/state.ts";
import type { NoCommit } from "../../../host/desk/commit.ts";

/** The words of the page of what changed. */
export const changesWords = told(
  {
    changes: "Changes",
    looks: "Since when",
    sinceCommit: "Since the last commit",
    steps: "Steps made here",
    commit: (subject: string, when: string) => `Against the commit “${subject}” of ${when}.`,
    looking: "Looking for the last commit …",
    comparing: "Comparing …",
    noCommit: {
      "no-program": "There is no git on this machine, so there is no commit to compare with.",
      "no-repository": "The corpus lies in no git repository, so there is no commit to compare with.",
      "no-commit": "The repository of the corpus has no commit yet, so there is nothing to compare with.",
      unreadable: "The last commit cannot be read.",
    } as const satisfies Readonly<Record<NoCommit, string>>,
    instead: "The steps made here are kept all the same.",
    unreadable:
      "There is no readable corpus.yaml on one of the two sides, so they cannot be compared by record.",
    nothing: "Nothing that is recorded has changed.",
    same: "Nothing has changed.",
    pending: (n: number) =>
      `${n === 1 ? "One number is" : `${n} numbers are`} still to be computed; until then a standing that hangs on ${n === 1 ? "it" : "them"} is told without ${n === 1 ? "it" : "them"}.`,
    standings: "Standings that changed",
    standing: (was: string, is: string) => `was ${was}, is ${is}`,
    how: {
      changed: "Changed",
      added: "Added",
      taken: "Taken out",
      unread: "Cannot be read as it now stands",
    },
    moved: (from: string, to: string) => `from ${from} to ${to}`,
    was: "was",
    is: "is",
    empty: "nothing",
    says: (n: number) => (n === 1 ? "What it says: one field" : `What it says: ${n} fields`),
    said: (n: number) => (n === 1 ? "What it said: one field" : `What it said: ${n} fields`),
    files: "Files",
    file: {
      new: "is new",
      gone: "is gone",
      layout: "differs in comments or layout alone",
      words: "differs in its words",
      unread: "cannot be read as it now stands",
      unmerged: "holds two versions that were not merged",
    },
    noSteps:
      "Nothing was changed here yet. Every change that is made in the program is kept as a step, and each can be gone back to.",
    notKept: "The texts of this step are no longer kept.",
    step: (kind: Step["kind"], step: string) => {
      switch (kind) {
        case "undo":
          return `Taken back: ${step}`;
        case "redo":
          return `Done again: ${step}`;
        case "outside":
          return "Changed outside the program";
        default:
          return step;
      }
    },
    inFiles: (files: readonly string[]) => files.join(", "),
    now: "The corpus as it is",
    back: "Go back to here",
    ask: "The files will be as they were after this step. That is a step of its own, and can be undone.",
    backTo: (step: string) => `Back to how it was after: ${step}`,
    sure: "Go back",
    keep: "Leave them as they are",
    wentBack: "The files are as they were then.",
    older: (n: number) => `Older steps (${n})`,
  },
  arabicChanges,
);
