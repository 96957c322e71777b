import type { Standing } from "../../../../judge/judge.ts";
import { arabicStandings } from "../judged/standings.ts";
import { apart, arabicCount, arabicFigure } from "../../reader/figures.ts";
import { taughtArgument, taughtLines } from "../../shown/taught-lines.ts";

const notYet = "لم يُنشر بعد.";

interface Box {
  readonly kind: string;
  readonly text: string;
  readonly standing: Standing | null;
  readonly later: boolean;
  readonly below: number;
  readonly above: number;
  readonly attacks: number;
  readonly folded: string | null;
}

/** All words of the map. */
export const arabicMap = {
  title: "الخريطة",
  kinds: {
    answer: "جواب",
    claim: "دعوى",
    beam: "حجة",
    pile: "مشاهد أو مقيس",
    number: "عدد محسوب",
    thing: "شيء",
    fold: "مطوي",
    mark: "يتابع الخط عند",
  },
  question: "المسألة",
  everyQuestion: "كل المسائل",
  name: (question: string | null) =>
    question === null ? "الخلاف قطاعًا في الأرض" : `قطاع في: ${apart(question)}`,
  help: "مفاتيح الأسهم تصعد إلى ما يسنده الصندوق، وتنزل إلى ما يستند إليه، وتمضي في صفّه؛ و[ و] إلى الاعتراضات عليه ومنه. مفتاح الإدخال يفتح البطاقة، والمسافة تطوي وتبسط، وf للتركيز عليه، وo لعرضه وحده، و+ و- و0 للبعد. وفي الصندوق المأخوذ: p للاحتجاج به، وt للاحتجاج له، وx للاحتجاج عليه، وn لجواب آخر.",
  nearer: "أقرب",
  farther: "أبعد",
  whole: "الكل",
  toLeft: "حرّك المنظر يسارًا",
  toRight: "حرّك المنظر يمينًا",
  toTop: "حرّك المنظر إلى أعلى",
  toGround: "حرّك المنظر إلى أسفل",
  view: "منظر الخريطة",
  foldAgain: "اطوِ الكل",
  inFocus: (title: string) => `موضع التركيز: ${apart(title)}.`,
  alone: (title: string) => `معروض وحده: ${apart(title)}.`,
  only: "هذا وحده",
  withRest: "مع الباقي",
  everything: "اترك التركيز",
  save: "احفظ SVG",
  outline: "في هيئة مخطط",
  fileName: "map.svg",
  saved: (title: string) => `${apart(title)}: خريطة`,
  sheet: "بطاقة السجل",
  focus: "تركيز",
  unfold: "ابسط",
  fold: "اطوِ",
  close: "إغلاق",
  notYet,
  boxes: "صناديق الخريطة من الأجوبة نزولًا",
  said: (one: Box) =>
    [
      `${one.kind}: ${apart(one.text.replace(/[.…]$/, ""))}.`,
      one.later ? notYet : one.standing === null ? "" : `حاله: ${arabicStandings[one.standing]}.`,
      one.below > 0 ? `تحته: ${arabicFigure(one.below)}.` : "",
      one.above > 0 ? `فوقه: ${arabicFigure(one.above)}.` : "",
      one.attacks > 0
        ? arabicCount(one.attacks, {
            one: "عليه اعتراض واحد.",
            two: "عليه اعتراضان.",
            few: "عليه # اعتراضات.",
            many: "عليه # اعتراضًا.",
            other: "عليه # اعتراض.",
          })
        : "",
      one.folded === null ? "" : `المطوي: ${apart(one.folded)}.`,
    ]
      .filter((part) => part !== "")
      .join(" "),
  into: "إلى الخريطة نفسها",
  keys: [
    ["على الخطوط وفي الصف", "Arrow keys"],
    ["أول الصف", "Home"],
    ["آخر الصف", "End"],
    ["إلى الاعتراضات عليه", "["],
    ["إلى ما يعترض عليه", "]"],
    ["افتح البطاقة", "Enter"],
    ["اطوِ وابسط", " "],
    ["اجعله موضع التركيز", "f"],
    ["اعرضه وحده", "o"],
    ["أقرب", "+"],
    ["أبعد", "-"],
    ["الخريطة كلها", "0"],
    ["اترك الصندوق", "Escape"],
  ] as const,
  nothing: {
    up: "لا شيء يستند إليه هنا.",
    down: "لا شيء تحته هنا.",
    left: "هو آخر صفّه.",
    right: "هو أول صفّه.",
    first: "هو أول صفّه.",
    last: "هو آخر صفّه.",
    "attack on": "لا اعتراض عليه هنا.",
    "attack from": "لا يعترض على شيء هنا.",
  },
  changedIn: (year: string) => `ما تغيّر في ${year}`,
  changedNothing: (year: string) => `لم يتغيّر حال في هذه الخريطة في ${year}.`,
  replay: "إعادة العرض",
  stop: "توقّف",
  nextYear: "السنة التالية",
  replaying: "سنة بعد سنة",
  narrow:
    "القطاع في الأرض يحتاج إلى سعة في الجانبين. وعلى شاشة ضيقة يعرض سجلًا واحدًا مع ما يستند إليه وما يستند هو إليه وما يعترض على أيهما.",
  narrowAnswers: "اعرض جوابًا واحدًا في قطاع",
  noQuestion: {
    text: "تعرض الخريطة ما تستند إليه أجوبة المسألة نزولًا إلى الأشياء في الأرض. ولا تطرح المدوّنة مسألة بعد.",
    files: "تُكتب في الملف هكذا:",
    lines: taughtLines.questions,
  },
  noArgument: {
    text: "لا شيء موضوع تحت هذه الأجوبة بعد، فهي معلقة في الهواء. خذ أحدها بالأسهم: t تحتج له، وx تحتج عليه، وn لجواب آخر.",
    files: "الحجة في الملف تقول ما تستند إليه وما يلزم عنه:",
    lines: taughtArgument,
  },
};
