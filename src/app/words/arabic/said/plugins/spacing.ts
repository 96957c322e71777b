import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What the spacing plug-in says. */
export const spacingSaid: ArabicCatalogue = {
  Spacing: "تساوي المسافات",
  "Asks how even the gaps of a row are, whether they follow a period, and whether two rows are spaced alike.":
    "تسأل عن مدى تساوي المسافات في الصف، وهل تتبع دورًا، وهل تباعد صفين متشابه.",
  "Gaps along the row, in order; bounds are broken ends.":
    "المسافات على طول الصف بترتيبها؛ والحدود أطراف مكسورة.",
  "Gaps of another row.": "مسافات صف آخر.",
  "A factor by which the gaps are multiplied first, from other dimensions than the spacing itself.":
    "معامل تُضرب فيه المسافات أولًا، مأخوذ من أبعاد غير التباعد نفسه.",
  "A period known beforehand.": "دور معروف من قبل.",
  "Smallest period of a search.": "أصغر دور في البحث.",
  "Largest period of a search.": "أكبر دور في البحث.",
  "Sets drawn where there is no exact p.": "عدد المجموعات المسحوبة حيث لا حساب دقيقًا لقيمة p.",
  "Observed gaps; mean and cv are theirs.": "المسافات المشاهَدة؛ والمتوسط ومعامل الاختلاف لها.",
  "Gaps known only as at least so long.": "المسافات التي لا يُعرف إلا أنها بهذا الطول على الأقل.",
  "Mean observed gap.": "متوسط المسافات المشاهَدة.",
  "Coefficient of variation of the observed gaps.": "معامل اختلاف المسافات المشاهَدة.",
  "How often gaps at random would be as even.": "كم مرة تتساوى مسافات عشوائية هذا التساوي.",
  "Median gap, broken ends taken into account.": "وسيط المسافات، مع اعتبار الأطراف المكسورة.",
  "The period given or found.": "الدور المعطى أو الموجود.",
  "How often positions without a period follow it as well.": "كم مرة تتبعه كذلك مواضع لا دور لها.",
  "How often two rows spaced alike would differ as much.": "كم مرة يختلف صفان تباعدهما واحد هذا الاختلاف.",

  "All gaps must be measured the same way, from centre to centre or from edge to edge.":
    "يجب أن تقاس المسافات كلها بطريقة واحدة، من مركز إلى مركز أو من حافة إلى حافة.",
  "Breaking is taken as unrelated to the gap; longer gaps are more likely to be cut, so the estimates lean short.":
    "يؤخذ الكسر على أنه لا صلة له بالمسافة؛ والمسافات الأطول أقرب إلى أن تُقطع، فالتقديرات تميل إلى القِصر.",
  "A least gap, such as the width of the features, makes even random features look regular.":
    "وجود مسافة دنيا، كعرض المعالم، يجعل المعالم العشوائية نفسها تبدو منتظمة.",
  "The gaps are as even as the measurement can show.": "المسافات متساوية بقدر ما يستطيع القياس أن يُظهر.",
  "More than half of the gaps may be longer than any observed: there is no median.":
    "قد يكون أكثر من نصف المسافات أطول من كل ما شوهد: فلا وسيط.",
  "Positions are the gaps added up in the order in which they are listed.":
    "المواضع حاصل جمع المسافات بالترتيب الذي سُردت به.",
  "A scale factor must come from other dimensions than the spacing itself.":
    "يجب أن يؤخذ معامل المقياس من أبعاد غير التباعد نفسه.",
  "A broken end parts the row: the period was tested on the longest stretch without one.":
    "الطرف المكسور يقطع الصف: فاختُبر الدور على أطول امتداد لا كسر فيه.",
  "With so few gaps no difference between the rows could reach 5 %.":
    "بمسافات بهذه القلة لا يمكن أن يبلغ أي فرق بين الصفين 5 %.",
  "Within the uncertainty of the scale factor the rows now differ and now do not.":
    "في حدود عدم يقين معامل المقياس يختلف الصفان تارة ولا يختلفان تارة.",
  "Positions add up the errors of the gaps, and here they add up to so much that the period cannot be tested well.":
    "تتراكم في المواضع أخطاء المسافات، وقد بلغت هنا قدرًا لا يُختبر معه الدور اختبارًا جيدًا.",
  "There are too many relabellings to look at all: the comparison was drawn at random.":
    "التباديل أكثر من أن تُستقصى: فسُحب منها للمقارنة عشوائيًّا.",
  "A range from the smallest to the largest of an unknown number of gaps gives no p: only whether two such ranges meet.":
    "المدى من أصغر المسافات إلى أكبرها، وعددها غير معروف، لا يعطي p: وإنما يُعرف منه هل يلتقي مديان كهذين.",

  "Two rows of gaps": "صفان من المسافات",
  "A row of gaps": "صف من المسافات",
  "these gaps, times {0}": "هذه المسافات مضروبة في {0}",
  "these gaps": "هذه المسافات",
  "the other row": "الصف الآخر",
  "The gaps one after another, to scale": "المسافات متتابعة، مرسومة بمقياس",
  "Uprights are features, in the order listed; the figures are lengths in {0}.":
    "الخطوط القائمة معالم بترتيب سردها؛ والأرقام أطوال بوحدة {0}.",
  "Dashed, with no upright at one end: broken off, at least so long.":
    "المتقطع الذي لا خط قائمًا في أحد طرفيه: مكسور، وطوله هذا القدر على الأقل.",
  "along the row": "على طول الصف",
  gaps: "المسافات",
  "The share of gaps longer than each length": "حصة المسافات الأطول من كل طول",
  "Shaded: within a range the share cannot be told.": "المظلَّل: لا تُعرف الحصة داخل المدى.",
  "Half of the gaps are not reached, so there is no median.": "لا يُبلَغ نصف المسافات، فلا وسيط.",
  "length of a gap": "طول المسافة",
  "share of gaps that are longer": "حصة المسافات الأطول",
  "By the estimate of Turnbull, for ranges; short strokes are broken ends, which count for as long as they were seen.":
    "بتقدير Turnbull للأمداء؛ والشرطات القصيرة أطراف مكسورة، وهي محسوبة بقدر ما شوهد منها.",
  "By the estimate of Turnbull, for ranges.": "بتقدير Turnbull للأمداء.",
  "By the estimate of Kaplan and Meier; short strokes are broken ends, which count for as long as they were seen.":
    "بتقدير Kaplan وMeier؛ والشرطات القصيرة أطراف مكسورة، وهي محسوبة بقدر ما شوهد منها.",
  "By the estimate of Kaplan and Meier.": "بتقدير Kaplan وMeier.",
  "median {0}": "الوسيط {0}",
  "The median of these gaps is {0}.": "وسيط هذه المسافات {0}.",
  "median, {0} to {1}": "الوسيط، من {0} إلى {1}",
  "The median of these gaps lies between {0} and {1}.": "وسيط هذه المسافات بين {0} و{1}.",
  "{0}, not to be told": "{0}، غير معلوم",
  "{0}, broken ends": "{0}، أطراف مكسورة",

  "a bound from above": "حدّ أعلى",
  "Unexpected gaps and periods of several kinds ({0}), expected one kind.":
    "غير متوقَّع: مسافات وأدوار من عدة أنواع ({0})؛ والمتوقَّع: نوع واحد.",
  "all gaps are lower bounds (longest bound {0}); no median can be given":
    "المسافات كلها حدود دنيا (أطولها {0})؛ فلا وسيط يُعطى",
  ranges: "الأمداء",
  "Unexpected range that runs backwards, expected its smaller end first.":
    "غير متوقَّع: مدى آخره أصغر من أوله؛ والمتوقَّع: الأصغر أولًا.",
  "The range holds more periods than can be looked through, expected a narrower one, or fewer draws.":
    "في المدى من الأدوار أكثر مما يمكن النظر فيه؛ والمتوقَّع: مدى أضيق، أو سحبات أقل.",
  "The highest period is not above the lowest.": "أعلى دور ليس فوق أدنى دور.",
  "All positions are equal, expected them to vary.": "المواضع كلها متساوية؛ والمتوقَّع: أن تختلف.",
  "A position is missing, expected a number.": "ناقص: موضع؛ والمتوقَّع: عدد.",
  positions: "المواضع",
  "The period is {0}, expected one above 0.": "الدور {0}؛ والمتوقَّع: دور فوق الصفر.",
  "gaps in the first group": "مسافات المجموعة الأولى",
  "gaps in the second group": "مسافات المجموعة الثانية",
  "gaps and factors": "المسافات والمعاملات",

  "{0}; measured so, no {1} gaps give less than {2}": {
    two: "{0}؛ ولا تعطي مسافتان مقيستان هكذا أقل من {2}",
    few: "{0}؛ ولا تعطي {1} مسافات مقيسة هكذا أقل من {2}",
    many: "{0}؛ ولا تعطي {1} مسافة مقيسة هكذا أقل من {2}",
    other: "{0}؛ ولا تعطي {1} مسافة مقيسة هكذا أقل من {2}",
  },
  "{0} with a coefficient of variation of {1} are compatible with a regular spacing, being more even than gaps at random ({2}).":
    "{0}، بمعامل اختلاف {1}: ذلك متوافق مع تباعد منتظم، إذ هو أكثر تساويًا من مسافات عشوائية ({2}).",
  "{0} with a coefficient of variation of {1} may or may not be regular, which cannot be decided ({2}).":
    "{0}، بمعامل اختلاف {1}: قد يكون ذلك منتظمًا وقد لا يكون، وهذا لا يُحسم ({2}).",
  "{0} with a coefficient of variation of {1} fit a regular spacing no better than chance ({2}).":
    "{0}، بمعامل اختلاف {1}: توافق ذلك مع تباعد منتظم لا يزيد على المصادفة ({2}).",
  "{0} gaps": { two: "مسافتان", few: "{0} مسافات", many: "{0} مسافة", other: "{0} مسافة" },
  "{0} and 1 broken end": "{0} وطرف مكسور واحد",
  "{0} broken ends": {
    two: "طرفان مكسوران",
    few: "{0} أطراف مكسورة",
    many: "{0} طرفًا مكسورًا",
    other: "{0} طرف مكسور",
  },
  "Rayleigh's test, exact after Kluyver 1905: {0}": "اختبار Rayleigh، دقيقًا على طريقة Kluyver 1905: {0}",
  "The positions are compatible with a period of {0}, given beforehand ({1}).":
    "المواضع متوافقة مع دور قدره {0}، معطى من قبل ({1}).",
  "Whether the positions follow a period of {0}, given beforehand, cannot be decided ({1}).":
    "لا يُحسم هل تتبع المواضع دورًا قدره {0}، معطى من قبل ({1}).",
  "The positions follow a period of {0}, given beforehand, no better than chance ({1}).":
    "اتباع المواضع دورًا قدره {0}، معطى من قبل، لا يزيد على المصادفة ({1}).",
  "periodogram against {0} sets of positions at random, searched alike: {1}": {
    one: "مخطط الأدوار مقابل مجموعة واحدة من المواضع العشوائية، بُحث فيها كذلك: {1}",
    two: "مخطط الأدوار مقابل مجموعتين من المواضع العشوائية، بُحث فيهما كذلك: {1}",
    few: "مخطط الأدوار مقابل {0} مجموعات من المواضع العشوائية، بُحث فيها كذلك: {1}",
    many: "مخطط الأدوار مقابل {0} مجموعة من المواضع العشوائية، بُحث فيها كذلك: {1}",
    other: "مخطط الأدوار مقابل {0} مجموعة من المواضع العشوائية، بُحث فيها كذلك: {1}",
  },
  "A search among periods found its best at {0}; the positions are compatible with a period of that size ({1}).":
    "أحسن ما وجده البحث بين الأدوار دور قدره {0}؛ والمواضع متوافقة مع دور بهذا القدر ({1}).",
  "A search among periods found its best at {0}; whether the positions have a period cannot be decided ({1}).":
    "أحسن ما وجده البحث بين الأدوار دور قدره {0}؛ ولا يُحسم هل للمواضع دور ({1}).",
  "A search among periods found its best at {0}; the positions follow it no better than chance ({1}).":
    "أحسن ما وجده البحث بين الأدوار دور قدره {0}؛ واتباع المواضع له لا يزيد على المصادفة ({1}).",
  "{0} over all {1} relabellings, of which so few gaps could give no less than {2}": {
    two: "{0} على التبديلين كليهما، ولا يمكن أن تعطي مسافات بهذه القلة أقل من {2}",
    few: "{0} على التباديل كلها، وهي {1}، ولا يمكن أن تعطي مسافات بهذه القلة أقل من {2}",
    many: "{0} على التباديل كلها، وهي {1}، ولا يمكن أن تعطي مسافات بهذه القلة أقل من {2}",
    other: "{0} على التباديل كلها، وهي {1}، ولا يمكن أن تعطي مسافات بهذه القلة أقل من {2}",
  },
  "{0} over relabellings drawn at random": "{0} على تباديل مسحوبة عشوائيًّا",
  "Whether the two rows are spaced alike cannot be decided from so few gaps (permutation test of Gehan 1965: {0}).":
    "لا يُحسم بمسافات بهذه القلة هل تباعد الصفين واحد (اختبار التباديل، Gehan 1965: {0}).",
  "The two rows are not compatible with one spacing (permutation test of Gehan 1965: {0}).":
    "الصفان غير متوافقين مع تباعد واحد (اختبار التباديل، Gehan 1965: {0}).",
  "The two rows are compatible with one spacing (permutation test of Gehan 1965: {0}).":
    "الصفان متوافقان مع تباعد واحد (اختبار التباديل، Gehan 1965: {0}).",

  "times {0}": "مضروبة في {0}",
  "Two rows of gaps of which only the reach is known": "صفان من المسافات لا يُعرف منهما إلا المدى",
  "From the smallest to the largest gap of each row": "من أصغر مسافة في كل صف إلى أكبرها",
  "Rows with a length in common meet: these would {0}.":
    "الصفان يلتقيان متى اشتركا في طول: وهذان يلتقيان {0}.",
  "Dashed, without an end: at least so long.": "المتقطع الذي لا نهاية له: هذا القدر من الطول على الأقل.",
  "Gaps of {0} and of {1} meet.": "مسافات قدرها {0} ومسافات قدرها {1} تلتقي.",
  "Gaps of {0} and of {1} do not meet.": "مسافات قدرها {0} ومسافات قدرها {1} لا تلتقي.",
  "They meet {0}.": "وهي تلتقي {0}.",
  "Enlarged by {0}, to {1}, they meet.": "وإذا كُبِّرت الأولى بمعامل قدره {0} فصارت {1} التقت.",
  "Enlarged by {0}, to {1}, they meet with some of these factors only.":
    "وإذا كُبِّرت الأولى بمعامل قدره {0} فصارت {1} التقت ببعض هذه المعاملات فحسب.",
  "Enlarged by {0}, to {1}, they do not meet.": "وإذا كُبِّرت الأولى بمعامل قدره {0} فصارت {1} لم تلتق.",
  "The ranges of the two rows meet.": "مديا الصفين يلتقيان.",
  "The ranges of the two rows do not meet.": "مديا الصفين لا يلتقيان.",
  "The ranges of the two rows meet, the first enlarged.": "مديا الصفين يلتقيان إذا كُبِّر الأول.",
  "The ranges of the two rows meet with some of the factors, the first enlarged.":
    "مديا الصفين يلتقيان ببعض المعاملات إذا كُبِّر الأول.",
  "The ranges of the two rows do not meet, the first enlarged.": "مديا الصفين لا يلتقيان إذا كُبِّر الأول.",
  "with any factor": "بأي معامل",
  "up to a factor of {0}": "بمعامل لا يتجاوز {0}",
  "from a factor of {0} on": "بمعامل قدره {0} فأكثر",
  "with a factor of {0}": "بمعامل قدره {0}",
};
