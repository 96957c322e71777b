import { apart, arabicCount } from "../../reader/figures.ts";

interface Counts {
  readonly measurements: number;
  readonly observations: number;
  readonly images: number;
  readonly arguments: number;
}

const countsIn = ({ measurements, observations, images, arguments: steps }: Counts): string =>
  [
    ...(measurements > 0
      ? [
          arabicCount(measurements, {
            one: "قياس واحد",
            two: "قياسان",
            few: "# قياسات",
            many: "# قياسًا",
            other: "# قياس",
          }),
        ]
      : []),
    ...(observations > 0
      ? [
          arabicCount(observations, {
            one: "مشاهدة واحدة",
            two: "مشاهدتان",
            few: "# مشاهدات",
            many: "# مشاهدة",
            other: "# مشاهدة",
          }),
        ]
      : []),
    ...(images > 0
      ? [
          arabicCount(images, {
            one: "صورة واحدة",
            two: "صورتان",
            few: "# صور",
            many: "# صورة",
            other: "# صورة",
          }),
        ]
      : []),
    ...(steps > 0
      ? [arabicCount(steps, { one: "حجة واحدة", two: "حجتان", few: "# حجج", many: "# حجة", other: "# حجة" })]
      : []),
  ].join(" و");

/** Words of the sheet of a visit. */
export const arabicVisit = {
  title: "ورقة الزيارة",
  lead: "ما يُقاس وما يُبحث عنه. تبقى القيم السابقة مخفية حتى تُكتب الجديدة؛ وما يُكتب يبقى حتى يُحفظ.",
  choose: "لأي فحص، أو إلى مَن؟",
  examinations: "الفحوص",
  keepers: "الحافظون",
  things: (n: number) =>
    arabicCount(n, {
      zero: "لا أثر",
      one: "أثر واحد",
      two: "أثران",
      few: "# آثار",
      many: "# أثرًا",
      other: "# أثر",
    }),
  none: "لا فحص مسجَّل، ولا أثر له حافظ أو مكان يُحفظ فيه.",
  notThere: "لا فحص ولا حافظ بهذا الاسم.",
  before: "قبل الزيارة",
  planning: "يُنظر الآن في ما تحسمه كل نتيجة.",
  day: "يوم الزيارة",
  by: "من يعاين ويقيس",
  byHelp: "باحث من المدوّنة، بمعرّفه أو اسمه",
  newScholar: "باحث ليس في المدوّنة بعد",
  on: "اليوم",
  onHelp: "مثل 2026-05-04",
  basis: "ما يُعايَن",
  bases: {
    autopsy: "الأصل نفسه",
    cast: "قالب",
    replica: "نسخة",
    scan: "مسح ضوئي",
    photograph: "صورة ضوئية",
    drawing: "رسم",
  },
  instrument: "الأداة",
  nearest: "تُقرأ إلى أقرب",
  nearestHelp: "0.1 mm؛ فإن تُرك دلّت عليه الخانة الأخيرة",
  from: "المصدر",
  fromHelp: "مفتاح من المراجع إن كان للزيارة مدخل؛ فإن تُرك فهي لك أنت",
  conditions: "الآثار وحالتها",
  condition: "الحالة",
  others: "محفوظ هناك أيضًا",
  add: (name: string) => `ضع في الورقة: ${apart(name)}`,
  measure: "ما يُقاس",
  besides: "مسجَّل من قبل، ويحسن أن يُعاد والأثر حاضر",
  reading: (n: number) => `القراءة ${n}`,
  unit: "الوحدة",
  more: "نقطتا القياس والأداة والحالة والملاحظة",
  between: "بين",
  state: "حاله",
  states: { "": "كامل", preserved: "باقٍ: مكسور هناك، فهو هذا على الأقل", reconstructed: "مستكمَل" },
  note: "ملاحظة",
  written: "يُكتب هكذا",
  sums: ({
    n,
    mean,
    spread,
    ofMean,
  }: Readonly<Record<"mean" | "spread" | "ofMean", string>> & { readonly n: number }) =>
    `${arabicCount(n, { two: "قراءتان", few: "# قراءات", many: "# قراءة", other: "# قراءة" })}: المتوسط ${apart(mean)}، والانحراف المعياري ${apart(spread)}، وللمتوسط ${apart(ofMean)}`,
  combined: (u: string, half: string, t: string) =>
    `ومع درجة الأداة ${apart(u)}؛ و95 %: ${apart(`± ${half}`)} (${apart(`t = ${t}`)})`,
  how: "كيف تُجمل القراءات",
  formulas: {
    mean: "المتوسط: x̄ = Σx ∕ n;  s² = Σ(x − x̄)² ∕ (n − 1);  u(x̄) = s ∕ √n  (GUM, JCGM 100:2008, 4.2)",
    combined:
      "u = √(s² ∕ n + a² ∕ 12)، حيث a هي الدرجة التي قُرئت إليها الأداة، وإلا فدرجة الخانة الأخيرة  (GUM F.2.2.1)",
    wide: "95 %: ± t u، حيث t لستيودنت بدرجات الحرية الفعلية  (GUM G.4.1)",
    stated: "المكتوب بعد ±: نصف ذلك، ولا يقل عن u، إذ يؤخذ ضعف المكتوب على أنه 95 % (عرف شائع؛ GUM G.6.4)",
    shared: "ما تخطئ فيه كل القراءات معًا، كصفر منحرف، لا يُظهره تفرّقها: قارن الأداة بطول معروف (عرف شائع)",
  },
  put: (text: string) => `ضع ${apart(text)}`,
  old: "القيم السابقة",
  oldSight: "ما رآه آخرون",
  showOld: "أظهر القيم السابقة الآن (ويُسجَّل ذلك)",
  showSight: "أظهر ما رآه آخرون الآن (ويُسجَّل ذلك)",
  noOld: "لم يُسجَّل من قبل.",
  already: "في المدوّنة هذا نفسه؛ فلا يُدخل مرتين.",
  look: "ما يُبحث عنه",
  onThings: (things: string) => `في ${apart(things)}`,
  seen: { "": "لم يُبحث عنه", true: "شوهد", false: "بُحث عنه فلم يوجد", unclear: "لا يُتبيَّن" },
  sentence: "في جملة: أين، وكم، وفي أي ضوء",
  pictures: "صور تُلتقط",
  pictureHelp: "ضع الملف في images/ تحت المدوّنة؛ وهنا اسمه.",
  file: "الملف",
  scale: "المقياس فيها",
  after: "بعد الزيارة: ما تحسمه",
  afterHelp: "افتح هذا بعد أن يُقاس كل شيء ويُبحث عنه، كي لا يقود العين شيء.",
  found: "ما وُجد",
  foundHelp: "تُكتب النتيجة المختارة مشاهدةً، مع الحجج التي يذكرها الفحص.",
  noneYet: "لا شيء منها بعد",
  along: "خذها معك",
  page: "صفحةً للورق أو الحاسوب (.html)",
  text: "نصًّا (.md)",
  back: "أعِد ورقة مُلئت",
  drop: "ألقِ هنا الملف المحفوظ من ورقة مُلئت، أو",
  chooseFile: "اختره",
  replace: "في هذه الورقة كتابة أخرى.",
  doReplace: "ضع الملف مكانها",
  leave: "اترك الورقة كما هي",
  keepFile: "احفظ ما كُتب في ملف",
  kept: "محفوظ على المكتب.",
  here: "محفوظ في هذا المتصفح.",
  alone: "البرنامج لا يجيب. وما كُتب محفوظ في هذا المتصفح وينتظر؛ فإن حُفظ في ملف أمكن أن يُعاد من أي عنوان.",
  nowhere: "لا يحفظ هذا المتصفح شيئًا: احفظ ما كُتب في ملف.",
  readOnly: (why: string) => `لا يمكن حفظ شيء في هذه المدوّنة: ${apart(why)}`,
  nothing: "لم يُكتب شيء بعد.",
  bad: (n: number) =>
    arabicCount(n, {
      one: "سطر واحد لا يدخل كما هو.",
      two: "سطران لا يدخلان كما هما.",
      few: "# أسطر لا تدخل كما هي.",
      many: "# سطرًا لا تدخل كما هي.",
      other: "# سطر لا تدخل كما هي.",
    }),
  saveKey: "احفظ السليم",
  save: (counts: Counts) => `احفظ ${countsIn(counts)}`,
  saving: "يُحفظ …",
  done: (counts: Counts) => `حُفظ: ${countsIn(counts)}.`,
  decided: "ما حسمته",
  undecided: "لم تتغير حال دعوى.",
  pending: "ما زالت أعداد تُحسب؛ وقد يتغير غير ذلك.",
  again: "ورقة جديدة",
  clear: "ألقِ ما كُتب",
  sheetOf: (name: string) => `ورقة الزيارة: ${apart(name)}`,
};
