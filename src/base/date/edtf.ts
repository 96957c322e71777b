import { plainText } from "../quantity/plain-text.ts";
import { parseYear, type DateProblem } from "./year.ts";
import { coded, say } from "../text/said/said.ts";
import type { Text } from "../text/said/said.ts";

/** A date as an interval of astronomical years, both included; null where an end is open or not known. */
export interface DateSpan {
  readonly low: number | null;
  readonly high: number | null;
  readonly approximate: boolean;
  readonly uncertain: boolean;
}

type Read = { readonly ok: DateSpan } | { readonly message: Text; readonly replacement?: string };

/**
 * Reads a date of EDTF (ISO 8601-2:2019), levels 0 and 1 and the sets of level 2, to the year: `1850~`, `18XX`,
 * `-0299/-0199`, `../1850`, `1984-05-01`, `[1667,1668]`, `Y-17000`. Years are astronomical: 300 BC is `-0299`.
 */
export function parseEdtf(text: string): { readonly ok: DateSpan } | { readonly problem: DateProblem } {
  const trimmed = text.trim();
  const read = readDate(trimmed);
  if ("ok" in read) return read;
  const mended = read.replacement ?? mend(trimmed);
  const certain = mended !== null && mended !== trimmed && "ok" in readDate(mended) ? mended : null;
  const message =
    certain === null ? read.message : say`Unreadable date \`${trimmed}\`, expected \`${certain}\``;
  const place = { start: 0, end: text.length };
  return { problem: certain === null ? { message, ...place } : { message, ...place, replacement: certain } };
}

/** The date as EDTF, from what `parseEdtf` gives. */
export function edtfText(span: DateSpan): string {
  const mark = span.approximate && span.uncertain ? "%" : span.approximate ? "~" : span.uncertain ? "?" : "";
  const end = (year: number | null): string => (year === null ? ".." : edtfYear(year) + mark);
  return span.low !== null && span.low === span.high ? end(span.low) : `${end(span.low)}/${end(span.high)}`;
}

/** An astronomical year as EDTF: `1850`, `-0299`, `Y-17000`. */
export function edtfYear(year: number): string {
  const digits = String(Math.abs(year)).padStart(4, "0");
  return `${digits.length > 4 ? "Y" : ""}${year < 0 ? "-" : ""}${digits}`;
}

function readDate(text: string): Read {
  const set = /^(?:\[(.*)\]|\{(.*)\})$/u.exec(text);
  if (set !== null) return readSet(set[1] ?? set[2] ?? "");
  const ends = text.split("/");
  if (ends.length === 1) return readPoint(text);
  const [from = "", to = ""] = ends;
  if (ends.length > 2) return { message: say`Unexpected second \`/\` in the date \`${text}\`` };
  return joined(readEnd(from), readEnd(to), text);
}

function readSet(members: string): Read {
  const spans = members.split(",").map((member): Read => {
    const [from = "", to, ...more] = member.trim().split("..");
    if (to === undefined) return readPoint(from);
    return more.length > 0 ? unreadable(member) : joined(readEnd(from), readEnd(to), member);
  });
  let union: DateSpan | null = null;
  for (const span of spans) {
    if (!("ok" in span)) return span;
    const { low, high, approximate, uncertain } = span.ok;
    if (union === null) union = span.ok;
    union = {
      low: low === null || union.low === null ? null : Math.min(low, union.low),
      high: high === null || union.high === null ? null : Math.max(high, union.high),
      approximate: approximate || union.approximate,
      uncertain: uncertain || union.uncertain,
    };
  }
  return union === null ? unreadable(members) : { ok: union };
}

const open: DateSpan = { low: null, high: null, approximate: false, uncertain: false };

function readEnd(text: string): Read {
  return text === "" || text === ".." ? { ok: open } : readPoint(text);
}

