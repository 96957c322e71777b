import { apart, arabicCount, arabicFigure } from "../../reader/figures.ts";

const slides = (n: number): string =>
  arabicCount(n, {
    one: "شريحة واحدة",
    two: "شريحتان",
    few: "# شرائح",
    many: "# شريحة",
    other: "# شريحة",
  });

/** Words of the pages of talks, and of what is shown in a hall. */
export const arabicTalk = {
  title: "المحاضرات",
  lead: "المحاضرة صفّ من الخطوات، تعرض كل خطوة شيئًا من المدوّنة على حالها الآن. وتُحفظ سجلًّا كسائر السجلات.",
  none: "لا محاضرة في هذه المدوّنة بعد.",
  steps: (n: number) =>
    arabicCount(n, {
      one: "خطوة واحدة",
      two: "خطوتان",
      few: "# خطوات",
      many: "# خطوة",
      other: "# خطوة",
    }),
  proposeTitle: "اقتراح محاضرة أولى",
  proposeLead:
    "نحو عشر خطوات لخمس عشرة دقيقة، تُستخرج من السجلات: الأثر نفسه، والسؤال كما كان وكما هو، وما يحمل الثقل، والأشكال، وما يناقض ماذا، وما يُفحص بعد ذلك. ولا يُكتب شيء قبل أن تقول.",
  about: "في السؤال",
  noQuestion: "لا سؤال في هذه المدوّنة بعد؛ والمحاضرة تُقترح من سؤال.",
  propose: "اقترح محاضرة في هذا السؤال",
  save: "احفظ هذه المحاضرة",
  drop: "لا تحفظها",
  proposed: "محاضرة مقترحة",
  readOnly: (why: string) => `لا يمكن حفظ محاضرة في هذه المدوّنة: ${apart(why)}`,
  kept: "حُفظت المحاضرة.",
  present: "ابدأ العرض",
  presentFrom: (n: number) => `ابدأ العرض من الشريحة ${arabicFigure(n)}`,
  notes: "افتح الملاحظات في نافذة ثانية",
  edit: "غيّر الخطوات",
  shape: "الشكل",
  wide: "16:9",
  upright: "4:3",
  minutes: "الدقائق المقدَّرة",
  slides,
  slide: (n: number) => `الشريحة ${arabicFigure(n)}`,
  slideOf: (n: number, all: number) => `${arabicFigure(n)} من ${arabicFigure(all)}`,
  arrived: (n: number, all: number, title: string) =>
    `الشريحة ${arabicFigure(n)} من ${arabicFigure(all)}: ${apart(title)}`,
  noNotes: "لا ملاحظات لهذه الشريحة.",
  computing: "ما زالت بعض الأعداد تُحسب.",
  keys: "السهم الأيسر أو Page Down أو المسافة إلى الأمام؛ والسهم الأيمن أو Page Up إلى الوراء؛ وHome وEnd إلى الأولى والأخيرة؛ وb تُعتم الشاشة؛ وf تملؤها؛ وn تفتح الملاحظات؛ وEscape تُنهي العرض.",
  actions: "العرض",
  on: "الشريحة التالية",
  back: "الشريحة السابقة",
  first: "الشريحة الأولى",
  last: "الشريحة الأخيرة",
  dark: "شاشة معتمة",
  full: "ملء الشاشة",
  end: "إنهاء",
  darkened: "الشاشة معتمة.",
  next: "التالية",
  lastSlide: "هذه هي الشريحة الأخيرة.",
  elapsed: "انقضى",
  planned: (minutes: number) =>
    `من ${arabicCount(minutes, {
      one: "دقيقة واحدة",
      two: "دقيقتين",
      few: "# دقائق",
      many: "# دقيقة",
      other: "# دقيقة",
    })}`,
  startClock: "شغّل الساعة",
  stopClock: "أوقف الساعة",
  over: "تجاوز الوقت",
  notThere: "لا محاضرة بهذا الاسم",
  all: "كل المحاضرات",
  noPicture: "لا يمكن عرض الصورة هنا.",
};
