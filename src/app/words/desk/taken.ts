import { arabicTaken } from "../arabic/desk/taken.ts";
import { told } from "../reader/told.ts";

/** Words beside what is taken from another corpus. */
export const takenWords = told(
  {
    from: (title: string) => `Taken from another corpus, “${title}”.`,
    fromUnnamed: "Taken from another corpus.",
    changedThere: (folder: string) => `It is changed there, and not here: open its folder, ${folder}.`,
  },
  arabicTaken,
);
