import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What is kept out of everything that is told. */
export const withholdingSaid: ArabicCatalogue = {
  "Some records are withheld: what stands follows from them too, and nothing here names them.":
    "بعض السجلات محجوب: فما يثبت هنا مستنتج منها أيضًا، ولا شيء هنا يسمّيها.",
  "Exact places of finds are withheld.": "المواضع الدقيقة للّقى محجوبة.",
  "Pictures that may not be published are left out.": "الصور التي لا يجوز نشرها متروكة.",
};
