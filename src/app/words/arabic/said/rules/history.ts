import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What the rules say of dates and of what befell things. */
export const historyRulesSaid: ArabicCatalogue = {
  "A thing was observed after a restoration, conservation or sampling of it.":
    "شيء شوهد بعد ترميمه أو صيانته أو أخذ عيّنة منه.",
  "What was seen may be the work of the restorer: cleaning removes traces, consolidants hide them. Look for an observation from before, or say what the treatment could not have changed.":
    "قد يكون المشاهَد من عمل المرمّم: فالتنظيف يزيل العلامات، والمواد المقوّية تخفيها. ابحث عن مشاهدة سابقة، أو اذكر ما لا يمكن أن تكون المعالجة قد غيّرته.",
  "{0} was seen on {1} after it was treated in {2}.": "شوهد {0} في {1} بعد معالجة جرت في {2}.",
  "Something was observed or measured after the thing was lost.": "شيء شوهد أو قيس بعد فقده.",
  "Either the date is wrong, or it was taken from a drawing, a cast or a report: then say so in `basis`. A loss is of the whole thing named; the loss of a part is a record of that part.":
    "إما أن التاريخ خطأ، وإما أنه مأخوذ من رسم أو قالب أو نقل: فاذكر ذلك في `basis`. والفقد فقد الشيء المسمّى كله؛ وفقد الجزء سجل لذلك الجزء.",
  "{0} is dated after {1} was lost in {2}, expected an earlier year or another basis.":
    "تاريخ {0} بعد فقد {1} في {2}؛ والمتوقَّع: سنة أسبق أو أساس آخر.",
  "Something is dated before it could be.": "شيء مؤرَّخ قبل أن يمكن.",
  "A record dated after its source was in print, an event in the history of a thing before the thing was made, or relations and dates that cannot all be true. Of an impossible order the fewest statements are named that cannot be true together: one of them is wrong, or belongs to another edition; up to 24 such orders are told at once. A thing with several dates may be of any of them. What a claim says of dates counts while the claim stands or is open, and never together with a rival's: that rivals differ is the dispute, not a mistake; a relation counts until it falls. A range from radiocarbon holds at the level of its calibration, commonly 95 %: of three such ranges that do not depend on one another, one lies outside in one case of seven (1 - 0.95³), so look there first.":
    "سجل مؤرَّخ بعد نشر مصدره، أو حدث في تاريخ شيء قبل صنعه، أو علاقات وتواريخ لا يمكن أن تصح كلها. ويُسمّى من الترتيب الممتنع أقل ما لا يصح معًا من الأقوال: واحد منها خطأ، أو هو من طبعة أخرى؛ ويُذكر من هذه الترتيبات في المرة الواحدة 24 على الأكثر. والشيء الذي له عدة تواريخ قد يكون من أي منها. وما تقوله دعوى في التواريخ معتبر ما دامت الدعوى قائمة أو معلّقة، ولا يُعتبر أبدًا مع ما تقوله منافستها: فاختلاف المتنافسين هو الخلاف لا خطأ؛ والعلاقة معتبرة حتى تسقط. والمدى من الكربون المشع ثابت بدرجة معايرته، وهي في العادة 95 %: فمن ثلاثة أمداء كهذه لا يتوقف بعضها على بعض يقع واحد خارجه في حالة من كل سبع (1 - 0.95³)، فانظر هناك أولًا.",
  "{0} is dated {1}": "تاريخ {0} هو {1}",
  "{0} and {1} more are dated so": {
    two: "{0} وسجلان آخران كذلك",
    few: "{0} و{1} سجلات أخرى كذلك",
    many: "{0} و{1} سجلًا آخر كذلك",
    other: "{0} و{1} سجل آخر كذلك",
  },
  "{0}, after {1} was in print, expected {2} or earlier.": "{0}، أي بعد نشر {1}؛ والمتوقَّع: {2} أو قبله.",
  "the open claim {0}": "الدعوى المعلّقة {0}",
  "the claim {0}": "الدعوى {0}",
  "{0} or later": "{0} أو بعده",
  "{0} or earlier": "{0} أو قبله",
  "the date of {0}": "تاريخ {0}",
  "{0} puts {1} before itself, expected two things or events.":
    "في {0} تقديم {1} على نفسه؛ والمتوقَّع: شيئان أو حدثان.",
  "{0} contradicts itself, expected dates that fit together.": "{0} ينقض نفسه؛ والمتوقَّع: تواريخ تتوافق.",
  "{0}: {1} is dated {2}, before the thing was made, expected {3} or later.":
    "{0}: تاريخ {1} هو {2}، أي قبل صنع الشيء؛ والمتوقَّع: {3} أو بعده.",
  "{0}, of {1} or later,": "{0} ({1} أو بعده)",
  "{0}, of {1} or earlier,": "{0} ({1} أو قبله)",
  "{0} puts {1} within {2} of {3} expected dates that meet.":
    "في {0} أن {1} و{3} متقاربان، والفاصل {2} على الأكثر؛ والمتوقَّع: تواريخ تلتقي.",
  "{0} puts {1} at the time of {2} expected dates that meet.":
    "في {0} أن {1} في زمن {2}؛ والمتوقَّع: تواريخ تلتقي.",
  "{0} puts {1} at most {2} before {3} expected dates nearer together.":
    "في {0} تقديم {1} على {3}، والفاصل {2} على الأكثر؛ والمتوقَّع: تواريخ أقرب بعضها إلى بعض.",
  "{0} puts {1} at least {2} before {3} expected dates in that order.":
    "في {0} تقديم {1} على {3}، والفاصل {2} على الأقل؛ والمتوقَّع: تواريخ بهذا الترتيب.",
  "{0} puts {1} before {2} expected dates in that order.":
    "في {0} تقديم {1} على {2}؛ والمتوقَّع: تواريخ بهذا الترتيب.",
  "{0} cannot both be true": "لا يصح الأمران معًا: {0}",
  "{0} cannot all be true": "لا تصح هذه الأمور معًا: {0}",
  "{0}, expected an order that ends.": "{0}؛ والمتوقَّع: ترتيب له نهاية.",
  "{0}: they miss by {1}, expected dates that fit together.": "{0}؛ والفارق {1}؛ والمتوقَّع: تواريخ تتوافق.",
  "at least {0}": "{0} على الأقل",
  "at most {0}": "{0} على الأكثر",
  "The date of {0} is given as approximate or uncertain.": "تاريخ {0} مذكور على أنه تقريبي أو غير يقيني.",
  "1 year": "سنة واحدة",
  "{0} years": { two: "سنتان", few: "{0} سنوات", many: "{0} سنة", other: "{0} سنة" },
  years: "سنة",
  "The same holds of {0}.": "وكذلك الحال في {0}.",
  "{0} does not fit {1} either.": "ولا توافق كذلك بين {0} و{1}.",
  "{0} do not fit {1} either.": "ولا توافق كذلك بين أي من {0} وبين {1}.",
};
