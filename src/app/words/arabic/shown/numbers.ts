import { apart, arabicCount, arabicFigure } from "../../reader/figures.ts";
import { taughtDerivation } from "../../shown/taught-lines.ts";

/** Words of the numbers pages. */
export const arabicNumbers = {
  numbers: "الأعداد",
  empty: {
    text: "لا شيء محسوب بعد. يسمّي الاشتقاق طريقة، وما يُحسب عليه، وما لأعداده أثر فيه:",
    lines: taughtDerivation,
  },
  noClaim: "بلا أثر في دعوى",
  number: "العدد",
  outcome: "ما خرج",
  saysOfIt: "قوله في الدعوى",
  says: { supports: "يؤيدها", disputes: "يعارضها", inconclusive: "لا يحسم" },
  heading: {
    supports: "يؤيد الدعوى",
    disputes: "يعارض الدعوى",
    inconclusive: "لا يحسم في الدعوى",
    none: "المراد أن يكون له أثر في الدعوى",
  },
  status: {
    computed: "محسوب",
    refused: "ممتنع",
    failed: "فشل",
    withheld: "غير مأذون بتشغيله",
    pending: "يُحسب الآن",
  },
  pendingLong: "العدد يُحسب الآن؛ وتظهر الصفحة متى حضر.",
  supportsWhen: "يؤيد حين ",
  disputesWhen: "يعارض حين ",
  is: (name: string, value: string) => apart(`${name} = ${value}`),
  largeP: "كبر p ليس تأييدًا: لم يُطلب حدٌّ لما كان سيفوت.",
  strength: (strength: string) => `مأخوذ حجةً قوتها: ${apart(strength)}`,
  bearsOn: "ما له أثر فيه",
  bearsOnNothing: "لا أثر له في دعوى.",
  turnsTitle: "ما من شأنه أن يقلبه",
  hangs: "يتوقف على أي القراءات تؤخذ.",
  holdsAnyway: (n: number) =>
    n === 1
      ? "الاختيار الآخر الوحيد للقراءات لا يغيّر شيئًا مما يقول."
      : arabicCount(n, {
          two: "جُرّب اختياران آخران للقراءات؛ ولا يغيّر أيهما ما يقول.",
          few: "جُرّبت # اختيارات أخرى للقراءات؛ ولا يغيّر أي منها ما يقول.",
          many: "جُرّب # اختيارًا آخر للقراءات؛ ولا يغيّر أي منها ما يقول.",
          other: "جُرّب # اختيار آخر للقراءات؛ ولا يغيّر أي منها ما يقول.",
        }),
  noChoice: "لا اختيار آخر للقراءات يُجرَّب.",
  notTried: (n: number) =>
    n === 1
      ? "اختيار آخر للقراءات يُحسب الآن."
      : arabicCount(n, {
          two: "اختياران آخران للقراءات يُحسبان الآن.",
          few: "# اختيارات أخرى للقراءات تُحسب الآن.",
          many: "# اختيارًا آخر للقراءات تُحسب الآن.",
          other: "# اختيار آخر للقراءات تُحسب الآن.",
        }),
  throughout: "في كل موضع",
  instead: "بدلًا منها",
  withReadingsOf: "بقراءات",
  withReading: "بقراءة",
  singly: (n: number) =>
    n === 1
      ? "قراءة واحدة أُخذت وحدها لا تغيّر شيئًا."
      : arabicCount(n, {
          two: "قراءتان أُخذت كل منهما وحدها لا تغيّران شيئًا.",
          few: "# قراءات أُخذت كل منها وحدها لا تغيّر شيئًا.",
          many: "# قراءة أُخذت كل منها وحدها لا تغيّر شيئًا.",
          other: "# قراءة أُخذت كل منها وحدها لا تغيّر شيئًا.",
        }),
  thenNothing: "لامتنع",
  thenSays: (says: string) =>
    says === "inconclusive"
      ? "لما حسم"
      : says === "says nothing of"
        ? "لما قال شيئًا"
        : says === "supports"
          ? "لأيّدها"
          : "لعارضها",
  sameAsNow: "لقال الشيء نفسه",
  lossesTitle: "بترك واحد في كل مرة",
  hangsOnOne: "يتوقف على واحد مما حُسب عليه.",
  noneTurns: (n: number) =>
    n === 1
      ? "ما أمكن تركه لا يغيّر شيئًا مما يقول."
      : arabicCount(n, {
          two: "تُرك أثران أو مصدران أو مسحان، واحدًا في كل مرة؛ وهو من دون أيهما يقول الشيء نفسه.",
          few: "تُركت # من الآثار والمصادر والمسوح، واحدًا في كل مرة؛ وهو من دون أي منها يقول الشيء نفسه.",
          many: "تُرك # من الآثار والمصادر والمسوح، واحدًا في كل مرة؛ وهو من دون أي منها يقول الشيء نفسه.",
          other: "تُرك # من الآثار والمصادر والمسوح، واحدًا في كل مرة؛ وهو من دون أي منها يقول الشيء نفسه.",
        }),
  othersLeft: (n: number) =>
    n === 1
      ? "وهو من دون واحد آخر يقول الشيء نفسه."
      : arabicCount(n, {
          two: "وتُرك اثنان آخران؛ وهو من دون أيهما يقول الشيء نفسه.",
          few: "وتُركت # أخرى؛ وهو من دون أي منها يقول الشيء نفسه.",
          many: "وتُرك # أخرى؛ وهو من دون أي منها يقول الشيء نفسه.",
          other: "وتُرك # أخرى؛ وهو من دون أي منها يقول الشيء نفسه.",
        }),
  without: "من دون",
  sameAs: "أو، وهو سواء،",
  sharing: "القراءات التي تشترك في الخطأ مع",
  runs: (name: string, low: string, high: string) =>
    low === high ? `${apart(name)} باقٍ ${apart(low)}` : `${apart(name)} من ${apart(low)} إلى ${apart(high)}`,
  reach: (reached: string) => `وفي هذه كلها: ${apart(reached)}.`,
  fewDraws: (draws: number) =>
    `حيث تُسحب مجموعات يُسحب ${arabicFigure(draws)} في كل مرة، وبعدد ما سُحب للعدد نفسه حين يقارب p حدًّا.`,
  lossesMore: (n: number) =>
    n === 1
      ? "واحد آخر منها"
      : arabicCount(n, {
          two: "اثنان آخران منها",
          few: "# أخرى منها",
          many: "# أخرى منها",
          other: "# أخرى منها",
        }),
  untried: (n: number) =>
    n === 1
      ? "شيء مفرد آخر لم يُترك وحده: لم يُترك إلا ما تشترك فيه عدة قياسات."
      : arabicCount(n, {
          two: "شيئان مفردان آخران لم يُتركا كل على حدة: لم يُترك إلا ما تشترك فيه عدة قياسات.",
          few: "# أشياء مفردة أخرى لم تُترك كل على حدة: لم يُترك إلا ما تشترك فيه عدة قياسات.",
          many: "# شيئًا مفردًا آخر لم تُترك كل على حدة: لم يُترك إلا ما تشترك فيه عدة قياسات.",
          other: "# شيء مفرد آخر لم تُترك كل على حدة: لم يُترك إلا ما تشترك فيه عدة قياسات.",
        }),
  lossesPending: (n: number) =>
    n === 1
      ? "فقدٌ واحد يُحسب الآن."
      : arabicCount(n, {
          two: "فقدان يُحسبان الآن.",
          few: "# من الفقد تُحسب الآن.",
          many: "# من الفقد تُحسب الآن.",
          other: "# من الفقد تُحسب الآن.",
        }),
  beaten: "لم يُجرَّب، لأن حجة قائمة عليه:",
  beatenMore: "لم تُجرَّب، لأن حججًا قائمة عليها:",
  doesNotHold: "لا يثبت، عليه حجة قائمة",
  takeCare: "احترس",
  metHere: "مما وقع في هذه البيانات",
  general: "مما يخص الطريقة نفسها",
  allNumbers: "أعداده كلها",
  name: "الاسم",
  value: "القيمة",
  interval: "مجال 95 %",
  what: "ما هو",
  inFile: (name: string) => `يُكتب ${apart(name)} في الملف.`,
  looks: (times: number) =>
    arabicCount(times, {
      one: "نظرت الطريقة نفسها مرة هل",
      two: "نظرت الطريقة نفسها مرتين هل",
      few: "نظرت الطريقة نفسها # مرات هل",
      many: "نظرت الطريقة نفسها # مرة هل",
      other: "نظرت الطريقة نفسها # مرة هل",
    }),
  looksBeside: "وإلى جانب هذا أيضًا بـ",
  looksTogether: (adjusted: string, others: number) =>
    `${others > 0 ? "مع ما خرج منها كلها، " : ""}p للنظرات كلها معًا (Holm 1979) هو ${apart(adjusted)}`,
  wanted: "ما يمكن أن يُقاس له",
  wantedCount: (n: number) =>
    n === 1
      ? "قياس آخر يدخل فيه لو أُخذ:"
      : arabicCount(n, {
          two: "قياسان آخران يدخلان فيه لو أُخذا:",
          few: "# قياسات أخرى تدخل فيه لو أُخذت:",
          many: "# قياسًا آخر تدخل فيه لو أُخذت:",
          other: "# قياس آخر تدخل فيه لو أُخذت:",
        }),
  of: "في",
  besideIt: (dimension: string) => `ليوضع إلى جانب ${apart(dimension)} في`,
  wantedMore: (n: number) =>
    n === 1
      ? "واحد آخر"
      : arabicCount(n, { two: "اثنان آخران", few: "# أخرى", many: "# أخرى", other: "# أخرى" }),
  inputs: "ما حُسب عليه",
  measurement: "القياس",
  evidence: "الدليل",
  recorded: "كما سُجّل",
  written: "الرقم كما كُتب",
  inSI: "بالوحدات الدولية، ± انحراف معياري",
  source: "المصدر",
  state: "أُخذ أم تُرك",
  takenAs: (input: string) => `أُخذ مدخلًا: ${apart(input.replace(/-/g, " "))}`,
  takenIn: "أُخذ",
  merged: (others: string) => `في متوسط واحد مع ${apart(others)}`,
  leftOut: (why: string) => `تُرك: ${apart(why)}`,
  leftOutCount: (n: number) =>
    n === 1
      ? "تُرك سجل واحد"
      : arabicCount(n, { two: "تُرك سجلان", few: "تُركت # سجلات", many: "تُرك # سجلًا", other: "تُرك # سجل" }),
  withheld: (n: number) =>
    n === 1
      ? "وواحد آخر محجوب."
      : arabicCount(n, {
          two: "واثنان آخران محجوبان.",
          few: "و# أخرى محجوبة.",
          many: "و# أخرى محجوبة.",
          other: "و# أخرى محجوبة.",
        }),
  panelsWithheld: "رسوم القياسات المفردة غير معروضة: بعضها محجوب.",
  nothingTaken: "لم يؤخذ شيء.",
  settings: "كيف حُسب",
  follows: (from: string, size: string) => `؛ يلزم عن ${apart(from)}: ${apart(size)}، ولا يدخل`,
  byDefault: "ما للطريقة نفسها",
  unit: "الوحدة المختبَرة",
  foundIn: "وُجدت في",
  unitFrom: "من",
  methodSources: "نُشرت الطريقة في",
  asTable: "الشكل في جداول",
  thinned: (shown: number, all: number) => `${arabicFigure(shown)} من ${arabicFigure(all)} نقطة.`,
  save: "احفظ الشكل SVG",
  saved: "حُفظ.",
  drawing: "يُرسم …",
  undrawn: "تعذّر رسم الشكل؛ وبياناته في الجداول.",
  wholeNumber: "العدد مع شكله",
  allow: {
    title: "إضافة من هذه المدوّنة",
    what: "هذا العدد يُحسب بشيفرة جاءت مع المدوّنة، ولم يُشغَّل منها شيء. اقرأها؛ فإن أذنت بها عملت في حيّز معزول بلا شبكة ولا ملفات ولا ساعة، ما دام الملف على حاله.",
    file: "الملف",
    code: "نص الملف",
    allow: "ائذن بهذه الإضافة",
    allowed: "بإضافة من هذه المدوّنة أذنت بها؛ وبصمة ملفها SHA-256",
  },
};

