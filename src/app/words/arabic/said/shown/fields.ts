import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";
import { arabicFieldNames } from "../../shown/fields.ts";

/** Names that stand only beside a value, and in no sentence. */
const asLabels: readonly string[] = ["orcid"];

/** What the fields of records and sources are called, as they stand before a value in a line. */
export const fieldNamesSaid: ArabicCatalogue = {
  ...Object.fromEntries(Object.entries(arabicFieldNames).filter(([name]) => !asLabels.includes(name))),
  // These are words of other sentences, too.
  from: "من",
  text: "نص",
  claim: "دعوى",
  file: "ملف",
  circle: "دائرة",
  rectangle: "مستطيل",
  profile: "قطاع",
  supports: "يؤيد",
  disputes: "يعارض",
  volume: "حجم",

  authors: "المؤلفون",
  editors: "المحررون",
  in: "في",
  publisher: "الناشر",
  pages: "الصفحات",
  "in print": "سنة النشر",
  called: "يُسمّى",
  "also called": "أسماء أخرى",
  key: "المفتاح",
  members: "ما يضمّه",
};
