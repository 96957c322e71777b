import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** Why a computation is refused, whatever the method. */
export const refusalsSaid: ArabicCatalogue = {
  "Number {0} of the {1} is missing, expected a number.": "ناقص: الرقم {0} من {1}؛ والمتوقَّع: عدد.",
  "Number {0} of the {1} is {2}, expected one above 0.": "الرقم {0} من {1} هو {2}؛ والمتوقَّع: عدد فوق 0.",
  "Unexpected {0} {1}, expected at least {2}.": {
    two: "عدد {1}: {0}؛ والمتوقَّع: {2} على الأقل.",
    few: "عدد {1}: {0}؛ والمتوقَّع: {2} على الأقل.",
    many: "عدد {1}: {0}؛ والمتوقَّع: {2} على الأقل.",
    other: "عدد {1}: {0}؛ والمتوقَّع: {2} على الأقل.",
  },
  values: "القيم",
  pairs: "الأزواج",
  dimensions: "الأبعاد",
  uncertainties: "أقدار عدم اليقين",
  quantity: "مقدار",
};
