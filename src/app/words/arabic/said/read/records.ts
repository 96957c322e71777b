import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What is wrong with files of records, the settings and tables. */
export const recordsSaid: ArabicCatalogue = {
  "Something that the corpus withholds has this error, expected none":
    "في شيء تحجبه المدوّنة هذا الخطأ؛ والمتوقَّع: لا خطأ",
  "{0}; it is met in {1} places": {
    two: "{0}؛ وهو في موضعين",
    few: "{0}؛ وهو في {1} مواضع",
    many: "{0}؛ وهو في {1} موضعًا",
    other: "{0}؛ وهو في {1} موضع",
  },
  "{0}; and {1} more findings in this file": {
    zero: "{0}؛ ولا تنبيه غيره في هذا الملف",
    one: "{0}؛ وتنبيه آخر في هذا الملف",
    two: "{0}؛ وتنبيهان آخران في هذا الملف",
    few: "{0}؛ و{1} تنبيهات أخرى في هذا الملف",
    many: "{0}؛ و{1} تنبيهًا آخر في هذا الملف",
    other: "{0}؛ و{1} تنبيه آخر في هذا الملف",
  },
  "Write {0}": "اكتب {0}",
  "Put the value in quotes": "ضع القيمة بين علامتي اقتباس",

  "Missing {0}, expected one in the folder": "ناقص: {0}؛ والمتوقَّع: واحد في المجلد",
  "Duplicate file `{0}`, expected it once; it is read the first time":
    "ملف مكرّر: `{0}`؛ والمتوقَّع: مرة واحدة؛ ويُقرأ في المرة الأولى",
  "Missing file `{0}`, expected {1}": "ملف ناقص: `{0}`؛ والمتوقَّع: {1}",
  "Missing file `{0}`, expected it below the corpus's folder":
    "ملف ناقص: `{0}`؛ والمتوقَّع: أن يكون تحت مجلد المدوّنة",
  "Unexpected size of more than {0}, expected the records divided among several files":
    "غير متوقَّع: حجم يزيد على {0}؛ والمتوقَّع: السجلات موزّعة على عدة ملفات",
  "Unexpected format {0}, expected 1": "غير متوقَّع: الصيغة {0}؛ والمتوقَّع: 1",
  "Unexpected share `{0}`, expected one such as {1}": "غير متوقَّعة: النسبة `{0}`؛ والمتوقَّع: نسبة مثل {1}",
  "Unexpected size `{0}`, expected a value above 0": "غير متوقَّع: المقدار `{0}`؛ والمتوقَّع: قيمة فوق الصفر",
  "Unexpected level `{0}`, expected {1}, {2} or {3}": "غير متوقَّع: الدرجة `{0}`؛ والمتوقَّع: {1} أو {2} أو {3}",

  map: "مجموعة مسمّاة",
  list: "قائمة",
  text: "نص",
  "one of {0}": "واحد من: {0}",
  "{0} such as {1}": "{0}، مثل {1}",
  "Unexpected {0} together, expected one of them": "غير متوقَّع: {0} معًا؛ والمتوقَّع: واحد منها",
  "Missing {0}, expected one of them": "ناقص: {0}؛ والمتوقَّع: واحد منها",
  "Missing {0}, expected in every such record": "ناقص: {0}؛ وهو لازم في كل سجل كهذا",
  "Unknown list `{0}`, expected {1}": "قائمة غير معروفة: `{0}`؛ والمتوقَّع: {1}",
  "Unknown field `{0}`, expected {1}": "حقل غير معروف: `{0}`؛ والمتوقَّع: {1}",
  "Unknown column `{0}`, expected {1}": "عمود غير معروف: `{0}`؛ والمتوقَّع: {1}",
  "Unexpected {0}, expected a list of records": "غير متوقَّع: {0}؛ والمتوقَّع: قائمة سجلات",
  "Unexpected {0}, expected {1}": "غير متوقَّع: {0}؛ والمتوقَّع: {1}",
  "Unexpected `{0}`, expected {1}": "غير متوقَّع: `{0}`؛ والمتوقَّع: {1}",
  "a single value": "قيمة واحدة",
  "a value or a list of values": "قيمة أو قائمة قيم",
  "a map of names to values": "مجموعة أسماء وقيمها",
  "a map with {0}": "مجموعة فيها: {0}",
  "a map of names": "مجموعة أسماء",
  "a map of fields": "مجموعة حقول",
  "one word": "كلمة واحدة",
  "Unexpected length of {0} letters, expected at most {1}": {
    two: "غير متوقَّع: طول حرفين؛ والمتوقَّع: {1} على الأكثر",
    few: "غير متوقَّع: طول {0} أحرف؛ والمتوقَّع: {1} على الأكثر",
    many: "غير متوقَّع: طول {0} حرفًا؛ والمتوقَّع: {1} على الأكثر",
    other: "غير متوقَّع: طول {0} حرف؛ والمتوقَّع: {1} على الأكثر",
  },
  "Unexpected empty list in `{0}`, expected at least one entry":
    "غير متوقَّع: قائمة فارغة في `{0}`؛ والمتوقَّع: عنصر على الأقل",
  "Unexpected `{0}`, expected {1} or {2}": "غير متوقَّع: `{0}`؛ والمتوقَّع: {1} أو {2}",
  "a number, 0 or more": "عدد، صفر أو أكثر",
  "a probability from 0 to 1": "احتمال من 0 إلى 1",
  "Unexpected `{0}`, expected a whole number": "غير متوقَّع: `{0}`؛ والمتوقَّع: عدد صحيح",
  "Unexpected id `{0}`, expected {1}, {2} and - in parts joined by /":
    "غير متوقَّع: المعرّف `{0}`؛ والمتوقَّع: {1} و{2} و- في أجزاء تصلها /",
  "Missing id, expected the id of a record": "ناقص: المعرّف؛ والمتوقَّع: معرّف سجل",
  "Missing key, expected the key of a source": "ناقص: المفتاح؛ والمتوقَّع: مفتاح مصدر",
  "Unexpected `{0}`, expected one of {1}": "غير متوقَّع: `{0}`؛ والمتوقَّع واحد من: {1}",
  "Duplicate id `{0}`, expected another name": "معرّف مكرّر: `{0}`؛ والمتوقَّع: اسم آخر",

  "Unexpected number of more than {0} cells, expected them divided among several tables": {
    two: "غير متوقَّع: أكثر من خانتين؛ والمتوقَّع: أن توزَّع على عدة جداول",
    few: "غير متوقَّع: أكثر من {0} خانات؛ والمتوقَّع: أن توزَّع على عدة جداول",
    many: "غير متوقَّع: أكثر من {0} خانة؛ والمتوقَّع: أن توزَّع على عدة جداول",
    other: "غير متوقَّع: أكثر من {0} خانة؛ والمتوقَّع: أن توزَّع على عدة جداول",
  },
  "Missing head line, expected the names of the columns": "ناقص: سطر العناوين؛ والمتوقَّع: أسماء الأعمدة",
  "Duplicate column `{0}`, expected it once; the first is kept":
    "عمود مكرّر: `{0}`؛ والمتوقَّع: مرة واحدة؛ ويُبقى الأول",
  "Unexpected 1 cell, expected {0} as in the head line":
    "غير متوقَّع: خانة واحدة؛ والمتوقَّع: {0} كما في سطر العناوين",
  "Unexpected {0} cells, expected {1} as in the head line": {
    zero: "غير متوقَّع: سطر بلا خانات؛ والمتوقَّع: {1} كما في سطر العناوين",
    two: "غير متوقَّع: خانتان؛ والمتوقَّع: {1} كما في سطر العناوين",
    few: "غير متوقَّع: {0} خانات؛ والمتوقَّع: {1} كما في سطر العناوين",
    many: "غير متوقَّع: {0} خانة؛ والمتوقَّع: {1} كما في سطر العناوين",
    other: "غير متوقَّع: {0} خانة؛ والمتوقَّع: {1} كما في سطر العناوين",
  },
  "Unexpected text after a closing quote, expected a separator":
    "غير متوقَّع: نص بعد علامة الاقتباس الأخيرة؛ والمتوقَّع: فاصل",
  "Unexpected comment `{0}`, expected a table that begins with its head line":
    "غير متوقَّع: التعليق `{0}`؛ والمتوقَّع: جدول أوله سطر العناوين",
  'Unexpected `"` that is never closed, expected a closing one':
    'غير متوقَّع: `"` لا تُغلق؛ والمتوقَّع: علامة تغلقها',
};
