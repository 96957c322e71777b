import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What is wrong with bibliographies and citation styles. */
export const bibliographySaid: ArabicCatalogue = {
  "Unexpected text, expected a list of {0} items: {1}": "غير متوقَّع: نص؛ والمتوقَّع: قائمة مواد {0}: {1}",
  "{0} between items or {1}": "{0} بين المواد، أو {1}",
  "the end of the file after the list": "نهاية الملف بعد القائمة",
  "Missing {0} of the item, expected a {1} item": "ناقص: {0} للمادة؛ والمتوقَّع: مادة {1}",
  "Unreadable value of `{0}`, expected {1}": "تعذّرت قراءة قيمة `{0}`؛ والمتوقَّع: {1}",
  "Unknown type `{0}`, read as a document": "نوع غير معروف: `{0}`؛ ويُقرأ على أنه وثيقة",
  "a list of names": "قائمة أسماء",
  "a date with {0}": "تاريخ فيه {0}",
  "a text": "نص",
  "Unexpected nesting of more than {0} brackets, expected less": {
    two: "غير متوقَّع: تداخل يزيد على قوسين؛ والمتوقَّع: أقل من ذلك",
    few: "غير متوقَّع: تداخل يزيد على {0} أقواس؛ والمتوقَّع: أقل من ذلك",
    many: "غير متوقَّع: تداخل يزيد على {0} قوسًا؛ والمتوقَّع: أقل من ذلك",
    other: "غير متوقَّع: تداخل يزيد على {0} قوس؛ والمتوقَّع: أقل من ذلك",
  },
  "a value": "قيمة",
  end: "النهاية",
  "{0} or {1}": "{0} أو {1}",
  "a key in quotes": "مفتاح بين علامتي اقتباس",
  "{0} after the key": "{0} بعد المفتاح",
  "an escape of {0}": "علامة هروب من علامات {0}",
  "Unexpected number of more than {0} entries, expected them divided among several files": {
    two: "غير متوقَّع: أكثر من مدخلين؛ والمتوقَّع: أن توزَّع على عدة ملفات",
    few: "غير متوقَّع: أكثر من {0} مداخل؛ والمتوقَّع: أن توزَّع على عدة ملفات",
    many: "غير متوقَّع: أكثر من {0} مدخلًا؛ والمتوقَّع: أن توزَّع على عدة ملفات",
    other: "غير متوقَّع: أكثر من {0} مدخل؛ والمتوقَّع: أن توزَّع على عدة ملفات",
  },
  "Unknown kind of bibliography, expected {0}, {1} or {2}":
    "نوع مراجع غير معروف؛ والمتوقَّع: {0} أو {1} أو {2}",
  "Missing {0} before the next record, expected one at the end of each":
    "ناقص: {0} قبل المدخل التالي؛ والمتوقَّع: واحد في آخر كل مدخل",
  "Unexpected {0}, expected {1} first": "غير متوقَّع: {0}؛ والمتوقَّع: {1} قبله",
  "Unexpected `{0}` outside a record, expected {1}": "غير متوقَّع: `{0}` خارج المداخل؛ والمتوقَّع: {1}",
  "Missing {0} at the end of the record, expected one": "ناقص: {0} في آخر المدخل؛ والمتوقَّع: واحد",
  "Unreadable record, expected {0}": "تعذّرت قراءة المدخل؛ والمتوقَّع: {0}",
  "Unknown kind of record `{0}`, read as a document": "نوع مدخل غير معروف: `{0}`؛ ويُقرأ على أنه وثيقة",

  "Duplicate field `{0}` in entry `{1}`, expected it once; the first is kept":
    "حقل مكرّر: `{0}` في المدخل `{1}`؛ والمتوقَّع: مرة واحدة؛ ويُبقى الأول",
  "Unknown kind of entry `@{0}`, read as a document": "نوع مدخل غير معروف: `@{0}`؛ ويُقرأ على أنه وثيقة",
  "Unexpected length of `{0}`, expected a text of ordinary length":
    "غير متوقَّع: طول `{0}`؛ والمتوقَّع: نص معتاد الطول",
  "Unreadable `{0}` of entry `{1}`, expected {2} that ends what it begins":
    "تعذّرت قراءة `{0}` في المدخل `{1}`؛ والمتوقَّع: {2} يُتمّ ما يبدأ به",
  "Unknown entry `{0}` in the set `{1}`, expected a key of this file":
    "مدخل غير معروف: `{0}` في المجموعة `{1}`؛ والمتوقَّع: مفتاح من هذا الملف",
  "Unknown entry `{0}` in `{1}`, expected a key of this file":
    "مدخل غير معروف: `{0}` في `{1}`؛ والمتوقَّع: مفتاح من هذا الملف",
  "Unexpected circle of `{0}` through `{1}`, expected entries that end it":
    "غير متوقَّع: دائرة من `{0}` تمر بـ`{1}`؛ والمتوقَّع: مداخل تنهيها",
  "Unexpected amount of `{0}`, expected at most {1} in a line and {2} in all":
    "غير متوقَّع: كثرة `{0}`؛ والمتوقَّع: {1} متتابعة و{2} في الجملة على الأكثر",
  "Unexpected `{0}` that is never closed, expected its end before the next entry":
    "غير متوقَّع: `{0}` لا يُغلق؛ والمتوقَّع: نهايته قبل المدخل التالي",
  "Missing bibliography entries, expected {0} or the like": "ناقص: مداخل المراجع؛ والمتوقَّع: {0} أو نحوه",
  "Unexpected {0}, expected `{1}`": "غير متوقَّع: {0}؛ والمتوقَّع: `{1}`",
  "Missing key of the entry, expected {0}": "ناقص: مفتاح المدخل؛ والمتوقَّع: {0}",
  "Unexpected {0}, expected `,` after the key `{1}`": "غير متوقَّع: {0}؛ والمتوقَّع: `,` بعد المفتاح `{1}`",
  "Unexpected space in the key `{0}`, expected a key without spaces":
    "غير متوقَّع: مسافة في المفتاح `{0}`؛ والمتوقَّع: مفتاح بلا مسافات",
  "Unexpected end of the file in entry `{0}`, expected `{1}`":
    "غير متوقَّع: نهاية الملف في المدخل `{0}`؛ والمتوقَّع: `{1}`",
  "Unexpected {0}, expected a field such as {1}": "غير متوقَّع: {0}؛ والمتوقَّع: حقل مثل {1}",
  "Unexpected {0}, expected `=` after `{1}`": "غير متوقَّع: {0}؛ والمتوقَّع: `=` بعد `{1}`",
  "Put a comma": "ضع فاصلة",
  "Missing `,` after `{0}`, expected one between fields": "ناقص: `,` بعد `{0}`؛ والمتوقَّع: واحدة بين الحقول",
  "Unexpected end of entry `{0}` before its last field, expected one `}` less":
    "غير متوقَّع: نهاية المدخل `{0}` قبل آخر حقوله؛ والمتوقَّع: `}` أقل بواحدة",
  "Unexpected `{0}`, expected `{` after the kind of entry": "غير متوقَّع: `{0}`؛ والمتوقَّع: `{` بعد نوع المدخل",
  "Unexpected `}` inside quotes, expected balanced braces":
    "غير متوقَّع: `}` بين علامتي اقتباس؛ والمتوقَّع: أقواس متكافئة",
  "Unexpected nesting of more than {0} braces": {
    two: "غير متوقَّع: تداخل يزيد على قوسين",
    few: "غير متوقَّع: تداخل يزيد على {0} أقواس",
    many: "غير متوقَّع: تداخل يزيد على {0} قوسًا",
    other: "غير متوقَّع: تداخل يزيد على {0} قوس",
  },
  "Unexpected `{0}` that is never closed, expected a closing `{1}`":
    "غير متوقَّع: `{0}` لا يُغلق؛ والمتوقَّع: `{1}` يغلقه",
  "Unexpected {0}, expected a value in braces or quotes":
    "غير متوقَّع: {0}؛ والمتوقَّع: قيمة بين أقواس أو علامتي اقتباس",
  "Unknown abbreviation `{0}`, expected a value in braces or one that {1} defines":
    "اختصار غير معروف: `{0}`؛ والمتوقَّع: قيمة بين أقواس أو اختصار يعرّفه {1}",
  "Unexpected growth of the file by its abbreviations": "غير متوقَّع: تضخّم الملف باختصاراته",
  "Unexpected length of abbreviation `{0}`, expected at most {1} characters": {
    two: "غير متوقَّع: طول الاختصار `{0}`؛ والمتوقَّع: حرفان على الأكثر",
    few: "غير متوقَّع: طول الاختصار `{0}`؛ والمتوقَّع: {1} أحرف على الأكثر",
    many: "غير متوقَّع: طول الاختصار `{0}`؛ والمتوقَّع: {1} حرفًا على الأكثر",
    other: "غير متوقَّع: طول الاختصار `{0}`؛ والمتوقَّع: {1} حرف على الأكثر",
  },

  "{0} in line {1}": "{0} في السطر {1}",
  "a style in {0}, which is {1}": "نمط بصيغة {0}، وهي {1}",
  "element `{0}`": "العنصر `{0}`",
  "{0} in the namespace of {1}": "{0} في نطاق أسماء {1}",
  "dependent style without rules of its own": "نمط تابع لا قواعد له",
  "the style it leads to, `{0}`": "النمط الذي يحيل إليه، `{0}`",
  "style without {0} or without a {1} in it": "نمط ليس فيه {0}، أو ليس في ذلك {1}",
  one: "واحد",
  "a style as {0} has it": "نمط على ما في {0}",
  "macro `{0}` that calls itself": "ماكرو `{0}` يستدعي نفسه",
  "one that comes to an end": "ماكرو ينتهي",
  "call of the macro `{0}`": "استدعاء الماكرو `{0}`",
  "one that the style has": "ماكرو في النمط",
  "style that its macros make endless": "نمط لا ينتهي بسبب الماكرو فيه",
  "a smaller one": "نمط أصغر",
  "element `{0}` in `{1}`": "العنصر `{0}` في `{1}`",
  "{0} without {1}": "{0} من غير {1}",
  "{0} without {1} or parts": "{0} من غير {1} ولا أجزاء",
  "{0} that prints nothing": "{0} لا يطبع شيئًا",
  "{0} that says {1}": "{0} قيمته {1}",
  "{0}, which comes with the program": "{0}، وهو مع البرنامج",
  "Unexpected {0} in `{1}`, expected {2}": "غير متوقَّع: {0} في `{1}`؛ والمتوقَّع: {2}",
  "Unknown citation style `{0}`, expected {1}, or the path of a {2} file in the corpus":
    "نمط إحالة غير معروف: `{0}`؛ والمتوقَّع: {1}، أو مسار ملف {2} في المدوّنة",
  "text outside the elements": "نص خارج العناصر",
  "{0} that closes nothing": "{0} لا يغلق شيئًا",
  "{0} after the end": "{0} بعد النهاية",
  "more elements than a style has": "عناصر أكثر مما في نمط",
  "{0} that is never closed": "{0} لا يُغلق",
  "no element": "لا عنصر",
  "a document type": "إعلان نوع الوثيقة",
};
