import { arabic } from "../../../base/text/said/arabic.ts";
import { english, inWords } from "../../../base/text/said/english.ts";
import type { Tongue } from "../../../base/text/said/tongue.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { arabicSaid } from "../arabic/said/index.ts";
import { arabicFigure } from "./figures.ts";

/** A language as it is read on a page: what the terminal marks as code stands in quotation marks. */
function onPages(tongue: Tongue): Tongue {
  return {
    ...tongue,
    sentence: (say, count) =>
      tongue.sentence(say, count)?.replace(/`([^`]*)`/gu, (_, code: string) => tongue.quoted(code)) ?? null,
  };
}

const inTongue = (tongue: Tongue) => (text: Text) =>
  typeof text === "string" ? text : inWords(text, tongue);

/** Puts what the core says into a language, by its code in BCP 47; a text of the corpus stays as it is. */
export const inLanguage: Readonly<Record<"en" | "ar", (text: Text) => string>> = {
  en: inTongue(onPages(english)),
  ar: inTongue(onPages(arabic(arabicSaid, arabicFigure))),
};
