import { apart } from "../../reader/figures.ts";

/** Words beside what is taken from another corpus. */
export const arabicTaken = {
  from: (title: string) => `مأخوذ من مدوّنة أخرى، «${apart(title)}».`,
  fromUnnamed: "مأخوذ من مدوّنة أخرى.",
  changedThere: (folder: string) => `يُغيَّر هناك لا هنا: افتح مجلدها ${apart(folder)}.`,
};
