import type { Standing } from "../../../judge/judge.ts";
import { arabicStandings } from "./judged/standings.ts";
import { arabicFieldNames } from "./shown/fields.ts";
import { apart, arabicCount, arabicFigure, arabicYear } from "../reader/figures.ts";

interface DisputeSoFar {
  readonly people: number;
  readonly years: readonly [number, number] | null;
  readonly stands: number;
  readonly open: number;
}

/** The words that every page shares. */
export const arabicWords = {
  skip: "إلى الصفحة مباشرة",
  questions: "المسائل",
  outline: "المخطط",
  records: "السجلات",
  findings: "التنبيهات",
  reading: "تُقرأ المدوّنة …",
  lookingAgain: "يُبحث عن التنبيهات من جديد",
  computing: (n: number) =>
    n === 1
      ? "يُحسب عدد واحد"
      : arabicCount(n, { two: "يُحسب عددان", few: "تُحسب # أعداد", many: "يُحسب # عددًا", other: "يُحسب # عدد" }),
  toAnswers: "الأجوبة وأحوالها",
  answersExclusive: "أجوبة لا يصح اثنان منها معًا",
  answersOpen: "أجوبة قد تصح معًا",
  answer: "الجواب",
  standing: "الحال",
  why: "السبب في جملة",
  heldBy: "القائلون به",
  heldUntil: (year: string) => `، حتى ${year}`,
  disputeSoFar: ({ people, years, stands, open }: DisputeSoFar) => {
    const who = arabicCount(people, {
      zero: "لا باحث",
      one: "باحث واحد",
      two: "باحثان",
      few: "# باحثين",
      many: "# باحثًا",
      other: "# باحث",
    });
    const span = years === null ? "" : `، من ${arabicYear(years[0])} إلى ${arabicYear(years[1])}`;
    const standing = arabicCount(stands, {
      zero: "لا جواب قائمًا",
      one: "جواب واحد قائم",
      two: "جوابان قائمان",
      few: "# أجوبة قائمة",
      many: "# جوابًا قائمًا",
      other: "# جواب قائم",
    });
    const alive = arabicCount(open, {
      zero: "",
      one: "؛ وواحد معلّق",
      two: "؛ واثنان معلّقان",
      few: "؛ و# معلّقة",
      many: "؛ و# معلّقًا",
      other: "؛ و# معلّق",
    });
    return `${who}${span}. ${standing}${alive}.`;
  },
  nobody: "لا أحد في المنشور",
  asKnownIn: "كما عُرف في",
  today: "الآن",
  untilToday: (year: string) => `${year}، الآن`,
  earlier: "سنة أقدم",
  before: (year: string) => `قبل ${year}`,
  later: "سنة أحدث",
  toNow: "عودة إلى الآن",
  unnamed: (n: number) =>
    n === 1
      ? "جواب آخر لم يُذكر إلا بعد ذلك."
      : arabicCount(n, {
          two: "جوابان آخران لم يُذكرا إلا بعد ذلك.",
          few: "# أجوبة أخرى لم تُذكر إلا بعد ذلك.",
          many: "# جوابًا آخر لم تُذكر إلا بعد ذلك.",
          other: "# جواب آخر لم تُذكر إلا بعد ذلك.",
        }),
  notThere: "لا سجل بهذا الاسم.",
  notThereYet: "لا يذكره شيء من المنشور في تلك السنة.",
  unreadable: "تعذّرت قراءة المدوّنة.",
  whatItSays: "ما يقوله",
  noAnswers: "لا أجوبة بعد",
  answersAre: (told: string) => `الأجوبة: ${told}`,
  answerCount: (n: number, standing: Standing) => `${arabicFigure(n)} ${arabicStandings[standing]}`,
  whereSaid: "موضعه في المدوّنة",
  restsOn: "ما يستند إليه",
  above: "ما بُني عليه",
  nothingBelow: "لا شيء موضوع تحته.",
  nothingAbove: "لا شيء مبني عليه.",
  wouldNotStand: "ما كان ليقوم لولا",
  recordSheet: "بطاقة السجل",
  holders: "القائلون به",
  numbers: "الأعداد",
  about: "تنبيهات بشأنه",
  line: "السطر",
  noFindings: "لا تنبيه على هذه المدوّنة.",
  accepted: "مقبول:",
  mend: "لإصلاحه:",
  changes: {
    "it is": "هو",
    "it would be": "يصير",
    choice: "طريقة واحدة لإصلاحه، إن اخترتها:",
    commands: "إجراء هذه التغييرات",
    how: "تُجرى في مجلد المدوّنة من سطر الأوامر. والأمر نفسه من غير --write يعرضها فحسب.",
  },
  filter: "تصفية بالكلمات",
  none: "لا شيء يوافق هذه الكلمات.",
  changed: "ما تغيّرت حاله:",
  changedNothing: "تغيّرت الملفات؛ ولم يتغيّر حال شيء.",
  was: (text: string, was: string | null, is: string | null) =>
    `${apart(text)}: ${was === null ? "لم يكن موجودًا" : `حاله من قبل: ${standingIn(was)}`}؛ ${is === null ? "وزال الآن" : `والآن: ${standingIn(is)}`}`,
  outlineHelp: "مفاتيح الأسهم للتنقل والطي؛ ومفتاح الإدخال يفتح البطاقة.",
  again: "انظر أعلاه",
  footing: {
    observed: "ينتهي إلى شيء شوهد أو قيس.",
    silent: "لا ينتهي إلا إلى ما سُكت عنه.",
    attested: "هناك من يقول به، لكنه لا ينتهي إلى شيء شوهد.",
    bare: "لا قائل به ولا شيء تحته.",
  },
  levels: { error: "أخطاء", warning: "تحذيرات", note: "ملحوظات" },
};

