import { parseEdtf } from "../../base/date/edtf.ts";
import { yearWords } from "../../base/date/year-words.ts";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";

const months = [
  say`January`,
  say`February`,
  say`March`,
  say`April`,
  say`May`,
  say`June`,
  say`July`,
  say`August`,
  say`September`,
  say`October`,
  say`November`,
  say`December`,
];

/** An EDTF date as one reads it: `2151 to 1951 BC`, `October 1894`, `about 1850`; anything else as it is written. */
export function dateWords(edtf: string): Text {
  const day = dayWords(edtf);
  if (day !== null) return day;
  const ends = edtf.split("/");
  const [from, to] = [dayWords(ends[0] ?? ""), dayWords(ends[1] ?? "")];
  if (ends.length === 2 && from !== null && to !== null) return say`${from} to ${to}`;
  const read = parseEdtf(edtf);
  if (!("ok" in read)) return edtf;
  const { low, high, approximate, uncertain } = read.ok;
  const span = spanWords(low, high);
  const about = approximate ? say`about ${span}` : span;
  return uncertain ? say`${about}, uncertain` : about;
}

function spanWords(low: number | null, high: number | null): Text {
  if (low === null) return high === null ? say`at some time` : say`until ${yearWords(high)}`;
  if (high === null) return say`from ${yearWords(low)}`;
  if (low === high) return yearWords(low);
  const bothBefore = low <= 0 && high <= 0;
  return say`${bothBefore ? String(1 - low) : yearWords(low)} to ${yearWords(high)}`;
}

/** A month or a day of a year; null for anything less or more. */
function dayWords(edtf: string): Text | null {
  const found = /^(-?\d{4})-(\d\d)(?:-(\d\d))?$/.exec(edtf.trim());
  const month = months[Number(found?.[2] ?? 0) - 1];
  if (!found || month === undefined) return null;
  const year = yearWords(Number(found[1]));
  return found[3] === undefined ? say`${month} ${year}` : say`${String(Number(found[3]))} ${month} ${year}`;
}
