import { apart, arabicCount, arabicFigure } from "../reader/figures.ts";

const inRecords = (n: number): string =>
  arabicCount(n, { two: "سجلين", few: "# سجلات", many: "# سجلًا", other: "# سجل" });

/** Words of the search, the command list and the keyboard map. */
export const arabicSearch = {
  search: "البحث",
  field: "البحث في المدوّنة",
  reading: (done: number, of: number) =>
    `ما زالت المدوّنة تُقرأ: يمكن البحث في ${arabicFigure(done)} من ${arabicFigure(of)} من أجزائها.`,
  waiting: "تُقرأ المدوّنة …",
  all: (n: number) => (n === 1 ? "وُجد في سجل واحد." : `وُجد في ${inRecords(n)}.`),
  slips: (n: number) => (n === 1 ? "وفي سجل آخر باختلاف حرف." : `وفي ${inRecords(n)} باختلاف حرف.`),
  slipsAlone: (n: number) =>
    n === 1 ? "وُجد في سجل واحد باختلاف حرف." : `وُجد في ${inRecords(n)} باختلاف حرف.`,
  some: (n: number) =>
    n === 1
      ? "لا سجل يجمع الكلمات كلها؛ وسجل واحد فيه بعضها."
      : `لا سجل يجمع الكلمات كلها؛ وبعضها في ${inRecords(n)}.`,
  none: "لا شيء من هذا في المدوّنة.",
  cut: "لم يُبحث إلا عن الكلمات الاثنتي عشرة الأولى.",
  unknown: (word: string) => `لا ترد «${apart(word)}» في المدوّنة.`,
  nearest: "الأقرب إليها:",
  wholeCorpus: (year: string) => `البحث في المدوّنة كلها أيًّا كانت السنة؛ وما لم يكن منشورًا في ${year} معلَّم.`,
  notYet: (year: string) => `لم يكن منشورًا في ${year}`,
  allOfKind: (n: number, kind: string) => `الكل (${arabicFigure(n)}): ${apart(kind)}`,
  allKinds: "كل الأنواع",
  first: (n: number, of: number) => `أول ${arabicFigure(n)} من ${arabicFigure(of)}؛ وكلمة أخرى تضيّقها.`,
  help: "مفاتيح الأسهم للتنقل بين النتائج؛ ومفتاح الإدخال يفتح البطاقة.",
  line: "السطر",
  canBeFound: "ما يمكن إيجاده",
  teach: [
    ["أي كلمة", "من أي نص وبأي خط؛ لا فرق بحركات النطق ولا بكبر الحروف ولا بأواخر الكلمات الإنجليزية."],
    ["الأسماء", "أسماء الناس والأشياء والمصادر، بكل رسم ورد في المدوّنة."],
    ["الاقتباسات", "بلغتها الأصلية، وترجماتها."],
    ["أرقام السجلات المتحفية", "كما طُبعت أو جزء منها، بنقاطها وشرطاتها أو من دونها."],
    ["الأرقام المقيسة", "كما كُتبت، وأسماء الأبعاد بأي لغة."],
    ["المواضع في مصدر", "بمفتاحه وصفحته."],
  ] as const,
  together: "كثرة الكلمات تضيّق البحث: لا بد أن يجمعها السجل كلها. ويُغتفر خطأ حرف في الكلمة الطويلة.",
  inThisCorpus: "في هذه المدوّنة",
  allRecords: "كل السجلات",

  commands: "الأوامر",
  commandsTitle: "ما يمكن فعله هنا",
  narrow: "تضييق بالكلمات",
  fitting: (n: number) =>
    n === 0
      ? "لا شيء هنا بهذا الاسم."
      : n === 1
        ? "أمر واحد يوافق؛ ومفتاح الإدخال ينفّذه."
        : arabicCount(n, {
            two: "أمران يوافقان؛ ومفتاح الإدخال ينفّذ الأول.",
            few: "# أوامر توافق؛ ومفتاح الإدخال ينفّذ الأول.",
            many: "# أمرًا توافق؛ ومفتاح الإدخال ينفّذ الأول.",
            other: "# أمر توافق؛ ومفتاح الإدخال ينفّذ الأول.",
          }),
  nextHeading: "العنوان التالي في الصفحة",
  headingBefore: "العنوان السابق",
  keys: "المفاتيح",
  keysTitle: "المفاتيح",
  close: "إغلاق",
  year: "السنة",
  rooms: "الأقسام",
  everywhere: "في كل مكان",
  language: "لغة الواجهة",
  singleKeys: "المفاتيح المفردة تعمل",
  singleKeysWhy: "أوقفها إن كان الإملاء الصوتي أو زلة اليد يُشغّلها. والمتصفح يتذكّر ذلك.",
  singleKeysOff: "المفاتيح المفردة موقوفة. والأزرار في الجانب وقائمة الأوامر تؤدي كل شيء.",
};

/** Keys that are not called as the browser calls them. */
export const arabicKeys: Readonly<Record<string, string>> = {
  ArrowUp: "↑",
  ArrowDown: "↓",
  ArrowLeft: "←",
  ArrowRight: "→",
  " ": "مسافة",
  "Arrow keys": "مفاتيح الأسهم",
};
