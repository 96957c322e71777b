import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

const sets = {
  two: "قد يتوقف على اثنين من الأشياء والمصادر والباحثين",
  some: "قد يتوقف على {0} من الأشياء والمصادر والباحثين",
};
const many = "وذلك أكثر من أن تُطلب فيه مجموعات من";

const step = "فخطوة في الطريق تحتاج إلى عدة طرق معًا.";

/** What a claim would fall without, and the lines that lead to it. */
export const restingSaid: ArabicCatalogue = {
  "A single loss is enough to end it.": "فقد شيء واحد يكفي لسقوطه.",
  "No single loss ends it; two together do.": "لا يُسقطه فقد شيء واحد، ويُسقطه فقد اثنين معًا.",
  "No loss of one or two ends it; three together do.": "لا يُسقطه فقد واحد أو اثنين، ويُسقطه فقد ثلاثة معًا.",
  "No loss of three or fewer ends it.": "لا يُسقطه فقد ثلاثة أو أقل.",
  "No loss of one or two ends it.": "لا يُسقطه فقد واحد أو اثنين.",
  "No single loss ends it.": "لا يُسقطه فقد شيء واحد.",
  "It could hang on {0} things, sources and scholars: too many to look for sets of two or three.": {
    two: `${sets.two}، ${many} اثنين أو ثلاثة.`,
    few: `${sets.some}، ${many} اثنين أو ثلاثة.`,
    many: `${sets.some}، ${many} اثنين أو ثلاثة.`,
    other: `${sets.some}، ${many} اثنين أو ثلاثة.`,
  },
  "It could hang on {0} things, sources and scholars: too many to look for sets of three.": {
    two: `${sets.two}، ${many} ثلاثة.`,
    few: `${sets.some}، ${many} ثلاثة.`,
    many: `${sets.some}، ${many} ثلاثة.`,
    other: `${sets.some}، ${many} ثلاثة.`,
  },
  "There are too many sets of two or three to try them all.":
    "مجموعات الاثنين والثلاثة أكثر من أن تُجرَّب كلها.",
  "There are too many sets of three to try them all.": "مجموعات الثلاثة أكثر من أن تُجرَّب كلها.",
  "Sets of two or three are not looked for: too many numbers would have to be computed anew.":
    "لم تُطلب مجموعات الاثنين والثلاثة: فالأعداد التي يلزم حسابها من جديد كثيرة جدًّا.",
  "Sets of three are not looked for: too many numbers would have to be computed anew.":
    "لم تُطلب مجموعات الثلاثة: فالأعداد التي يلزم حسابها من جديد كثيرة جدًّا.",
  "Larger sets wait for numbers that are still being computed.":
    "المجموعات الأكبر تنتظر أعدادًا لا تزال تُحسب.",
  " and ": " و",
  " or ": " أو ",
  ", ": "، ",
  ", together with ": "، مع ",
  "either ": "أحد اثنين: ",
  "one of ": "واحد من: ",
  "No line leads to it from a thing or a report.": "لا طريق إليه من شيء أو من تقرير.",
  "{0} lines lead to it that share nothing.": {
    two: "إليه طريقان لا يشتركان في شيء.",
    few: "إليه {0} طرق لا تشترك في شيء.",
    many: "إليه {0} طريقًا لا تشترك في شيء.",
    other: "إليه {0} طريق لا تشترك في شيء.",
  },
  "One line leads to it.": "إليه طريق واحد.",
  "One line leads to it: everything passes through ": "إليه طريق واحد يمرّ كله عبر ",
  "Yet {0} losses together end it: a step on the way needs several lines at once.": {
    two: `غير أن فقد اثنين معًا يُسقطه: ${step}`,
    few: `غير أن فقد {0} معًا يُسقطه: ${step}`,
    many: `غير أن فقد {0} معًا يُسقطه: ${step}`,
    other: `غير أن فقد {0} معًا يُسقطه: ${step}`,
  },
  "Yet the loss of ": "غير أن فقد ",
  " alone ends it.": " وحده يُسقطه.",
};
