import type { ArabicCatalogue } from "../../../../../../base/text/said/arabic.ts";

/** The sections of a review, and names that no section has. */
export const sectionsSaid: ArabicCatalogue = {
  "The question": "السؤال",
  "How the literature was searched": "كيف بُحث في المراجع",
  "The course of the dispute": "مسار الخلاف",
  "The answers and what is said for and against them": "الأجوبة وما يقال لها وعليها",
  "Who holds what": "من يرى ماذا",
  "The evidence, artefact by artefact": "الأدلة، أثرًا بعد أثر",
  "What was computed": "ما حُسب",
  "Where the record contradicts itself": "أين يتناقض السجل",
  "What is held without support": "ما يقال به بلا سند",
  "What rests on a single artefact or source": "ما يقوم على أثر واحد أو مصدر واحد",
  "What to examine next": "ما يُفحص بعد ذلك",
  "How the numbers were computed": "كيف حُسبت الأعداد",
  References: "المراجع",
  "a section": "قسم",
  "Unknown section {0}, expected {1}": "قسم غير معروف {0}؛ والمتوقَّع: {1}",
};