/** The words between the parts of a condition. */
export const arabicJoints = { and: " و", or: "، أو ", to: " إلى " };

/** Names of numbers. */
export const arabicNumberNames: Readonly<Record<string, string>> = {
  phi: "φ",
  df: "درجات الحرية",
  cv: "معامل الاختلاف",
  detectable: "أصغر انحراف يُكشف",
  "p-fit": "احتمال المطابقة",
  "lumped-p": "p للبواقي",
  "p-adjusted": "p المعدَّل",
  "period-p": "p للدور",
  "compare-p": "p للشبه",
  censored: "المسافات المكسورة",
  mean: "المتوسط",
  median: "الوسيط",
  period: "الدور",
  clearance: "الخلوص",
  "likelihood-ratio": "نسبة الترجيح",
  "reporting-rate": "معدّل الذكر",
  ratio: "النسبة",
  consistent: "الاتساق",
  earliest: "أول سنة",
  latest: "آخر سنة",
  unit: "الوحدة",
  low: "أصغرها",
  high: "أكبرها",
  draws: "عدد المجموعات",
  tolerance: "التفاوت",
  claimed: "المعامل المذكور",
  loosest: "أوسع خلوص",
  "false-reports": "نسبة الذكر الخاطئ",
  per: "بالقياس إلى",
};
