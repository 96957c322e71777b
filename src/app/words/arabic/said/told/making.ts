import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What is said where files are made, and what stands in a text where the corpus has nothing to put in. */
export const makingSaid: ArabicCatalogue = {
  "Unexpected order, expected what is to be written.": "طلب غير متوقَّع؛ والمتوقَّع: ما يُكتب.",
  "Another file is being made: try again when it is there.": "يُصنع ملف آخر: أعد المحاولة حين يتم.",
  "Unknown kind `{0}`, expected one of those offered": "نوع غير معروف `{0}`؛ والمتوقَّع: أحد المعروضة",
  "Unexpected error in `{0}` of `{1}`, expected ids that are there: nothing is written before it is known what is withheld":
    "خطأ غير متوقَّع في `{0}` من `{1}`؛ والمتوقَّع معرّفات موجودة: لا يُكتب شيء قبل أن يُعرف ما هو محجوب",
  "Unreadable corpus, expected one without errors in `{0}`":
    "مدوّنة لا تُقرأ؛ والمتوقَّع: مدوّنة لا أخطاء في `{0}` منها",
  "Nothing to write, expected something to be told": "لا شيء يُكتب؛ والمتوقَّع: شيء يُروى",
  "Unknown format `{0}`, expected one of those offered": "صيغة غير معروفة `{0}`؛ والمتوقَّع: إحدى المعروضة",
  "Unknown option `{0}`, expected one of those offered": "خيار غير معروف `{0}`؛ والمتوقَّع: أحد المعروضة",
  "[withheld]": "[محجوب]",
  "[not in the record]": "[ليس في السجل]",
  "[not yet in print]": "[لم يُنشر بعد]",
  "[being computed]": "[يُحسب]",
  "[not computed]": "[لم يُحسب]",
};
