import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What is told of an argument in hand. */
export const arguingSaid: ArabicCatalogue = {
  "Missing record that the argument names, expected it in the corpus":
    "مفقود: سجل تسمّيه الحجة؛ والمتوقَّع: أن يكون في المدوّنة",
  "Missing conclusion, expected a claim, or something that it is against":
    "مفقود: نتيجة؛ والمتوقَّع: دعوى، أو شيء تكون الحجة عليه",
  "Missing words of the new claim, expected a sentence": "مفقود: ألفاظ الدعوى الجديدة؛ والمتوقَّع: جملة",
  "Missing premise, expected at least one record that the argument leans on":
    "مفقود: مقدمة؛ والمتوقَّع: سجل واحد على الأقل تستند إليه الحجة",
  "A claim of the corpus has these words already": "في المدوّنة دعوى بهذه الألفاظ",
  "The conclusion is among the premises: a claim that leans on itself does not stand by that":
    "النتيجة بين المقدمات: والدعوى التي تستند إلى نفسها لا تقوم بذلك",
};
