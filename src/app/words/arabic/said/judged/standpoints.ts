import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** Coherent standpoints: a number of them may have any number of digits, so it stands after what it counts. */
export const standpointsSaid: ArabicCatalogue = {
  "One coherent standpoint: nothing is open.": "مذهب متسق واحد: لا شيء معلّق.",
  "One coherent standpoint.": "مذهب متسق واحد.",
  "{0} coherent standpoints.": "المذاهب المتسقة: {0}.",
  "At least {0} coherent standpoints.": "المذاهب المتسقة: {0} على الأقل.",
  "{0} coherent standpoints: {1}.": "المذاهب المتسقة: {0}، أي {1}.",
  "At least {0} coherent standpoints: {1}.": "المذاهب المتسقة: {0} على الأقل، أي {1}.",
  "at least {0}": "{0} على الأقل",
  "the product of the ways of {0} parts": {
    two: "حاصل ضرب أوجه جزأين",
    few: "حاصل ضرب أوجه {0} أجزاء",
    many: "حاصل ضرب أوجه {0} جزءًا",
    other: "حاصل ضرب أوجه {0} جزء",
  },

  "For and against: ": "إثباتًا ونفيًا: ",
  "; ": "؛ ",
  " against ": "، اعتراضًا على ",
  " speaks against itself": " ينقض نفسه",
  "Something that the corpus withholds": "شيء تحجبه المدوّنة",

  "No way to decide it is coherent: it stays open in every standpoint.":
    "لا وجه متسقًا لحسمه: يبقى معلّقًا في كل مذهب.",
  "Only one way to decide it is coherent.": "لحسمه وجه متسق واحد.",
  "{0} ways to decide it.": "أوجه حسمه: {0}.",
  "At least {0} ways to decide it.": "أوجه حسمه: {0} على الأقل.",
  "{0} ways to decide it, too many to lay out.": "أوجه حسمه: {0}، وهي أكثر من أن تُبسط.",
  "At least {0} ways to decide it, too many to lay out.": "أوجه حسمه: {0} على الأقل، وهي أكثر من أن تُبسط.",

  "holds in all": "ثابتة في كلها",
  "holds in some": "ثابتة في بعضها",
  "holds in none": "غير ثابتة في شيء منها",
  "holds in some; whether in all is not known": "ثابتة في بعضها؛ ولا يُعلم هل تثبت في كلها",
  "holds not in all; whether in any is not known": "لا تثبت في كلها؛ ولا يُعلم هل تثبت في شيء منها",
  "whether it holds in all, or in any, is not known": "لا يُعلم هل تثبت في كلها أو في شيء منها",

  "holds ": "إثبات ",
  "rejects ": "رفض ",
  ", which stands there": "، وهي قائمة هناك",
  ", which falls there": "، وهي ساقطة هناك",
  ", which is open there": "، وهي معلّقة هناك",
  ", which is unsupported there": "، وهي بلا سند هناك",

  "one claim stands": "دعوى واحدة تقوم",
  "{0} claims stand": {
    two: "دعويان تقومان",
    few: "{0} دعاوى تقوم",
    many: "{0} دعوى تقوم",
    other: "{0} دعوى تقوم",
  },
  "one claim falls": "دعوى واحدة تسقط",
  "one claim is open": "دعوى واحدة معلّقة",
  "{0} claims are open": {
    two: "دعويان معلّقتان",
    few: "{0} دعاوى معلّقة",
    many: "{0} دعوى معلّقة",
    other: "{0} دعوى معلّقة",
  },
  "one claim is unsupported": "دعوى واحدة بلا سند",
  "{0} claims are unsupported": {
    two: "دعويان بلا سند",
    few: "{0} دعاوى بلا سند",
    many: "{0} دعوى بلا سند",
    other: "{0} دعوى بلا سند",
  },
};
