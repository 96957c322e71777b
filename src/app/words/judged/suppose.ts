import { arabicSuppose } from "../arabic/judged/suppose.ts";
import { told } from "../reader/told.ts";
import type { Standing } from "../../../judge/judge.ts";

/** The words of pages that are looked at as if an examination had ended in a certain way. */
export const supposeWords = told(
  {
    supposed: "Supposed",
    band: "What is supposed",
    notFound: "Nothing of this has been found.",
    still: "All of this is supposed",
    from: "An outcome of",
    back: "Back to the record",
    unknown: (written: string) =>
      `The corpus has no outcome of an examination called “${written}”. The record is shown as it is.`,
    changes: "It would change:",
    changesNothing: "It would change no standing.",
    notYet: "Numbers are still to be computed; what it would change is told when they are there.",
    change: (was: Standing, is: Standing) => `${was}, then ${is}`,
    more: (n: number) => (n === 1 ? "and one more claim" : `and ${n} more claims`),
    arrival: (name: string) => `${name}. Supposed, not found.`,
  },
  arabicSuppose,
);
