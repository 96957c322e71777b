import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What the chronology plug-in says. */
export const chronologySaid: ArabicCatalogue = {
  Chronology: "التأريخ",
  "Asks whether all that relations, dates and histories say of some events can be true, and between which years they then lie.":
    "تسأل هل يصح معًا كل ما تقوله العلاقات الزمنية والتواريخ وما جرى للأشياء في بعض الأحداث، وبين أي السنين تقع حينئذ.",
  "The things whose making is dated, or events in words, as relations and histories name them.":
    "الأشياء التي يؤرَّخ صنعها، أو أحداث بالكلمات كما تسميها العلاقات الزمنية وما جرى للأشياء.",
  "1 where all that is said can be true together, else 0.": "1 حيث يصح كل ما قيل معًا، وإلا 0.",
  "The first year in which any of what is asked may be, astronomical: 1 BC is 0, 2 BC is −1.":
    "أول سنة قد يقع فيها شيء من المسؤول عنه، بالعدّ الفلكي: 1 ق.م هي 0، و2 ق.م هي \u2066−1\u2069.",
  "The last year in which any of what is asked may be, astronomical.":
    "آخر سنة قد يقع فيها شيء من المسؤول عنه، بالعدّ الفلكي.",

  "Some of the dates are given as approximate or uncertain; they are taken as they are written, with no margin.":
    "بعض التواريخ مذكور على أنه تقريبي أو غير يقيني؛ وقد أُخذت كما كُتبت بلا هامش.",
  "Nothing that is said sets a bound at one end: how early, or how late, cannot be decided.":
    "لا شيء مما قيل يضع حدًّا في أحد الطرفين: فكم كان مبكرًا أو متأخرًا لا يُحسم.",
  "A calibrated radiocarbon range is taken as a hard limit. At 95 % a contradiction means that one statement at least is outside its range, and of m independent ranges one is with a chance of 1 − 0.95 to the power of m.":
    "يؤخذ المدى المعايَر من الكربون المشع حدًّا قاطعًا. والتناقض عند 95 % معناه أن قولًا واحدًا على الأقل خارج مداه، ومن m من الأمداء المستقلة يقع واحد خارجه باحتمال \u20661 − 0.95\u2069 مرفوعًا إلى m.",
  "All statements count alike, whoever made them. Where they cannot all be true some that clash are named, none of which the clash can do without; which of them is wrong is not for the arithmetic.":
    "الأقوال كلها معتبرة على السواء، أيًّا كان قائلها. وحيث لا تصح كلها معًا يُسمّى بعض ما يتعارض منها، ولا يقوم التعارض من دون أي منه؛ وأيها الخطأ ليس للحساب.",
  "Before means before, in the same year or not; how long between is not said unless a relation says it.":
    "القبْل قبْلٌ، في السنة نفسها أو في غيرها؛ ولا يُقال كم الفاصل إلا أن تقوله علاقة زمنية.",
  "Of several dates given for one thing any may be right: they count from the first year of any to the last year of any.":
    "التواريخ المتعددة لشيء واحد قد يصح أي منها: فهي معتبرة من أول سنة في أي منها إلى آخر سنة في أي منها.",
  "What claims say of dates does not enter, so that a claim is not held up by itself.":
    "ما تقوله الدعاوى في التواريخ لا يدخل، حتى لا تسند الدعوى نفسها.",

  "dates or relations": "التواريخ أو العلاقات الزمنية",
  "When it may have been": "متى يمكن أن يكون ذلك",
  "Of these at least one is wrong: {0}.": "واحد على الأقل من هذه خطأ: {0}.",
  "What the dates that clash say by themselves": "ما تقوله التواريخ المتعارضة بأنفسها",
  "Without any bound: {0}.": "بلا أي حدّ: {0}.",
  "The years that all statements together allow": "السنون التي تسمح بها الأقوال كلها معًا",
  "Uprights are the first and the last year; the figures are the years between them.":
    "الخطان القائمان أول سنة وآخر سنة؛ والأرقام عدد السنين بينهما.",
  "Dashed, with no upright at one end: open, so far as is said.":
    "المتقطع الذي لا خط قائمًا في أحد طرفيه: مفتوح بحسب ما قيل.",
  "{0} more are not drawn.": {
    one: "وواحد آخر غير مرسوم.",
    two: "واثنان آخران غير مرسومين.",
    few: "و{0} أخرى غير مرسومة.",
    many: "و{0} أخرى غير مرسومة.",
    other: "و{0} أخرى غير مرسومة.",
  },
  "astronomical year: 1 BC is 0, 2 BC is −1": "السنة الفلكية: 1 ق.م هي 0، و2 ق.م هي \u2066−1\u2069",

  "the history of {0}": "ما جرى لـ{0}",
  "the making of {0}": "صنع {0}",
  "at a time that cannot be told": "في وقت لا يُعرف",
  "in {0} or later": "في {0} أو بعده",
  "in {0} or earlier": "في {0} أو قبله",
  "in {0}": "في {0}",
  "between {0} and {1}": "بين {0} و{1}",

  "One statement bears on {0} and cannot all be true, at least one of these being wrong: {1}.":
    "قول واحد في {0} لا يصح كله، وواحد على الأقل من هذه خطأ: {1}.",
  "{0} statements bear on {1} and cannot all be true, at least one of these being wrong: {2}.": {
    two: "قولان في {1} لا يصحان معًا، وواحد على الأقل من هذه خطأ: {2}.",
    few: "{0} أقوال في {1} لا تصح كلها معًا، وواحد على الأقل من هذه خطأ: {2}.",
    many: "{0} قولًا في {1} لا تصح كلها معًا، وواحد على الأقل من هذه خطأ: {2}.",
    other: "{0} قول في {1} لا تصح كلها معًا، وواحد على الأقل من هذه خطأ: {2}.",
  },
  "One statement bears on {0}; how early or late, cannot be decided.":
    "قول واحد في {0}؛ وكم كان ذلك مبكرًا أو متأخرًا لا يُحسم.",
  "{0} statements bear on {1} and are compatible with one another; how early or late, cannot be decided.": {
    two: "قولان في {1}، وكل منهما متوافق مع الآخر؛ وكم كان ذلك مبكرًا أو متأخرًا لا يُحسم.",
    few: "{0} أقوال في {1}، وهي متوافقة بعضها مع بعض؛ وكم كان ذلك مبكرًا أو متأخرًا لا يُحسم.",
    many: "{0} قولًا في {1}، وهي متوافقة بعضها مع بعض؛ وكم كان ذلك مبكرًا أو متأخرًا لا يُحسم.",
    other: "{0} قول في {1}، وهي متوافقة بعضها مع بعض؛ وكم كان ذلك مبكرًا أو متأخرًا لا يُحسم.",
  },
  "One statement bears on {0}; by it, all of it falls {1}.": "قول واحد في {0}؛ وبه يقع ذلك كله {1}.",
  "{0} statements bear on {1} and are compatible with one another; by them, all of it falls {2}.": {
    two: "قولان في {1}، وكل منهما متوافق مع الآخر؛ وبهما يقع ذلك كله {2}.",
    few: "{0} أقوال في {1}، وهي متوافقة بعضها مع بعض؛ وبها يقع ذلك كله {2}.",
    many: "{0} قولًا في {1}، وهي متوافقة بعضها مع بعض؛ وبها يقع ذلك كله {2}.",
    other: "{0} قول في {1}، وهي متوافقة بعضها مع بعض؛ وبها يقع ذلك كله {2}.",
  },
  "One statement bears on {0}; by it, it falls {1}.": "قول واحد في {0}؛ وبه يقع ذلك {1}.",
  "{0} statements bear on {1} and are compatible with one another; by them, it falls {2}.": {
    two: "قولان في {1}، وكل منهما متوافق مع الآخر؛ وبهما يقع ذلك {2}.",
    few: "{0} أقوال في {1}، وهي متوافقة بعضها مع بعض؛ وبها يقع ذلك {2}.",
    many: "{0} قولًا في {1}، وهي متوافقة بعضها مع بعض؛ وبها يقع ذلك {2}.",
    other: "{0} قول في {1}، وهي متوافقة بعضها مع بعض؛ وبها يقع ذلك {2}.",
  },
};
