import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What the columns of a table are taken for, and why. */
export const columnsSaid: ArabicCatalogue = {
  "another column is that already": "عمود آخر هو ذلك من قبل",
  "it has no head": "لا رأس له",
  "it is the name of a field": "هو اسم حقل",
  "a usual heading for numbers of the register {0}": "عنوان مألوف لأرقام السجل {0}",
  "the corpus has numbers of this register": "في المدوّنة أرقام من هذا السجل",
  "the corpus calls a dimension so": "هكذا تسمّي المدوّنة بُعدًا",
  "a usual heading for the dimension {0}": "عنوان مألوف للبُعد {0}",
  "a usual heading for {0}": "عنوان مألوف: {0}",
  "a usual heading for units": "عنوان مألوف للوحدات",
  "a usual heading for what is ± of figures": "عنوان مألوف لما هو ± لأرقام",
  "it says one standard deviation, where ± is two in this corpus: give all rows the field {0} with {1}":
    "فيه انحراف معياري واحد، و± في هذه المدوّنة اثنان: أعطِ كل السطور الحقل {0} بالقيمة {1}",
  "it stands behind the figures of {0}": "يأتي بعد أرقام {0}",
  "it says ± and names the dimension {0}": "فيه ± واسم البُعد {0}",
  "it has a unit, and the corpus knows no dimension that is called so":
    "له وحدة، ولا تعرف المدوّنة بُعدًا بهذا الاسم",
  "the nearest name is {0}": "أقرب اسم هو {0}",
  "as it was chosen": "كما اختير",
  "nothing fits it": "لا شيء يوافقه",
  "Missing unit of {0}, expected one in the cell or in the head of its column":
    "ناقص: وحدة {0}؛ والمتوقَّع: وحدة في الخلية أو في رأس عمودها",
  "Several artefacts are called {0}, expected one: {1}":
    "غير متوقَّع: عدة آثار تسمّى {0}؛ والمتوقَّع: واحد منها: {1}",
  "Unknown artefact {0}, expected {1}": "أثر غير معروف: {0}؛ والمتوقَّع: {1}",
  "Unknown artefact {0}, expected the id, the name or a number of one":
    "أثر غير معروف: {0}؛ والمتوقَّع: معرّف أثر أو اسمه أو رقم من أرقامه",
  "Unexpected several values of {0}, expected one: a table has one in a cell":
    "غير متوقَّع: عدة قيم لـ{0}؛ والمتوقَّع: قيمة واحدة: ففي خلية الجدول واحدة",
  "Duplicate artefact, expected it once: line {0} is the same":
    "أثر مكرّر؛ والمتوقَّع: أن يرد مرة: فالسطر {0} هو نفسه",
  "Unexpected whole {0}, expected another thing than the part itself":
    "غير متوقَّع: الكل {0}؛ والمتوقَّع: شيء غير الجزء نفسه",
};
