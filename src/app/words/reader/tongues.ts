import { arabic } from "../../../base/text/said/arabic.ts";
import { inEnglish, inWords } from "../../../base/text/said/english.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { arabicSaid } from "../arabic/said/index.ts";
import { arabicFigure } from "./figures.ts";

const tongue = arabic(arabicSaid, arabicFigure);

/** Puts what the core says into a language, by its code in BCP 47; a text of the corpus stays as it is. */
export const inLanguage: Readonly<Record<"en" | "ar", (text: Text) => string>> = {
  en: inEnglish,
  ar: (text) => (typeof text === "string" ? text : inWords(text, tongue)),
};
