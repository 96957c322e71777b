import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** Looks that the record itself suggests, and what may come of them. */
export const looksSaid: ArabicCatalogue = {
  "{0} and {1} others": {
    one: "{0} وواحد آخر",
    two: "{0} واثنان آخران",
    few: "{0} و{1} أخرى",
    many: "{0} و{1} أخرى",
    other: "{0} و{1} أخرى",
  },
  "look again at {0}: by eye, without touching": "نظرة ثانية إلى {0}: بالعين من غير لمس",
  "look again at {0}, as far as can be seen without digging": "نظرة ثانية إلى {0}، بقدر ما يُرى من غير حفر",
  "measure the {0} of {1} again, without touching it where that can be done":
    "قياس {0} في {1} ثانية، من غير لمس حيث أمكن",
  "measure the {0} of {1}, without touching where that can be done": "قياس {0} في {1}، من غير لمس حيث أمكن",
  "look for what is missing for {0}: by eye, without touching": "بحث عما ينقص لأجل {0}: بالعين من غير لمس",
  "It is as recorded: {0}.": "هو كما سُجّل: {0}.",
  "It is not as recorded: {0}.": "ليس كما سُجّل: {0}.",
  "All that is recorded of {0} is so.": "كل ما سُجّل عن {0} صحيح.",
  "Nothing that is recorded of {0} is so.": "لا شيء مما سُجّل عن {0} صحيح.",
  "The {0} of {1} is {2}.": "{0} في {1}: {2}.",
  "{0} supports {1}.": "{0} يؤيد {1}.",
  "{0} disputes {1}.": "{0} يعارض {1}.",
  seen: "شوهد",
  "looked for and not there": "بُحث عنه فلم يوجد",
  "looked for, cannot be told": "بُحث عنه ولا يُتبيَّن",
  "not reported": "لم يُذكر",
};
