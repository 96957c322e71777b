import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What is read, and what the rules say, of the scholar's own prose. */
export const proseSaid: ArabicCatalogue = {
  "Prose in the review says what no longer follows.": "نص في المراجعة يقول ما لم يعد يلزم.",
  "A text in `review/` holds itself to a standing, `{{claim:ID stands}}`, or to a comparison, `{{number:ID.p < 0.01}}`, and the record now gives another. Read the sentence again: say what follows now, or look at what changed since it was written. Texts are never changed for you.":
    "نص في `review/` يتقيّد بحال، `{{claim:ID stands}}`، أو بمقارنة، `{{number:ID.p < 0.01}}`، والسجل يعطي الآن غيرها. أعد قراءة الجملة: قل ما يلزم الآن، أو انظر ما الذي تغيّر منذ كُتبت. ولا تُغيَّر النصوص نيابة عنك أبدًا.",
  "The prose gives {0} the standing “{1}”, expected what follows now: “{2}”.":
    "النص يعطي {0} الحال «{1}»؛ والمتوقَّع ما يلزم الآن: «{2}».",
  "The prose says that {0} of {1} is {2}": "النص يقول إن {0} في {1} هو {2}",
  "{0}, expected what follows now: it is not computed.": "{0}؛ والمتوقَّع ما يلزم الآن: لم يُحسب.",
  "{0}, expected what follows now: it is {1}.": "{0}؛ والمتوقَّع ما يلزم الآن: هو {1}.",
  "Unexpected `{0}`, which is withheld, expected what may be shown":
    "غير متوقَّع: `{0}`، وهو محجوب؛ والمتوقَّع: ما يجوز إظهاره",
  "Unexpected standing {0}, expected {1}": "حال غير متوقَّعة: {0}؛ والمتوقَّع: {1}",
  "Unexpected {0}, expected a citation such as {1}": "غير متوقَّع: {0}؛ والمتوقَّع: استشهاد مثل {1}",
  "Unexpected {0}, expected words: it is left out of the review":
    "غير متوقَّع: {0}؛ والمتوقَّع: كلمات؛ وقد أُسقط من المراجعة",
  "a picture": "صورة",
  "a note in a note": "حاشية في حاشية",
  "Unexpected note {0} that nothing leads to, expected {1} in the text":
    "حاشية غير متوقَّعة {0} لا يحيل إليها شيء؛ والمتوقَّع: {1} في النص",
  "Unexpected nesting deeper than {0}, expected paragraphs, lists and quotations":
    "تداخل غير متوقَّع أعمق من {0}؛ والمتوقَّع: فقرات وقوائم واقتباسات",
  "Unexpected paragraph that never ends, expected an empty line":
    "فقرة غير متوقَّعة لا تنتهي؛ والمتوقَّع: سطر فارغ",
  "The sections of the review, in their order: names of its own, and of files in {0}.":
    "أقسام المراجعة بترتيبها: أسماؤها الخاصة، وأسماء الملفات في {0}.",
  "a shorter text": "نص أقصر",
};
