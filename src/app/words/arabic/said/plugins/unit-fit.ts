import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** Whether measurements are whole multiples of a unit. */
export const unitFitSaid: ArabicCatalogue = {
  "Unit fit": "مطابقة الوحدة",
  "Asks whether measurements cluster at whole multiples of a unit. A unit given beforehand is tested as it stands; a search pays for having looked at many units.":
    "تسأل: هل تجتمع القياسات عند مضاعفات صحيحة لوحدة. تُختبر الوحدة المعطاة من قبل على حالها؛ أما البحث فيُحسب عليه أنه نظر في وحدات كثيرة.",
  "Lengths or masses, each one trial of the unit.": "أطوال أو كتل، كل منها تجربة للوحدة.",
  "A unit known before these data were seen.": "وحدة معلومة قبل النظر في هذه البيانات.",
  "Smallest unit of a search.": "أصغر وحدة في البحث.",
  "Largest unit of a search.": "أكبر وحدة في البحث.",
  "Sets without a unit drawn for each null of a search.":
    "عدد المجموعات التي لا وحدة فيها وتُسحب لكل فرض عدم في البحث.",
  "Measurements that entered.": "القياسات الداخلة.",
  "Height of the quantogram at the unit.": "ارتفاع منحنى الكمّ عند الوحدة.",
  "How often data without a unit fit as well: exact V-test, or of the whole search.":
    "كم مرة تطابق بيانات لا وحدة فيها هذه المطابقة: باختبار V-test الدقيق، أو في البحث كله.",
  "The same by the residuals (exact), for a unit given.": "الشيء نفسه بالبواقي (حسابًا دقيقًا)، لوحدة معطاة.",
  "The unit as these data estimate it, the multiples taken as right.":
    "الوحدة كما تقدّرها هذه البيانات، على أن المضاعفات صحيحة.",
  "p times the number of looks (Holm 1979, first step).":
    "حاصل ضرب p في عدد النظرات (Holm 1979، الخطوة الأولى).",

  "A pace, a hand or a habit of counting courses also produces a quantum: a peak is evidence of a module, not of a standard.":
    "الخطوة والكف وعادة عدّ المداميك تُحدث كمًّا أيضًا: فالقمة دليل على مقدار متكرر، لا على معيار.",
  "Data already rounded to the unit prove nothing; nor do dimensions converted from it.":
    "البيانات المقرَّبة أصلًا إلى الوحدة لا تثبت شيئًا؛ وكذلك الأبعاد المحوَّلة عنها.",
  "Building dimensions must be design dimensions: joints, repairs and duplicate blocks are to be left out first (Pakkanen 2002).":
    "أبعاد البناء يجب أن تكون أبعاد التصميم: فتُترك أولًا الفواصل والترميمات والكتل المكررة (Pakkanen 2002).",
  "The evidence depends on the subset of measurements and on what was expected beforehand (Freeman 1976, J. R. Statist. Soc. A 139, 20–55).":
    "يتوقف الدليل على ما اختير من القياسات وعلى ما كان متوقَّعًا من قبل (Freeman 1976, J. R. Statist. Soc. A 139, 20–55).",
  "The precision of the mean unit is not the precision of the rods: its error shrinks with every measurement even when every builder paced.":
    "دقة الوحدة المتوسطة ليست دقة عصي القياس: فخطؤها يصغر مع كل قياس ولو كان كل بنّاء يقيس بخطوه.",
  "With fewer than ten measurements a search can show only a very exact unit.":
    "بأقل من عشرة قياسات لا يُظهر البحث إلا وحدة دقيقة جدًا.",
  "Units above the smallest measurement were left out of the search: any of them fits it as less than one.":
    "تُركت من البحث الوحدات التي فوق أصغر قياس: فأيٌّ منها يطابقه على أنه أقل من واحدة.",
  "The interval of the unit takes the whole numbers as right; it does not say how sure they are.":
    "مجال الوحدة يأخذ الأعداد الصحيحة على أنها صواب؛ ولا يقول مدى الوثوق بها.",
  "Lengths of one artefact, or one length measured three times, are not independent trials of a unit.":
    "أطوال أثر واحد، أو طول واحد قيس ثلاث مرات، ليست تجارب مستقلة للوحدة.",
  "With small errors a unit, its half and its third all stand out: a search finds a family of units, not one.":
    "إذا صغرت الأخطاء برزت الوحدة ونصفها وثلثها معًا: فالبحث يجد أسرة من الوحدات لا وحدة واحدة.",
  "Without one of the artefacts the best unit would be another by more than 1 %.":
    "من دون أحد الآثار تختلف أفضل وحدة بأكثر من 1 %.",
  "Within the uncertainty of the unit and of what the measurements share p passes 1 % or 5 %: the verdict depends on the exact size taken.":
    "في حدود عدم يقين الوحدة وما تشترك فيه القياسات يجتاز p حدّ 1 % أو 5 %: فالحكم يتوقف على القدر المأخوذ بعينه.",
  "The measurements come in regular steps, but not from 0: all may include the same joint, rim or margin.":
    "القياسات على درجات منتظمة، لكن لا من 0: فلعلها تشمل كلها الفاصل نفسه أو الحافة أو الهامش.",
  "Most measurements are so uncertain, or so many units long, that they would fit the unit anyhow.":
    "أكثر القياسات من عدم اليقين، أو من كثرة الوحدات فيها، بحيث تطابق الوحدة على أي حال.",
  "A measurement is less than half the unit, and was counted as one.": "قياس أقل من نصف الوحدة، وعُدّ وحدة.",
  "The smoothing of the null was raised to half the unit, so that it does not keep it.":
    "رُفع تنعيم فرض العدم إلى نصف الوحدة، لئلا يُبقي عليها.",
  "The best unit lies at the edge of the range searched: a wider range may find a better one.":
    "أفضل وحدة عند طرف المدى المبحوث: ولعل مدى أوسع يجد أفضل منها.",
  "A p from drawn sets lies within twice its own error of 1 % or 5 %: other draws might put it beyond. Raise `draws`.":
    "قيمة p من المجموعات المسحوبة ضمن ضعفي خطئها من 1 % أو 5 %: وقد تتجاوزه بها سحبات أخرى. ارفع `draws`.",
  "Of the two ways of drawing sets without a unit, one puts p below 5 % and one above: the verdict depends on what is taken for no unit.":
    "من طريقتي سحب مجموعات لا وحدة فيها تجعل إحداهما p دون 5 % والأخرى فوقها: فالحكم يتوقف على ما يُعدّ خلوًّا من الوحدة.",
  "p lies below 1 × 10⁻⁹, the smallest that the exact method can tell from 0.":
    "قيمة p دون ⁦1 × 10⁻⁹⁩، وهو أصغر ما تميزه الطريقة الدقيقة من 0.",

  "a third": "ثلثها",
  half: "نصفها",
  twice: "ضعفها",
  "Search for a unit": "بحث عن وحدة",
  "Fit to the {0}": "مطابقة الوحدة {0}",
  "the best unit": "أفضل وحدة",
  "the unit given": "الوحدة المعطاة",
  "5 % of sets without a unit rise above this somewhere":
    "5 % من المجموعات التي لا وحدة فيها تعلو هذا في موضع ما",
  "5 % of sets without a unit rise above this at the unit given":
    "5 % من المجموعات التي لا وحدة فيها تعلو هذا عند الوحدة المعطاة",
  "95 % interval of the unit": "مجال 95 % للوحدة",
  "uncertainty of the unit, 95 %": "عدم يقين الوحدة، 95 %",
  "How well each trial unit fits": "مدى مطابقة كل وحدة مجرَّبة",
  "Cosine quantogram: the higher the curve, the nearer the measurements are to whole multiples of the trial unit.":
    "منحنى الكمّ بجيب التمام: كلما علا المنحنى قربت القياسات من مضاعفات صحيحة للوحدة المجرَّبة.",
  "The best unit is {0}, where the curve is at {1}; the dashed line is exceeded by 5 % of sets without a unit, somewhere in the same search.":
    "أفضل وحدة {0}، والمنحنى عندها {1}؛ والخط المتقطع تتجاوزه 5 % من المجموعات التي لا وحدة فيها، في موضع ما من البحث نفسه.",
  "The unit given is {0}, where the curve is at {1}; the dashed line is exceeded by 5 % of sets without a unit, at this unit.":
    "الوحدة المعطاة {0}، والمنحنى عندها {1}؛ والخط المتقطع تتجاوزه 5 % من المجموعات التي لا وحدة فيها، عند هذه الوحدة.",
  "Shaded: {0}.": "المظلَّل: {0}.",
  "Units above the smallest measurement were left out of the search.":
    "تُركت من البحث الوحدات التي فوق أصغر قياس.",
  "A unit lifts its half, its third and its double with it.": "والوحدة ترفع معها نصفها وثلثها وضعفها.",
  "trial unit": "الوحدة المجرَّبة",
  fit: "المطابقة",
  "smallest measurement": "أصغر قياس",
  "the unit and its family": "الوحدة وأسرتها",
  "more or less than a whole multiple": "الزيادة أو النقص عن مضاعف صحيح",
  "further than which only a measurement of less than half the unit can lie, which counts as one":
    "ولا يقع أبعد منهما إلا قياس أقل من نصف الوحدة، ويُعدّ وحدة",
  "as far as anything can lie": "وهو أبعد ما يمكن أن يقع فيه شيء",
  "What is left of each measurement after whole multiples of the best unit":
    "ما يبقى من كل قياس بعد مضاعفات صحيحة لأفضل وحدة",
  "What is left of each measurement after whole multiples of the {0}":
    "ما يبقى من كل قياس بعد مضاعفات صحيحة للوحدة {0}",
  "Each measurement less the nearest whole multiple of the best unit, with its 95 % interval where it has one; the dashed lines are half a unit away, {0}.":
    "كل قياس مطروحًا منه أقرب مضاعف صحيح لأفضل وحدة، مع مجال 95 % إن كان له؛ والخطان المتقطعان على بُعد نصف وحدة، {0}.",
  "Each measurement less the nearest whole multiple of the {0}, with its 95 % interval where it has one; the dashed lines are half a unit away, {1}.":
    "كل قياس مطروحًا منه أقرب مضاعف صحيح للوحدة {0}، مع مجال 95 % إن كان له؛ والخطان المتقطعان على بُعد نصف وحدة، {1}.",
  "a whole multiple": "مضاعف صحيح",
  "half a unit more": "نصف وحدة زيادةً",
  "half a unit less": "نصف وحدة نقصًا",
  "{0} of {1}: 1 unit": "{0} في {1}: وحدة واحدة",
  "{0} of {1}: {2} units": {
    two: "{0} في {1}: وحدتان",
    few: "{0} في {1}: {2} وحدات",
    many: "{0} في {1}: {2} وحدة",
    other: "{0} في {1}: {2} وحدة",
  },

  "Unexpected values of several kinds ({0}), expected one kind.":
    "قيم غير متوقَّعة من أنواع عدة ({0})؛ والمتوقَّع: نوع واحد.",
  "The unit is a {0}, the values a {1}, expected one kind.":
    "نوع الوحدة: {0}، ونوع القيم: {1}؛ والمتوقَّع: نوع واحد.",
  "a range as wide as the unit": "مدى بسعة الوحدة",
  "The largest unit is not above the smallest, expected a range above 0.":
    "أكبر وحدة ليست فوق أصغرها؛ والمتوقَّع: مدى فوق 0.",
  "The range holds more units than can be looked through, expected a narrower one, or fewer draws.":
    "في المدى من الوحدات أكثر مما يمكن النظر فيه؛ والمتوقَّع: مدى أضيق، أو سحبات أقل.",
  "The smallest unit lies below four times the precision of the values, expected a larger one.":
    "أصغر وحدة دون أربعة أمثال دقة القيم؛ والمتوقَّع: وحدة أكبر.",
  "The values are too uncertain for units of this size, expected {0} precise ones.": {
    two: "عدم اليقين في القيم كبير على وحدات بهذا القدر؛ والمتوقَّع: قيمتان دقيقتان.",
    few: "عدم اليقين في القيم كبير على وحدات بهذا القدر؛ والمتوقَّع: {0} قيم دقيقة.",
    many: "عدم اليقين في القيم كبير على وحدات بهذا القدر؛ والمتوقَّع: {0} قيمة دقيقة.",
    other: "عدم اليقين في القيم كبير على وحدات بهذا القدر؛ والمتوقَّع: {0} قيمة دقيقة.",
  },
  "Missing `unit`, or `low` and `high`, expected a unit or a range.":
    "ناقص: `unit`، أو `low` و`high`؛ والمتوقَّع: وحدة أو مدى.",
  "The range is of {0} to {1}, expected a {2} as the values are.":
    "المدى من {0} إلى {1}؛ والمتوقَّع: {2} كما هي القيم.",

  "{0} (exact V-test of the cosine quantogram, Kendall 1974: {1}). {2}":
    "{0} (باختبار V-test الدقيق لمنحنى الكمّ بجيب التمام، Kendall 1974: {1}). {2}",
  "A search among units found its best at {0}; {1} (cosine quantogram, Kendall 1974, against sets without a unit searched alike: {2}). {3}":
    "وجد بحث بين الوحدات أفضلها عند {0}؛ {1} (منحنى الكمّ بجيب التمام، Kendall 1974، بإزاء مجموعات لا وحدة فيها بُحثت مثلها: {2}). {3}",
  "{0} measurements are compatible with multiples of the {1}, a unit given beforehand": {
    two: "قياسان يوافقان مضاعفات الوحدة {1}، وهي وحدة معطاة من قبل",
    few: "{0} قياسات توافق مضاعفات الوحدة {1}، وهي وحدة معطاة من قبل",
    many: "{0} قياسًا توافق مضاعفات الوحدة {1}، وهي وحدة معطاة من قبل",
    other: "{0} قياس توافق مضاعفات الوحدة {1}، وهي وحدة معطاة من قبل",
  },
  "{0} measurements fit multiples of the {1}, a unit given beforehand, no better than chance": {
    two: "قياسان لا يطابقان مضاعفات الوحدة {1}، وهي وحدة معطاة من قبل، بأكثر مما تفعل المصادفة",
    few: "{0} قياسات لا تطابق مضاعفات الوحدة {1}، وهي وحدة معطاة من قبل، بأكثر مما تفعل المصادفة",
    many: "{0} قياسًا لا تطابق مضاعفات الوحدة {1}، وهي وحدة معطاة من قبل، بأكثر مما تفعل المصادفة",
    other: "{0} قياس لا تطابق مضاعفات الوحدة {1}، وهي وحدة معطاة من قبل، بأكثر مما تفعل المصادفة",
  },
  "Whether {0} measurements are multiples of the {1}, a unit given beforehand, cannot be decided": {
    two: "لا يُحسم هل القياسان من مضاعفات الوحدة {1}، وهي وحدة معطاة من قبل",
    few: "لا يُحسم هل {0} قياسات من مضاعفات الوحدة {1}، وهي وحدة معطاة من قبل",
    many: "لا يُحسم هل {0} قياسًا من مضاعفات الوحدة {1}، وهي وحدة معطاة من قبل",
    other: "لا يُحسم هل {0} قياس من مضاعفات الوحدة {1}، وهي وحدة معطاة من قبل",
  },
  "{0} measurements are compatible with a unit of that size": {
    two: "وقياسان يوافقان وحدة بهذا القدر",
    few: "و{0} قياسات توافق وحدة بهذا القدر",
    many: "و{0} قياسًا توافق وحدة بهذا القدر",
    other: "و{0} قياس توافق وحدة بهذا القدر",
  },
  "{0} measurements fit it no better than chance": {
    two: "وقياسان لا يطابقانها بأكثر مما تفعل المصادفة",
    few: "و{0} قياسات لا تطابقها بأكثر مما تفعل المصادفة",
    many: "و{0} قياسًا لا تطابقها بأكثر مما تفعل المصادفة",
    other: "و{0} قياس لا تطابقها بأكثر مما تفعل المصادفة",
  },
  "whether {0} measurements have a unit cannot be decided": {
    two: "ولا يُحسم هل للقياسين وحدة",
    few: "ولا يُحسم هل لـ{0} قياسات وحدة",
    many: "ولا يُحسم هل لـ{0} قياسًا وحدة",
    other: "ولا يُحسم هل لـ{0} قياس وحدة",
  },
  "{0} for {1} drawn from the smoothed measurements, {2} for as many from a gamma distribution": {
    two: "{0} لمجموعتين مسحوبتين من القياسات المنعَّمة، و{2} لمثلهما من توزيع غاما",
    few: "{0} لـ{1} مجموعات مسحوبة من القياسات المنعَّمة، و{2} لمثلها من توزيع غاما",
    many: "{0} لـ{1} مجموعة مسحوبة من القياسات المنعَّمة، و{2} لمثلها من توزيع غاما",
    other: "{0} لـ{1} مجموعة مسحوبة من القياسات المنعَّمة، و{2} لمثلها من توزيع غاما",
  },
  "{0}; {1} for {2} looks at these data (Holm 1979, first step)": {
    two: "{0}؛ و{1} لنظرتين في هذه البيانات (Holm 1979، الخطوة الأولى)",
    few: "{0}؛ و{1} لـ{2} نظرات في هذه البيانات (Holm 1979، الخطوة الأولى)",
    many: "{0}؛ و{1} لـ{2} نظرة في هذه البيانات (Holm 1979، الخطوة الأولى)",
    other: "{0}؛ و{1} لـ{2} نظرة في هذه البيانات (Holm 1979، الخطوة الأولى)",
  },
  "With errors of {0} of a unit (1 s) {1} measurements show one at 5 % in half of all cases; with larger errors it is mostly missed.":
    {
      two: "بأخطاء قدرها {0} من الوحدة (1 s) يُظهر قياسان وحدةً عند 5 % في نصف الأحوال؛ وبأكبر منها تفوت غالبًا.",
      few: "بأخطاء قدرها {0} من الوحدة (1 s) تُظهر {1} قياسات وحدةً عند 5 % في نصف الأحوال؛ وبأكبر منها تفوت غالبًا.",
      many: "بأخطاء قدرها {0} من الوحدة (1 s) يُظهر {1} قياسًا وحدةً عند 5 % في نصف الأحوال؛ وبأكبر منها تفوت غالبًا.",
      other:
        "بأخطاء قدرها {0} من الوحدة (1 s) يُظهر {1} قياس وحدةً عند 5 % في نصف الأحوال؛ وبأكبر منها تفوت غالبًا.",
    },
  "So few as {0} measurements could show no unit at 5 %, however exact.": {
    two: "قياسان لا يكفيان لإظهار وحدة عند 5 %، مهما دقّت.",
    few: "{0} قياسات لا تكفي لإظهار وحدة عند 5 %، مهما دقّت.",
    many: "{0} قياسًا لا تكفي لإظهار وحدة عند 5 %، مهما دقّت.",
    other: "{0} قياس لا تكفي لإظهار وحدة عند 5 %، مهما دقّت.",
  },
};
