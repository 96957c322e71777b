import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What the rules say of claims and of the arguments under them. */
export const claimRulesSaid: ArabicCatalogue = {
  "Two claims that cannot both be right are both held by someone or both argued for.":
    "دعويان لا تصحان معًا، ولكل منهما قائل أو حجة.",
  "That is what a dispute is, so it is no mistake. It asks for an argument that chooses, or for the sentence in your review that says why none does. Two claims are rivals when they answer one exclusive question or one names the other as incompatible.":
    "هذا هو الخلاف نفسه، فليس بخطأ. وهو يقتضي حجة ترجّح، أو جملة في عرضك تقول لمَ لا مرجّح. والدعويان متنافستان إذا أجابتا عن مسألة لا يصح فيها جوابان معًا، أو ذُكرت إحداهما منافية للأخرى.",
  "{0} cannot both be right, and both are held or argued for.":
    "{0}: لا تصح الدعويان معًا، ولكل منهما قائل أو حجة.",
  "{0} cannot be right together, and all are held or argued for.":
    "{0}: لا تصح هذه الدعاوى معًا، ولكل منها قائل أو حجة.",
  "A claim that a scholar holds has no argument, or only such as lean on what is bare.":
    "دعوى يقول بها باحث ولا حجة لها، أو لا حجة لها إلا ما يستند إلى ما لا شيء تحته.",
  "Read the passage again: is a reason given there that was not recorded? If so, record it; if not, the claim is a bare assertion, and the review should say so. An argument of your own may be put under it.":
    "اقرأ الموضع ثانية: أفيه سبب لم يُسجَّل؟ فإن كان فسجّله، وإلا فالدعوى قول مجرد، وينبغي أن يذكر عرضك ذلك. ولك أن تضع تحتها حجة من عندك.",
  "{0}, which leans on {1}, under which there is nothing.": "{0}، ويستند ذلك إلى {1}، ولا شيء تحته.",
  "{0}, which lean on {1}, under which there is nothing.": "{0}، ويستند ذلك كله إلى {1}، ولا شيء تحته.",
  "{0} without an argument, expected at least one under it.":
    "{0} من غير حجة؛ والمتوقَّع: حجة واحدة على الأقل تحت ذلك.",
  "{0} without an argument, expected at least one under it; {1} leans on it.":
    "{0} من غير حجة؛ والمتوقَّع: حجة واحدة على الأقل تحت ذلك؛ ويستند إليه: {1}.",
  "{0} without an argument, expected at least one under it; {1} lean on it.":
    "{0} من غير حجة؛ والمتوقَّع: حجة واحدة على الأقل تحت ذلك؛ وتستند إليه: {1}.",
  "{0} holds {1}": "{0} على القول بـ{1}",
  "{0} hold {1}": "{0} على القول بـ{1}",
  "Every argument for a claim that a scholar holds leans on the claim itself.":
    "كل حجة لدعوى يقول بها باحث تستند إلى الدعوى نفسها.",
  "Claims that hold one another up support nothing. Find evidence for one of them that does not come from the others.":
    "الدعاوى التي يسند بعضها بعضًا لا تسند شيئًا. ابحث لإحداها عن دليل لا يأتي من الأخريات.",
  "{0}, and every argument for these leads back to them.": "{0}، وكل حجة لهذه الدعاوى ترجع إليها.",
  "{0}, and every argument for it leans on itself, through {1}.":
    "{0}، وكل حجة لهذه الدعوى تستند إليها نفسها من طريق {1}.",
  "{0}, and every argument for it leans on itself, directly.":
    "{0}، وكل حجة لهذه الدعوى تستند إليها نفسها مباشرة.",
  "For a claim that a scholar holds, only things passed over in silence are reached.":
    "دعوى يقول بها باحث ولا تنتهي إلا إلى ما سُكت عنه.",
  "Silence is weighed, not counted. Ask how often that author reports such traces where others saw them, and let a derivation of silence bear on the claim; or find somebody who looked.":
    "السكوت يوزن ولا يُعدّ. انظر كم يذكر ذلك المؤلف مثل هذه العلامات حيث شاهدها غيره، واجعل لاشتقاق من السكوت أثرًا في الدعوى؛ أو اعثر على من نظر.",
  "{0} on silence alone, expected something seen or a weight for the silence.":
    "{0} استنادًا إلى السكوت وحده؛ والمتوقَّع: شيء شوهد أو وزن للسكوت.",
  "An argument reasons from silence.": "حجة من السكوت.",
  "Not reporting says little by itself: an author who never reports such traces says nothing by not reporting them here. The finding counts how often the silent source reports the feature elsewhere, beside how often others saw it. Without a derivation of silence the argument does not work.":
    "عدم الذكر قليل الدلالة بنفسه: فالمؤلف الذي لا يذكر مثل هذه العلامات أبدًا لا يدل سكوته عنها هنا على شيء. ويعدّ التنبيه كم يذكر المصدر الساكت العلامة في غير هذا الموضع، وكم شاهدها غيره. ولا تقوم الحجة من غير اشتقاق من السكوت.",
  "nobody is on record as having seen such a trace": "ولم يُسجَّل أن أحدًا شاهد مثل هذه العلامة",
  "the silent source reports {0} of {1} such traces on record":
    "والمصدر الساكت يذكر {0} من {1} من مثل هذه العلامات المسجَّلة",
  "its weight is not computed": "ولم يُحسب وزن السكوت",
  "it is worth a likelihood ratio of {0}": "ووزن السكوت نسبة ترجيح قدرها {0}",
  "{0} leans on what was passed over: {1}, and {2}.": "الاستناد في {0} إلى ما سُكت عنه، {1}، {2}.",
  "A claim that stands would not without one artefact.": "دعوى قائمة ما كانت لتقوم لولا أثر واحد.",
  "If that thing were redated, lost or misread, the claim would go with it. Say so where you state the claim, and look for a second thing that shows the same.":
    "لو أُرّخ ذلك الشيء تأريخًا آخر أو فُقد أو أسيئت قراءته لذهبت الدعوى معه. اذكر ذلك حيث تذكر الدعوى، وابحث عن شيء ثانٍ يدل على مثله.",
  "{0} stand on one artefact, {1}, and would not without it.":
    "تقوم {0} على أثر واحد، هو {1}، وما كانت لتقوم لولاه.",
  "{0} stands on one artefact, {1}, and would not without it.":
    "تقوم {0} على أثر واحد، هو {1}، وما كانت لتقوم لولاه.",
  "A claim that stands would not without one source.": "دعوى قائمة ما كانت لتقوم لولا مصدر واحد.",
  "Everything that carries the claim was said in one place. Check that source first-hand, and look for another that saw the same independently.":
    "كل ما يحمل الدعوى قيل في موضع واحد. تحقّق من ذلك المصدر بنفسك، وابحث عن مصدر آخر شاهد مثله مستقلًّا عنه.",
  "{0} stand on one source, {1}, and would not without it.":
    "تقوم {0} على مصدر واحد، هو {1}، وما كانت لتقوم لولاه.",
  "{0} stands on one source, {1}, and would not without it.":
    "تقوم {0} على مصدر واحد، هو {1}، وما كانت لتقوم لولاه.",
  "{0} and {1} more claims": {
    two: "{0} ودعويان أخريان",
    few: "{0} و{1} دعاوى أخرى",
    many: "{0} و{1} دعوى أخرى",
    other: "{0} و{1} دعوى أخرى",
  },
  "A standing changes when one weak or strong argument is taken as ordinary.":
    "حال يتغيّر إذا أُخذت حجة ضعيفة أو قوية على أنها عادية.",
  "The verdict then rests on your weighing, not on the record alone. Say why the argument weighs more or less in why-strength; without that, this is a warning.":
    "الحكم حينئذ قائم على وزنك لا على السجل وحده. اذكر في why-strength لمَ تزن الحجة أكثر أو أقل؛ وهذا من دونه تحذير.",
  "{0} ({1}, else {2})": "{0} (الحال: {1}، وإلا {2})",
  "{0} is taken as weak, and that decides {1}": "وزن {0} هنا وزن حجة ضعيفة، وذلك يحسم {1}",
  "{0} is taken as strong, and that decides {1}": "وزن {0} هنا وزن حجة قوية، وذلك يحسم {1}",
  "{0}; expected a reason in why-strength.": "{0}؛ والمتوقَّع: ذكر السبب في why-strength.",
  stands: "قائم",
  open: "معلّق",
  falls: "ساقط",
  unsupported: "بلا سند",
  "An argument against what a scholar holds has been in print ten years, and no argument is against it.":
    "حجة على ما يقول به باحث منشورة منذ عشر سنين، ولا حجة عليها.",
  "Either it was overlooked, or nobody could answer it; the review should say which. Ten years are counted back from the year asked for, else from the newest source.":
    "إما أنها أُغفلت، وإما أن أحدًا لم يستطع جوابها؛ وينبغي أن يذكر عرضك أيهما كان. وتُعدّ السنون العشر رجوعًا من السنة المطلوبة، وإلا فمن أحدث مصدر.",
  "{0} is against {1}, which {2} holds, and no argument is against it.":
    "في {0} اعتراض على {1}، وهو قول {2}، ولا حجة على ذلك الاعتراض.",
  "{0} is against {1}, which {2} hold, and no argument is against it.":
    "في {0} اعتراض على {1}، وهو قول {2}، ولا حجة على ذلك الاعتراض.",
};
