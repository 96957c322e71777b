import { arabicCount, arabicFigure } from "../../reader/figures.ts";

/** The words of the page of coherent standpoints. */
export const arabicStandpoints = {
  standpoints: "المذاهب",
  title: "المذاهب المتسقة",
  what: "المذهب المتسق يحسم من المعلّق كل ما يجتمع بلا تناقض. خذ بديلًا واحدًا من كل قسم أدناه: أي منها يجتمع مع أي من سائرها.",
  part: (n: number) => `القسم ${arabicFigure(n)}`,
  and: "و",
  moreContradictions: (n: number) =>
    n === 1
      ? "وتناقض آخر لا ينفصل عنه"
      : arabicCount(n, {
          two: "وتناقضان آخران لا ينفصل عنهما",
          few: "و# تناقضات أخرى لا ينفصل عنها",
          many: "و# تناقضًا آخر لا ينفصل عنها",
          other: "و# تناقض آخر لا ينفصل عنها",
        }),
  bearsOn: "له أثر في",
  claim: "الدعوى",
  alternative: (n: number) => `البديل ${arabicFigure(n)}`,
  throughout: "في كل مذهب",
  alternatives: (from: number, to: number) =>
    from === to ? `البديل ${arabicFigure(from)}` : `البدائل ${arabicFigure(from)} إلى ${arabicFigure(to)}`,
  evidence: "الأدلة",
  arguments: "الحجج",
  below: (n: number) =>
    n === 1
      ? "شيء آخر يتبعه"
      : arabicCount(n, {
          two: "شيئان آخران يتبعانه",
          few: "# أشياء أخرى تتبعه",
          many: "# شيئًا آخر تتبعه",
          other: "# شيء آخر تتبعه",
        }),
  fits: "يوافق كليًّا",
  fitsNearly: "يوافق إلا رأيًا واحدًا",
  nobody: "لا أحد",
  alike: (n: number) =>
    arabicCount(n, {
      two: "وجهان يبدوان كذلك؛ وما يميّز بينهما محجوب.",
      few: "# وجوه تبدو كذلك؛ وما يميّز بينها محجوب.",
      many: "# وجهًا تبدو كذلك؛ وما يميّز بينها محجوب.",
      other: "# وجه تبدو كذلك؛ وما يميّز بينها محجوب.",
    }),
  more: (n: number) =>
    n === 1
      ? "بديل آخر"
      : arabicCount(n, {
          two: "بديلان آخران",
          few: "# بدائل أخرى",
          many: "# بديلًا آخر",
          other: "# بديل آخر",
        }),
  someFit: "باحثون يوافقهم واحد منها",
  unknown: "غير معروف، فمعرفته باهظة:",
  joint: "ما يتوقف على عدة أقسام",
  holds: "في أي المذاهب",
  hangsOn: "يتوقف على",
  parts: (ns: readonly number[]) => `الأقسام ${ns.map(arabicFigure).join(" و")}`,
  settled: "ما هو واحد في كل مذهب",
  scholars: "باحثون يوافقهم مذهب كامل",
  scholarsNone: "لا مذهب يوافق آخر آراء باحث كلها، ولا كلها إلا واحدًا.",
  positions: (n: number) =>
    n === 1 ? "رأي واحد" : arabicCount(n, { two: "رأيان", few: "# آراء", many: "# رأيًا", other: "# رأي" }),
};
