import type { ArabicCatalogue } from "../../../../base/text/said/arabic.ts";

/** What the program says of the folder of a corpus and of what it would not write. */
export const hostSaid: ArabicCatalogue = {
  "Unknown folder `{0}`, expected the folder of a corpus": "مجلد غير معروف: `{0}`؛ والمتوقَّع: مجلد مدوّنة",
  "Unexpected file `{0}`, expected the folder of a corpus": "غير متوقَّع: الملف `{0}`؛ والمتوقَّع: مجلد مدوّنة",
  "Missing `{0}` in `{1}`, expected one: `{2}` starts a corpus":
    "ناقص: `{0}` في `{1}`؛ والمتوقَّع: واحد؛ والأمر `{2}` يبدأ مدوّنة",
  "The folder cannot be opened, expected one that may be read": "تعذّر فتح المجلد؛ والمتوقَّع: مجلد تجوز قراءته",
  "The file cannot be opened, expected one that may be read": "تعذّر فتح الملف؛ والمتوقَّع: ملف تجوز قراءته",
  "Unexpected size of more than {0}, expected {1}": "غير متوقَّع: حجم يزيد على {0}؛ والمتوقَّع: {1}",
  "Unexpected size of more than {0}, expected a smaller file":
    "غير متوقَّع: حجم يزيد على {0}؛ والمتوقَّع: ملف أصغر",
  "Unexpected place `{0}`, expected one in `{1}` or `{2}`":
    "غير متوقَّع: الموضع `{0}`؛ والمتوقَّع: موضع في `{1}` أو `{2}`",
  "a smaller plug-in": "إضافة أصغر",
  "a smaller style": "نمط أصغر",
  "Unexpected {0}, expected a file saved as {1}": "غير متوقَّع: {0}؛ والمتوقَّع: ملف محفوظ بترميز {1}",
  "Unexpected bytes that are no {0}, expected a text file saved as {1}":
    "غير متوقَّع: بايتات ليست من {0}؛ والمتوقَّع: ملف نصي محفوظ بترميز {1}",

  "Unexpected length of the name `{0}`, expected a shorter one":
    "غير متوقَّع: طول الاسم `{0}`؛ والمتوقَّع: اسم أقصر",
  "Unexpected name `{0}`, expected one that files have on every system":
    "غير متوقَّع: الاسم `{0}`؛ والمتوقَّع: اسم تحمله الملفات في كل نظام",
  "Unexpected name `{0}` beside `{1}`, which some disks take for the same; expected another":
    "غير متوقَّع: الاسم `{0}` إلى جانب `{1}`، وبعض الأقراص يعدّهما واحدًا؛ والمتوقَّع: اسم آخر",

  file: "ملف",
  folder: "مجلد",
  link: "رابط",
  device: "جهاز",
  "{0}: nothing was written": "{0}؛ ولم يُكتب شيء",
  "{0}: the draft was not kept": "{0}؛ ولم تُحفظ المسودّة",
  "The folder of the corpus cannot be looked into ({0})": "تعذّر النظر في مجلد المدوّنة ({0})",
  "The folder of the corpus may only be read": "مجلد المدوّنة للقراءة فحسب",
  "The folder `{0}`, where edits are kept, may only be read":
    "المجلد `{0}`، وفيه تُحفظ التغييرات، للقراءة فحسب",
  "The files of the corpus may only be read": "ملفات المدوّنة للقراءة فحسب",
  "The history of the corpus cannot be read": "تعذّرت قراءة تاريخ المدوّنة",
  "The folder `{0}`, where edits are kept, has no room left": "لا متسع في المجلد `{0}`، وفيه تُحفظ التغييرات",
  "The folder `{0}`, where edits are kept, cannot be used ({1})":
    "تعذّر استعمال المجلد `{0}`، وفيه تُحفظ التغييرات ({1})",
  "Unexpected {0} at `{1}`, expected a folder": "غير متوقَّع: {0} في موضع `{1}`؛ والمتوقَّع: مجلد",
  "Unexpected {0} in `{1}`, expected a folder": "غير متوقَّع: {0} في `{1}`؛ والمتوقَّع: مجلد",
  "Unexpected {0} at `{1}`, expected a file": "غير متوقَّع: {0} في موضع `{1}`؛ والمتوقَّع: ملف",
  "Another program is just changing the corpus, expected it to come to an end":
    "برنامج آخر يغيّر المدوّنة الآن؛ والمتوقَّع: أن ينتهي",
  "Unexpected {0} at `{1}`, expected a folder: set aside as `{2}`":
    "غير متوقَّع: {0} في موضع `{1}`؛ والمتوقَّع: مجلد؛ فنُحّي باسم `{2}`",
  "Unexpected content of the draft `{0}`, expected JSON: set aside as `{1}`":
    "غير متوقَّع: مضمون المسودّة `{0}`؛ والمتوقَّع: JSON؛ فنُحّيت باسم `{1}`",
  "Unexpected content of `{0}` in the history, expected its steps: set aside as `{1}`":
    "غير متوقَّع: مضمون `{0}` في التاريخ؛ والمتوقَّع: خطواته؛ فنُحّي باسم `{1}`",
  "Unexpected content of `{0}`, expected permissions: set aside as `{1}`":
    "غير متوقَّع: مضمون `{0}`؛ والمتوقَّع: أذون؛ فنُحّي باسم `{1}`",
  "Unexpected content of `{0}`, expected your own key: set aside as `{1}`":
    "غير متوقَّع: مضمون `{0}`؛ والمتوقَّع: مفتاحك؛ فنُحّي باسم `{1}`",
  "Unexpected content of `{0}`, expected outcomes of earlier runs: set aside as `{1}`":
    "غير متوقَّع: مضمون `{0}`؛ والمتوقَّع: نتائج حسابات سابقة؛ فنُحّي باسم `{1}`",
  "Unexpected content of `{0}`, expected what was read before: set aside as `{1}`":
    "غير متوقَّع: مضمون `{0}`؛ والمتوقَّع: ما قُرئ من قبل؛ فنُحّي باسم `{1}`",
  "One line of the history cannot be read and is passed over": "تعذّرت قراءة سطر واحد من التاريخ، فتُجوّز",
  "{0} lines of the history cannot be read and are passed over": {
    two: "تعذّرت قراءة سطرين من التاريخ، فتُجوّزا",
    few: "تعذّرت قراءة {0} أسطر من التاريخ، فتُجوّزت",
    many: "تعذّرت قراءة {0} سطرًا من التاريخ، فتُجوّزت",
    other: "تعذّرت قراءة {0} سطر من التاريخ، فتُجوّزت",
  },
  "Missing step to undo": "ناقص: خطوة يُتراجع عنها",
  "Missing step to redo": "ناقص: خطوة تُعاد",
  "Unknown step {0}, expected one that is kept": "خطوة غير معروفة: {0}؛ والمتوقَّع: خطوة محفوظة",
  "Missing text of `{0}` in the history, expected it as it was":
    "ناقص: نص `{0}` في التاريخ؛ والمتوقَّع: أن يكون كما كان",
  "{0}: changed since in the same lines, expected as the step left it":
    "{0}: تغيّر بعد ذلك في الأسطر نفسها؛ والمتوقَّع: أن يكون كما تركته الخطوة",
  "`{0}` is gone, expected it as it was": "زال `{0}`؛ والمتوقَّع: أن يكون كما كان",
  "`{0}` was changed while the corpus was read, expected it as it was":
    "تغيّر `{0}` في أثناء قراءة المدوّنة؛ والمتوقَّع: أن يكون كما كان",
  "Unexpected file at `{0}`, expected none": "غير متوقَّع: ملف في موضع `{0}`؛ والمتوقَّع: لا ملف",
  "The folder of `{0}`": "مجلد `{0}`",
  "{0} has no room left, expected some": "لا متسع في {0}؛ والمتوقَّع: أن يكون فيه متسع",
  "{0} may not be written, expected one that may": "لا تجوز الكتابة في {0}؛ والمتوقَّع: ما تجوز فيه",
  "{0} cannot be written ({1})": "تعذّرت الكتابة في {0} ({1})",
  "`{0}` cannot be written, and {1} could not be put back: written only in part":
    "تعذّرت كتابة `{0}`، وتعذّر أن يُعاد {1} كما كان؛ فلم يُكتب إلا بعضه",
  "`{0}` makes the folder a corpus, expected it to stay": "بالملف `{0}` يكون المجلد مدوّنة؛ والمتوقَّع: أن يبقى",
  "`{0}` is no text in UTF-8, expected one": "ليس `{0}` نصًّا بترميز UTF-8؛ والمتوقَّع: نص به",
  "Unexpected place of an edit in `{0}`, expected one of its text":
    "غير متوقَّع: موضع تغيير في `{0}`؛ والمتوقَّع: موضع من نصه",
  "Unexpected name `{0}`, expected one that a corpus reads":
    "غير متوقَّع: الاسم `{0}`؛ والمتوقَّع: اسم تقرؤه المدوّنة",
  "Unexpected ending of `{0}`, expected {1}": "غير متوقَّع: امتداد `{0}`؛ والمتوقَّع: {1}",
  "Unexpected corpus in `{0}`, expected a folder of this one":
    "غير متوقَّع: مدوّنة في `{0}`؛ والمتوقَّع: مجلد من هذه",
  "Unexpected name of a draft, expected small letters, digits, `-` and `_`":
    "غير متوقَّع: اسم المسودّة؛ والمتوقَّع: حروف لاتينية صغيرة وأرقام و`-` و`_`",
  "Unexpected draft, expected JSON of at most {0}: it was not kept":
    "غير متوقَّعة: المسودّة؛ والمتوقَّع: JSON لا يزيد على {0}؛ ولم تُحفظ",
  "Unexpected {0} drafts, expected at most {1}: it was not kept": {
    two: "غير متوقَّع: مسودّتان؛ والمتوقَّع: {1} على الأكثر؛ ولم تُحفظ",
    few: "غير متوقَّع: {0} مسودّات؛ والمتوقَّع: {1} على الأكثر؛ ولم تُحفظ",
    many: "غير متوقَّع: {0} مسودّة؛ والمتوقَّع: {1} على الأكثر؛ ولم تُحفظ",
    other: "غير متوقَّع: {0} مسودّة؛ والمتوقَّع: {1} على الأكثر؛ ولم تُحفظ",
  },
  "The corpus may not be written, expected one that may: where nothing can be kept, no plug-in can be allowed":
    "لا تجوز الكتابة في المدوّنة؛ والمتوقَّع: أن تجوز؛ فحيث لا يُحفظ شيء لا يؤذن بإضافة",
  "`{0}` may not be written, expected a place to keep your own key":
    "لا تجوز الكتابة في `{0}`؛ والمتوقَّع: موضع يُحفظ فيه مفتاحك",
  "`{0}` would not say just what was chosen, expected it merged line by line":
    "لن يقول `{0}` ما اختير بعينه؛ والمتوقَّع: أن يُدمج سطرًا سطرًا",

  "Open the address that was printed: it holds a token.": "افتح العنوان المطبوع: ففيه رمز الدخول.",
  "What was sent is too large.": "ما أُرسل أكبر مما يُقبل.",
  "Expected the name of a step and changes of files.": "المتوقَّع: اسم خطوة وتغييرات ملفات.",
  "Expected the number of a step.": "المتوقَّع: رقم خطوة.",
  "There is no such text in the history.": "لا نص كهذا في التاريخ.",
  "There is no such paper or picture.": "لا ورقة ولا صورة بهذا الاسم.",
  "There is no such draft.": "لا مسودّة بهذا الاسم.",
  "Expected the name of a plug-in and the hash of its file.": "المتوقَّع: اسم إضافة وبصمة ملفها.",
  "There is no such plug-in in this corpus.": "لا إضافة بهذا الاسم في هذه المدوّنة.",
  "The file was changed meanwhile; read it as it is now.": "تغيّر الملف في الأثناء؛ فاقرأه كما هو الآن.",

  "The computation ended before its time": "انتهى الحساب قبل أوانه",
  "The plug-in `{0}` of this corpus gave no result: {1}": "لم تعط الإضافة `{0}` من هذه المدوّنة نتيجة: {1}",
  "The plug-in `{0}` of this corpus gave no result: it was ended after {1}":
    "لم تعط الإضافة `{0}` من هذه المدوّنة نتيجة: أُوقفت بعد {1}",
  "The plug-in `{0}` of this corpus was not asked again: an earlier run of it did not come to an end":
    "لم تُسأل الإضافة `{0}` من هذه المدوّنة مرة أخرى: لم ينته تشغيل سابق لها",
  "it is none": "ليست إضافة",
  "its {0} is `{1}`, expected the name of its file": "قيمة {0} فيها `{1}`؛ والمتوقَّع: اسم ملفها",
  "its result has {0}": "في نتيجتها: {0}",
  "its figure has {0}": "في شكلها: {0}",
  "its sentence has {0}": "في جملتها: {0}",
  "{0} broke off: {1}": "انقطع {0}: {1}",
  "it broke off: too deep a recursion, or memory used up": "انقطعت: أفرطت في استدعاء نفسها أو نفدت الذاكرة",
  "it broke off: {0}": "انقطعت: {0}",
  "it used up its memory": "استنفدت ذاكرتها",
  "it was stopped after {0}": "أُوقفت بعد {0}",
  "it waits ({0}) at its top, expected nothing to wait for": "تنتظر ({0}) في أولها؛ والمتوقَّع: ألا تنتظر شيئًا",
  "it said more than {0}": "قالت أكثر من {0}",
};
