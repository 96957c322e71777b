import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What is wrong with dates, quantities and units. */
export const valuesSaid: ArabicCatalogue = {
  "Unreadable date `{0}`, expected `{1}`": "تعذّرت قراءة التاريخ `{0}`؛ والمتوقَّع: `{1}`",
  "Unexpected second `/` in the date `{0}`": "غير متوقَّع: `/` ثانية في التاريخ `{0}`",
  "Unexpected date `{0}` with neither end, expected a year":
    "غير متوقَّع: تاريخ `{0}` لا أول له ولا آخر؛ والمتوقَّع: سنة",
  "Unexpected date `{0}` that runs backwards, expected the earlier end first":
    "غير متوقَّع: تاريخ `{0}` آخره قبل أوله؛ والمتوقَّع: الأقدم أولًا",
  "Unexpected year {0}, expected {1} for {2}": "غير متوقَّع: السنة {0}؛ والمتوقَّع: {1} لسنة {2}",
  "Unexpected date `{0}`, which no calendar has": "غير متوقَّع: التاريخ `{0}`، وليس في تقويم",
  "Unreadable date `{0}`, expected {1} such as {2}, {3}, {4} or {5}":
    "تعذّرت قراءة التاريخ `{0}`؛ والمتوقَّع: {1}، مثل {2} أو {3} أو {4} أو {5}",
  "Unexpected year below 0 `{0}`, expected {1} or {2}":
    "غير متوقَّع: سنة دون الصفر `{0}`؛ والمتوقَّع: {1} أو {2}",
  "Unexpected years before present `{0}`, expected {1} or {2}":
    "غير متوقَّع: سنون قبل الحاضر `{0}`؛ والمتوقَّع: {1} أو {2}",
  "Unreadable year `{0}`, expected one such as {1}, {2} or {3}":
    "تعذّرت قراءة السنة `{0}`؛ والمتوقَّع: مثل {1} أو {2} أو {3}",
  "Unexpected second era in `{0}`": "غير متوقَّع: عصر ثانٍ في `{0}`",
  "Unexpected year 0, expected {0} or {1}": "غير متوقَّع: السنة 0؛ والمتوقَّع: {0} أو {1}",

  length: "طول",
  mass: "كتلة",
  angle: "زاوية",
  time: "زمن",
  area: "مساحة",
  volume: "حجم",
  count: "عدّ",
  number: "عدد",
  "a length": "طول",
  "a mass": "كتلة",
  "an angle": "زاوية",
  "a time": "زمن",
  "an area": "مساحة",
  "a volume": "حجم",
  "a count": "عدّ",
  "a number": "عدد",
  "{0} with {1}": "{0} مع {1}",
  "number without a unit": "عدد بلا وحدة",
  "number that is broken or below 0": "عدد كسري أو دون الصفر",
  "Unexpected {0} in one quantity, expected one kind": "غير متوقَّع: {0} في مقدار واحد؛ والمتوقَّع: نوع واحد",
  "Unexpected {0} with {1} in one quantity, expected one kind":
    "غير متوقَّع: {0} مع {1} في مقدار واحد؛ والمتوقَّع: نوع واحد",
  "Missing unit, expected {0} such as `{1}`": "ناقص: الوحدة؛ والمتوقَّع: {0}، مثل `{1}`",
  "Unexpected {0}, expected {1} such as `{2}`": "غير متوقَّع: {0}؛ والمتوقَّع: {1}، مثل `{2}`",
  "Unexpected range that runs backwards, expected the smaller end first":
    "غير متوقَّع: مدى آخره أصغر من أوله؛ والمتوقَّع: الأصغر أولًا",
  "Unreadable number, expected one below {0}": "تعذّرت قراءة العدد؛ والمتوقَّع: عدد دون {0}",
  "Missing unit of the second number": "ناقص: وحدة العدد الثاني",
  "Unreadable number `{0}`, expected one such as {1}": "تعذّرت قراءة العدد `{0}`؛ والمتوقَّع: مثل {1}",
  "Missing unit after `{0}`": "ناقص: الوحدة بعد `{0}`",
  "Missing number, expected a quantity such as {0}": "ناقص: العدد؛ والمتوقَّع: مقدار مثل {0}",
  "Unexpected `{0}`, expected a number": "غير متوقَّع: `{0}`؛ والمتوقَّع: عدد",
  "Unexpected `{0}`, expected `{1}` for a length or `{2}` for an angle":
    "غير متوقَّع: `{0}`؛ والمتوقَّع: `{1}` للطول أو `{2}` للزاوية",
  "Unexpected `{0}` after the number, expected a unit": "غير متوقَّع: `{0}` بعد العدد؛ والمتوقَّع: وحدة",
  "Unknown unit `{0}`, expected one of {1}": "وحدة غير معروفة: `{0}`؛ والمتوقَّع واحدة من: {1}",
  "Unknown unit `{0}`, expected {1}": "وحدة غير معروفة: `{0}`؛ والمتوقَّع: {1}",
  "Unexpected `{0}` after `{1}`, expected units from larger to smaller":
    "غير متوقَّع: `{0}` بعد `{1}`؛ والمتوقَّع: الوحدات من الكبرى إلى الصغرى",
  "Unexpected broken number before a smaller unit, expected a whole one":
    "غير متوقَّع: عدد كسري قبل وحدة أصغر؛ والمتوقَّع: عدد صحيح",
  "Unexpected number `{0}`, expected a comma as the decimal sign and no other":
    "غير متوقَّع: العدد `{0}`؛ والمتوقَّع: الفاصلة وحدها علامة عشرية",
  "Unexpected number `{0}`, expected `{1}` or `{2}`": "غير متوقَّع: العدد `{0}`؛ والمتوقَّع: `{1}` أو `{2}`",
  "the point as the decimal sign": "النقطة علامة عشرية",
  "digits without gaps": "أرقام بلا فراغ بينها",
  "Unexpected number `{0}`, expected {1}: `{2}`": "غير متوقَّع: العدد `{0}`؛ والمتوقَّع: {1}: `{2}`",
  "Unexpected `{0}`, expected one word for a bound or for about":
    "غير متوقَّع: `{0}`؛ والمتوقَّع: كلمة واحدة للحد أو للتقريب",
  "Unexpected uncertainty below 0, expected one of 0 or more":
    "غير متوقَّع: عدم يقين دون الصفر؛ والمتوقَّع: صفر أو أكثر",
  "Unexpected dash beside an end below 0, expected {0} between the ends of the range":
    "غير متوقَّع: شرطة عند طرف دون الصفر؛ والمتوقَّع: {0} بين طرفي المدى",
  "Missing {0}, expected {1}": "ناقص: {0}؛ والمتوقَّع: {1}",
  "Missing {0}": "ناقص: {0}",
  "Unexpected `{0}` without a ±": "غير متوقَّع: `{0}` من غير ±",
  "Unexpected `{0}` after the quantity": "غير متوقَّع: `{0}` بعد المقدار",
  "Unexpected range or uncertainty after a bound, expected a single value":
    "غير متوقَّع: مدى أو عدم يقين بعد حد؛ والمتوقَّع: قيمة واحدة",
};
