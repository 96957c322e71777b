import { arabicOpening } from "../arabic/shown/opening.ts";
import { told } from "../reader/told.ts";

const figure = (n: number): string => n.toLocaleString("en");

/** What is told while a large corpus is being opened, and of long lists. */
export const openingWords = told(
  {
    files: (done: number, of: number) => `Reading ${figure(done)} of ${figure(of)} files`,
    judging:
      "All files have been read. What follows from them is being worked out; the standings appear then.",
    rules: "What the rules find is being looked for, and what claims rest on.",
    looking: "Looking for findings",
    notYet: "being judged",
    answers: (n: number) => (n === 1 ? "One answer" : `${figure(n)} answers`),
    more: (n: number) => (n === 1 ? "Show one more" : `Show ${figure(n)} more`),
    others: (n: number) =>
      n === 1
        ? "One more is found by its words: write some of them above."
        : `${figure(n)} more are found by their words: write some of them above.`,
    shown: (done: number, of: number) => `${figure(done)} of ${figure(of)} are shown.`,
  },
  arabicOpening,
);
