import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What the counts plug-in says. */
export const countsSaid: ArabicCatalogue = {
  Counts: "مقارنة الأعداد",
  "Asks whether something is found more often on one side than on the other, for as much as was looked at.":
    "تسأل هل يوجد شيء في جانب أكثر منه في الآخر، بالقياس إلى قدر ما فُحص.",
  "Counts on the first side, or observations of a feature looked for on it.":
    "أعداد معدودة في الجانب الأول، أو مشاهدات علامة بُحث عنها فيه.",
  "The same on the second side.": "ومثلها في الجانب الثاني.",
  "The dimension over which counts are taken, of the same things: edge examined, or how many were examined.":
    "البُعد الذي تؤخذ الأعداد بالقياس إليه، من الأشياء نفسها: طول الحافة المفحوصة، أو عدد ما فُحص.",
  "The rate of the first side over that of the second; of things that have a feature or not, the odds ratio.":
    "معدّل الجانب الأول على معدّل الثاني؛ وفي أشياء فيها علامة أو ليست فيها، نسبة الأرجحية.",
  "How often sides that are alike would differ as much, two-sided and exact.":
    "كم مرة يختلف جانبان متماثلان هذا الاختلاف، باختبار دقيق ثنائي الطرف.",

  "No comparison possible: all or none were found on both sides, which any ratio could give.":
    "لا تمكن المقارنة: وُجد الكل أو لم يوجد شيء في الجانبين، وذلك قد تعطيه أي نسبة.",
  "With so few no difference between the sides could reach 5 %.":
    "بهذا القليل لا يمكن أن يبلغ أي فرق بين الجانبين 5 %.",
  "The ratio has no upper end, for the second side had none, or the first had nothing without it. The value given is the one under which as much would be seen half of the time.":
    "ليس للنسبة طرف أعلى، لأن الجانب الثاني لم يوجد فيه شيء، أو لأن الأول ليس فيه ما يخلو منه. والقيمة المعطاة هي التي يُشاهَد معها هذا القدر في نصف المرات.",
  "No exposure is named: counts are taken per thing, as if each offered as much to look at.":
    "لم يُسمَّ قدر المفحوص: فالأعداد مأخوذة لكل شيء، كأن في كل شيء ما يُفحص بالقدر نفسه.",
  "The counts of single things scatter more than chance would have them: what is counted comes in clusters, and p and interval are too narrow.":
    "أعداد الأشياء المفردة تتفاوت أكثر مما تقتضيه المصادفة: فالمعدود يأتي مجتمعًا، وp والمجال أضيق مما ينبغي.",
  "Some of the counts or exposures are given as approximate or as a range; they are taken as if exact, and p and interval are too narrow.":
    "بعض الأعداد أو أقدار المفحوص مذكور تقريبًا أو مدى؛ وقد أُخذت كأنها دقيقة، وp والمجال أضيق مما ينبغي.",
  "No more was counted than there were things examined, so each count is read as how many of them had it. Where one thing may have several, take rates over another exposure.":
    "لم يزد المعدود على عدد الأشياء المفحوصة، فكل عدد يُقرأ على أنه كم منها فيه ذلك. وحيث قد يكون في الشيء الواحد عدة منه فخذ معدّلات على قدر مفحوص آخر.",
  "p and the interval fall on different sides of 5 %: p adds up what is no more probable either way, the interval has 2.5 % beyond each end. Take neither as settled.":
    "يقع p والمجال في جانبين مختلفين من 5 %: فإن p يجمع ما ليس أكثر احتمالًا في أي من الاتجاهين، والمجال وراء كل طرف منه 2.5 %. لا تأخذ أيهما على أنه محسوم.",
  "The exposure must be what was looked at (metres of edge preserved and examined), not what once existed.":
    "يجب أن يكون قدر المفحوص ما فُحص فعلًا (أمتار الحافة الباقية المفحوصة)، لا ما كان موجودًا يومًا.",
  "Both sides must be as well preserved and looked at as closely: a difference of survival or of care shows as a difference of rates.":
    "يجب أن يتساوى الجانبان في البقاء وفي دقة الفحص: فالفرق في البقاء أو في العناية يظهر فرقًا في المعدّلات.",
  "Each find counts as independent of the others; finds that come in pairs, rows or from one hand are fewer than they seem.":
    "كل لقية تُعدّ مستقلة عن غيرها؛ واللقى التي تأتي أزواجًا أو صفوفًا أو من يد واحدة أقل مما تبدو.",
  "A feature picked because it differs between the two sides will differ; p holds for what was decided before counting.":
    "العلامة المختارة لأنها تختلف بين الجانبين ستختلف؛ وإنما يصح p لما تقرر قبل العدّ.",

  "One side is counted and the other observed, expected both alike.":
    "أحد الجانبين معدود والآخر مشاهَد؛ والمتوقَّع: أن يتماثلا.",
  "Observations count by the things looked at, expected no `per`.":
    "المشاهدات تُعدّ بالأشياء المفحوصة؛ والمتوقَّع: ألا يُذكر `per`.",
  "Something is counted on both sides, expected two sides that share nothing.":
    "شيء معدود في الجانبين؛ والمتوقَّع: جانبان لا يشتركان في شيء.",
  "The exposures are of several kinds, expected {0} alone.":
    "أقدار المفحوص من عدة أنواع؛ والمتوقَّع: {0} وحده.",
  "Unexpected value of {0}, expected counts: whole numbers, 0 or more.":
    "غير متوقَّع: قيمة {0}؛ والمتوقَّع: أعداد صحيحة، 0 أو أكثر.",
  "no {0} to count it over": "لا {0} يُقاس إليه العدد",
  "nothing was counted over it": "لم يُعدّ شيء بالقياس إليه",
  "counts on a side": "الأعداد المعدودة في جانب",
  "cannot be told": "لا يُعرف",
  "not reported, which is not the same as absent": "مسكوت عنه، وليس ذلك غيابًا",
  "observations on a side that can tell": "المشاهدات الدالة في جانب",

  "Two shares": "حصتان",
  "Two rates": "معدّلان",
  "None found on {0}: at most {1} have it, at 95 % (1 − 0.05 to the power of 1/n).":
    "لم يوجد شيء في {0}: فهو في {1} على الأكثر، بدرجة 95 % (\u20661 − 0.05\u2069 مرفوعًا إلى \u20661/n\u2069).",
  "ends of the interval by Wilson’s score": "طرفا المجال بطريقة Wilson",
  "The share on each side": "الحصة في كل جانب",
  "Bars are exact 95 % intervals (Clopper and Pearson).": "الأعمدة مجالات 95 % دقيقة (Clopper وPearson).",
  "Bars are exact 95 % intervals (Garwood).": "الأعمدة مجالات 95 % دقيقة (Garwood).",
  "share that has it": "حصة ما فيه ذلك",
  shares: "الحصتان",
  rates: "المعدّلان",
  "{0}: {1} of {2}": "{0}: {1} من {2}",
  "The rate on each side, per thing": "المعدّل في كل جانب، لكل شيء",
  "The rate on each side, per {0}": "المعدّل في كل جانب، لكل {0}",
  "The rate on each side, per {0} of {1}": "المعدّل في كل جانب، لكل {0} من {1}",
  "count per thing": "العدد لكل شيء",
  "count per {0}": "العدد لكل {0}",
  "count per {0} of {1}": "العدد لكل {0} من {1}",
  "odds ratio": "نسبة الأرجحية",
  "ratio of the rates": "نسبة المعدّلين",
  "The odds ratio, first to second": "نسبة الأرجحية، الأول إلى الثاني",
  "The ratio of the rates, first to second": "نسبة المعدّلين، الأول إلى الثاني",
  "The bar is the exact 95 % interval, {0} to {1}; the upright at 1 is where the two sides are alike.":
    "العمود مجال 95 % الدقيق، من {0} إلى {1}؛ والخط القائم عند 1 حيث يتماثل الجانبان.",
  "first to second": "الأول إلى الثاني",
  alike: "متماثلان",
  "the first ({0} things)": {
    two: "الجانب الأول (شيئان)",
    few: "الجانب الأول ({0} أشياء)",
    many: "الجانب الأول ({0} شيئًا)",
    other: "الجانب الأول ({0} شيء)",
  },
  "the second ({0} things)": {
    two: "الجانب الثاني (شيئان)",
    few: "الجانب الثاني ({0} أشياء)",
    many: "الجانب الثاني ({0} شيئًا)",
    other: "الجانب الثاني ({0} شيء)",
  },
  "{0} on 1 thing": "{0} في شيء واحد",
  "{0} on {1} things": "{0} في {1} من الأشياء",
  "{0} in {1}": "{0} في {1}",

  "Fisher’s exact test: {0}": "اختبار Fisher الدقيق: {0}",
  "exact conditional test: {0}": "الاختبار الشرطي الدقيق: {0}",
  "equal shares": "تساوي الحصتين",
  "equal rates": "تساوي المعدّلين",
  "{0} is at the edge of what is compatible with {1}, for p and interval fall on different sides of 5 %; whether they differ cannot be decided ({2}).":
    "{0}، وهي على حافة المتوافق مع {1}، لأن p والمجال يقعان في جانبين مختلفين من 5 %؛ ولا يُحسم هل بينهما فرق ({2}).",
  "{0} is not compatible with {1} ({2}).": "{0}، وهي غير متوافقة مع {1} ({2}).",
  "{0}; with so few, whether the shares differ cannot be decided ({1}).":
    "{0}؛ ولا يُحسم بهذا القليل هل تختلف الحصتان ({1}).",
  "{0}; with so few, whether the rates differ cannot be decided ({1}).":
    "{0}؛ ولا يُحسم بهذا القليل هل يختلف المعدّلان ({1}).",
  "{0} is compatible with {1}, and not with one more than twice the other ({2}).":
    "{0}، وهي متوافقة مع {1}، وغير متوافقة مع زيادة أحد الجانبين على ضعف الآخر ({2}).",
  "{0} departs from {1} no better than chance, and whether they differ cannot be decided ({2}).":
    "{0}، وابتعادها عن {1} لا يزيد على المصادفة، ولا يُحسم هل بينهما فرق ({2}).",
  "An odds ratio of {0}": "نسبة أرجحية قدرها {0}",
  "{0}: an odds ratio of {1}": "{0}: نسبة أرجحية قدرها {1}",
  "A ratio of the rates of {0}": "نسبة بين المعدّلين قدرها {0}",
  "{0}: a ratio of the rates of {1}": "{0}: نسبة بين المعدّلين قدرها {1}",
  "No comparison is possible, for all or none had it on either side.":
    "لا تمكن المقارنة، لأن ذلك في كلا الجانبين إما في الكل وإما غير موجود.",
  "{0}: no comparison is possible, for all or none had it on either side.":
    "{0}: لا تمكن المقارنة، لأن ذلك في كلا الجانبين إما في الكل وإما غير موجود.",
  "No comparison is possible, for nothing was counted on either side.":
    "لا تمكن المقارنة، لأنه لم يُعدّ شيء في أي من الجانبين.",
  "{0}: no comparison is possible, for nothing was counted on either side.":
    "{0}: لا تمكن المقارنة، لأنه لم يُعدّ شيء في أي من الجانبين.",
  "{0} of {1} against {2} of {3}": "{0} من {1} مقابل {2} من {3}",
};
