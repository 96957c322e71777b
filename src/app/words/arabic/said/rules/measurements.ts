import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What the rules say of measurements and observations. */
export const measurementRulesSaid: ArabicCatalogue = {
  "Two readings of one dimension of one thing differ by more than both allow.":
    "قراءتان لبُعد واحد من شيء واحد تختلفان بأكثر مما تسمحان به.",
  "Both stay evidence until an argument chooses. Compare the landmarks, the state and the instrument; say `between` where they were taken at different places. The difference asked for is twice the combined standard uncertainty, with the corpus's reproducibility added to each; bounds conflict when wholly on the wrong side.":
    "تبقى كلتاهما دليلًا حتى ترجّح حجة. قارن بين مواضع القياس والحال والأداة؛ واذكر `between` حيث أُخذتا في موضعين مختلفين. والفرق المعتبر ضعف عدم اليقين المعياري المركّب، يضاف إلى كل منهما خطأ إعادة القياس في المدوّنة؛ والحدود تتعارض إذا وقعت كلها في الجانب الآخر.",
  "{0} and {1} more are in dispute between them": {
    one: "{0} وواحد آخر مختلف فيها بينهم",
    two: "{0} واثنان آخران مختلف فيها بينهم",
    few: "{0} و{1} أخرى مختلف فيها بينهم",
    many: "{0} و{1} أخرى مختلف فيها بينهم",
    other: "{0} و{1} أخرى مختلف فيها بينهم",
  },
  "The {0} of {1}, expected readings that agree within their uncertainties.":
    "{0} في {1}؛ والمتوقَّع: قراءات تتوافق في حدود عدم يقينها.",
  "{0} against {1}": "{0} مقابل {1}",
  "{0} is given as {1}": "{0}: المذكور {1}",
  "{0} ({1}) is given as {2}": "{0} ({1}): المذكور {2}",
  "One saw a feature of a thing, another looked for it and says it is not there.":
    "باحث شاهد علامة في شيء، وآخر بحث عنها وقال إنها ليست فيه.",
  "Both stay evidence until an argument chooses. Ask who looked how, and whether anything was done to the thing between.":
    "يبقى كلاهما دليلًا حتى ترجّح حجة. انظر من نظر وكيف نظر، وهل جرى للشيء شيء بينهما.",
  "{0} and {1} more things": {
    two: "{0} وشيئين آخرين",
    few: "{0} و{1} أشياء أخرى",
    many: "{0} و{1} شيئًا آخر",
    other: "{0} و{1} شيء آخر",
  },
  "{0} on {1} was seen ({2}) and looked for in vain ({3}), expected one or the other.":
    "{0} في {1}: شوهد ذلك ({2})، وبُحث عنه فلم يوجد ({3})؛ والمتوقَّع: أحد الأمرين.",
  "Several sources give one figure for one dimension: perhaps one number, cited several times.":
    "عدة مصادر تذكر رقمًا واحدًا لبُعد واحد: ولعله عدد واحد ذُكر مرات.",
  "Ten citations of one number are one measurement. Where a source copies another, say so with `repeats`; what repeats another never counts. Marked copies are listed with what they copy.":
    "عشرة نقول لعدد واحد قياس واحد. حيث ينقل مصدر عن آخر فاذكر ذلك بـ`repeats`؛ وما يكرر غيره لا يُعدّ أبدًا. والمنقولات المعلَّمة تُسرد مع ما نُقلت عنه.",
  "{0} and {1} more,": {
    one: "{0} وواحد آخر،",
    two: "{0} واثنان آخران،",
    few: "{0} و{1} أخرى،",
    many: "{0} و{1} أخرى،",
    other: "{0} و{1} أخرى،",
  },
  "{0}, {1},": "{0}، {1}،",
  "The {0} of {1} stands in {2}, expected to count as one measurement.":
    "{0} في {1} وارد عند {2}؛ والمتوقَّع: أن يُعدّ قياسًا واحدًا.",
  "The {0} of {1} stand in {2}, expected to count as one measurement each.":
    "{0} في {1} وارد عند {2}؛ والمتوقَّع: أن يُعدّ قياسًا واحدًا لكل منها.",
  "A dimension differs from what it should equal by the other dimensions of the thing.":
    "بُعد يختلف عما ينبغي أن يساويه بحسب سائر أبعاد الشيء.",
  "The settings say that the one equals a sum of the others (`equals`), and the measurements differ by more than twice the combined standard uncertainty, with the corpus's reproducibility added to each. Each dimension enters as a derivation would take it; errors with one cause are added up before they are compared, so that what both sides share cancels. A preserved dimension is only a lower bound. Look for a slip of the pen, a mixed-up unit, other landmarks, or a thing that has not the shape that the sum asks for: π times the diameter is the way around a circle alone. A sum of parts is compared only where every recorded part has the dimension, and it takes for granted that no part is lost or left unrecorded and that nothing overlaps.":
    "تقول الإعدادات إن أحدهما يساوي مجموعًا من سائرها (`equals`)، والقياسات تختلف بأكثر من ضعف عدم اليقين المعياري المركّب، مع إضافة خطأ إعادة القياس في المدوّنة إلى كل منها. ويدخل كل بُعد كما يأخذه الاشتقاق؛ والأخطاء التي سببها واحد تُجمع قبل المقارنة، فيُلغى ما يشترك فيه الجانبان. والبُعد الباقي حد أدنى فحسب. ابحث عن سهو في الكتابة، أو وحدة التبست بأخرى، أو مواضع قياس أخرى، أو شيء ليس له الشكل الذي يقتضيه المجموع: فحاصل π في القطر محيط الدائرة وحدها. ومجموع الأجزاء لا يقارَن إلا حيث لكل جزء مسجَّل ذلك البُعد، ويُسلَّم فيه بأن لا جزء فُقد أو لم يُسجَّل وأن لا شيء يتداخل.",
  "{0} and {1} more differ likewise": {
    one: "{0} وواحد آخر تختلف كذلك",
    two: "{0} واثنان آخران تختلف كذلك",
    few: "{0} و{1} أخرى تختلف كذلك",
    many: "{0} و{1} أخرى تختلف كذلك",
    other: "{0} و{1} أخرى تختلف كذلك",
  },
  "The {0} of {1}, expected dimensions that agree within their uncertainties.":
    "{0} في {1}؛ والمتوقَّع: أبعاد تتوافق في حدود عدم يقينها.",
  "{0} is given as {1} ({2})": "{0}: المذكور {1} ({2})",
  "{0}, where {1} comes to {2}": "{0}، وحاصل {1} هو {2}",
  "{0}, {1} less ({2})": "{0}، أقل بمقدار {1} ({2})",
  "{0}, {1} more ({2})": "{0}، أكثر بمقدار {1} ({2})",
  "{0} {1}, {2}": "{0} {1}، {2}",
  "{0}; {1} more": {
    two: "{0}؛ واثنان آخران",
    few: "{0}؛ و{1} أخرى",
    many: "{0}؛ و{1} أخرى",
    other: "{0}؛ و{1} أخرى",
  },
  "Something is known only through another source.": "شيء لا يُعرف إلا من طريق مصدر آخر.",
  "What was read in `via` was not checked in the source itself. Find that source, or cite it as what it is: cited in another.":
    "ما قُرئ في `via` لم يُتحقق منه في المصدر نفسه. اعثر على ذلك المصدر، أو اذكره على ما هو عليه: منقولًا عن غيره.",
  "What is said is known only through {0}, expected to be read itself.":
    "المنقول لا يُعرف إلا من طريق {0}؛ والمتوقَّع: أن يُقرأ في أصله.",
  "{0} is known only through {1}, expected to be read itself.":
    "{0}: لا يُعرف ما فيه إلا من طريق {1}؛ والمتوقَّع: أن يُقرأ نفسه.",
  "A position, observation or measurement has no year, and its sources have none.":
    "رأي أو مشاهدة أو قياس بلا سنة، ولا سنة لمصادره.",
  "It then counts in every year of the replay. Give the record a `year`, or the bibliography entry a date.":
    "يُعتبر حينئذ في كل سنة من إعادة العرض. أعط السجل `year`، أو أعط المدخل في المراجع تاريخًا.",
  "One record has no year and no dated source, expected a year so that the dispute can be replayed.":
    "سجل واحد بلا سنة ولا مصدر مؤرَّخ؛ والمتوقَّع: سنة ليمكن أن يُعاد عرض الخلاف.",
  "{0} records have no year and no dated source, expected a year so that the dispute can be replayed.": {
    two: "سجلان بلا سنة ولا مصدر مؤرَّخ؛ والمتوقَّع: سنة ليمكن أن يُعاد عرض الخلاف.",
    few: "{0} سجلات بلا سنة ولا مصدر مؤرَّخ؛ والمتوقَّع: سنة ليمكن أن يُعاد عرض الخلاف.",
    many: "{0} سجلًا بلا سنة ولا مصدر مؤرَّخ؛ والمتوقَّع: سنة ليمكن أن يُعاد عرض الخلاف.",
    other: "{0} سجل بلا سنة ولا مصدر مؤرَّخ؛ والمتوقَّع: سنة ليمكن أن يُعاد عرض الخلاف.",
  },
  "A recorded value agrees with its quotation only in another unit.":
    "قيمة مسجَّلة لا توافق الاقتباس إلا بوحدة أخرى.",
  "No figure of the quoted passage agrees with the value within 1 %, but one does when its unit is changed into another. Look at the passage again: inches and centimetres change places most often. Nothing is changed for you, since the quotation may have the slip as well as the record.":
    "لا رقم في النص المقتبس يوافق القيمة في حدود 1 %، لكن أحدها يوافقها إذا بُدّلت وحدته بأخرى. انظر في النص ثانية: وأكثر ما يتبادل موضعيهما البوصة والسنتيمتر. ولا يُغيَّر شيء نيابة عنك، فقد يكون السهو في الاقتباس كما قد يكون في السجل.",
  "the {0} of {1} is recorded as {2}, where the quotation has {3}, expected perhaps {4}":
    "{0} في {1}: المسجَّل {2}، وفي الاقتباس {3}، ولعل المتوقَّع {4}",
  "the {0} more of that quotation": {
    two: "واثنان آخران من ذلك الاقتباس",
    few: "و{0} أخرى من ذلك الاقتباس",
    many: "و{0} أخرى من ذلك الاقتباس",
    other: "و{0} أخرى من ذلك الاقتباس",
  },
};
