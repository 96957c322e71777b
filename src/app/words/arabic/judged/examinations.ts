import type { Bearing } from "../../../../derive/bearing.ts";
import type { Standing } from "../../../../judge/judge.ts";
import { apart, arabicCount, arabicFigure } from "../../reader/figures.ts";
import { arabicStandings } from "./standings.ts";

const more = (n: number): string =>
  arabicCount(n, {
    one: "واحد آخر",
    two: "اثنان آخران",
    few: "# أخرى",
    many: "# أخرى",
    other: "# أخرى",
  });

const bitsIn = (figure: string): string => `${apart(figure)} بت`;

const says: Readonly<Record<Bearing, string>> = {
  supports: "يؤيد",
  disputes: "يعارض",
  inconclusive: "لا يحسم",
};

/** Words of the page of examinations, and of what other pages say of them. */
export const arabicExaminations = {
  examinations: "الفحوص",
  lead: (recorded: number, deciding: number, idle: number) =>
    recorded === 0
      ? "لم يُسجَّل فحص."
      : [
          arabicCount(recorded, {
            one: "فحص واحد مسجَّل",
            two: "فحصان مسجَّلان",
            few: "# فحوص مسجَّلة",
            many: "# فحصًا مسجَّلًا",
            other: "# فحص مسجَّل",
          }),
          deciding === 0
            ? "لا واحد منها يستطيع أن يحسم جوابًا"
            : `منها ما يستطيع أن يحسم جوابًا: ${arabicFigure(deciding)}`,
          ...(idle === 0 ? [] : [`ومنها ما لا يغيّر شيئًا: ${arabicFigure(idle)}`]),
        ].join("؛ ") + ".",
  working: "يُنظر في الفحوص …",
  workingOf: (done: number, of: number) => `يُنظر في الفحوص: ${arabicFigure(done)} من ${arabicFigure(of)}`,
  waitsFor: (n: number) =>
    n === 1
      ? "تُحسب أعداد السجل نفسه أولًا: بقي واحد."
      : arabicCount(n, {
          two: "تُحسب أعداد السجل نفسه أولًا: بقي اثنان.",
          few: "تُحسب أعداد السجل نفسه أولًا: بقيت #.",
          many: "تُحسب أعداد السجل نفسه أولًا: بقي #.",
          other: "تُحسب أعداد السجل نفسه أولًا: بقي #.",
        }),
  pending: (n: number) =>
    n === 1
      ? "عدد نتيجة واحدة لم يُحسب بعد؛ وإلى ذلك الحين يؤخذ ما يتوقف عليه كما هو الآن."
      : arabicCount(n, {
          two: "أعداد نتيجتين لم تُحسب بعد؛ وإلى ذلك الحين يؤخذ ما يتوقف عليها كما هو الآن.",
          few: "أعداد # نتائج لم تُحسب بعد؛ وإلى ذلك الحين يؤخذ ما يتوقف عليها كما هو الآن.",
          many: "أعداد # نتيجة لم تُحسب بعد؛ وإلى ذلك الحين يؤخذ ما يتوقف عليها كما هو الآن.",
          other: "أعداد # نتيجة لم تُحسب بعد؛ وإلى ذلك الحين يؤخذ ما يتوقف عليها كما هو الآن.",
        }),
  ofTheRecord: "هذه القائمة للسجل كما هو، من غير ما افتُرض أعلاه.",
  next: "الفحص التالي",
  before: "الفحص السابق",

  none: "ما لا يستطيع شيء منها أن يحسمه",
  nothingOpen: "لا جواب معلّقًا إلا وفحص مسجَّل يحسمه.",
  pairs: "لا فحص مسجَّلًا يميّز بين هذه:",
  answers: "لا نتيجة فحص مسجَّل تجعل هذه تقوم أو تسقط:",
  or: "أو",
  couldBe: "يستطيع ذلك فحص مقترح:",
  couldBeMore: (n: number) => (n === 1 ? "وواحد آخر" : more(n)),

  recorded: "المسجَّلة بترتيبها",
  sheet: "بطاقة السجل",
  on: "في",
  cost: "الكلفة",
  noCost: "غير مسجَّلة",
  effect: "الأثر في الشيء",
  destructive: "متلف",
  untouched: "غير متلف",
  keeper: "أمين الحفظ",
  noKeeper: "غير مسجَّل",
  permit: "الإذن",
  leadTime: "مهلة الطلب",
  gentler: "يُطلب أولًا، لأنه غير متلف:",
  asks: "ما يسأل عنه أمين الحفظ قبل أخذ أي شيء (عُرف جارٍ)",

  outcome: "إن ظهر",
  wouldChange: "فعندئذ",
  probability: "الاحتمال",
  changesNothing: "لا يتغيّر حال شيء.",
  noClaim: "لا تتغيّر دعوى.",
  change: (was: Standing, is: Standing) => `${arabicStandings[was]}، ثم ${arabicStandings[is]}`,
  moreClaims: (n: number) =>
    n === 1
      ? "دعوى أخرى"
      : arabicCount(n, {
          two: "دعويان أخريان",
          few: "# دعاوى أخرى",
          many: "# دعوى أخرى",
          other: "# دعوى أخرى",
        }),
  others: (n: number) =>
    n === 1
      ? "حجة واحدة أو دليل واحد يتغيّر معه."
      : arabicCount(n, {
          two: "حجتان أو دليلان يتغيّران معه.",
          few: "# حجج وأدلة تتغيّر معه.",
          many: "# حجة ودليلًا تتغيّر معه.",
          other: "# حجة ودليل تتغيّر معه.",
        }),
  suppose: "افترض هذا",
  supposeOf: (text: string) => `افترض هذا: ${apart(text)}`,
  noNumber: "لا عدد",
  bears: (now: Bearing | null, then: Bearing | null) =>
    `${now === null ? "لا يقول شيئًا" : says[now]}، ثم ${then === null ? "لا يقول شيئًا" : says[then]}`,
  stillComputed: "لم يُحسب بعد",

  gain: (bits: string, question: string) =>
    bits === "0"
      ? `لا كسب متوقَّع في «${apart(question)}»: ما يمكن أن يظهر محتمل بالقدر نفسه مع كل جواب`
      : `الكسب المتوقَّع ${bitsIn(bits)} في «${apart(question)}»`,
  perCost: (bits: string, place: number, costsIn: string) =>
    `لكل وحدة كلفة (${apart(costsIn)}) ${apart(bits)}، وترتيبه بذلك ${arabicFigure(place)}`,
  bit: "الاختيار بين جوابين متساويي الاحتمال يحتاج إلى بت واحد.",
  now: "الآن",
  left: "ما بقي من البتات",
  cannotBe: "لا يمكن",
  gainOf: "احتمال كل جواب، قبله وبعده",

  suggested: "ما يقترحه السجل نفسه",
  suggestedLead: "لم يسجّل أحد هذه فحوصًا ولا قدّر كلفتها. وهي لازمة عما سُجّل.",
  more: (n: number) => more(n),
  passedOver: (n: number) =>
    n === 1
      ? "واحد آخر لم يُنظر فيه."
      : arabicCount(n, {
          two: "اثنان آخران لم يُنظر فيهما.",
          few: "# أخرى لم يُنظر فيها.",
          many: "# أخرى لم يُنظر فيها.",
          other: "# أخرى لم يُنظر فيها.",
        }),

  trips: "من يُسأل",
  what: "ماذا",
  nobody: "لم يُسمَّ أحد يُسأل",
  inAll: (cost: string) => `المجموع ${apart(cost)}`,
  together: (count: number, bits: string, question: string) =>
    arabicCount(count, {
      one: `واحد: الكسب المتوقَّع ${bitsIn(bits)} في «${apart(question)}»`,
      two: `الاثنان معًا: الكسب المتوقَّع ${bitsIn(bits)} في «${apart(question)}»`,
      few: `# معًا: الكسب المتوقَّع ${bitsIn(bits)} في «${apart(question)}»`,
      many: `# معًا: الكسب المتوقَّع ${bitsIn(bits)} في «${apart(question)}»`,
      other: `# معًا: الكسب المتوقَّع ${bitsIn(bits)} في «${apart(question)}»`,
    }),
  uncosted: (n: number) =>
    n === 1
      ? "واحد بلا كلفة"
      : arabicCount(n, {
          two: "اثنان بلا كلفة",
          few: "# بلا كلفة",
          many: "# بلا كلفة",
          other: "# بلا كلفة",
        }),
  trip: "الفحوص بحسب من يُسأل",
  begins: "الإذن المذكور هنا أول الطلب. والقرار للقانون المحلي وأهل الترخيص.",

  set: "أصغر مجموعة تميّز بين المتنافسين",
  nearSet: "مجموعة صغيرة تميّز بين المتنافسين",
  near: "قريبة من الصغرى: هي أكثر من أن يُتحقق أن لا أصغر منها.",
  tells: (told: number, rivals: number) =>
    told === rivals
      ? arabicCount(rivals, {
          one: "تميّز الزوج الوحيد من المتنافسين المعلّقين.",
          two: "تميّز الزوجين كليهما من المتنافسين المعلّقين.",
          few: "تميّز # أزواج من المتنافسين المعلّقين، وهي كلها.",
          many: "تميّز # زوجًا من المتنافسين المعلّقين، وهي كلها.",
          other: "تميّز # زوج من المتنافسين المعلّقين، وهي كلها.",
        })
      : `تميّز ${arabicFigure(told)} من ${arabicFigure(rivals)} من أزواج المتنافسين المعلّقين.`,
  noSet: "لا فحص مسجَّلًا يميّز بين متنافسين معلّقين.",

  deciders: "ما من شأنه أن يحسمه",
  canDecide: (what: string, cost: string | null, destructive: boolean) =>
    `يستطيع أن يحسم ${apart(what)}؛ ${cost === null ? "" : `${apart(cost)}، `}${destructive ? "متلف" : "غير متلف"}`,
  decidersOfTheRecord: "هذا عن السجل كما هو، من غير ما افتُرض أعلاه.",
  noDecider: "لا فحص مسجَّلًا ولا مقترحًا يحسمه.",
  toPage: "انظره بين الفحوص",
  wouldCome: "ما تغيّره نتائجه",
  toList: "موضعه بين الفحوص",
};
