import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What is wrong with how records refer to one another, and what records are. */
export const linksSaid: ArabicCatalogue = {
  scholar: "باحث",
  question: "مسألة",
  claim: "دعوى",
  passage: "موضع من مصدر",
  position: "رأي",
  artefact: "أثر",
  image: "صورة",
  observation: "مشاهدة",
  measurement: "قياس",
  relation: "علاقة زمنية",
  argument: "حجة",
  derivation: "اشتقاق",
  examination: "فحص",
  talk: "عرض",
  search: "بحث",
  reading: "قراءة",
  source: "مصدر",
  "a scholar": "باحث",
  "a question": "مسألة",
  "a claim": "دعوى",
  "a passage": "موضع من مصدر",
  "a position": "رأي",
  "an artefact": "أثر",
  "an image": "صورة",
  "an observation": "مشاهدة",
  "a measurement": "قياس",
  "a relation": "علاقة زمنية",
  "an argument": "حجة",
  "a derivation": "اشتقاق",
  "an examination": "فحص",
  "a talk": "عرض",
  "a search": "بحث",
  "a reading": "قراءة",
  "a source": "مصدر",
  "a record or a source": "سجل أو مصدر",

  "Unexpected {0} `{1}`, expected a {2} for {3}": "غير متوقَّع: {0} `{1}`؛ والمتوقَّع: {2} لـ{3}",
  "Unexpected `{0}`, expected a {1} above 0": "غير متوقَّع: `{0}`؛ والمتوقَّع: {1} فوق الصفر",
  "Duplicate key `{0}` in the bibliographies, expected another; the first is kept":
    "مفتاح مكرّر في المراجع: `{0}`؛ والمتوقَّع: مفتاح آخر؛ ويُبقى الأول",
  "Unexpected circle of parts {0}, expected a whole outside it":
    "غير متوقَّع: أجزاء في دائرة: {0}؛ والمتوقَّع: كل من خارجها",
  "Duplicate id `{0}`, expected another name; the first is kept":
    "معرّف مكرّر: `{0}`؛ والمتوقَّع: اسم آخر؛ ويُبقى الأول",
  "Unexpected `{0}` as a source, expected quotes round a citation that holds a comma":
    "غير متوقَّع: `{0}` في موضع المصدر؛ والمتوقَّع: علامتا اقتباس حول إحالة فيها فاصلة",
  "Put the citation in quotes": "ضع الإحالة بين علامتي اقتباس",
  "Unexpected `{0}`, expected a date ({1}), or the id of a claim or an artefact":
    "غير متوقَّع: `{0}`؛ والمتوقَّع: تاريخ ({1})، أو معرّف دعوى أو أثر",
  "Duplicate outcome `{0}`, expected another name; the first is kept":
    "نتيجة مكرّرة: `{0}`؛ والمتوقَّع: اسم آخر؛ وتُبقى الأولى",
  "one of the question's answers": "جواب من أجوبة المسألة",
  "an answer of some question": "جواب عن مسألة ما",
  "Unexpected {0} `{1}`, expected {2}": "غير متوقَّع: {0} `{1}`؛ والمتوقَّع: {2}",
  "Unexpected source `{0}`, expected {1}": "غير متوقَّع: المصدر `{0}`؛ والمتوقَّع: {1}",
  "Unknown id `{0}`, expected {1}": "معرّف غير معروف: `{0}`؛ والمتوقَّع: {1}",
  "Unknown outcome `{0}` of `{1}`, expected {2}": "نتيجة غير معروفة: `{0}` للفحص `{1}`؛ والمتوقَّع: {2}",
  "Unknown examination `{0}`, expected {1}": "فحص غير معروف: `{0}`؛ والمتوقَّع: {1}",
  "one that the corpus has": "فحص في المدوّنة",
  "Missing dimension, expected a sum such as {0}": "ناقص: البُعد؛ والمتوقَّع: مجموع مثل {0}",
  "Unexpected factor in `{0}`, expected a number above 0":
    "غير متوقَّع: المعامل في `{0}`؛ والمتوقَّع: عدد فوق الصفر",
  "Unexpected `{0}`, expected a sum of terms, each a number or π times one dimension":
    "غير متوقَّع: `{0}`؛ والمتوقَّع: مجموع حدود، كل حد عدد أو π في بُعد واحد",
  "Unexpected circle of dimensions that equal one another, {0}, expected one of them to be given by the others alone":
    "غير متوقَّع: أبعاد يساوي بعضها بعضًا في دائرة: {0}؛ والمتوقَّع: أن يُعرف واحد منها بغيره وحده",
  "Unexpected `{0}`, which comes to nothing, expected a sum such as {1}":
    "غير متوقَّع: `{0}`، وهو يساوي لا شيء؛ والمتوقَّع: مجموع مثل {1}",
  "one that is declared or measured": "بُعد معلن أو مقيس",
  "Unknown dimension `{0}`, expected {1}": "بُعد غير معروف: `{0}`؛ والمتوقَّع: {1}",
  "Unexpected {0} `{1}` in what the {2} `{3}` equals, expected one kind":
    "غير متوقَّع: {0} `{1}` فيما يساويه {2} `{3}`؛ والمتوقَّع: نوع واحد",
  "Unexpected `{0}` in what it equals itself, expected other dimensions":
    "غير متوقَّع: `{0}` فيما يساويه هو نفسه؛ والمتوقَّع: أبعاد أخرى",
};
