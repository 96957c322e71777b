import { kindName } from "../../desk/kinds.ts";
import { apart, arabicCount, arabicFigure } from "../../reader/figures.ts";

/** Words of the forms in which records are made and changed. */
export const arabicForms = {
  new: (singular: string) => `إضافة ${kindName(singular)}`,
  change: "تغيير",
  changeOf: (singular: string) => `تغيير ${kindName(singular)}`,
  changing: (title: string) => `تغيير: ${apart(title)}`,
  records: "سجلات جديدة",
  answerTo: "يصير جوابًا عن:",
  asAnswer: "إضافة جواب",
  newOne: (singular: string) => `إضافة ${kindName(singular)}`,
  thisRecord: "هذا السجل",
  newOf: "إضافة:",
  unread: "إن كان في الملفات وتعذّرت قراءته أمكن إصلاحه:",
  mend: "افتح استمارته",
  required: "لازم",
  more: "حقول أخرى",
  yes: "نعم",
  no: "لا",
  present: {
    true: "شوهد",
    false: "بُحث عنه فلم يوجد",
    unclear: "بُحث عنه ولا يُتبيَّن",
    "not-reported": "سُكت عنه",
  },
  idLeftEmpty: (id: string) => `إن تُرك فارغًا سُمّي ${apart(id)}.`,
  idOptional: "إن تُرك فارغًا سُمّي بما هو فيه.",
  idStays: "اسمه في الملفات:",
  head: (source: string) => `إن تُرك فارغًا فهو من ${apart(source)}، كما في رأس ملفه.`,
  kept: (names: string) =>
    `مسجَّل ومحجوب عن كل مُخرَج، ومنه هذه الصفحة: ${apart(names)}. ويبقى ما في الملف ما لم يُكتب هنا شيء.`,
  own: (names: string) => `تبقى الحقول التي أضفتها كما هي: ${apart(names)}.`,
  inFile: "كما يُكتب في الملف: قيمة واحدة، أو قائمة [a, b]، أو مجموعة مسمّاة { name: value }.",
  understood: "فُهم على أنه",
  write: (text: string) => `اكتب ${apart(text)}`,
  alike: "سُجّل ما يكاد يطابقه:",

  search: (label: string) => `ابحث عن ${apart(label)}`,
  add: (label: string) => `أضف إلى ${apart(label)}`,
  typeToSearch: "اكتب لتبحث",
  choose: "ما يوافق؛ والاختيار بالأسهم ومفتاح الإدخال",
  fitting: (n: number, more: number) =>
    n === 0
      ? "لا شيء يوافق هذه الكلمات."
      : more > 0
        ? `أوفقها: ${arabicFigure(n)}، ويوافق سواها: ${arabicFigure(more)}؛ وكلمة أخرى تضيّقها.`
        : n === 1
          ? "يوافق واحد."
          : arabicCount(n, {
              two: "يوافق اثنان.",
              few: "يوافق: #.",
              many: "يوافق: #.",
              other: "يوافق: #.",
            }),
  record: (singular: string, name: string) => `سجّل ${kindName(singular)}: ${apart(name)}`,
  recordKeys: "يسجّله السهم إلى أسفل ثم مفتاح الإدخال.",
  unknown: "ليس في المدوّنة",
  takeAway: "أزل",
  takeAwayOne: (label: string) => `أزل ${apart(label)}`,
  up: "إلى أعلى",
  upOne: (label: string) => `انقل إلى أعلى: ${apart(label)}`,
  place: "الموضع",
  placeIn: (label: string) => `الموضع في ${apart(label)}`,
  addOne: "أضف واحدًا",
  addTo: (label: string) => `أضف واحدًا: ${apart(label)}`,
  nth: (label: string, n: number) => `${apart(label)}، ${arabicFigure(n)}`,
  name: "الاسم",
  value: "القيمة",
  byAnswer: "لكل جواب قيمة",
  one: "قيمة واحدة للكل",

  save: "حفظ",
  saving: "يُحفظ …",
  readOnly: (why: string) => `لا يمكن حفظ شيء في هذه المدوّنة: ${apart(why)}`,
  unsaved: "ما كتبته محفوظ مسودّةً إلى أن تحفظه.",
  drop: "اطرحها",
  restored: "هذه مسودّتك السابقة.",
  troubles: (n: number) =>
    n === 1
      ? "حقل واحد لم يستقم بعد؛ ولم يُحفظ شيء."
      : arabicCount(n, {
          two: "حقلان لم يستقيما بعد؛ ولم يُحفظ شيء.",
          few: "# حقول لم تستقم بعد؛ ولم يُحفظ شيء.",
          many: "# حقلًا لم تستقم بعد؛ ولم يُحفظ شيء.",
          other: "# حقل لم تستقم بعد؛ ولم يُحفظ شيء.",
        }),
  nothingNew: "لم يتغيّر شيء.",
  help: "احفظ الاستمارة",
  move: "انقل بندًا في قائمة إلى أعلى أو إلى أسفل",

  clash: "غيّره غيرك في الأثناء",
  clashWhy:
    "هذه الحقول تقول في الملفات غير ما كانت تقوله حين فتحت الاستمارة. اختر لكل منها، ثم احفظ من جديد.",
  was: "كان",
  theirs: "وفي الملفات الآن",
  mine: "وكتبت أنت",
  nothing: "لا شيء",
  hidden: "شيء محجوب عن كل مُخرَج",
  keepTheirs: "أبقِ ما عندهم",
  writeMine: "اكتب ما عندي",
  keepTheirsIn: (label: string) => `أبقِ ما عندهم: ${apart(label)}`,
  writeMineIn: (label: string) => `اكتب ما عندي: ${apart(label)}`,
  chosenTheirs: "يُبقى ما عندهم.",
  chosenMine: "يُكتب ما عندك.",
  goneTitle: "زال السجل",
  gone: "أخرجه أحد من الملفات في الأثناء. والحفظ من جديد يكتبه مرة أخرى.",

  whole: "السجل كله",
  takeOut: "إخراج",
  takeOutThis: (singular: string) => `أتُخرج هذا السجل (${kindName(singular)}) من المدوّنة؟`,
  takeItOut: "أخرجه",
  keepIt: "أبقه",
  undoable: "يمكن التراجع عن ذلك.",
  refer: (n: number) =>
    n === 0
      ? "لا شيء يحيل إليه."
      : n === 1
        ? "سجل واحد يحيل إليه:"
        : arabicCount(n, {
            two: "سجلان يحيلان إليه:",
            few: "# سجلات تحيل إليه:",
            many: "# سجلًا تحيل إليه:",
            other: "# سجل تحيل إليه:",
          }),
  dangling: "فتسمّي حينئذ ما ليس موجودًا، وتقول ذلك التنبيهات.",
  settings: "وإعدادات المدوّنة تسمّيه أيضًا.",
  rename: "تغيير الاسم",
  leaveIt: "اتركه كما هو",
  newName: "اسمه الجديد في الملفات",
  follows: (places: number) =>
    places === 0
      ? "لا شيء آخر يسمّيه."
      : places === 1
        ? "يتبعه الموضع الوحيد الذي يسمّيه."
        : arabicCount(places, {
            two: "يتبعه الموضعان اللذان يسمّيانه.",
            few: "تتبعه المواضع التي تسمّيه، وهي #.",
            many: "تتبعه المواضع التي تسمّيه، وهي #.",
            other: "تتبعه المواضع التي تسمّيه، وهي #.",
          }),
  unnamed: "لا اسم له في الملفات؛ فسمّه في الحقل id.",
  toWorkbench: "غيّر إعداداته على طاولة العمل",

  drafts: "المسودّات",
  draftsWhy: "استمارات بُدئت ولم تُحفظ.",
  throwAway: (title: string) => `اطرح: ${apart(title)}`,
};
