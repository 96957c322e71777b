import { apart, arabicCount, arabicFigure as figure } from "../../reader/figures.ts";

const rows = (n: number): string =>
  arabicCount(n, { one: "صف واحد", two: "صفان", few: "# صفوف", many: "# صفًّا", other: "# صف" });
const measurements = (n: number): string =>
  arabicCount(n, { one: "قياس واحد", two: "قياسان", few: "# قياسات", many: "# قياسًا", other: "# قياس" });

/** Words of the grid in which measurements are recorded. */
export const arabicGrid = {
  title: "تسجيل قياسات",
  titleOf: (thing: string) => `تسجيل قياسات ${apart(thing)}`,
  titleFrom: (source: string) => `تسجيل قياسات من ${apart(source)}`,
  lead: "قياس واحد في كل صف، كما طُبع أو كما قُرئ. لا يُكتب شيء قبل أن تحفظ.",
  readOnly: (why: string) => `لا يمكن حفظ شيء في هذه المدوّنة: ${apart(why)}`,
  restored: "هذه مسودّتك السابقة.",
  begun: "جداول بُدئت ولم تُحفظ:",
  begunRows: rows,
  grid: "القياسات",
  columns: "الأعمدة",
  ownColumns: (names: string) => `حقول خاصة بك: ${apart(names)}.`,
  every: "كل صف",
  everyLong: "ما يصحّ في كل صف تُركت خانته فارغة",
  everyValue: "cm، أو cm ± 0.1",
  row: (n: number) => `الصف ${figure(n)}`,
  rowIn: (n: number) => `الصف ${figure(n)}`,
  recorded: "مسجَّل",
  readAs: "يُقرأ",
  beside: "بجانب غيره",
  thing: "الأثر",
  place: "الموضع فيه",
  edit: (column: string, row: string) => `${column}، ${row}`,
  showRecorded: (n: number) =>
    `أظهر ما سُجّل عن ${arabicCount(n, {
      one: "الأثر المذكور هنا",
      two: "الأثرين المذكورين هنا",
      few: "# آثار مذكورة هنا",
      many: "# أثرًا مذكورًا هنا",
      other: "# أثر مذكور هنا",
    })}`,
  recordedTooMany: "إذا زادت الآثار على خمسة لم يظهر إلا ما سُجّل عن أثر الصف الحالي.",
  nothingRecorded: "لم يُسجَّل عنه شيء بعد.",
  isNew: "جديد",
  cannot: "لا يُقرأ",
  differs: "يختلف",
  agrees: (n: number) => `يوافق ${figure(n)}`,
  twin: "موجود",
  alone: "الأول",
  hint: "تنقلك الأسهم ومفتاح Tab، والكتابة تحلّ محلّ ما في الخانة، وF2 يغيّره، وEnter ينزل صفًّا. وF8 يأخذ المقترح. واضغط Escape ثم Tab لمغادرة الجدول.",
  hintPaste: "يمكن لصق خانات منسوخة من جدول حسابات أو صفحة أو نص، مع سطر عناوين أو بدونه.",

  understood: "يُفهم على أنه",
  written: "يُكتب",
  inSI: "بالوحدات الدولية",
  write: (text: string) => `اكتب ${apart(text)}`,
  make: (name: string) => `أنشئ أثرًا جديدًا اسمه ${apart(name)}`,
  makeNot: (name: string) => `لا تنشئ أثرًا اسمه ${apart(name)}`,
  willMake: (name: string) => `سيُنشأ أثر جديد اسمه ${apart(name)}.`,
  against: (who: string, value: string, by: string, allowed: string) =>
    `يختلف عن ${apart(value)} (${apart(who)}) بمقدار ${apart(by)}؛ ومجموع عدم اليقين فيهما مع التكرار الأمين يسمح بـ ${apart(allowed)}.`,
  againstRow: (row: string, value: string, by: string, allowed: string) =>
    `يختلف عن ${apart(value)} في ${row} بمقدار ${apart(by)}؛ ومجموع عدم اليقين فيهما مع التكرار الأمين يسمح بـ ${apart(allowed)}.`,
  bothStay: "يمكن حفظهما معًا؛ ويبقيان دليلين حتى تختار حجة بينهما.",
  agreesWith: (n: number) =>
    `يوافق ${arabicCount(n, {
      one: "قراءة أخرى واحدة",
      two: "قراءتين أخريين",
      few: "# قراءات أخرى",
      many: "# قراءة أخرى",
      other: "# قراءة أخرى",
    })}.`,
  twinOf: (who: string) => `الرقم نفسه من المصدر نفسه مسجَّل من قبل (${apart(who)}).`,
  twinRow: (row: string) => `الرقم نفسه من المصدر نفسه في ${row}.`,
  enters: "يدخل في",
  leaves: "يُترك من",
  leftOut: (name: string, why: string) => `${apart(name)} (${apart(why)})`,
  entersNone: "لا يأخذه أي اشتقاق.",
  nothingHere: "لا شيء في هذا الصف بعد.",

  takenOut: "أخرج الصفوف",
  putIn: "أدخل صفًّا",
  fillDown: "املأ إلى أسفل",
  clear: "أفرغ الخانات",
  takeOffer: "خذ المقترح",
  undo: "تراجع داخل الجدول",
  redo: "أعد داخل الجدول",
  changeCell: "غيّر الخانة",
  move: "إلى الأمام وإلى الخلف",
  saveKey: "احفظ الصفوف السليمة",

  counts: (good: number, bad: number) =>
    [
      ...(good > 0 || bad === 0 ? [`ما يمكن حفظه: ${rows(good)}`] : []),
      ...(bad > 0 ? [`ما ينبغي إصلاحه أولًا: ${rows(bad)}`] : []),
    ].join("، "),
  none: "لا صف بعد",
  save: (n: number) =>
    n === 0
      ? "احفظ"
      : `احفظ ${arabicCount(n, { one: "قياسًا واحدًا", two: "قياسين", few: "# قياسات", many: "# قياسًا", other: "# قياس" })}`,
  saving: "يُحفظ …",
  saved: (n: number, left: number) =>
    `حُفظ: ${measurements(n)}. هي خطوة واحدة يمكن التراجع عنها.${left === 0 ? "" : ` ويبقى هنا للإصلاح: ${rows(left)}.`}`,
  firstBad: "إلى أول صف ينبغي إصلاحه",
  drop: "تخلّص من الجدول",
  dropped: "أُفرغ الجدول.",
  changedUnder: "تغيّرت المدوّنة في أثناء ذلك؛ راجع الصفوف واحفظ مرة أخرى.",

  landing: "قبل إدخاله",
  landingRows: (lines: number, columns: number) =>
    `${arabicCount(lines, { one: "سطر واحد", two: "سطران", few: "# أسطر", many: "# سطرًا", other: "# سطر" })} في كل منها ${arabicCount(columns, { one: "خانة واحدة", two: "خانتان", few: "# خانات", many: "# خانة", other: "# خانة" })}`,
  headLine: "السطر الأول عناوين",
  becomes: (head: string) => `ما يصير إليه ${apart(head)}`,
  becomesNth: (n: number) => `ما يصير إليه العمود ${figure(n)}`,
  becomesHead: "العنوان",
  becomesIs: "يصير",
  becomesUnit: "وحدة الأرقام المجردة",
  becomesFirst: "كما هو هناك",
  unitOf: (head: string) => `وحدة الأرقام المجردة في ${apart(head)}`,
  leaveOut: "يُترك",
  lookAt: "راجع هذا",
  fieldIs: (field: string) => field,
  dimensionIs: (dimension: string) => `أرقام ${apart(dimension)}`,
  newDimension: (dimension: string) => `أرقام ${apart(dimension)}، بُعد جديد`,
  uncertaintyIs: (dimension: string | null) =>
    dimension === null ? "± للقيمة" : `± لأرقام ${apart(dimension)}`,
  unitIs: "وحدة القيمة",
  numberIs: (register: string) => `رقم ${apart(register)}`,
  commaAsked: "قل أولًا ما الفاصلة.",
  commas: "في هذه الأرقام فاصلة:",
  commaDecimal: "الفاصلة هي علامة الكسر العشري",
  commaStays: "اتركها كما هي لتُراجَع واحدًا واحدًا",
  asRead: (written: string, read: string) => `${apart(written)} على أنه ${apart(read)}`,
  put: "أدخله",
  leave: "اتركه",
  landed: (n: number) => `أُدخل: ${rows(n)}.`,
  noClip: "لا شيء لإدخاله.",
};
