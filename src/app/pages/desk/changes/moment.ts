import { language } from "../../../words/reader/language.ts";

// Figures as everywhere else in the interface.
const locale = language === "ar" ? "ar-u-ca-gregory-nu-latn" : undefined;
const shown = new Intl.DateTimeFormat(locale, { dateStyle: "medium", timeStyle: "short" });

/** An instant, ISO 8601, as the reader of the page writes dates and times. */
export function moment(instant: string): string {
  const time = new Date(instant);
  return Number.isNaN(time.getTime()) ? instant : shown.format(time);
}
