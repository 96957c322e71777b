import { parseEdtf } from "../../base/date/edtf.ts";
import { yearText } from "../../base/date/year.ts";

const months = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

/** An EDTF date as one reads it: `2151 to 1951 BC`, `October 1894`, `about 1850`; anything else as it is written. */
export function dateWords(edtf: string): string {
  const day = dayWords(edtf);
  if (day !== null) return day;
  const ends = edtf.split("/");
  const [from, to] = [dayWords(ends[0] ?? ""), dayWords(ends[1] ?? "")];
  if (ends.length === 2 && from !== null && to !== null) return `${from} to ${to}`;
  const read = parseEdtf(edtf);
  if (!("ok" in read)) return edtf;
  const { low, high, approximate, uncertain } = read.ok;
  const about = approximate ? "about " : "";
  return `${about}${spanWords(low, high)}${uncertain ? ", uncertain" : ""}`;
}

function spanWords(low: number | null, high: number | null): string {
  if (low === null) return high === null ? "at some time" : `until ${yearText(high)}`;
  if (high === null) return `from ${yearText(low)}`;
  if (low === high) return yearText(low);
  const bothBefore = low <= 0 && high <= 0;
  return bothBefore ? `${1 - low} to ${yearText(high)}` : `${yearText(low)} to ${yearText(high)}`;
}

/** A month or a day of a year; null for anything less or more. */
function dayWords(edtf: string): string | null {
  const found = /^(-?\d{4})-(\d\d)(?:-(\d\d))?$/.exec(edtf.trim());
  const month = months[Number(found?.[2] ?? 0) - 1];
  if (!found || month === undefined) return null;
  const year = yearText(Number(found[1]));
  return found[3] === undefined ? `${month} ${year}` : `${Number(found[3])} ${month} ${year}`;
}
