import type { ArabicCatalogue } from "../../../../base/text/said/arabic.ts";

/** What a number was computed on, what was left out of it and why there is none. */
export const numbersSaid: ArabicCatalogue = {
  "Unknown number `{0}`": "عدد غير معروف: `{0}`",
  "Unknown number `{0}`, expected one of {1}": "عدد غير معروف: `{0}`؛ والمتوقَّع واحد من: {1}",
  'Unexpected comparison `{0}`, expected one such as "< 0.01" or "within 2..3"':
    'مقارنة غير متوقَّعة: `{0}`؛ والمتوقَّع: مثل "< 0.01" أو "within 2..3"',
  "Unexpected empty condition, expected at least one comparison":
    "شرط فارغ غير متوقَّع؛ والمتوقَّع: مقارنة واحدة على الأقل",
  "Unexpected circle, expected a derivation that does not lean on itself":
    "دور غير متوقَّع؛ والمتوقَّع: اشتقاق لا يستند إلى نفسه",
  "Unknown number `{0}`, expected DERIVATION.NUMBER": "عدد غير معروف: `{0}`؛ والمتوقَّع: DERIVATION.NUMBER",
  "Missing number `{0}`: {1}": "العدد `{0}` ناقص: {1}",
  "the plug-in does not give it": "لا تعطيه الإضافة",
  "The unit {0} is lost with its source": "فُقدت الوحدة {0} بفقد مصدرها",
  "The {0} was found in these data, expected one known beforehand":
    "استُخرج {0} من هذه البيانات؛ والمتوقَّع: ما كان معلومًا من قبل",
  "The unit {0} was found in these data, expected one known beforehand":
    "استُخرجت الوحدة {0} من هذه البيانات؛ والمتوقَّع: وحدة معلومة من قبل",
  "Unknown plug-in `{0}`, expected {1}": "إضافة غير معروفة: `{0}`؛ والمتوقَّع: {1}",
  "Unknown plug-in `{0}`": "إضافة غير معروفة: `{0}`",
  "Unknown input `{0}`, expected {1}": "مدخل غير معروف: `{0}`؛ والمتوقَّع: {1}",
  dates: "التواريخ",
  observations: "المشاهدات",
  measurements: "القياسات",
  "Missing {0} for `{1}`, expected at least one that the selection takes":
    "لا شيء من {0} للمدخل `{1}`؛ والمتوقَّع: واحد على الأقل مما يأخذه الاختيار",
  "The number `{0}` is not finite": "العدد `{0}` غير منتهٍ",
  "The plug-in `{0}` of this corpus has not been allowed, so nothing of it was run: {1}, SHA-256 {2}. Read it; then allow it on the page of the number, or with `variorum compute --allow-plugin {3}`":
    "لم يُؤذن للإضافة `{0}` من هذه المدوّنة، فلم يُشغَّل منها شيء: {1}، SHA-256 {2}. اقرأها؛ ثم ائذن لها في صفحة العدد، أو بالأمر `variorum compute --allow-plugin {3}`",
  "the plug-in said why, which is not told, since it read something withheld":
    "ذكرت الإضافة السبب، ولا يُنقل هنا لأنها قرأت شيئًا محجوبًا",
  "Unknown parameter `{0}`, expected {1}": "إعداد غير معروف: `{0}`؛ والمتوقَّع: {1}",
  "Unexpected value of `{0}`, expected {1}": "قيمة غير متوقَّعة لـ`{0}`؛ والمتوقَّع: {1}",
  "a pure number": "عدد مجرد",
  "a number of at most {0}": "عدد لا يزيد على {0}",
  "a unit such as {0}": "وحدة مثل {0}",
  "a unit": "وحدة",
  "Unknown event `{0}`, expected an artefact, or an event that a relation or a history names such as {1}":
    "حدث غير معروف: `{0}`؛ والمتوقَّع: أثر، أو حدث تذكره علاقة زمنية أو تاريخ أثر، مثل {1}",
  "Unknown event `{0}`, expected an artefact, or an event that a relation or a history names":
    "حدث غير معروف: `{0}`؛ والمتوقَّع: أثر، أو حدث تذكره علاقة زمنية أو تاريخ أثر",

  "not in print or lost": "غير منشور أو مفقود",
  "another reading was taken": "أُخذت قراءة أخرى",
  "left out by name": "تُرك باسمه",
  bound: "حدّ",
  "repeats another": "يكرر غيره",
  "another basis": "مستند آخر",
  "by somebody else": "لباحث آخر",
  "from another source": "من مصدر آخر",
  "another state": "حال أخرى",
  "spread of several things": "انتشار أشياء عدة",
  "no counterpart": "لا نظير له",
  "supposed, and no source's own": "مفترض، وليس من قول مصدر",
  "seen by one, looked for in vain by another": "شاهده واحد، وبحث عنه آخر فلم يجده",
  "another tells the same": "غيره يقول الشيء نفسه",
  "left out by the plug-in": "تركته الإضافة",

  "passed over in silence": "سُكت عنه",
  "{0} of {1}": "{0} في {1}",
  which: "أيها",
  "from ({0})": "من ({0})",
  "to ({0})": "إلى ({0})",
  "length ({0})": "الطول ({0})",
  "{0} to {1}": "{0} إلى {1}",
  from: "من",
  to: "إلى",
  "a plug-in of this corpus has not been allowed": "لم يُؤذن لإضافة من هذه المدوّنة",
  "It leans on something withheld": "يستند إلى شيء محجوب",
  "each {0} of the measurements read as {1}": "كل {0} في القياسات مقروءًا على أنه {1}",
  "the {0} of {1}": "الوحدة {0} وقدرها {1}",
};
