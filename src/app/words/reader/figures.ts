import { formFor } from "../../../base/text/said/arabic.ts";
import type { ArabicForms } from "../../../base/text/said/arabic.ts";

// One set of figures throughout: quantities, years and register numbers stand in European figures in the files and the drawings.
const inArabic = new Intl.NumberFormat("ar-u-nu-latn", { maximumFractionDigits: 20 });

/** A count as an Arabic sentence writes it. */
export function arabicFigure(n: number): string {
  return inArabic.format(n);
}

/** An Arabic phrase in the form that a count asks for; `#` stands for the count. */
export function arabicCount(n: number, forms: ArabicForms): string {
  return formFor(forms, n).replaceAll("#", arabicFigure(n));
}

/** A text of the corpus, or a figure with its unit, kept together in a line that runs the other way (Unicode's first-strong isolate). */
export function apart(text: string): string {
  return `\u2068${text}\u2069`;
}

/** An astronomical year in Arabic: `1998`, `60 م`, `480 ق.م`. */
export function arabicYear(astronomical: number): string {
  if (astronomical <= 0) return `${1 - astronomical} ق.م`;
  return astronomical < 1000 ? `${astronomical} م` : String(astronomical);
}