function standingIn(word: string): string {
  return Object.hasOwn(arabicStandings, word) ? arabicStandings[word as Standing] : word;
}

/** Fields by their names in the format. */
export const arabicFields: Readonly<Record<string, string>> = {
  ...arabicFieldNames,
  in: "ورد في",
  volume: "المجلد",
};

/** Headings of a sheet by the kind of record. */
export const arabicSheets = {
  scholar: { says: "من هو", above: "ما سُجّل عنه" },
  source: { says: "في المراجع", above: "ما سُجّل منه" },
  artefact: { says: "ما هو", below: "ما هو جزء منه" },
  image: { says: "ما هي" },
  derivation: { says: "كيف يُحسب" },
};

/** How a tie is named, seen from above and from below. */
export const arabicTies = {
  for: { below: "حجة له", above: "يُحتجّ به لـ" },
  against: { below: "حجة عليه", above: "يُحتجّ به على" },
  premise: { below: "من", above: "مقدمة في" },
  "computed on": { below: "محسوب على", above: "مستعمل في" },
  "bears on": { below: "له أثر في", above: "له أثر في" },
  of: { below: "في", above: "في" },
  "seen or measured": { below: "مشاهد أو مقيس", above: "شوهد أو قيس فيه" },
  part: { below: "جزء", above: "جزؤه" },
  whole: { below: "جزء من", above: "الكل" },
  "said in": { below: "ورد في", above: "ورد في" },
  says: { below: "يقول", above: "يقول" },
  position: { below: "رأي", above: "رأي" },
};

/** What a line of the outline is to the line above it. */
export const arabicRoles = {
  question: "",
  answer: "",
  for: "له:",
  against: "عليه:",
  from: "من:",
  used: "محسوب على:",
  thing: "في:",
};

/** Methods by their names in a file. */
export const arabicMethods: Readonly<Record<string, string>> = {
  "unit-fit": "مطابقة وحدة القياس",
  scaling: "تناسب المقياسين",
  spacing: "تساوي المسافات",
  clearance: "الخلوص",
  silence: "وزن السكوت",
  counts: "مقارنة الأعداد",
  chronology: "التأريخ",
};
