import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What figures for print say in their captions, and why one cannot be drawn. */
export const figuresSaid: ArabicCatalogue = {
  "Unknown picture `{0}`, expected a file in `{1}`": "صورة غير معروفة: `{0}`؛ والمتوقَّع: ملف في `{1}`",
  "Unexpected size of picture `{0}`, expected at most {1} million pixels":
    "غير متوقَّع: حجم الصورة `{0}`؛ والمتوقَّع: {1} مليون بكسل على الأكثر",
  "Unexpected kind of picture `{0}`, expected a PNG, a JPEG or an SVG":
    "غير متوقَّع: نوع الصورة `{0}`؛ والمتوقَّع: PNG أو JPEG أو SVG",
  "Unreadable drawing `{0}`, expected an SVG": "رسم لا يُقرأ: `{0}`؛ والمتوقَّع: SVG",
  "Unexpected drawing `{0}` that repeats itself, expected fewer parts":
    "غير متوقَّع: رسم `{0}` يكرّر نفسه؛ والمتوقَّع: أجزاء أقل",
  "Unexpected filters in drawing `{0}`, expected none that take so long":
    "غير متوقَّع: مرشّحات في الرسم `{0}`؛ والمتوقَّع: ألا يستغرق رسمها كل هذا الوقت",
  "Unexpected drawing `{0}`, expected one that is drawn sooner":
    "غير متوقَّع: الرسم `{0}`؛ والمتوقَّع: رسم يُرسم في وقت أقصر",
  "The corpus cannot be read without its lens.": "لا يمكن قراءة المدوّنة من غير عدستها.",
  "Nothing to draw, expected a number that was computed": "لا شيء يُرسم؛ والمتوقَّع: رقم محسوب",
  "Nothing to draw of `{0}`, expected a number that was computed and has a figure":
    "لا شيء يُرسم من `{0}`؛ والمتوقَّع: رقم محسوب له شكل",
  "Nothing to draw of `{0}`, expected an artefact with a shape and its dimensions":
    "لا شيء يُرسم من `{0}`؛ والمتوقَّع: أثر له هيئة وأبعادها",
  "Nothing to show of `{0}`, expected a picture that may be published":
    "لا شيء يُعرض من `{0}`؛ والمتوقَّع: صورة يجوز نشرها",
  "Nothing to draw of `{0}`, expected something that the map shows":
    "لا شيء يُرسم من `{0}`؛ والمتوقَّع: شيء تظهره الخريطة",
  "It is on {0} pages.": "عدد صفحاته: {0}.",
  "The fonts of PDF and PNG have no shape for {0}: there an empty box stands for each; an SVG shows them where the reader's machine has a font for them.":
    "لا صورة في خطوط PDF وPNG لهذه العلامات: {0}، فمكان كل منها هناك مربع فارغ؛ أما SVG فيظهرها حيث يوجد لها خط في حاسوب القارئ.",
  "Unknown width `{0}`, expected {1} mm": "عرض غير معروف: `{0}`؛ والمتوقَّع بالملّيمتر: {1}",
  "Unknown resolution `{0}`, expected {1}": "دقّة غير معروفة: `{0}`؛ والمتوقَّع: {1}",
  "Unknown format `{0}`, expected {1}": "صيغة غير معروفة: `{0}`؛ والمتوقَّع: {1}",
  "Unknown figure `{0}`, expected an id, `{1}` or `{2}`":
    "شكل غير معروف: `{0}`؛ والمتوقَّع: معرّف أو `{1}` أو `{2}`",
  "Unexpected number of steps `{0}`, expected one from 1 to 9":
    "غير متوقَّع: عدد الخطوات `{0}`؛ والمتوقَّع: عدد من 1 إلى 9",
  "Unknown figure `{0}`, expected {1}": "شكل غير معروف: `{0}`؛ والمتوقَّع: {1}",
  "Unknown figure `{0}`, expected something that the corpus names":
    "شكل غير معروف: `{0}`؛ والمتوقَّع: شيء تسمّيه المدوّنة",
  "What it shows, for those who do not see it": "ما يظهره، لمن لا يراه",
  Computation: "الحساب",
  "p: how often chance alone would give as much": "p: كم مرة تعطي المصادفة وحدها مثل ذلك",
  "n: how many values": "n: عدد القيم",
  "95 % interval: made so as to take in the true value 95 times in 100":
    "مجال 95 %: مصنوع بحيث يشمل القيمة الحقيقية 95 مرة من كل 100",
  "mm: millimetres": "mm: ملّيمترات",
  "cm: centimetres": "cm: سنتيمترات",
  "m: metres": "m: أمتار",
  "kg: kilograms": "kg: كيلوغرامات",
  "g: grams": "g: غرامات",
  "BC: before Christ": "BC: قبل الميلاد",
  "Abbreviations: {0}.": "الاختصارات: {0}.",
  "Computed with {0}, run ": "حُسب بـ {0}، في الحساب ",
  "Drawn by the mean of several readings, {0} of {1}: {2}.": "مرسوم بمتوسط عدة قراءات، {0} لـ{1}: {2}.",
  "Computed from {0}.": "محسوب من {0}.",
  "n = {0} ({1}).": "n = {0} ({1})، في العدد.",
  "Preserved, not whole, and so lower bounds: {0}.": "ما بقي منه جزء، فهو حد أدنى: {0}.",
  "Reconstructed: {0}.": "المستكمَل: {0}.",
  "Rows from the top: {0}.": "الصفوف من الأعلى: {0}.",
  "Scale of the original: {0}.": "مقياس الأصل: {0}.",
  "Data: ": "البيانات: ",
  "Drawn from the record {0}.": "مرسوم من السجل {0}.",
  "Drawn from the record {0}, by {1}.": "مرسوم من السجل {0}، وأصحابه: {1}.",
  "After ": "عن ",
  "{0} The answer: {1}": "{0} الجواب: {1}",
  "{0}, with what it rests on and what rests on it": "{0}، مع ما يستند إليه وما يستند عليه",
  "As it stood in {0}.": "كما كان الأمر سنة {0}.",
  "With a supposed outcome of an examination.": "مع نتيجة مفترضة لفحص.",
  "Drawn like a section through the ground: things at the bottom, above them what was seen and measured on them, then computed numbers, claims and answers; lines go up from what supports to what it supports.":
    "مرسوم كمقطع في الأرض: الأشياء في الأسفل، وفوقها ما شوهد عليها وقيس، ثم الأرقام المحسوبة فالدعاوى فالأجوبة؛ وتصعد الخطوط ممّا يسند إلى ما يسنده.",
  "A notch under words: so much more belongs there and is not drawn.":
    "الثلمة تحت الكلمات: هذا القدر أيضًا من هناك ولم يُرسم.",
  "Texts are shortened.": "النصوص مختصرة.",
  "Left out, as lying farther off: {0} records.": "متروك لبعده، عدد السجلات: {0}.",
  "claims that stand {0}, open {1}, that fall {2}, unsupported {3}":
    "دعاوى قائمة {0}، ومفتوحة {1}، وساقطة {2}، وبلا سند {3}",
  "Part of the map: {0}; {1}.": "جزء من الخريطة: {0}؛ {1}.",
  "one heavy line: stands": "خط ثخين واحد: قائمة",
  "two dashed lines: open": "خطان متقطعان: مفتوحة",
  "a line that steps: falls": "خط ينزل درجة: ساقطة",
  "a row of dots: unsupported": "صف من النقط: بلا سند",
  "Standing: {0}.": "الحال: {0}.",
  "A dashed line that ends in a bar: an argument against.": "خط متقطع ينتهي بعارضة: حجة مضادّة.",
  "A bow: of these not both can be right.": "القوس: لا يصحّ هذان معًا.",
  "Dots between measurements: they are in conflict.": "نقط بين القياسات: هي متعارضة.",
  "Lines are cut at letters and go on at the same letter: {0}.":
    "تنقطع الخطوط عند حروف وتتابع عند الحرف نفسه: {0}.",
  "Drawn to scale from recorded dimensions, {0}; a scheme, no survey.":
    "مرسوم بمقياس من الأبعاد المسجَّلة، {0}؛ وهو رسم تخطيطي لا مسح.",
  "Thin outlines: one standard uncertainty less and more.":
    "الخطوط الرفيعة: عدم يقين معياري واحد نقصًا وزيادة.",
  "Jagged edges: preserved to there, a lower bound.": "الحواف المسننة: بقي إلى هناك، وهو حد أدنى.",
  "Dashed edges: reconstructed, or an upper bound.": "الحواف المتقطعة: مستكملة، أو حد أعلى.",
  "Widths of a profile stand at equal steps from rim to base.":
    "عروض القطاع على أبعاد متساوية من الحافة إلى القاعدة.",
  "The record gives parts no places; they stand side by side.":
    "السجل لا يحدد للأجزاء مواضع؛ فهي مصفوفة جنبًا إلى جنب.",
  "Second bar: 1 {0} is {1} ({2}).": "المقياس الثاني: ‏1 {0} هو {1} ({2}).",
  "{0} is not drawn: nothing measured gives its {1}.": "{0} غير مرسوم: لا قياس يعطي {1}.",
};
