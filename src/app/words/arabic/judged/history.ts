import { arabicCount, arabicFigure, arabicYear } from "../../reader/figures.ts";

const years = (n: number): string =>
  arabicCount(n, { two: "سنتا نشر", few: "# سنوات نشر", many: "# سنة نشر", other: "# سنة نشر" });

/** The words of the history's page. */
export const arabicHistory = {
  history: "التاريخ",
  lead: (count: number, changing: number, first: number, last: number) =>
    count === 1
      ? `سنة نشر واحدة: ${arabicYear(first)}.`
      : `${years(count)}، من ${arabicYear(first)} إلى ${arabicYear(last)}؛ ويتغيّر حال دعوى في ${changing === count ? "كل منها" : `${arabicFigure(changing)} منها`}.`,
  looks: "أي السنوات",
  every: "كل سنة",
  changing: "السنوات التي تغيّر حالًا",
  noYears: "لا شيء مما سُجّل منشور بعد.",
  noneThen: "لم يكن شيء منشورًا حتى تلك السنة.",
  noChanges: "لا يتغيّر حال في أي سنة.",
  pending: (n: number) =>
    n === 1
      ? "عدد واحد لسنوات سابقة لم يُحسب بعد؛ وإلى ذلك الحين يُذكر من دونه ما يتوقف عليه من حال."
      : arabicCount(n, {
          two: "عددان لسنوات سابقة لم يُحسبا بعد؛ وإلى ذلك الحين يُذكر من دونهما ما يتوقف عليهما من حال.",
          few: "# أعداد لسنوات سابقة لم تُحسب بعد؛ وإلى ذلك الحين يُذكر من دونها ما يتوقف عليها من حال.",
          many: "# عددًا لسنوات سابقة لم تُحسب بعد؛ وإلى ذلك الحين يُذكر من دونها ما يتوقف عليها من حال.",
          other: "# عدد لسنوات سابقة لم تُحسب بعد؛ وإلى ذلك الحين يُذكر من دونها ما يتوقف عليها من حال.",
        }),
  growing: (done: number, of: number) =>
    `ذُكر حتى الآن ${arabicFigure(done)} من سنوات النشر، وعددها ${arabicFigure(of)}؛ ويأتي الباقي كلما استُخرج.`,
  again: (done: number, of: number) =>
    `وصلت أعداد بعد ذلك، ويُعاد النظر بها في السنوات: ${arabicFigure(done)} من ${arabicFigure(of)}.`,
  brought: "ما نُشر",
  noPublication: "في غير منشور",
  withoutYear: "بلا سنة",
  own: "ما تضيفه المدوّنة نفسها.",
  changed: "ما تغيّر",
  named: "ذُكر أول مرة",
  map: (year: number) => `الخريطة كما في ${arabicYear(year)}`,
  questions: (year: number) => `المسائل كما في ${arabicYear(year)}`,
};
