import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What cannot be written as it was asked for. */
export const writingSaid: ArabicCatalogue = {
  "Unknown question `{0}`, expected {1}": "سؤال غير معروف: `{0}`؛ والمتوقَّع: {1}",
  "one that the corpus asks": "سؤال تطرحه المدوّنة",
  "Unexpected {0} beside {1}, expected one of them": "غير متوقَّع: {0} مع {1}؛ والمتوقَّع: أحدهما",
  "Unexpected {0} without {1}, expected them together": "غير متوقَّع: {0} بغير {1}؛ والمتوقَّع: هما معًا",
  "Missing {0} or {1}, expected one of them": "ناقص: {0} أو {1}؛ والمتوقَّع: أحدهما",
  "one that the corpus names": "واحد تسمّيه المدوّنة",
  "Unknown keeper `{0}`, expected {1}": "حافظ غير معروف: `{0}`؛ والمتوقَّع: {1}",
  "The style `{0}` cannot write these references ({1}), expected one that can":
    "لا يستطيع النمط `{0}` كتابة هذه المراجع ({1})؛ والمتوقَّع: نمط يستطيعها",
  "Unexpected several styles, expected one": "غير متوقَّع: عدة أنماط؛ والمتوقَّع: نمط واحد",
};
