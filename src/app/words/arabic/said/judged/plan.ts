import type { ArabicCatalogue, ArabicForms } from "../../../../../base/text/said/arabic.ts";

const besides = (before: string, after: string): ArabicForms => ({
  two: `${before} دعويين أخريين${after}`,
  few: `${before} {1} دعاوى أخرى${after}`,
  many: `${before} {1} دعوى أخرى${after}`,
  other: `${before} {1} دعوى أخرى${after}`,
});

/** What examinations would decide, why they are suggested, and what keepers ask. */
export const planSaid: ArabicCatalogue = {
  "Ranked by how many answers each can decide, then by how many claims it can change; of equals, what is not destructive comes first, then what costs less, then by id.":
    "الترتيب بعدد الأجوبة التي يستطيع الفحص أن يحسمها، ثم بعدد الدعاوى التي يستطيع أن يغيّرها؛ وعند التساوي يُقدَّم غير المتلف، ثم الأقل كلفة، ثم بالمعرّف.",
  "What it can change hangs on numbers that are still to be computed.":
    "ما يستطيع أن يغيّره يتوقف على أعداد لم تُحسب بعد.",
  "Nothing it can show changes a standing.": "لا شيء مما قد يُظهره يغيّر حالًا.",
  "It changes the same standings whatever comes of it: nothing it can show tells one outcome from another.":
    "يغيّر الأحوال نفسها أيًّا كانت نتيجته: فلا شيء مما قد يُظهره يميّز نتيجة من أخرى.",
  "It decides no answer, and can change one claim.": "لا يحسم جوابًا، ويستطيع أن يغيّر دعوى واحدة.",
  "It decides no answer, and can change {0} claims.": {
    two: "لا يحسم جوابًا، ويستطيع أن يغيّر دعويين.",
    few: "لا يحسم جوابًا، ويستطيع أن يغيّر {0} دعاوى.",
    many: "لا يحسم جوابًا، ويستطيع أن يغيّر {0} دعوى.",
    other: "لا يحسم جوابًا، ويستطيع أن يغيّر {0} دعوى.",
  },
  "decides {0}": "يحسم {0}",
  "overturns the standing of {0}": "يقلب حال {0}",
  "decides {0}, and overturns the standing of {1}": "يحسم {0}، ويقلب حال {1}",
  "decides {0} and overturns the standing of {1}": "يحسم {0} ويقلب حال {1}",
  "decide {0}": "يحسم {0}",
  "overturn the standing of {0}": "يقلب حال {0}",
  "decide {0}, and overturn the standing of {1}": "يحسم {0}، ويقلب حال {1}",
  "decide {0} and overturn the standing of {1}": "يحسم {0} ويقلب حال {1}",
  "If it ends as recorded, it {0}; no other outcome is recorded.":
    "إن انتهى إلى المسجَّل فإنه {0}؛ ولا نتيجة أخرى مسجَّلة.",
  "If it ends as recorded, it {0}, and changes one claim besides; no other outcome is recorded.":
    "إن انتهى إلى المسجَّل فإنه {0}، ويغيّر دعوى أخرى؛ ولا نتيجة أخرى مسجَّلة.",
  "If it ends as recorded, it {0}, and changes {1} claims besides; no other outcome is recorded.": besides(
    "إن انتهى إلى المسجَّل فإنه {0}، ويغيّر",
    "؛ ولا نتيجة أخرى مسجَّلة.",
  ),
  "It {0}, whatever comes of it.": "{0}، أيًّا كانت نتيجته.",
  "It {0}, whatever comes of it, and can change one claim besides.":
    "{0}، أيًّا كانت نتيجته، ويستطيع أن يغيّر دعوى أخرى.",
  "It {0}, whatever comes of it, and can change {1} claims besides.": besides(
    "{0}، أيًّا كانت نتيجته، ويستطيع أن يغيّر",
    ".",
  ),
  "It can {0}.": "يستطيع أن {0}.",
  "It can {0}, and can change one claim besides.": "يستطيع أن {0}، وأن يغيّر دعوى أخرى.",
  "It can {0}, and can change {1} claims besides.": besides("يستطيع أن {0}، وأن يغيّر", "."),

  "No gain is told: no question has a prior.": "لا يُذكر كسب: لا مسألة لأجوبتها احتمال سابق.",
  "No gain is told: not every outcome has a probability.": "لا يُذكر كسب: ليس لكل نتيجة احتمال.",
  "No gain is told: the probabilities leave out {0}.": "لا يُذكر كسب: الاحتمالات تُغفل {0}.",
  "No gain is told: under {0} the probabilities add up to {1}, not to 1.":
    "لا يُذكر كسب: مجموع الاحتمالات مع {0} هو {1} لا 1.",

  "Evidence that nobody has seen first-hand": "أدلة لم يعاينها أحد بنفسه",
  "An answer leans on it, and all that is recorded of it is second-hand.":
    "جواب يستند إليها، وكل ما سُجّل عنها نقل عن الغير.",
  Evidence: "الدليل",
  "Evidence that is disputed": "أدلة متنازع فيها",
  "An argument is against it; a second look would show whether it is so.":
    "عليها حجة؛ ومعاينة ثانية تُظهر هل الأمر كذلك.",
  "Against it": "ما عليها",
  "Measurements that do not agree": "قياسات لا تتفق",
  "Two readings of one dimension lie further apart than their uncertainty allows.":
    "قراءتان لبُعد واحد بينهما أكثر مما يسمح به عدم يقينهما.",
  Readings: "القراءات",
  "Things that an answer rests on": "أشياء يستند إليها جواب",
  "Without what is recorded of it, an answer would not stand.": "لولا ما سُجّل عنها لما قام جواب.",
  "Would not stand without it": "ما لا يقوم بغيرها",
  "Numbers that could not be computed": "أعداد تعذّر حسابها",
  "A measurement is missing that the computation asks for.": "ينقص قياس يطلبه الحساب.",
  Number: "العدد",
  "Without what is recorded of it, {0} would not stand.": "لولا ما سُجّل عنه لما قام {0}.",

  "What is taken, from which spot, and how much of it?": "ما الذي يؤخذ، ومن أي موضع، وكم منه؟",
  "Would other material do, or what another laboratory has left?":
    "هل تكفي مادة أخرى، أو ما بقي عند مختبر آخر؟",
  "Which way that uses nothing up was tried first, and what did it show?":
    "أي وسيلة غير متلفة جُرّبت أولًا، وماذا أظهرت؟",
  "Who takes it, and where were they trained?": "من يأخذه، وأين تدرّب؟",
  "What comes back: the remainder, the data, the report?": "ما الذي يعود: البقية، أم البيانات، أم التقرير؟",
  "Whose consent is needed besides: an owner's, a community's?": "موافقة من تلزم كذلك: مالك، أم جماعة؟",
  "Scheduled or protected ground: local law and licensed archaeologists decide whether and how anything is touched.":
    "أرض مقيَّدة أو محمية: القانون المحلي والآثاريون المرخَّصون هم من يقرر هل يُمسّ شيء وكيف.",
};
