import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What is said of rows in which measurements are entered. */
export const gridSaid: ArabicCatalogue = {
  "Unknown artefact `{0}`, expected {1}": "أثر غير معروف: `{0}`؛ والمتوقَّع: {1}",
  "Unexpected name `{0}`, which several artefacts have: {1}": "غير متوقَّع: الاسم `{0}` لعدة آثار: {1}",
  "Nothing in the corpus has the dimension `{0}` yet": "لا شيء في المدوّنة له البُعد `{0}` بعد",
  "New measurement of a new artefact": "إضافة قياس لأثر جديد",
  "{0} new measurements, with one new artefact": {
    two: "إضافة قياسين مع أثر جديد",
    few: "إضافة {0} قياسات مع أثر جديد",
    many: "إضافة {0} قياسًا مع أثر جديد",
    other: "إضافة {0} قياس مع أثر جديد",
  },
  "{0} new measurements, with new artefacts": {
    two: "إضافة قياسين مع آثار جديدة",
    few: "إضافة {0} قياسات مع آثار جديدة",
    many: "إضافة {0} قياسًا مع آثار جديدة",
    other: "إضافة {0} قياس مع آثار جديدة",
  },
};
