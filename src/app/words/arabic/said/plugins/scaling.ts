import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** Whether two things are one design at two sizes. */
export const scalingSaid: ArabicCatalogue = {
  Scaling: "المقياس",
  "Asks whether one scale factor fits all homologous dimensions of two things within their errors.":
    "تسأل: هل يوافق معامل مقياس واحد كل الأبعاد المتناظرة لشيئين في حدود أخطائها.",
  "Dimensions of the larger thing.": "أبعاد الشيء الأكبر.",
  "The same dimensions of the smaller thing.": "الأبعاد نفسها للشيء الأصغر.",
  "Natural variation between products of one maker, a share.": "التفاوت الطبيعي بين مصنوعات صانع واحد، نسبةً.",
  "A factor that somebody names, to be held against the ratios.": "معامل يذكره أحد، ليُقابَل بالنسب.",
  "Pairs of dimensions.": "أزواج الأبعاد.",
  "The common scale factor.": "معامل المقياس المشترك.",
  "Cochran's Q about the common factor.": "الإحصاءة Q عند Cochran حول المعامل المشترك.",
  "Degrees of freedom of Q.": "درجات حرية الإحصاءة Q.",
  "How often one true factor would scatter as much.": "كم مرة يتشتت معامل حقيقي واحد هذا التشتت.",
  "The departure of one dimension that would hardly be missed, a share.":
    "انحراف بُعد واحد يكاد لا يفوت، نسبةً.",
  "With large uncertainties the test accepts everything: look at what departure would hardly have been missed.":
    "إذا كبر عدم اليقين قبِل الاختبار كل شيء: فانظر أي انحراف يكاد لا يفوت.",
  "Without a tolerance, surveys to the millimetre reject every factor: products of one maker vary by nature.":
    "المسح الدقيق إلى المليمتر يرفض كل معامل إن لم يكن سماح: فمصنوعات الصانع الواحد تتفاوت بطبعها.",
  "An error common to both measurements cancels in the ratio and is left out of it.":
    "الخطأ المشترك بين القياسين يتلاشى في النسبة ولا يدخل فيها.",
  "The smaller dimension is so uncertain that the ratio has no finite interval.":
    "عدم اليقين في البُعد الأصغر كبير بحيث لا مجال محدودًا للنسبة.",
  "One dimension gives a ratio, and nothing to test it by.": "البُعد الواحد يعطي نسبة، ولا شيء تُختبر به.",
  "At least one dimension departs from the common factor by more than twice its standard uncertainty.":
    "بُعد واحد على الأقل ينحرف عن المعامل المشترك بأكثر من ضعفي عدم يقينه المعياري.",

  "pairs of dimensions": "أزواج الأبعاد",
  "factors claimed": "المعاملات المذكورة",
  "first sizes": "المقادير الأولى",
  "second sizes": "المقادير الثانية",
  "sizes to predict from": "المقادير التي يُتنبأ منها",
  ends: "الأطراف",
  "All sizes of one kind are equal, expected them to vary.":
    "المقادير من أحد النوعين متساوية كلها؛ والمتوقَّع: أن تتفاوت.",
  "All first sizes are equal, expected them to vary.": "المقادير الأولى متساوية كلها؛ والمتوقَّع: أن تتفاوت.",
  "The pair of `{0}` is of two kinds, expected one kind in each pair.":
    "زوج `{0}` من نوعين؛ والمتوقَّع: نوع واحد في كل زوج.",
  "Unexpected uncertainty below 0.": "عدم يقين غير متوقَّع دون 0.",

  "Homologous dimensions and their common factor": "الأبعاد المتناظرة ومعاملها المشترك",
  "95 % interval of the common factor": "مجال 95 % للمعامل المشترك",
  "Dotted, the factor of {0} that is claimed.": "والمنقَّط المعامل المذكور {0}.",
  "Open: further from it than twice the standard uncertainty ({0}).":
    "والمفرَّغ أبعد عنه من ضعفي عدم اليقين المعياري ({0}).",
  "The ratio of each pair of dimensions": "نسبة كل زوج من الأبعاد",
  "The ratio of each pair of dimensions: {0}": "نسبة كل زوج من الأبعاد: {0}",
  ratio: "النسبة",
  ratios: "النسب",
  "common factor {0}": "المعامل المشترك {0}",
  "Larger over smaller, without an interval, as one of the sizes is not distinct from 0; the line is the common factor {0}.":
    "الأكبر على الأصغر، بلا مجال لأن أحد المقدارين لا يتميز من 0؛ والخط هو المعامل المشترك {0}.",
  "Larger over smaller, each with its 95 % interval, the tolerance in it; the line is the common factor {0}, shaded its 95 % interval.":
    "الأكبر على الأصغر، كل مع مجال 95 % يشمل السماح؛ والخط هو المعامل المشترك {0}، والمظلَّل مجال 95 % له.",
  "Larger over smaller, each with its 95 % interval, the tolerance in it; the line is the common factor {0}.":
    "الأكبر على الأصغر، كل مع مجال 95 % يشمل السماح؛ والخط هو المعامل المشترك {0}.",
  "95 % band of the line": "نطاق 95 % للخط",
  "fitted, slope {0}": "المطابَق، ميله {0}",
  "Size against size": "مقدار بإزاء مقدار",
  "Both axes are logarithmic; bars are 95 % intervals. Dashed, one factor {0} for all sizes (slope 1).":
    "المحوران لوغاريتميان؛ والأعمدة مجالات 95 %. والمتقطع معامل واحد {0} لكل المقادير (ميله 1).",
  "Solid, the line by least squares with its 95 % band: slope {0} ({1} to {2}); a slope other than 1 would mean that proportions change with size.":
    "والمتصل خط المربعات الصغرى مع نطاق 95 %: ميله {0} ({1} إلى {2})؛ والميل غير 1 يعني أن النسب تتغير بتغير المقدار.",
  smaller: "الأصغر",
  larger: "الأكبر",
  "one factor": "معامل واحد",

  "{0} ({1} to {2})": "{0} (من {1} إلى {2})",
  "One pair of dimensions gives a ratio of {0}; whether it is the scale of the whole cannot be decided.":
    "زوج واحد من الأبعاد نسبته {0}؛ ولا يُحسم هل هي مقياس الكل.",
  "Cochran's test: {0}; a departure of {1} would hardly be missed":
    "اختبار Cochran: {0}؛ ويكاد لا يفوت انحراف {1}",
  "Cochran's test: {0}": "اختبار Cochran: {0}",
  "{0} pairs of dimensions are compatible with one scale factor of {1} ({2}).": {
    two: "زوجان من الأبعاد يوافقان معامل مقياس واحدًا هو {1} ({2}).",
    few: "{0} أزواج من الأبعاد توافق معامل مقياس واحدًا هو {1} ({2}).",
    many: "{0} زوجًا من الأبعاد توافق معامل مقياس واحدًا هو {1} ({2}).",
    other: "{0} زوج من الأبعاد توافق معامل مقياس واحدًا هو {1} ({2}).",
  },
  "{0} pairs of dimensions are not compatible with one scale factor, at best {1} ({2}).": {
    two: "زوجان من الأبعاد لا يوافقان معامل مقياس واحدًا، وأقربه {1} ({2}).",
    few: "{0} أزواج من الأبعاد لا توافق معامل مقياس واحدًا، وأقربه {1} ({2}).",
    many: "{0} زوجًا من الأبعاد لا توافق معامل مقياس واحدًا، وأقربه {1} ({2}).",
    other: "{0} زوج من الأبعاد لا توافق معامل مقياس واحدًا، وأقربه {1} ({2}).",
  },
  "{0} pairs of dimensions are not compatible with one scale factor, at best {1}; furthest from it: {2} ({3}).":
    {
      two: "زوجان من الأبعاد لا يوافقان معامل مقياس واحدًا، وأقربه {1}؛ والأبعد عنه: {2} ({3}).",
      few: "{0} أزواج من الأبعاد لا توافق معامل مقياس واحدًا، وأقربه {1}؛ والأبعد عنه: {2} ({3}).",
      many: "{0} زوجًا من الأبعاد لا توافق معامل مقياس واحدًا، وأقربه {1}؛ والأبعد عنه: {2} ({3}).",
      other: "{0} زوج من الأبعاد لا توافق معامل مقياس واحدًا، وأقربه {1}؛ والأبعد عنه: {2} ({3}).",
    },
  "The ratios run from {0} ({1}) to {2} ({3}).": "والنسب من {0} ({1}) إلى {2} ({3}).",
  "One factor would need a tolerance of {0}: so much the products of one maker would have to vary by nature.":
    "ويحتاج المعامل الواحد إلى سماح قدره {0}: فبهذا القدر لا بد أن تتفاوت مصنوعات الصانع الواحد بطبعها.",
  "The factor of {0} that is claimed {1}; within twice its standard uncertainty it meets all of them.":
    "والمعامل المذكور {0} {1}؛ وفي حدود ضعفي عدم اليقين المعياري يوافقها كلها.",
  "The factor of {0} that is claimed {1}; within twice its standard uncertainty it meets none of them.":
    "والمعامل المذكور {0} {1}؛ وفي حدود ضعفي عدم اليقين المعياري لا يوافق شيئًا منها.",
  "The factor of {0} that is claimed {1}; within twice its standard uncertainty it meets only {2}.":
    "والمعامل المذكور {0} {1}؛ وفي حدود ضعفي عدم اليقين المعياري لا يوافق منها إلا: {2}.",
  "lies between the ratios": "يقع بين النسب",
  "lies above every ratio": "يقع فوق النسب كلها",
  "lies below every ratio": "يقع دون النسب كلها",
};
