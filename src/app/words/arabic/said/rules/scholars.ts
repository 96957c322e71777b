import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What the rules say of the stances that scholars take. */
export const scholarRulesSaid: ArabicCatalogue = {
  "A scholar takes two stances at one time that cannot be taken together.":
    "باحث له موقفان في وقت واحد لا يصح أن يجتمعا.",
  "Read both passages again: often one of them is hedged, or belongs to another edition. If both are meant, the review should say so in neutral words.":
    "اقرأ الموضعين ثانية: فكثيرًا ما يكون أحدهما مقيَّدًا، أو من طبعة أخرى. فإن أُريدا معًا فينبغي أن يذكر عرضك ذلك بألفاظ محايدة.",
  "{0} {1}, expected one or the other.": "رأي {0}: {1}؛ والمتوقَّع: أحدهما.",
  "{0} {1}, expected one of them.": "رأي {0}: {1}؛ والمتوقَّع: واحد منها.",
  "{0} {1} in {2}, expected one or the other.": "رأي {0} في {2}: {1}؛ والمتوقَّع: أحدهما.",
  "{0} {1} in {2}, expected one of them.": "رأي {0} في {2}: {1}؛ والمتوقَّع: واحد منها.",
  "A scholar changed position over time.": "باحث غيّر رأيه مع الزمن.",
  "No fault: the latest position counts as the present one. Cite the right one, and ask what changed the scholar's mind; that argument is often the strongest in the dispute.":
    "لا عيب في ذلك: فآخر رأي هو المعتبر رأيًا حاضرًا. اذكر الرأي الصحيح، واسأل عما غيّر رأي الباحث؛ فتلك الحجة كثيرًا ما تكون أقوى ما في الخلاف.",
  "{0} {1} from {2}, having said in {3}: {4}.": "رأي {0} منذ {2}: {1}، وكان في {3}: {4}.",
  "holds {0}": "إثبات {0}",
  "rejects {0}": "رفض {0}",
  "doubts {0}": "شك في {0}",
  "leaves open {0}": "توقّف في {0}",
};
