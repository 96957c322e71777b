import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What the rules say of sources, names and settings. */
export const sourceRulesSaid: ArabicCatalogue = {
  "A source of the bibliography is cited by no record.": "مصدر في المراجع لا يستشهد به سجل.",
  "Either there is nothing in it, which a reading with the status nothing-in-it records, or something was forgotten.":
    "إما أن لا شيء فيه، وتسجل ذلك قراءة حالتها nothing-in-it، وإما أن شيئًا نُسي.",
  "{0} is cited by no record, expected a record or a reading.":
    "لا سجل يستشهد بـ{0}؛ والمتوقَّع: سجل أو قراءة.",
  "{0} are cited by no record, expected a record or a reading.":
    "لا سجل يستشهد بأي من {0}؛ والمتوقَّع: سجل أو قراءة.",
  "An author in the bibliography is none of the corpus's scholars.": "مؤلف في المراجع ليس من باحثي المدوّنة.",
  "Add the scholar, or the spelling to `known-as`, if the author holds or measured something; else let it be.":
    "أضف الباحث، أو أضف رسم الاسم إلى `known-as`، إن كان للمؤلف رأي أو قياس؛ وإلا فدعه.",
  "{0} of {1} is not among the scholars, expected a scholar of that name.":
    "لا ذكر لـ{0} ({1}) بين الباحثين؛ والمتوقَّع: باحث بهذا الاسم.",
  "{0} of {1} are not among the scholars, expected a scholar of that name.":
    "لا ذكر لأي من {0} ({1}) بين الباحثين؛ والمتوقَّع: باحث بهذا الاسم.",
  "A reference goes by a made name that several records share.": "إحالة باسم مولَّد تشترك فيه عدة سجلات.",
  "Measurements and positions without an id are named after what they say; where several are called alike, the reference may come to mean another when one is added. Give the record an id of its own and refer to that: the change is offered.":
    "القياسات والآراء التي بلا معرّف تُسمّى بما تقوله؛ وحيث تتفق أسماء عدة منها قد تصير الإحالة إلى غير المراد إذا أضيف واحد. أعط السجل معرّفًا خاصًّا به وأحِل إليه: والتغيير معروض.",
  "Unstable reference `{0}`, expected a record with an id of its own: several are called so":
    "إحالة غير ثابتة: `{0}`؛ والمتوقَّع: سجل له معرّف خاص به: فعدة سجلات تُسمّى كذلك",
  "Give it the id {0}": "أعطه المعرّف {0}",
  "Give them the ids {0}": "أعطها المعرّفات {0}",
  "Two names are so alike that one may be a slip.": "اسمان متشابهان حتى لعل أحدهما سهو.",
  "Names of scholars, things, dimensions, features and events are compared, and events with the ids of things. If both are meant, let them be; if one is a slip, mend it, or list it under `also` or `known-as`.":
    "تُقارَن أسماء الباحثين والأشياء والأبعاد والعلامات والأحداث، وتُقارَن الأحداث بمعرّفات الأشياء. فإن أُريد كلاهما فدعهما؛ وإن كان أحدهما سهوًا فأصلحه، أو أدرجه تحت `also` أو `known-as`.",
  "{0} is nearly {1}, expected one spelling or two plainly different names.":
    "{0} يكاد يكون {1}؛ والمتوقَّع: رسم واحد أو اسمان متمايزان بوضوح.",
  "A unit of the corpus's own hides a built-in one of that name.":
    "وحدة خاصة بالمدوّنة تحجب وحدة مضمّنة بالاسم نفسه.",
  "Everything measured in that name is read in the corpus's own unit. Rename it if the built-in one is meant anywhere.":
    "كل ما قيس بذلك الاسم يُقرأ بوحدة المدوّنة الخاصة. غيّر اسمها إن أُريدت المضمّنة في أي موضع.",
  "The corpus's own unit {0} hides the built-in {1}, expected another name if both are meant.":
    "وحدة المدوّنة الخاصة {0} تحجب المضمّنة {1}؛ والمتوقَّع: اسم آخر إن أُريدت كلتاهما.",
  "The settings accept a finding, or set the level of a rule, and nothing comes of it.":
    "الإعدادات تقبل تنبيهًا، أو تضع درجة لقاعدة، ولا أثر لذلك.",
  "The record may have been mended since, or the name of the rule be misspelt. Take the line out, or mend the name: else a later finding of that kind is accepted before anybody has looked at it. Errors stay errors: they are mended, not accepted.":
    "لعل السجل أُصلح بعد ذلك، أو لعل في اسم القاعدة خطأ إملائيًّا. احذف السطر أو أصلح الاسم: وإلا قُبل تنبيه لاحق من ذلك النوع قبل أن ينظر فيه أحد. والأخطاء تبقى أخطاء: تُصلح ولا تُقبل.",
  "Unknown rule `{0}`, expected the name of a rule as findings give it":
    "قاعدة غير معروفة: `{0}`؛ والمتوقَّع: اسم قاعدة كما تذكره التنبيهات",
  "Unknown rule `{0}`, expected {1}": "قاعدة غير معروفة: `{0}`؛ والمتوقَّع: {1}",
  "Unexpected acceptance of `{0}`, expected errors to be mended: they stay errors":
    "غير متوقَّع: قبول `{0}`؛ والمتوقَّع: أن تُصلح الأخطاء: فهي تبقى أخطاء",
  "Unused acceptance of `{0}`, expected a finding that it accepts":
    "قبول بلا أثر لـ`{0}`؛ والمتوقَّع: تنبيه يقبله",
  "Unexpected level of `{0}`, expected none: errors stay errors":
    "غير متوقَّع: درجة `{0}`؛ والمتوقَّع: لا درجة: فالأخطاء تبقى أخطاء",
};
