import { apart, arabicCount, arabicFigure } from "../../reader/figures.ts";

const listed = (names: readonly string[]): string => names.map(apart).join("، ");

const sources = (n: number): string =>
  arabicCount(n, { one: "مصدر واحد", two: "مصدران", few: "# مصادر", many: "# مصدرًا", other: "# مصدر" });

/** Words of the page on which bibliographies come in. */
export const arabicImport = {
  title: "إدخال مراجع أو جدول",
  action: "إدخال مراجع أو جدول",
  lead: "ملفات BibTeX أو biblatex أو RIS أو CSL-JSON، ويُبقى كل مدخل كما كُتب؛ أو جداول قياسات أو آثار تفصل خلاياها فواصل أو فواصل منقوطة أو علامات جدولة. ولا يتغيّر شيء في المدوّنة قبل أن تقول.",
  readOnly: (why: string) => `لا يمكن إدخال شيء في هذه المدوّنة: ${apart(why)}`,
  drop: "أفلت الملفات هنا، أو",
  choose: "اختر ملفات",
  files: "الملفات المراد إدخالها",
  paste: "أو ألصق المداخل أو الجدول نصًّا",
  pasteLabel: "المداخل أو الجدول نصًّا",
  pasted: (n: number) => (n === 1 ? "نص ملصق" : `نص ملصق ${arabicFigure(n)}`),
  readPasted: "اقرأ النص",
  tooLarge: "حجمه يزيد على 64 MiB؛ وزّعه على عدة ملفات.",
  noText: "ليس نصًّا بترميز UTF-8؛ احفظه بهذا الترميز واختره من جديد.",
  noBibliography: "ليس BibTeX ولا RIS ولا CSL-JSON ولا جدولًا.",
  entriesIn: (n: number) =>
    arabicCount(n, {
      zero: "لا مدخل يُقرأ",
      one: "مدخل واحد",
      two: "مدخلان",
      few: "# مداخل",
      many: "# مدخلًا",
      other: "# مدخل",
    }),
  rowsIn: (n: number) =>
    arabicCount(n, {
      zero: "لا صف يُقرأ",
      one: "صف واحد",
      two: "صفان",
      few: "# صفوف",
      many: "# صفًّا",
      other: "# صف",
    }),
  takeAway: "أزل",
  takeAwayOne: (name: string) => `أزل ${apart(name)}`,
  reading: "يُقرأ …",
  unreadable: "المدوّنة نفسها لا تُقرأ؛ انظر تنبيهاتها أولًا.",
  counts: (added: number, merged: number, left: number, failed: number) =>
    [
      ...(added > 0 || merged + left + failed === 0 ? [`ما يُضاف: ${arabicFigure(added)}`] : []),
      ...(merged > 0 ? [`ما يُدمج: ${arabicFigure(merged)}`] : []),
      ...(left > 0 ? [`ما يُترك: ${arabicFigure(left)}`] : []),
      ...(failed > 0 ? [`ما لم يُقرأ: ${arabicFigure(failed)}`] : []),
    ].join("، "),
  alike: "موجود، أو يشبه غيره",
  alikeWhy: "تُترك ما لم تختر غير ذلك.",
  fresh: "جديد",
  failed: "لم يُقرأ",
  failedWhy: "أصلحها في ملفها واختره من جديد؛ ويمكن إدخال غيرها من دونها.",
  besides: (n: number) => `خارج المداخل، ويُترك (${arabicFigure(n)})`,
  more: (n: number) => `اعرض المزيد (غير المعروض: ${arabicFigure(n)})`,
  line: (file: string, line: number) => `${apart(file)}، السطر ${arabicFigure(line)}`,
  hidden: "يشبه شيئًا تحجبه المدوّنة، ويُترك.",
  unshown: "يسمّي شيئًا تحجبه المدوّنة؛ فلا يُعرض نصه.",
  like: { corpus: "يشبه", file: "يشبه، مما يُدخَل،" },
  why: {
    same: "يطابقه في كل حقل",
    doi: "له رقم DOI نفسه",
    isbn: "له رقم ISBN نفسه",
    title: "له العنوان نفسه والسنة نفسها",
    key: "له المفتاح نفسه",
  },
  ways: "ما يُعمل به",
  waysOf: (name: string) => `ما يُعمل بـ${apart(name)}`,
  leave: "اترك الموجود كما هو",
  leaveFile: "اتركه",
  merge: (missing: readonly string[]) =>
    missing.length === 0 ? "ادمجه حقلًا حقلًا" : `ادمجه: أضف ${listed(missing)}`,
  nothingToMerge: "لا يقول شيئًا ليس موجودًا.",
  add: (key: string | null) => (key === null ? "أضفه مصدرًا آخر" : `أضفه مصدرًا آخر، ${apart(key)}`),
  addIt: (name: string) => `أضف ${apart(name)}`,
  allMerge: "أضف إليها كلها ما ينقصها",
  allLeave: "اتركها كلها",
  missing: "يُضاف",
  here: "الموجود",
  theirs: "ما يُدخَل",
  keep: (field: string) => `${apart(field)}: أبقِ الموجود`,
  take: (field: string) => `${apart(field)}: خذ ما يُدخَل`,
  keyMade: "صُنع له مفتاح",
  keyFreed: (own: string) => `المفتاح ${apart(own)} مأخوذ`,
  comesAlong: (key: string) => `يُدخَل معه: ${apart(key)} يستعير منه حقولًا`,
  asWritten: "كما كُتب",
  goals: (file: string, isNew: boolean, n: number) =>
    `يُكتب في ${apart(file)}: ${sources(n)}${isNew ? "؛ وهو ملف جديد يسمّيه corpus.yaml" : ""}.`,
  abbreviations: (names: readonly string[]) => `وتُدخَل معها الاختصارات: ${listed(names)}.`,
  lenders: (keys: readonly string[]) => `وتُدخَل معها مداخل لا تفعل إلا أن تعير حقولها: ${listed(keys)}.`,
  nothing: "لا شيء يُضاف ولا يُدمج.",
  save: (added: number, merged: number) =>
    [
      ...(added > 0
        ? [
            arabicCount(added, {
              one: "أضف مصدرًا واحدًا",
              two: "أضف مصدرين",
              few: "أضف # مصادر",
              many: "أضف # مصدرًا",
              other: "أضف # مصدر",
            }),
          ]
        : []),
      ...(merged > 0
        ? [
            arabicCount(merged, {
              one: "ادمج مدخلًا واحدًا",
              two: "ادمج مدخلين",
              few: "ادمج # مداخل",
              many: "ادمج # مدخلًا",
              other: "ادمج # مدخل",
            }),
          ]
        : []),
    ].join("، "),
  saving: "يُحفظ …",
  step: (files: readonly string[], added: number, merged: number) =>
    `إدخال مراجع من ${listed(files)}؛ ${[
      ...(added > 0 ? [`ما أُضيف: ${arabicFigure(added)}`] : []),
      ...(merged > 0 ? [`ما دُمج: ${arabicFigure(merged)}`] : []),
    ].join("، ")}`,
  done: (added: number, merged: number) =>
    `${[
      ...(added > 0 || merged === 0
        ? [
            arabicCount(added, {
              zero: "لم يُضَف مصدر",
              one: "أُضيف مصدر واحد",
              two: "أُضيف مصدران",
              few: "أُضيفت # مصادر",
              many: "أُضيف # مصدرًا",
              other: "أُضيف # مصدر",
            }),
          ]
        : []),
      ...(merged > 0
        ? [
            arabicCount(merged, {
              one: "دُمج مدخل واحد",
              two: "دُمج مدخلان",
              few: "دُمجت # مداخل",
              many: "دُمج # مدخلًا",
              other: "دُمج # مدخل",
            }),
          ]
        : []),
    ].join(" و")}. وهي خطوة واحدة، ويمكن التراجع عنها.`,
  came: "ومنها:",
  toRecords: "إلى السجلات",
};
