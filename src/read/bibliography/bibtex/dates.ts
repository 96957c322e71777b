import type { Fields } from "./inherit.ts";
import { dateOfEdtf, dateOfYear } from "../date.ts";
import type { CslDate } from "../date.ts";

/** The dates of a BibTeX entry in CSL: `date` and its kin as EDTF, else `year`, `month` and `day` as people type them. */
export function datesOf(fields: Fields): Readonly<Record<string, CslDate>> {
  const text = (name: string): string => fields.get(name)?.text.replace(/[{}]/g, "").trim() ?? "";
  const edtf = (name: string): CslDate | null => {
    const said = text(name);
    return said === "" ? null : (dateOfEdtf(said) ?? dateOfYear(said));
  };
  const issued =
    edtf("date") ?? (text("year") === "" ? null : dateOfYear(text("year"), text("month"), text("day")));
  const dates = {
    issued,
    "original-date": edtf("origdate") ?? (text("origyear") === "" ? null : dateOfYear(text("origyear"))),
    accessed: edtf("urldate"),
    "event-date": edtf("eventdate"),
  };
  return Object.fromEntries(
    Object.entries(dates).filter((pair): pair is [string, CslDate] => pair[1] !== null),
  );
}
