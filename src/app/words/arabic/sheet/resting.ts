import { apart, arabicCount, arabicFigure } from "../../reader/figures.ts";

/** Words of what a claim would fall without, on a sheet. */
export const arabicResting = {
  title: "لو فُقد شيء",
  together: "ويسقط كذلك إن فُقدت هذه معًا:",
  more: (n: number) =>
    n === 1
      ? "واحد آخر"
      : arabicCount(n, { two: "اثنان آخران", few: "# أخرى", many: "# أخرى", other: "# أخرى" }),
  further: "سطر الأوامر ينظر أبعد: check --rests-on.",
  lines: "الطرق المؤدية إليه",
  path: (n: number) => `الطريق ${arabicFigure(n)}`,
  caution:
    "تُعدّ في الطرق كل مقدمة كأنها تكفي وحدها. فإن احتاجت خطوة إلى عدة مقدمات معًا فالطرق أقل مما يبدو؛ أما ما فُقد أعلاه فدقيق.",
  circle: "هذه يسند بعضها بعضًا في دور، وذلك لا يزيد شيئًا:",
  author: (one: string) => `مؤلف واحد في طريقين، ${apart(one)}:`,
  ask: "إن كان أحدهما ينقل عن الآخر فسجّل ذلك في repeats أو via؛ فيصيران طريقًا واحدًا.",
};