function joined(from: Read, to: Read, text: string): Read {
  if (!("ok" in from)) return from;
  if (!("ok" in to)) return to;
  const { low } = from.ok;
  const { high } = to.ok;
  if (low === null && high === null)
    return { message: say`Unexpected date \`${text}\` with neither end, expected a year` };
  if (low !== null && high !== null && low > high) {
    return { message: say`Unexpected date \`${text}\` that runs backwards, expected the earlier end first` };
  }
  const approximate = from.ok.approximate || to.ok.approximate;
  return { ok: { low, high, approximate, uncertain: from.ok.uncertain || to.ok.uncertain } };
}

const point =
  /^(?:Y(-?[1-9]\d{4,8})|(-?)(\d{4}|\d{3}X|\d{2}XX|\dXXX)(?:-(\d{2}|XX)(?:-(\d{2}|XX))?)?(?:T\d{2}:\d{2}:\d{2}(?:Z|[+-]\d{2}(?::?\d{2})?)?)?)([?~%]?)$/u;

function readPoint(text: string): Read {
  const found = point.exec(text);
  if (found === null) return unreadable(text);
  const [, long, minus = "", year = "", month, day, mark = ""] = found;
  const marks = { approximate: mark === "~" || mark === "%", uncertain: mark === "?" || mark === "%" };
  if (long !== undefined) return { ok: { low: Number(long), high: Number(long), ...marks } };
  if (minus === "-" && year === "0000")
    return { message: say`Unexpected year ${coded("-0000")}, expected ${coded("0000")} for ${"1 BC"}` };
  if (!isCalendarDay(Number(year.replaceAll("X", "0")), month, day)) {
    return { message: say`Unexpected date \`${text}\`, which no calendar has` };
  }
  const [least, most] = [Number(year.replaceAll("X", "0")), Number(year.replaceAll("X", "9"))];
  return {
    ok: minus === "-" ? { low: -most, high: -least, ...marks } : { low: least, high: most, ...marks },
  };
}

/** Months 21 to 24 are the seasons of EDTF; years below 0 keep the leap years of the same number. */
function isCalendarDay(year: number, month: string | undefined, day: string | undefined): boolean {
  if (month === undefined) return true;
  if (month === "XX") return day === undefined || day === "XX";
  const number = Number(month);
  if (day === undefined) return (number >= 1 && number <= 12) || (number >= 21 && number <= 24);
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][number - 1] ?? 0;
  return day === "XX" ? days > 0 : Number(day) >= 1 && Number(day) <= days;
}

function unreadable(text: string): Read {
  return {
    message: say`Unreadable date \`${text}\`, expected ${"EDTF"} such as ${coded("1850")}, ${coded("1850~")}, ${coded("18XX")} or ${coded("-0299/-0199")}`,
  };
}

const circa = /^(?:about|circa|ca?\.?|~|≈) ?/iu;

/** EDTF for what people write instead, where it can mean but one thing. */
function mend(text: string): string | null {
  const plain = plainText(text).text.trim();
  if (/^-?\d{4}(?:-\d\d){0,2}(?:\/-?\d{4}(?:-\d\d){0,2})?[?~%]?$/u.test(plain)) return plain;
  const about = circa.exec(plain);
  const rest = plain.slice(about?.[0].length ?? 0);
  const ends = /^([^–-]+?) ?(?:[–-]|to\b) ?([^–-]+)$/iu.exec(rest);
  if (ends === null) return withMark(yearOf(rest), about !== null);
  const [, from = "", to = ""] = ends;
  const era = /(?: ?b\.? ?c\.?(?: ?e\.?)?)$/iu.exec(to)?.[0] ?? "";
  const years = [yearOf(/\d$/u.test(from) ? from + era : from), yearOf(to)];
  return years.includes(null) ? null : years.map((year) => withMark(year ?? "", about !== null)).join("/");
}

function yearOf(text: string): string | null {
  const year = parseYear(text);
  return "ok" in year ? edtfYear(year.ok) : null;
}

function withMark(year: string | null, about: boolean): string | null {
  return year === null ? null : year + (about ? "~" : "");
}
