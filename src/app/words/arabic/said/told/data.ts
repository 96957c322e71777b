import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What is said where open data cannot be written as it was asked. */
export const dataSaid: ArabicCatalogue = {
  "Unexpected base `{0}`, expected an address that ends in a slash: {1}":
    "بداية عناوين غير متوقَّعة: `{0}`؛ والمتوقَّع عنوان ينتهي بشرطة مائلة: {1}",
  "Unexpected supposed outcome, expected data of what was recorded":
    "نتيجة مفترضة غير متوقَّعة؛ والمتوقَّع بيانات ما سُجّل",
};
