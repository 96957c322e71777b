import type { Standing } from "../../../../judge/judge.ts";
import { apart, arabicCount } from "../../reader/figures.ts";
import { arabicStandings } from "./standings.ts";

/** The words of pages that are looked at as if an examination had ended in a certain way. */
export const arabicSuppose = {
  supposed: "افتراض",
  band: "المفترض",
  notFound: "لم يُعثر على شيء من هذا.",
  still: "كل هذا مفترض",
  from: "نتيجة من نتائج",
  back: "عودة إلى السجل",
  unknown: (written: string) => `ليس في المدوّنة نتيجة فحص تُسمّى «${apart(written)}». والسجل معروض كما هو.`,
  changes: "لو صحّ لتغيّر:",
  changesNothing: "لا يغيّر حال شيء.",
  notYet: "بقيت أعداد لم تُحسب؛ وما يغيّره يُذكر حين تحضر.",
  change: (was: Standing, is: Standing) => `${arabicStandings[was]}، ثم ${arabicStandings[is]}`,
  more: (n: number) =>
    n === 1
      ? "ودعوى أخرى"
      : arabicCount(n, {
          two: "ودعويان أخريان",
          few: "و# دعاوى أخرى",
          many: "و# دعوى أخرى",
          other: "و# دعوى أخرى",
        }),
  arrival: (name: string) => `${apart(name)}. مفترض، لم يُعثر عليه.`,
};
