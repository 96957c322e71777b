import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What is wrong with bibliographies that come in, and with changes of their entries. */
export const incomingSaid: ArabicCatalogue = {
  "Unreadable entry, expected its braces balanced and a comma between its fields":
    "تعذّرت قراءة المدخل؛ والمتوقَّع: أقواس متكافئة وفاصلة بين الحقول",
  "Text outside of the entries": "نص خارج المداخل",
  "Unexpected control character in the entry, expected text": "غير متوقَّع: علامة تحكّم في المدخل؛ والمتوقَّع: نص",
  "Unexpected file `{0}` that cannot be read, expected it mended before entries come in":
    "غير متوقَّع: الملف `{0}` لا يُقرأ؛ والمتوقَّع: أن يُصلَح قبل إدخال المداخل",
  "Unexpected text in `{0}`, expected it mended before entries come in":
    "غير متوقَّع: نص في `{0}`؛ والمتوقَّع: أن يُصلَح قبل إدخال المداخل",
  "Unexpected changes of one entry in `{0}` at the same time, expected them one by one":
    "غير متوقَّع: تغييرات لمدخل واحد في `{0}` معًا؛ والمتوقَّع: واحد بعد واحد",
  "Unexpected reading of `{0}` in `{1}` after the import, expected it as it was":
    "غير متوقَّع: قراءة `{0}` في `{1}` بعد الإدخال؛ والمتوقَّع: أن يبقى كما كان",
  "Unexpected reading of `{0}` (line {1}) in `{2}`, expected what it says in its own file":
    "غير متوقَّع: قراءة `{0}` (السطر {1}) في `{2}`؛ والمتوقَّع: ما يقوله في ملفه",
  "Unexpected number of {0} new entries in `{1}`, expected {2}": {
    zero: "غير متوقَّع: لا مدخل جديدًا في `{1}`؛ والمتوقَّع: {2}",
    one: "غير متوقَّع: مدخل جديد واحد في `{1}`؛ والمتوقَّع: {2}",
    two: "غير متوقَّع: مدخلان جديدان في `{1}`؛ والمتوقَّع: {2}",
    few: "غير متوقَّع: {0} مداخل جديدة في `{1}`؛ والمتوقَّع: {2}",
    many: "غير متوقَّع: {0} مدخلًا جديدًا في `{1}`؛ والمتوقَّع: {2}",
    other: "غير متوقَّع: {0} مدخل جديد في `{1}`؛ والمتوقَّع: {2}",
  },
  "Unexpected tag in `{0}`, expected a text": "غير متوقَّع: وسم في `{0}`؛ والمتوقَّع: نص",
  "Unexpected tag `{0}`, expected two capitals or a capital and a digit":
    "غير متوقَّع: الوسم `{0}`؛ والمتوقَّع: حرفان لاتينيان كبيران، أو حرف كبير ورقم",
  "Duplicate field `{0}`, expected it once": "حقل مكرّر: `{0}`؛ والمتوقَّع: مرة واحدة",
  "Unexpected name `{0}`, expected that of a field": "غير متوقَّع: الاسم `{0}`؛ والمتوقَّع: اسم حقل",
  "Unexpected text, expected one that leaves the other entries of the file as they are":
    "غير متوقَّع: النص؛ والمتوقَّع: نص يترك سائر مداخل الملف كما هي",
  "Unexpected braces or quotes in `{0}`, expected as many closing as opening ones":
    "غير متوقَّع: أقواس أو علامات اقتباس في `{0}`؛ والمتوقَّع: أن يُغلق كل ما فُتح",
  "Unreadable value of `{0}`, expected JSON as in the file":
    "تعذّرت قراءة قيمة `{0}`؛ والمتوقَّع: JSON كما في الملف",
};
