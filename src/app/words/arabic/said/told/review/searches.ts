import type { ArabicCatalogue } from "../../../../../../base/text/said/arabic.ts";

/** What a review says of how the literature was searched. */
export const searchesSaid: ArabicCatalogue = {
  "Sought and not found: ": "طُلب ولم يوجد: ",
  "Still to be read: ": "لم يُقرأ بعد: ",
  "More records were screened than were found in one search: ": "فُرز في بحث واحد أكثر مما وُجد: ",
  "The records kept and left out in one search come to more than were screened: ":
    "ما أُبقي وما استُبعد في بحث واحد يزيدان على ما فُرز: ",
  "The log does not tell what became of one record that was screened":
    "لا يذكر السجل ما صار إليه سجل واحد مما فُرز",
  "The log does not tell what became of {0} records that were screened": {
    two: "لا يذكر السجل ما صار إليه سجلان مما فُرز",
    few: "لا يذكر السجل ما صارت إليه {0} سجلات مما فُرز",
    many: "لا يذكر السجل ما صار إليه {0} سجلًا مما فُرز",
    other: "لا يذكر السجل ما صار إليه {0} سجل مما فُرز",
  },
  "One search lacks a number, so that the sums are at least what is printed.":
    "بحث واحد ينقصه عدد، فالمجاميع لا تقل عن المطبوع.",
  "There are {0} searches that lack a number, so that the sums are at least what is printed.": {
    two: "بحثان ينقصهما عدد، فالمجاميع لا تقل عن المطبوع.",
    few: "{0} أبحاث ينقصها عدد، فالمجاميع لا تقل عن المطبوع.",
    many: "{0} بحثًا ينقصها عدد، فالمجاميع لا تقل عن المطبوع.",
    other: "{0} بحث ينقصها عدد، فالمجاميع لا تقل عن المطبوع.",
  },
  "The bibliography has one work more than the searches kept; the log does not say how it came in.":
    "في قائمة المراجع عمل واحد يزيد على ما أبقته الأبحاث؛ ولا يذكر السجل كيف دخل.",
  "The bibliography has {0} works more than the searches kept; the log does not say how they came in.": {
    two: "في قائمة المراجع عملان يزيدان على ما أبقته الأبحاث؛ ولا يذكر السجل كيف دخلا.",
    few: "في قائمة المراجع {0} أعمال تزيد على ما أبقته الأبحاث؛ ولا يذكر السجل كيف دخلت.",
    many: "في قائمة المراجع {0} عملًا تزيد على ما أبقته الأبحاث؛ ولا يذكر السجل كيف دخلت.",
    other: "في قائمة المراجع {0} عمل تزيد على ما أبقته الأبحاث؛ ولا يذكر السجل كيف دخلت.",
  },
  "The searches kept one record more than the bibliography has works; the log does not say what became of it.":
    "أبقت الأبحاث سجلًا واحدًا يزيد على أعمال قائمة المراجع؛ ولا يذكر السجل ما صار إليه.",
  "The searches kept {0} records more than the bibliography has works; the log does not say what became of them.":
    {
      two: "أبقت الأبحاث سجلين يزيدان على أعمال قائمة المراجع؛ ولا يذكر السجل ما صارا إليه.",
      few: "أبقت الأبحاث {0} سجلات تزيد على أعمال قائمة المراجع؛ ولا يذكر السجل ما صارت إليه.",
      many: "أبقت الأبحاث {0} سجلًا تزيد على أعمال قائمة المراجع؛ ولا يذكر السجل ما صارت إليه.",
      other: "أبقت الأبحاث {0} سجل تزيد على أعمال قائمة المراجع؛ ولا يذكر السجل ما صارت إليه.",
    },
  "Records were taken of the following, though it is not recorded that they were read: ":
    "أُخذت سجلات مما يلي، مع أنه لم يُسجّل أنه قُرئ: ",
  "one other work of the bibliography": "عمل واحد آخر من قائمة المراجع",
  "{0} other works of the bibliography": {
    two: "عملان آخران من قائمة المراجع",
    few: "{0} أعمال أخرى من قائمة المراجع",
    many: "{0} عملًا آخر من قائمة المراجع",
    other: "{0} عمل آخر من قائمة المراجع",
  },
  "The flow of records, from the searches to the works that this review draws on.":
    "مسار السجلات، من الأبحاث إلى الأعمال التي تستند إليها هذه المراجعة.",
  Stage: "المرحلة",
  "Records identified": "سجلات عُثر عليها",
  "Records set aside before screening": "سجلات نُحّيت قبل الفرز",
  "Records screened": "سجلات فُرزت",
  "Records left out on screening": "سجلات استُبعدت عند الفرز",
  "Records kept": "سجلات أُبقيت",
  "Works in the bibliography": "أعمال في قائمة المراجع",
  "– sought and read": "– طُلبت وقُرئت",
  "– sought and not found": "– طُلبت ولم توجد",
  "– still to be read": "– لم تُقرأ بعد",
  "– of which it is not recorded whether they were read": "– لم يُسجّل هل قُرئت",
  "Works read that have nothing to the purpose": "أعمال قُرئت وليس فيها شيء",
  "Works that the review draws on": "أعمال تستند إليها المراجعة",
  "The search is reported following PRISMA 2020 where applicable.":
    "يُعرض البحث على نهج PRISMA 2020 حيث ينطبق.",
  "Page, M. J., McKenzie, J. E., Bossuyt, P. M., and others, 2021. The PRISMA 2020 statement: an updated guideline for reporting systematic reviews. BMJ 372: n71. The counts of its flow diagram are given as far as the log of the searches has them.":
    "Page, M. J., McKenzie, J. E., Bossuyt, P. M., 2021. The PRISMA 2020 statement: an updated guideline for reporting systematic reviews. BMJ 372: n71. وتُذكر أعداد مخطط المسار بقدر ما هي في سجل الأبحاث.",
  "No log of the searches is recorded; what became of each work is.":
    "لم يُسجّل سجل للأبحاث؛ وسُجّل ما صار إليه كل عمل.",
  "The literature was searched in one place.": "بُحث في المراجع في مكان واحد.",
  "The literature was searched in one place, the last time on {0}.":
    "بُحث في المراجع في مكان واحد، وآخر مرة في {0}.",
  "The literature was searched in {0} places.": {
    two: "بُحث في المراجع في مكانين.",
    few: "بُحث في المراجع في {0} أماكن.",
    many: "بُحث في المراجع في {0} مكانًا.",
    other: "بُحث في المراجع في {0} مكان.",
  },
  "The literature was searched in {0} places, the last time on {1}.": {
    two: "بُحث في المراجع في مكانين، وآخر مرة في {1}.",
    few: "بُحث في المراجع في {0} أماكن، وآخر مرة في {1}.",
    many: "بُحث في المراجع في {0} مكانًا، وآخر مرة في {1}.",
    other: "بُحث في المراجع في {0} مكان، وآخر مرة في {1}.",
  },
  "The searches as they were made. A dash stands where the log has no number.":
    "الأبحاث كما أُجريت. والشرطة حيث ليس في السجل عدد.",
  Where: "أين",
  "Words searched": "الكلمات المطلوبة",
  When: "متى",
  Found: "وُجد",
  Screened: "فُرز",
  "Left out": "استُبعد",
  Kept: "أُبقي",
  Together: "المجموع",
};
