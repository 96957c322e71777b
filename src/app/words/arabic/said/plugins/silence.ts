import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What the silence plug-in says. Whose a silence is stands as its owner, so that no verb follows a person’s gender or number. */
export const silenceSaid: ArabicCatalogue = {
  Silence: "وزن السكوت",
  "Asks how much more likely a source's silence is where there was nothing than where there was something, by its habit of reporting.":
    "تسأل كم يزيد احتمال سكوت مصدر حيث لم يكن شيء على احتماله حيث كان شيء، بحسب عادته في الذكر.",
  "Those of the known traces that the silent source itself reports.":
    "ما يذكره المصدر الساكت نفسه من العلامات المعروفة.",
  "Comparable traces known to be there, by anyone, where the source could have seen them.":
    "علامات مماثلة معروف وجودها، عند أي أحد، حيث كان يمكن للمصدر أن يشاهدها.",
  "The silences that are weighed; those of one source count as one.":
    "مواضع السكوت الموزونة؛ وما كان منها لمصدر واحد يُعدّ واحدًا.",
  "Share of occasions on which the source reports such a trace where there is none.":
    "حصة المناسبات التي يذكر فيها المصدر مثل هذه العلامة وليست موجودة.",
  "How many times as likely the silence is where there was nothing, absent to present; its interval is that of the rate.":
    "نسبة احتمال السكوت حيث لم يكن شيء إلى احتماله حيث كان شيء، الغياب إلى الحضور؛ ومجالها مجال المعدّل.",
  "The rate at which the source reports such traces: the mean of its distribution, (1 + reported) / (2 + known).":
    "معدّل ذكر المصدر مثل هذه العلامات: متوسط توزيعه، (1 + المذكور) / (2 + المعروف).",

  "Reporting rate unknown: nothing comparable is known that the source could have reported. The likelihood ratio of 2 at most is that of a flat distribution of the rate, however often the source is silent, and its ends are as wide as that.":
    "معدّل الذكر غير معروف: لا يُعرف شيء مماثل كان يمكن للمصدر أن يذكره. ونسبة الترجيح، وهي 2 على الأكثر، نسبة توزيع مستوٍ للمعدّل، مهما تكرر سكوت المصدر، وطرفاها واسعان بقدر ذلك.",
  "All that counts as known is known from the silent source alone. What it passed over elsewhere could not show: count what others found where it had looked.":
    "كل ما يُعدّ معروفًا معروف من المصدر الساكت وحده. وما سكت عنه في غير هذا الموضع لا يمكن أن يظهر: عُدّ ما وجده غيره حيث نظر.",
  "Not all reports counted are by the silent source, or of several that are silent one has no report counted: the habit of one is judged by another's.":
    "ليس كل الذكر المعدود للمصدر الساكت، أو من عدة مصادر ساكتة مصدر لم يُعدّ له ذكر: فعادة مصدر يُحكم عليها بعادة غيره.",
  "Several of the silent sources are by one observer. They count as independent occasions, which they are only if each was written from a fresh look.":
    "عدة من المصادر الساكتة لمشاهِد واحد. وهي معدودة مناسبات مستقلة، ولا تكون كذلك إلا إن كُتب كل منها عن نظر جديد.",
  "What is known must be as conspicuous as what was passed over: an author who always reports walls may never report stains.":
    "يجب أن يكون المعروف ظاهرًا ظهور ما سُكت عنه: فالمؤلف الذي يذكر الجدران دائمًا قد لا يذكر البقع أبدًا.",
  "Occasions of one source are not independent, for it was written with one list in mind; they count as one.":
    "مناسبات المصدر الواحد ليست مستقلة، فقد كُتب وفي الذهن قائمة واحدة؛ وهي تُعدّ واحدة.",
  "The source must have had the chance to see it: what had been dug away or was not yet opened says nothing by not being reported.":
    "يجب أن تكون قد أتيحت للمصدر فرصة المشاهدة: فعدم ذكر ما أُزيل بالحفر أو لم يُكشف بعد لا يدل على شيء.",
  "Before anything is counted every reporting rate is taken as equally likely, which weighs as much as two more known traces, one of them reported.":
    "قبل عدّ أي شيء تؤخذ معدّلات الذكر كلها على أنها متساوية الاحتمال، ووزن ذلك وزن علامتين معروفتين أخريين إحداهما مذكورة.",
  "The words for what a likelihood ratio is worth are a convention (Kass & Raftery 1995, from memory), not a measurement.":
    "الألفاظ الدالة على قيمة نسبة الترجيح اصطلاح (Kass & Raftery 1995، من الذاكرة) لا قياس.",

  "Unexpected share of false reports {0}, expected 0 or more and below 1.":
    "غير متوقَّع: حصة الذكر الكاذب {0}؛ والمتوقَّع: 0 أو أكثر ودون 1.",
  "None of the occasions is a silence, expected one at least.":
    "لا سكوت في أي من المناسبات؛ والمتوقَّع: واحد على الأقل.",
  "nothing was seen": "لم يُشاهَد شيء",
  "no report that it is there": "ليس ذكرًا لوجوده",
  "no silence": "ليس سكوتًا",
  "not among what is known": "ليس من المعروف",

  "A silence and what it is worth": "سكوت وما له من قيمة",
  "Nothing is known of the reporting rate: the point is what all rates alike give, and shaded is only what single rates from 0.025 to 0.975 would give, {0} to {1}.":
    "لا يُعرف شيء عن معدّل الذكر: النقطة ما تعطيه المعدّلات كلها على السواء، والمظلَّل ما تعطيه معدّلات مفردة من 0.025 إلى 0.975 فحسب، وهو من {0} إلى {1}.",
  "Shaded, the band that the 95 % interval of the reporting rate gives: {0} to {1}.":
    "المظلَّل ما يعطيه مجال 95 % لمعدّل الذكر: من {0} إلى {1}.",
  "How much more likely the silence is where there was nothing": "كم يزيد احتمال السكوت حيث لم يكن شيء",
  "The uprights are the scale of Kass & Raftery 1995 (from memory): from 3 on positive, from 20 on strong, from 150 on very strong.":
    "الخطوط القائمة مقياس Kass & Raftery 1995 (من الذاكرة): من 3 فصاعدًا إيجابي، ومن 20 قوي، ومن 150 قوي جدًّا.",
  "Who thought presence and absence equally likely before is left with {0} for presence ({1} to {2}).":
    "من كان الحضور والغياب عنده متساويي الاحتمال يبقى له للحضور {0} (من {1} إلى {2}).",
  "likelihood ratio, absent to present": "نسبة الترجيح، الغياب إلى الحضور",
  "this silence": "هذا السكوت",
  "for the rates within their 95 % interval": "للمعدّلات داخل مجال 95 %",
  "likelihood ratio": "نسبة الترجيح",
  "The rate at which such traces are reported": "معدّل ذكر مثل هذه العلامات",
  "share of such traces reported": "حصة المذكور من مثل هذه العلامات",
  density: "الكثافة",
  "95 % interval": "مجال 95 %",
  "after counting": "بعد العدّ",
  before: "قبل",
  "mean {0}": "المتوسط {0}",
  "No such trace is known by which {0} could be judged: any rate is as likely as any other.":
    "لا تُعرف علامة من هذا النوع يُحكم بها على {0}: فكل معدّل محتمل كغيره.",
  "{0} report {1} of {2} such traces known.": "المذكور عند {0}: {1} من المعروف من مثل هذه العلامات، وهو {2}.",
  "{0} reports {1} of {2} such traces known.":
    "المذكور عند {0}: {1} من المعروف من مثل هذه العلامات، وهو {2}.",
  "The curve says how likely each rate is after that; shaded, its middle 95 % ({0} to {1}).":
    "يبيّن المنحنى مدى احتمال كل معدّل بعد ذلك؛ والمظلَّل 95 % التي في وسطه (من {0} إلى {1}).",
  "Dotted, before anything was counted.": "والمنقّط قبل عدّ أي شيء.",

  little: "قليل",
  "hardly worth a mention": "مما لا يكاد يستحق الذكر",
  positive: "إيجابي",
  "positive evidence": "دليل إيجابي",
  strong: "قوي",
  "strong evidence": "دليل قوي",
  "very strong": "قوي جدًّا",
  "very strong evidence": "دليل قوي جدًّا",
  "Nothing is known by which {0} could be judged, so the reporting rate is unknown: if every rate is as likely, the silence is {1} times as likely where there was nothing, and what it is worth cannot be decided.":
    "لا يُعرف شيء يُحكم به على {0}، فمعدّل الذكر غير معروف: فإن تساوى احتمال المعدّلات كلها فنسبة احتمال السكوت حيث لم يكن شيء إلى احتماله حيث كان شيء {1}، وما له من قيمة لا يُحسم.",
  "{0}; {1}, {2} (scale of Kass & Raftery 1995).": "{0}؛ {1}، {2} (مقياس Kass & Raftery 1995).",
  "Of 1 such trace known, {0} report {1}, which puts their rate at {2} ({3} to {4})":
    "المعروف من مثل هذه العلامات واحدة، والمذكور منها عند {0}: {1}، فمعدّل الذكر {2} (من {3} إلى {4})",
  "Of {0} such traces known, {1} report {2}, which puts their rate at {3} ({4} to {5})": {
    two: "المعروف من مثل هذه العلامات اثنتان، والمذكور منهما عند {1}: {2}، فمعدّل الذكر {3} (من {4} إلى {5})",
    few: "المعروف من مثل هذه العلامات {0}، والمذكور منها عند {1}: {2}، فمعدّل الذكر {3} (من {4} إلى {5})",
    many: "المعروف من مثل هذه العلامات {0}، والمذكور منها عند {1}: {2}، فمعدّل الذكر {3} (من {4} إلى {5})",
    other: "المعروف من مثل هذه العلامات {0}، والمذكور منها عند {1}: {2}، فمعدّل الذكر {3} (من {4} إلى {5})",
  },
  "Of 1 such trace known, {0} reports {1}, which puts its rate at {2} ({3} to {4})":
    "المعروف من مثل هذه العلامات واحدة، والمذكور منها عند {0}: {1}، فمعدّل الذكر {2} (من {3} إلى {4})",
  "Of {0} such traces known, {1} reports {2}, which puts its rate at {3} ({4} to {5})": {
    two: "المعروف من مثل هذه العلامات اثنتان، والمذكور منهما عند {1}: {2}، فمعدّل الذكر {3} (من {4} إلى {5})",
    few: "المعروف من مثل هذه العلامات {0}، والمذكور منها عند {1}: {2}، فمعدّل الذكر {3} (من {4} إلى {5})",
    many: "المعروف من مثل هذه العلامات {0}، والمذكور منها عند {1}: {2}، فمعدّل الذكر {3} (من {4} إلى {5})",
    other: "المعروف من مثل هذه العلامات {0}، والمذكور منها عند {1}: {2}، فمعدّل الذكر {3} (من {4} إلى {5})",
  },
  "their silence is {0} times ({1} to {2} times) as likely where there was nothing as where there was something":
    "ونسبة احتمال السكوت حيث لم يكن شيء إلى احتماله حيث كان شيء {0} (من {1} إلى {2})",
  "its silence is {0} times ({1} to {2} times) as likely where there was nothing as where there was something":
    "ونسبة احتمال السكوت حيث لم يكن شيء إلى احتماله حيث كان شيء {0} (من {1} إلى {2})",
  "their silence on {0} independent occasions is {1} times ({2} to {3} times) as likely where there was nothing as where there was something":
    {
      two: "ونسبة احتمال السكوت في مناسبتين مستقلتين حيث لم يكن شيء إلى احتماله حيث كان شيء {1} (من {2} إلى {3})",
      few: "ونسبة احتمال السكوت في {0} مناسبات مستقلة حيث لم يكن شيء إلى احتماله حيث كان شيء {1} (من {2} إلى {3})",
      many: "ونسبة احتمال السكوت في {0} مناسبة مستقلة حيث لم يكن شيء إلى احتماله حيث كان شيء {1} (من {2} إلى {3})",
      other:
        "ونسبة احتمال السكوت في {0} مناسبة مستقلة حيث لم يكن شيء إلى احتماله حيث كان شيء {1} (من {2} إلى {3})",
    },
  "its silence on {0} independent occasions is {1} times ({2} to {3} times) as likely where there was nothing as where there was something":
    {
      two: "ونسبة احتمال السكوت في مناسبتين مستقلتين حيث لم يكن شيء إلى احتماله حيث كان شيء {1} (من {2} إلى {3})",
      few: "ونسبة احتمال السكوت في {0} مناسبات مستقلة حيث لم يكن شيء إلى احتماله حيث كان شيء {1} (من {2} إلى {3})",
      many: "ونسبة احتمال السكوت في {0} مناسبة مستقلة حيث لم يكن شيء إلى احتماله حيث كان شيء {1} (من {2} إلى {3})",
      other:
        "ونسبة احتمال السكوت في {0} مناسبة مستقلة حيث لم يكن شيء إلى احتماله حيث كان شيء {1} (من {2} إلى {3})",
    },
  "the silent observer": "المشاهِد الساكت",
  "which is no evidence that there was nothing": "وليس ذلك دليلًا على أنه لم يكن شيء",
  "which is {0}": "وذلك {0}",
  "and whether that is no evidence at all or as much as {0} cannot be decided":
    "ولا يُحسم هل ذلك لا دليل فيه البتة أم هو {0}",
  "and whether that is {0} or as much as {1} cannot be decided": "ولا يُحسم هل ذلك {0} أم هو {1}",
};
