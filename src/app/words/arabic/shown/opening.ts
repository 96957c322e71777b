import { arabicCount, arabicFigure } from "../../reader/figures.ts";

/** What is told while a large corpus is being opened, and of long lists. */
export const arabicOpening = {
  files: (done: number, of: number) => `قُرئ ${arabicFigure(done)} من الملفات، وعددها ${arabicFigure(of)}`,
  judging: "قُرئت الملفات كلها، ويُستخرج الآن ما يترتب عليها، ثم تظهر الأحوال.",
  rules: "يُبحث الآن عن التنبيهات وعمّا تستند إليه الدعاوى.",
  looking: "يُبحث عن التنبيهات",
  notYet: "يُنظر في حاله",
  answers: (n: number) =>
    n === 1
      ? "جواب واحد"
      : arabicCount(n, { zero: "لا جواب", two: "جوابان", few: "# أجوبة", many: "# جوابًا", other: "# جواب" }),
  more: (n: number) =>
    n === 1
      ? "أظهر واحدًا آخر"
      : arabicCount(n, {
          two: "أظهر اثنين آخرين",
          few: "أظهر # أخرى",
          many: "أظهر # أخرى",
          other: "أظهر # أخرى",
        }),
  others: (n: number) =>
    n === 1
      ? "يوجد سجل آخر بكلماته: اكتب بعضها أعلاه."
      : `${arabicCount(n, { two: "يوجد سجلان آخران", few: "توجد # سجلات أخرى", many: "يوجد # سجلًا آخر", other: "يوجد # سجل آخر" })} بالكلمات: اكتب بعضها أعلاه.`,
  shown: (done: number, of: number) => `المعروض ${arabicFigure(done)} من ${arabicFigure(of)}.`,
};
